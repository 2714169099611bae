package web

import (
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

// shelfLinks lists the collections that a page asks for, with how many things are in each.
func (v *view) shelfLinks(all []shelf, here string) []shelfLink {
	var out []shelfLink
	for _, s := range all {
		l := shelfLink{shelf: s, Here: s.Key == here}
		if n := v.Tree.Get(s.Key); n != nil {
			l.Count = len(n.Entries)
		}
		out = append(out, l)
	}
	return out
}

// goods fills the forms of one collection: each fact that the document's table has for it, those of records within it one by one.
func (v *view) goods(s shelf) collection {
	c := collection{Title: s.Title, One: s.One, Path: pathName([]string{s.Key}), NewName: s.NewName}
	asks, _ := document.Asks(s.Key)
	if n := v.Tree.Get(s.Key); n != nil {
		for _, e := range n.Entries {
			t := thing{Name: e.Key, Path: pathName([]string{s.Key, e.Key}), Called: v.rename("Name", s.Key, e.Key), Says: v.about([]string{s.Key, e.Key})}
			for _, a := range asks {
				t.Fields = append(t.Fields, v.goodsField(a, s.Key, e.Key))
			}
			c.Things = append(c.Things, t)
		}
	}
	for _, a := range asks {
		if f, ok := v.newGoods(a, s.Key); ok {
			c.Asks = append(c.Asks, f)
		}
	}
	if v.Typed["add"] == c.Path {
		c.Name, c.Says, c.Open = v.Typed["new.name"], v.refusals(), true
	}
	c.Open = c.Open || len(c.Things) == 0
	return c
}

// goodsField asks for one fact of a thing. A record that is written short is asked for as it stands.
func (v *view) goodsField(a document.Ask, above ...string) field {
	path := append(above, a.Path...)
	if a.List {
		return v.dressAsk(v.list(askLabel(a), path...), a)
	}
	return v.dressAsk(v.field(askLabel(a), path...), a)
}

// newGoods asks for one fact of a new thing. A fact two records down is asked for when the thing is there.
func (v *view) newGoods(a document.Ask, collection string) (field, bool) {
	f := v.asked([]string{collection}, strings.Join(a.Path, ":"), askLabel(a))
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
