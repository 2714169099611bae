package pair

// matching is a largest set of pairs of vertices joined by edges, no vertex in
// two. It gives the mate of each vertex, or -1. (Edmonds, Paths, trees, and
// flowers, Canadian Journal of Mathematics 17, 1965; one tree at a time, blossoms
// shrunk by the base of each vertex.)
func matching(edges [][]int) []int {
	m := &matcher{edges: edges, mate: filled(len(edges)), parent: filled(len(edges)),
		base: filled(len(edges)), inTree: make([]bool, len(edges)), mark: make([]bool, len(edges))}
	m.greedy()
	for v := range edges {
		if m.mate[v] < 0 {
			m.augment(m.grow(v))
		}
	}
	return m.mate
}

type matcher struct {
	edges  [][]int
	mate   []int
	parent []int // of an inner vertex: the outer vertex it was reached from
	base   []int // of the blossom that holds the vertex
	inTree []bool
	mark   []bool
	queue  []int
}

func filled(n int) []int {
	s := make([]int, n)
	for i := range s {
		s[i] = -1
	}
	return s
}

// greedy takes what pairs at once, to leave little to search for.
func (m *matcher) greedy() {
	for v, ws := range m.edges {
		for _, w := range ws {
			if m.mate[v] < 0 && m.mate[w] < 0 && v != w {
				m.mate[v], m.mate[w] = w, v
			}
		}
	}
}

// grow builds an alternating tree from a single vertex until it meets another
// single vertex, which it gives, or -1.
func (m *matcher) grow(root int) int {
	for i := range m.base {
		m.base[i], m.parent[i], m.inTree[i] = i, -1, false
	}
	m.inTree[root] = true
	m.queue = append(m.queue[:0], root)
	for len(m.queue) > 0 {
		v := m.queue[0]
		m.queue = m.queue[1:]
		for _, w := range m.edges[v] {
			if found := m.reach(root, v, w); found >= 0 {
				return found
			}
		}
	}
	return -1
}

// reach follows the edge from the outer vertex v to w.
func (m *matcher) reach(root, v, w int) int {
	switch {
	case m.base[v] == m.base[w] || m.mate[v] == w:
	case w == root || m.mate[w] >= 0 && m.parent[m.mate[w]] >= 0:
		m.shrink(v, w)
	case m.parent[w] < 0:
		m.parent[w] = v
		if m.mate[w] < 0 {
			return w
		}
		m.inTree[m.mate[w]] = true
		m.queue = append(m.queue, m.mate[w])
	}
	return -1
}

// shrink makes one blossom of the odd cycle that the edge v w closes.
func (m *matcher) shrink(v, w int) {
	top := m.meet(v, w)
	clear(m.mark)
	m.path(v, top, w)
	m.path(w, top, v)
	for i := range m.base {
		if !m.mark[m.base[i]] {
			continue
		}
		m.base[i] = top
		if !m.inTree[i] {
			m.inTree[i] = true
			m.queue = append(m.queue, i)
		}
	}
}

// meet is the base nearest to v and w that lies on both their ways to the root.
func (m *matcher) meet(v, w int) int {
	clear(m.mark)
	for {
		v = m.base[v]
		m.mark[v] = true
		if m.mate[v] < 0 {
			break
		}
		v = m.parent[m.mate[v]]
	}
	for {
		if w = m.base[w]; m.mark[w] {
			return w
		}
		w = m.parent[m.mate[w]]
	}
}

// path marks the bases from v up to top, and turns the parents toward child.
func (m *matcher) path(v, top, child int) {
	for m.base[v] != top {
		m.mark[m.base[v]], m.mark[m.base[m.mate[v]]] = true, true
		m.parent[v] = child
		child = m.mate[v]
		v = m.parent[m.mate[v]]
	}
}

// augment swaps what is paired along the way from a single vertex to the root.
func (m *matcher) augment(v int) {
	for v >= 0 {
		p := m.parent[v]
		next := m.mate[p]
		m.mate[v], m.mate[p] = p, v
		v = next
	}
}
