package main

import (
	"context"
	"crypto/sha256"
	"errors"
	"fmt"
	"io/fs"
	"net"
	"net/http"
	"os"
	"os/signal"
	"path/filepath"
	"strings"
	"syscall"
	"time"
)

// pollEvery is how often the shop's folder is looked at. Polling sees a share on the
// network too, which tells nobody of its changes.
const pollEvery = 500 * time.Millisecond

// view shows the handbook on this machine until it is stopped. It writes nothing.
func (c command) view(args []string) int {
	f := c.flags("view")
	dir := f.String("shop", "", "the shop's folder")
	port := f.Int("port", 0, "the port to show it at; 0 takes a free one")
	if status, ok := c.parse(f, args); !ok {
		return status
	}
	if *port < 0 || *port > 65535 {
		return c.wrong("view", fmt.Errorf("port %d: a port is a number from 0 to 65535", *port))
	}
	before := fingerprint(*dir)
	pages, status := c.pages(*dir)
	if status != done {
		return status
	}
	// This machine only: the handbook may hold a shop's prices and names.
	listener, err := net.Listen("tcp", fmt.Sprintf("127.0.0.1:%d", *port))
	if err != nil {
		return c.wrong("view", fmt.Errorf("%w: name another -port", err))
	}
	v := newViewer(listener.Addr().String(), pages)
	fmt.Fprintf(c.out, "http://%s/ shows %d files; end with Ctrl-C\n", v.host, len(pages))
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	if *dir != "" {
		go watch(ctx, *dir, before, pollEvery, func() { c.again(v, *dir) })
	}
	if err := v.serve(ctx, listener); err != nil {
		fmt.Fprintf(c.errs, "laydown view: %v\n", err)
		return problems
	}
	return done
}

// pages makes the handbook and keeps it by path; it reports what stops it.
func (c command) pages(dir string) (map[string][]byte, int) {
	_, t, files, status := c.make("view", dir)
	if status != done {
		return nil, status
	}
	c.doubts(t)
	pages := make(map[string][]byte, len(files))
	for _, f := range files {
		pages[f.Path] = f.Data
	}
	return pages, done
}

// again makes the handbook anew. With a problem the last good one stays.
func (c command) again(v *viewer, dir string) {
	pages, status := c.pages(dir)
	if status != done {
		fmt.Fprintln(c.errs, "laydown view: the handbook stays as it was until this is put right")
		return
	}
	v.show(pages)
	fmt.Fprintf(c.out, "%s: made anew, %d files\n", c.now().Format("15:04:05"), len(pages))
}

// serve answers until the context ends.
func (v *viewer) serve(ctx context.Context, listener net.Listener) error {
	server := &http.Server{Handler: v, ReadHeaderTimeout: 5 * time.Second}
	failed := make(chan error, 1)
	go func() { failed <- server.Serve(listener) }()
	select {
	case err := <-failed:
		return err
	case <-ctx.Done():
	}
	closing, cancel := context.WithTimeout(context.Background(), 2*time.Second)
	defer cancel()
	return server.Shutdown(closing)
}

// watch calls changed each time the folder has changed and come to rest: a program
// that saves may write a file in several steps.
func watch(ctx context.Context, dir string, before [sha256.Size]byte, every time.Duration, changed func()) {
	tick := time.NewTicker(every)
	defer tick.Stop()
	last := before
	for {
		select {
		case <-ctx.Done():
			return
		case <-tick.C:
		}
		now := fingerprint(dir)
		if now != before && now == last {
			before = now
			changed()
		}
		last = now
	}
}

// fingerprint tells one state of a shop's folder from another by names, sizes and
// times of change. What cannot be read counts by its error, so that it is seen again
// when it can.
func fingerprint(dir string) (sum [sha256.Size]byte) {
	h := sha256.New()
	for _, part := range []string{"data", "content", "templates"} {
		err := filepath.WalkDir(filepath.Join(dir, part), func(name string, e fs.DirEntry, err error) error {
			if err != nil {
				return err
			}
			if e.IsDir() || strings.HasPrefix(e.Name(), ".") || strings.HasSuffix(e.Name(), "~") {
				return nil // the files count, but not an editor's own
			}
			info, err := e.Info()
			if err != nil {
				return err
			}
			fmt.Fprintf(h, "%s\x00%d\x00%d\n", name, info.Size(), info.ModTime().UnixNano())
			return nil
		})
		if err != nil && !errors.Is(err, fs.ErrNotExist) {
			fmt.Fprintf(h, "%v\n", err)
		}
	}
	h.Sum(sum[:0])
	return sum
}
