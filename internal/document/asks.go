package document

import "slices"

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

// Asks lists what can be asked of each thing of a collection, a map by name at the top of the document: the facts of records within it one
// by one. Maps by name and lists of records within it are left out; they are written in the source.
func Asks(collection string) ([]Ask, bool) {
	for _, k := range root.shape.rows {
		if k.name == collection && k.shape.kind == namedShape {
			return asksOf(k.shape.item, nil), true
		}
	}
	return nil, false
}

func asksOf(sh *shape, above []string) []Ask {
	var out []Ask
	for _, k := range recordOf(sh).rows {
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
