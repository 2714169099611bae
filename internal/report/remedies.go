package report

import (
	"slices"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/fit"
	"dryfit/internal/mend"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// Remedy is one way to mend a check, or why there is none, in words.
type Remedy struct {
	Words string
	Then  []string      // what other checks then read
	Ops   []document.Op // the edit; none where it is only told
}

// Remedies are the ways to mend one check: the smallest change of each single thing that does, then what does not and by how much.
func Remedies(p plan.Plan, m mend.Mends, check string) []Remedy {
	i := slices.IndexFunc(m.Remedies, func(r mend.Remedy) bool { return r.Check == check })
	if i < 0 {
		return nil
	}
	r := m.Remedies[i]
	var out []Remedy
	for _, t := range r.Single {
		out = append(out, Remedy{Words: changes(p.Style, m, t.Changes), Then: reads(p, t.Reads, check), Ops: t.Ops})
	}
	for _, t := range r.Spoils {
		out = append(out, Remedy{Words: changes(p.Style, m, t.Changes) + " would mend it and spoil another", Then: spoiled(p, t)})
	}
	for _, s := range r.Short {
		out = append(out, Remedy{Words: m.Things[s.Thing].Words + " alone does not: " + Fine(p.Style, s.By) + " is still missing at the end of its range"})
	}
	switch {
	case !r.Touched:
		out = append(out, Remedy{Words: "Nothing that may still move is in it; write under “may move” what could give, and by how much."})
	case r.Misses > 0:
		out = append(out, Remedy{Words: "With all that may move at its best it still misses by " + Fine(p.Style, r.Misses) + "."})
	}
	return out
}

// Together is the smallest joint change that mends all at once, or misses least; false where nothing misses, or where nothing may move.
func Together(p plan.Plan, m mend.Mends) (Remedy, bool) {
	j := m.Joint
	if j == nil || len(m.Things) == 0 || len(j.Changes) == 0 {
		return Remedy{}, false
	}
	out := Remedy{Words: changes(p.Style, m, j.Changes) + ": " + mendsWhat(len(m.Without)), Then: reads(p, j.Reads, ""), Ops: j.Ops}
	if !j.Mends {
		out.Words, out.Ops = changes(p.Style, m, j.Changes)+" comes nearest; it does not mend all", nil
		for _, l := range j.Left {
			out.Then = append(out.Then, checkName(p, l.Check)+" still misses by "+Fine(p.Style, l.By))
		}
	}
	if !j.Proven {
		out.Words += " (the smallest found; no proof that none is smaller)"
	}
	return out, true
}

// mendsWhat says what a joint change is good for. Without counts the checks that nothing that may move is in.
func mendsWhat(without int) string {
	if without == 0 {
		return "mends all at once"
	}
	return "mends all but " + Count(without, "check", "checks") + " that nothing that may move is in"
}

// changes words things moved: "vanity > height: 32 in place of 32-1/2 (1/2 in less)".
func changes(s unit.Style, m mend.Mends, all []mend.Change) string {
	var words []string
	for _, c := range all {
		way := " more"
		if c.By < 0 {
			way = " less"
		}
		t := m.Things[c.Thing]
		words = append(words, t.Words+": "+c.To+" in place of "+t.Now+" ("+Fine(s, c.By.Abs())+way+")")
	}
	return list(words)
}

func reads(p plan.Plan, all []mend.Read, but string) []string {
	var out []string
	for _, r := range all {
		if r.Check == but || r.State == fit.Told {
			continue
		}
		out = append(out, checkName(p, r.Check)+": "+readWords(p, r))
	}
	return out
}

func readWords(p plan.Plan, r mend.Read) string {
	k, _ := p.Fit.Find(r.Check)
	k.Value, k.Margin, k.State = r.Value, r.Margin, r.State
	if r.State == fit.NotChecked {
		return "can not be checked then"
	}
	return strings.TrimSuffix(k.Value.Say(p.Style)+", "+checkMargin(p.Style, k), ", ")
}

func spoiled(p plan.Plan, t mend.Trial) []string {
	var out []string
	for _, id := range t.Spoils {
		out = append(out, checkName(p, id)+" then misses")
	}
	return out
}

// checkName words what a check is about.
func checkName(p plan.Plan, id string) string {
	k, ok := p.Fit.Find(id)
	if !ok {
		return id
	}
	return diag.Finding{Text: k.What, Values: k.Values}.Say(p.Style)
}

// Margins lists the narrowest of the checks that pass, and which layer of a build-up eats each most.
func Margins(p plan.Plan, m mend.Mends, most int) Table {
	t := Table{Title: "What is left where it fits, the narrowest first", Columns: numbers(text("What", "Left", "Eaten by", "Layer takes", "It may grow by"), 1, 3, 4),
		Empty: "No clearance that was checked hangs on a build-up."}
	for _, g := range m.Margins {
		if len(t.Rows) == most {
			break
		}
		row := []string{checkName(p, g.Check), Fine(p.Style, g.Left), "", "", ""}
		if len(g.Eats) > 0 {
			e := g.Eats[0]
			row[2], row[3], row[4] = fit.Words(e.Path), Fine(p.Style, e.Takes), Fine(p.Style, e.Spare)
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}

// Movable are the figures that checks which miss hang on, as a person would point at them. What was measured or is sold as it is
// stays where it is, but that the person decides.
func Movable(p plan.Plan) []string {
	var out []string
	for _, k := range p.Fit.Checks {
		for _, path := range k.Uses {
			keys := strings.Split(path, " > ")
			if words := strings.Join(keys[1:], " > "); k.State == fit.Misses && len(keys) > 2 && !slices.Contains(out, words) {
				out = append(out, words)
			}
		}
	}
	return out
}
