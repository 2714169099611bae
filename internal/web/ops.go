package web

import (
	"encoding/json"
	"net/url"
	"slices"
	"strings"

	"dryfit/internal/text"
)

// opsOf reads a form into operations on the document that the form was filled from. An input that says what stands there
// already is none. The order is that of the inputs' names, so that the same form gives the same operations.
func opsOf(form url.Values, base *text.Node) ([]text.Op, error) {
	var ops []text.Op
	for _, name := range sortedKeys(form) {
		do, rest, _ := strings.Cut(name, ":")
		typed := strings.TrimSpace(form.Get(name))
		switch do {
		case doSet, doList, doAgain, doValue:
			path, err := pathOf(rest)
			if err != nil {
				return nil, err
			}
			if op, changed := change(do, path, typed, text.At(base, path)); changed {
				ops = append(ops, op)
			}
		case doRename:
			path, err := pathOf(rest)
			if err != nil {
				return nil, err
			}
			if typed != path[len(path)-1] {
				ops = append(ops, text.Op{Do: text.Rename, Path: path, Value: typed})
			}
		case "remove":
			path, err := pathOf(typed)
			if err != nil {
				return nil, err
			}
			ops = append(ops, text.Op{Do: text.Remove, Path: path})
		case "add", "pair", "behind", "gives":
			op, given, err := addings[do](form, typed, base)
			if err != nil {
				return nil, err
			}
			if given {
				ops = append(ops, op)
			}
		}
	}
	return ops, nil
}

func sortedKeys(form url.Values) []string {
	var out []string
	for k := range form {
		out = append(out, k)
	}
	slices.Sort(out)
	return out
}

func pathOf(s string) ([]string, error) {
	var path []string
	if err := json.Unmarshal([]byte(s), &path); err != nil || len(path) == 0 || slices.Contains(path, "") {
		return nil, fault{400, "That form is not one of ours."}
	}
	return path, nil
}

// change makes the operation of one input. An emptied reading becomes unknown, anything else emptied is taken out.
func change(do string, path []string, typed string, was *text.Node) (op text.Op, changed bool) {
	set := func(value string) (text.Op, bool) { return text.Op{Do: text.Set, Path: path, Value: value}, true }
	switch {
	case do == doValue:
		return set(typed)
	case do == doAgain && typed == "":
		return op, false
	case do == doAgain:
		return set(again(was, typed))
	case do == doSet && typed == standing(was, plain), do == doList && typed == standing(was, joined):
		return op, false
	case typed == "" && (path[0] == "survey" || mayBeUnknown(path)):
		return set("unknown")
	case typed == "":
		return text.Op{Do: text.Remove, Path: path}, true
	case do == doList:
		return set(listed(typed))
	}
	return set(text.Quote(typed))
}

func standing(n *text.Node, as func(*text.Node) string) string {
	if n == nil {
		return ""
	}
	return strings.TrimSpace(as(n))
}

// again puts a further reading behind those that are there, oldest first.
func again(was *text.Node, typed string) string {
	all := &text.Node{Kind: text.List}
	switch {
	case was == nil || was.Kind == text.Empty || plain(was) == "":
	case was.Kind == text.List:
		all.Items = append(all.Items, was.Items...)
	default:
		all.Items = append(all.Items, was)
	}
	if len(all.Items) == 0 {
		return text.Quote(typed)
	}
	all.Items = append(all.Items, &text.Node{Kind: text.Scalar, Text: typed})
	return text.Flow(all)
}

// listed turns words with commas between into a list.
func listed(typed string) string {
	all := &text.Node{Kind: text.List}
	for _, w := range strings.Split(typed, ",") {
		if w = strings.TrimSpace(w); w != "" {
			all.Items = append(all.Items, &text.Node{Kind: text.Scalar, Text: w})
		}
	}
	return text.Flow(all)
}
