package export

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
)

// Handbook returns docs/plan.md: plan.json key by key, made from the view types.
func Handbook() []byte {
	h := handbook{}
	h.WriteString(handbookHead)
	h.record("Top level", "", "", reflect.TypeFor[view]())
	h.WriteString("\n## Used in several places\n")
	for i := 0; i < len(h.shared); i++ { // a shared record may lead to another
		t := h.shared[i]
		h.record("`"+t.Name()+"`", "", reflect.Zero(t).Interface().(shared).shared(), t)
	}
	return []byte(h.String())
}

// shared is a record that several others hold; it is described once.
type shared interface{ shared() string }

func (place) shared() string { return "Where in the room document a fact stands" }
func (point) shared() string { return "A place in the frame that its object names" }
func (rect) shared() string  { return "A rectangle along the axes of the face's frame" }
func (edge) shared() string {
	return "What bounds a face; distances are square to it, in the plane of the face"
}
func (vertex) shared() string {
	return "A corner of an outline. An outline is a list of rings, a ring a list of vertices, the last joined to the first; outer rings run counter-clockwise, holes clockwise"
}

type handbook struct {
	strings.Builder
	shared []reflect.Type
}

// record writes one table and then, below it, the tables of the records in it.
func (h *handbook) record(title, path, says string, t reflect.Type) {
	fmt.Fprintf(h, "\n## %s\n\n", title)
	if says != "" {
		fmt.Fprintf(h, "%s.\n\n", strings.ToUpper(says[:1])+says[1:])
	}
	h.WriteString("| key | what it is | how it is written | always there |\n|---|---|---|---|\n")
	for _, k := range keysOf(t) {
		fmt.Fprintf(h, "| `%s` | %s | %s | %s |\n", k.name, strings.ReplaceAll(k.says(), "|", "\\|"), written(k.is), yes(k.need))
	}
	for _, k := range keysOf(t) {
		h.inner(joined(path, k.name), k.doc, k.is)
	}
}

// inner looks for a record within a type: shared ones are kept for later.
func (h *handbook) inner(path, says string, t reflect.Type) {
	switch t.Kind() {
	case reflect.Pointer, reflect.Slice:
		h.inner(path, says, t.Elem())
	case reflect.Struct:
		if _, ok := reflect.Zero(t).Interface().(shared); !ok {
			h.record("`"+path+"`", path, says, t)
		} else if !slices.Contains(h.shared, t) {
			h.shared = append(h.shared, t)
		}
	}
}

func joined(path, key string) string {
	if path == "" {
		return key
	}
	return path + " > " + key
}

// written says how a value is written, in few words.
func written(t reflect.Type) string {
	if w := choicesOf(t); w != nil {
		return "`" + strings.Join(w, "`, `") + "`"
	}
	switch t.Kind() {
	case reflect.Pointer:
		return written(t.Elem())
	case reflect.Slice:
		if t == reflect.TypeFor[outline]() {
			return "outline: list of rings of `vertex`"
		}
		return "list: " + written(t.Elem())
	case reflect.Struct:
		if _, ok := reflect.Zero(t).Interface().(shared); ok {
			return "`" + t.Name() + "`"
		}
		return "keys of its own, below"
	}
	return map[string]string{"string": "text", "boolean": "true or false", "integer": "whole number", "number": "number"}[quantityOf(t).kind]
}

const handbookHead = "# plan.json\n\n" +
	"The whole plan for other programs, so that every claim of it can be checked without this one. This page is made from the types that the\n" +
	"program writes the file from (`go test ./internal/export -update` writes it again), and so is the JSON Schema that `dryfit schema plan` prints.\n\n" +
	"- **Numbers are exact.** A length is a number of millimetres and a multiple of 1/16000 mm (0.0000625); an area is a number of square\n" +
	"  millimetres with up to fourteen decimals; angles are degrees with up to six. Read them as decimals: a binary floating-point number does not hold\n" +
	"  all of them. Multiplied by 16000, a length is a whole number.\n" +
	"- **Absent is not known**, or does not apply, as the key's line says. It is never zero, and nothing is ever `null`.\n" +
	"- **Frames.** x runs to the right, y up. The plan frame has the first corner at the origin and the first wall along x as one stands in the room\n" +
	"  facing it, so the room lies at negative y. A wall's frame has x = 0 at the left end of its board and y = 0 at the level line. The floor's frame is\n" +
	"  the plan frame. A niche's back has its wall's x and y; its other faces, and the reveals of windows and doors, have x along the opening's edge and y\n" +
	"  from the room into the wall. A tile's own frame has its length along x and its lower left corner at the origin.\n" +
	"- **Outlines** have a label on every side. Positive labels are the face's edges; negative ones are factory sides of the tile: -1 left, -2 bottom,\n" +
	"  -3 right, -4 top of a rectangle; -1 to -6 of a hexagon, counter-clockwise from the lower right side.\n" +
	"- **Words of place** in a piece's sides, cuts and holes (left, bottom, upright, level) mean the tile as it lies in the pattern: its own frame after\n" +
	"  `turn` quarter turns, the whole tile's lower left corner at the origin again.\n" +
	"- **Names.** A piece's `id` is unique in the room. `sources` of a good and `setting` of a face refer to pieces by `id` and by `address`.\n" +
	"- **Order** is fixed, nothing depends on a clock: the same document gives the same bytes.\n" +
	"- **Same version, same meaning.** `format` stays while keys are only added. A program should leave keys alone that it does not know.\n\n" +
	"What can be checked from the file alone: the area of every piece; that pieces and joints fill their field and do not overlap; that kept sides\n" +
	"lie on the tile's rim; that saw sizes fit; that each cut piece comes out of one tile, a kerf from the next; that the numbers to buy add up; that the\n" +
	"order of setting names every piece once. The project's tests do just that, with nothing but the standard library; internal/export/testdata/unchecked.txt\n" +
	"lists the numbers that they can not check from the file.\n"
