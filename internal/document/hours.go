package document

import (
	"regexp"
	"strings"

	"dryfit/internal/calendar"
	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// WorkHours are the hours of somebody's week, with single dates that differ.
type WorkHours struct {
	Given bool
	At    diag.Place
	Hours calendar.Hours
}

const hoursSay = "by weekday, like Saturday, Monday to Friday, weekdays or a date: hours like 8:00 to 12:00, a list of them, or none"

// workHours reads `{Monday to Friday: 18:00 to 21:00, Saturday: [8:00 to 12:00, 13:00 to 17:00], 2026-04-04: none}`.
var workHours = form[WorkHours]{
	&shape{kind: namedShape, say: hoursSay, names: "weekday", item: workSpan.shape, key: `^(?i)(` + datePattern[1:len(datePattern)-1] + `|every day|weekdays|weekends?|` + weekdayPattern + `(\s+to\s+` + weekdayPattern + `)?)$`},
	readWorkHours,
}

const weekdayPattern = `(mon|tue|tues|wed|wednes|thu|thur|thurs|fri|sat|satur|sun)(day)?`

func readWorkHours(r *reader, n *text.Node) (WorkHours, bool) {
	h := WorkHours{Given: true, At: n.At}
	if !r.want(n, text.Map, hoursSay) {
		return h, false
	}
	for _, e := range n.Entries {
		if e.Value.Kind == text.Empty {
			r.empty(e, row{name: e.Key, shape: workSpan.shape})
			continue
		}
		if isUnknown(e.Value) {
			r.unknown(e.Value, e.Key)
			continue
		}
		if spans, ok := r.daySpans(e.Value); ok {
			h.put(r, e, spans)
		}
	}
	return h, true
}

// put gives the hours to the days that an entry names.
func (h *WorkHours) put(r *reader, e text.Entry, spans []calendar.Span) {
	if d, ok := calendar.ParseDate(e.Key); ok {
		h.Hours.Except = append(h.Hours.Except, calendar.Exception{On: d, Spans: spans})
		return
	}
	first, last, ok := weekdays(e.Key)
	if !ok {
		r.stop("unknown-day", e.At, "{0} is no day", "write a weekday, two with to between them, weekdays, weekend, every day, or a date", diag.T(short(e.Key)))
		return
	}
	for w := first; ; w = (w + 1) % 7 {
		h.Hours.Week[w] = spans
		if w == last {
			return
		}
	}
}

// weekdays reads the name of a day, or of several that follow each other.
func weekdays(s string) (first, last calendar.Weekday, ok bool) {
	s = strings.ToLower(strings.Join(strings.Fields(s), " "))
	switch s {
	case "every day":
		return calendar.Monday, calendar.Sunday, true
	case "weekdays":
		return calendar.Monday, calendar.Friday, true
	case "weekend", "weekends":
		return calendar.Saturday, calendar.Sunday, true
	}
	a, b, two := strings.Cut(s, " to ")
	first, ok = weekday(a)
	last = first
	if two && ok {
		last, ok = weekday(b)
	}
	return first, last, ok
}

// weekday reads the name of a day, whole or cut short after three letters or more.
func weekday(s string) (calendar.Weekday, bool) {
	for w := calendar.Monday; w <= calendar.Sunday; w++ {
		if len(s) >= 3 && strings.HasPrefix(strings.ToLower(w.String()), s) {
			return w, true
		}
	}
	return 0, false
}

const spanPattern = `([01]?[0-9]|2[0-4])(:[0-5][0-9])?`

var spanForm = regexp.MustCompile(`^(` + spanPattern + `)\s*(?:to|-|–)\s*(` + spanPattern + `)$`)

// workSpan tells how the hours of a day are written; "none" is a day without.
var workSpan = form[calendar.Span]{list(form[calendar.Span]{shape: &shape{say: "hours: 8:00 to 12:00, or none", pattern: `^(none|` + spanPattern + `\s*(to|-|–)\s*` + spanPattern + `)$`}}).shape, nil}

// daySpans reads the hours of one day.
func (r *reader) daySpans(n *text.Node) (spans []calendar.Span, ok bool) {
	items := n.Items
	if n.Kind != text.List {
		items = []*text.Node{n}
	}
	for _, c := range items {
		if !r.want(c, text.Scalar, workSpan.shape.item.say) {
			return nil, false
		}
		if typed := strings.TrimSpace(c.Text); !strings.EqualFold(typed, "none") {
			s, why := parseSpan(typed)
			if why != "" {
				r.misread(c, workSpan.shape.item, why)
				return nil, false
			}
			spans = append(spans, s)
		}
	}
	return calendar.Merge(spans), true
}

func parseSpan(s string) (calendar.Span, string) {
	m := spanForm.FindStringSubmatch(s)
	if m == nil {
		return calendar.Span{}, "not hours of a day"
	}
	from, ok1 := calendar.ParseClock(m[1])
	to, ok2 := calendar.ParseClock(m[4])
	switch {
	case !ok1 || !ok2 || from > unit.Day || to > unit.Day:
		return calendar.Span{}, "no such time of day"
	case from >= to:
		return calendar.Span{}, "it ends before it begins; hours past midnight are written as two days"
	}
	return calendar.Span{From: from, To: to}, ""
}

// Holiday is a date, or dates from one to another, on which nobody works.
type Holiday struct{ From, To calendar.Date }

const holidayPattern = `^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])(\s+to\s+[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01]))?$`

var holiday = scalar("a date, or two with to between them: 2026-04-06 to 2026-04-10", holidayPattern, func(s string) (Holiday, string) {
	a, b, two := strings.Cut(strings.Join(strings.Fields(s), " "), " to ")
	from, ok := calendar.ParseDate(a)
	to := from
	if two && ok {
		to, ok = calendar.ParseDate(b)
	}
	switch {
	case !ok:
		return Holiday{}, "not a date"
	case to < from:
		return Holiday{}, "the last day is before the first"
	case to-from > 366:
		return Holiday{}, "more than a year"
	}
	return Holiday{from, to}, ""
})
