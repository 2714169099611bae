package order

import (
	"slices"
	"strings"

	"dryfit/internal/calendar"
	"dryfit/internal/document"
	"dryfit/internal/schedule"
	"dryfit/internal/takeoff"
)

// What comes back out of the joints serves again: of caps, wedges and spacers there have to be as many as are in the walls at one time. They go in when
// the setting of their face begins and come out with the clips; caps are followed session by session, the others face by face, which is never too few.

// atOnce is the most of a line that is in use at one time; false where the days do not tell of all of it.
func (m *maker) atOnce(l takeoff.Line) (int, bool) {
	if !l.Back || !l.Known || !m.days.Planned {
		return 0, false
	}
	var uses []schedule.ClipUse
	if l.Kind == document.ClipCaps {
		uses = m.capUses(l)
	} else {
		uses = m.faceUses(l)
	}
	all := 0
	for _, u := range uses {
		all += u.Count
	}
	if int64(all) != l.Need.N {
		return 0, false // something is set already, or is on no day
	}
	return schedule.ReuseClips(uses).Caps, true
}

// capUses are the clips of each session on the faces of a line.
func (m *maker) capUses(l takeoff.Line) []schedule.ClipUse {
	faces := facesOf(l)
	return m.days.ClipUses(func(face, address string) int {
		if !slices.Contains(faces, face) {
			return 0
		}
		return m.clips[face+"\n"+address]
	})
}

// faceUses are the shares of a line on each face, from its first session to when its clips and spacers are off.
func (m *maker) faceUses(l takeoff.Line) (uses []schedule.ClipUse) {
	for _, p := range l.Parts {
		if set, off, ok := m.inTheWall(p.Face); ok {
			uses = append(uses, schedule.ClipUse{Count: int(p.Takes.N), Set: set, Off: off})
		}
	}
	return uses
}

// inTheWall is from when to when a face holds what comes out of its joints again; false where part of it is set already.
func (m *maker) inTheWall(face string) (set, off calendar.Moment, ok bool) {
	subject, _, _ := strings.Cut(face, " > ")
	out := false
	for _, t := range m.days.Tasks {
		switch {
		case t.Subject != subject:
		case t.Kind == schedule.Set && t.State != schedule.Planned:
			return 0, 0, false
		case t.Kind == schedule.Set && (!ok || t.Start < set):
			set, ok = t.Start, true
		case t.Kind == schedule.ClipsOff:
			off, out = t.End, true
		}
	}
	return set, off, ok && out
}
