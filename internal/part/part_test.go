package part

import (
	"strings"
	"testing"

	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

func in(t *testing.T, s string) unit.Length {
	t.Helper()
	l, err := unit.Parse(s, unit.Inches)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

func shelf() Part {
	return Part{Name: "shelf", Count: 1, Size: Size{24 * unit.Inch, 12 * unit.Inch, 3 * unit.Inch / 4}}
}

func box(x0, y0, x1, y1 unit.Length) geom.Rect {
	return geom.Rect{Min: geom.Point{X: x0 * unit.Inch, Y: y0 * unit.Inch}, Max: geom.Point{X: x1 * unit.Inch, Y: y1 * unit.Inch}}
}

// The frame: a side's coordinates and the depth behind it, read off the package comment.
func TestExtent(t *testing.T) {
	s := Size{3, 2, 1}
	for side, want := range map[Side][3]unit.Length{
		Face: {3, 2, 1}, Back: {3, 2, 1}, Front: {3, 1, 2}, Rear: {3, 1, 2}, Left: {2, 1, 3}, Right: {2, 1, 3},
	} {
		a, u, d := s.Extent(side)
		if got := [3]unit.Length{a, u, d}; got != want {
			t.Errorf("%v: got %v, want %v", side, got, want)
		}
		if side.Opposite().Opposite() != side || side.Opposite() == side || side.Flat() != side.Opposite().Flat() {
			t.Errorf("%v has no proper opposite", side)
		}
	}
}

// A shelf banded on its front by 1/16 in and left 1/2 in long is sawn 24-1/2 by 11-15/16.
func TestCutSize(t *testing.T) {
	p := shelf()
	p.Bands = []Band{{On: Front, Thick: unit.Inch / 16}}
	p.Over.Length = unit.Inch / 2
	want := Size{in(t, "24-1/2"), in(t, "11-15/16"), in(t, "3/4")}
	if got := p.Cut(); got != want {
		t.Errorf("got %v, want %v", got, want)
	}
}

// At 45° the short edge of a strip lacks its width at each mitered end; at 60° from square, the width times √3.
func TestPoints(t *testing.T) {
	p := Part{Size: Size{40 * unit.Inch, 3 * unit.Inch, unit.Inch}}
	for _, c := range []struct {
		left, right unit.Angle
		front, rear string
	}{
		{0, 0, "40", "40"},
		{45, 45, "40", "34"},
		{45, 0, "40", "37"},
		{45, -45, "37", "37"},
		{-45, -45, "34", "40"},
	} {
		p.Ends = []End{{On: Left, Miter: c.left * unit.Degree}, {On: Right, Miter: c.right * unit.Degree}}
		front, rear := p.Points()
		if front != in(t, c.front) || rear != in(t, c.rear) {
			t.Errorf("%d, %d: got %v, %v, want %s, %s", c.left, c.right, front.In(), rear.In(), c.front, c.rear)
		}
	}
	p.Ends = []End{{On: Right, Bevel: 45 * unit.Degree}}
	if face, back := p.Faces(); face != 40*unit.Inch || back != 39*unit.Inch {
		t.Errorf("a bevel of 45° on 1 in stock: got %v, %v", face.In(), back.In())
	}
}

func TestNotch(t *testing.T) {
	s := shelf().Size
	ring := func(r geom.Rect) geom.Ring { return geom.RectRing(r, 0, 0, 0, 0) }
	if (Cutout{Outline: ring(box(2, 2, 4, 4))}).IsNotch(s) {
		t.Error("a cut-out inside is called a notch")
	}
	if !(Cutout{Outline: ring(box(2, 10, 4, 12))}).IsNotch(s) {
		t.Error("a cut-out open to the rear is no notch")
	}
}

func TestCheck(t *testing.T) {
	for _, c := range []struct {
		why, want string
		change    func(*Part)
	}{
		{"as it is", "", func(*Part) {}},
		{"no width", "part-size", func(p *Part) { p.Size.Width = 0 }},
		{"less than nothing after allowances", "part-size", func(p *Part) { p.Size.Length = -unit.Inch }},
		{"banding takes all", "part-size", func(p *Part) {
			p.Size.Width = unit.Inch
			p.Bands = []Band{{On: Front, Thick: unit.Inch / 2}, {On: Rear, Thick: unit.Inch / 2}}
		}},
		{"dado half way", "", func(p *Part) { p.Channels = []Channel{{Kind: Dado, Area: box(3, 0, 4, 12), Depth: 3 * unit.Inch / 8}} }},
		{"dado through", "part-thin", func(p *Part) { p.Channels = []Channel{{Kind: Dado, Area: box(3, 0, 4, 12), Depth: 3 * unit.Inch / 4}} }},
		{"dado without depth", "part-depth", func(p *Part) { p.Channels = []Channel{{Kind: Dado, Area: box(3, 0, 4, 12)}} }},
		{"groove past the end", "part-outside", func(p *Part) {
			p.Channels = []Channel{{Kind: Groove, Area: box(3, 1, 25, 2), Depth: unit.Inch / 4}}
		}},
		{"groove in the edge", "", func(p *Part) {
			p.Channels = []Channel{{Kind: Groove, On: Front, Area: geom.Rect{Max: geom.Point{X: unit.Inch, Y: unit.Inch / 4}}, Depth: unit.Inch}}
		}},
		{"groove wider than the edge", "part-outside", func(p *Part) {
			p.Channels = []Channel{{Kind: Groove, On: Front, Area: box(0, 0, 1, 1), Depth: unit.Inch}}
		}},
		{"hole through", "", func(p *Part) {
			p.Holes = []Hole{{At: geom.Point{X: unit.Inch, Y: unit.Inch}, Diameter: unit.Inch, Through: true}}
		}},
		{"hole over the edge", "part-outside", func(p *Part) {
			p.Holes = []Hole{{At: geom.Point{X: unit.Inch, Y: unit.Inch / 4}, Diameter: unit.Inch, Through: true}}
		}},
		{"slot over the edge", "part-outside", func(p *Part) {
			p.Holes = []Hole{{At: geom.Point{X: unit.Inch, Y: unit.Inch}, Diameter: unit.Inch, Slot: 2 * unit.Inch, Along: UpAxis, Through: true}}
		}},
		{"cup too deep", "part-thin", func(p *Part) {
			p.Holes = []Hole{{On: Back, At: geom.Point{X: 4 * unit.Inch, Y: unit.Inch}, Diameter: 35 * unit.Millimetre, Depth: 20 * unit.Millimetre}}
		}},
		{"cut-out off the part", "part-outside", func(p *Part) { p.Cutouts = []Cutout{{Outline: geom.RectRing(box(30, 0, 31, 1), 0, 0, 0, 0)}} }},
		{"miters that cross", "part-size", func(p *Part) {
			p.Size.Length = 20 * unit.Inch
			p.Ends = []End{{On: Left, Miter: 45 * unit.Degree}, {On: Right, Miter: 45 * unit.Degree}}
		}},
		{"no such angle", "part-angle", func(p *Part) { p.Ends = []End{{On: Left, Miter: 85 * unit.Degree}} }},
		{"an end is no face", "part-angle", func(p *Part) { p.Ends = []End{{On: Front}} }},
		{"tapered leg", "", func(p *Part) {
			p.Tapers = []Taper{{On: Front, From: 4 * unit.Inch, To: 24 * unit.Inch, Less: unit.Inch}}
		}},
		{"tapered away", "part-thin", func(p *Part) {
			p.Tapers = []Taper{{On: Front, From: 4 * unit.Inch, To: 24 * unit.Inch, Less: 12 * unit.Inch}}
		}},
		{"taper past the end", "part-outside", func(p *Part) {
			p.Tapers = []Taper{{On: Front, From: 4 * unit.Inch, To: 25 * unit.Inch, Less: unit.Inch}}
		}},
		{"chamfer", "", func(p *Part) { p.Profiles = []Profile{{A: Face, B: Front, Reach: unit.Inch / 8}} }},
		{"chamfer of sides that do not meet", "part-outside", func(p *Part) { p.Profiles = []Profile{{A: Face, B: Back, Reach: unit.Inch / 8}} }},
		{"chamfer as deep as the part", "part-thin", func(p *Part) { p.Profiles = []Profile{{A: Face, B: Front, Reach: unit.Inch}} }},
	} {
		p := shelf()
		c.change(&p)
		var codes []string
		for _, f := range p.Check() {
			codes = append(codes, f.Code)
			if say := f.Say(unit.DefaultStyle(unit.Inches)); !strings.Contains(say, "shelf") || strings.Contains(say, "{") {
				t.Errorf("%s: %q does not name the part", c.why, say)
			}
		}
		if got := strings.Join(codes, " "); got != c.want {
			t.Errorf("%s: got %q, want %q", c.why, got, c.want)
		}
	}
}
