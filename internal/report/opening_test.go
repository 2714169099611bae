package report_test

import (
	"context"
	"strings"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/geom"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// Where the niche's tile ends, against the laid pieces: none reaches into the opening, and on each side some end on its line.
func TestTileOpeningAgainstThePieces(t *testing.T) {
	for _, edge := range []string{"edge: trim 3", "edge: miter", ""} {
		p := niche(t, edge)
		s, _ := p.Room.Face("shower wall")
		box := report.TileOpening(s, s.Openings[0])
		if edge == "edge: miter" && (box.W() >= s.Openings[0].Rect.W() || box.H() >= s.Openings[0].Rect.H()) {
			t.Errorf("%s: tile reaches beyond the board, yet %v is no smaller than %v", edge, box, s.Openings[0].Rect)
		}
		if got := report.Holes(p, s, face(p, s)); !strings.Contains(strings.Join(flat(got), "|"), p.Style.Bare(box.W())+" × "+p.Style.Bare(box.H())) {
			t.Errorf("%s: the table does not say %v: %v", edge, box, got.Rows)
		}
		if ends := endsAt(t, box, face(p, s)); ends != [4]bool{true, true, true, true} {
			t.Errorf("%s: pieces end at the left, bottom, right, top: %v", edge, ends)
		}
	}
}

// A face without tile has its openings once: at the board.
func TestOpeningsOfABareFace(t *testing.T) {
	p := niche(t, "edge: miter")
	s, _ := p.Room.Face("shower wall")
	want := p.Style.Bare(s.Openings[0].Rect.W()) + " × " + p.Style.Bare(s.Openings[0].Rect.H())
	if got := strings.Join(flat(report.Holes(p, s, tiling.Face{})), "|"); strings.Count(got, "lower left corner") != 1 || !strings.Contains(got, want) {
		t.Errorf("%s: %s is wanted once", got, want)
	}
}

func flat(t report.Table) (out []string) {
	for _, r := range t.Rows {
		out = append(out, r...)
	}
	return out
}

// niche plans the room under the gable with another edge at its niche.
func niche(t *testing.T, edge string) plan.Plan {
	for _, r := range demo.Rooms() {
		if r.File != "gable.yaml" {
			continue
		}
		text := strings.Replace(string(r.Text), "edge: trim 3", edge, 1)
		p, err := plan.Make(context.Background(), r.File, []byte(text), plan.Options{})
		if err != nil {
			t.Fatal(err)
		}
		return p
	}
	panic("no such room")
}

func face(p plan.Plan, s site.Face) tiling.Face {
	for _, f := range p.Tiling.Faces {
		if f.Name == s.Name {
			return f
		}
	}
	return tiling.Face{}
}

// endsAt tells on which sides of an opening pieces end; corners are drawn to a few counts.
func endsAt(t *testing.T, box geom.Rect, f tiling.Face) (ends [4]bool) {
	const slack = 4
	in := geom.Rect{Min: box.Min.Add(geom.Point{X: slack, Y: slack}), Max: box.Max.Sub(geom.Point{X: slack, Y: slack})}
	near := func(a, b unit.Length) bool { return (a - b).Abs() <= slack }
	for _, z := range f.Fields {
		for _, c := range z.Chosen().Pieces {
			if c.OnFace.Meets(in) {
				t.Errorf("%s reaches into the opening", c.Address)
			}
			for _, v := range c.OnFace[0] {
				if v.P.Y > in.Min.Y && v.P.Y < in.Max.Y {
					ends[0] = ends[0] || near(v.P.X, box.Min.X)
					ends[2] = ends[2] || near(v.P.X, box.Max.X)
				}
				if v.P.X > in.Min.X && v.P.X < in.Max.X {
					ends[1] = ends[1] || near(v.P.Y, box.Min.Y)
					ends[3] = ends[3] || near(v.P.Y, box.Max.Y)
				}
			}
		}
	}
	return ends
}
