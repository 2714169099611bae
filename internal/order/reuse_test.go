package order

import (
	"fmt"
	"testing"

	"dryfit/internal/calendar"
	"dryfit/internal/cut"
	"dryfit/internal/document"
	"dryfit/internal/schedule"
	"dryfit/internal/takeoff"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// Three walls are set on three days with 120, 90 and 60 clips and as many wedges: stems 270, whatever comes; caps and wedges 120 if a day is stripped
// before the next is set, 210 if it overlaps one, 270 if two. A wall that is set already has its own, and then all are counted.
func TestWhatComesBackServesAgain(t *testing.T) {
	doc, _ := document.Read("n", []byte("dryfit: 1\nname: n\nunits: in\ngoods:\n  stems: {kind: clip stems, packs: {each: 0.10}}\n  caps: {kind: clip caps, packs: {each: 0.50}}\n  wedges: {kind: wedges, packs: {each: 0.05}}\nbuying: {currency: USD}\n"))
	needed := takeoff.Plan{Lines: []takeoff.Line{
		{Kind: document.ClipStems, What: "clip stems", Good: "stems", Known: true},
		{Kind: document.ClipCaps, What: "clip caps", Good: "caps", Known: true, Back: true},
		{Kind: document.Wedges, What: "wedges", Good: "wedges", Known: true, Back: true},
	}}
	for i, n := range []int{120, 90, 60} {
		face := fmt.Sprintf("wall %d", i)
		for k := range needed.Lines {
			needed.Lines[k].Need = unit.Count(int(needed.Lines[k].Need.N) + n)
			needed.Lines[k].Parts = append(needed.Lines[k].Parts, takeoff.Part{Face: face, Takes: unit.Count(n), Known: true})
		}
		needed.Pieces = append(needed.Pieces, takeoff.Piece{Face: face, Address: "1-1", Clips: n})
	}
	for overlap, want := range []int64{120, 210, 270} {
		for _, done := range []bool{false, true} {
			p, _, _ := Make(doc, tiling.Plan{}, cut.Plan{}, needed, threeWalls(overlap, done))
			most := want
			if done {
				most = 270
			}
			for k, n := range []int64{270, most, most} {
				if l := p.Lines[k]; l.Need.N != n || l.Reused != (n < 270) || l.Reused && l.InAll.N != 270 || l.Packs[0].Count != int(n) {
					t.Errorf("overlapping %d, one done %v: %d %s of %v, want %d", overlap, done, l.Need.N, l.What, l.InAll, n)
				}
			}
		}
	}
}

// threeWalls are set on three days, and stripped on the next morning or so many days later.
func threeWalls(overlap int, done bool) schedule.Plan {
	p := schedule.Plan{Planned: true}
	for i := range 3 {
		face := fmt.Sprintf("wall %d", i)
		day := func(n, hour int) calendar.Moment { return calendar.Date(n).At(unit.Minutes(hour) * unit.Hour) }
		set := schedule.Task{Kind: schedule.Set, Subject: face, Start: day(i, 9), End: day(i, 17), Sessions: []schedule.Session{{From: day(i, 9), To: day(i, 17)}}}
		if done && i == 0 {
			set.State = schedule.Done
		} else {
			p.Batches = append(p.Batches, schedule.Batch{Task: len(p.Tasks), Face: face, Pieces: []string{"1-1"}})
		}
		p.Tasks = append(p.Tasks, set, schedule.Task{Kind: schedule.ClipsOff, Subject: face, End: day(i+1+overlap, 8)})
	}
	return p
}
