package document

import (
	"fmt"
	"math"
	"strings"

	"dryfit/internal/unit"
)

// Starter returns a first document for a room with so many corners (3 to 20), for a person to write their own
// readings over. Its readings are those of an invented room that closes, rounded to the tape's mark, so that it can
// be planned as it stands.
func Starter(units unit.System, corners int) []byte {
	s := starter{style: unit.DefaultStyle(units), at: outline(min(max(corners, 3), 20))}
	for i := range s.at {
		s.names = append(s.names, string(rune('A'+i)))
	}
	return []byte(strings.NewReplacer(
		"UNITS", units.String(),
		"MARK", s.pick("1/16", "1"),
		"CORNERS", strings.Join(s.names, " "),
		"TAPE", s.tape(),
		"DOWN", s.each(s.pick("40", "1000")),
		"UPWARD", s.each(s.pick("56", "1440")),
		"WALLS", s.walls(),
		"FRAME", s.pick("{joist: 2x10, spacing: 16, span: 10 ft, modulus: 1.6e6 psi, load: 50 psf, subfloor: [plywood 3/4, board 1/2]}",
			"{joist: {width: 60, depth: 220}, spacing: 400, span: 3000, modulus: 11 GPa, load: 2.4 kPa, subfloor: [plywood 18, board 12]}"),
		"BOARD", s.pick("board 1/2", "board 12.5"),
		"BED", s.pick("bed 3/16", "bed 5"),
		"SOFT", s.pick("1/8", "3"),
		"DOOR", s.pick("across: 6 to 34 from B, up: 0 to 80 above floor", "across: 150 to 860 from B, up: 0 to 2030 above floor"),
		"PIPE", s.pick("across: 30 from A, up: center 21 above floor, diameter: 5/8", "across: 760 from A, up: center 530 above floor, diameter: 15"),
		"BURIED", s.pick("across: 29-1/2 to 30-1/2 from A, up: 0 to 21 above floor", "across: 750 to 770 from A, up: 0 to 530 above floor"),
		"WALLTILE", s.pick("12 x 6 x 5/16", "300 x 150 x 8"),
		"FLOORTILE", s.pick("12 x 12 x 3/8", "300 x 300 x 9"),
		"JOINT", s.pick("1/8", "3"),
		"WARP", s.pick("1/32", "0.5"),
		"KERF", s.pick("3/32", "2"),
		"BITS", s.pick("[1-1/4, 1-3/8, 2]", "[25, 35, 50]"),
	).Replace(starterText))
}

type starter struct {
	style unit.Style
	names []string
	at    [][2]float64 // in inches
}

func (s starter) pick(inches, millimetres string) string {
	if s.style.System == unit.Millimetres {
		return millimetres
	}
	return inches
}

// outline gives the corners of an invented room, in inches, clockwise seen from above. Every corner can be seen from
// the first. Two corners more make one more step in the far corner; an odd one comes from a corner cut off.
func outline(n int) [][2]float64 {
	const wide, deep, step, cut = 96, 72, 9, 18
	if n == 3 {
		return [][2]float64{{0, 0}, {0, deep}, {wide, 0}}
	}
	steps := (n - 4) / 2
	points := [][2]float64{{0, 0}, {0, deep}}
	size := float64(step)
	if steps > 3 {
		size = 3 * step / float64(steps)
	}
	for k := steps; k > 0; k-- {
		x, y := wide-float64(k)*size, deep-float64(steps-k)*size
		points = append(points, [2]float64{x, y}, [2]float64{x, y - size})
	}
	points = append(points, [2]float64{wide, deep - float64(steps)*size})
	if n%2 == 1 {
		return append(points, [2]float64{wide, cut}, [2]float64{wide - cut, 0})
	}
	return append(points, [2]float64{wide, 0})
}

// tape writes a reading of every side, and of the lines from the first two corners to all others.
func (s starter) tape() string {
	var b strings.Builder
	n := len(s.at)
	for i := range n {
		s.reading(&b, i, (i+1)%n)
	}
	for i := 2; i < n-1; i++ {
		s.reading(&b, 0, i)
	}
	for i := 3; i < n; i++ {
		s.reading(&b, 1, i)
	}
	return strings.TrimRight(b.String(), "\n")
}

func (s starter) reading(b *strings.Builder, i, j int) {
	p, q := s.at[i], s.at[j]
	l := unit.FromMM(math.Hypot(p[0]-q[0], p[1]-q[1]) * unit.Inch.MM())
	fmt.Fprintf(b, "    %s-%s: %s\n", s.names[i], s.names[j], s.style.Bare(l))
}

func (s starter) each(value string) string {
	all := make([]string, len(s.names))
	for i, n := range s.names {
		all[i] = n + ": " + value
	}
	return "{" + strings.Join(all, ", ") + "}"
}

func (s starter) walls() string {
	var b strings.Builder
	for i, n := range s.names {
		next := s.names[(i+1)%len(s.names)]
		layers := s.pick("board 1/2", "board 12.5")
		if i == 0 {
			layers += s.pick(", bed 3/16, tile", ", bed 5, tile")
		}
		fmt.Fprintf(&b, "  wall %s%s: {along: %s-%s, build-up: [%s]}\n", n, next, n, next, layers)
	}
	return strings.TrimRight(b.String(), "\n")
}
