package cli_test

import (
	"bufio"
	"io"
	"net/http"
	"os"
	"os/exec"
	"strings"
	"testing"
)

// program is a server that runs as a process of its own: the test binary under the program's name.
type program struct {
	cmd     *exec.Cmd
	address string
}

func serveAlone(t testing.TB, data string) program {
	t.Helper()
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	cmd := &exec.Cmd{Path: self, Args: []string{"dryfit", "serve", "--data", data, "--listen", "127.0.0.1:0"}, Stderr: os.Stderr}
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { cmd.Process.Kill(); cmd.Wait() })
	for lines := bufio.NewScanner(out); lines.Scan(); {
		if address, ok := strings.CutPrefix(lines.Text(), "Rooms: "); ok {
			return program{cmd, address}
		}
	}
	t.Fatal("the server ended before it said where it listens")
	return program{}
}

// BenchmarkColdStart is from the start of the process to the first page: on an empty folder, into which the demo rooms
// are put first, and on one that has them.
func BenchmarkColdStart(b *testing.B) {
	b.Run("first", func(b *testing.B) {
		for b.Loop() {
			firstPage(b, b.TempDir())
		}
	})
	b.Run("again", func(b *testing.B) {
		data := b.TempDir()
		firstPage(b, data)
		for b.Loop() {
			firstPage(b, data)
		}
	})
}

func firstPage(b *testing.B, data string) {
	b.Helper()
	p := serveAlone(b, data)
	answer, err := http.Get(p.address + "/")
	if err != nil {
		b.Fatal(err)
	}
	page, err := io.ReadAll(answer.Body)
	answer.Body.Close()
	if err != nil || answer.StatusCode != 200 || !strings.Contains(string(page), "Quarry Row") {
		b.Fatalf("%d %v", answer.StatusCode, err)
	}
	b.StopTimer()
	p.cmd.Process.Kill()
	p.cmd.Wait()
	b.StartTimer()
}
