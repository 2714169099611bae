// Package outside holds the optimizers against a solver that nobody here wrote.
//
// It takes a small linear program in whole numbers, writes it in the LP format, lets glpsol (GLPK, a general solver for linear and
// mixed-integer programs) find its least cost, and reads what that prints. Tests alone use it; where glpsol is not on the machine they
// are skipped, saying so. Nothing depends on how long it takes.
package outside

import (
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// Program is variables and rows; the cost of the variables is to be the least.
type Program struct {
	cost      []int64
	low, high []int64
	rows      []string
}

// None is the upper bound of a variable that has none.
const None = math.MaxInt64

// Var adds a variable of whole numbers and gives its index.
func (p *Program) Var(cost, low, high int64) int {
	p.cost, p.low, p.high = append(p.cost, cost), append(p.low, low), append(p.high, high)
	return len(p.cost) - 1
}

// Term is a variable and its factor.
type Term struct {
	Var    int
	Factor int64
}

// AtLeast asks that the sum of terms be b or more, AtMost that it be b or less.
func (p *Program) AtLeast(terms []Term, b int64) { p.row(terms, ">=", b) }
func (p *Program) AtMost(terms []Term, b int64)  { p.row(terms, "<=", b) }

func (p *Program) row(terms []Term, sense string, b int64) {
	p.rows = append(p.rows, fmt.Sprintf(" r%d: %s %s %d", len(p.rows), sum(terms), sense, b))
}

// sum writes terms; a line of the format is short.
func sum(terms []Term) string {
	var s strings.Builder
	for i, t := range terms {
		if i%8 == 7 {
			s.WriteString("\n ")
		}
		fmt.Fprintf(&s, "%+d x%d ", t.Factor, t.Var)
	}
	return s.String()
}

// text is the program in the LP format.
func (p *Program) text() string {
	var s strings.Builder
	var all []Term
	for i, c := range p.cost {
		all = append(all, Term{i, c})
	}
	fmt.Fprintf(&s, "Minimize\n cost: %s\nSubject To\n%s\nBounds\n", sum(all), strings.Join(p.rows, "\n"))
	for i := range p.cost {
		if p.high[i] == None {
			fmt.Fprintf(&s, " x%d >= %d\n", i, p.low[i])
			continue
		}
		fmt.Fprintf(&s, " %d <= x%d <= %d\n", p.low[i], i, p.high[i])
	}
	s.WriteString("General\n")
	for i := range p.cost {
		fmt.Fprintf(&s, " x%d\n", i)
	}
	s.WriteString("End\n")
	return s.String()
}

// Least is the least cost that glpsol proves.
func (p *Program) Least(t testing.TB) int64 {
	t.Helper()
	glpsol, err := exec.LookPath("glpsol")
	if err != nil {
		t.Skip("glpsol is not on this machine: nothing was held against it")
	}
	dir := t.TempDir()
	in, out := filepath.Join(dir, "in.lp"), filepath.Join(dir, "out.txt")
	if err := os.WriteFile(in, []byte(p.text()), 0o600); err != nil {
		t.Fatal(err)
	}
	if said, err := exec.Command(glpsol, "--lp", in, "-w", out).CombinedOutput(); err != nil {
		t.Fatalf("glpsol: %v\n%s", err, said)
	}
	told, err := os.ReadFile(out)
	if err != nil {
		t.Fatal(err)
	}
	return read(t, string(told))
}

// read takes the cost from the line "s mip ROWS COLUMNS o COST", where o says that it is proven the least.
func read(t testing.TB, told string) int64 {
	t.Helper()
	for _, line := range strings.Split(told, "\n") {
		f := strings.Fields(line)
		if len(f) != 6 || f[0] != "s" {
			continue
		}
		v, err := strconv.ParseFloat(f[5], 64)
		if err != nil || f[1] != "mip" || f[4] != "o" || math.Abs(v-math.Floor(v+0.5)) > 1e-6 {
			t.Fatalf("glpsol: %s", line)
		}
		return int64(math.Floor(v + 0.5))
	}
	t.Fatalf("glpsol printed no result:\n%s", told)
	return 0
}
