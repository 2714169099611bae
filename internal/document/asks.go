package document

import (
	"slices"
	"strings"
)

// Ask is one fact that a form can ask of a thing, made from the table of keys that the reader uses.
type Ask struct {
	Path    []string // keys under the thing: "outlet", "drop"
	What    string   // "the outlet under the middle of the spout at the wall"
	How     string   // "a length": how it is written
	Silent  string   // what silence means; empty: not known
	Example string
	Choices []string // the only answers
	Refers  []string // of what kinds it is a name
	Length  bool
	Need    bool // the thing can not be read without it
	Unknown bool // "unknown" may stand for it
	List    bool // several may stand with commas between
}

// Asks lists what can be asked of each thing of a collection, a map by name: at the top of the document, as "cabinets", in a record, as "tools",
// "saws", or in a thing, as "cabinets", "vanity", "fronts". It is the facts of records within the thing one by one; maps by name within it are
// Inners, and lists of records are written in the source.
func Asks(path ...string) ([]Ask, bool) {
	sh := mapAt(path)
	if sh == nil {
		return nil, false
	}
	return asksOf(sh.item, nil), true
}

// Inner is a map by name that a thing may hold: the fronts of a cabinet, the prices of a good's packs.
type Inner struct {
	Path    []string // from the thing
	What    string
	Names   string // what its names are: "front"
	Example string // of a name
	Value   string // what stands behind a name, where it is a single value; else it is a record and has Asks
}

// Inners lists the maps by name that a thing of a collection may hold.
func Inners(path ...string) []Inner {
	if sh := mapAt(path); sh != nil {
		return innersOf(sh.item, nil)
	}
	return nil
}

func innersOf(sh *shape, above []string) []Inner {
	var out []Inner
	r := recordOf(sh)
	if r == nil {
		return nil
	}
	for _, k := range r.rows {
		path := append(slices.Clone(above), k.name)
		switch {
		case k.shape.kind == recordShape:
			out = append(out, innersOf(k.shape, path)...)
		case k.shape.kind == namedShape:
			in := Inner{Path: path, What: k.what, Names: k.shape.names, Example: firstName(k.example)}
			if recordOf(k.shape.item) == nil {
				in.Value = k.shape.item.say
			}
			out = append(out, in)
		}
	}
	return out
}

// firstName is the first name of an example of a map: "left door" of "{left door: {kind: door}}".
func firstName(example string) string {
	name, _, _ := strings.Cut(strings.TrimPrefix(example, "{"), ":")
	return name
}

// mapAt is the map by name at a path of keys and names; nil if there is none.
func mapAt(path []string) *shape {
	sh := root.shape
	for _, key := range path {
		if sh.kind == namedShape {
			sh = sh.item
			continue
		}
		r := recordOf(sh)
		if r == nil {
			return nil
		}
		i := slices.IndexFunc(r.rows, func(k row) bool { return k.name == key })
		if i < 0 {
			return nil
		}
		sh = r.rows[i].shape
	}
	if sh.kind != namedShape {
		return nil
	}
	return sh
}

func asksOf(sh *shape, above []string) []Ask {
	var out []Ask
	r := recordOf(sh)
	if r == nil {
		return nil
	}
	for _, k := range r.rows {
		path := append(slices.Clone(above), k.name)
		if inner := recordOf(k.shape); inner != nil && k.shape.kind == recordShape {
			out = append(out, asksOf(inner, path)...)
			continue
		}
		if one, several := single(k.shape); one != nil {
			out = append(out, Ask{Path: path, What: k.what, How: one.say, Silent: k.silent, Example: k.example, Choices: one.words, Refers: one.refers,
				Length: one.pattern == lengthPattern || one.pattern == signedPattern, Need: k.need, Unknown: k.unknown, List: several})
		}
	}
	return out
}

// recordOf is the record that a shape is, or may be written as; nil if none.
func recordOf(sh *shape) *shape {
	switch sh.kind {
	case recordShape:
		return sh
	case eitherShape:
		for _, a := range sh.any {
			if r := recordOf(a); r != nil {
				return r
			}
		}
	}
	return nil
}

// single is the form of a value that fits one line of a form; nil if there is none.
func single(sh *shape) (one *shape, several bool) {
	switch sh.kind {
	case scalarShape, choiceShape:
		return sh, false
	case listShape:
		if one, several = single(sh.item); several {
			return nil, false
		}
		return one, one != nil
	case eitherShape:
		for _, a := range sh.any {
			if one, several := single(a); one != nil {
				return one, several
			}
		}
	}
	return nil, false
}

// NamesOf lists the names that the document has of some kinds, in its order: what a reference to one of them may say.
func (room *Room) NamesOf(kinds ...string) []string {
	all := room.names()
	var out []string
	for _, k := range kinds {
		out = append(out, all[k]...)
	}
	return out
}
