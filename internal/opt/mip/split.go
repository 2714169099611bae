package mip

// split parts a problem where no row ties the variables together. Rows that hold everywhere and those without a variable are left out; a
// variable that no other row has stays 0. What is best in each part is best together, since misses, changes and
// costs add up.
func (p Problem) split() []group {
	owner := make([]int, len(p.Vars)) // variable -> a variable of its group
	for j := range owner {
		owner[j] = j
	}
	var live []int
	for i := range p.Rows {
		if p.Rows[i].holdsEverywhere(p.Vars) {
			continue
		}
		live = append(live, i)
		first := -1
		for j, a := range p.Rows[i].A {
			if a == 0 {
				continue
			}
			if first < 0 {
				first = root(owner, j)
			}
			owner[root(owner, j)] = first
		}
	}
	return p.groups(owner, live)
}

// group is one part: its variables and rows, by their places in the problem.
type group struct{ vars, rows []int }

func (p Problem) groups(owner, live []int) []group {
	at := map[int]int{}
	var all []group
	for _, i := range live {
		j := p.Rows[i].firstVar()
		if j < 0 {
			continue
		}
		r := root(owner, j)
		g, seen := at[r]
		if !seen {
			g = len(all)
			at[r] = g
			all = append(all, group{})
		}
		all[g].rows = append(all[g].rows, i)
	}
	for j := range p.Vars {
		if g, seen := at[root(owner, j)]; seen {
			all[g].vars = append(all[g].vars, j)
		}
	}
	return all
}

// part writes out the problem of a group.
func (p Problem) part(g group) Problem {
	var out Problem
	for _, j := range g.vars {
		out.Vars = append(out.Vars, p.Vars[j])
	}
	for _, i := range g.rows {
		r := Row{A: make([]int64, len(g.vars)), B: p.Rows[i].B}
		for k, j := range g.vars {
			r.A[k] = p.Rows[i].A[j]
		}
		out.Rows = append(out.Rows, r)
	}
	return out
}

func (r *Row) firstVar() int {
	for j, a := range r.A {
		if a != 0 {
			return j
		}
	}
	return -1
}

func (r *Row) holdsEverywhere(vars []Var) bool {
	least := int64(0)
	for j, a := range r.A {
		if a != 0 {
			least += min(a*vars[j].Lo, a*vars[j].Hi)
		}
	}
	return least >= r.B
}

// root follows owners to the one that owns itself.
func root(owner []int, j int) int {
	for owner[j] != j {
		j = owner[j]
	}
	return j
}
