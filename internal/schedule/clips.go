package schedule

import (
	"cmp"
	"slices"

	"dryfit/internal/calendar"
)

// ClipUse is the leveling clips of one session of setting: how many, from when to when they are in the wall.
type ClipUse struct {
	Count    int
	Set, Off calendar.Moment
}

// Clips is what has to be there of them.
type Clips struct {
	Stems int // they break off and are used up
	Caps  int // wedges and caps come back: the most that are in the wall at one time
}

// ReuseClips counts stems and caps. Caps that come off at the moment others go in serve again.
func ReuseClips(uses []ClipUse) (c Clips) {
	type change struct {
		at calendar.Moment
		by int
	}
	var changes []change
	for _, u := range uses {
		c.Stems += u.Count
		changes = append(changes, change{u.Set, u.Count}, change{u.Off, -u.Count})
	}
	slices.SortFunc(changes, func(a, b change) int { return cmp.Or(cmp.Compare(a.at, b.at), cmp.Compare(a.by, b.by)) })
	in := 0
	for _, ch := range changes {
		in += ch.by
		c.Caps = max(c.Caps, in)
	}
	return c
}

// ClipUses says when the clips of each batch are in the wall: from the beginning of its session until they are taken off. count tells how many a
// piece takes.
func (p Plan) ClipUses(count func(face, address string) int) []ClipUse {
	var out []ClipUse
	for _, b := range p.Batches {
		t := p.Tasks[b.Task]
		off, ok := p.offAfter(t)
		if !ok {
			continue
		}
		u := ClipUse{Set: t.Sessions[b.Session].From, Off: off}
		for _, a := range b.Pieces {
			u.Count += count(b.Face, a)
		}
		out = append(out, u)
	}
	return out
}

// offAfter is when the clips of a setting are off.
func (p Plan) offAfter(set Task) (calendar.Moment, bool) {
	for _, t := range p.Tasks {
		if t.Kind == ClipsOff && t.Subject == set.Subject {
			return t.End, true
		}
	}
	return 0, false
}
