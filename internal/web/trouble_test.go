package web

import (
	"bufio"
	"bytes"
	"database/sql"
	"fmt"
	"net"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// Something else holds the database while rooms are served: what can not be kept is told, reading goes on, and it is kept
// once the other has gone.
func TestDatabaseIsLocked(t *testing.T) {
	s := open(t, nil)
	other, err := sql.Open("sqlite", filepath.Join(s.folder, "rooms.db")+"?_txlock=immediate")
	if err != nil {
		t.Fatal(err)
	}
	defer other.Close()
	tx, err := other.Begin()
	if err != nil {
		t.Fatal(err)
	}
	edit := func() *httptest.ResponseRecorder {
		return s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `set:["name"]`, "Attic")
	}
	w := edit()
	if w.Code != http.StatusServiceUnavailable || !strings.Contains(w.Body.String(), "keeps the database locked: try again") {
		t.Errorf("%d %s", w.Code, words(w.Body.String()))
	}
	has(t, s.get("/room/1/measure"), "Quarry Row washroom")
	tx.Rollback()
	if w := edit(); w.Code != 303 {
		t.Errorf("after it was let go: %d", w.Code)
	}
	has(t, s.head(1), "name: Attic")
}

// The database is damaged under a running server: a page says so and what to do, nothing is written into it, and when the
// file is whole again all is there.
func TestDatabaseIsDamaged(t *testing.T) {
	s := open(t, nil)
	s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `set:["name"]`, "Attic")
	whole := map[string][]byte{}
	files, _ := filepath.Glob(filepath.Join(s.folder, "rooms.db*"))
	for _, f := range files {
		if strings.HasSuffix(f, "-shm") { // not on the disk, but shared memory
			continue
		}
		b, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		whole[f] = b
		overwrite(t, f, bytes.Repeat([]byte{0xaa}, len(b)))
	}
	for _, ask := range []func() *httptest.ResponseRecorder{
		func() *httptest.ResponseRecorder { return s.ask("GET", "/room/2/measure", nil) },
		func() *httptest.ResponseRecorder {
			return s.post("/room/2/edit", "base", "1", "back", "/room/2/measure", `set:["name"]`, "Cellar")
		},
	} {
		if w := ask(); w.Code != 500 || !strings.Contains(w.Body.String(), "restore a backup") {
			t.Errorf("%d %s", w.Code, words(w.Body.String()))
		}
	}
	for f, b := range whole {
		if now, err := os.ReadFile(f); err != nil || !bytes.Equal(now, bytes.Repeat([]byte{0xaa}, len(b))) {
			t.Errorf("%s was written into: %v", f, err)
		}
		overwrite(t, f, b)
	}
	s.store.Close()
	s = openIn(t, s.folder, nil) // what was read of the damaged file is forgotten with the program
	has(t, s.head(1), "name: Attic")
	has(t, s.head(2), "name: Gable washroom")
}

func overwrite(t *testing.T, file string, b []byte) {
	t.Helper()
	f, err := os.OpenFile(file, os.O_WRONLY, 0)
	if err == nil {
		_, err = f.WriteAt(b, 0)
	}
	if err != nil {
		t.Fatal(err)
	}
	f.Close()
}

// A form that is too large is answered in words, whether a person waits for them or the browser goes on sending.
func TestTooLargeIsAnswered(t *testing.T) {
	s := open(t, nil)
	server := httptest.NewServer(s.http)
	defer server.Close()
	c, err := net.Dial("tcp", strings.TrimPrefix(server.URL, "http://"))
	if err != nil {
		t.Fatal(err)
	}
	defer c.Close()
	const size = 40 << 20
	fmt.Fprintf(c, "POST /room/1/source HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: %d\r\n\r\ntext=", size)
	for left := size - len("text="); left > 0; left -= 1 << 20 {
		if _, err := c.Write(bytes.Repeat([]byte("a"), min(left, 1<<20))); err != nil {
			t.Fatalf("the connection was cut with %d bytes to go: %v", left, err)
		}
	}
	answer, err := http.ReadResponse(bufio.NewReader(c), nil)
	if err != nil {
		t.Fatal(err)
	}
	var page bytes.Buffer
	page.ReadFrom(answer.Body)
	if answer.StatusCode != http.StatusRequestEntityTooLarge || !strings.Contains(page.String(), "up to 1 MB is taken") {
		t.Errorf("%d %s", answer.StatusCode, words(page.String()))
	}
}

// A person sees that answer, and finds what was typed when going back.
func TestTooLargeInABrowser(t *testing.T) {
	s := open(t, nil)
	b := browse(s, 1280, 900, false)
	b.open("/room/1/source")
	b.do(chromedp.Evaluate[chromedp.Void](`document.getElementById("text").value += "# " + "long ".repeat(600000)`))
	b.do(chromedp.Click(chromedp.CSS(`form.write button.main`)))
	b.until(`document.querySelector("main").innerText.includes("up to 1 MB is taken")`)
	b.picture("too-large")
	eval[bool](b, `(history.back(), true)`)
	b.until(`location.pathname === "/room/1/source" && document.getElementById("text").value.length > 3000000`)
	if s.head(1) != s.first(1) {
		t.Error("something was kept")
	}
}
