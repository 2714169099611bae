package report

import (
	"fmt"
	"strings"

	"dryfit/internal/calendar"
	"dryfit/internal/plan"
	"dryfit/internal/schedule"
	"dryfit/internal/unit"
)

// DayCard is one day in words.
type DayCard struct {
	Date    calendar.Date
	Title   string // "Sat, March 7"
	When    string // "today", "next", "done" or ""
	Work    []DayWork
	Waiting []string
}

// DayWork is one session in words.
type DayWork struct {
	Time  string // "8:00–11:30"
	Job   string
	Who   string
	Place string
	Part  string // "goes on until Tue, March 10", of a job of several sessions
	Notes []string
	Task  int
	Last  bool // the job ends with it
	Done  bool
}

// DayCards tells each day with work, as seen from where the rest is planned.
func DayCards(p plan.Plan) []DayCard { return DayCardsOn(p, p.Days.From.Date()) }

// DayCardsOn tells each day with work as seen on a date: the first that has work left, from that date on if there is one, is today
// or next.
func DayCardsOn(p plan.Plan, today calendar.Date) []DayCard {
	var out []DayCard
	for _, c := range p.Days.Cards {
		card := DayCard{Date: c.Date, Title: c.Date.Say()}
		open := false
		for _, w := range c.Work {
			card.Work = append(card.Work, dayWork(p, w))
			open = open || p.Days.Tasks[w.Task].State != schedule.Done
		}
		for _, i := range c.Waiting {
			w := p.Days.Waits[i]
			card.Waiting = append(card.Waiting, fmt.Sprintf("%s: %s until %s%s", p.Days.Tasks[w.After].Name, w.What, w.To.Say(), untilWords(w)))
		}
		if !open {
			card.When = "done"
		}
		out = append(out, card)
	}
	markNext(out, today)
	return out
}

func markNext(cards []DayCard, today calendar.Date) {
	next := -1
	for i, c := range cards {
		if c.When == "" && (next < 0 || cards[next].Date < today && c.Date >= today) {
			next = i
		}
	}
	switch {
	case next < 0:
	case cards[next].Date == today:
		cards[next].When = "today"
	default:
		cards[next].When = "next"
	}
}

func untilWords(w schedule.Wait) string {
	if w.Until == 0 {
		return ""
	}
	return "; what comes next begins by " + w.Until.Say()
}

func dayWork(p plan.Plan, w schedule.CardWork) DayWork {
	j := p.Days.Tasks[w.Task]
	s := j.Sessions[w.Session]
	out := DayWork{Time: clocks(s), Job: j.Name, Who: list(s.Who), Place: placeWords(j), Task: w.Task, Last: w.Session == len(j.Sessions)-1, Done: j.State == schedule.Done}
	if !out.Last {
		out.Part = "goes on until " + j.End.Say()
	}
	out.Notes = append(out.Notes, batchWords(p, w)...)
	if w.Session == 0 {
		out.Notes = append(out.Notes, taskNotes(j)...)
		out.Notes = append(out.Notes, Steps(j.Kind)...)
	}
	return out
}

func clocks(s schedule.Session) string {
	to := s.To.Time()
	if s.To.Date() > s.From.Date() && to == 0 {
		to = unit.Day
	}
	return calendar.Clock(s.From.Time()) + "–" + calendar.Clock(to)
}

func placeWords(j schedule.Task) string {
	if j.Shop {
		return "shop"
	}
	return "room"
}

// batchWords tells what is set in a session.
func batchWords(p plan.Plan, w schedule.CardWork) []string {
	var out []string
	for _, b := range p.Days.Batches {
		if b.Task == w.Task && b.Session == w.Session {
			out = append(out, fmt.Sprintf("%s, %s to %s on %s", Count(len(b.Pieces), "piece", "pieces"), b.Pieces[0], b.Pieces[len(b.Pieces)-1], b.Face))
			if mix := mixWords(p, b); mix != "" {
				out = append(out, mix)
			}
		}
	}
	return out
}

func taskNotes(j schedule.Task) []string {
	var out []string
	if j.Whole {
		out = append(out, "In one go.")
	}
	if j.Hands > 1 {
		out = append(out, fmt.Sprintf("Takes %d people.", j.Hands))
	}
	if len(j.Stops) > 0 {
		out = append(out, "Off while it is done: "+strings.Join(j.Stops, ", ")+".")
	}
	if len(j.Tools) > 0 {
		out = append(out, "Hired: "+strings.Join(j.Tools, ", ")+".")
	}
	if j.SignOff != "" {
		out = append(out, "Signed off by: "+j.SignOff+", where the local code asks for it.")
	}
	return out
}

// Steps are what is easily forgotten at a kind of job.
func Steps(k schedule.Kind) []string { return reminders[k] }

var reminders = map[schedule.Kind][]string{
	schedule.Protect:      {"Cover tub, floor and drains; close the room off against dust."},
	schedule.PressureTest: {"Before any board hides the pipes. Local codes and licensed trades decide how."},
	schedule.Board:        {"Cut outdoors or wet, with a respirator that fits. Joints stay off the corners of openings."},
	schedule.FloodTest:    {"Plug the drain, mark the water's height, look again after a day and under the floor. Nothing is tiled before."},
	schedule.DryLay:       {"Lay a row each way dry; mix tiles of all boxes for shade."},
	schedule.Set:          {"Mix tiles of all boxes. Lift the first tile and look how much of its back is covered: 80 % dry, 95 % in wet areas and under stone.", "Cut wet, no saw outdoors below freezing; prove power off before you drill."},
	schedule.ClipsOff:     {"Knock clips off along the joint; wedges and caps serve again. Rake soft mortar out of the joints."},
	schedule.Ledger:       {"Its top on the mark that the elevation shows, level. On a membrane brace it from the floor: no screw goes through."},
	schedule.PreSeal:      {"Stone is sealed before it is grouted."},
	schedule.GroutFace:    {"Leave the joints at corners and changes of plane open for sealant."},
	schedule.Seal:         {"Only when the grout is dry; the label decides."},
	schedule.Silicone:     {"Neutral cure beside stone. No water on it until it has cured."},
	schedule.GlueUp:       {"Stays in its clamps."},
	schedule.WC:           {"Heavy: lift with two. Close the water first."},
	schedule.Tap:          {"Close the water first; flush before the aerator goes on."},
	schedule.Basin:        {"Keep the slip joints of the waste where a hand reaches them."},
	schedule.WasteTest:    {"Run water through every waste and look under each joint with a dry paper."},
}
