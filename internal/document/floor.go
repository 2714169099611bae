package document

import (
	"regexp"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
	"dryfit/internal/wood"
)

// Floor is the floor's own facts.
type Floor struct {
	At           diag.Place
	Given        bool
	BuildUp      []Layer
	Straightedge []Gap
	Frame        Frame
}

// Frame is the structure under the floor: `frame: {joist: 2x10, spacing: 16, span: 12 ft, …}`.
type Frame struct {
	At       diag.Place
	Given    bool
	JoistW   Value[unit.Length] // from `joist: 2x10` (dry dressed size) or `joist: {width: , depth: }`
	JoistD   Value[unit.Length]
	Nominal  string // "2x10", or "" where the real size is written
	Spacing  Value[unit.Length]
	Span     Value[unit.Length]
	Modulus  Value[int64] // `modulus: 1.6e6 psi` or `11 GPa`, in pascals
	Load     Value[int64] // `load: 50 psf` or `2.4 kPa`, in pascals
	Subfloor []Layer
}

var floor = record("the floor", func(f *Floor, at diag.Place) { f.At, f.Given = at, true },
	sure("build-up", "the layers from the bare floor upward", layers, func(f *Floor) *[]Layer { return &f.BuildUp }).like("[board 1/2, bed 3/16, tile]").orUnknown(),
	part("straightedge", "gaps under a straightedge", list(complete(floorGap)), func(f *Floor) *[]Gap { return &f.Straightedge }).like("[{length: 8 ft, gap: 3/16}]"),
	part("frame", "the structure under the floor", frame, func(f *Floor) *Frame { return &f.Frame }).unless("not checked").like("{joist: 2x10, spacing: 16, span: 12 ft}"),
)

var floorGap = record("a gap under a straightedge on the floor", func(g *Gap, at diag.Place) { g.At = at },
	part("length", "the length of the straightedge", length(over), func(g *Gap) *unit.Length { return &g.Length }).must().like("8 ft"),
	part("gap", "the widest gap under it", length(fine), func(g *Gap) *unit.Length { return &g.Gap }).must().like("3/16"),
	part("across", "where", across, func(g *Gap) *Across { return &g.Across }).like("30 from A"),
)

var frame = record("joists and subfloor", func(f *Frame, at diag.Place) { f.At, f.Given = at, true },
	key[Frame]{row{name: "joist", what: "the joist, by its nominal size or by its real width and depth", example: "2x10", unknown: true, shape: joist.shape}, readJoist},
	fact("spacing", "from center to center of the joists", length(over), func(f *Frame) *Value[unit.Length] { return &f.Spacing }).like("16"),
	fact("span", "the free length of a joist between its bearings", length(over), func(f *Frame) *Value[unit.Length] { return &f.Span }).like("12 ft"),
	fact("modulus", "the stiffness of the wood (modulus of elasticity)", modulus, func(f *Frame) *Value[int64] { return &f.Modulus }).like("1.6e6 psi"),
	fact("load", "the load on the floor, live and dead together", load, func(f *Frame) *Value[int64] { return &f.Load }).like("50 psf"),
	sure("subfloor", "the layers on the joists, from below", layers, func(f *Frame) *[]Layer { return &f.Subfloor }).like("[plywood 3/4, plywood 1/2]").orUnknown(),
)

type section struct {
	nominal string
	w, d    Value[unit.Length]
}

var joist = either(
	form[section]{&shape{say: "a nominal size: 2x10", pattern: nominalPattern}, readNominal},
	record("its real size: {width: 1-1/2, depth: 9-1/4}", func(*section, diag.Place) {},
		fact("width", "the real width", length(over), func(s *section) *Value[unit.Length] { return &s.w }).like("1-1/2"),
		fact("depth", "the real depth", length(over), func(s *section) *Value[unit.Length] { return &s.d }).like("9-1/4"),
	))

const nominalPattern = `^[1-4]\s*[xX×]\s*(2|3|4|6|8|10|12|14|16)$`

var nominal = regexp.MustCompile(nominalPattern)

func readNominal(r *reader, n *text.Node) (section, bool) {
	typed := strings.TrimSpace(n.Text)
	if !r.want(n, text.Scalar, "a joist size") {
		return section{}, false
	}
	if !nominal.MatchString(typed) {
		r.stop("joist-unreadable", n.At, "{0} is no nominal size of lumber", "write 2x10, or {width: 1-1/2, depth: 9-1/4} with the real size", diag.T(short(typed)))
		return section{}, false
	}
	s := section{nominal: strings.NewReplacer(" ", "", "\t", "", "×", "x", "X", "x").Replace(typed)}
	thick, wide, ok := wood.Dressed(s.nominal)
	s.w = Value[unit.Length]{V: thick, Known: ok, At: n.At}
	s.d = Value[unit.Length]{V: wide, Known: ok, At: n.At}
	return s, ok
}

func readJoist(r *reader, f *Frame, n *text.Node) {
	if isUnknown(n) {
		f.JoistD = Value[unit.Length]{Unknown: true, At: n.At}
		f.JoistW = f.JoistD
		return
	}
	s, _ := joist.read(r, n)
	f.Nominal, f.JoistW, f.JoistD = s.nominal, s.w, s.d
}
