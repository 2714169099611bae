package fit

import (
	"math"

	"dryfit/internal/diag"
	"dryfit/internal/figure"
	"dryfit/internal/place"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// Jet is the way of the water from an outlet down to the bottom of its basin, as a band over what flows and how wide the stream may be. Lengths
// off are from the finished wall; heights are over the level line.
type Jet struct {
	Tap, Basin         string
	OutletOff, OutletY unit.Length
	Bottom             unit.Length // height of the bottom of the basin
	Nearest, Farthest  unit.Length // off the finished wall, where the middle of the stream lands
	Wide               unit.Length // width of the stream where it lands, at its widest
	Waste              unit.Length // the waste's center off the finished wall
	Angle              unit.Angle
}

// gravity is the standard acceleration of free fall, 9.80665 m/s² exactly (3rd General Conference on Weights and Measures, 1901), in mm/s².
const gravity = 9806.65

// stream is one stream: what flows, through which bore, at which angle off plumb.
type stream struct {
	flow  unit.Flow
	bore  unit.Length
	angle unit.Angle
}

// speed is the stream's speed at the outlet in mm/s: what flows, over the area of the bore. Air in the water is left out.
func (s stream) speed() float64 {
	d := s.bore.MM()
	return s.flow.MM3S() / float64(math.Pi/4*d*d)
}

// lands gives how far forward the stream lands after a fall, how much farther for each further mm of fall, and how wide it is there: it narrows as
// it grows faster.
func (s stream) lands(fall unit.Length) (throw, per, width float64) {
	v := s.speed()
	sin, cos := math.Sincos(float64(s.angle) / float64(unit.Degree) * math.Pi / 180)
	vy := float64(v * cos)
	end := math.Sqrt(float64(vy*vy) + float64(2*gravity*fall.MM()))
	t := float64(end-vy) / gravity
	throw = float64(v*sin) * t
	per = float64(v*sin) / end
	fast := math.Sqrt(float64(v*v) + float64(2*gravity*fall.MM()))
	return throw, per, s.bore.MM() * math.Sqrt(float64(v/fast))
}

// lands as a figure: it moves with the fall.
func (s stream) figure(fall figure.Figure) figure.Figure {
	if !fall.Known() {
		return fall
	}
	if fall.V < 0 {
		return figure.Missing("an outlet over the basin's bottom")
	}
	throw, per, _ := s.lands(fall.V)
	return fall.Times(int64(math.Floor(per*1e6+0.5)), 1_000_000).Moving(unit.FromMM(throw))
}

// jet follows the water of a tap into its basin.
func (c *checker) jet(s subject, t place.Tap, b place.Basin) {
	slow, fast, origin := c.streams(t)
	fall := t.OutletY.Sub(b.Bottom).Add(origin)
	near, far := t.OutletOff.Add(slow.figure(fall)), t.OutletOff.Add(fast.figure(fall))
	const aim = "turn the outlet, choose a tap of another reach, or move the basin's waste"
	c.atLeast(s, "water at the waste", "{0}: the water lands behind the waste by", b.Off.Sub(far), rule.JetBehind, aim)
	c.atMost(s, "water behind the waste", "{0}: the water lands behind the waste by", b.Off.Sub(near), rule.JetBehind, aim)
	c.atMost(s, "fall of the water", "{0}: the water falls to the bottom of the basin", fall, rule.SplashFall, "lower the tap or choose a higher basin")
	c.splash(s, b, near, far, slow, fast, fall)
	c.tell(s, "water lands from", "{0}: the water lands at the nearest, off the finished wall", near)
	c.tell(s, "water lands to", "{0}: the water lands at the farthest, off the finished wall", far)
	c.hits(s, t, b, near, far)
	if near.Known() && far.Known() && b.Off.Known() {
		c.out.Jets = append(c.out.Jets, Jet{Tap: t.Name, Basin: b.Name, OutletOff: t.OutletOff.V, OutletY: t.OutletY.V, Bottom: b.Bottom.V, Nearest: near.V, Farthest: far.V,
			Wide: widest(fall.V, slow, fast), Waste: b.Off.V, Angle: t.Doc.Outlet.Angle.V})
	}
}

// widest is how wide the wider of two streams is after a fall.
func widest(fall unit.Length, slow, fast stream) unit.Length {
	_, _, a := slow.lands(max(fall, 0))
	_, _, b := fast.lands(max(fall, 0))
	return unit.FromMM(max(a, b))
}

// streams are the slowest and the fastest stream that are likely, and what they hang on. What the sheet is silent about is the usual range.
func (c *checker) streams(t place.Tap) (slow, fast stream, origin figure.Figure) {
	o := t.Doc.Outlet
	path := t.Doc.At.Path + " > outlet > "
	least, _ := c.book.Least(rule.JetBore)
	most, _ := c.book.Most(rule.JetBore)
	boreLeast, boreMost := least.Rule.Limit, most.Rule.Limit
	flowLeast, flowMost := 4*unit.GallonMinute/5, 3*unit.GallonMinute/2
	switch {
	case o.Bore.Known:
		boreLeast, boreMost = o.Bore.V.Least, o.Bore.V.Most
		origin = origin.Using(path + "bore")
	case o.Bore.Unknown:
		origin = origin.Add(figure.Missing(path + "bore"))
	default:
		c.assume(t.Doc.At, least.Cite(), "the stream of {0} is {1} to {2} wide at the outlet", diag.T(t.Name), diag.F(boreLeast), diag.F(boreMost))
	}
	switch {
	case o.Flow.Known:
		flowLeast, flowMost = o.Flow.V.Lo, o.Flow.V.Hi
		origin = origin.Using(path + "flow")
	case o.Flow.Unknown:
		origin = origin.Add(figure.Missing(path + "flow"))
	default:
		c.assume(t.Doc.At, "US EPA specification for high-efficiency basin taps", "{0} runs 0.8 to 1.5 gpm", diag.T(t.Name))
	}
	if boreLeast <= 0 || boreMost <= 0 {
		origin = origin.Add(figure.Missing(path + "bore"))
		boreLeast, boreMost = unit.Millimetre, unit.Millimetre
	}
	origin = origin.Add(known(o.Angle, t.Doc.At, "outlet > angle"))
	return stream{flowLeast, boreMost, o.Angle.V}, stream{flowMost, boreLeast, o.Angle.V}, origin
}

// splash holds where the water lands against the inside edge of the bowl, all round.
func (c *checker) splash(s subject, b place.Basin, near, far figure.Figure, slow, fast stream, fall figure.Figure) {
	half := figure.Number(0)
	if fall.Known() && fall.V >= 0 {
		half = figure.Number(widest(fall.V, slow, fast).MulDiv(1, 2))
	}
	inner := b.Deep.Half().Sub(b.Edge)
	const mend = "turn the outlet, choose a tap of another reach or a larger basin"
	c.atLeast(s, "splash to the front", "{0}: water's edge to the inside of the bowl, front", b.MidOff.Add(inner).Sub(far.Add(half)), rule.SplashMargin, mend)
	c.atLeast(s, "splash to the back", "{0}: water's edge to the inside of the bowl, back", near.Sub(half).Sub(b.MidOff.Sub(inner)), rule.SplashMargin, mend)
}

// hits tells whether the water falls into the waste itself, where it splashes and is loud.
func (c *checker) hits(s subject, t place.Tap, b place.Basin, near, far figure.Figure) {
	hole := fact(b.Doc.Hole, b.Doc.At, "waste hole").Half()
	all := near.Add(far).Add(b.Off).Add(hole).Add(t.X).Add(b.X)
	if !all.Known() {
		return
	}
	aside := (t.X.V - b.X.V).Abs()
	onIt := near.V <= b.Off.V+hole.V && far.V >= b.Off.V-hole.V && aside <= hole.V
	word := "beside the waste"
	if onIt {
		word = "on the waste"
	}
	k := c.start(s, "water hits", "{0}: where the water lands", asked{}, nil)
	c.facts(&k, all)
	k.State, k.Value, k.Moves, k.Layers = Told, diag.T(word), nil, nil
	c.out.Checks = append(c.out.Checks, k)
}
