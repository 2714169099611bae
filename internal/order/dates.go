package order

import (
	"slices"

	"dryfit/internal/calendar"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/schedule"
	"dryfit/internal/takeoff"
	"dryfit/internal/unit"
)

// usedFor are the jobs that a kind of good is there for; the first of them that is planned, on any of its faces, needs it.
var usedFor = map[document.GoodKind][]schedule.Kind{
	document.Mortar: {schedule.Set}, document.CrossSpacers: {schedule.Set}, document.TeeSpacers: {schedule.Set}, document.Wedges: {schedule.Set},
	document.ClipStems: {schedule.Set}, document.ClipCaps: {schedule.Set}, document.CoreBit: {schedule.Set}, document.SawBlade: {schedule.Set},
	document.Grout: {schedule.GroutFace}, document.Sealer: {schedule.PreSeal, schedule.Seal}, document.Sealant: {schedule.Silicone}, document.BackerRod: {schedule.Silicone},
	document.BackerBoard: {schedule.Board}, document.JointTape: {schedule.Board}, document.Screws: {schedule.Board},
	document.Membrane: {schedule.Membrane}, document.Primer: {schedule.Prime}, document.Protection: {schedule.Protect}, document.Cleaner: {schedule.Clean},
	document.WoodFinish: {schedule.Coat}, document.Adhesive: {schedule.GlueUp}, document.SupplyLine: {schedule.Tap, schedule.WC}, document.WCSeal: {schedule.WC},
	document.TrapGood: {schedule.Basin}, document.Tailpiece: {schedule.Basin}, document.Escutcheon: {schedule.Basin, schedule.Tap, schedule.WC}, document.WCBolts: {schedule.WC}, document.FlangeRing: {schedule.WC},
}

// needBy is the latest start of the first job, not done yet, that takes a line: on one of its faces, else anywhere.
func needBy(days schedule.Plan, kinds []schedule.Kind, subjects []string) (by calendar.Moment, ok bool) {
	there := func(t schedule.Task) bool { return slices.Contains(subjects, t.Subject) }
	if by, ok = first(days, kinds, there); ok {
		return by, true
	}
	return first(days, kinds, func(schedule.Task) bool { return true })
}

func first(days schedule.Plan, kinds []schedule.Kind, is func(schedule.Task) bool) (by calendar.Moment, ok bool) {
	for _, t := range days.Tasks {
		if t.State != schedule.Done && slices.Contains(kinds, t.Kind) && is(t) && (!ok || t.Latest < by) {
			by, ok = t.Latest, true
		}
	}
	return by, ok
}

// facesOf are the faces that a line is for, each once.
func facesOf(l takeoff.Line) []string {
	var out []string
	for _, p := range l.Parts {
		if p.Face != "" && !slices.Contains(out, p.Face) {
			out = append(out, p.Face)
		}
	}
	return out
}

// date says by when a line is needed and has to be ordered, and tells of what comes too late.
func (m *maker) date(l *Line, kinds []schedule.Kind, subjects []string) {
	m.dateBy(l, func(Line) (calendar.Moment, bool) { return needBy(m.days, kinds, subjects) })
}

// dateBy dates a line by when it is needed.
func (m *maker) dateBy(l *Line, needed func(Line) (calendar.Moment, bool)) {
	by, ok := needed(*l)
	if !ok {
		return
	}
	l.NeedBy = by.Date().String()
	lead := calendar.Date((l.Lead + unit.Day - 1) / unit.Day)
	if !l.LeadKnown {
		return
	}
	if l.OrderedOn == "" {
		last := by.Date() - lead
		l.OrderBy = last.String()
		if last < m.days.From.Date() && lead > 0 {
			m.findings.Add(diag.Look, "order-late", l.At, "{0} should have been ordered by {1}: it comes {2} after the order, and is needed on {3}", "order it at once; until it is there other work can be done, and the days are planned anew when you say when it comes",
				diag.T(goodOr(*l)), diag.T(last.Say()), diag.T(l.Lead.String()), diag.T(by.Date().Say()))
		}
		return
	}
	if ordered, ok := calendar.ParseDate(l.OrderedOn); ok && ordered+lead > by.Date() {
		m.findings.Add(diag.Look, "delivery-late", l.At, "{0} was ordered on {1} and comes {2} later, on {3}; it is needed on {4}", "ask whether it can come sooner, or write its delivery among the days as promised",
			diag.T(goodOr(*l)), diag.T(ordered.Say()), diag.T(l.Lead.String()), diag.T((ordered + lead).Say()), diag.T(by.Date().Say()))
	}
}

func goodOr(l Line) string {
	if l.Good != "" {
		return l.Good
	}
	return l.What
}
