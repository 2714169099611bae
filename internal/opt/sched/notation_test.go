package sched

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// parse reads a problem in one line:
//
//	h=40            horizon
//	m=2 m=0,8:2     a resource with its levels: 2 always; 0 and from tick 8 on 2
//	w=0-8,24-32     a calendar with its spans
//	d=0,24,48       days
//	A3 A3/w A3/w!   a job of 3 ticks: on the clock, on calendar w, whole
//	A3:m2 A3:m2~    holds 2 of m, also in pauses
//	A3[4,9] A3@5    not before 4, not after 9 (0: open); fixed at 5
//	A>B A>B+3       B starts 0, or 3, or more after the end of A
//	A>B<4           B starts at most 4 after the end of A
//	used=A,B span=A goals
//	used<2=A,B span<1=A limits
func parse(tb testing.TB, line string) *Problem {
	tb.Helper()
	n := notation{tb: tb, p: &Problem{Horizon: 60}}
	for _, w := range strings.Fields(line) {
		n.name(w)
	}
	for _, w := range strings.Fields(line) {
		n.word(w)
	}
	return n.p
}

type notation struct {
	tb                         testing.TB
	p                          *Problem
	jobs, resources, calendars []string
}

var (
	jobForm = regexp.MustCompile(`^([A-Z])(\d+)(?:/([a-z])(!?))?((?::[a-z]\d+~?)*)(?:\[(\d+),(\d+)\])?(?:@(\d+))?$`)
	lagForm = regexp.MustCompile(`^([A-Z])>([A-Z])(?:([+<])(-?\d+))?$`)
	useForm = regexp.MustCompile(`:([a-z])(\d+)(~?)`)
)

func (n *notation) name(w string) {
	key, value, set := strings.Cut(w, "=")
	switch {
	case !set && jobForm.MatchString(w):
		n.jobs = append(n.jobs, w[:1])
	case len(key) != 1 || key == "h" || key == "d":
	case strings.Contains(value, "-"):
		n.calendars = append(n.calendars, key)
	default:
		n.resources = append(n.resources, key)
	}
}

func (n *notation) word(w string) {
	key, value, set := strings.Cut(w, "=")
	switch {
	case key == "h":
		n.p.Horizon = n.number(value)
	case key == "d":
		n.p.Days = n.numbers(value)
	case strings.Contains(key, "<") && set:
		kind, most, _ := strings.Cut(key, "<")
		n.p.Limits = append(n.p.Limits, Limit{Goal{map[string]GoalKind{"used": DaysUsed, "span": DaysSpanned}[kind], n.indices(value)}, n.number(most)})
	case key == "used":
		n.p.Goals = append(n.p.Goals, Goal{DaysUsed, n.indices(value)})
	case key == "span":
		n.p.Goals = append(n.p.Goals, Goal{DaysSpanned, n.indices(value)})
	case set && strings.Contains(value, "-"):
		n.p.Calendars = append(n.p.Calendars, n.calendar(value))
	case set:
		n.p.Resources = append(n.p.Resources, n.levels(value))
	case jobForm.MatchString(w):
		n.p.Jobs = append(n.p.Jobs, n.job(jobForm.FindStringSubmatch(w)))
	default:
		n.lag(w)
	}
}

func (n *notation) job(f []string) Job {
	j := Job{Duration: n.number(f[2]), Calendar: Clock, Whole: f[4] != ""}
	if f[3] != "" {
		j.Calendar = slices.Index(n.calendars, f[3])
	}
	for _, u := range useForm.FindAllStringSubmatch(f[5], -1) {
		j.Uses = append(j.Uses, Use{slices.Index(n.resources, u[1]), n.number(u[2]), u[3] != ""})
	}
	if f[6] != "" {
		j.Release, j.Due = n.number(f[6]), n.number(f[7])
	}
	if f[8] != "" {
		j.Fixed, j.Start = true, n.number(f[8])
	}
	return j
}

func (n *notation) lag(w string) {
	f := lagForm.FindStringSubmatch(w)
	if f == nil {
		n.tb.Fatalf("no such word: %s", w)
	}
	from, to := End(slices.Index(n.jobs, f[1])), Start(slices.Index(n.jobs, f[2]))
	l := AtLeast(from, to, 0)
	switch f[3] {
	case "+":
		l = AtLeast(from, to, n.number(f[4]))
	case "<":
		l = AtMost(from, to, n.number(f[4]))
	}
	n.p.Lags = append(n.p.Lags, l)
}

func (n *notation) calendar(s string) Calendar {
	var c Calendar
	for _, w := range strings.Split(s, ",") {
		from, to, _ := strings.Cut(w, "-")
		c = append(c, Span{n.number(from), n.number(to)})
	}
	return c
}

func (n *notation) levels(s string) Resource {
	var r Resource
	for i, w := range strings.Split(s, ",") {
		from, amount, two := strings.Cut(w, ":")
		if i == 0 && !two {
			from, amount = "0", w
		}
		r = append(r, Level{n.number(from), n.number(amount)})
	}
	return r
}

func (n *notation) indices(s string) []int {
	var out []int
	for _, w := range strings.Split(s, ",") {
		out = append(out, slices.Index(n.jobs, w))
	}
	return out
}

func (n *notation) numbers(s string) []int {
	var out []int
	for _, w := range strings.Split(s, ",") {
		out = append(out, n.number(w))
	}
	return out
}

func (n *notation) number(s string) int {
	v, err := strconv.Atoi(s)
	if err != nil {
		n.tb.Fatal(err)
	}
	return v
}
