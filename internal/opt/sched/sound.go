package sched

// MaxHorizon keeps every sum of times within reach and every table of ticks within memory: 11 years of 15 minutes.
const MaxHorizon = 400_000

// flaw is the first thing about the problem that has no meaning.
func (p *Problem) flaw() Trouble {
	if p.Horizon < 0 || p.Horizon > MaxHorizon {
		return Trouble{Kind: BadHorizon}
	}
	for i, r := range p.Resources {
		if !r.sound() {
			return Trouble{Kind: BadResource, Item: i}
		}
	}
	for i, c := range p.Calendars {
		if !c.sound() {
			return Trouble{Kind: BadCalendar, Item: i}
		}
	}
	for i := range p.Jobs {
		if !p.jobSound(&p.Jobs[i]) {
			return Trouble{Kind: BadJob, Jobs: []int{i}}
		}
	}
	for i, l := range p.Lags {
		if !p.has(l.From.Job) || !p.has(l.To.Job) || max(l.Ticks, -l.Ticks) > MaxHorizon {
			return Trouble{Kind: BadLag, Lags: []int{i}}
		}
	}
	return p.goalFlaw()
}

func (p *Problem) has(job int) bool { return job >= 0 && job < len(p.Jobs) }

func (p *Problem) goalFlaw() Trouble {
	if len(p.Goals)+len(p.Limits) > 0 && len(p.Days) == 0 || len(p.Days) > 0 && p.Days[0] != 0 {
		return Trouble{Kind: BadDays}
	}
	for i := 1; i < len(p.Days); i++ {
		if p.Days[i] <= p.Days[i-1] {
			return Trouble{Kind: BadDays, Item: i}
		}
	}
	for i, g := range p.Goals {
		if !p.goalSound(g) {
			return Trouble{Kind: BadGoal, Item: i}
		}
	}
	for i, l := range p.Limits {
		if l.Most < 0 || !p.goalSound(l.Goal) {
			return Trouble{Kind: BadLimit, Item: i}
		}
	}
	return Trouble{}
}

func (p *Problem) goalSound(g Goal) bool {
	for _, j := range g.Jobs {
		if !p.has(j) {
			return false
		}
	}
	return g.Kind <= DaysSpanned
}

func (p *Problem) jobSound(j *Job) bool {
	for _, u := range j.Uses {
		if u.Resource < 0 || u.Resource >= len(p.Resources) || u.Amount < 0 || u.Amount > maxAmount {
			return false
		}
	}
	return j.Duration >= 0 && j.Duration <= MaxHorizon && j.Release >= 0 && j.Due >= 0 && j.Start >= 0 &&
		j.Calendar >= Clock && j.Calendar < len(p.Calendars)
}

// maxAmount keeps sums over jobs and ticks far from overflow.
const maxAmount = 1 << 30

func (r Resource) sound() bool {
	for i, l := range r {
		if l.Amount < 0 || l.Amount > maxAmount || l.From < 0 || i > 0 && l.From <= r[i-1].From {
			return false
		}
	}
	return true
}

func (c Calendar) sound() bool {
	for i, s := range c {
		if s.From < 0 || s.To <= s.From || i > 0 && s.From < c[i-1].To {
			return false
		}
	}
	return true
}
