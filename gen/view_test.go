package main

import (
	"bytes"
	"context"
	"io"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"
)

// A viewer answers at its address on this machine, and to nobody who calls it by
// another name; a new handbook takes the place of the old one whole.
func TestViewer(t *testing.T) {
	listener, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	v := newViewer(listener.Addr().String(), map[string][]byte{"index.html": []byte("<p>old"), "charts/index.html": []byte("<p>charts"), "script/a.js": []byte("1"), "tables/a.csv": []byte("a,b")})
	ctx, stop := context.WithCancel(context.Background())
	ended := make(chan error, 1)
	go func() { ended <- v.serve(ctx, listener) }()
	ask := func(method, path, host string) (int, string, string) {
		t.Helper()
		r, err := http.NewRequest(method, "http://"+v.host+path, nil)
		if err != nil {
			t.Fatal(err)
		}
		r.Host = host
		answer, err := http.DefaultClient.Do(r)
		if err != nil {
			t.Fatal(err)
		}
		defer answer.Body.Close()
		body, err := io.ReadAll(answer.Body)
		if err != nil {
			t.Fatal(err)
		}
		return answer.StatusCode, answer.Header.Get("Content-Type"), string(body)
	}
	for _, row := range []struct {
		method, path, host string
		status             int
		kind, body         string
	}{
		{"GET", "/", "", 200, "text/html", "<p>old"},
		{"GET", "/index.html?q=x", "", 200, "text/html", "<p>old"},
		{"GET", "/charts/", "", 200, "text/html", "<p>charts"},
		{"GET", "/script/a.js", "", 200, "text/javascript", "1"},
		{"GET", "/tables/a.csv", "", 200, "text/csv", "a,b"},
		{"HEAD", "/", "", 200, "text/html", ""},
		{"GET", "/charts", "", 404, "", "no such page"},
		{"GET", "/../main.go", "", 404, "", "no such page"},
		{"POST", "/", "", 405, "", "a handbook is only read"},
		{"GET", "/", "shop.example.org", 403, "", "this handbook is at"},
	} {
		status, kind, body := ask(row.method, row.path, row.host)
		if status != row.status || !strings.HasPrefix(kind, row.kind) || !strings.HasPrefix(body, row.body) {
			t.Errorf("%s %s as %q: %d, %s, %q; want %d, %s, %q", row.method, row.path, row.host, status, kind, body, row.status, row.kind, row.body)
		}
	}
	v.show(map[string][]byte{"index.html": []byte("<p>new")})
	if _, _, body := ask("GET", "/", ""); body != "<p>new" {
		t.Errorf("after a change: %q", body)
	}
	if status, _, _ := ask("GET", "/charts/", ""); status != 404 {
		t.Errorf("a page of the old handbook: %d", status)
	}
	stop()
	if err := <-ended; err != nil {
		t.Errorf("it ends with %v", err)
	}
}

// A change of a shop's file is seen once it has come to rest; what an editor keeps for
// itself, and examples, are not.
func TestWatch(t *testing.T) {
	dir := t.TempDir()
	write := func(name, text string) {
		t.Helper()
		name = filepath.Join(dir, name)
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	write("data/rooms.yaml", "a")
	ctx, stop := context.WithCancel(context.Background())
	defer stop()
	const every = 10 * time.Millisecond
	seen := make(chan bool, 100)
	var watching sync.WaitGroup
	before := fingerprint(dir)
	watching.Go(func() { watch(ctx, dir, before, every, func() { seen <- true }) })
	wait := func(what string, want bool) {
		t.Helper()
		patience := 20 * every
		if want {
			patience = 10 * time.Second
		}
		select {
		case <-seen:
			if !want {
				t.Errorf("%s: counts as a change", what)
			}
		case <-time.After(patience):
			if want {
				t.Errorf("%s: was not seen", what)
			}
		}
	}
	wait("nothing", false)
	write("data/rooms.yaml", "ab")
	wait("a longer file", true)
	write("content/10-new.md", "a")
	wait("a file in a new folder", true)
	if err := os.Remove(filepath.Join(dir, "data/rooms.yaml")); err != nil {
		t.Fatal(err)
	}
	wait("a file taken away", true)
	write("data/.rooms.yaml.swp", "a")
	write("data/rooms.yaml~", "a")
	write("examples/data/rooms.yaml", "a")
	wait("an editor's files and the examples", false)
	stop()
	watching.Wait()
}

// While a shop's data have a problem, the last good handbook stays and the problem is
// told.
func TestViewKeepsTheLastGoodHandbook(t *testing.T) {
	var out, errs bytes.Buffer
	c := command{out: &out, errs: &errs, now: time.Now}
	v := newViewer("127.0.0.1:1", map[string][]byte{"index.html": []byte("good")})
	c.again(v, "../testdata/broken/bare-number")
	if page := (*v.pages.Load())["index.html"]; string(page) != "good" {
		t.Errorf("it shows %q", page)
	}
	if !strings.Contains(errs.String(), "data/") || !strings.Contains(errs.String(), "stays as it was") || out.Len() > 0 {
		t.Errorf("printed %q, said %q", out.String(), errs.String())
	}
}

func TestViewRefuses(t *testing.T) {
	for _, row := range []struct {
		args   []string
		status int
		want   string
	}{
		{[]string{"view", "there"}, misuse, `what is "there" for?`},
		{[]string{"view", "-port", "70000"}, misuse, "from 0 to 65535"},
		{[]string{"view", "-shop", "/no/such/folder"}, misuse, "the shop's folder"},
		{[]string{"view", "-shop", "../testdata/broken/bare-number"}, problems, "data/"},
	} {
		status, out, errs := laydown(row.args...)
		if status != row.status || out != "" || !strings.Contains(errs, row.want) {
			t.Errorf("%q: status %d, printed %q, said %q; want status %d and %q", row.args, status, out, errs, row.status, row.want)
		}
	}
}
