package report_test

import (
	"context"
	"fmt"
	"strings"
	"sync"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

var plans = sync.OnceValue(func() []plan.Plan {
	var out []plan.Plan
	for _, r := range demo.Rooms() {
		p, err := plan.Make(context.Background(), r.File, r.Text, plan.Options{})
		if err != nil {
			panic(err)
		}
		out = append(out, p)
	}
	return out
})

// Rows are as wide as their heads.
func TestTablesHaveTheirColumns(t *testing.T) {
	for _, p := range plans() {
		tables := []report.Table{report.Readings(p), report.Corners(p), report.Findings(p), report.Assumed(p), report.Goods(p),
			report.Order(p), report.Cost(p), report.Trips(p), report.Alternatives(p), report.Back(p), report.Reckoned(p), report.Bedding(p), report.Weights(p), report.MixingDays(p)}
		for _, x := range p.Takeoff.Recipes {
			tables = append(tables, report.Mixing(p, x))
		}
		for _, f := range p.Tiling.Faces {
			s, _ := p.Room.Face(f.Name)
			tables = append(tables, report.Pieces(p, f), report.Saw(p, f), report.Edges(p, s), report.Holes(p, s, f), report.Buried(p, s))
			for _, z := range f.Fields {
				tables = append(tables, report.Layouts(p, s, z), report.CourseRod(p, s, z))
				for _, r := range report.Columns(z) {
					tables = append(tables, report.ColumnRod(p, s, r))
				}
			}
		}
		for _, x := range tables {
			for _, r := range x.Rows {
				if len(r) != len(x.Columns) {
					t.Errorf("%s, %s: %d cells under %d heads (%s)", p.Name, x.Title, len(r), len(x.Columns), x.Heads())
				}
			}
		}
	}
}

// The goods' table is the plan's, and adds up.
func TestGoodsAddUp(t *testing.T) {
	for _, p := range plans() {
		for i, r := range report.Goods(p).Rows {
			g := p.Tiling.Goods[i]
			want := fmt.Sprint(g.Whole, g.CutFrom, g.Breakage, g.Spares, g.Buy)
			if got := strings.Join(r[1:6], " "); got != want {
				t.Errorf("%s: prints %s, the plan has %s", g.Tile, got, want)
			}
			var n [5]int
			for k := range n {
				fmt.Sscan(r[1+k], &n[k])
			}
			if n[0]+n[1]+n[2]+n[3] != n[4] {
				t.Errorf("%s: %v does not add up", g.Tile, n)
			}
		}
	}
}

// Every cut of every piece is in the saw's list once, and the counts say how many pieces stand there.
func TestSawListIsWhole(t *testing.T) {
	for _, p := range plans() {
		for _, f := range p.Tiling.Faces {
			steps := 0
			for _, z := range f.Fields {
				for _, c := range z.Chosen().Pieces {
					steps += len(c.Cut.Steps)
				}
			}
			listed := 0
			for _, r := range report.Saw(p, f).Rows {
				var n int
				fmt.Sscan(r[3], &n)
				listed += n
				if names := strings.Count(r[2], ",") + 1; names != n {
					t.Errorf("%s: %q counts %d", f.Name, r[2], n)
				}
			}
			if listed != steps {
				t.Errorf("%s, %s: %d cuts listed of %d", p.Name, f.Name, listed, steps)
			}
		}
	}
}

// Each piece that a tile yields is on the cutting plan once.
func TestCuttingIsWhole(t *testing.T) {
	for _, p := range plans() {
		for _, g := range p.Tiling.Goods {
			seen := map[string]int{}
			for _, tile := range report.ByTile(g) {
				for _, s := range tile {
					seen[s.Piece]++
				}
			}
			for _, s := range g.From {
				if seen[s.Piece] != 1 {
					t.Errorf("%s: %s is on the cutting plan %d times", g.Tile, s.Piece, seen[s.Piece])
				}
			}
			if rows := len(report.Cutting(p, g).Rows); rows != g.CutFrom {
				t.Errorf("%s: %d rows for %d tiles", g.Tile, rows, g.CutFrom)
			}
		}
	}
}

func TestFacts(t *testing.T) {
	for _, p := range plans() {
		facts := report.Facts(p)
		if len(facts) != 5 {
			t.Fatalf("%s: %d facts", p.Name, len(facts))
		}
		for _, f := range facts {
			if f.Question == "" || f.Answer == "" || strings.Contains(f.Answer, "{0}") {
				t.Errorf("%s: %q is answered %q", p.Name, f.Question, f.Answer)
			}
		}
		for _, g := range p.Tiling.Goods {
			if !strings.Contains(facts[2].Answer, fmt.Sprintf("%s: %d tile", g.Tile, g.Buy)) {
				t.Errorf("%s: %q does not buy %d %s", p.Name, facts[2].Answer, g.Buy, g.Tile)
			}
		}
		for _, f := range p.Tiling.Faces {
			if f.Ledger != nil && !strings.Contains(facts[4].Answer, report.FromLevel(p.Style, f.Ledger.Y)) {
				t.Errorf("%s: %q lacks the ledger of %s", p.Name, facts[4].Answer, f.Name)
			}
		}
	}
}

// What nothing is known of is said so, and nothing of it is called fine.
func TestFactsOfNothing(t *testing.T) {
	for i, f := range report.Facts(plan.Plan{Style: unit.DefaultStyle(unit.Inches)}) {
		want := []string{"do not fix the shape", "0 checks could not be made", "not known", "not known", "not known"}[i]
		if !strings.Contains(f.Answer, want) {
			t.Errorf("%q is answered %q, want %q in it", f.Question, f.Answer, want)
		}
	}
}

func TestVerdicts(t *testing.T) {
	for _, c := range []struct {
		survey site.Survey
		want   string
	}{
		{site.Survey{Verdict: site.Agree, Closing: -unit.Inch / 16}, "they agree with each other; the greatest closing error is 1/16 in"},
		{site.Survey{Verdict: site.NoCheck}, "nothing checks them: there are just enough; take one more diagonal"},
		{site.Survey{Verdict: site.OneSuspect, Closing: 7 * unit.Inch / 16, Readings: []site.Reading{{Name: "A-C"}}, Suspects: []int{0}, Again: []int{0}},
			"they disagree by 7/16 in; A-C is the likeliest to be wrong: take it again"},
		{site.Survey{Verdict: site.CannotTell, Closing: 7 * unit.Inch / 16, Readings: []site.Reading{{Name: "A-B"}, {Name: "A-C"}, {Name: "B-D"}}, Suspects: []int{0, 1, 2}, Again: []int{1, 2}},
			"they disagree by 7/16 in and cannot tell which is wrong: take A-C and B-D again"},
	} {
		p := plan.Plan{Style: unit.DefaultStyle(unit.Inches)}
		p.Room.Survey = c.survey
		if got := report.Verdict(p); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
}
