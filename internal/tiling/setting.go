package tiling

import (
	"cmp"
	"slices"

	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// step is one piece with what orders it.
type step struct {
	address string
	under   int         // 1 where the ledger is in the way
	base    unit.Length // the lowest point of its course
	field   int
	course  int
	left    unit.Length
}

// settingOrder lists addresses as they are set: course by course from below, left to right in a course. Where there
// is a ledger the work starts on it, and what stands under it comes last, when the ledger is off.
func settingOrder(fields []Field, l *Ledger) []string {
	var steps []step
	for i, f := range fields {
		pieces := f.Chosen().Pieces
		bases := courseBases(pieces)
		for _, p := range pieces {
			steps = append(steps, step{p.Address, under(p, l), bases[p.Course], i, p.Course, p.OnFace.Bounds().Min.X})
		}
	}
	slices.SortStableFunc(steps, func(a, b step) int {
		return cmp.Or(a.under-b.under, cmp.Compare(a.base, b.base), a.field-b.field, a.course-b.course, cmp.Compare(a.left, b.left))
	})
	out := make([]string, len(steps))
	for i, s := range steps {
		out[i] = s.address
	}
	return out
}

// under is 1 for a piece that stands below the ledger's top.
func under(p piece.Piece, l *Ledger) int {
	if l != nil && p.OnFace.Bounds().Max.Y <= l.Y {
		return 1
	}
	return 0
}

// courseBases gives the lowest point of each course, so that pieces cut differently below still count as one course.
func courseBases(pieces []piece.Piece) map[int]unit.Length {
	bases := map[int]unit.Length{}
	for _, p := range pieces {
		y := p.OnFace.Bounds().Min.Y
		if base, ok := bases[p.Course]; !ok || y < base {
			bases[p.Course] = y
		}
	}
	return bases
}
