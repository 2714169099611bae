package export_test

import (
	"fmt"
	"math/big"
)

type (
	readSpot struct{ X, Y, Z num }
	readBox  struct{ Lo, Hi readSpot }
	readWood struct {
		Cabinets []struct {
			Name   string
			Asked  readBox
			Pieces []struct {
				Part                 string
				Box                  readBox
				Length, Width, Thick num
				Carcass              bool
				Channels             []struct {
					Side     string
					From, To readXY
					Depth    num
				}
			}
		}
		Tops []struct {
			Name                      string
			Width, Back, Depth, Thick num
			SawWider                  num
			Holes                     []struct {
				Name                       string
				X, Z, Across, Deep, Recess num
				Left                       []struct {
					To   string
					Left num
				}
			}
			GlueUp *struct {
				Rough, Jointed              []num
				Width, Spare, Length, Thick num
				Area                        square
				BoardFeet                   rat
			}
			Movement *struct {
				Fixed num
				Slots []struct{ Z, Away, In, Out, Long, Middle num }
			}
		}
		Scribes []struct {
			Name  string
			Needs num
			Line  []struct{ At, Offset, Cut num }
		}
		Trim []struct {
			Name string
			Runs []struct {
				Where       string
				Length      num
				Left, Right struct {
					Joint       string
					Corner, Saw degrees
				}
				Pieces []struct{ Long, Short num }
			}
		}
	}
)

// wood recomputes what is claimed of wood work.
func recheckWood(text topKeys) []string {
	var p struct{ Wood readWood }
	if err := readKeys(text, &p); err != nil {
		return []string{err.Error()}
	}
	c := &woodChecker{}
	c.cabinets(p.Wood)
	c.tops(p.Wood)
	c.lines(p.Wood)
	return c.wrong
}

type woodChecker struct{ wrong []string }

func (c *woodChecker) say(format string, a ...any) {
	c.wrong = append(c.wrong, "wood: "+fmt.Sprintf(format, a...))
}

func (b readBox) sizes() [3]num { return [3]num{b.Hi.X - b.Lo.X, b.Hi.Y - b.Lo.Y, b.Hi.Z - b.Lo.Z} }

// cabinets: a part's sizes are those of its box, in some order; nothing is cut deeper than the part; and all boxes of the carcass together
// have the outside that was asked for.
func (c *woodChecker) cabinets(w readWood) {
	for _, cab := range w.Cabinets {
		var all *readBox
		for _, q := range cab.Pieces {
			if !sameThree(q.Box.sizes(), [3]num{q.Length, q.Width, q.Thick}) {
				c.say("%s, %s: its sizes are not those of its box", cab.Name, q.Part)
			}
			for _, k := range q.Channels {
				deep := map[string]num{"face": q.Thick, "back": q.Thick, "front edge": q.Width, "rear edge": q.Width, "left end": q.Length, "right end": q.Length}[k.Side]
				if k.Depth <= 0 || k.Depth >= deep || k.From.X >= k.To.X || k.From.Y >= k.To.Y {
					c.say("%s, %s: a channel is no cut into its %s", cab.Name, q.Part, k.Side)
				}
			}
			if !q.Carcass {
				continue
			}
			if all == nil {
				b := q.Box
				all = &b
			}
			all.Lo = readSpot{min(all.Lo.X, q.Box.Lo.X), min(all.Lo.Y, q.Box.Lo.Y), min(all.Lo.Z, q.Box.Lo.Z)}
			all.Hi = readSpot{max(all.Hi.X, q.Box.Hi.X), max(all.Hi.Y, q.Box.Hi.Y), max(all.Hi.Z, q.Box.Hi.Z)}
		}
		if all == nil || *all != cab.Asked {
			c.say("%s put together has not the outside that was asked for", cab.Name)
		}
	}
}

func sameThree(a, b [3]num) bool {
	for _, order := range [][3]int{{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}} {
		if a[order[0]] == b[0] && a[order[1]] == b[1] && a[order[2]] == b[2] {
			return true
		}
	}
	return false
}

// tops: what is left round holes, the glued width, the slots.
func (c *woodChecker) tops(w readWood) {
	for _, t := range w.Tops {
		for _, h := range t.Holes {
			for _, l := range h.Left {
				left, known := map[string]num{"front edge": t.Depth - h.Z - h.Deep/2, "rear edge": h.Z - h.Deep/2 - t.Back, "left end": h.X - h.Across/2, "right end": t.Width - h.X - h.Across/2, "underside": t.Thick - h.Recess}[l.To]
				if d := left - l.Left; known && (d > 1 || d < -1) { // half of an odd outline
					c.say("%s: %s leaves another width to the %s", t.Name, h.Name, l.To)
				}
			}
		}
		c.glued(t.Name, w)
		if m := t.Movement; m != nil {
			for _, s := range m.Slots {
				if away := s.Z - m.Fixed; away != s.Away && -away != s.Away {
					c.say("%s: a screw is not so far from the fixed line", t.Name)
				}
				if off := s.Middle - s.Z; 2*off > s.Out-s.In+1 && s.Z > m.Fixed || s.Long <= s.In+s.Out {
					c.say("%s: a slot is not long enough, or lies elsewhere", t.Name)
				}
			}
		}
	}
}

// glued: the staves add up, and the board feet are their volume: 144 cubic inches each.
func (c *woodChecker) glued(name string, w readWood) {
	for _, t := range w.Tops {
		g := t.GlueUp
		if t.Name != name || g == nil {
			continue
		}
		sum, rough := num(0), num(0)
		for i := range g.Jointed {
			sum += g.Jointed[i]
			rough += g.Rough[i]
		}
		if sum != g.Width || sum-(t.Depth-t.Back+t.SawWider) != g.Spare {
			c.say("%s: its staves are not so wide together", name)
		}
		if square(g.Length)*square(g.Thick)*square(len(g.Jointed)-1) != g.Area {
			c.say("%s: its joints have another area", name)
		}
		foot := big.NewRat(144, 1)
		for range 3 {
			foot.Mul(foot, big.NewRat(254*mm, 10))
		}
		volume := new(big.Rat).SetInt64(int64(g.Length))
		volume.Mul(volume, new(big.Rat).SetInt64(int64(g.Thick))).Mul(volume, new(big.Rat).SetInt64(int64(rough)))
		if over := new(big.Rat).Sub(g.BoardFeet.Rat, volume.Quo(volume, foot)); over.Sign() < 0 || over.Cmp(big.NewRat(int64(len(g.Rough)), 1000)) > 0 {
			c.say("%s: its board feet are not its staves'", name)
		}
	}
}

// lines: a scribe's cuts and gaps are alike everywhere; a saw is swung by half of what its corner lacks; no piece is longer to its short point.
func (c *woodChecker) lines(w readWood) {
	for _, s := range w.Scribes {
		most := num(0)
		for _, q := range s.Line {
			most = max(most, q.Cut)
			if q.Offset+q.Cut != s.Line[0].Offset+s.Line[0].Cut {
				c.say("%s: a cut is not what its gap leaves", s.Name)
			}
		}
		if most != s.Needs {
			c.say("%s: it needs another width", s.Name)
		}
	}
	for _, t := range w.Trim {
		for _, r := range t.Runs {
			for _, q := range r.Pieces {
				if q.Short > q.Long || q.Short <= 0 {
					c.say("%s, %s: its short point is longer", t.Name, r.Where)
				}
			}
			if r.Left.Joint == "mitered" && 2*r.Left.Saw-(180e6-r.Left.Corner) > 1 {
				c.say("%s, %s: its saw does not suit the corner", t.Name, r.Where)
			}
		}
	}
}
