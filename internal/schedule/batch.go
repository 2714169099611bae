package schedule

import (
	"dryfit/internal/unit"
)

// batches shares the pieces of each setting among its sessions, in the order of setting, by the work that each piece is.
func (t *teller) batches() {
	for i, j := range t.Tasks {
		pieces := t.m.tasks[t.order[i]].pieces
		if len(pieces) == 0 || j.State == Done {
			continue
		}
		efforts, all := t.m.efforts(pieces)
		var long unit.Minutes
		for _, s := range j.Sessions {
			long += s.To.Since(s.From)
		}
		var passed unit.Minutes
		next, spent := 0, int64(0)
		for s, session := range j.Sessions {
			passed += session.To.Since(session.From)
			first := next
			for next < len(pieces) && (s == len(j.Sessions)-1 || (2*spent+efforts[next])*int64(long) <= 2*all*int64(passed)) {
				spent += efforts[next]
				next++
			}
			t.batch(i, s, pieces[first:next])
		}
	}
}

// batch adds the pieces of one session, face by face.
func (t *teller) batch(task, session int, pieces []placed) {
	for k, p := range pieces {
		n := len(t.Batches) - 1
		if k == 0 || t.Batches[n].Face != p.face {
			t.Batches = append(t.Batches, Batch{Task: task, Session: session, Face: p.face})
			n++
		}
		t.Batches[n].Pieces = append(t.Batches[n].Pieces, p.address)
		t.Batches[n].Area += p.area
	}
}

// efforts is the work of each piece in seconds, at least one.
func (m *maker) efforts(pieces []placed) (each []int64, all int64) {
	speed, _ := m.pace(Set)
	for _, p := range pieces {
		e := int64(float64(speed.Seconds)*p.area.M2()) + 1
		if p.cut {
			e += int64(m.times(Cut, 1))
		}
		e += int64(m.times(Drill, p.holes))
		each = append(each, e)
		all += e
	}
	return each, all
}
