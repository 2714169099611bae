package cli_test

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"dryfit/internal/cli"
)

// The exit status as `dryfit --help` says it: 1 for what is wrong in a document, 2 for what is no document. Either way the findings are
// printed, and of what was not read no sheets are written.
func TestStatusOfADocument(t *testing.T) {
	for _, c := range []struct {
		what, src, said string
		want            int
	}{
		{"a wrong word", "dryfit: 1\nname: It\nunits: inch\n", "unknown", cli.Stopped},
		{"broken YAML", "dryfit: 1\nname: {It\n", "this is no YAML", cli.Failed},
		{"UTF-16", "\xff\xfed\x00", "the file is UTF-16", cli.Failed},
		{"another encoding", "dryfit: 1\nname: caf\xe9\n", "not UTF-8", cli.Failed},
		{"a binary", "\x7fELF\x02\x01", "control character", cli.Failed},
	} {
		dir := t.TempDir()
		file, sheets := filepath.Join(dir, "it.yaml"), filepath.Join(dir, "sheets")
		if err := os.WriteFile(file, []byte(c.src), 0o600); err != nil {
			t.Fatal(err)
		}
		for _, args := range [][]string{{"check", file}, {"plan", file, "-o", sheets}} {
			var out, errs bytes.Buffer
			got := cli.Run(context.Background(), args, cli.Streams{Out: &out, Err: &errs, Now: func() time.Time { return time.Time{} }})
			if got != c.want {
				t.Errorf("%s, %s: status %d, want %d; %s", c.what, args[0], got, c.want, errs.String())
			}
			if c.want == cli.Failed && !strings.Contains(out.String(), c.said) {
				t.Errorf("%s, %s: the findings are not printed: %s", c.what, args[0], out.String())
			}
		}
		if _, err := os.Stat(sheets); c.want == cli.Failed && !os.IsNotExist(err) {
			t.Errorf("%s: sheets are written of what was not read", c.what)
		}
	}
}
