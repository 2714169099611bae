package document

import (
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Layer is one layer of a build-up: `board 1/2`, `membrane 1 mm`, `bed 3/16`, `tile`. The tile's thickness comes
// from the goods when it is silent.
type Layer struct {
	What  LayerKind
	Label string // as written
	Thick Value[unit.Length]
	At    diag.Place
}

// LayerKind is what a layer is.
type LayerKind uint8

const (
	BoardLayer    LayerKind = iota // board, plywood, screed, plaster: what the tile is set on
	MembraneLayer                  // membrane, decoupling mat
	BedLayer                       // mortar under the tile
	TileLayer
)

// layerWords are the last words that a layer's name may have; what stands before them is free: "cement board 1/2".
var layerWords = []word[LayerKind]{
	{"board", BoardLayer}, {"plywood", BoardLayer}, {"subfloor", BoardLayer}, {"underlayment", BoardLayer}, {"planks", BoardLayer},
	{"screed", BoardLayer}, {"plaster", BoardLayer}, {"concrete", BoardLayer}, {"leveler", BoardLayer}, {"slab", BoardLayer},
	{"membrane", MembraneLayer}, {"mat", MembraneLayer}, {"primer", MembraneLayer}, {"heating mat", MembraneLayer},
	{"bed", BedLayer}, {"mortar", BedLayer}, {"tile", TileLayer},
}

// layers reads a build-up. One that is unknown is a layer of unknown thickness and not none at all.
var layers = form[[]Layer]{list(layer).shape, func(r *reader, n *text.Node) ([]Layer, bool) {
	if isUnknown(n) {
		return []Layer{{What: BoardLayer, Label: "build-up", Thick: Value[unit.Length]{Unknown: true, At: n.At}, At: n.At}}, true
	}
	return list(layer).read(r, n)
}}

const layerSay = "a layer: what it is and how thick, like board 1/2, membrane 1 mm, bed 3/16 or tile"

var layer = form[Layer]{&shape{brief: "a [layer](#layers)", say: layerSay, pattern: `^(.* )?(` + layerNames() + `)( .*)?$`}, readLayer}

func layerNames() string {
	names := make([]string, len(layerWords))
	for i, w := range layerWords {
		names[i] = w.text
	}
	return strings.Join(names, "|")
}

func readLayer(r *reader, n *text.Node) (Layer, bool) {
	l := Layer{At: n.At}
	if !r.want(n, text.Scalar, layerSay) {
		return l, false
	}
	label, thick := splitLayer(n.Text)
	l.Label = label
	l.Thick.At = n.At
	kind, ok := layerKind(label)
	if !ok {
		r.strayLayer(n, label)
		return l, false
	}
	l.What = kind
	if thick != "" {
		l.Thick = r.side(n, thick, thin)
		return l, l.Thick.Known || l.Thick.Unknown
	}
	return l, true // silent: whether the thickness is needed is for the stage that needs it to say
}

// splitLayer parts "cement board 1/2 in" into its name and its thickness.
func splitLayer(s string) (label, thick string) {
	words := strings.Fields(s)
	for i, w := range words {
		if strings.EqualFold(w, "unknown") || !notDigit([]rune(strings.TrimLeft(w, "+-.") + "?")[0]) {
			return strings.Join(words[:i], " "), strings.Join(words[i:], " ")
		}
	}
	return strings.Join(words, " "), ""
}

func layerKind(label string) (LayerKind, bool) {
	words := strings.Fields(strings.ToLower(label))
	if len(words) == 0 {
		return 0, false
	}
	for _, w := range layerWords {
		if w.text == words[len(words)-1] {
			return w.is, true
		}
	}
	return 0, false
}

func (r *reader) strayLayer(n *text.Node, label string) {
	names := strings.Split(layerNames(), "|")
	last := label[strings.LastIndexByte(label, ' ')+1:]
	if near := nearest(last, names); near != "" && last != "" {
		r.stop("unknown-layer", n.At, "{0} is no kind of layer", "did you mean {1}?", diag.T(short(n.Text)), diag.T(near))
		return
	}
	r.stop("unknown-layer", n.At, "{0} is no layer that is known", "write its name, then its thickness; the name ends in one of: {1}", diag.T(short(n.Text)), diag.T(strings.Join(names, ", ")))
}
