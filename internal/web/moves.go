package web

import (
	"net/url"
	"slices"
	"strings"

	"dryfit/internal/report"
	"dryfit/internal/text"
)

const mayMove = "may move"

// moves asks what may still move, and by how much.
type moves struct {
	Path   string
	Given  []field
	At, By field // of a further one
	Says   []said
}

func (v *view) moves() moves {
	m := moves{Path: pathName([]string{mayMove})}
	if n := v.Tree.Get(mayMove); n != nil {
		for _, e := range n.Entries {
			m.Given = append(m.Given, v.field(e.Key, mayMove, e.Key).like(v.sample("-1 to 1/2", "-25 to 12")))
		}
	}
	m.At = v.asked([]string{mayMove}, "at", "What").oneOf(v.movable()...)
	m.By = v.asked([]string{mayMove}, "off", "By how much, each way").like(v.sample("-1 to 1/2", "-25 to 12"))
	if v.Typed["gives"] == m.Path {
		m.Says = v.refusals()
	}
	return m
}

// movable are the figures that checks which miss hang on and that are not said to move yet.
func (v *view) movable() []string {
	given := v.Tree.Get(mayMove)
	return slices.DeleteFunc(report.Movable(v.Plan), func(words string) bool { return given != nil && given.Get(words) != nil })
}

// giving puts down what may still move.
func giving(form url.Values, collection string, _ *text.Node) (op text.Op, given bool, err error) {
	path, err := pathOf(collection)
	at, by := strings.TrimSpace(form.Get("new.at")), strings.TrimSpace(form.Get("new.off"))
	switch {
	case err != nil || at == "" && by == "":
		return op, false, err
	case at == "" || by == "":
		return op, false, fault{422, "Both are needed: what may move, and by how much."}
	}
	return text.Op{Do: text.Add, Path: append(path, at), Value: text.Quote(by)}, true, nil
}
