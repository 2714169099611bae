package nest

import (
	"fmt"
	"strconv"
	"strings"
	"testing"
)

// parse reads a problem in one line: sheets, parts and the saw, divided by "|".
//
//	8x6$3*2-1 is two sheets of 8 by 6 for 3 each that lose 1 at each side;
//	3x4r*2 is two parts of 3 by 4 that may be turned;
//	then: kerf 1, least 2, stages 3, rip, crosscut, budget 10.
func parse(t testing.TB, line string) Problem {
	t.Helper()
	f := strings.Split(line, "|")
	p := parseSaw(t, strings.Fields(f[2]))
	for _, w := range strings.Fields(f[0]) {
		w, trim := tail(t, w, "-", 0)
		w, count := tail(t, w, "*", Unlimited)
		w, price := tail(t, w, "$", 0)
		s := Sheet{Price: int64(price), Count: count, Trim: int64(trim)}
		scan(t, w, &s.W, &s.H)
		p.Sheets = append(p.Sheets, s)
	}
	for _, w := range strings.Fields(f[1]) {
		w, count := tail(t, w, "*", 1)
		w, turns := strings.CutSuffix(w, "r")
		q := Part{Count: count, Turns: turns}
		scan(t, w, &q.W, &q.H)
		p.Parts = append(p.Parts, q)
	}
	return p
}

func parseSaw(t testing.TB, words []string) (p Problem) {
	t.Helper()
	for i := 0; i < len(words); i++ {
		switch words[i] {
		case "rip":
			p.First = Rip
			continue
		case "crosscut":
			p.First = Crosscut
			continue
		}
		n, err := strconv.Atoi(words[i+1])
		if err != nil {
			t.Fatal(err)
		}
		switch words[i] {
		case "kerf":
			p.Kerf = int64(n)
		case "least":
			p.LeastSide = int64(n)
		case "stages":
			p.Stages = n
		case "budget":
			p.Budget = n
		default:
			t.Fatalf("unknown word %q", words[i])
		}
		i++
	}
	return p
}

func tail(t testing.TB, w, mark string, none int) (string, int) {
	t.Helper()
	head, n, ok := strings.Cut(w, mark)
	if !ok {
		return w, none
	}
	v, err := strconv.Atoi(n)
	if err != nil {
		t.Fatal(err)
	}
	return head, v
}

func scan(t testing.TB, w string, a, b *int64) {
	t.Helper()
	if _, err := fmt.Sscanf(w, "%dx%d", a, b); err != nil {
		t.Fatalf("%q: %v", w, err)
	}
}
