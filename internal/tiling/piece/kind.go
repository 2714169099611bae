package piece

import "dryfit/internal/geom"

// kind names the shape of a cut piece by its corners: how many there are, and how many turn inward.
func (w *work) kind() CutKind {
	corners, bays := turns(w.shape[0])
	one := len(w.lines) == 1
	switch {
	case len(w.shape) > 1:
		return CutOut
	case one && corners == 3:
		return Triangle
	case one && w.corner(w.lines[0]):
		return Clipped
	case one && (corners == 4 || w.hex):
		return w.straight()
	case w.hex || !w.gentle():
		return Odd
	case bays == 0 && corners == 4:
		return Corner
	case bays == 1 && corners == 6:
		return LShape
	case bays == 2 && corners == 8:
		return w.bay()
	}
	return Odd
}

// turns counts a ring's corners and those that turn inward.
func turns(r geom.Ring) (corners, bays int) {
	n := len(r)
	for i := range r {
		switch geom.Side(r[(i+n-1)%n].P, r[i].P, r[(i+1)%n].P) {
		case 1:
			corners++
		case -1:
			corners++
			bays++
		}
	}
	return corners, bays
}

// straight tells a parallel cut from a taper: by what is set at the saw.
func (w *work) straight() CutKind {
	s := w.setting(w.lines[0])
	if s.SawFrom == s.SawTo {
		return Straight
	}
	return Taper
}

func (w *work) gentle() bool {
	for _, l := range w.lines {
		if !l.gentle() {
			return false
		}
	}
	return true
}

// bay tells a U from a notch by the cut that has an inward corner at both ends: the floor of the bay. Two bays that share no
// cut are neither.
func (w *work) bay() CutKind {
	box := w.shape.Bounds()
	for _, l := range w.lines {
		if !l.bay[0] || !l.bay[1] {
			continue
		}
		depth := [...]int64{int64(box.Max.X - l.a.X), int64(box.Max.Y - l.a.Y), int64(l.a.X - box.Min.X), int64(l.a.Y - box.Min.Y)}[l.facing]
		full := int64(box.H())
		if l.facing.upright() {
			full = int64(box.W())
		}
		if 2*depth >= full {
			return UShape
		}
		return Notch
	}
	return Odd
}
