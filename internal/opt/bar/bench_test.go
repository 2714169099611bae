package bar

import (
	"bufio"
	"compress/gzip"
	"encoding/csv"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"
)

// instance is a published problem: name, stick, pieces and the proven optimum.
type instance struct {
	name    string
	problem Problem
	optimum int64
}

// readSet reads a published set from the folder that DRYFIT_BENCH names.
func readSet(tb testing.TB, set string) []instance {
	tb.Helper()
	dir := os.Getenv("DRYFIT_BENCH")
	if dir == "" {
		tb.Skip("DRYFIT_BENCH is not set: published sets are not measured")
	}
	known := readKnown(tb, filepath.Join(dir, "stock", "known.csv"), set)
	f, err := os.Open(filepath.Join(dir, "stock", set+".txt.gz"))
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
		best, ok := known[name]
		if !ok {
			tb.Fatalf("no optimum for %s", name)
		}
		out = append(out, instance{name, p, best})
	}
	if len(out) == 0 {
		tb.Fatal("empty set")
	}
	return out
}

// parseInstance reads "NAME capacity m w:d w:d ...".
func parseInstance(tb testing.TB, line string) (string, Problem) {
	tb.Helper()
	f := strings.Fields(line)
	capacity, err := strconv.ParseInt(f[1], 10, 64)
	if err != nil {
		tb.Fatal(err)
	}
	p := Problem{Stocks: []Stock{{Length: capacity, Price: 1, Count: Unlimited}}}
	for _, part := range f[3:] {
		var q Piece
		if _, err := fmt.Sscanf(part, "%d:%d", &q.Length, &q.Count); err != nil {
			tb.Fatal(err)
		}
		p.Pieces = append(p.Pieces, q)
	}
	return f[0], p
}

func readKnown(tb testing.TB, path, set string) map[string]int64 {
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
	known := map[string]int64{}
	for _, r := range rows {
		if r[0] == set {
			if known[r[1]], err = strconv.ParseInt(r[2], 10, 64); err != nil {
				tb.Fatal(err)
			}
		}
	}
	return known
}

var sets = []string{"falkenauer_u", "falkenauer_t", "schwerin1", "hard28"}

// BenchmarkPublished measures the published sets; every result is checked, and
// what it proves is held against the published optimum.
func BenchmarkPublished(b *testing.B) {
	for _, set := range sets {
		b.Run(set, func(b *testing.B) {
			list := readSet(b, set)
			for b.Loop() {
				measure(b, list)
			}
		})
	}
}

func measure(b *testing.B, list []instance) {
	var met, proven, whole int
	var worst, worstCPU time.Duration
	steps := 0
	for _, in := range list {
		start, busy := time.Now(), cpuTime()
		r := Pack(in.problem)
		took, cpu := time.Since(start), cpuTime()-busy
		worst, worstCPU, steps = max(worst, took), max(worstCPU, cpu), max(steps, r.Steps)
		checkPlan(b, in.problem, r)
		if r.Lower > in.optimum || r.Money < in.optimum {
			b.Fatalf("%s: %d to %d against %d", in.name, r.Lower, r.Money, in.optimum)
		}
		if r.Money == in.optimum {
			met++
		}
		if r.Lower == in.optimum {
			proven++
		}
		if r.Complete {
			whole++
		}
		if testing.Verbose() {
			b.Logf("%s: %d to %d, best %d, by %s, remnant %d of %d, steps %d, %v, computing %v",
				in.name, r.Lower, r.Money, in.optimum, r.Proof.By, r.Remnant.Length, r.Longest, r.Steps, took, cpu)
		}
	}
	b.ReportMetric(float64(len(list)), "instances")
	b.ReportMetric(float64(met), "optimal")
	b.ReportMetric(float64(proven), "proven")
	b.ReportMetric(float64(whole), "complete")
	b.ReportMetric(worst.Seconds(), "s-worst")
	b.ReportMetric(worstCPU.Seconds(), "cpu-s-worst")
	b.ReportMetric(float64(steps), "steps-worst")
}
