package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
	"dryfit/internal/wood"
)

// Moves is what a solid slab does over the year, across its grain.
type Moves struct {
	Known              bool
	Species            string
	Glued, Least, Most unit.Ratio
	Source             string // of the house's moisture
	Fixed              document.FixedLine
	FixedAt            unit.Length // off the finished wall
	Shrinks, Swells    unit.Length // of the whole depth
	Slots              []Slot
	Gaps               []Play
}

// Slot is a row of screws. The screw goes up through the rail into the slab and moves with it, so the slot is in the rail.
type Slot struct {
	Z       unit.Length   // of the screw off the finished wall, when the work is made
	Away    unit.Length   // from the fixed line
	In, Out unit.Length   // how far it may move toward the fixed line and from it
	Long    unit.Length   // screw + both; a round hole where the screw stands on the fixed line
	Middle  unit.Length   // of the slot, off the finished wall
	Rail    string        // the piece of the cabinet that it is cut into; "" where the top lies on no cabinet
	Along   []unit.Length // of the screws, from the left end of the top
}

// Play is the room at a place that moves past something that stands still.
type Play struct {
	Name        string
	At          diag.Place
	Needs, Room unit.Length
	Known       bool // Room is known
	Pipe        bool // a pipe stands in it
	Held        bool // what goes through is clamped to the slab and moves with it
}

// movement works a solid slab's movement out; sheets and stone have none to speak of.
func (s *slab) movement() {
	if s.doc.Made.V != document.StaveTop {
		return
	}
	m, ok := s.r.moisture(s.doc.Wood, s.good, s.t.Name)
	if !ok {
		return
	}
	v := Moves{Known: true, Species: m.species.Name, Glued: m.glued, Least: m.least, Most: m.most, Source: m.Source}
	at := func(away unit.Length) wood.Swing { return m.species.Swing(away, m.rings, m.glued, m.least, m.most) }
	all := at(s.t.Depth - s.t.Back)
	v.Shrinks, v.Swells = all.In, all.Out
	if !s.doc.Fixing.Given || !s.doc.Fixing.Fixed.Known {
		s.t.Moves = v
		s.r.found.Add(diag.Unchecked, "fixing-missing", s.doc.At, "{0} shrinks by {1} and swells by {2} over the year; where it is held fast is not written, so its slots are not worked out", "add fixing: {fixed at: back, screws: [2, 10, 19], diameter: 3/16}", diag.T(s.t.Name), diag.L(all.In), diag.L(all.Out))
		return
	}
	v.Fixed = s.doc.Fixing.Fixed.V
	v.FixedAt = map[document.FixedLine]unit.Length{document.FixedBack: s.t.Back, document.FixedMiddle: (s.t.Back + s.t.Depth) / 2, document.FixedFront: s.t.Depth}[v.Fixed]
	s.slots(&v, at)
	s.plays(&v, at)
	s.t.Moves = v
}

func (s *slab) slots(v *Moves, at func(unit.Length) wood.Swing) {
	d := s.doc.Fixing.Diameter
	if !s.r.known(d, s.doc.Fixing.At, "the diameter of the screws of "+s.t.Name) {
		return
	}
	for _, z := range s.doc.Fixing.Screws {
		if !z.Known {
			continue
		}
		if z.V <= s.t.Back || z.V >= s.t.Depth {
			s.r.stop("screw-outside", z.At, "a row of screws {1} off the wall is not under {0}", "write a distance between {2} and {3}", diag.T(s.t.Name), diag.X(z.V), diag.X(s.t.Back), diag.X(s.t.Depth))
			continue
		}
		away := (z.V - v.FixedAt).Abs()
		w := at(away)
		slot := Slot{Z: z.V, Away: away, In: w.In, Out: w.Out, Long: d.V + w.In + w.Out}
		outward := unit.Length(1)
		if z.V < v.FixedAt {
			outward = -1
		}
		slot.Middle = z.V + outward*(w.Out-w.In)/2
		s.headCovers(slot, d.V)
		s.bore(&slot, d.V)
		v.Slots = append(v.Slots, slot)
	}
}

// headCovers tells of a head that would sink into its slot.
func (s *slab) headCovers(slot Slot, screw unit.Length) {
	if head := s.doc.Fixing.Head; head.Known && head.V < screw+s.r.round(unit.Inch/8, 3*unit.Millimetre) {
		s.r.look("head-small", head.At, "a head of {1} does not bear beside a slot for a screw of {2} in {0}", "use washers", diag.T(s.t.Name), diag.X(head.V), diag.X(screw))
	}
}

// plays holds the room at the wall and round what passes through the slab against what it moves there.
func (s *slab) plays(v *Moves, at func(unit.Length) wood.Swing) {
	back := Play{Name: "rear edge to the wall", At: s.doc.At, Needs: at(v.FixedAt - s.t.Back).Out, Room: s.t.Back, Known: true}
	s.play(v, back)
	for _, h := range s.t.Holes {
		if h.Recess > 0 {
			continue
		}
		w := at((h.Z - v.FixedAt).Abs())
		p := Play{Name: h.Name, At: h.At, Needs: max(w.In, w.Out), Pipe: h.Pipe, Held: h.Held, Known: h.Passes > 0, Room: (h.Outline.Deep - h.Passes) / 2}
		s.play(v, p)
	}
}

func (s *slab) play(v *Moves, p Play) {
	v.Gaps = append(v.Gaps, p)
	if p.Pipe && !p.Known && p.Needs > 0 {
		s.r.found.Add(diag.Unchecked, "play-unknown", p.At, "not checked: {0} moves by {1} at {2}; how thick what stands in it is, is missing", "write the size of the trap under its waste", diag.T(s.t.Name), diag.L(p.Needs), diag.T(p.Name))
	}
	if p.Known && p.Room < p.Needs {
		s.r.stop("play-small", p.At, "{0} moves by {1} at its {2}, and there is room for {3}", "leave {1} there, or hold the slab fast nearer to it", diag.T(s.t.Name), diag.L(p.Needs), diag.T(p.Name), diag.L(p.Room))
	}
}
