package browser

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io/fs"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
)

// root is the top folder of the project, seen from this package.
const root = "../.."

// patience limits every single thing asked of the browser.
const patience = 60 * time.Second

// scratch is this run's temporary folder.
var scratch string

func TestMain(m *testing.M) {
	var err error
	if scratch, err = os.MkdirTemp("", "laydown-browser-"); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
	code := m.Run()
	if chromium.stop != nil {
		chromium.stop()
	}
	if err := os.RemoveAll(scratch); err != nil {
		fmt.Fprintln(os.Stderr, err)
	}
	os.Exit(code)
}

// lacking skips the test because a tool is missing, or fails it where
// everything must run.
func lacking(t testing.TB, what string) {
	t.Helper()
	if os.Getenv("CI") == "true" {
		t.Fatalf("%s is missing, and CI=true: nothing may be left out", what)
	}
	t.Skipf("NOT RUN: %s is missing (make test installs it where it may)", what)
}

// program builds the real program once.
var program = sync.OnceValues(func() (string, error) {
	// The test's result may be kept by the go tool only as long as the
	// sources are the same: touch them, so that it knows what we stand on.
	for _, dir := range []string{"content", "data", "gen", "templates", "testdata"} {
		err := filepath.WalkDir(filepath.Join(root, dir), func(name string, e fs.DirEntry, err error) error {
			if e != nil && e.IsDir() && e.Name() == "node_modules" {
				return fs.SkipDir
			}
			if err == nil && !e.IsDir() {
				_, err = os.Stat(name)
			}
			return err
		})
		if err != nil {
			return "", err
		}
	}
	bin, err := filepath.Abs(filepath.Join(scratch, "laydown"))
	if err != nil {
		return "", err
	}
	return bin, command("go", "build", "-o", bin, "./gen")
})

// site publishes the demo handbook once and returns its folder.
var site = sync.OnceValues(func() (string, error) {
	if dir := os.Getenv("HANDBOOK"); dir != "" {
		return filepath.Abs(dir)
	}
	bin, err := program()
	if err != nil {
		return "", err
	}
	dir := filepath.Join(scratch, "site")
	return dir, command(bin, "publish", "-out", dir)
})

// command runs a program in the project's top folder.
func command(name string, args ...string) error {
	cmd := exec.Command(name, args...)
	cmd.Dir = root
	out, err := cmd.CombinedOutput()
	if err != nil {
		return fmt.Errorf("%s %s: %w\n%s", filepath.Base(name), strings.Join(args, " "), err, out)
	}
	return nil
}

// handbook is the folder of the published demo handbook.
func handbook(t testing.TB) string {
	t.Helper()
	dir, err := site()
	if err != nil {
		t.Fatalf("the handbook could not be published: %v", err)
	}
	return dir
}

// pagesOf lists the pages of a published folder, in order.
func pagesOf(t testing.TB, dir string) []string {
	t.Helper()
	var pages []string
	err := filepath.WalkDir(dir, func(name string, e fs.DirEntry, err error) error {
		if err == nil && !e.IsDir() && filepath.Ext(name) == ".html" {
			rel, err := filepath.Rel(dir, name)
			if err != nil {
				return err
			}
			pages = append(pages, filepath.ToSlash(rel))
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	if len(pages) == 0 {
		t.Fatalf("no page in %s", dir)
	}
	slices.Sort(pages)
	return pages
}

// chromium is the one browser that all tests share.
var chromium struct {
	once sync.Once
	ctx  context.Context
	stop func()
	err  error
}

var errNoChromium = errors.New("Chromium")

func startChromium() {
	var exe string
	for _, name := range []string{os.Getenv("CHROMIUM"), "chromium", "chromium-browser", "chrome"} {
		if name == "" {
			continue
		}
		if found, err := exec.LookPath(name); err == nil {
			exe = found
			break
		}
	}
	if exe == "" {
		chromium.err = errNoChromium
		return
	}
	profile := filepath.Join(scratch, "profile")
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(exe), chromedp.UserDataDir(profile), chromedp.DisableGPU,
		chromedp.Flag("disable-component-update", true), chromedp.Flag("disable-quic", true))
	if os.Geteuid() == 0 {
		options = append(options, chromedp.NoSandbox) // Chromium has no sandbox for root, as in CI
	}
	ctx, stopAllocator := chromedp.NewExecAllocator(context.Background(), options...)
	ctx, stop := chromedp.NewContext(ctx)
	chromium.ctx = ctx
	chromium.stop = func() {
		// Asked nicely first, so that the profile is closed before it is removed.
		limited, cancel := context.WithTimeout(ctx, 10*time.Second)
		_ = chromedp.Cancel(limited)
		cancel()
		stop()
		stopAllocator()
	}
	chromium.err = chromedp.Do(ctx) // no timeout here: it would end the browser
}

// tab is one tab of the browser, and what it has noticed.
type tab struct {
	t   testing.TB
	ctx context.Context
	dir string

	mu     sync.Mutex
	faults []string
}

// newTab opens an empty tab for the pages of a published folder. It closes with the test.
func newTab(t testing.TB, dir string) *tab {
	t.Helper()
	chromium.once.Do(startChromium)
	if errors.Is(chromium.err, errNoChromium) {
		lacking(t, chromium.err.Error())
	}
	if chromium.err != nil {
		t.Fatalf("Chromium does not start: %v", chromium.err)
	}
	ctx, cancel := chromedp.NewContext(chromium.ctx)
	t.Cleanup(cancel)
	b := &tab{t: t, ctx: ctx, dir: dir}
	if err := chromedp.Do(ctx); err != nil {
		t.Fatalf("no tab: %v", err)
	}
	if err := chromedp.Listen(ctx, b.notice); err != nil {
		t.Fatalf("no events: %v", err)
	}
	return b
}

// open opens a page of the published demo handbook, with an optional ?query or
// #fragment, in a tab of its own, at 1024 × 768 in the light scheme. It is the
// start for tests of single pages:
//
//	b := open(t, "search.html?q=vinyl")
//	n := eval[int](b, `document.querySelectorAll("li").length`)
//	b.quiet()
func open(t testing.TB, page string) *tab {
	t.Helper()
	b := newTab(t, handbook(t))
	b.size(1024, 768)
	b.goTo(page)
	return b
}

// notice keeps what a page of ours must never do: errors and warnings in the
// console, broken security policy, and requests for anything but files.
func (b *tab) notice(ev any) {
	add := func(format string, args ...any) {
		b.mu.Lock()
		defer b.mu.Unlock()
		b.faults = append(b.faults, fmt.Sprintf(format, args...))
	}
	switch ev := ev.(type) {
	case *runtime.EventConsoleAPICalled:
		var text []string
		for _, a := range ev.Args {
			text = append(text, strings.Trim(string(a.Value)+" "+a.Description, " "))
		}
		add("console: %s: %s", ev.Type, strings.Join(text, " "))
	case *runtime.EventExceptionThrown:
		add("exception: %s", exception(ev.ExceptionDetails))
	case *log.EventEntryAdded:
		if ev.Entry.Level != log.EntryLevelVerbose {
			add("browser log: %s: %s", ev.Entry.Source, ev.Entry.Text)
		}
	case *network.EventRequestWillBeSent:
		if u := ev.Request.URL; !strings.HasPrefix(u, "file:") && !strings.HasPrefix(u, "data:") {
			add("request: %s", u)
		}
	case *network.EventLoadingFailed:
		add("not loaded: %s %s", ev.Type, ev.ErrorText)
	case *network.EventWebSocketCreated:
		add("request: %s", ev.URL)
	}
}

func exception(d *runtime.ExceptionDetails) string {
	if d.Exception != nil && d.Exception.Description != "" {
		return d.Exception.Description
	}
	return d.Text
}

// limited runs with the tab's context, but not for ever.
func (b *tab) limited(run func(ctx context.Context) error) error {
	ctx, cancel := context.WithTimeout(b.ctx, patience)
	defer cancel()
	return run(ctx)
}

// do runs steps that must succeed.
func (b *tab) do(what string, steps ...chromedp.Action[chromedp.Void]) {
	b.t.Helper()
	if err := b.limited(func(ctx context.Context) error { return chromedp.Do(ctx, steps...) }); err != nil {
		b.t.Fatalf("%s: %v", what, err)
	}
}

// address is the file: address of a page, which may carry a ?query and #fragment.
func (b *tab) address(page string) string {
	path, rest := page, ""
	if i := strings.IndexAny(page, "?#"); i >= 0 {
		path, rest = page[:i], page[i:]
	}
	full, err := filepath.Abs(filepath.Join(b.dir, filepath.FromSlash(path)))
	if err != nil {
		b.t.Fatal(err)
	}
	u := url.URL{Scheme: "file", Path: filepath.ToSlash(full)}
	return u.String() + rest
}

// goTo loads a page and waits until it stands, fonts and deferred scripts included.
func (b *tab) goTo(page string) {
	b.t.Helper()
	b.do("open "+page, chromedp.Navigate(b.address(page)))
	eval[bool](b, `document.fonts.ready.then(() => true)`)
}

// size sets the window's inner size in CSS pixels.
func (b *tab) size(width, height int64) {
	b.t.Helper()
	b.do("resize", chromedp.EmulateViewport(width, height))
}

// scheme sets what the reader prefers, "light" or "dark", and stops animations.
func (b *tab) scheme(name string) {
	b.t.Helper()
	b.media("", name)
}

// media sets the medium ("" or "print") and the colour scheme.
func (b *tab) media(medium, scheme string) {
	b.t.Helper()
	err := b.limited(func(ctx context.Context) error {
		_, err := chromedp.Call(ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{
			Media: medium,
			Features: []*emulation.MediaFeature{
				{Name: "prefers-color-scheme", Value: scheme},
				{Name: "prefers-reduced-motion", Value: "reduce"},
			},
		})
		return err
	})
	if err != nil {
		b.t.Fatalf("media: %v", err)
	}
}

// scripts turns the page's own scripts on or off, from the next page on.
func (b *tab) scripts(on bool) {
	b.t.Helper()
	err := b.limited(func(ctx context.Context) error {
		_, err := chromedp.Call(ctx, emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: !on})
		return err
	})
	if err != nil {
		b.t.Fatalf("scripts: %v", err)
	}
}

// press presses keys, one after the other: text or values of chromedp's package kb.
func (b *tab) press(keys ...string) {
	b.t.Helper()
	for _, k := range keys {
		b.do("press a key", chromedp.KeyEvent(k))
	}
}

// taken returns what the tab noticed so far, and forgets it.
func (b *tab) taken() []string {
	b.mu.Lock()
	defer b.mu.Unlock()
	f := b.faults
	b.faults = nil
	return f
}

// settled waits until the page has drawn and its late requests have begun, and
// returns what the tab noticed.
func (b *tab) settled() []string {
	b.t.Helper()
	eval[bool](b, `new Promise((done) => requestAnimationFrame(() => setTimeout(() => done(true), 30)))`)
	return b.taken()
}

// quiet fails the test when the page complained or asked the network for something.
func (b *tab) quiet() {
	b.t.Helper()
	for _, f := range b.settled() {
		b.t.Error(f)
	}
}

// eval runs an expression in the page and returns its value; a promise is awaited.
func eval[T any](b *tab, expression string) T {
	b.t.Helper()
	v, err := tryEval[T](b, expression)
	if err != nil {
		if len(expression) > 200 {
			expression = expression[:200] + " …"
		}
		b.t.Fatalf("%s: %v", expression, err)
	}
	return v
}

func tryEval[T any](b *tab, expression string) (v T, err error) {
	err = b.limited(func(ctx context.Context) error {
		v, err = chromedp.Run(ctx, chromedp.Evaluate[T](expression, chromedp.EvalAwaitPromise))
		return err
	})
	return v, err
}

// until waits until the expression is true in the page.
func (b *tab) until(expression string) {
	b.t.Helper()
	for start := time.Now(); ; time.Sleep(20 * time.Millisecond) {
		if eval[bool](b, "Boolean("+expression+")") {
			return
		}
		if time.Since(start) > 10*time.Second {
			b.t.Fatalf("never came true: %s", expression)
		}
	}
}

// script reads one of this package's own scripts for use in eval.
func script(t testing.TB, name string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("scripts", name))
	if err != nil {
		t.Fatal(err)
	}
	return string(bytes.TrimSpace(data))
}
