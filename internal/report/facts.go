package report

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/plan"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// Fact is one thing that a person wants to know first.
type Fact struct{ Question, Answer string }

// Facts are the five that a person wants first. What is not known says so.
func Facts(p plan.Plan) []Fact {
	return []Fact{
		{"Do the readings agree", Verdict(p)},
		{"What stops work, and what is not checked", blockers(p)},
		{"What to buy", purchases(p)},
		{"The narrowest cut that is seen", narrowest(p)},
		{"Where the first course goes", firstCourses(p)},
	}
}

// Verdict says what the readings say of each other. Readings that agree are called that, never a true room.
func Verdict(p plan.Plan) string {
	v := p.Room.Survey
	by := fine(p.Style).Format(v.Closing.Abs())
	switch v.Verdict {
	case site.Agree:
		return "they agree with each other; the greatest closing error is " + by
	case site.NoCheck:
		return "nothing checks them: there are just enough; take one more diagonal"
	case site.OneSuspect:
		return "they disagree by " + by + "; " + readingNames(v, v.Again) + " is the likeliest to be wrong: take it again"
	case site.CannotTell:
		return "they disagree by " + by + " and cannot tell which is wrong: take " + readingNames(v, v.Again) + " again"
	}
	return "the readings do not fix the shape of the room; see the findings"
}

func readingNames(v site.Survey, which []int) string {
	var names []string
	for _, i := range which {
		names = append(names, v.Readings[i].Name)
	}
	return list(names)
}

// list joins words as a sentence does: "a, b and c".
func list(words []string) string {
	if n := len(words); n > 1 {
		return strings.Join(words[:n-1], ", ") + " and " + words[n-1]
	}
	return strings.Join(words, "")
}

func blockers(p plan.Plan) string {
	stops, looks, unchecked, _ := Tally(p.Findings)
	first := "nothing found stops work"
	if stops > 0 {
		first = fmt.Sprintf("%s work, first: %s", Count(stops, "finding stops", "findings stop"), firstStop(p))
	}
	words := fmt.Sprintf("%s; %s to look at; %s", first, Count(looks, "thing", "things"), Count(unchecked, "check could not be made", "checks could not be made"))
	if stops > 0 {
		words += "; nor is anything checked that hangs on what stops"
	}
	return words
}

func firstStop(p plan.Plan) string {
	for _, f := range p.Findings {
		if f.Class == diag.Stop {
			return f.Say(p.Style)
		}
	}
	return ""
}

// Count words a number of things.
func Count(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}

func purchases(p plan.Plan) string {
	var out []string
	for _, g := range p.Tiling.Goods {
		s := fmt.Sprintf("%s: %s", GoodName(p, g), Count(g.Buy, "tile", "tiles"))
		if g.PerBox > 0 {
			s += fmt.Sprintf(" in %s of %d", Count(g.Boxes, "box", "boxes"), g.PerBox)
		}
		out = append(out, s)
	}
	if len(out) == 0 {
		return unlaid
	}
	return strings.Join(out, "; ")
}

const unlaid = "not known: no face is laid out"

// seen is a cut piece and what is seen of it.
type seen struct {
	face  string
	piece piece.Piece
}

func narrowest(p plan.Plan) string {
	var best *seen
	for _, f := range p.Tiling.Faces {
		for _, z := range f.Fields {
			for _, c := range z.Chosen().Pieces {
				if c.Cut.Visible > 0 && (best == nil || c.Cut.Visible < best.piece.Cut.Visible) {
					best = &seen{f.Name, c}
				}
			}
		}
	}
	switch {
	case len(p.Tiling.Faces) == 0:
		return unlaid
	case best == nil:
		return "no tile is cut"
	}
	return fmt.Sprintf("%s, piece %s on %s%s", narrow(p.Style, best.piece.Cut.Visible), best.piece.Address, best.face, meeting(best.piece.Cut))
}

// meeting names what the cut meets that leaves least of a piece.
func meeting(c piece.Cut) string {
	if len(c.Steps) == 0 {
		return ""
	}
	least := slices.MinFunc(c.Steps, func(a, b piece.Step) int { return cmp.Compare(min(a.From, a.To), min(b.From, b.To)) })
	return ", at " + least.Edge
}

func firstCourses(p plan.Plan) string {
	var out []string
	for _, f := range p.Tiling.Faces {
		if f.Ledger != nil {
			out = append(out, f.Name+": its top "+ledger(p, *f.Ledger))
		}
	}
	switch {
	case len(p.Tiling.Faces) == 0:
		return unlaid
	case len(out) == 0:
		return "no wall has straight courses that start from the floor"
	}
	return strings.Join(out, "; ")
}

// LedgerWords says where the line of the first course is, from both datums.
func LedgerWords(p plan.Plan, l tiling.Ledger) string {
	s := p.Style
	words := "top of the first course " + ledger(p, l) + " (" + s.Format(l.AboveFloor) + " at the lowest place along it)"
	if l.CutHigh.Round(s.Mark) != l.CutLow.Round(s.Mark) {
		return words + ", its tiles " + s.Bare(l.CutHigh) + " to " + s.Format(l.CutLow) + " high"
	}
	return words
}

func ledger(p plan.Plan, l tiling.Ledger) string {
	if !p.Room.FinishedKnown {
		return FromLevel(p.Style, l.Y)
	}
	return FromLevel(p.Style, l.Y) + ", " + p.Style.Format(l.Y-p.Room.FinishedFloor) + " above the finished floor"
}

// FromLevel says where a height is from the level line.
func FromLevel(s unit.Style, y unit.Length) string {
	switch {
	case y.Round(s.Mark) == 0:
		return "at the level line"
	case y > 0:
		return s.Format(y) + " above the level line"
	}
	return s.Format(-y) + " below the level line"
}

// GoodName names a good, with its size where the tile comes in several.
func GoodName(p plan.Plan, g tiling.Good) string {
	for _, t := range p.Document.Tiles {
		if t.Name == g.Tile && g.Size < len(t.Set) {
			return g.Tile + ", " + t.Set[g.Size].Name
		}
	}
	return g.Tile
}
