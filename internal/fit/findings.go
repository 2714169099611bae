package fit

import (
	"strconv"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

const decides = "local codes and licensed trades decide"

// findings tells of every check that misses or could not be made.
func (c *checker) findings() {
	for _, k := range c.out.Checks {
		switch k.State {
		case Misses:
			c.misses(k)
		case NotChecked:
			c.notChecked(k)
		}
	}
}

func (c *checker) misses(k Check) {
	class := diag.Stop
	if k.Advice {
		class = diag.Look
	}
	n := len(k.Values)
	at := func(i int) string { return "{" + strconv.Itoa(n+i) + "}" }
	values := append(append([]diag.Value{}, k.Values...), k.Value, k.Limit, shown(-k.Margin, k.Margin), diag.T(k.Cite))
	side := "at least "
	if k.Most {
		side = "at most "
	}
	text := k.What + ": " + at(0) + " (" + at(3) + ": " + side + at(1) + "); " + at(2) + " short"
	switch {
	case !k.Length:
		text = k.What + ": " + at(0) + " (" + at(3) + ": " + at(1) + ")"
	case k.Most:
		text = k.What + ": " + at(0) + " (" + at(3) + ": " + side + at(1) + "); " + at(2) + " too much"
	}
	mend := k.Mend
	if mend == "" {
		mend = "look what of it may still move"
	}
	if k.Rule != "" && !k.Advice {
		mend += "; " + decides
	}
	c.list.Add(class, "misses-"+slug(k), k.At, text, mend, values...).Rule = k.Rule
}

func (c *checker) notChecked(k Check) {
	var words []string
	for _, m := range k.Missing {
		words = append(words, Words(m))
	}
	n := len(k.Values)
	values := append(append([]diag.Value{}, k.Values...), diag.T(strings.Join(words, ", ")))
	c.list.Add(diag.Unchecked, "not-checked-"+slug(k), k.At, "not checked: "+k.What+"; {"+strconv.Itoa(n)+"} missing", "measure it or look it up on the data sheet, and write it", values...).Rule = k.Rule
}

// slug is what a check is about, for the code of its finding.
func slug(k Check) string {
	id := strings.TrimPrefix(k.ID, k.At.Path+" > ")
	if i := strings.IndexAny(id, ":,"); i >= 0 {
		id = id[:i]
	}
	return strings.ReplaceAll(strings.ToLower(id), " ", "-")
}

// cautions are told once for all that is there.
func (c *checker) cautions() {
	note := func(code, text, mend string, at diag.Place, v ...diag.Value) {
		c.list.Add(diag.Note, code, at, text, mend, v...)
	}
	if d := c.doc; len(d.Taps)+len(d.Stops)+len(d.Wastes) > 0 {
		at := diag.Place{Path: "taps"}
		if len(d.Taps) > 0 {
			at = d.Taps[0].At
		}
		note("caution-water", "before a pipe is opened: shut the water off at the main or the stop, and let it run dry at the lowest tap", "a licensed plumber decides what is connected and tests it; "+decides, at)
	}
	for _, b := range c.doc.Boxes {
		if b.Kind.Known {
			note("caution-power", "before a box is opened: switch its breaker off and prove the wires dead with a tester that was proven just before", "a licensed electrician decides; "+decides, b.At)
			break
		}
	}
	for _, w := range c.doc.WCs {
		c.lifting(w.Name, w.At, w.Weight.V, w.Weight.Known)
	}
	for _, b := range c.doc.Basins {
		c.lifting(b.Name, b.At, b.Weight.V, b.Weight.Known)
	}
}

// liftAlone is the load constant of the NIOSH lifting equation, 51 lb (23 kg): the most that one person lifts where all else is at its best.
const liftAlone = 23_000 // grams

// lifting warns of what is heavy and set down low, where backs are hurt.
func (c *checker) lifting(name string, at diag.Place, grams int64, known bool) {
	switch {
	case !known:
		c.list.Add(diag.Note, "caution-lifting", at, "{0}: its weight is not told; lift it with bent knees, close to the body, and not alone if it is of china", "write its weight as the box says", diag.T(name))
	case grams > liftAlone:
		c.list.Add(diag.Note, "caution-lifting", at, "{0} weighs {1}: two lift it, and it is lowered onto its place without being held bent over", "one person alone lifts at most 51 lb (23 kg), and less when it is low or far from the body (NIOSH lifting equation)", diag.T(name), diag.T(weight(grams, c.doc.Units)))
	}
}

func weight(grams int64, s unit.System) string {
	if s == unit.Millimetres {
		return strconv.FormatInt((grams+500)/1000, 10) + " kg"
	}
	return strconv.FormatInt((grams*100_000+22_679_618)/45_359_237, 10) + " lb"
}
