package web

import (
	"slices"
	"strings"

	"dryfit/internal/document"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// shelf is a collection of goods that is asked for by the document's own table of keys.
type shelf struct{ Key, Title, One, NewName string }

// shelfLink leads to the forms of one collection.
type shelfLink struct {
	shelf
	Count int
	Here  bool
}

// shelves are the collections that a page asks for, one of them with its forms.
type shelves struct {
	Title, Help, Page string
	Back              string // words that lead back to the page without its forms
	Ways              []shelfLink
	Shelf             *collection
}

// shelvesOf lists the collections that a page asks for, with how many things are in each, and fills the forms of the one that is asked for.
func (v *view) shelvesOf(all []shelf, out shelves, here string) shelves {
	for _, s := range all {
		l := shelfLink{shelf: s, Here: s.Key == here, Count: len(entriesOf(text.At(v.Tree, s.at())))}
		out.Ways = append(out.Ways, l)
		if l.Here {
			c := v.goods(s)
			out.Shelf = &c
		}
	}
	return out
}

// at is where the collection stands in the document. The key of one in a record is written as findings write it: "tools > saws".
func (s shelf) at() []string { return strings.Split(s.Key, " > ") }

// goods fills the forms of one collection: each fact that the document's table has for it, those of records within it one by one, and the
// maps by name that its things hold.
func (v *view) goods(s shelf) collection { return v.goodsAt(s, s.at()) }

func (v *view) goodsAt(s shelf, path []string) collection {
	c := collection{Title: s.Title, One: s.One, Path: pathName(path), NewName: s.NewName}
	asks, _ := document.Asks(path...)
	for _, e := range entriesOf(text.At(v.Tree, path)) {
		c.Things = append(c.Things, v.good(asks, e, append(slices.Clone(path), e.Key)))
	}
	for _, a := range asks {
		if f, ok := v.newGoods(a, path); ok {
			c.Asks = append(c.Asks, f)
		}
	}
	if v.Typed["add"] == c.Path {
		c.Name, c.Says, c.Open = v.Typed["new.name"], v.refusals(), true
	}
	c.Open = c.Open || len(c.Things) == 0 && len(path) < 3
	return c
}

// good fills the form of one thing. One that is written short, as one value, is asked for as it stands.
func (v *view) good(asks []document.Ask, e text.Entry, path []string) thing {
	t := thing{Name: e.Key, Path: pathName(path), Called: v.rename("Name", path...), Says: v.about(path)}
	if e.Value != nil && e.Value.Kind == text.Scalar {
		t.Fields = append(t.Fields, v.field("As it is written", path...))
		return t
	}
	for _, a := range asks {
		t.Fields = append(t.Fields, v.goodsField(a, path...))
	}
	for _, in := range document.Inners(path[:len(path)-1]...) {
		inside := append(slices.Clone(path), in.Path...)
		s := shelf{Title: capital(strings.Join(in.Path, ", ")) + " of " + e.Key, One: in.Names, NewName: in.Example}
		if in.Value != "" {
			t.Pairs = append(t.Pairs, v.pairsAt(s, in, inside))
			continue
		}
		t.Inner = append(t.Inner, v.goodsAt(s, inside))
	}
	return t
}

// pairs is a map from names to single values: sizes and their prices.
type pairs struct {
	Title, Path, Add string
	Given            []field
	At, Off          field
}

func (v *view) pairsAt(s shelf, in document.Inner, path []string) pairs {
	name, _, _ := strings.Cut(in.Names, ":")
	p := pairs{Title: s.Title, Path: pathName(path), Add: "Add the " + name}
	for _, e := range entriesOf(text.At(v.Tree, path)) {
		p.Given = append(p.Given, v.field(e.Key, append(slices.Clone(path), e.Key)...).help(capital(in.Value)+"."))
	}
	p.At = field{Name: "new.at", ID: idOf("at" + p.Path), Label: "A further " + name, Example: in.Example}
	p.Off = field{Name: "new.off", ID: idOf("off" + p.Path), Label: capital(strings.FieldsFunc(in.Value, func(r rune) bool { return r == ',' || r == ':' })[0]), Help: capital(in.Value) + "."}
	if v.Typed["pair"] == p.Path {
		p.At.Value, p.Off.Value, p.At.Says = v.Typed["new.at"], v.Typed["new.off"], v.refusals()
	}
	return p
}

// goodsField asks for one fact of a thing. A record that is written short is asked for as it stands.
func (v *view) goodsField(a document.Ask, above ...string) field {
	path := append(slices.Clone(above), a.Path...)
	if a.List {
		return v.dressAsk(v.list(askLabel(a), path...), a)
	}
	return v.dressAsk(v.field(askLabel(a), path...), a)
}

// newGoods asks for one fact of a new thing. A fact two records down is asked for when the thing is there.
func (v *view) newGoods(a document.Ask, collection []string) (field, bool) {
	f := v.asked(collection, strings.Join(a.Path, ":"), askLabel(a))
	return v.dressAsk(f, a), len(a.Path) <= 2 && !a.List
}

func (v *view) dressAsk(f field, a document.Ask) field {
	help := capital(a.What)
	if a.Silent != "" {
		help += ". Left open: " + a.Silent
	}
	f = f.like(v.exampleOf(a)).help(help + ".")
	switch {
	case a.Choices != nil && !a.List:
		f = f.oneOf(a.Choices...)
	case len(a.Refers) > 0 && !a.List:
		if names := v.Plan.Document.NamesOf(a.Refers...); len(names) > 0 {
			f = f.oneOf(names...)
		}
	}
	f.Length = a.Length
	return f
}

// askLabel is the key as it stands in the document, so that form and source use one word: "Outlet, drop".
func askLabel(a document.Ask) string { return capital(strings.Join(a.Path, ", ")) }

// exampleOf shows a length in the unit of the room: the table's own examples are in inches.
func (v *view) exampleOf(a document.Ask) string {
	if v.Plan.Document.Units != unit.Millimetres || !a.Length {
		return a.Example
	}
	l, err := unit.Parse(a.Example, unit.Inches)
	if err != nil || strings.Contains(a.Example, "mm") {
		return a.Example
	}
	return unit.DefaultStyle(unit.Millimetres).Bare(l)
}

// askFor is the form field of one fact by its path in the document, if it is one that a form can ask for.
func (v *view) askFor(path []string) (field, bool) {
	if len(path) < 3 || text.At(v.Tree, path[:2]) == nil {
		return field{}, false
	}
	asks, _ := document.Asks(path[0])
	for _, a := range asks {
		if strings.Join(a.Path, " > ") == strings.Join(path[2:], " > ") {
			f := v.goodsField(a, path[0], path[1])
			f.Label = path[1] + ": " + strings.Join(path[2:], ", ")
			f.ID += "m"
			return f, true
		}
	}
	return field{}, false
}
