//go:build !linux

package publish

// exchange is not to be had from the standard library on this system.
func exchange(a, b string) error { return errNoExchange }
