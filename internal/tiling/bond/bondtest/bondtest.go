// Package bondtest reads a bond from one line, for tables in tests:
//
//	running 1/3, 600x300, 3
//	diagonal stack, 300x300, 2 upright
//	modular 3, 400x400 400x200 200x200, 3
//	hexagon, 200, 3
//
// The bond, the sizes in millimetres, the joint in millimetres. A running offset is a fraction, or a length as in
// "running 100 mm"; "back" after it goes to and fro. Herringbone takes "45".
package bondtest

import (
	"fmt"
	"strings"

	"dryfit/internal/tiling/bond"
	"dryfit/internal/unit"
)

// All has one line for each kind of bond and option that closes.
var All = []string{
	"stack, 600x300, 3", "stack, 600x300, 3 upright", "running 1/2, 600x300, 3", "running 1/3, 597x297, 3.1",
	"running 2/5, 601x301, 2", "running 1/3 back, 600x300, 3", "running 100 mm, 600x300, 3", "running 77 mm back, 600x300, 3",
	"vertical stack, 600x300, 3", "vertical running 1/2, 600x300, 3 upright", "vertical running 1/3, 600x300, 3",
	"vertical running 50 mm, 300x100, 2", "diagonal stack, 300x300, 3", "diagonal running 1/2, 600x300, 3",
	"herringbone, 600x100, 2", "herringbone 45, 600x100, 2", "herringbone, 450x180, 3.3", "herringbone, 200x200, 3",
	"herringbone, 600x100, 2 upright", "double herringbone, 600x150, 2", "double herringbone 45, 603x97, 2.5",
	"basketweave, 597x297, 3", "basketweave, 300x98, 3", "basketweave, 597x297, 3 upright", "hexagon, 200, 3",
	"hexagon, 200, 3 upright", "hexagon, 203.3, 2.1", "pinwheel, 400x400 100x100, 3", "pinwheel, 97x97 305x305, 3 upright",
	"modular 3, 397x397 397x197 197x197, 3", "modular 3, 197x197 397x197 397x397, 3 upright",
	"modular 4, 597x397 397x397 397x197 197x197, 3", "modular 4, 597x397 397x397 197x397 197x197, 3",
}

// Parse reads the notation; it panics on what it can not read, as a table in a test is ours.
func Parse(line string) (bond.Spec, bond.Goods) {
	parts := strings.Split(line, ", ")
	if len(parts) != 3 {
		panic(fmt.Sprintf("bondtest: %q has no three parts", line))
	}
	joint, upright := strings.CutSuffix(parts[2], " upright")
	goods := bond.Goods{Joint: MM(joint), Upright: upright}
	for s := range strings.FieldsSeq(parts[1]) {
		goods.Sizes = append(goods.Sizes, size(s))
	}
	s := spec(parts[0])
	goods.Hex = s.Kind == bond.Hexagon
	return s, goods
}

// Make returns the bond of a line that closes.
func Make(line string) bond.Bond {
	b, found := bond.Make(Parse(line))
	if found.Stops() {
		panic(fmt.Sprintf("bondtest: %q: %v", line, found))
	}
	return b
}

// MM reads millimetres.
func MM(text string) unit.Length {
	l, err := unit.Parse(text, unit.Millimetres)
	if err != nil {
		panic(err)
	}
	return l
}

func size(text string) bond.Size {
	l, w, ok := strings.Cut(text, "x")
	if !ok {
		w = l
	}
	return bond.Size{Name: text, Length: MM(l), Width: MM(w)}
}

func spec(text string) bond.Spec {
	var s bond.Spec
	text, s.Diagonal = strings.CutPrefix(text, "diagonal ")
	text, s.Vertical = strings.CutPrefix(text, "vertical ")
	if rest, ok := strings.CutSuffix(text, " 45"); ok {
		text, s.Diagonal = rest, true
	}
	offset, running := strings.CutPrefix(text, "running ")
	if !running {
		s.Kind = bond.Kind(text)
		return s
	}
	s.Kind = bond.Running
	offset, s.Back = strings.CutSuffix(offset, " back")
	if strings.HasSuffix(offset, "mm") {
		s.Shift = MM(offset)
	} else if _, err := fmt.Sscanf(offset, "%d/%d", &s.Num, &s.Den); err != nil {
		panic(err)
	}
	return s
}
