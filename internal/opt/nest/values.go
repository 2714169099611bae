package nest

import "math"

// greedy fills sheet after sheet with what is worth most for its money.
func (f *filler) greedy(worth []int64, need, stock []int) (plan []pattern) {
	for sum(need) > 0 && len(f.m.usable(stock)) > 0 {
		p, v := f.bestFill(worth, need, stock)
		if v == 0 {
			break
		}
		for range f.m.repeats(p, need, stock) {
			p.takeOff(need)
			stock[p.sheet]--
			plan = append(plan, p)
		}
	}
	return append(plan, f.m.leaveOut(need)...)
}

// repeats is how often a filling can be used: where many parts are alike, many
// sheets are.
func (m *model) repeats(p pattern, need, stock []int) int {
	n := stock[p.sheet]
	for _, t := range p.takes {
		n = min(n, need[t.kind]/t.n)
	}
	return n
}

func sum(n []int) (s int) {
	for _, v := range n {
		s += v
	}
	return s
}

// bestFill compares the sheets; those of no price come first.
func (f *filler) bestFill(worth []int64, need, stock []int) (best pattern, most int64) {
	for _, s := range f.m.usable(stock) {
		p, v := f.fill(s, worth, need)
		if most == 0 || f.m.sooner(s, v, best.sheet, most) {
			best, most = p, v
		}
	}
	return best, most
}

func (m *model) sooner(s int, v int64, t int, w int64) bool {
	ps, pt := float64(m.sheets[s].price), float64(m.sheets[t].price)
	if ps == 0 && pt == 0 {
		return v > w
	}
	return float64(v)*pt > float64(w)*ps
}

// unit stands for a worth of one, so that worths are whole numbers.
const unit = 1 << 20

// worths follow the waste of the sheets that parts were last cut from: what
// lay in a wasteful sheet is worth more and is cut sooner.
type worths struct {
	m     *model
	value []float64
}

func newWorths(m *model, power float64) *worths {
	w := &worths{m: m}
	for _, k := range m.kinds {
		w.value = append(w.value, math.Pow(m.areaShare(k), power))
	}
	return w
}

// areaShare is the area as a part of the largest sheet.
func (m *model) areaShare(k kind) float64 {
	var most float64
	for _, s := range m.sheets {
		most = max(most, float64(s.w)*float64(s.h))
	}
	return float64(k.w) * float64(k.h) / most
}

func (w *worths) whole() []int64 {
	out := make([]int64, len(w.value))
	for k, v := range w.value {
		out[k] = 1 + int64(math.Floor(v*unit))
	}
	return out
}

// learn blends the worths with what a plan shows.
func (w *worths) learn(plan []pattern, power, keep float64) {
	for _, p := range plan {
		if p.sheet == lacking {
			w.value[p.takes[0].kind] *= 1.2
			continue
		}
		s := w.m.sheets[p.sheet]
		used := 0.0
		for _, t := range p.takes {
			used += w.m.areaShare(w.m.kinds[t.kind]) * float64(t.n)
		}
		used /= w.m.areaShare(kind{w: s.w, h: s.h})
		for _, t := range p.takes {
			v := math.Pow(w.m.areaShare(w.m.kinds[t.kind]), power) / used
			w.value[t.kind] = keep*w.value[t.kind] + (1-keep)*v
		}
	}
}
