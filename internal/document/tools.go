package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Tools are what the person has.
type Tools struct {
	At         diag.Place
	Kerf       Value[unit.Length]
	LeastStrip Value[unit.Length]
	CoreBits   []Value[unit.Length]
	Snap       Value[bool] // `cutter: snap` or `wet saw`
	Saws       []Saw       // for wood and board
	Bits       []Bit
}

// Climate is a place for temperatures that movement joints need.
type Climate struct {
	Exterior Value[bool]
	Sun      Value[bool]
	Range    Value[int64] // `yearly range: 115 F`: a difference, in thousandths of a kelvin
	Air      []Hygrometer
}

var tools = record("what is there to cut with", func(t *Tools, at diag.Place) { t.At = at },
	fact("kerf", "the width of the saw's cut", length(fine), func(t *Tools) *Value[unit.Length] { return &t.Kerf }).like("3/32"),
	fact("least strip", "the narrowest strip that the cutter makes", length(fine), func(t *Tools) *Value[unit.Length] { return &t.LeastStrip }).like("1/2"),
	part("core bits", "the diameters of the core bits at hand", list(bit), func(t *Tools) *[]Value[unit.Length] { return &t.CoreBits }).like("[1-1/4, 1-3/8, 2]"),
	fact("cutter", "what cuts straight: a snap cutter, which has no kerf, or a wet saw", choice("snap or wet saw", word[bool]{"snap", true}, word[bool]{"wet saw", false}), func(t *Tools) *Value[bool] { return &t.Snap }).like("wet saw"),
	part("saws", "the saws for wood and board, by name; the first that is used for a stock cuts it", named("saw", saw, func(s *Saw, e text.Entry) { s.Name, s.At = e.Key, e.At }), func(t *Tools) *[]Saw { return &t.Saws }).like("{track saw: {kerf: 3/32, reach: 2-1/8, cuts: [sheet]}}"),
	part("bits", "router bits and drill bits for wood, by name", named("bit", bitRecord, func(b *Bit, e text.Entry) { b.Name, b.At = e.Key, e.At }), func(t *Tools) *[]Bit { return &t.Bits }).like("{straight bit: {diameter: 1/2, reach: 1-1/4}}"),
)

var bit = form[Value[unit.Length]]{length(bore).shape, func(r *reader, n *text.Node) (Value[unit.Length], bool) {
	v := valueOf(r, length(bore), n)
	return v, v.Known
}}

var climate = record("the place and its weather", func(*Climate, diag.Place) {},
	fact("exterior", "whether the work is outdoors", yesNo, func(c *Climate) *Value[bool] { return &c.Exterior }).like("no"),
	fact("sun", "whether the sun shines on it", yesNo, func(c *Climate) *Value[bool] { return &c.Sun }).like("no"),
	fact("yearly range", "from the coldest to the hottest of the year, as a difference", yearlyRange, func(c *Climate) *Value[int64] { return &c.Range }).like("115 F"),
	part("hygrometer", "readings of the room's own air, over the year if there are any", list(hygrometer), func(c *Climate) *[]Hygrometer { return &c.Air }).like("[{on: 2026-01-10, humidity: 32 %, temperature: 68 F}]"),
)
