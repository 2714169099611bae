package sched

// A shape is where a job may start and when it then ends. Over the starts that are allowed, ends rise strictly, so
// every bound on an end is a bound on a start.
type shape struct {
	next  []int  // next[t]: first start >= t; horizon+1: none
	prev  []int  // prev[t]: last start <= t; -1: none
	end   []int  // end[s] of an allowed start
	first []int  // first[t]: first start with end >= t; horizon+1: none
	last  []int  // last[t]: last start with end <= t; -1: none
	works []bool // nil: every tick
}

// newShape tabulates the allowed starts; end[t] < 0 forbids a start at t.
func newShape(end []int, works []bool) *shape {
	h := len(end) - 1
	s := &shape{end: end, works: works}
	s.next, s.prev = make([]int, h+2), make([]int, h+2)
	s.first, s.last = make([]int, h+2), make([]int, h+2)
	s.next[h+1], s.first[h+1] = h+1, h+1
	for t := h; t >= 0; t-- {
		s.next[t], s.first[t] = s.next[t+1], s.first[t+1]
		if end[t] >= 0 {
			s.next[t] = t
		}
	}
	was := -1
	filled := 0 // first[] is known below it
	for t := 0; t <= h; t++ {
		if end[t] >= 0 {
			for ; filled <= end[t]; filled++ {
				s.first[filled] = t
			}
			was = t
		}
		s.prev[t] = was
	}
	s.prev[h+1] = was
	s.fillLast()
	return s
}

func (s *shape) fillLast() {
	for t := range s.last {
		s.last[t] = -1
	}
	for t, e := range s.end {
		if e >= 0 {
			s.last[e] = t
		}
	}
	for t := 1; t < len(s.last); t++ {
		s.last[t] = max(s.last[t], s.last[t-1])
	}
}

func (s *shape) top() int { return len(s.end) } // horizon+1

// The lookups take any time, also before 0 and beyond the horizon.
func (s *shape) nextStart(t int) int  { return s.next[min(max(t, 0), s.top())] }
func (s *shape) firstEnder(t int) int { return s.first[min(max(t, 0), s.top())] }
func (s *shape) prevStart(t int) int {
	if t < 0 {
		return -1
	}
	return s.prev[min(t, s.top())]
}
func (s *shape) lastEnder(t int) int {
	if t < 0 {
		return -1
	}
	return s.last[min(t, s.top())]
}

func (s *shape) worksAt(t int) bool { return s.works == nil || s.works[t] }

// endTable gives the end for each start of a job of this duration, or -1.
func endTable(horizon, duration int, works []bool, whole bool) []int {
	end := make([]int, horizon+1)
	if works == nil || duration == 0 {
		for t := range end {
			end[t] = t + duration
			if end[t] > horizon {
				end[t] = -1
			}
		}
		return end
	}
	var at []int // the working ticks
	for t, w := range works {
		if w {
			at = append(at, t)
		}
	}
	for t := range end {
		end[t] = -1
	}
	for i := 0; i+duration <= len(at); i++ {
		last := at[i+duration-1]
		if !whole || last-at[i] == duration-1 {
			end[at[i]] = last + 1
		}
	}
	return end
}

// fixedEnd is when a job that started at t ends: it works each working tick from t on. -1: beyond the horizon.
func fixedEnd(t, horizon, duration int, works []bool) int {
	for ; duration > 0; t++ {
		if t >= horizon {
			return -1
		}
		if works == nil || works[t] {
			duration--
		}
	}
	return t
}
