package web

import (
	"net/http"
	"net/url"
	"slices"
	"strings"

	"dryfit/internal/document"
	"dryfit/internal/text"
)

// addings are the forms that add something: its collection is the value of the verb, its facts are in "new.KEY".
var addings = map[string]func(form url.Values, collection string, base *text.Node) (op text.Op, given bool, err error){
	"add": added, "pair": paired, "behind": putBehind, "gives": giving,
}

// added puts a thing into a collection by its name.
func added(form url.Values, collection string, _ *text.Node) (op text.Op, given bool, err error) {
	path, err := pathOf(collection)
	name := strings.TrimSpace(form.Get("new.name"))
	if err != nil || name == "" {
		return op, false, err
	}
	path = append(path, name)
	return text.Op{Do: text.Add, Path: path, Value: text.Flow(withUnknown(newThing(form), path))}, true, nil
}

// newThing reads the facts of a new thing. A key with a colon is one of several by name: "new.off:basin wall".
func newThing(form url.Values) *text.Node {
	thing := &text.Node{Kind: text.Map}
	for _, k := range sortedKeys(form) {
		key, ours := strings.CutPrefix(k, "new.")
		value := strings.TrimSpace(form.Get(k))
		if !ours || key == "name" || value == "" {
			continue
		}
		into := thing
		if of, name, several := strings.Cut(key, ":"); several {
			if into = thing.Get(of); into == nil {
				into = &text.Node{Kind: text.Map}
				thing.Entries = append(thing.Entries, text.Entry{Key: of, Value: into})
			}
			key = name
		}
		into.Entries = append(into.Entries, text.Entry{Key: key, Value: &text.Node{Kind: text.Scalar, Text: value}})
	}
	return thing
}

// paired puts a reading at its distance: "new.at" and "new.off".
func paired(form url.Values, collection string, _ *text.Node) (op text.Op, given bool, err error) {
	path, err := pathOf(collection)
	at, off := strings.TrimSpace(form.Get("new.at")), strings.TrimSpace(form.Get("new.off"))
	switch {
	case err != nil || at == "" && off == "":
		return op, false, err
	case (at == "" || off == "") && form.Get("preview") == "":
		return op, false, fault{http.StatusUnprocessableEntity, "Both are needed."}
	case at == "" || off == "":
		return op, false, nil
	}
	return text.Op{Do: text.Add, Path: append(path, at), Value: text.Quote(off)}, true, nil
}

// putBehind puts a thing behind those of a list. A list of one may stand as that one alone.
func putBehind(form url.Values, collection string, base *text.Node) (op text.Op, given bool, err error) {
	path, err := pathOf(collection)
	thing := newThing(form)
	if err != nil || len(thing.Entries) == 0 {
		return op, false, err
	}
	thing = withUnknown(thing, append(path, text.Item(0)))
	switch was := text.At(base, path); {
	case was != nil && was.Kind == text.List:
		return text.Op{Do: text.Add, Path: append(path, text.Item(len(was.Items))), Value: text.Flow(thing)}, true, nil
	case was != nil && was.Kind == text.Map && len(was.Entries) > 0:
		return text.Op{Do: text.Set, Path: path, Value: text.Flow(&text.Node{Kind: text.List, Items: []*text.Node{was, thing}})}, true, nil
	}
	return text.Op{Do: text.Set, Path: path, Value: text.Flow(&text.Node{Kind: text.List, Items: []*text.Node{thing}})}, true, nil
}

// neededFacts are those that a thing can not do without, but that a person may not know yet: then the document says so.
func neededFacts(collection ...string) []string {
	if slices.Equal(collection, []string{"straightedge"}) {
		return []string{"length", "gap"}
	}
	asks, _ := document.Asks(collection...)
	var out []string
	for _, a := range asks {
		if a.Need && a.Unknown && len(a.Path) == 1 {
			out = append(out, a.Path[0])
		}
	}
	return out
}

// neededAt are the needed facts of the thing at a path.
func neededAt(path []string) []string {
	if len(path) < 2 {
		return nil
	}
	if of := path[len(path)-2]; of == "straightedge" {
		return neededFacts(of)
	}
	return neededFacts(path[:len(path)-1]...)
}

// mayBeUnknown: an input that is emptied leaves the fact unknown, where taking it out would leave a thing that can not be.
func mayBeUnknown(path []string) bool {
	last := len(path) - 1
	return slices.Contains(neededAt(path[:last]), path[last])
}

func withUnknown(thing *text.Node, path []string) *text.Node {
	for _, key := range neededAt(path) {
		if thing.Get(key) == nil {
			thing.Entries = append(thing.Entries, text.Entry{Key: key, Value: &text.Node{Kind: text.Scalar, Text: "unknown"}})
		}
	}
	return thing
}
