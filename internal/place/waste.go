package place

import (
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/geom"
	"dryfit/internal/space"
	"dryfit/internal/unit"
)

// Stub is a stub-out in its place.
type Stub struct {
	Name    string
	Doc     document.Stub
	Wall    string        // "" in the floor
	X, Y    figure.Figure // on a wall
	At      geom.Point    // in the floor, in the plan
	InFloor bool
	Out     figure.Figure // what stands out of the finished face
	BuildUp figure.Figure
	Hole    figure.Figure // diameter that is drilled
}

func (p *placer) stubs() {
	for _, d := range p.doc.Stubs {
		s := Stub{Name: d.Name, Doc: d, Out: figure.Missing(under(d.At, "across")), BuildUp: figure.Missing(under(d.At, "in"))}
		s.X, s.Y = figure.Missing(under(d.At, "across")), figure.Missing(under(d.At, "up"))
		face, ok := p.room.Face(d.In.Text)
		for _, h := range face.Holes {
			if h.Name == d.Name {
				s.At, s.InFloor = h.Center, d.In.Text == "floor"
				s.Hole = figure.Number(h.Drilled(p.doc.Tools)).Using(under(d.At, "diameter"), "tools > core bits")
				if d.Hole.Known {
					s.Hole = fact(d.Hole, d.At, "hole")
				}
			}
		}
		if w, isWall := p.out.Wall(d.In.Text); ok && isWall {
			s.Wall = w.Name
			s.X, s.Y = w.middle(d.Across, under(d.At, "across")), p.at(w.Name, d.Up, under(d.At, "up"))
			if s.X.Known() && s.Y.Known() {
				s.BuildUp = w.BuildUp(s.X.V, s.Y.V)
			}
		} else if s.InFloor {
			s.BuildUp = p.FloorBuildUp()
		}
		if s.Hole.V == 0 {
			s.Hole = figure.Missing(under(d.At, "diameter"))
		}
		s.Out = fact(d.Out, d.At, "stands out").Sub(s.BuildUp)
		p.out.Stubs = append(p.out.Stubs, s)
	}
}

// Stub returns the stub-out of that name.
func (pl Plan) Stub(name string) (Stub, bool) {
	for _, s := range pl.Stubs {
		if s.Name == name {
			return s, true
		}
	}
	return Stub{}, false
}

// Waste is what lies between a basin and its stub-out.
type Waste struct {
	Name   string
	Doc    document.Waste
	Basin  string
	Stub   string
	TailY  figure.Figure // lower end of the tailpiece
	Aside  figure.Figure // how far the stub-out is to the right of the basin's waste
	Level  figure.Figure // level, from the center of the tailpiece to the stub-out at the finished wall
	Arm    figure.Figure // from the weir to the vent
	Fall   figure.Figure // of the arm from the weir to the vent
	Drop   figure.Figure // from the end of the tailpiece down to the outlet of the trap
	Hang   figure.Figure // from the inside bottom of the basin down to there
	Clamps figure.Figure // what the thread has to clamp
}

func (p *placer) wastes() {
	for _, d := range p.doc.Wastes {
		w := Waste{Name: d.Name, Doc: d, Basin: d.From.Text, Stub: d.To.Text}
		b, ok1 := p.out.Basin(d.From.Text)
		s, ok2 := p.out.Stub(d.To.Text)
		if !ok1 {
			b = nowhere(under(d.At, "from"))
		}
		if !ok2 || s.InFloor {
			s.X, s.Y, s.BuildUp = figure.Missing(under(d.At, "to")), figure.Missing(under(d.At, "to")), figure.Missing(under(d.At, "to"))
		}
		w.TailY = b.Bottom.Sub(fact(d.Tail, d.At, "tailpiece"))
		w.Aside = s.X.Sub(b.X)
		w.Level = hypot(w.Aside, b.Off)
		weir := fact(d.Trap.Weir, d.At, "trap > weir")
		w.Arm = w.Level.Sub(weir).Add(s.BuildUp).Add(fact(d.Vent, d.At, "vent"))
		fall := unit.One / 48 // 1/4 in a foot
		if d.Fall.Known {
			fall = d.Fall.V
		}
		slope := figure.Number(0).Using(under(d.At, "fall"))
		if d.Fall.Unknown {
			slope = figure.Missing(under(d.At, "fall"))
		}
		w.Fall = w.Arm.Add(slope).Times(int64(fall), int64(unit.One)).Using(under(d.At, "fall"))
		toWall := w.Level.Sub(weir).Times(int64(fall), int64(unit.One))
		w.Drop = w.TailY.Sub(s.Y).Sub(toWall.Add(slope))
		w.Hang = b.Bottom.Sub(s.Y).Sub(toWall.Add(slope))
		w.Clamps = p.clamps(d, b)
		p.out.Wastes = append(p.out.Wastes, w)
		p.trap(w, b, s)
	}
}

// nowhere is a basin that is not there.
func nowhere(path string) Basin {
	m := figure.Missing(path)
	return Basin{X: m, Off: m, MidX: m, MidOff: m, Rim: m, Bottom: m, Underside: m, Wide: m, Deep: m}
}

// clamps is what lies between the flange of a waste and its nut: the basin, what is left of a top under a basin that stands on it, the washers.
func (p *placer) clamps(d document.Waste, b Basin) figure.Figure {
	sum := fact(b.Doc.Bottom, b.Doc.At, "bottom").Add(fact(d.Washers, d.At, "washers"))
	if t, ok := p.out.Top(b.Top); ok && b.Doc.Kind == document.Vessel {
		sum = sum.Add(t.Thick).Sub(b.Recess)
	}
	return sum
}

// hypot is the level distance of two lengths square to each other. It moves with each by its share.
func hypot(a, b figure.Figure) figure.Figure {
	f := a.Add(b)
	if !f.Known() {
		return f
	}
	d := geom.Dist(geom.Point{}, geom.Point{X: a.V, Y: b.V})
	if d == 0 {
		return f
	}
	return a.Times(int64(a.V), int64(d)).Add(b.Times(int64(b.V), int64(d))).Moving(d)
}

// trap adds the envelopes of tailpiece, trap and arm.
func (p *placer) trap(w Waste, b Basin, s Stub) {
	wall, ok := p.out.Wall(s.Wall)
	t := w.Doc.Trap
	half := fact(t.Width, w.Doc.At, "trap > width").Half()
	low := s.Y.Sub(fact(t.Below, w.Doc.At, "trap > below"))
	e := space.Envelope{Name: w.Name + ", trap", Owner: w.Doc.At.Path, At: w.Doc.At, Kind: space.Trap}
	p.box(wall, ok, e, [2]figure.Figure{b.X.Sub(half), b.X.Add(half)}, [2]figure.Figure{low, figure.Max(w.TailY, s.Y)}, [2]figure.Figure{b.Off.Sub(half), b.Off.Add(half)})
	size := fact(t.Size, w.Doc.At, "trap > size").Half()
	e.Name = w.Name + ", tailpiece"
	p.box(wall, ok, e, [2]figure.Figure{b.X.Sub(size), b.X.Add(size)}, [2]figure.Figure{w.TailY, b.Underside}, [2]figure.Figure{b.Off.Sub(size), b.Off.Add(size)})
	e.Name = w.Name + ", arm"
	p.box(wall, ok, e, [2]figure.Figure{figure.Min(b.X, s.X).Sub(size), figure.Max(b.X, s.X).Add(size)}, [2]figure.Figure{s.Y.Sub(size), s.Y.Add(size)}, [2]figure.Figure{figure.Number(0), b.Off})
}

// Stop is a stop valve in its place.
type Stop struct {
	Name    string
	Doc     document.StopValve
	Stub    string
	X, Y    figure.Figure // its outlet
	Off     figure.Figure
	Serves  string
	ForWC   bool
	Hose    figure.Figure
	HoseFor string // path of the hose's length
}

func (p *placer) stops() {
	for _, d := range p.doc.Stops {
		v := Stop{Name: d.Name, Doc: d, Stub: d.On.Text, Serves: d.Serves.Text}
		s, ok := p.out.Stub(d.On.Text)
		if !ok {
			s.X, s.Y = figure.Missing(under(d.At, "on")), figure.Missing(under(d.At, "on"))
		}
		v.X, v.Y = s.X, s.Y.Add(factOr(d.Outlet, d.At, "outlet", 0))
		v.Off = fact(d.Stands, d.At, "stands out")
		v.HoseFor = under(d.At, "hose")
		v.Hose = fact(d.Hose, d.At, "hose")
		for _, t := range p.doc.Taps {
			if t.Name == d.Serves.Text && !d.Hose.Known && !d.Hose.Unknown && t.Hoses.Known {
				v.Hose, v.HoseFor = fact(t.Hoses, t.At, "hoses"), under(t.At, "hoses")
			}
		}
		for _, c := range p.doc.WCs {
			v.ForWC = v.ForWC || c.Name == d.Serves.Text
		}
		p.out.Stops = append(p.out.Stops, v)
		wall, known := p.out.Wall(s.Wall)
		half := fact(d.Plate, d.At, "plate").Half()
		e := space.Envelope{Name: d.Name, Owner: d.At.Path, At: d.At, Kind: space.Stop}
		p.box(wall, known, e, [2]figure.Figure{s.X.Sub(half), s.X.Add(half)}, [2]figure.Figure{s.Y.Sub(half), figure.Max(v.Y, s.Y.Add(half))}, [2]figure.Figure{figure.Number(0), v.Off})
	}
}
