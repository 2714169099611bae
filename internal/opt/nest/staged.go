package nest

// layers are tables from the outermost stage inward; the last holds single
// parts.
type layers []*table

// staged fills panels whose cuts alternate from the direction of the outermost
// of depth stages inward. A panel of a layer may be smaller than its point only
// in the direction that the layer's own cuts divide.
func (f *filling) staged(first Cut, depth int) layers {
	out := make(layers, depth+1)
	out[depth] = f.exact()
	cut := first
	if depth%2 == 0 {
		cut = first.other()
	}
	for d := depth - 1; d >= 0; d-- {
		out[d] = f.stage(out[d+1], cut)
		cut = cut.other()
	}
	return out
}

// exact is the layer of single parts.
func (f *filling) exact() *table {
	t := f.newTable()
	for p := range f.places {
		f.lie(t, p)
	}
	return t
}

// stage is the layer of panels divided by cuts of one direction.
func (f *filling) stage(s *table, cut Cut) *table {
	t := f.newTable()
	nx := len(f.x.at)
	for j := range f.y.at {
		for i := range f.x.at {
			p := j*nx + i
			f.copyFrom(t, p, s, p, inner)
			switch cut {
			case Crosscut:
				if i > 0 {
					f.copyFrom(t, p, t, p-1, narrower)
				}
				f.cross(t, s, i, j, i)
			default:
				if j > 0 {
					f.copyFrom(t, p, t, p-nx, lower)
				}
				f.rip(t, s, i, j, j)
			}
		}
	}
	return t
}

// whole fills the clear sheet within the rules of first cut and stages.
func (f *filling) whole() (*slab, int64) {
	m := f.m
	switch {
	case m.stages == 0 && m.first == Whole:
		return f.top(layers{f.free()})
	case m.stages == 0:
		return f.begun(m.first, layers{f.free()})
	case m.first == Whole:
		s, v := f.top(f.staged(Rip, m.stages))
		if r, w := f.top(f.staged(Crosscut, m.stages)); w > v {
			return r, w
		}
		return s, v
	}
	return f.begun(m.first, f.staged(m.first.other(), m.stages-1))
}

// top is the panel of the clear sheet.
func (f *filling) top(l layers) (*slab, int64) {
	i, j := len(f.x.at)-1, len(f.y.at)-1
	return f.trace(l[0], l[1:], at{i, j, 0}), l[0].val[(j*len(f.x.at)+i)*f.keep]
}

// begun cuts the clear sheet in the direction of the first stage into panels of
// the layers; see rule 5. The panels are less than the sheet, unless the parts
// span it.
func (f *filling) begun(first Cut, l layers) (*slab, int64) {
	t := f.newTable()
	nx := len(f.x.at)
	i, j := nx-1, len(f.y.at)-1
	if first == Rip {
		for b := range j + 1 {
			f.begin(t, l[0], b*nx+i, b < j, b > 0, nx, lower)
			f.rip(t, l[0], i, b, b)
		}
	} else {
		for a := range i + 1 {
			f.begin(t, l[0], j*nx+a, a < i, a > 0, 1, narrower)
			f.cross(t, l[0], a, j, a)
		}
	}
	return f.orSpanning(first, f.trace(t, l, at{i, j, 0}), t.val[(j*nx+i)*f.keep])
}

// begin takes a panel of the layer below as it is, or the one a point smaller.
func (f *filling) begin(t, s *table, p int, less, more bool, back int, h how) {
	if less {
		f.copyFrom(t, p, s, p, inner)
	}
	if more {
		f.copyFrom(t, p, t, p-back, h)
	}
}

// orSpanning compares with a sheet whose parts all span it. It is the one sheet
// of a single part, too, that needs no cut at all.
func (f *filling) orSpanning(first Cut, s *slab, v int64) (*slab, int64) {
	nx := len(f.x.at)
	i, j := nx-1, len(f.y.at)-1
	e := f.exact()
	if w := e.val[(j*nx+i)*f.keep]; w > v {
		s, v = f.trace(e, nil, at{i, j, 0}), w
	}
	if f.m.stages == 1 {
		return s, v
	}
	if c, w := f.top(layers{f.stage(e, first.other()), e}); w > v {
		return c, w
	}
	return s, v
}
