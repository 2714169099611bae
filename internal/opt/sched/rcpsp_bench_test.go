package sched

import (
	"bufio"
	"compress/gzip"
	"encoding/csv"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"
)

// An instance is one of Kolisch, Sprecher: PSPLIB, EJOR 96 (1996) 205-216.
type instance struct {
	name         string
	problem      Problem
	path         int // critical path
	bound, known int // best published
}

// instances reads a set from the folder that DRYFIT_BENCH names.
func instances(tb testing.TB, set string) []instance {
	dir := os.Getenv("DRYFIT_BENCH")
	if dir == "" {
		tb.Skip("DRYFIT_BENCH names no folder with the published sets")
	}
	known := knownFinishes(tb, filepath.Join(dir, "rcpsp", "known.csv"))
	f, err := os.Open(filepath.Join(dir, "rcpsp", set+".rcp.txt.gz"))
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
	for lines.Scan() {
		name := strings.TrimSpace(lines.Text())
		if name == "" {
			continue
		}
		out = append(out, instance{name, readInstance(lines), known[name][0], known[name][1], known[name][2]})
	}
	return out
}

func knownFinishes(tb testing.TB, path string) map[string][3]int {
	f, err := os.Open(path)
	if err != nil {
		tb.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		tb.Fatal(err)
	}
	known := map[string][3]int{}
	for _, row := range rows[1:] {
		var of [3]int
		for i := range of {
			of[i], _ = strconv.Atoi(row[1+i])
		}
		known[row[0]] = of
	}
	return known
}

func readInstance(lines *bufio.Scanner) Problem {
	head := readNumbers(lines)
	caps := readNumbers(lines)
	var p Problem
	for _, c := range caps {
		p.Resources = append(p.Resources, Constant(c))
	}
	for i := range head[0] {
		row := readNumbers(lines)
		j := Job{Duration: row[0], Calendar: Clock}
		for r := range caps {
			j.Uses = append(j.Uses, Use{Resource: r, Amount: row[1+r]})
		}
		for _, next := range row[2+len(caps):] {
			p.Lags = append(p.Lags, AtLeast(End(i), Start(next-1), 0))
		}
		p.Jobs = append(p.Jobs, j)
		p.Horizon += j.Duration
	}
	return p
}

func readNumbers(lines *bufio.Scanner) []int {
	lines.Scan()
	var out []int
	for _, w := range strings.Fields(lines.Text()) {
		n, _ := strconv.Atoi(w)
		out = append(out, n)
	}
	return out
}

// The steps of each set are about 2 s and at most 5 s of one idle core for an instance that is not proven sooner.

// BenchmarkThirtyJobs tells how many of the known optima are reached, and how many proven.
func BenchmarkThirtyJobs(b *testing.B) { benchmarkSet(b, "j30", 10_000_000) }

// BenchmarkSixtyJobs measures the way to the best known finishes.
func BenchmarkSixtyJobs(b *testing.B) { benchmarkSet(b, "j60a", 20_000_000) }

func benchmarkSet(b *testing.B, set string, steps int) {
	all := instances(b, set)
	for b.Loop() {
		t := tally{}
		for i := range all {
			t.add(b, &all[i], steps)
		}
		t.report(b, len(all))
	}
}

// A tally sums up a set.
type tally struct {
	proven, reached   int
	gap, open, behind float64 // percent: over the best known, over our bound, over the critical path
	slowest           time.Duration
}

func (t *tally) add(b *testing.B, in *instance, steps int) {
	began := time.Now()
	r := Solve(&in.problem, Options{Steps: steps})
	t.slowest = max(t.slowest, time.Since(began))
	if bad := wrong(&in.problem, &r); bad != "" || r.Starts == nil {
		b.Fatalf("%s: %s", in.name, bad)
	}
	if r.Finish < in.bound || r.Bound > in.known {
		b.Fatalf("%s: finish %d and bound %d against the published %d to %d", in.name, r.Finish, r.Bound, in.bound, in.known)
	}
	if r.Outcome == Optimal {
		t.proven++
	}
	if r.Finish <= in.known {
		t.reached++
	} else if in.bound == in.known {
		b.Logf("%s: %d, the optimum is %d", in.name, r.Finish, in.known)
	}
	t.gap += over(r.Finish, in.known)
	t.open += over(r.Finish, r.Bound)
	t.behind += over(r.Finish, in.path)
}

func over(a, b int) float64 { return 100 * float64(a-b) / float64(b) }

func (t *tally) report(b *testing.B, n int) {
	b.ReportMetric(float64(n), "instances")
	b.ReportMetric(float64(t.reached), "reached")
	b.ReportMetric(float64(t.proven), "proven")
	b.ReportMetric(t.gap/float64(n), "%over-known")
	b.ReportMetric(t.open/float64(n), "%over-bound")
	b.ReportMetric(t.behind/float64(n), "%over-path")
	b.ReportMetric(t.slowest.Seconds(), "s-slowest")
}
