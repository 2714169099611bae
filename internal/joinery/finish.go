package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// Finish is what goes on wood, in coats, on both faces and all edges, before it is fixed: one bare face cups the other.
type Finish struct {
	Name     string
	At       diag.Place
	On       []string
	Area     unit.Area   // of one coat
	Coats    int         // 0 unknown
	Volume   unit.Volume // of all coats; valid if Covered
	Covered  bool
	Between  int // hours; 0 unknown
	Until    int // hours after the last; 0 unknown
	Grits    []int
	Building []string // parts of it that could not be worked out
}

func (r *room) finish(doc document.Finish) Finish {
	r.sure(doc, doc.Name, "Coats", "Cover", "Hours", "Cures")
	f := Finish{Name: doc.Name, At: doc.At, Coats: doc.Coats.V, Between: doc.Hours.V, Until: doc.Cures.V, Grits: doc.Grits}
	for _, on := range doc.On {
		f.On = append(f.On, on.Text)
		area, ok := r.surface(on.Text)
		if !ok {
			f.Building = append(f.Building, on.Text)
			r.lacks(on.At, "the surface of "+on.Text)
		}
		f.Area += area
	}
	if len(f.Building) == 0 && doc.Cover.Known && doc.Coats.Known {
		f.Covered = true
		f.Volume = unit.VolumeOf(f.Area.M2() / (float64(doc.Cover.V) / 1000) * float64(unit.Liter) * float64(doc.Coats.V))
	}
	return f
}

// surface is all of the surface of what bears a name: faces, backs, edges and ends of every part.
func (r *room) surface(name string) (unit.Area, bool) {
	var parts []part.Part
	if c, ok := r.made(name); ok {
		parts = c.Parts()
	}
	for _, t := range r.plan.Tops {
		if t.Name == name && t.Made {
			parts = append(parts, t.Part)
		}
	}
	for _, t := range r.plan.Trim {
		if t.Name == name {
			parts = append(parts, t.Parts()...)
		}
	}
	var sum unit.Area
	for _, p := range parts {
		s := p.Size
		one := s.Length.Times(s.Width) + s.Length.Times(s.Thick) + s.Width.Times(s.Thick)
		sum += 2 * one * unit.Area(p.Count)
	}
	return sum, len(parts) > 0
}
