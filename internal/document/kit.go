package document

import (
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Kit is a plain list of parts to cut: a shelf, a step, anything that no other part of the document describes.
type Kit struct {
	Name  string
	At    diag.Place
	Parts []KitPart
}

// KitPart is one part of a kit. Its width and thickness are the stock's where they are silent.
type KitPart struct {
	Name                 string
	At                   diag.Place
	Length, Width, Thick Value[unit.Length] // finished; length runs along the part
	Count                Value[int]
	Stock                Name
	Grain                Value[KitGrain]
	Band                 []KitEdge
	Banding              Value[unit.Length] // thickness
	Oversize             Value[unit.Length] // left on in length and width
	Match                Value[string]
}

// KitGrain is how the grain must run in a part.
type KitGrain uint8

const (
	GrainAlong KitGrain = iota
	GrainAcross
	GrainAny
)

// KitEdge is an edge of a part, as it lies face up with its front toward the person.
type KitEdge uint8

const (
	FrontEdge KitEdge = iota
	RearEdge
	LeftEnd
	RightEnd
)

var kit = record("parts to cut", func(k *Kit, at diag.Place) { k.At = at },
	part("parts", "the parts by name", named("part", kitPart, func(p *KitPart, e text.Entry) { p.Name, p.At = e.Key, e.At }), func(k *Kit) *[]KitPart { return &k.Parts }).must().like("{side: {size: 30 x 9, stock: birch 3/4, count: 2}}"),
)

const kitSizeSay = "a finished size: length x width x thickness; what is left out at the end is the stock's"

var kitSize = form[size]{&shape{say: kitSizeSay, pattern: `^[^xX×]+([xX×][^xX×]+){0,2}$`}, func(r *reader, n *text.Node) (s size, ok bool) {
	if !r.want(n, text.Scalar, kitSizeSay) {
		return s, false
	}
	if !strings.ContainsAny(n.Text, "xX×") {
		s.a = r.side(n, n.Text, over)
		return s, s.a.Known
	}
	parts, ok := r.times(n, 2, 3)
	if !ok {
		return s, false
	}
	s.a, s.b = r.side(n, parts[0], over), r.side(n, parts[1], over)
	if len(parts) == 3 {
		s.c = r.side(n, parts[2], thin)
	}
	return s, s.a.Known
}}

var kitPart = record("a part to cut", func(p *KitPart, at diag.Place) { p.At = at },
	key[KitPart]{row{name: "size", what: "its finished length x width x thickness", need: true, unknown: true, example: "30 x 9 x 3/4", shape: kitSize.shape}, func(r *reader, p *KitPart, n *text.Node) {
		if isUnknown(n) {
			p.Length = Value[unit.Length]{Unknown: true, At: n.At}
			return
		}
		s, _ := kitSize.read(r, n)
		p.Length, p.Width, p.Thick = s.a, s.b, s.c
	}},
	part("stock", "what it is cut from", called("stock"), func(p *KitPart) *Name { return &p.Stock }).must().like("birch 3/4"),
	fact("count", "how many alike there are", count("a whole number from 1", 1, 1000), func(p *KitPart) *Value[int] { return &p.Count }).unless("1").like("2"),
	fact("grain", "how the grain must run: along its length, across it, or any way", choice("along, across or any", word[KitGrain]{"along", GrainAlong}, word[KitGrain]{"across", GrainAcross}, word[KitGrain]{"any", GrainAny}), func(p *KitPart) *Value[KitGrain] { return &p.Grain }).unless("along").like("along"),
	part("banded", "its edges that get edging, as it lies face up", list(choice("front, rear, left or right", word[KitEdge]{"front", FrontEdge}, word[KitEdge]{"rear", RearEdge}, word[KitEdge]{"left", LeftEnd}, word[KitEdge]{"right", RightEnd})), func(p *KitPart) *[]KitEdge { return &p.Band }).unless("none").like("[front, left]"),
	fact("edging", "how thick the edging is; the finished size holds it, so the part is cut smaller", length(fine), func(p *KitPart) *Value[unit.Length] { return &p.Banding }).unless("too thin to count").like("1 mm"),
	fact("oversize", "what is left on in length and in width, to be trimmed off later", length(fine), func(p *KitPart) *Value[unit.Length] { return &p.Oversize }).unless("nothing").like("1/2"),
	fact("match", "a word that parts share which are to come from one sheet or board side by side, so that their figure runs on", words, func(p *KitPart) *Value[string] { return &p.Match }).like("fronts"),
)
