package nest

import "math/big"

// result names what the search found.
func (s *search) result(p Problem) Result {
	m := s.m
	r := Result{Offcut: Offcut{Board: -1}, Lacking: make([]int, len(p.Parts)), Steps: int((s.steps.ops + opsPerStep - 1) / opsPerStep)}
	s.settle()
	next := make([]int, len(m.kinds))
	for _, q := range s.best {
		if q.sheet == lacking {
			continue
		}
		r.Boards = append(r.Boards, s.board(q, next, p))
		r.Money += m.sheets[q.sheet].price
	}
	lack := 0
	for k, q := range m.kinds {
		for _, i := range q.parts[next[k]:] {
			r.Lacking[i]++
			lack++
		}
	}
	s.bounds(&r, lack)
	r.offcut(m)
	r.Largest = s.roomiest(r)
	r.Proof = s.proof(p)
	r.Complete = lack == r.Fewest && r.Money == r.Lower && r.Offcut.Area() == r.Largest
	return r
}

// settle looks for a larger offcut once the money is settled: by laying one
// more part, and by gathering the waste.
func (s *search) settle() {
	if s.whole || s.m.total == 0 {
		return
	}
	st := s.steps.further(10)
	s.reserve(st)
	s.steps.ops = st.ops
	for range 3 {
		before := s.spare
		if s.gather(); s.spare == before {
			return
		}
	}
}

// bounds splits the bound of cost into parts that lack and money; a part that
// lacks costs more than all money that can be spent.
func (s *search) bounds(r *Result, lack int) {
	r.Fewest = int(s.lower / s.m.lack)
	if r.Fewest >= lack {
		r.Fewest = lack
		r.Lower = max(0, s.lower-int64(lack)*s.m.lack)
	}
}

// board makes the panels and hands out the parts of each kind in order.
func (s *search) board(q pattern, next []int, p Problem) Board {
	clear, ok := s.m.layOut(q)
	require(ok, "a filling that breaks the rules")
	b := Board{Sheet: s.m.sheets[q.sheet].of}
	b.Clear = s.named(clear, next, p, p.Sheets[b.Sheet].Trim)
	return b
}

func (s *search) named(q Panel, next []int, p Problem, trim int64) Panel {
	q.X, q.Y = q.X+trim, q.Y+trim
	if q.Part != NoPart {
		k := q.Part
		q.Part = s.m.kinds[k].parts[next[k]]
		next[k]++
		q.Turned = q.W != p.Parts[q.Part].W
	}
	into := make([]Panel, 0, len(q.Into))
	for _, c := range q.Into {
		into = append(into, s.named(c, next, p, trim))
	}
	if q.Into != nil {
		q.Into = into
	}
	return q
}

// offcut finds the largest offcut.
func (r *Result) offcut(m *model) {
	for i, b := range r.Boards {
		if o := m.spare(b.Clear); o.better(r.Offcut) {
			r.Offcut = o
			r.Offcut.Board = i
		}
	}
}

// roomiest bounds the offcut by the largest sheet beside its smallest part, and
// by the area of all sheets that the money buys beside all parts.
func (s *search) roomiest(r Result) int64 {
	if s.whole {
		return r.Offcut.Area()
	}
	m := s.m
	var most int64
	for _, b := range m.sheets {
		for _, k := range m.kinds {
			most = max(most, m.beside(b, k.w, k.h))
			if k.turns {
				most = max(most, m.beside(b, k.h, k.w))
			}
		}
	}
	if all := m.unused(r.Money); all.IsInt64() {
		most = min(most, all.Int64())
	}
	return max(most, r.Offcut.Area())
}

// beside is the largest offcut beside one part in a sheet.
func (m *model) beside(b sheet, w, h int64) int64 {
	if w > b.w || h > b.h {
		return 0
	}
	side := max(0, b.w-w-m.kerf) * (b.h - m.kerf)
	above := max(0, b.h-h-m.kerf) * (b.w - m.kerf)
	return max(side, above)
}

// unused is the area of all sheets that a sum of money buys, without the parts:
// the most that is left of it, kerf included. Sheets of one price and no limit
// only make it loose, not false.
func (m *model) unused(money int64) *big.Int {
	area := new(big.Int)
	for _, b := range m.sheets {
		n := b.count
		if b.price > 0 {
			n = int(min(int64(n), money/b.price))
		}
		area.Add(area, times(b.w*b.h, n))
	}
	for k, q := range m.kinds {
		area.Sub(area, times(q.w*q.h, m.need[k]))
	}
	if area.Sign() < 0 || m.scarce {
		return new(big.Int).Lsh(big.NewInt(1), 80)
	}
	return area
}

// proof names the weights.
func (s *search) proof(p Problem) Proof {
	q := Proof{By: s.by, Scale: s.m.scale, Penalty: s.m.lack,
		Weights: make([]int64, len(p.Parts)), Excess: make([]int64, len(p.Sheets))}
	for k, v := range s.w.part {
		for _, i := range s.m.kinds[k].parts {
			q.Weights[i] = v
		}
	}
	for i, e := range s.w.excess {
		q.Excess[s.m.sheets[i].of] = e
	}
	return q
}
