package document

import (
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
)

// A form is one way in which a value is written: how it is read, and how it is told to a person and to an editor.
// Reader, schema and handbook are all made from forms, so they can not disagree.
type form[V any] struct {
	shape *shape
	read  func(r *reader, n *text.Node) (V, bool)
}

// shape tells about a form without knowing its type.
type shape struct {
	say     string   // "a length over 0"
	brief   string   // in the handbook, where a section of its own tells more: "across"
	pattern string   // of a scalar, for the schema; "" takes any text
	words   []string // of a choice
	item    *shape   // of a list, or of a map by name
	rows    []row    // of a record
	kind    shapeKind
	any     []*shape // of an alternative
	names   string   // of a map by name: what the names are: "wall"
	refers  []string // of a name: of what it may be
	key     string   // of a map by name: pattern of the names
}

type shapeKind uint8

const (
	scalarShape shapeKind = iota
	choiceShape
	listShape
	namedShape
	recordShape
	eitherShape
)

// row is one key of a record as the schema and the handbook see it.
type row struct {
	name, what, silent, example string
	need                        bool
	unknown                     bool // the word "unknown" may stand for the value
	shape                       *shape
}

// key is one key of a record T.
type key[T any] struct {
	row
	read func(r *reader, t *T, n *text.Node)
}

// must marks a key that a room can not do without.
func (k key[T]) must() key[T] { k.need = true; return k }

// unless tells what silence means.
func (k key[T]) unless(silent string) key[T] { k.silent = silent; return k }

// orUnknown marks a key whose form itself reads "unknown".
func (k key[T]) orUnknown() key[T] { k.unknown = true; return k }

// like gives the example that the handbook shows.
func (k key[T]) like(example string) key[T] { k.example = example; return k }

// fact is a key whose value may be unknown.
func fact[T, V any](name, what string, f form[V], to func(*T) *Value[V]) key[T] {
	return key[T]{row{name: name, what: what, shape: f.shape, unknown: true}, func(r *reader, t *T, n *text.Node) {
		*to(t) = valueOf(r, f, n)
	}}
}

// sure is a key whose value can not be unknown: without it nothing else could be read.
func sure[T, V any](name, what string, f form[V], to func(*T) *V) key[T] {
	return key[T]{row{name: name, what: what, shape: f.shape}, func(r *reader, t *T, n *text.Node) {
		*to(t), _ = f.read(r, n)
	}}
}

// part is a key whose value has no room for "unknown"; where that is written, what depends on it is not checked.
func part[T, V any](name, what string, f form[V], to func(*T) *V) key[T] {
	return key[T]{row{name: name, what: what, shape: f.shape, unknown: true}, func(r *reader, t *T, n *text.Node) {
		if isUnknown(n) {
			r.unknown(n, name)
			standsAt(to(t), n.At)
			return
		}
		*to(t), _ = f.read(r, n)
	}}
}

// standsAt notes where an unknown place is written, so that nobody calls it missing.
func standsAt(to any, at diag.Place) {
	switch t := to.(type) {
	case *Across:
		t.At = at
	case *Up:
		t.At = at
	}
}

func valueOf[V any](r *reader, f form[V], n *text.Node) Value[V] {
	v := Value[V]{At: n.At}
	if isUnknown(n) {
		v.Unknown = true
		return v
	}
	v.V, v.Known = f.read(r, n)
	return v
}

func isUnknown(n *text.Node) bool {
	return n.Kind == text.Scalar && strings.EqualFold(strings.TrimSpace(n.Text), "unknown")
}

// record reads a map with known keys. open notes where the record stands.
func record[T any](say string, open func(*T, diag.Place), keys ...key[T]) form[T] {
	s := &shape{kind: recordShape, say: say}
	names := make([]string, len(keys))
	for i, k := range keys {
		s.rows = append(s.rows, k.row)
		names[i] = k.name
	}
	return form[T]{s, func(r *reader, n *text.Node) (t T, ok bool) {
		open(&t, n.At)
		if !r.want(n, text.Map, say) {
			return t, false
		}
		for _, e := range n.Entries {
			readKey(r, &t, e, keys, names)
		}
		for _, k := range keys {
			if k.need && n.Get(k.name) == nil {
				r.missing(n, k.row)
			}
		}
		return t, true
	}}
}

// complete drops a value in which anything was wrong or unknown: half a reading is none.
func complete[T any](f form[T]) form[T] {
	return form[T]{f.shape, func(r *reader, n *text.Node) (T, bool) {
		before := len(r.found)
		t, ok := f.read(r, n)
		if !ok || len(r.found) > before {
			var none T
			return none, false
		}
		return t, true
	}}
}

func readKey[T any](r *reader, t *T, e text.Entry, keys []key[T], names []string) {
	for _, k := range keys {
		if k.name != e.Key {
			continue
		}
		if e.Value.Kind == text.Empty {
			r.empty(e, k.row)
			return
		}
		k.read(r, t, e.Value)
		return
	}
	r.strayKey(e, names)
}

// named reads a map of records by name.
func named[T any](names string, item form[T], name func(*T, text.Entry)) form[[]T] {
	s := &shape{kind: namedShape, say: "by name: " + item.shape.say, names: names, item: item.shape}
	return form[[]T]{s, func(r *reader, n *text.Node) ([]T, bool) {
		if !r.want(n, text.Map, "a group with a name for each "+names) {
			return nil, false
		}
		var all []T
		for _, e := range n.Entries {
			if t, ok := readNamed(r, e, item, names); ok {
				name(&t, e)
				all = append(all, t)
			}
		}
		r.alike(n.Entries, names)
		return all, true
	}}
}

func readNamed[T any](r *reader, e text.Entry, item form[T], names string) (t T, ok bool) {
	if e.Value.Kind == text.Empty {
		r.empty(e, row{name: e.Key, shape: item.shape, what: names})
		return t, false
	}
	return item.read(r, e.Value)
}

// list reads a list of values; one value alone is a list of one.
func list[V any](item form[V]) form[[]V] {
	s := &shape{kind: listShape, say: "a list: " + item.shape.say, item: item.shape}
	return form[[]V]{s, func(r *reader, n *text.Node) ([]V, bool) {
		items := n.Items
		if n.Kind != text.List {
			items = []*text.Node{n}
		}
		all := make([]V, 0, len(items))
		for _, c := range items {
			if v, ok := item.read(r, c); ok {
				all = append(all, v)
			}
		}
		return all, len(all) > 0
	}}
}

// either reads a value that is written short as a scalar or long as a record.
func either[V any](short, long form[V]) form[V] {
	s := &shape{kind: eitherShape, say: short.shape.say + ", or " + long.shape.say, any: []*shape{short.shape, long.shape}}
	return form[V]{s, func(r *reader, n *text.Node) (V, bool) {
		if n.Kind == text.Map {
			return long.read(r, n)
		}
		return short.read(r, n)
	}}
}
