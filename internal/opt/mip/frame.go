package mip

// frame looks at a box from its corner nearest to 0: x = from + way·z, a part z for each way that a variable can go from there, with
// 0 <= z <= wide. So each step of z costs.
type frame struct {
	from  []int64 // by variable
	parts []part
	rest  []int64 // by row, B less what the corner gives
	base  int64   // cost of the corner
	moved int     // variables that are not 0 in the box
}

// part is one way that a variable can go.
type part struct {
	of, way, wide, cost int64
	starts              bool // from 0: the first step of it is a change
}

func (s *solver) look(b box) *frame {
	f := &s.frame
	f.base, f.moved, f.parts = 0, 0, f.parts[:0]
	for j, v := range s.vars {
		f.from[j] = b.near(j)
		f.base += v.Cost * max(f.from[j], -f.from[j])
		if b.moved(j) {
			f.moved++
		}
		starts := !b.moved(j)
		if up := b.hi[j] - f.from[j]; up > 0 {
			f.parts = append(f.parts, part{int64(j), 1, up, v.Cost, starts})
		}
		if down := f.from[j] - b.lo[j]; down > 0 {
			f.parts = append(f.parts, part{int64(j), -1, down, v.Cost, starts})
		}
	}
	for i := range s.rows {
		r := &s.rows[i]
		f.rest[i] = r.B
		for _, j := range s.uses[i] {
			f.rest[i] -= r.A[j] * f.from[j]
		}
	}
	return f
}

// guess solves the linear program of a frame: the weights of the rows and of the number of changes, and x. Where costs do not count, the rows'
// weights are at most 1 and their bound is one of what is missed; where they do, at most what a unit missed is worth. A trifle of cost on
// every step keeps the corners of the program apart.
func (s *solver) guess(f *frame, g goal, costs bool) {
	s.rowsOf(f)
	p, m := &s.lp, len(s.counted)
	p.reset(len(f.parts), m+1+len(f.parts))
	p.gain[m] = -float64(g.changed - f.moved)
	for k, i := range s.counted {
		p.gain[k], p.most[k] = float64(f.rest[i]), 1
		if costs {
			p.most[k] = s.worth
		}
	}
	for q, part := range f.parts {
		scale := s.scale[part.of]
		for k, i := range s.counted {
			p.table[q][k] = float64(s.rows[i].A[part.of]*part.way) * scale
		}
		if part.starts {
			p.table[q][m] = -scale / float64(part.wide)
		}
		p.table[q][m+1+q] = -1
		p.gain[m+1+q] = -float64(part.wide) / scale
		p.right[q] = float64(trifle * float64(q+1))
		if costs {
			p.right[q] += float64(float64(part.cost) * scale)
		}
	}
	p.solve()
	s.read(f)
}

// trifle keeps the right sides of the program positive and apart; what it takes off a bound is far below 1.
const trifle = 1e-9

// rowsOf lists the rows that some x of the frame falls short of.
func (s *solver) rowsOf(f *frame) {
	s.counted = s.counted[:0]
	for i := range s.rows {
		least := int64(0)
		for _, p := range f.parts {
			least += min(0, s.rows[i].A[p.of]*p.way*p.wide)
		}
		if f.rest[i] > least {
			s.counted = append(s.counted, i)
		}
	}
}

// read takes the weights and x from the solved program.
func (s *solver) read(f *frame) {
	clear(s.weight)
	p := &s.lp
	s.value = floats(s.value, len(s.counted)+1)
	p.values(s.value)
	for k, i := range s.counted {
		s.weight[i] = s.value[k]
	}
	s.countWeight = s.value[len(s.counted)]
	for j, from := range f.from {
		s.x[j] = float64(from)
	}
	for q, part := range f.parts {
		z := max(0, min(float64(p.price(q)*s.scale[part.of]), float64(part.wide)))
		s.x[part.of] += float64(float64(part.way) * z)
	}
}

// middle writes the x that the linear program leans to, rounded.
func (s *solver) middle(x []int64) {
	for j := range x {
		x[j] = rounded(s.x[j])
	}
}

func rounded(x float64) int64 { return floor(x + 0.5) }

func floor(x float64) int64 {
	n := int64(x)
	if float64(n) > x {
		n--
	}
	return n
}
