package sheet

import (
	"fmt"

	"dryfit/internal/calendar"
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/plan"
	"dryfit/internal/schedule"
	"dryfit/internal/typeset"
	"dryfit/internal/unit"
)

// barChart draws jobs against days: a job fills the days on which it is worked at, what hardens after it is a thinner bar
// of its own, to the hour.
type barChart struct {
	p     plan.Plan
	box   draw.Box
	names draw.Um // width of the jobs' names
	day   draw.Um
	from  calendar.Date
	days  int
}

const (
	leastDay = 3200 // of paper: seven hold a date
	mostDay  = 9 * draw.MM
	barHead  = 6 * draw.MM // for the dates
	barRoom  = 1200        // between the lines of two jobs' names
	workHigh = 2600
	waitHigh = 1400
)

// barRow is one job, or one promised date.
type barRow struct {
	task  int // -1: a promise
	at    calendar.Moment
	lines []string
	high  draw.Um
}

func barRows(p plan.Plan, names draw.Um) []barRow {
	var out []barRow
	add := func(r barRow, name string) {
		r.lines = typeset.Wrap(name, parts.Small, false, names-draw.MM)
		r.high = draw.Um(len(r.lines))*typeset.Leading(parts.Small) + barRoom
		out = append(out, r)
	}
	for _, q := range p.Days.Promises {
		add(barRow{task: -1, at: q.On}, q.Name)
	}
	for i, t := range p.Days.Tasks {
		add(barRow{task: i, at: t.Start}, t.Name)
	}
	return out
}

// nameWidth is what the longest name takes, and at most two fifths of the width.
func nameWidth(p plan.Plan, wide draw.Um) draw.Um {
	var most draw.Um
	for _, t := range p.Days.Tasks {
		most = max(most, typeset.Width(t.Name, parts.Small, false))
	}
	return min(most+2*draw.MM, wide*2/5)
}

// span is the days that the plan covers.
func span(d schedule.Plan) (from calendar.Date, days int) {
	from = d.Tasks[0].Start.Date()
	to := (d.Finish - 1).Date()
	for _, w := range d.Waits {
		to = max(to, (w.To - 1).Date())
	}
	return from, int(to-from) + 1
}

// bars puts the chart on as many sheets as its jobs and days take.
func (b *book) bars() {
	like := leaf{title: "Days", detail: "Bar chart", paper: b.paper.Paper}
	from, days := span(b.p.Days)
	for days > 0 {
		f := b.writer(like)
		names := nameWidth(b.p, f.room.W())
		n := min(days, int((f.room.W()-names)/leastDay))
		rows := barRows(b.p, names)
		for len(rows) > 0 {
			f.barKey()
			c := barChart{p: b.p, box: f.room, names: names, from: from, days: n}
			c.day = min(mostDay, (c.box.W()-names)/draw.Um(n))
			fit := c.fits(rows)
			f.now.add(c.items(rows[:fit])...)
			if rows = rows[fit:]; len(rows) > 0 {
				f.turn()
			}
		}
		from, days = from+calendar.Date(n), days-n
	}
}

func (f *flow) barKey() {
	f.key([]parts.Entry{
		{Pen: draw.Line(draw.Fine), Fill: barFill(schedule.Task{}), Text: "work that may not be late"},
		{Pen: draw.Line(draw.Fine), Fill: barFill(schedule.Task{Slack: 1}), Text: "work that can wait a little"},
		{Pen: draw.Line(draw.Fine), Fill: barFill(schedule.Task{State: schedule.Done}), Text: "done"},
		{Pen: draw.Line(draw.Fine), Fill: waitFill, Text: "hardens or dries, on the clock"},
		{Pen: draw.Line(draw.Normal), Fill: walkFill, Text: "nobody may be in the room"},
		{Pen: nowPen, Line: true, Text: "planned from here"},
	})
}

func barFill(t schedule.Task) draw.Fill {
	switch {
	case t.State == schedule.Done:
		return draw.Fill{On: true, Color: draw.White}
	case t.Slack == 0:
		return draw.Fill{On: true, Color: draw.Black}
	}
	return draw.Fill{On: true, Color: draw.SkyBlue}
}

var (
	waitFill = draw.Fill{On: true, Color: draw.Pale}
	walkFill = draw.Fill{On: true, Color: draw.Gray}
	nowPen   = draw.Pen{Width: draw.Wide, Dash: draw.Dashed, Color: draw.Vermilion}
)

// fits is how many rows the box holds; one at least.
func (c barChart) fits(rows []barRow) int {
	y := barHead
	for i, r := range rows {
		if y += r.high; y > c.box.H() && i > 0 {
			return i
		}
	}
	return len(rows)
}

// x is where a moment stands, held within the days drawn.
func (c barChart) x(m calendar.Moment) draw.Um {
	minutes := min(max(m.Since(c.from.At(0)), 0), unit.Minutes(c.days)*unit.Day)
	return c.left() + draw.Um(int64(minutes)*int64(c.day)/int64(unit.Day))
}

func (c barChart) left() draw.Um  { return c.box.Lo.X + c.names }
func (c barChart) right() draw.Um { return c.left() + draw.Um(c.days)*c.day }

func (c barChart) items(rows []barRow) []draw.Item {
	top := c.box.Hi.Y - barHead
	bottom := top
	for _, r := range rows {
		bottom -= r.high
	}
	out := c.grid(top, bottom)
	y := top
	for _, r := range rows {
		out = append(out, c.row(r, y)...)
		y -= r.high
	}
	if from := c.p.Days.From; from.Date() >= c.from && int(from.Date()-c.from) < c.days {
		out = append(out, draw.Stroke(nowPen, draw.At(c.x(from), top), draw.At(c.x(from), bottom)))
	}
	return out
}

// grid has a line for each day, a heavier one with its date for each Monday.
func (c barChart) grid(top, bottom draw.Um) []draw.Item {
	var out []draw.Item
	free := c.left() // where the next date may begin
	for i := range c.days + 1 {
		d := c.from + calendar.Date(i)
		x := c.left() + draw.Um(i)*c.day
		pen := draw.Pen{Width: draw.Fine, Color: draw.Pale}
		if d.Weekday() == calendar.Monday || i == 0 {
			pen = draw.Pen{Width: draw.Fine, Color: draw.Gray}
			word := dateWord(d)
			if wide := typeset.Width(word, parts.Small, false); x >= free && x+wide <= c.right() && c.roomForDate(i, wide) {
				out = append(out, draw.Text{Class: "date", At: draw.At(x, top+1500), Size: parts.Small, Body: word})
				free = x + wide + draw.MM
			}
		}
		out = append(out, draw.Stroke(pen, draw.At(x, top), draw.At(x, bottom)))
	}
	return out
}

// roomForDate: the first day's date gives way where a Monday's would run into it.
func (c barChart) roomForDate(i int, wide draw.Um) bool {
	if i > 0 {
		return true
	}
	toMonday := (7 - int(c.from.Weekday())) % 7
	return toMonday == 0 || draw.Um(toMonday)*c.day > wide+draw.MM
}

func dateWord(d calendar.Date) string {
	_, m, day := d.Civil()
	return fmt.Sprintf("%s %d", [...]string{"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"}[m-1], day)
}

func (c barChart) row(r barRow, top draw.Um) []draw.Item {
	out := []draw.Item{draw.Stroke(draw.Pen{Width: draw.Fine, Color: draw.Pale}, draw.At(c.box.Lo.X, top-r.high), draw.At(c.right(), top-r.high))}
	y := top - (r.high-draw.Um(len(r.lines)-1)*typeset.Leading(parts.Small)+parts.Small)/2
	for _, line := range r.lines {
		out = append(out, draw.Text{Class: "job", At: draw.At(c.box.Lo.X, y), Size: parts.Small, Body: line})
		y -= typeset.Leading(parts.Small)
	}
	middle := top - r.high/2
	if r.task < 0 {
		return append(out, c.diamond(r.at, middle)...)
	}
	out = append(out, c.hardening(r.task, middle)...)
	return append(out, c.work(r.task, middle)...)
}

// diamond marks a date that is promised.
func (c barChart) diamond(at calendar.Moment, y draw.Um) []draw.Item {
	if at.Date() < c.from || int(at.Date()-c.from) >= c.days {
		return nil
	}
	const r = 1300
	x := c.x(at)
	ring := []draw.XY{draw.At(x-r, y), draw.At(x, y-r), draw.At(x+r, y), draw.At(x, y+r)}
	return []draw.Item{draw.Path{Class: "promise", Rings: [][]draw.XY{ring}, Closed: true, Pen: draw.Line(draw.Fine), Fill: draw.Fill{On: true, Color: draw.Vermilion}}}
}

// work fills the days on which a job is worked at; days in a row are one bar.
func (c barChart) work(task int, y draw.Um) []draw.Item {
	t := c.p.Days.Tasks[task]
	var out []draw.Item
	first, last := calendar.Date(0), calendar.Date(-1)
	bar := func() {
		lo, hi := c.x(first.At(0)), c.x(last.At(unit.Day))
		if last >= first && hi > lo {
			p := draw.Rect(draw.Span(lo, y-workHigh/2, hi, y+workHigh/2), draw.Line(draw.Fine), barFill(t))
			p.Class, p.Title = "work", t.Name+", "+t.Start.Say()+" to "+t.End.Say()
			out = append(out, p)
		}
	}
	for _, s := range t.Sessions {
		if d := s.From.Date(); last < first || d > last+1 {
			bar()
			first, last = d, d
		} else {
			last = d
		}
	}
	bar()
	return out
}

// hardening is what runs on the clock after a job, the longest of it; what keeps all out of the room is drawn over it.
func (c barChart) hardening(task int, y draw.Um) []draw.Item {
	var out []draw.Item
	for _, alone := range []bool{false, true} {
		var from, to calendar.Moment
		for _, w := range c.p.Days.Waits {
			if w.After == task && w.NoWalk == alone && w.To > to {
				from, to = w.From, w.To
			}
		}
		lo, hi := c.x(from), c.x(to)
		if hi <= lo {
			continue
		}
		fill, pen := waitFill, draw.Line(draw.Fine)
		if alone {
			fill, pen = walkFill, draw.Line(draw.Normal)
		}
		p := draw.Rect(draw.Span(lo, y-waitHigh/2, hi, y+waitHigh/2), pen, fill)
		p.Class, p.Title = "hardens", c.p.Days.Tasks[task].Name+": until "+to.Say()
		out = append(out, p)
	}
	return out
}

// BarsOnScreen draws the whole chart on one page, for a screen. False where no days are planned.
func BarsOnScreen(p plan.Plan) (draw.Page, bool) {
	if !p.Days.Planned {
		return draw.Page{}, false
	}
	const day, margin = 5 * draw.MM, 2 * draw.MM
	from, days := span(p.Days)
	names := nameWidth(p, 150*draw.MM)
	rows := barRows(p, names)
	high := barHead
	for _, r := range rows {
		high += r.high
	}
	c := barChart{p: p, names: names, day: day, from: from, days: days}
	c.box = draw.Span(margin, margin, margin+names+draw.Um(days)*day, margin+high)
	return draw.Page{Title: "Jobs against days", W: c.box.Hi.X + margin, H: c.box.Hi.Y + margin, Items: c.items(rows)}, true
}
