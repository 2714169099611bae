package calendar

import (
	"cmp"
	"slices"

	"dryfit/internal/unit"
)

// A Span is a part of a day, from a minute to before another.
type Span struct{ From, To unit.Minutes }

// Week is the hours of each weekday, from Monday.
type Week [7][]Span

// Hours are the hours in which someone works.
type Hours struct {
	Week   Week
	Except []Exception // days that are not as their weekday; of two for one day the last holds
}

// An Exception is one date with hours of its own; without any it is free.
type Exception struct {
	On    Date
	Spans []Span
}

// On gives the spans of a date, ascending and apart.
func (h Hours) On(d Date) []Span {
	for i := len(h.Except) - 1; i >= 0; i-- {
		if h.Except[i].On == d {
			return Merge(h.Except[i].Spans)
		}
	}
	return Merge(h.Week[d.Weekday()])
}

// Merge joins spans that touch or overlap, and drops empty ones.
func Merge(spans []Span) []Span {
	all := slices.Clone(spans)
	slices.SortFunc(all, func(a, b Span) int { return cmp.Or(cmp.Compare(a.From, b.From), cmp.Compare(a.To, b.To)) })
	var out []Span
	for _, s := range all {
		switch last := len(out) - 1; {
		case s.From >= s.To:
		case last >= 0 && s.From <= out[last].To:
			out[last].To = max(out[last].To, s.To)
		default:
			out = append(out, s)
		}
	}
	return out
}

// Common gives the hours that two lists of spans of one day share.
func Common(a, b []Span) []Span {
	var out []Span
	for _, x := range a {
		for _, y := range b {
			if s := (Span{max(x.From, y.From), min(x.To, y.To)}); s.From < s.To {
				out = append(out, s)
			}
		}
	}
	return Merge(out)
}

// Long adds up the time of spans.
func Long(spans []Span) (sum unit.Minutes) {
	for _, s := range Merge(spans) {
		sum += s.To - s.From
	}
	return sum
}

// Stretch is a length of time from one moment to before another.
type Stretch struct{ From, To Moment }

// Between lists the working stretches that lie between two moments; what touches at midnight is one.
func (h Hours) Between(from, to Moment) []Stretch {
	var out []Stretch
	for d := from.Date(); d.At(0) < to; d++ {
		for _, s := range h.On(d) {
			w := Stretch{max(from, d.At(s.From)), min(to, d.At(s.To))}
			switch last := len(out) - 1; {
			case w.From >= w.To:
			case last >= 0 && out[last].To == w.From:
				out[last].To = w.To
			default:
				out = append(out, w)
			}
		}
	}
	return out
}
