package pair

import (
	"fmt"
	"strconv"
	"strings"
	"testing"
)

// A case in one line: the blank WxH, then options (kerf:K, strip:S, budget:B),
// then pieces: COUNT*WxH, :sides kept (letters of LBRT), @turns allowed (letters
// 0 1 2 3, in quarters), and /a tapered outline by its points x,y;x,y;...
func read(line string) Problem {
	var p Problem
	fields := strings.Fields(line)
	p.W, p.H = pairOf(fields[0], "x")
	for _, f := range fields[1:] {
		name, value, _ := strings.Cut(f, ":")
		switch name {
		case "kerf":
			p.Kerf = number(value)
		case "strip":
			p.LeastStrip = number(value)
		case "budget":
			p.Budget = int(number(value))
		default:
			p.Pieces = append(p.Pieces, readPieces(f)...)
		}
	}
	return p
}

func readPieces(f string) []Piece {
	var pc Piece
	f, shape, _ := strings.Cut(f, "/")
	f, turns, _ := strings.Cut(f, "@")
	f, keep, _ := strings.Cut(f, ":")
	count, size, _ := strings.Cut(f, "*")
	pc.W, pc.H = pairOf(size, "x")
	for _, r := range keep {
		pc.Keep |= map[rune]Side{'L': Left, 'B': Bottom, 'R': Right, 'T': Top}[r]
	}
	for _, r := range turns {
		pc.Turns |= 1 << (r - '0')
	}
	for _, pt := range strings.FieldsFunc(shape, func(r rune) bool { return r == ';' }) {
		x, y := pairOf(pt, ",")
		pc.Shape = append(pc.Shape, Pt{x, y})
	}
	out := make([]Piece, number(count))
	for i := range out {
		out[i] = pc
	}
	return out
}

func pairOf(s, sep string) (int64, int64) {
	a, b, _ := strings.Cut(s, sep)
	return number(a), number(b)
}

func number(s string) int64 {
	n, err := strconv.ParseInt(s, 10, 64)
	if err != nil {
		panic(err)
	}
	return n
}

// The numbers of blanks are worked out by hand beside each case. Inches are in
// eighths.
func TestKnown(t *testing.T) {
	for _, c := range []struct {
		why    string
		line   string
		blanks int
	}{
		{"5 + 6 of 12: each tile gives a left and a right cut", "96x96 10*40x96:RBT 10*48x96:LBT", 10},
		{"5 + 7 = 12 when snapped", "96x96 10*40x96:RBT 10*56x96:LBT", 10},
		{"5 + 7 + 1/8 is more than 12", "96x96 kerf:1 10*40x96:RBT 10*56x96:LBT", 20},
		{"ten left cuts, and the tile has a direction", "96x96 10*48x96:RBT", 10},
		{"ten left cuts, turned by half: 6 + 6", "96x96 10*48x96:RBT@02", 5},
		{"a left cut serves the right end by a half turn", "96x96 3*40x96:RBT@02 3*40x96:LBT@02", 3},
		{"top cuts do not serve sides of an oblong tile", "96x48 1*96x20:LRB 1*40x48:LBT@02", 2},
		{"in a square tile a quarter turn serves them", "96x96 1*96x20:LRB@0123 1*40x96:LBT@0123", 1},
		{"four corners, four pieces", "96x96 4*40x40:LB@0123", 1},
		{"a fifth corner takes a second tile", "96x96 5*20x20:LB@0123", 2},
		{"one corner only where the tile has a direction", "96x96 4*40x40:LB", 4},
		{"nine free thirds", "96x96 9*32x32", 1},
		{"nine free thirds do not survive the saw", "96x96 kerf:1 9*32x32", 3},
		{"a strip of 3/8 is left between: too little to snap", "96x96 strip:4 1*40x96:RBT 1*53x96:LBT", 2},
		{"a strip of 1/2 is enough", "96x96 strip:4 1*40x96:RBT 1*52x96:LBT", 1},
		{"nothing left between is fine too", "96x96 strip:4 1*40x96:RBT 1*56x96:LBT", 1},
		{"two half triangles, snapped along the diagonal", "96x96 2*96x96:LB@02/0,0;96,0;0,96", 1},
		{"two half triangles leave no kerf", "96x96 kerf:1 2*96x96:LB@02/0,0;96,0;0,96", 2},
		{"a corner cut off serves as the triangle of another place",
			"96x96 1*96x96:RT/30,0;96,0;96,96;0,96;0,30 1*30x30:LB/0,0;30,0;0,30", 1},
		{"four corner triangles of half a side", "96x96 4*48x48:LB@0123/0,0;48,0;0,48", 1},
		{"big and small triangles by turns", "96x96 2*60x60:LB@0123/0,0;60,0;0,60 2*36x36:LB@0123/0,0;36,0;0,36", 1},
		{"three big triangles: two would meet on a side", "96x96 3*60x60:LB@0123/0,0;60,0;0,60", 2},
		{"a pinwheel is not cut edge to edge", "80x80 4*48x32@01", 2},
		{"nothing to cut", "96x96", 0},
	} {
		t.Run(strings.ReplaceAll(c.why, " ", "_"), func(t *testing.T) {
			p := read(c.line)
			r := Pack(p)
			if err := check(p, r); err != nil {
				t.Fatal(err)
			}
			if r.Blanks != c.blanks || r.Lower != c.blanks {
				t.Errorf("%s: %d blanks, lower %d by %s, by hand %d", c.line, r.Blanks, r.Lower, r.Proof, c.blanks)
			}
		})
	}
}

func TestUnfitAndTight(t *testing.T) {
	for _, c := range []struct{ line, want string }{
		{"96x48 1*97x10", "blanks 0 unfit [0] tight []"},
		{"96x48 1*48x96 1*48x96@1", "blanks 1 unfit [0] tight []"},
		{"96x48 1*40x10:LR", "blanks 0 unfit [0] tight []"},
		{"96x48 1*0x10 1*10x-1", "blanks 0 unfit [0 1] tight []"},
		{"96x48 1*10x10/0,0;11,0;0,10", "blanks 0 unfit [0] tight []"},
		{"96x48 1*10x10/0,0;5,5;10,10", "blanks 0 unfit [0] tight []"},
		{"96x48 strip:4 2*3x48:LBT 1*50x48:RBT", "blanks 3 unfit [] tight [0 1]"},
		{"96x48 strip:4 1*93x48:LBT 1*96x45:LBR", "blanks 2 unfit [] tight [0 1]"},
		{"0x48 1*3x48", "blanks 0 unfit [0] tight []"},
	} {
		p := read(c.line)
		r := Pack(p)
		if err := check(p, r); err != nil {
			t.Errorf("%s: %v", c.line, err)
		}
		if got := fmt.Sprintf("blanks %d unfit %v tight %v", r.Blanks, r.Unfit, r.Tight); got != c.want {
			t.Errorf("%s: %s, want %s", c.line, got, c.want)
		}
	}
}

func TestOutOfRangePanics(t *testing.T) {
	for _, line := range []string{"1000000000x5", "5x5 kerf:-1", "5x5 strip:-1"} {
		func() {
			defer func() {
				if recover() == nil {
					t.Errorf("%s: no panic", line)
				}
			}()
			Pack(read(line))
		}()
	}
}
