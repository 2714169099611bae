package text

import "strings"

// changeItem finds the bytes of a change to one value of a list.
func (p *page) changeItem(parent *Node, above []Entry, do Verb, place, typed string) (span, string, bool) {
	i, ok := item(place)
	switch {
	case !ok:
		return span{}, "", false
	case do == Add:
		return p.addItem(parent, above, i, typed)
	case do == Remove && len(parent.Items) == 1 && len(above) > 0:
		return p.replace(above[len(above)-1], "[]")
	case do == Remove:
		return p.removeItem(parent, i)
	}
	old, ok := p.node(parent.Items[i])
	return old, typed, ok
}

// removeItem takes a value out of [ ] with one of the commas beside it, or the lines of one that has a dash.
func (p *page) removeItem(parent *Node, i int) (span, string, bool) {
	cut, ok := p.node(parent.Items[i])
	switch {
	case !ok:
		return cut, "", false
	case !parent.Flow:
		return p.lines(cut), "", true
	case i+1 < len(parent.Items):
		var next span
		next, ok = p.node(parent.Items[i+1])
		cut.to = next.from
	case i > 0:
		var before span
		before, ok = p.node(parent.Items[i-1])
		cut.from = before.to
	}
	return cut, "", ok
}

// addItem puts a value in front of the i-th, or behind the last.
func (p *page) addItem(parent *Node, above []Entry, i int, typed string) (span, string, bool) {
	n := len(parent.Items)
	switch {
	case n == 0 && len(above) > 0:
		return p.replace(above[len(above)-1], "["+typed+"]")
	case n == 0 || i > n:
		return span{}, "", false
	}
	beside, ok := p.node(parent.Items[min(i, n-1)])
	switch {
	case !ok:
		return span{}, "", false
	case !parent.Flow:
		return p.addDash(beside, i == n, typed)
	case i == n:
		return span{beside.to, beside.to}, ", " + typed, true
	}
	return span{beside.from, beside.from}, typed + ", ", true
}

// addDash puts a line with a dash above or under the lines of another.
func (p *page) addDash(beside span, under bool, typed string) (span, string, bool) {
	lines := p.lines(beside)
	dash := string(p.src[lines.from:beside.from])
	if strings.Trim(dash, " ") != "-" {
		return span{}, "", false
	}
	entry := dash + typed + p.newline()
	switch {
	case !under:
		return span{lines.from, lines.from}, entry, true
	case lines.to == len(p.src) && !p.endsLine():
		return span{lines.to, lines.to}, p.newline() + strings.TrimSuffix(entry, p.newline()), true
	}
	return span{lines.to, lines.to}, entry, true
}
