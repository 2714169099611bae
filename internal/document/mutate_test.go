package document

import (
	"bytes"
	"math/rand/v2"
	"path/filepath"
	"testing"
)

// corpus gives every document of the tests.
func corpus(t testing.TB) [][]byte {
	t.Helper()
	var all [][]byte
	files, _ := filepath.Glob("testdata/*.yaml")
	more, _ := filepath.Glob("testdata/broken/*.yaml")
	for _, f := range append(files, more...) {
		all = append(all, readFile(t, f))
	}
	if len(all) < 5 {
		t.Fatal("the documents of the tests are gone")
	}
	return all
}

// mutate changes a document in one to four places, as slips of the hand and hostile input do.
func mutate(src []byte, rng *rand.Rand) []byte {
	out := bytes.Clone(src)
	for range 1 + rng.IntN(4) {
		if len(out) < 2 {
			return out
		}
		i := rng.IntN(len(out))
		j := min(len(out), i+1+rng.IntN(12))
		switch rng.IntN(6) {
		case 0:
			out[i] = byte(rng.IntN(256))
		case 1:
			out = append(out[:i:i], out[j:]...)
		case 2:
			out = append(out[:j:j], out[i:]...)
		case 3:
			out = append(append(out[:i:i], tokens[rng.IntN(len(tokens))]...), out[i:]...)
		case 4:
			k := rng.IntN(len(out))
			out = append(append(out[:i:i], out[k:min(len(out), k+20)]...), out[i:]...)
		case 5:
			out = out[:i]
		}
	}
	return out
}

var tokens = []string{"'", "\"", ": ", "- ", "{", "}", "[", "]", "&a ", "*a", "!!map ", "\t", "\r", "\n", "\r\n", "#", " # ", "|", ">", "? ", "---\n", "...\n", "%YAML 1.1\n",
	"\ufeff", "\u2028", "\x00", "\xff", "1e999", "9999999999999999999", "1/0", "-", "½", "unknown", "~", "null", "x", "A-A", "<<: ", "\n\n\n  ", "🛁"}

// A reader of people's files never falls over, and every finding stands at a place in the file.
func TestMutatedDocuments(t *testing.T) {
	rounds := 2000
	if testing.Short() {
		rounds = 300
	}
	docs := corpus(t)
	rng := rand.New(rand.NewPCG(1, 2))
	for i := range rounds {
		src := mutate(docs[i%len(docs)], rng)
		readSafely(t, src)
		if t.Failed() {
			t.Fatalf("round %d:\n%s", i, src)
		}
	}
}

func readSafely(t *testing.T, src []byte) {
	_, found := Read("mutated.yaml", src)
	for _, f := range found {
		insideText(t, src, f)
	}
}

func FuzzRead(f *testing.F) {
	for _, src := range corpus(f) {
		f.Add(src)
	}
	f.Fuzz(func(t *testing.T, src []byte) { readSafely(t, src) })
}
