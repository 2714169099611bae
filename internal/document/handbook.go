package document

import (
	"fmt"
	"strings"

	"dryfit/internal/text"
)

// Handbook returns docs/document.md: the document key by key, made from the table of keys that the reader uses.
func Handbook() []byte {
	h := handbook{}
	h.WriteString(handbookHead)
	h.record("Top level", "", root.shape)
	h.WriteString("\n## Bonds\n\n")
	for _, n := range BondNames() {
		fmt.Fprintf(&h, "- `%s`\n", n)
	}
	h.WriteString(handbookBonds)
	h.WriteString("\n## What to look for\n\nPresets: `" + strings.Join(Presets(), "`, `") + "`. The first is the default.\n\n" +
		"Measures, for a list of your own in order of importance: `" + strings.Join(Measures(), "`, `") + "`.\n")
	h.WriteString("\n## Layers\n\nA layer is its name and its thickness. What stands before the last word of the name is free: `cement board 1/2`.\n\n" +
		"| last word | what it is |\n|---|---|\n")
	for _, w := range layerWords {
		fmt.Fprintf(&h, "| %s | %s |\n", w.text, layerSays[w.is])
	}
	return []byte(h.String())
}

var layerSays = map[LayerKind]string{
	BoardLayer: "what tile is set on", MembraneLayer: "a thin sheet or coat under the bed", BedLayer: "mortar under the tile; its thickness may be left out",
	TileLayer: "the tile; its thickness comes from the goods that are laid there",
}

type handbook struct{ strings.Builder }

// record writes one table and then, below it, the tables of the records in it.
func (h *handbook) record(title, path string, sh *shape) {
	fmt.Fprintf(h, "\n## %s\n\n%s\n\n| key | what it is | how it is written | example | if silent |\n|---|---|---|---|---|\n", title, sentence(sh.say))
	for _, k := range sh.rows {
		fmt.Fprintf(h, "| `%s` | %s | %s | `%s` | %s |\n", k.name, k.what, written(k.shape), k.example, silence(k))
	}
	for _, k := range sh.rows {
		h.inner(text.Join(path, k.name), k.shape)
	}
}

// inner looks for records within a shape.
func (h *handbook) inner(path string, sh *shape) {
	switch sh.kind {
	case recordShape:
		h.record("`"+path+"`", path, sh)
	case namedShape:
		h.inner(text.Join(path, "(name of a "+sh.names+")"), sh.item)
	case listShape:
		h.inner(path, sh.item)
	case eitherShape:
		for _, a := range sh.any {
			h.inner(path, a)
		}
	}
}

// written says how a value is written, in few words.
func written(sh *shape) string {
	switch {
	case sh.brief != "":
		return sh.brief
	case sh.kind == choiceShape:
		return strings.Join(sh.words, ", ")
	case sh.kind == recordShape:
		return "keys of its own, below"
	case sh.kind == listShape:
		return "one or a list: " + written(sh.item)
	case sh.kind == namedShape && sh.item.kind == recordShape:
		return "by name of the " + sh.names + ": keys of its own, below"
	case sh.kind == namedShape:
		return "by " + sh.names + ": " + written(sh.item)
	case sh.kind == eitherShape:
		return alternatives(sh.any)
	}
	return sh.say
}

func alternatives(shapes []*shape) string {
	all := make([]string, len(shapes))
	for i, s := range shapes {
		all[i] = written(s)
	}
	return strings.Join(all, "; or ")
}

func silence(k row) string {
	switch {
	case k.need && k.unknown:
		return "must be there, but may be `unknown`"
	case k.need:
		return "must be there"
	case k.silent != "":
		return k.silent
	}
	return "not known"
}

func sentence(s string) string { return strings.ToUpper(s[:1]) + s[1:] + "." }

const handbookHead = "# The room document\n\n" +
	"One file holds a room: what the tape, the level line and the labels say, and what is wanted. It is YAML, of which only maps, lists and single\n" +
	"values are used; there are no anchors, tags or second documents. This page is made from the table of keys that the program reads by\n" +
	"(`go test ./internal/document -update` writes it again), and so is the schema that `dryfit schema` prints for editors.\n\n" +
	"- **Lengths.** `98 3/8`, `98-3/8 in`, `8' 2-3/8\"`, `8ft 2 3/8in`, `2498 mm`, `2.498 m`, `12.7 cm`. A bare number is in the document's unit.\n" +
	"  A length is kept exactly. Do not put quote marks round one that has foot and inch marks in it.\n" +
	"- **Unknown.** Any fact may be `unknown`. Nothing is then taken for zero: what needs it is not checked, and says so.\n" +
	"- **Names** are yours. Other keys refer to them, and a wrong one gets the nearest right one suggested.\n" +
	"- **Across**, along a wall: `24 from A` (the edge that is nearest to corner A; of a round thing its center), `center 36 from A`,\n" +
	"  `24 to 48 from A` (both edges), `3 left of basin line`, `on basin line`. `24 from A to board` says what the corner was when it was taped.\n" +
	"  Instead of a corner it may be `left` or `right`, for the ends of any face.\n" +
	"- **Up**: `48 above floor` (the finished floor), `48 to 84 above floor`, `center 50 above floor`, `top 84 above floor`, `3 below level`,\n" +
	"  `8 above level` (the level line), `6 below ceiling`.\n" +
	"- **Faces** are the walls, `floor`, and the faces of openings: `niche > back`, `niche > left`, `niche > right`, `niche > head`, `niche > sill`;\n" +
	"  of a window, a door or a plain hole `window > left`, `window > right`, `window > head`, `window > sill`.\n\n" +
	"What cannot be read is told with its line, what is wrong and what would mend it, all in one go; what can be read is used.\n" +
	"What the program says about water, power, structure and dust is a caution only: local codes and licensed trades decide.\n"

const handbookBonds = "\nBehind `running` stands the shift of each course: a share of the tile (`1/3`, `33 %`) or a length (`8 in`, `200 mm`; a bare whole number is a\n" +
	"length in the document's unit). `running` alone is `running 1/2`. Each course steps on from the one below; with `to and fro` behind the\n" +
	"shift, every other course stands over the first: `running 1/3 to and fro`. `45` stands for a pattern at 45 degrees to the wall.\n"
