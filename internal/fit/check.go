package fit

import (
	"slices"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// subject is what checks are about: its name, place and group.
type subject struct {
	name  string
	at    diag.Place
	group string
}

// asked is what a check is held against.
type asked struct {
	limit  figure.Figure
	rule   string
	cite   string
	advice bool
	mend   string
}

// sheet is a limit that the data sheets ask; a miss stops work.
func sheet(limit figure.Figure, mend string) asked {
	return asked{limit: limit, cite: "data sheet", mend: mend}
}

// law is a limit of the chosen requirements. It is false where none of them limits the subject.
func (c *checker) law(s rule.Subject, side rule.Bound, mend string) (asked, bool) {
	e, ok := c.book.Least(s)
	if side == rule.AtMost {
		e, ok = c.book.Most(s)
	}
	if !ok {
		return asked{}, false
	}
	return asked{limit: figure.Number(e.Rule.Limit), rule: e.Rule.ID, cite: e.Cite(), advice: e.Rule.Advice && !e.Own, mend: mend}, true
}

// least holds a value against a limit that it must reach; most one that it must not pass.
func (c *checker) least(s subject, id, what string, value figure.Figure, a asked, values ...diag.Value) {
	c.length(s, id, what, value, a, false, values)
}

func (c *checker) most(s subject, id, what string, value figure.Figure, a asked, values ...diag.Value) {
	c.length(s, id, what, value, a, true, values)
}

// atLeast and atMost ask the chosen requirements, and make no check where none limits the subject.
func (c *checker) atLeast(s subject, id, what string, value figure.Figure, of rule.Subject, mend string, values ...diag.Value) {
	if a, ok := c.law(of, rule.AtLeast, mend); ok {
		c.least(s, id, what, value, a, values...)
	}
}

func (c *checker) atMost(s subject, id, what string, value figure.Figure, of rule.Subject, mend string, values ...diag.Value) {
	if a, ok := c.law(of, rule.AtMost, mend); ok {
		c.most(s, id, what, value, a, values...)
	}
}

func (c *checker) length(s subject, id, what string, value figure.Figure, a asked, most bool, values []diag.Value) {
	margin := value.Sub(a.limit)
	if most {
		margin = a.limit.Sub(value)
	}
	k := c.start(s, id, what, a, values)
	k.Most, k.Length = most, true
	if k.State = c.facts(&k, margin); k.State == NotChecked {
		c.out.Checks = append(c.out.Checks, k)
		return
	}
	k.Margin = margin.V
	if margin.V < 0 {
		k.State = Misses
	}
	k.Value, k.Limit = shown(value.V, margin.V), shown(a.limit.V, margin.V)
	c.out.Checks = append(c.out.Checks, k)
}

// shown gives a length as fine as a tape's marks divided, or exactly where rounding would hide which side of its limit it is on.
func shown(l, margin unit.Length) diag.Value {
	if margin != 0 && margin.Abs() <= unit.Inch/64 {
		return diag.X(l)
	}
	return diag.F(l)
}

func (c *checker) start(s subject, id, what string, a asked, values []diag.Value) Check {
	return Check{ID: s.at.Path + " > " + id, At: s.at, Group: s.group, What: what, Values: append([]diag.Value{diag.T(s.name)}, values...),
		Rule: a.rule, Cite: a.cite, Advice: a.advice, Mend: a.mend}
}

// facts notes what a check hangs on, and says whether all of it is known.
func (c *checker) facts(k *Check, margin figure.Figure) State {
	k.Uses, k.Missing = margin.Facts(), margin.Missing
	if margin.Known() {
		k.Missing = c.unread(k.Uses)
	}
	if len(k.Missing) > 0 {
		return NotChecked
	}
	for _, t := range margin.Of {
		if c.moves[t.Path] {
			k.Moves = append(k.Moves, t)
		}
		if c.layers[t.Path] {
			k.Layers = append(k.Layers, t)
		}
	}
	return Fits
}

// unread lists the corners where the floor or the ceiling was not read, of a check that hangs on these readings: the highest point may be there.
func (c *checker) unread(uses []string) []string {
	var out []string
	for _, k := range c.room.Survey.Corners {
		if !k.FloorKnown && slices.Contains(uses, downPath) {
			out = append(out, downPath+" > "+k.Name)
		}
		if !k.CeilingKnown && slices.Contains(uses, upPath) {
			out = append(out, upPath+" > "+k.Name)
		}
	}
	return out
}

// tell notes a length that is worth knowing.
func (c *checker) tell(s subject, id, what string, value figure.Figure, values ...diag.Value) {
	k := c.start(s, id, what, asked{}, values)
	k.Length, k.State = true, Told
	if c.facts(&k, value) == NotChecked {
		k.State = NotChecked
	} else {
		k.Value = diag.F(value.V)
	}
	c.out.Checks = append(c.out.Checks, k)
}

// holds notes a check that is no length: it fits or misses as told, by the facts that it uses.
func (c *checker) holds(s subject, id, what string, ok bool, value, limit diag.Value, a asked, uses figure.Figure, values ...diag.Value) {
	k := c.start(s, id, what, a, values)
	if k.State = c.facts(&k, uses); k.State == Fits {
		k.Value, k.Limit = value, limit
		if !ok {
			k.State = Misses
		}
	}
	k.Moves, k.Layers = nil, nil
	c.out.Checks = append(c.out.Checks, k)
}

// fact is a length that the document states under a key of something.
func fact(v document.Value[unit.Length], owner diag.Place, key string) figure.Figure {
	path := owner.Path + " > " + key
	if v.Known {
		return figure.Fact(path, v.V)
	}
	return figure.Missing(path)
}

// known is a figure that stands for a fact which is no length: what it hangs on, or that it is missing.
func known[T any](v document.Value[T], owner diag.Place, key string) figure.Figure {
	path := owner.Path + " > " + key
	if v.Known {
		return figure.Number(0).Using(path)
	}
	return figure.Missing(path)
}

func ends(v document.Value[document.Span], owner diag.Place, key string) (least, most figure.Figure) {
	path := owner.Path + " > " + key
	if !v.Known {
		return figure.Missing(path), figure.Missing(path)
	}
	return figure.Fact(path, v.V.Least), figure.Fact(path, v.V.Most)
}

// Words calls a document path as a person would: without the group that it stands in.
func Words(path string) string {
	parts := strings.Split(path, " > ")
	if len(parts) > 1 && !slices.Contains([]string{"survey", "floor"}, parts[0]) {
		parts = parts[1:]
	}
	return strings.Join(parts, " ")
}

// Find returns the check of that id.
func (p Plan) Find(id string) (Check, bool) {
	for _, k := range p.Checks {
		if k.ID == id {
			return k, true
		}
	}
	return Check{}, false
}
