package schedule

import (
	"slices"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/document"
)

func sameName(a, b string) bool { return document.SameName(a, b) }

// named lists the tasks that a name means: one task, all parts of a wall's setting, all jobs on one face, or all of a kind.
func (m *maker) named(name string) []int {
	for _, means := range []func(t *task) bool{
		func(t *task) bool { return sameName(t.Name, name) },
		func(t *task) bool { return t.Part > 0 && sameName(nameOf(t.Kind, t.Subject, 0), name) },
		func(t *task) bool { return t.Kind != Own && sameName(string(t.Kind), name) },
	} {
		var out []int
		for i := range m.tasks {
			if means(&m.tasks[i]) {
				out = append(out, i)
			}
		}
		if out != nil {
			return out
		}
	}
	return nil
}

// refers lists the tasks that a name in the document means, and tells where there is none.
func (m *maker) refers(n document.Name) []int {
	out := m.named(n.Text)
	if out == nil {
		if _, kind := traitNamed(n.Text); !kind { // a kind of which this room has none is no mistake
			m.stray(n.At, "job", n.Text, m.jobNames())
		}
	}
	return out
}

func (m *maker) jobNames() []string {
	var out []string
	for i := range m.tasks {
		out = append(out, m.tasks[i].Name)
		if k := string(m.tasks[i].Kind); m.tasks[i].Kind != Own && !slices.Contains(out, k) {
			out = append(out, k)
		}
	}
	return out
}

// stray tells of a name that nothing has, with the nearest that there is.
func (m *maker) stray(at diag.Place, what, name string, known []string) {
	if near := document.Nearest(name, known); near != "" {
		m.found(diag.Stop, "unknown-job", at, "there is no {0} called {1}", "did you mean {2}?", diag.T(what), diag.T(name), diag.T(near))
		return
	}
	const most = 12
	if len(known) > most {
		known = append(slices.Clone(known[:most]), "…")
	}
	m.found(diag.Stop, "unknown-job", at, "there is no {0} called {1}", "there are: {2}", diag.T(what), diag.T(name), diag.T(strings.Join(known, ", ")))
}
