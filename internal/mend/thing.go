package mend

import (
	"dryfit/internal/document"
	"dryfit/internal/opt/mip"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// things lists what may move, with the value that stands in the document.
func (m *mender) things() {
	steps := unit.Length(0)
	for _, move := range m.base.Document.Moves {
		t := Thing{Words: move.Words, Path: move.Path, At: move.At, Less: move.Less, More: move.More, Step: move.Step.Or(m.base.Style.Mark)}
		typed, ok := m.trial.Text(move.Path)
		t.Now = typed
		if _, can := document.Shift(typed, t.Step, m.base.Document.Units); !ok || !can {
			t.Fixed = "its value has no single figure that can be moved"
			t.Less, t.More = 0, 0
		}
		m.out.Things = append(m.out.Things, t)
		m.names = append(m.names, move.PathText())
		steps = common(steps, t.Step)
	}
	for _, t := range m.out.Things {
		m.vars = append(m.vars, mip.Var{Lo: -int64(-t.Less / t.Step), Hi: int64(t.More / t.Step), Cost: int64(t.Step / max(steps, 1))})
	}
}

// common is the greatest length that divides both.
func common(a, b unit.Length) unit.Length {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

// changes says what x steps of each thing are, and the edit that makes them.
func (m *mender) changes(x []int64) (all []Change, ops []document.Op, ok bool) {
	for j, steps := range x {
		if steps == 0 {
			continue
		}
		t := m.out.Things[j]
		c := Change{Thing: j, By: unit.Length(steps) * t.Step}
		c.To, ok = document.Shift(t.Now, c.By, m.base.Document.Units)
		if !ok {
			return nil, nil, false
		}
		all = append(all, c)
		ops = append(ops, document.Op{Do: text.Set, Path: t.Path, Value: c.To})
	}
	return all, ops, true
}
