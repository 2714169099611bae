package nest

// free fills the panels with any number of stages.
func (f *filling) free() *table {
	t := f.newTable()
	nx := len(f.x.at)
	for j := range f.y.at {
		for i := range f.x.at {
			p := j*nx + i
			if i > 0 {
				f.copyFrom(t, p, t, p-1, narrower)
			}
			if j > 0 {
				f.copyFrom(t, p, t, p-nx, lower)
			}
			f.lie(t, p)
			f.cross(t, t, i, j, f.x.half(i))
			f.rip(t, t, i, j, f.y.half(j))
		}
	}
	return t
}

// cross tries the crosscuts of a panel; the piece cut off is of layer s.
func (f *filling) cross(t, s *table, i, j, end int) {
	nx, keep := len(f.x.at), t.keep
	row := j * nx
	down := f.x.down[i*nx : i*nx+nx]
	f.ops += end
	least := &t.val[(row+i)*keep+keep-1]
	for a := range end {
		v := s.val[(row+a)*keep]
		if v == 0 {
			continue
		}
		r := int(down[a])
		if r < 0 {
			return
		}
		if v+t.val[(row+r)*keep] > *least {
			f.pair(t, row+i, s, row+a, row+r, origin{how: crossed, arg: int16(a)})
		}
	}
}

// rip tries the rips of a panel; the piece cut off is of layer s.
func (f *filling) rip(t, s *table, i, j, end int) {
	nx, ny, keep := len(f.x.at), len(f.y.at), t.keep
	down := f.y.down[j*ny : j*ny+ny]
	f.ops += end
	p := j*nx + i
	least := &t.val[p*keep+keep-1]
	for a := range end {
		v := s.val[(a*nx+i)*keep]
		if v == 0 {
			continue
		}
		r := int(down[a])
		if r < 0 {
			return
		}
		if v+t.val[(r*nx+i)*keep] > *least {
			f.pair(t, p, s, a*nx+i, r*nx+i, origin{how: ripped, arg: int16(a)})
		}
	}
}

// at is a panel of the trace: its points and which of its sets.
type at struct{ i, j, set int }

// trace builds the slab of a panel; below holds the layers under t, the nearest
// first. Without layers a piece that is cut off lies in t itself.
func (f *filling) trace(t *table, below []*table, q at) *slab {
	nx, ny := len(f.x.at), len(f.y.at)
	from := t.from[(q.j*nx+q.i)*t.keep+q.set]
	s, rest := t, below
	if len(below) > 0 {
		s, rest = below[0], below[1:]
	}
	a, b, arg := int(from.a), int(from.b), int(from.arg)
	switch from.how {
	case part:
		return f.m.leaf(arg, from.turn)
	case narrower:
		return f.trace(t, below, at{q.i - 1, q.j, a})
	case lower:
		return f.trace(t, below, at{q.i, q.j - 1, a})
	case inner:
		return f.trace(s, rest, at{q.i, q.j, a})
	case crossed:
		r := int(f.x.down[q.i*nx+arg])
		return join(Crosscut, f.trace(s, rest, at{arg, q.j, a}), f.trace(t, below, at{r, q.j, b}))
	case ripped:
		r := int(f.y.down[q.j*ny+arg])
		return join(Rip, f.trace(s, rest, at{q.i, arg, a}), f.trace(t, below, at{q.i, r, b}))
	}
	return nil
}
