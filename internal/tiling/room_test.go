package tiling

import (
	"fmt"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// square is a room of 60 by 60 in at the board (61 at the studs), level, plumb, 90 in high from the bare floor. Its
// parts can be replaced by key.
const square = `dryfit: 1
name: Test room
units: in
survey:
  corners: A B C D
  tape: {A-B: 61, B-C: 61, C-D: 61, D-A: 61, A-C: 86-17/64}
  level line:
    down: {%s}
    up: {A: 50, B: 50, C: 50, D: 50}
walls:
  back: {along: A-B, build-up: [board 1/2, bed 3/16, tile 3/8]}
  right: {along: B-C, build-up: [board 1/2, bed 3/16, tile 3/8]}
  front: {along: C-D, build-up: [board 1/2]}
  left: {along: D-A, build-up: [board 1/2, bed 3/16, tile 3/8]}
floor: {build-up: [bed 3/16, tile 3/8]}
setting: {back wall: back, order: [floor, back, right, left], soft joint: 1/8, floor joint: 1/8}
`

// room solves a test room; tail is added to the document. down is the level line's readings at the corners.
func room(t *testing.T, down, tail string) (document.Room, site.Room) {
	t.Helper()
	doc, found := document.Read("test.yaml", []byte(fmt.Sprintf(square, down)+tail))
	solved, more, _ := site.Solve(doc)
	for _, f := range append(found, more...) {
		if f.Class == diag.Stop {
			t.Fatalf("%d:%d %s: %s", f.At.Line, f.At.Column, f.Code, f.Say(unit.DefaultStyle(unit.Inches)))
		}
	}
	return doc, solved
}

func in(t *testing.T, s string) unit.Length {
	t.Helper()
	l, err := unit.Parse(s, unit.Inches)
	if err != nil {
		t.Fatal(err)
	}
	return l
}
