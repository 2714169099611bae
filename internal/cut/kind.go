package cut

import (
	"cmp"
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// kind is pieces that are sawn to the same size from one stock; or, joined, pieces that are cut side by side out of one panel.
// Length runs along the grain of the stock.
type kind struct {
	length, width unit.Length
	turns         bool // it may lie either way
	joined        bool
	way           Way // of the cuts between joined pieces, as the kind lies unturned
	pieces        []placed
}

// placed is a piece of a kind. Swapped: its own length runs across the stock's grain. At is where it begins in a joined panel.
type placed struct {
	piece   int
	swapped bool
	at      unit.Length
}

// kinds groups the pieces that are asked of a stock.
func (m *maker) kinds(s document.Stock) []kind {
	var out []kind
	index := map[kindKey]int{}
	for i, p := range m.plan.Pieces {
		if p.Part.Stock != s.Name || p.Part.Match != "" && s.Kind != document.StickStock {
			continue
		}
		k, swapped := single(p, s)
		key := kindKey{k.length, k.width, k.turns}
		at, have := index[key]
		if !have {
			at = len(out)
			index[key] = at
			out = append(out, k)
		}
		out[at].pieces = append(out[at].pieces, placed{piece: i, swapped: swapped})
	}
	return append(out, m.matched(s)...)
}

type kindKey struct {
	length, width unit.Length
	turns         bool
}

// single is the kind of one piece. Pieces that may be turned are taken the long way, so that those alike fall together.
func single(p Piece, s document.Stock) (k kind, swapped bool) {
	k = kind{length: p.Sawn.Length, width: p.Sawn.Width}
	if s.Kind == document.StickStock {
		return k, false
	}
	k.turns = plain(s) || p.Part.Grain == part.Any
	swapped = !k.turns && p.Part.Grain == part.Across || k.turns && k.width > k.length
	if swapped {
		k.length, k.width = k.width, k.length
	}
	return k, swapped
}

// matched joins the pieces of each match into one panel: side by side across the grain where they are of one length, in line along it
// where they are of one width.
func (m *maker) matched(s document.Stock) []kind {
	if s.Kind == document.StickStock {
		return nil
	}
	var out []kind
	done := map[string]bool{}
	for _, p := range m.plan.Pieces {
		name := p.Part.Match
		if p.Part.Stock != s.Name || name == "" || done[name] {
			continue
		}
		done[name] = true
		if k, ok := m.join(s, name); ok {
			out = append(out, k)
		}
	}
	return out
}

func (m *maker) join(s document.Stock, name string) (kind, bool) {
	row := m.row(s, name)
	k := kind{joined: len(row) > 1, turns: plain(s), way: Rip}
	lengths, widths := m.same(row)
	if lengths < 0 && widths < 0 {
		first := m.plan.Pieces[row[0].piece]
		m.found.Add(diag.Stop, "match-uneven", first.Part.At, "the parts matched as {0} are neither all of one length nor all of one width", "match parts of one length, side by side, or of one width, end to end", diag.T(name))
		return k, false
	}
	kerf := m.saw(s).kerf
	k.length, k.width = lengths, widths
	if lengths < 0 {
		k.way = Crosscut
	}
	var at unit.Length
	for i, q := range row {
		l, w := m.lying(q)
		row[i].at = at
		if k.way == Rip {
			at += w + kerf
		} else {
			at += l + kerf
		}
	}
	if k.way == Rip {
		k.width = at - kerf
	} else {
		k.length = at - kerf
	}
	k.pieces = row
	return k, true
}

// row lists the pieces of a match in their order.
func (m *maker) row(s document.Stock, name string) []placed {
	var row []placed
	for i, p := range m.plan.Pieces {
		if p.Part.Stock == s.Name && p.Part.Match == name {
			row = append(row, placed{piece: i, swapped: p.Part.Grain == part.Across})
		}
	}
	slices.SortStableFunc(row, func(a, b placed) int {
		return cmp.Compare(m.plan.Pieces[a.piece].Part.Order, m.plan.Pieces[b.piece].Part.Order)
	})
	return row
}

// lying is a piece's size as it lies on the stock: along its grain, and across.
func (m *maker) lying(q placed) (along, across unit.Length) {
	s := m.plan.Pieces[q.piece].Sawn
	if q.swapped {
		return s.Width, s.Length
	}
	return s.Length, s.Width
}

// same returns the one length and the one width of all pieces; -1 where they differ.
func (m *maker) same(row []placed) (length, width unit.Length) {
	for i, q := range row {
		l, w := m.lying(q)
		switch {
		case i == 0:
			length, width = l, w
		default:
			if l != length {
				length = -1
			}
			if w != width {
				width = -1
			}
		}
	}
	return length, width
}
