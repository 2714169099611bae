package bond

import (
	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// axisBond lays straight courses, each shifted against the one below: stack and running, and with Vertical the same
// turned into columns. Each course of the cycle is a proto, so that its shift is rounded once and nothing drifts.
func axisBond(spec Spec, goods Goods, _ *diag.List) Bond {
	var turn geom.Turn
	if goods.Upright {
		turn = 1
	}
	first := proto(goods, 0, turn, 0, 0)
	b := Bond{Axis: true, Courses: !spec.Vertical, Vertical: spec.Vertical,
		Pitch: geom.Point{X: first.W + goods.Joint, Y: first.H + goods.Joint}}
	if spec.Vertical {
		b.Shifts = shifts(spec, b.Pitch.Y, b.Pitch.X)
		b.columns(first)
	} else {
		b.Shifts = shifts(spec, b.Pitch.X, b.Pitch.Y)
		b.courses(first)
	}
	return b
}

func (b *Bond) courses(first Proto) {
	n := len(b.Shifts)
	b.U, b.V = geom.Point{X: b.Pitch.X}, geom.Point{Y: b.Pitch.Y * unit.Length(n)}
	b.CourseBy, b.ColumnBy = [2]int{0, n}, [2]int{1, 0}
	for k, s := range b.Shifts {
		p := first
		p.At, p.Course = geom.Point{X: s, Y: b.Pitch.Y * unit.Length(k)}, k
		b.Protos = append(b.Protos, p)
	}
}

func (b *Bond) columns(first Proto) {
	n := len(b.Shifts)
	b.U, b.V = geom.Point{X: b.Pitch.X * unit.Length(n)}, geom.Point{Y: b.Pitch.Y}
	b.CourseBy, b.ColumnBy = [2]int{0, 1}, [2]int{n, 0}
	for k, s := range b.Shifts {
		p := first
		p.At, p.Column = geom.Point{X: b.Pitch.X * unit.Length(k), Y: s}, k
		b.Protos = append(b.Protos, p)
	}
}

// shifts returns the cycle of shifts for a tile pitch along the course and a pitch from course to course.
func shifts(spec Spec, along, across unit.Length) []unit.Length {
	switch {
	case spec.Kind == Stack:
		return []unit.Length{0}
	case spec.Den > 0:
		return byShare(int64(spec.Num), int64(spec.Den), along, spec.Back)
	}
	return byLength(spec.Shift, along, across, spec.Back)
}

// byShare rounds each course's shift once from k·num/den of the pitch.
func byShare(num, den int64, along unit.Length, back bool) []unit.Length {
	num = mod(num, den)
	cycle := den / gcd(num, den)
	if back {
		cycle = min(cycle, 2)
	}
	out := make([]unit.Length, min(cycle, mostCourses))
	for k := range out {
		out[k] = along.MulDiv(int64(k)*num%den, den)
	}
	return out
}

// mostCourses bounds the cycle: at the least pitch of 5 mm it is more courses than any face has, and longer cycles
// never show their end.
const mostCourses = int64(2*unit.Reach/leastModule) + 1

// byLength steps on by an exact length until the cycle closes, or until there are more courses than fit in a face.
func byLength(shift, along, across unit.Length, back bool) []unit.Length {
	s := unit.Length(mod(int64(shift), int64(along)))
	cycle := int64(along) / gcd(int64(s), int64(along))
	cycle = min(cycle, int64(2*unit.Reach/across)+1)
	if back {
		cycle = min(cycle, 2)
	}
	out := make([]unit.Length, cycle)
	for k := range out {
		out[k] = unit.Length(int64(k) * int64(s) % int64(along))
	}
	return out
}

func mod(a, m int64) int64 { return ((a % m) + m) % m }

// gcd returns the greatest common divisor; gcd(0, b) = b.
func gcd(a, b int64) int64 {
	for a != 0 {
		a, b = b%a, a
	}
	return b
}
