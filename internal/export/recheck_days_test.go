package export_test

import (
	"slices"
	"time"
)

type (
	readCount struct{ Days, Least int }
	readDays  struct {
		Planned             bool
		From, Finish, Bound string
		Jobs                []readJob
		Waits               []readWait
		Chain               []struct {
			Job  int
			From *int
		}
		Trips readCount
		Hired []struct {
			Tool, From, To string
			Count          readCount
		}
		Without []struct {
			What  string
			Dates []string
			Count readCount
			Limit *int
		}
		Promises []struct {
			Name, On string
			Kept     bool
		}
		Batches []struct {
			Job, Session int
			Face         string
			Pieces       []string
			Area         square
		}
	}
	readJob struct {
		Name, Kind, Subject, State string
		Minutes, Hands             int
		Shop, Whole                bool
		Start, End, Latest         string
		Sessions                   []readSession
		Stops, Tools               []string
	}
	readSession struct {
		From, To string
		Who      []string
	}
	readWait struct {
		After                 int
		Before                *int
		What, From, To, Until string
		LabelMinutes          int
		Slower, NoWalk        bool
	}
)

// at reads a time of the wall clock.
func (r *rechecker) at(s string) time.Time {
	t, err := time.Parse("2006-01-02 15:04", s)
	if err != nil {
		if t, err = time.Parse("2006-01-02 3:04", s); err != nil {
			r.complain("%s is no time", s)
		}
	}
	return t
}

// days: hands, hours, order, waits, counts and batches of the plan of days.
func (r *rechecker) days(text topKeys) {
	var plan struct{ Days readDays }
	if err := readKeys(text, &plan); err != nil {
		r.complain("%v", err)
		return
	}
	d := plan.Days
	if !d.Planned {
		if len(d.Jobs) > 0 {
			r.complain("days that are not planned have jobs")
		}
		return
	}
	for _, j := range d.Jobs {
		r.job(d, j)
	}
	r.hands(d)
	for _, w := range d.Waits {
		r.waits(d, w)
	}
	r.ends(d)
	r.dayCounts(d)
	r.batches(d)
}

// job: its sessions make its work, in quarter hours, from its start to its end.
func (r *rechecker) job(d readDays, j readJob) {
	if len(j.Sessions) == 0 {
		r.complain("%s is never worked at", j.Name)
		return
	}
	var sum time.Duration
	for i, s := range j.Sessions {
		sum += r.at(s.To).Sub(r.at(s.From))
		if j.State != "done" && len(s.Who) != j.Hands {
			r.complain("%s takes %d hands, and has %v", j.Name, j.Hands, s.Who)
		}
		if i > 0 && r.at(s.From).Before(r.at(j.Sessions[i-1].To)) {
			r.complain("%s: sessions overlap", j.Name)
		}
	}
	first, last := j.Sessions[0], j.Sessions[len(j.Sessions)-1]
	if first.From != j.Start || last.To != j.End {
		r.complain("%s: its sessions are not from its start to its end", j.Name)
	}
	want := time.Duration((j.Minutes+14)/15*15) * time.Minute
	if j.State == "planned" && (sum != want || r.at(j.Start).Before(r.at(d.From))) || j.State == "done" && sum != time.Duration(j.Minutes)*time.Minute {
		r.complain("%s: %d minutes of work in sessions of %v", j.Name, j.Minutes, sum)
	}
	if j.State == "planned" && (r.at(j.Latest).Before(r.at(j.Start)) || r.at(j.Latest).After(r.at(d.Finish))) {
		r.complain("%s: the latest start is not between its start and the finish", j.Name)
	}
	if j.Whole && j.State == "planned" && len(j.Sessions) > 1 && r.at(last.To).Sub(r.at(first.From)) != sum && r.longHours(d, j) >= sum {
		r.complain("%s is interrupted", j.Name)
	}
}

// longHours is the longest session of anybody: what is longer can not be done in one go.
func (r *rechecker) longHours(d readDays, j readJob) (long time.Duration) {
	for _, o := range d.Jobs {
		for _, s := range o.Sessions {
			long = max(long, r.at(s.To).Sub(r.at(s.From)))
		}
	}
	return long
}

// hands: nobody is in two places.
func (r *rechecker) hands(d readDays) {
	by := map[string][]readSession{}
	for _, j := range d.Jobs {
		for _, s := range j.Sessions {
			if j.State == "done" {
				continue
			}
			for _, who := range s.Who {
				for _, o := range by[who] {
					if r.at(s.From).Before(r.at(o.To)) && r.at(o.From).Before(r.at(s.To)) {
						r.complain("%s is at %s and elsewhere", who, j.Name)
					}
				}
				by[who] = append(by[who], s)
			}
		}
	}
}

// waits: from the end of a job on, as long as said or longer, and what comes next keeps it.
func (r *rechecker) waits(d readDays, w readWait) {
	if w.After < 0 || w.After >= len(d.Jobs) || w.Before != nil && (*w.Before < 0 || *w.Before >= len(d.Jobs)) {
		r.complain("%s: no such job", w.What)
		return
	}
	after, long := d.Jobs[w.After], r.at(w.To).Sub(r.at(w.From))
	label := time.Duration(w.LabelMinutes) * time.Minute
	if w.From != after.End || long < label || w.Slower != (long > label) {
		r.complain("%s after %s: %v where %v are said", w.What, after.Name, long, label)
	}
	for _, j := range d.Jobs {
		for _, s := range j.Sessions {
			if w.NoWalk && !j.Shop && j.State == "planned" && j.Hands > 0 && r.at(s.From).Before(r.at(w.To)) && r.at(w.From).Before(r.at(s.To)) {
				r.complain("%s while nobody may be in the room", j.Name)
			}
		}
	}
	if w.Before == nil || d.Jobs[*w.Before].State == "done" {
		return
	}
	if next := d.Jobs[*w.Before]; r.at(next.Start).Before(r.at(w.To)) || w.Until != "" && r.at(next.Start).After(r.at(w.Until)) {
		r.complain("%s does not wait until %s", next.Name, w.What)
	}
}

// ends: the finish is the last end, the bound is no later, the chain leads to it through jobs that come after each other.
func (r *rechecker) ends(d readDays) {
	last := r.at(d.Jobs[0].End)
	for i, j := range d.Jobs {
		if e := r.at(j.End); e.After(last) {
			last = e
		}
		if i > 0 && r.at(j.Start).Before(r.at(d.Jobs[i-1].Start)) {
			r.complain("%s stands after one that begins later", j.Name)
		}
	}
	if !last.Equal(r.at(d.Finish)) || r.at(d.Bound).After(last) {
		r.complain("the finish is %s, the bound %s, the last job ends %v", d.Finish, d.Bound, last)
	}
	for i, l := range d.Chain {
		if i == len(d.Chain)-1 && d.Jobs[l.Job].End != d.Finish {
			r.complain("the chain does not lead to the finish")
		}
		if i > 0 && (l.From == nil || *l.From != d.Chain[i-1].Job) {
			r.complain("link %d of the chain is loose", i)
		}
	}
}

// dayCounts: dates of work, of hire and without something are counted again from the sessions.
func (r *rechecker) dayCounts(d readDays) {
	trips := map[string]bool{}
	off := map[string]map[string]bool{"water": {}, "power": {}}
	for _, j := range d.Jobs {
		for _, s := range j.Sessions {
			day := s.From[:10]
			if !j.Shop && j.Hands > 0 && j.State != "done" || !j.Shop && j.State == "done" && j.End[:10] >= d.From[:10] {
				trips[day] = true
			}
			for _, what := range j.Stops {
				if off[what] != nil {
					off[what][day] = true
				}
			}
		}
	}
	if len(trips) != d.Trips.Days || d.Trips.Least > d.Trips.Days || d.Trips.Least < 0 {
		r.complain("work in the room on %d days, said %d, at least %d", len(trips), d.Trips.Days, d.Trips.Least)
	}
	for _, h := range d.Hired {
		days := int(r.at(h.To+" 0:00").Sub(r.at(h.From+" 0:00")).Hours())/24 + 1
		if days != h.Count.Days || h.Count.Least > days {
			r.complain("%s is kept %d days, said %d, at least %d", h.Tool, days, h.Count.Days, h.Count.Least)
		}
	}
	for _, w := range d.Without {
		if len(w.Dates) != w.Count.Days || w.Count.Least > w.Count.Days || w.Limit != nil && *w.Limit < 0 {
			r.complain("without %s on %d days, said %d, at least %d", w.What, len(w.Dates), w.Count.Days, w.Count.Least)
		}
		for _, day := range w.Dates {
			if off[w.What] != nil && !off[w.What][day] {
				r.complain("%s is not off on %s", w.What, day)
			}
		}
	}
}

// batches: of each face that is still set, every piece once, in the order of setting, and its area.
func (r *rechecker) batches(d readDays) {
	set, areas := map[string][]string{}, map[string]square{}
	for _, b := range d.Batches {
		if b.Job < 0 || b.Job >= len(d.Jobs) || b.Session < 0 || b.Session >= len(d.Jobs[b.Job].Sessions) || d.Jobs[b.Job].Kind != "set" {
			r.complain("a batch on %s is set at no session", b.Face)
			continue
		}
		set[b.Face] = append(set[b.Face], b.Pieces...)
		areas[b.Face] += b.Area
	}
	for _, w := range r.plan.Tiling {
		var sum square
		for _, f := range w.Fields {
			for _, p := range f.Pieces {
				sum += p.Area
			}
		}
		if got, ok := set[w.Face]; ok && (!slices.Equal(got, w.Setting) || areas[w.Face] != sum) {
			r.complain("%s: the sessions do not set all of its pieces in order", w.Face)
		}
	}
}
