package cut

import (
	"fmt"

	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/part"
)

// recut saws every sheet and stick again by its steps, knowing nothing of how the plan was made, and finds each piece among what
// falls off: of its size, with the grain where it has to run, clear of bad stretches, once.
func recut(doc document.Room, p Plan) error {
	seen := make([]int, len(p.Pieces))
	for li, l := range p.Lots {
		for ui, u := range l.Used {
			fallen, err := saw(l, u)
			if err != nil {
				return fmt.Errorf("%s %d: %w", l.Stock, u.Number, err)
			}
			for _, root := range u.Panels {
				if err := find(p, l, li, ui, root, fallen, seen); err != nil {
					return fmt.Errorf("%s %d: %w", l.Stock, u.Number, err)
				}
			}
		}
		for _, i := range l.Lacking {
			seen[i]++
		}
	}
	for i, n := range seen {
		if q := p.Pieces[i]; n > 1 || n == 0 && q.Lot >= 0 {
			return fmt.Errorf("%s is cut %d times", q.Name, n)
		}
	}
	return offcutsKept(p)
}

// saw makes the cuts one after the other on what is left of the sheet.
func saw(l Lot, u Used) (map[geom.Rect]bool, error) {
	free := map[geom.Rect]bool{}
	for _, r := range u.Panels {
		if r.Rect.Min.X < u.Trim || r.Rect.Max.X > u.Size.Length-u.Trim || r.Rect.Min.Y < 0 || r.Rect.Max.Y > u.Size.Width {
			if l.Kind == document.StickStock || u.From == 0 {
				return nil, fmt.Errorf("%v lies past the trim", r.Rect)
			}
		}
		for _, b := range u.Bad {
			if r.Rect.Min.X < b.To && b.From < r.Rect.Max.X {
				return nil, fmt.Errorf("%v lies in a bad stretch", r.Rect)
			}
		}
		free[r.Rect] = true
	}
	for i, s := range u.Steps {
		if s.Number != i+1 || !free[s.Panel] {
			return nil, fmt.Errorf("step %d divides %v, which is not there", s.Number, s.Panel)
		}
		delete(free, s.Panel)
		low, high := s.Panel, s.Panel
		if s.Way == Crosscut {
			low.Max.X, high.Min.X = s.At, s.At+l.Kerf
		} else {
			low.Max.Y, high.Min.Y = s.At, s.At+l.Kerf
		}
		if size := max(low.W(), 0); s.Way == Crosscut && size != s.Size || s.Way == Rip && low.H() != s.Size {
			return nil, fmt.Errorf("step %d: the fence stands at %v", s.Number, s.Size)
		}
		if low.W() <= 0 || low.H() <= 0 {
			return nil, fmt.Errorf("step %d cuts nothing off", s.Number)
		}
		free[low] = true
		if high.W() > 0 && high.H() > 0 {
			free[high] = true
		}
	}
	return free, nil
}

func find(p Plan, l Lot, li, ui int, q Panel, fallen map[geom.Rect]bool, seen []int) error {
	if q.Piece != NoPiece {
		k := p.Pieces[q.Piece]
		if !fallen[q.Rect] {
			return fmt.Errorf("%s does not fall off at %v", k.Name, q.Rect)
		}
		if err := lies(l, k, q); err != nil {
			return err
		}
		if k.Lot != li || k.Used != ui {
			return fmt.Errorf("%s is said to be elsewhere", k.Name)
		}
		seen[q.Piece]++
		delete(fallen, q.Rect)
	}
	for _, k := range q.Into {
		if err := find(p, l, li, ui, k, fallen, seen); err != nil {
			return err
		}
	}
	return nil
}

// lies holds a piece's size and grain against how it lies.
func lies(l Lot, k Piece, q Panel) error {
	w, h := k.Sawn.Length, k.Sawn.Width
	if q.Turned {
		w, h = h, w
	}
	if l.Kind == document.StickStock {
		h = l.Width
	}
	if q.Rect.W() != w || q.Rect.H() != h {
		return fmt.Errorf("%s is %v x %v", k.Name, q.Rect.W().In(), q.Rect.H().In())
	}
	if l.Plain || l.Kind == document.StickStock || k.Part.Grain == part.Any {
		return nil
	}
	if q.Turned != (k.Part.Grain == part.Across) {
		return fmt.Errorf("%s lies against its grain", k.Name)
	}
	return nil
}

func offcutsKept(p Plan) error {
	for _, l := range p.Lots {
		for _, o := range l.Offcuts {
			if o.Rect.W() != o.Size.Length || o.Rect.H() != o.Size.Width || o.Size.Length == 0 {
				return fmt.Errorf("offcut %v", o)
			}
		}
	}
	return nil
}
