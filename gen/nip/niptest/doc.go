// Package niptest holds a second method for the physics of package nip, for the
// tests of nip and of what stands on it. The program does not use it.
package niptest
