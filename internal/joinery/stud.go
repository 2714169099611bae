package joinery

import (
	"cmp"
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// Stud is the middle of a stud that is recorded, in its wall's frame.
type Stud struct {
	Name string
	X    unit.Length
}

// studs are those of a wall that are recorded: what is in the wall, and the places at which its studs were read.
func (r *room) studs(f site.Face) []Stud {
	var all []Stud
	for _, b := range f.Buried {
		if b.Kind == "stud" {
			all = append(all, Stud{b.Name, (b.Rect.Min.X + b.Rect.Max.X) / 2})
		}
	}
	for _, w := range r.doc.Walls {
		for _, s := range w.Studs {
			if x, _, ok := r.shape.Across(f.Name, document.Across{Given: true, From: f.LeftCorner, Lo: s.X, At: s.At}, 0); ok && w.Name == f.Name {
				all = append(all, Stud{"the stud read there", x})
			}
		}
	}
	slices.SortStableFunc(all, func(a, b Stud) int { return cmp.Compare(a.X, b.X) })
	return all
}

// recorded reports whether any stud or blocking of a wall is recorded.
func recorded(f site.Face) bool {
	return slices.ContainsFunc(f.Buried, func(b site.Buried) bool { return b.Kind == "stud" || b.Kind == "blocking" })
}

// Scarf is where two pieces of a run meet.
type Scarf struct {
	X  unit.Length // the middle of the lap, in the wall's frame
	On string      // the stud that it lies on; "" for none
}

// scarfs parts a run of n pieces: where it can, over studs, else evenly. ends gives for each joint how much of the whole lies before it; the
// whole is the run and a lap, as long as the stick is thick, for each joint.
func (m *trimmer) scarfs(f site.Face, start, whole, stick unit.Length, n int, first, last unit.Length) (ends []unit.Length, at []Scarf) {
	mark, thick := m.r.mark(), m.good.thick
	all := m.r.studs(f)
	before := unit.Length(0)
	for i := 1; i < n; i++ {
		most, least := before+stick, whole-unit.Length(n-i)*stick+last
		if i == 1 {
			most -= first
		}
		even := (before + (whole-before)/unit.Length(n-i+1)).Round(mark) // what is left, shared out
		if even > most || even < least {
			even = max(most.Floor(mark), least)
		}
		lap := unit.Length(i-1)*thick + thick/2
		end, s := even, Scarf{X: start + even - lap}
		for _, k := range all {
			c := (k.X - start + lap).Round(mark)
			if c >= least && c <= most && c > before && (s.On == "" || (c-even).Abs() < (end-even).Abs()) {
				end, s = c, Scarf{k.X, k.Name}
			}
		}
		ends, at, before = append(ends, end), append(at, s), end
	}
	for _, s := range at {
		switch {
		case s.On != "":
		case len(all) == 0:
			m.r.found.Add(diag.Note, "scarf-stud", m.doc.At, "a scarf of {0} along {1} lies {2} from its left end; no stud is recorded there, so it may hang in the air", "find the stud nearest to it and move the scarf over it, or back it with blocking", diag.T(m.doc.Name), diag.T(f.Name), diag.L(s.X))
		default:
			m.r.found.Add(diag.Note, "scarf-stud", m.doc.At, "no recorded stud of {1} is within reach of the stick for a scarf of {0}: it lies {2} from the left end", "back it with blocking, or use a longer stick", diag.T(m.doc.Name), diag.T(f.Name), diag.L(s.X))
		}
	}
	return ends, at
}

// ledger tells what a run that carries the first course is screwed into.
func (m *trimmer) ledger(f site.Face, r *Run) {
	if m.doc.Kind != document.Ledger {
		return
	}
	for _, s := range m.r.studs(f) {
		if s.X > r.From && s.X < r.From+r.Length {
			r.Into = append(r.Into, s)
		}
	}
	if len(r.Into) < 2 {
		m.r.found.Add(diag.Unchecked, "ledger-stud", m.doc.At, "not checked: what {0} is screwed into along {1}: two recorded studs at least are missing", "write the studs of the wall, or its blocking, while it is open", diag.T(m.doc.Name), diag.T(f.Name))
	}
}
