package nest

import (
	"bufio"
	"compress/gzip"
	"encoding/csv"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"
)

// instance is a published problem with the best known values of three stages
// and trimming.
type instance struct {
	name, class       string
	problem           Problem
	oriented, rotated int64
}

// readSet reads the published set from the folder that DRYFIT_BENCH names.
func readSet(tb testing.TB) []instance {
	tb.Helper()
	dir := os.Getenv("DRYFIT_BENCH")
	if dir == "" {
		tb.Skip("DRYFIT_BENCH is not set: published sets are not measured")
	}
	known := readKnown(tb, filepath.Join(dir, "sheet", "known.csv"))
	f, err := os.Open(filepath.Join(dir, "sheet", "classes_odd.txt.gz"))
	if err != nil {
		tb.Fatal(err)
	}
	defer f.Close()
	z, err := gzip.NewReader(f)
	if err != nil {
		tb.Fatal(err)
	}
	var out []instance
	lines := bufio.NewScanner(z)
	lines.Buffer(nil, 1<<20)
	for lines.Scan() {
		name, p := parseInstance(tb, lines.Text())
		k, ok := known[name]
		if !ok {
			tb.Fatalf("nothing known of %s", name)
		}
		k.name, k.problem = name, p
		out = append(out, k)
	}
	if len(out) == 0 {
		tb.Fatal("empty set")
	}
	return out
}

// parseInstance reads "NAME | WxH | wxh[:qty] ...".
func parseInstance(tb testing.TB, line string) (string, Problem) {
	tb.Helper()
	f := strings.Split(line, "|")
	s := Sheet{Price: 1, Count: Unlimited}
	if _, err := fmt.Sscanf(strings.TrimSpace(f[1]), "%dx%d", &s.W, &s.H); err != nil {
		tb.Fatal(err)
	}
	p := Problem{Sheets: []Sheet{s}}
	for _, word := range strings.Fields(f[2]) {
		q := Part{Count: 1}
		size, n, many := strings.Cut(word, ":")
		if _, err := fmt.Sscanf(size, "%dx%d", &q.W, &q.H); err != nil {
			tb.Fatal(err)
		}
		if many {
			q.Count = number(tb, n)
		}
		p.Parts = append(p.Parts, q)
	}
	return strings.TrimSpace(f[0]), p
}

func number(tb testing.TB, s string) int {
	tb.Helper()
	n, err := strconv.Atoi(s)
	if err != nil {
		tb.Fatal(err)
	}
	return n
}

func readKnown(tb testing.TB, path string) map[string]instance {
	tb.Helper()
	f, err := os.Open(path)
	if err != nil {
		tb.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		tb.Fatal(err)
	}
	col := map[string]int{}
	for i, h := range rows[0] {
		col[h] = i
	}
	known := map[string]instance{}
	for _, r := range rows[1:] {
		known[r[col["name"]]] = instance{class: r[col["class"]],
			oriented: int64(number(tb, r[col["bk_oriented_3stage"]])),
			rotated:  int64(number(tb, r[col["bk_rotated_3stage"]]))}
	}
	return known
}

// BenchmarkPublished measures the published set; every result is checked, and
// what it proves is held against the best known value.
func BenchmarkPublished(b *testing.B) {
	for _, turns := range []bool{false, true} {
		name := "oriented"
		if turns {
			name = "rotated"
		}
		b.Run(name, func(b *testing.B) {
			list := readSet(b)
			for b.Loop() {
				measure(b, list, turns)
			}
		})
	}
}

// tally sums a class.
type tally struct {
	sheets, lower, known int64
	complete             int
	worst, worstCPU      time.Duration
	steps                int
}

func (t *tally) add(r Result, known int64, took, cpu time.Duration) {
	t.sheets, t.lower, t.known = t.sheets+r.Money, t.lower+r.Lower, t.known+known
	t.worst, t.worstCPU, t.steps = max(t.worst, took), max(t.worstCPU, cpu), max(t.steps, r.Steps)
	if r.Money == r.Lower {
		t.complete++
	}
}

func (t *tally) String() string {
	return fmt.Sprintf("%d sheets, known %d, lower %d, proven %d, worst %v, computing %v, %d steps",
		t.sheets, t.known, t.lower, t.complete, t.worst, t.worstCPU, t.steps)
}

func measure(b *testing.B, list []instance, turns bool) {
	classes := map[string]*tally{}
	all := &tally{}
	for _, in := range list {
		p, known := in.problem, in.oriented
		if turns {
			p.Parts, known = turned(p.Parts), in.rotated
		}
		start, busy := time.Now(), cpuTime()
		r := Pack(p)
		took, cpu := time.Since(start), cpuTime()-busy
		if err := recheck(p, r); err != nil {
			b.Fatalf("%s: %v", in.name, err)
		}
		if classes[in.class] == nil {
			classes[in.class] = &tally{}
		}
		if r.Lower > known {
			b.Fatalf("%s: bound %d, known %d", in.name, r.Lower, known)
		}
		classes[in.class].add(r, known, took, cpu)
		all.add(r, known, took, cpu)
		if testing.Verbose() && r.Money != r.Lower {
			b.Logf("%s: %d to %d, known %d, by %s, steps %d, %v", in.name, r.Lower, r.Money, known, r.Proof.By, r.Steps, cpu)
		}
	}
	for _, c := range slices.Sorted(maps.Keys(classes)) {
		b.Logf("class %s: %v", c, classes[c])
	}
	b.Logf("all: %v", all)
	b.ReportMetric(float64(all.sheets), "sheets")
	b.ReportMetric(float64(all.known), "known")
	b.ReportMetric(float64(all.lower), "lower")
	b.ReportMetric(float64(all.complete), "proven")
	b.ReportMetric(all.worst.Seconds(), "s-worst")
	b.ReportMetric(all.worstCPU.Seconds(), "cpu-s-worst")
}

func turned(parts []Part) []Part {
	out := slices.Clone(parts)
	for i := range out {
		out[i].Turns = true
	}
	return out
}
