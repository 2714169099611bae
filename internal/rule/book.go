package rule

import (
	"cmp"
	"slices"

	"dryfit/internal/unit"
)

// all lists every record, each id once.
var all = slices.Concat(Tile, Site, Fixtures, Setting, Basins, Taps, Wastes, TrapArms, Supplies, AirGaps, Rooms, Power, Kingdom, Access)

// bySubject holds the records of each subject: a plan asks often.
var bySubject = func() map[Subject][]Rule {
	m := map[Subject][]Rule{}
	for _, r := range all {
		m[r.Subject] = append(m[r.Subject], r)
	}
	return m
}()

// twoSided lists the subjects that have a least and a most, in the order of their records.
var twoSided = func() (both []Subject) {
	sides := map[Subject][3]bool{}
	for _, r := range all {
		had := sides[r.Subject]
		now := had
		now[r.Bound] = true
		sides[r.Subject] = now
		if done := now[AtLeast] && now[AtMost]; done && !(had[AtLeast] && had[AtMost]) && r.Subject != "" && r.Size == 0 {
			both = append(both, r.Subject)
		}
	}
	return both
}()

// ByID finds a record.
func ByID(id string) (Rule, bool) {
	for _, r := range all {
		if r.ID == id {
			return r, true
		}
	}
	return Rule{}, false
}

// IDs lists the ids of the records that a document may put its inspector's number in place of, sorted.
func IDs() []string {
	var ids []string
	for _, r := range all {
		if r.Subject != "" && r.Bound != Stated {
			ids = append(ids, r.ID)
		}
	}
	slices.Sort(ids)
	return ids
}

// Inspected is a number of the user's own inspector, in place of a record's.
type Inspected struct {
	ID    string // the record's
	Value int64  // in the unit of the record's Kind: 1/16000 mm for a length, nanoliters a minute for a flow …
}

// Book is the requirements that hold for one room.
type Book struct {
	sets Sets
	own  []Rule // records with the inspector's numbers in them
}

// For makes the book of the sets that a document chose. Own numbers whose id names no record are left out: whoever reads
// the document asks ByID first and complains there.
func For(sets Sets, own ...Inspected) Book {
	b := Book{sets: sets | advised}
	for _, o := range own {
		if r, ok := ByID(o.ID); ok {
			b.own = append(b.own, r.with(o.Value))
		}
	}
	return b
}

// Effective is the limit that holds for one subject on one side.
type Effective struct {
	Rule  Rule
	Own   bool   // the inspector's number; Rule is the record that it takes the place of
	Also  []Rule // the other records of the chosen sets on the same side, strictest first
	Known Known
}

// Cite names where the number comes from.
func (e Effective) Cite() string {
	if e.Own {
		return "your inspector's number, in place of " + e.Rule.Cite()
	}
	return e.Rule.Cite()
}

// Least returns the strictest lower limit on a subject, and Most the upper one. What a code asks for goes before any advice, even stricter
// advice: see Better. An inspector's number goes before all.
func (b Book) Least(s Subject) (Effective, bool) { return b.sized(s, AtLeast, 0) }

// Most returns the strictest upper limit on a subject: see Least.
func (b Book) Most(s Subject) (Effective, bool) { return b.sized(s, AtMost, 0) }

// Usual returns the first record that states a subject's usual number without limiting it.
func (b Book) Usual(s Subject) (Effective, bool) { return b.sized(s, Stated, 0) }

// Better returns the strictest advice where it asks for more than the limit that holds, or where nothing else limits.
func (b Book) Better(s Subject, side Bound) (Rule, bool) {
	var advice []Rule
	for _, r := range b.records(s, side, 0) {
		if r.Advice {
			advice = append(advice, r)
		}
	}
	if len(advice) == 0 {
		return Rule{}, false
	}
	e, ok := b.sized(s, side, 0)
	return advice[0], ok && (e.Rule.Advice && !e.Own || advice[0].stricter(e.Rule))
}

// sized is Least and Most for the rows of a table.
func (b Book) sized(s Subject, side Bound, size unit.Length) (Effective, bool) {
	if e, ok := b.inspector(s, side, size); ok {
		return e, true
	}
	found := b.records(s, side, size)
	if len(found) == 0 {
		return Effective{}, false
	}
	asked := slices.IndexFunc(found, func(r Rule) bool { return !r.Advice })
	i := max(asked, 0)
	holds := found[i]
	return Effective{Rule: holds, Also: slices.Delete(found, i, i+1), Known: holds.Known}, true
}

// inspector returns the strictest of the inspector's numbers on one side of a subject.
func (b Book) inspector(s Subject, side Bound, size unit.Length) (Effective, bool) {
	found := matching(b.own, s, side, size)
	if len(found) == 0 {
		return Effective{}, false
	}
	return Effective{Rule: found[0], Own: true, Also: b.records(s, side, size), Known: Read}, true
}

// records returns those of the chosen sets, strictest first.
func (b Book) records(s Subject, side Bound, size unit.Length) []Rule {
	found := matching(bySubject[s], s, side, size)
	return slices.DeleteFunc(found, func(r Rule) bool { return r.Sets != 0 && r.Sets&b.sets == 0 })
}

// matching returns the records on one side of a subject, strictest first, those of equal strictness in their order in the list.
func matching(list []Rule, s Subject, side Bound, size unit.Length) []Rule {
	var found []Rule
	for _, r := range list {
		if r.Subject == s && r.Bound == side && sameSize(r.Size, size) {
			found = append(found, r)
		}
	}
	slices.SortStableFunc(found, func(a, b Rule) int {
		if side == AtMost {
			return cmp.Compare(a.Value(), b.Value())
		}
		return cmp.Compare(b.Value(), a.Value())
	})
	return found
}

// Conflict is a subject whose least is more than its most in the sets that were chosen together.
type Conflict struct{ Least, Most Effective }

// Conflicts lists the subjects that nothing can satisfy, as when an inspector's number stands against another set.
func (b Book) Conflicts() []Conflict {
	var out []Conflict
	for _, s := range twoSided {
		least, ok := b.Least(s)
		most, also := b.Most(s)
		if ok && also && least.Rule.Value() > most.Rule.Value() && !least.Rule.Advice && !most.Rule.Advice {
			out = append(out, Conflict{least, most})
		}
	}
	return out
}
