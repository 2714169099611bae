package export

import (
	"dryfit/internal/calendar"
	"dryfit/internal/plan"
	"dryfit/internal/schedule"
)

// moment is a date and a time of day on the wall clock.
type moment = string

// days is the plan of days.
type days struct {
	Planned  bool       `json:"planned" doc:"false: the document says nothing of days, or no plan was found; then the rest is empty"`
	From     moment     `json:"from,omitempty" doc:"the rest is planned from here: date and time of day on the wall clock, as all times of the days"`
	Finish   moment     `json:"finish,omitempty" doc:"the last job is done"`
	Bound    moment     `json:"bound,omitempty" doc:"proven: no plan finishes earlier"`
	Jobs     []dayJob   `json:"jobs" doc:"by start"`
	Waits    []dayWait  `json:"waits" doc:"what hardens, dries or stands, on the clock"`
	Chain    []dayLink  `json:"chain" doc:"why it does not finish earlier, from the first job to the last"`
	Trips    dayCount   `json:"trips" doc:"days with work in the room, from here on"`
	Hired    []dayHire  `json:"hired" doc:"tools that cost by the day"`
	Without  []dayLack  `json:"without" doc:"days on which something is missing"`
	Promises []dayDate  `json:"promises" doc:"dates that can not be moved"`
	Batches  []dayBatch `json:"batches" doc:"what is set in each session"`
}

// dayCount is a number of days.
type dayCount struct {
	Days  int `json:"days" doc:"in the plan"`
	Least int `json:"least" doc:"proven for this finish and what goes before it"`
}

// dayJob is one job.
type dayJob struct {
	Name     string       `json:"name" doc:"stable; done marks and other jobs refer to it"`
	Kind     string       `json:"kind" doc:"the kind of job; own: the user's own"`
	Subject  string       `json:"subject,omitempty" doc:"the face, the opening or the thing"`
	At       place        `json:"at" doc:"in the document"`
	State    dayState     `json:"state" doc:"how far it is"`
	Minutes  int64        `json:"minutes" doc:"of work"`
	Hands    int          `json:"hands" doc:"people that it takes"`
	Shop     bool         `json:"shop" doc:"it is done outside of the room"`
	Whole    bool         `json:"whole" doc:"it is not interrupted"`
	Start    moment       `json:"start" doc:"it begins"`
	End      moment       `json:"end" doc:"it ends"`
	Latest   moment       `json:"latest" doc:"a start so late, of this one job, still allows the finish"`
	Sessions []daySession `json:"sessions" doc:"stretches of work without a pause"`
	Stops    []string     `json:"stops" doc:"what is off while it is done"`
	SignOff  string       `json:"signOff,omitempty" doc:"who must look at it"`
	Tools    []string     `json:"tools" doc:"hired for it"`
}

type dayState string

func (dayState) choices() []string {
	return []string{schedule.Planned.String(), schedule.Begun.String(), schedule.Done.String()}
}

// daySession is one stretch of work.
type daySession struct {
	From moment   `json:"from" doc:"it begins"`
	To   moment   `json:"to" doc:"it ends"`
	Who  []string `json:"who" doc:"who works"`
}

// dayWait is what runs on the clock.
type dayWait struct {
	After   int    `json:"after" doc:"index of the job that it follows"`
	Before  *int   `json:"before,omitempty" doc:"index of the first job that waits for it; absent: none, it keeps all out of the room"`
	What    string `json:"what" doc:"in words"`
	From    moment `json:"from" doc:"it begins"`
	To      moment `json:"to" doc:"what comes next begins no earlier"`
	Until   moment `json:"until,omitempty" doc:"what comes next begins no later"`
	Minutes int64  `json:"labelMinutes" doc:"what the label, or the typical figure, says"`
	Source  string `json:"source" doc:"who says it"`
	Slower  bool   `json:"slower" doc:"the room is colder than the label supposes, so it takes longer"`
	NoWalk  bool   `json:"noWalk" doc:"nobody may be in the room"`
}

// dayLink is one link of the chain of causes.
type dayLink struct {
	Job  int    `json:"job" doc:"index"`
	Why  string `json:"why" doc:"in words"`
	From *int   `json:"from,omitempty" doc:"index of the job that it waits for"`
}

// dayHire is a hired tool.
type dayHire struct {
	Tool  string   `json:"tool" doc:"the user's name of it"`
	From  string   `json:"from" doc:"first date"`
	To    string   `json:"to" doc:"last date"`
	Count dayCount `json:"count" doc:"days that it is kept"`
}

// dayLack is what is missing.
type dayLack struct {
	What  string   `json:"what" doc:"WC, water or power"`
	Dates []string `json:"dates" doc:"on which it is missing"`
	Count dayCount `json:"count" doc:"how many"`
	Limit *int     `json:"limit,omitempty" doc:"how many were wanted at most"`
}

// dayDate is a promised date.
type dayDate struct {
	Name string `json:"name" doc:"the user's"`
	On   moment `json:"on" doc:"when it is"`
	Kept bool   `json:"kept" doc:"what comes before it is done by then, and what waits for it comes later"`
}

// dayBatch is what is set in a session.
type dayBatch struct {
	Job     int      `json:"job" doc:"index"`
	Session int      `json:"session" doc:"index among the job's"`
	Face    string   `json:"face" doc:"name"`
	Pieces  []string `json:"pieces" doc:"addresses in the order of setting"`
	Area    area     `json:"area" doc:"of the pieces"`
}

func daysOf(p plan.Plan, why []string) days {
	d := p.Days
	out := days{Planned: d.Planned, Trips: dayCount(d.Trips)}
	if d.Planned {
		out.From, out.Finish, out.Bound = d.From.String(), d.Finish.String(), d.Bound.String()
	}
	out.Jobs, out.Waits = list(d.Tasks, jobOf), list(d.Waits, waitOf)
	out.Chain = []dayLink{}
	for i, l := range d.Chain {
		out.Chain = append(out.Chain, dayLink{l.Task, why[i], index(l.From)})
	}
	out.Hired = list(d.Hires, func(h schedule.Hire) dayHire {
		return dayHire{h.Tool, h.From.String(), h.To.String(), dayCount(h.Count)}
	})
	out.Without = list(d.Lacks, func(l schedule.Lack) dayLack {
		return dayLack{l.What, list(l.Dates, calendar.Date.String), dayCount(l.Count), index(l.Limit)}
	})
	out.Promises = list(d.Promises, func(q schedule.Promise) dayDate { return dayDate{q.Name, q.On.String(), q.Kept} })
	out.Batches = list(d.Batches, func(b schedule.Batch) dayBatch { return dayBatch{b.Task, b.Session, b.Face, b.Pieces, area(b.Area)} })
	return out
}

// index is none where it is negative.
func index(i int) *int {
	if i < 0 {
		return nil
	}
	return &i
}

func jobOf(t schedule.Task) dayJob {
	return dayJob{t.Name, string(t.Kind), t.Subject, placeOf(t.At), dayState(t.State.String()), int64(t.Work), t.Hands, t.Shop, t.Whole,
		t.Start.String(), t.End.String(), t.Latest.String(), list(t.Sessions, func(s schedule.Session) daySession {
			return daySession{s.From.String(), s.To.String(), list(s.Who, same)}
		}), list(t.Stops, same), t.SignOff, list(t.Tools, same)}
}

func same(s string) string { return s }

func waitOf(w schedule.Wait) dayWait {
	out := dayWait{After: w.After, Before: index(w.Before), What: w.What, From: w.From.String(), To: w.To.String(), Minutes: int64(w.Label.Time), Source: w.Source, Slower: w.Slower, NoWalk: w.NoWalk}
	if w.Until > 0 {
		out.Until = w.Until.String()
	}
	return out
}
