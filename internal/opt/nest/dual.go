package nest

// scaled is a function of sizes on one axis: sizes that fit side by side have
// values that add up to no more than the value of the axis, however they are
// chosen (a dual feasible function). So the products of two such functions, one
// for each axis, of parts that fit one sheet add up to no more than that of the
// sheet (Fekete and Schepers, Math. Methods of OR 60, 2004).
type scaled struct {
	of  func(size int64) int64
	all int64
}

// maxScaled bounds the functions tried on an axis.
const maxScaled = 120

// scales lists functions of an axis for the sizes that occur.
func scales(size int64, sizes []int64) []scaled {
	out := []scaled{{func(s int64) int64 { return s }, size}}
	for _, a := range sizes {
		if a <= size/2 && len(out) < maxScaled {
			out = append(out, wholeAbove(size, a), rounded(size, a))
		}
	}
	for k := int64(1); k <= 5 && size < 1<<24; k++ {
		out = append(out, stepped(size, k))
	}
	for _, a := range []int64{size / 2, size/3 + 1, size/4 + 1} {
		if a > 0 && a <= size/2 {
			out = append(out, rounded(size, a))
		}
	}
	return out
}

// wholeAbove takes a size that leaves no room for a for the whole axis, one
// below a for nothing (Martello and Toth, Discrete Applied Math. 28, 1990).
func wholeAbove(size, a int64) scaled {
	return scaled{func(s int64) int64 {
		switch {
		case s > size-a:
			return size
		case s < a:
			return 0
		}
		return s
	}, size}
}

// rounded counts how often a, no more than half the axis, goes into a size,
// rounding large sizes up (Carlier, Clautiaux and Moukrim, Computers & OR 34,
// 2007).
func rounded(size, a int64) scaled {
	return scaled{func(s int64) int64 {
		switch {
		case 2*s > size:
			return 2 * (size/a - (size-s)/a)
		case 2*s == size:
			return size / a
		}
		return 2 * (s / a)
	}, 2 * (size / a)}
}

// stepped rounds a size down to a multiple of size/(k+1) and stretches it
// (Fekete and Schepers, Math. Programming 91, 2001).
func stepped(size, k int64) scaled {
	return scaled{func(s int64) int64 {
		if s*(k+1)%size == 0 {
			return s * k
		}
		return s * (k + 1) / size * size
	}, size * k}
}

// dualWeights bounds a single kind of sheet by the best pair of functions.
func (m *model) dualWeights(st *steps) *weights {
	if len(m.sheets) != 1 || m.sheets[0].price == 0 {
		return nil
	}
	b := m.sheets[0]
	a := m.axes(b, func(int) bool { return true })
	across, up := scales(b.w, a.sizesX), scales(b.h, a.sizesY)
	var fx, fy scaled
	most := 0.0
	for _, f := range across {
		for _, g := range up {
			if v := m.product(f, g, b); v > most {
				most, fx, fy = v, f, g
			}
		}
	}
	st.spend(len(across) * len(up) * len(m.kinds) * 8)
	if most == 0 {
		return nil
	}
	w := &weights{by: ProofDual, excess: []int64{0}}
	for _, k := range m.kinds {
		w.part = append(w.part, min(m.share(m.weigh(fx, fy, k, b), fx.all*fy.all, b.price), m.lack*m.scale))
	}
	return w
}

// product is what all parts weigh, in sheets.
func (m *model) product(f, g scaled, b sheet) float64 {
	if f.all == 0 || g.all == 0 {
		return 0
	}
	v := 0.0
	for i, k := range m.kinds {
		v += float64(m.weigh(f, g, k, b)) * float64(m.need[i])
	}
	return v / (float64(f.all) * float64(g.all))
}

// weigh is the weight of a kind, the lesser one if it may lie either way.
func (m *model) weigh(f, g scaled, k kind, b sheet) int64 {
	if k.w > b.w || k.h > b.h {
		return f.of(k.h) * g.of(k.w)
	}
	v := f.of(k.w) * g.of(k.h)
	if k.turns && k.h <= b.w && k.w <= b.h {
		v = min(v, f.of(k.h)*g.of(k.w))
	}
	return v
}
