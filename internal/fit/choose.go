package fit

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/rule"
)

// usual is what a document that chooses no sets is held against.
const usual = "US residential"

// chooseRules opens the book of the sets that the document chose, with its inspector's numbers.
func (c *checker) chooseRules() {
	var sets rule.Sets
	for _, n := range c.doc.Rules.Sets {
		if choice, ok := rule.ChoiceNamed(n.Text); ok {
			sets |= choice.Sets
			c.out.Sets = append(c.out.Sets, choice.Name)
		}
	}
	if sets == 0 {
		choice, _ := rule.ChoiceNamed(usual)
		sets = choice.Sets
		c.out.Sets = []string{choice.Name}
		c.assume(diag.Place{Path: "rules > sets"}, rule.Own.String(), "no set of requirements is chosen: {0}", diag.T(usual))
	}
	if c.doc.Accessible.Or(false) && sets&rule.ADA == 0 {
		sets |= rule.ADA
		c.out.Sets = append(c.out.Sets, "ADA 2010")
	}
	var own []rule.Inspected
	for _, i := range c.doc.Rules.Inspector {
		if one, ok := c.inspected(i); ok {
			own = append(own, one)
		}
	}
	c.book = rule.For(sets, own...)
	for _, k := range c.book.Conflicts() {
		c.list.Add(diag.Look, "rules-conflict", c.doc.Rules.At, "{0}: {1} asks for more than {2} allows", "ask which of them holds; "+decides, diag.T(k.Least.Rule.What), diag.T(k.Least.Cite()), diag.T(k.Most.Cite()))
	}
}

// inspected reads a number of the user's inspector as what the requirement counts.
func (c *checker) inspected(i document.Inspected) (rule.Inspected, bool) {
	r, ok := rule.ByID(i.Rule)
	if !ok {
		c.list.Add(diag.Stop, "rule-unknown", i.At, "there is no requirement {0}", "a check and its finding name the requirement behind them; use that name", diag.T(i.Rule))
		return rule.Inspected{}, false
	}
	one := rule.Inspected{ID: i.Rule}
	switch r.Kind() {
	case rule.Length, rule.Fall:
		one.Value, ok = int64(i.Length.V), i.Length.Known
	case rule.Number:
		one.Value, ok = i.Number.V, i.Number.Known
	case rule.Flow:
		one.Value, ok = int64(i.Flow.V), i.Flow.Known
	default:
		ok = false
	}
	if !ok {
		c.list.Add(diag.Stop, "rule-number", i.At, "{0} is no number for {1}: that is a {2}", "write it with its unit", diag.T(i.Typed), diag.T(i.Rule), diag.T(r.Kind().String()))
	}
	return one, ok
}
