package web

import (
	"context"
	"fmt"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
)

// browser is one window of a real browser on a server of its own.
type browser struct {
	testing.TB
	ctx  context.Context
	base string
}

// chromium finds the browser that the tests drive.
func chromium() string {
	for _, name := range []string{"chromium", "chromium-browser"} {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
	}
	return ""
}

// browse opens a window of the given size; the test is skipped, and says so, where there is no browser.
func browse(s *site, width, height int64, dark bool) *browser {
	s.Helper()
	path := chromium()
	if testing.Short() || path == "" {
		s.Skip("NOT CHECKED: no chromium is installed, so no page was tried in a browser")
	}
	program := lightBrowser
	if dark {
		program = darkBrowser
	}
	parent, err := program()
	if err != nil {
		s.Fatal(err)
	}
	server := httptest.NewServer(s.http)
	s.Cleanup(server.Close)
	b := &browser{TB: s.TB, base: server.URL}
	b.window(parent, width, height, chromedp.WithNewBrowserContext()) // a person of its own: with cookies and storage of its own
	return b
}

// The browser's program is started once for each light, and all tests open their windows in it.
var (
	lightBrowser = started(false)
	darkBrowser  = started(true)
	allBrowsers  []context.CancelFunc
)

func started(dark bool) func() (context.Context, error) {
	return sync.OnceValues(func() (context.Context, error) {
		opts := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(chromium()), chromedp.Flag("force-dark-mode", dark))
		alloc, stop := chromedp.NewExecAllocator(context.Background(), opts...)
		ctx, end := chromedp.NewContext(alloc)
		allBrowsers = append(allBrowsers, end, stop)
		return ctx, chromedp.Do(ctx, chromedp.Navigate("about:blank"))
	})
}

func TestMain(m *testing.M) {
	code := m.Run()
	for _, stop := range allBrowsers {
		stop()
	}
	os.Exit(code)
}

func (b *browser) window(parent context.Context, width, height int64, o ...chromedp.ContextOption) {
	b.Helper()
	ctx, stop := chromedp.NewContext(parent, o...)
	b.Cleanup(stop)
	b.do2(ctx, chromedp.Navigate("about:blank"))
	limited, cancel := context.WithTimeout(ctx, 5*time.Minute) // a lost browser fails the test and does not hang it
	b.Cleanup(cancel)
	b.ctx = limited
	b.do(chromedp.EmulateViewport(width, height))
}

// another opens a second window on the same server, as another person has it.
func (b *browser) another(width, height int64) *browser {
	b.Helper()
	second := &browser{TB: b.TB, base: b.base}
	second.window(b.ctx, width, height)
	return second
}

func (b *browser) do2(ctx context.Context, steps ...chromedp.Action[chromedp.Void]) {
	b.Helper()
	if err := chromedp.Do(ctx, steps...); err != nil {
		b.Fatal(err)
	}
}

func (b *browser) do(steps ...chromedp.Action[chromedp.Void]) {
	b.Helper()
	b.do2(b.ctx, steps...)
}

func (b *browser) open(path string) { b.Helper(); b.do(chromedp.Navigate(b.base + path)) }

func eval[T any](b *browser, js string) T {
	b.Helper()
	v, err := chromedp.Run(b.ctx, chromedp.Evaluate[T](js, chromedp.EvalAwaitPromise))
	if err != nil {
		b.Fatalf("%s: %v", js, err)
	}
	return v
}

// until waits within the page for a condition; what the page shows then is told where it never comes.
func (b *browser) until(js string) {
	b.Helper()
	look := fmt.Sprintf(`new Promise(done => { let n = 0; const look = () => { let v = false; try { v = %s } catch {} if (v) done(true); else if (++n > 400) done(false); else requestAnimationFrame(() => setTimeout(look, 15)); }; look(); })`, js)
	ok, err := chromedp.Run(b.ctx, chromedp.Evaluate[bool](look, chromedp.EvalAwaitPromise))
	for tries := 0; err != nil && b.ctx.Err() == nil && tries < 50; tries++ { // the page was left meanwhile: look at the next
		ok, err = chromedp.Run(b.ctx, chromedp.Evaluate[bool](look, chromedp.EvalAwaitPromise))
	}
	if err != nil {
		b.Fatal(err)
	}
	if !ok {
		b.picture("failed")
		b.Fatalf("never came: %s\nthe page says: %.1500s", js, eval[string](b, `document.body.innerText`))
	}
}

// keys types as a person does.
func (b *browser) keys(s string) { b.Helper(); b.do(chromedp.KeyEvent(s)) }

// seen keeps what the window shows without its scroll; see picture.
func (b *browser) seen(name string) {
	b.Helper()
	if dir := os.Getenv("DRYFIT_PICTURES"); dir != "" {
		png, err := chromedp.Run(b.ctx, chromedp.CaptureScreenshot())
		if err == nil {
			err = os.WriteFile(filepath.Join(dir, name+".png"), png, 0o644)
		}
		if err != nil {
			b.Error(err)
		}
	}
}

// picture keeps what the window shows, where the environment names a folder for it.
func (b *browser) picture(name string) {
	b.Helper()
	dir := os.Getenv("DRYFIT_PICTURES")
	if dir == "" {
		return
	}
	png, err := chromedp.Run(b.ctx, chromedp.FullScreenshot(100))
	if err == nil {
		err = os.WriteFile(filepath.Join(dir, name+".png"), png, 0o644)
	}
	if err != nil {
		b.Error(err)
	}
}
