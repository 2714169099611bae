package cli

import (
	"bytes"
	"context"
	"io"
	"net/http"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"
)

// lines is a writer that lets a test wait for a line.
type lines struct {
	mu   sync.Mutex
	all  bytes.Buffer
	seen chan struct{}
}

func (l *lines) Write(b []byte) (int, error) {
	l.mu.Lock()
	defer l.mu.Unlock()
	l.all.Write(b)
	select {
	case l.seen <- struct{}{}:
	default:
	}
	return len(b), nil
}

func (l *lines) String() string { l.mu.Lock(); defer l.mu.Unlock(); return l.all.String() }

// started runs serve and gives what it has printed once it listens, and a function that stops it and gives its status.
func started(t *testing.T, args ...string) (out string, stop func() int) {
	t.Helper()
	ctx, cancel := context.WithCancel(context.Background())
	said := &lines{seen: make(chan struct{}, 1)}
	status := make(chan int, 1)
	go func() {
		status <- Run(ctx, append([]string{"serve", "--listen", "127.0.0.1:0"}, args...), Streams{Out: said, Err: said, Now: time.Now})
	}()
	for !strings.Contains(said.String(), "Stop with") {
		select {
		case <-said.seen:
		case s := <-status:
			cancel()
			t.Fatalf("ended with %d: %s", s, said)
		}
	}
	return said.String(), func() int { cancel(); return <-status }
}

func addressIn(t *testing.T, out string) string {
	t.Helper()
	_, rest, ok := strings.Cut(out, "Rooms: ")
	if !ok {
		t.Fatalf("no address in %q", out)
	}
	address, _, _ := strings.Cut(rest, "\n")
	return address
}

func TestServe(t *testing.T) {
	data := t.TempDir()
	out, stop := started(t, "--data", data)
	answer, err := http.Get(addressIn(t, out) + "/")
	if err != nil {
		t.Fatal(err)
	}
	page, err := io.ReadAll(answer.Body)
	answer.Body.Close()
	if err != nil || answer.StatusCode != 200 || !bytes.Contains(page, []byte("Quarry Row washroom")) {
		t.Errorf("the first page: %d, %v", answer.StatusCode, err)
	}
	var second bytes.Buffer
	if got := Run(context.Background(), []string{"serve", "--listen", "127.0.0.1:0", "--data", data}, Streams{Out: &second, Err: &second, Now: time.Now}); got != Failed {
		t.Errorf("a second server on the same folder ended with %d: %s", got, &second)
	}
	if got := stop(); got != Fine {
		t.Errorf("stopped with %d", got)
	}
}

// A copy of everything, taken from a running server, is put into another folder and served from there.
func TestServeFromACopy(t *testing.T) {
	out, stop := started(t, "--data", t.TempDir())
	address := addressIn(t, out)
	if _, err := http.PostForm(address+"/rooms", url.Values{"name": {"Attic"}, "units": {"mm"}, "corners": {"4"}}); err != nil {
		t.Fatal(err)
	}
	copied := filepath.Join(t.TempDir(), "copy.db")
	if err := os.WriteFile(copied, fetched(t, address+"/everything.db"), 0o600); err != nil {
		t.Fatal(err)
	}
	stop()
	data := t.TempDir()
	var said bytes.Buffer
	back := func() int {
		return Run(context.Background(), []string{"restore", copied, "--data", data}, Streams{Out: &said, Err: &said, Now: time.Now})
	}
	if got := back(); got != Fine {
		t.Fatalf("restore ended with %d: %s", got, &said)
	}
	out, stop = started(t, "--data", data)
	if page := fetched(t, addressIn(t, out)+"/"); !bytes.Contains(page, []byte("Attic")) {
		t.Error("the room is not in the copy")
	}
	stop()
	if got := back(); got != Failed {
		t.Errorf("a copy was put over what was there: %d %s", got, &said)
	}
}

func fetched(t *testing.T, address string) []byte {
	t.Helper()
	answer, err := http.Get(address)
	if err != nil {
		t.Fatal(err)
	}
	defer answer.Body.Close()
	b, err := io.ReadAll(answer.Body)
	if err != nil || answer.StatusCode != 200 {
		t.Fatalf("%s: %d, %v", address, answer.StatusCode, err)
	}
	return b
}
