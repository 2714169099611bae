package schedule

import (
	"fmt"
	"slices"

	"dryfit/internal/calendar"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// wrong looks for a fault in a plan, knowing only the document and what the plan says of itself.
func wrong(d document.Days, p Plan) string {
	if !p.Planned {
		return ""
	}
	for _, look := range []func(document.Days, Plan) string{wrongHours, wrongPeople, wrongWork, wrongWaits, wrongSpace, wrongCards, wrongLacks} {
		if bad := look(d, p); bad != "" {
			return bad
		}
	}
	return ""
}

func hoursOf(d document.Days, name string) calendar.Hours {
	base := usualHours
	if d.Hours.Given {
		base = d.Hours.Hours
	}
	for _, h := range d.Hands {
		if h.Name == name && h.Hours.Given {
			return h.Hours.Hours
		}
	}
	return base
}

// wrongHours: who works has hours then, and no holiday.
func wrongHours(d document.Days, p Plan) string {
	for _, t := range p.Tasks {
		for _, s := range t.Sessions {
			for _, who := range s.Who {
				spans := hoursOf(d, who).On(s.From.Date())
				if !slices.ContainsFunc(spans, func(h calendar.Span) bool { return h.From <= s.From.Time() && s.To <= s.From.Date().At(h.To) }) {
					return fmt.Sprintf("%s: %s has no hours from %s to %s", t.Name, who, s.From, s.To)
				}
				for _, f := range d.Holidays {
					if f.From <= s.From.Date() && s.From.Date() <= f.To {
						return t.Name + " on a holiday"
					}
				}
			}
		}
	}
	return ""
}

// wrongPeople: nobody is at two tasks at once, and each session has its hands.
func wrongPeople(_ document.Days, p Plan) string {
	type stay struct {
		task string
		s    Session
	}
	by := map[string][]stay{}
	for _, t := range p.Tasks {
		if t.State == Done {
			continue
		}
		for _, s := range t.Sessions {
			if len(s.Who) != t.Hands {
				return fmt.Sprintf("%s takes %d hands, %v are there at %s", t.Name, t.Hands, s.Who, s.From)
			}
			for _, who := range s.Who {
				for _, o := range by[who] {
					if s.From < o.s.To && o.s.From < s.To {
						return fmt.Sprintf("%s is at %s and %s", who, t.Name, o.task)
					}
				}
				by[who] = append(by[who], stay{t.Name, s})
			}
		}
	}
	return ""
}

// wrongWork: the sessions add up to the work, rounded up to quarter hours, and lie between start and end.
func wrongWork(_ document.Days, p Plan) string {
	for _, t := range p.Tasks {
		if t.State != Planned {
			continue
		}
		var sum unit.Minutes
		for _, s := range t.Sessions {
			sum += s.To.Since(s.From)
			if s.From < p.From || s.From < t.Start || s.To > t.End {
				return t.Name + " is worked on outside of its time"
			}
		}
		if want := (t.Work + 14) / 15 * 15; sum != want && t.Work > 0 {
			return fmt.Sprintf("%s: %v of work in sessions of %v", t.Name, t.Work, sum)
		}
		if t.Latest < t.Start || t.Latest.Plus(0) > p.Finish || t.End > p.Finish {
			return t.Name + " and the finish do not agree"
		}
	}
	if p.Bound > p.Finish || p.Optimal != (p.Bound == p.Finish) {
		return "the bound lies"
	}
	return ""
}

// wrongWaits: what waits begins neither before its time nor after its window, but for what has happened.
func wrongWaits(_ document.Days, p Plan) string {
	for _, w := range p.Waits {
		if w.To.Since(w.From) < w.Label.Time {
			return w.What + " less than the label says"
		}
		if w.Before < 0 || p.Tasks[w.Before].State == Done {
			continue
		}
		if t := p.Tasks[w.Before]; t.Start < w.To || w.Until > 0 && t.Start > w.Until {
			return fmt.Sprintf("%s begins at %s; %s from %s to %s, until %s", t.Name, t.Start, w.What, w.From, w.To, w.Until)
		}
	}
	return ""
}

// wrongSpace: not more people in the room than it holds, and nobody while none may walk in it.
func wrongSpace(d document.Days, p Plan) string {
	for _, t := range p.Tasks {
		if t.Shop || t.State != Planned {
			continue
		}
		for _, s := range t.Sessions {
			n := 0
			for _, o := range p.Tasks {
				for _, os := range o.Sessions {
					if !o.Shop && o.State == Planned && os.From <= s.From && s.From < os.To {
						n += min(o.Hands, d.RoomFor.Or(2))
					}
				}
			}
			if n > d.RoomFor.Or(2) {
				return fmt.Sprintf("%d people in the room at %s", n, s.From)
			}
			for _, w := range p.Waits {
				if w.NoWalk && w.Label.Time > 0 && t.Hands > 0 && s.From < w.To && w.From < s.To {
					return t.Name + " while nobody may walk in the room"
				}
			}
		}
	}
	return ""
}

// wrongCards: every session is on one card.
func wrongCards(_ document.Days, p Plan) string {
	seen := map[CardWork]bool{}
	for _, c := range p.Cards {
		for _, w := range c.Work {
			if seen[w] || p.Tasks[w.Task].Sessions[w.Session].From.Date() != c.Date {
				return "a session on two cards"
			}
			seen[w] = true
		}
	}
	for i, t := range p.Tasks {
		for s := range t.Sessions {
			if !seen[CardWork{i, s}] {
				return t.Name + " is on no card"
			}
		}
	}
	return ""
}

// wrongLacks: each job's days without something are among those told, and as many are counted as are told.
func wrongLacks(_ document.Days, p Plan) string {
	told := map[string]Lack{}
	for _, l := range p.Lacks {
		told[l.What] = l
		if len(l.Dates) != l.Count.Days || l.Count.Least > l.Count.Days {
			return fmt.Sprintf("%s: %d dates, counted %+v", l.What, len(l.Dates), l.Count)
		}
	}
	for _, t := range p.Tasks {
		for _, what := range t.Stops {
			if l, ok := told[what]; what != "WC" && t.End > t.Start && t.Started == (t.State == Done) && (!ok || !slices.Contains(l.Dates, t.Start.Date())) {
				return fmt.Sprintf("%s takes %s on a day that is not told", t.Name, what)
			}
		}
	}
	return ""
}
