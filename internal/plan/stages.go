package plan

import (
	"context"
	"sync"

	"dryfit/internal/diag"
	"dryfit/internal/fit"
	"dryfit/internal/joinery"
	"dryfit/internal/lining"
	"dryfit/internal/order"
	"dryfit/internal/place"
	"dryfit/internal/site"
	"dryfit/internal/takeoff"
	"dryfit/internal/tiling"
)

// stages in their order. Those of one leg of the way run side by side, each lane in its order: they read what the legs before made
// and what stands before them in their lane, and write each its own field of the plan. What they tell is joined in the order of
// this table, so the plan is the same to the byte however many run at once.
var stages = [...]struct {
	name      string
	last      Stage
	leg, lane int
	run       func(*Plan, Options) told
}{
	{"measure", UpToSite, 0, 0, solve},
	{"lay out", UpToTiling, 1, 0, lay},
	{"fit", UpToFit, 1, 1, fits},
	{"build", UpToWood, 1, 1, build},
	{"clash", UpToClash, 2, 0, clashes},
	{"cut", UpToCut, 1, 1, saw},
	{"take off", UpToTakeoff, 2, 1, take},
	{"days", UpToDays, 1, 0, days}, // reads the laid tile alone
	{"order", All, 3, 0, buy},
}

// told is what a stage says beside what it made.
type told struct {
	findings diag.List
	assumed  []diag.Assumption
	ends     bool // its dependents can not go on
}

// needs reports whether a stage is part of a run.
func (o Options) needs(last Stage) bool {
	switch {
	case o.UpTo == All:
		return true
	case o.UpTo == UpToFit && last == UpToTiling:
		return false
	}
	return last != All && last <= o.UpTo
}

// run makes the legs of the way one after the other.
func run(ctx context.Context, p *Plan, o Options) error {
	var said [len(stages)]told
	defer func() {
		for i, s := range said {
			p.tell(stages[i].last, s)
		}
	}()
	for leg := range stages[len(stages)-1].leg + 1 {
		if err := ctx.Err(); err != nil {
			return err
		}
		if o.runLeg(p, leg, &said) {
			return nil
		}
	}
	return nil
}

// runLeg runs the lanes of a leg side by side, and reports whether the run ends there.
func (o Options) runLeg(p *Plan, leg int, said *[len(stages)]told) (ends bool) {
	var lanes [len(stages)][]int
	for i, s := range stages {
		if s.leg == leg && o.needs(s.last) {
			o.step(s.name)
			lanes[s.lane] = append(lanes[s.lane], i)
		}
	}
	var all sync.WaitGroup
	for _, lane := range lanes {
		if len(lane) == 0 {
			continue
		}
		all.Go(func() {
			for _, i := range lane {
				said[i] = stages[i].run(p, o)
			}
		})
	}
	all.Wait()
	for _, s := range said {
		ends = ends || s.ends
	}
	return ends
}

// tell keeps what a stage said.
func (p *Plan) tell(of Stage, s told) {
	p.Findings = append(p.Findings, s.findings...)
	p.Assumed = append(p.Assumed, s.assumed...)
	if of == UpToSite || of == UpToFit {
		p.FitAssumed += len(s.assumed)
	}
}

func solve(p *Plan, _ Options) told {
	room, findings, assumed := site.Solve(p.Document)
	p.Room = room
	return told{findings, assumed, !room.Survey.Fixed}
}

func lay(p *Plan, o Options) told {
	tiles, findings, assumed := tiling.Make(p.Document, p.Room, tiling.Options{Face: o.Face, Quick: o.Quick, Known: o.Known.tilesOf()})
	p.Tiling = tiles
	return told{findings: findings, assumed: assumed}
}

func days(p *Plan, o Options) told {
	if o.Quick || o.Face != "" {
		return told{} // of a single face no days can be planned
	}
	plan, findings, assumed := o.Known.daysOf().Make(p.Document, p.Room, p.Tiling)
	p.Days = plan
	return told{findings: findings, assumed: assumed}
}

func fits(p *Plan, _ Options) told {
	p.places = place.Make(p.Document, p.Room)
	checks, findings, assumed := fit.Make(p.Document, p.Room, p.places)
	p.Fit = checks
	return told{findings: findings, assumed: assumed}
}

func build(p *Plan, _ Options) told {
	wood, findings, assumed := joinery.Make(p.Document, p.Room)
	wood, more := wood.CutDrawers(drawerCuts(*p, wood))
	p.Wood = wood
	return told{findings: append(findings, more...), assumed: assumed}
}

// saw divides board over the faces and cuts all that is made of stock.
func saw(p *Plan, o Options) told {
	sheets, findings, assumed := lining.Make(p.Document, p.Room)
	p.Lining = sheets
	c, more, taken := o.Known.stockOf().Make(p.Document, append(p.Wood.Parts(), sheets.Parts()...))
	p.Cut = c
	return told{findings: append(findings, more...), assumed: append(assumed, taken...)}
}

// take reckons the quantities.
func take(p *Plan, _ Options) told {
	needed, findings, assumed := takeoff.Make(takeoff.From{Document: p.Document, Room: p.Room, Tiles: p.Tiling, Wood: p.Wood, Places: p.places, Parts: p.Fit.Parts, Board: p.Lining})
	p.Takeoff = needed
	return told{findings: findings, assumed: assumed}
}

// buy chooses packs and adds up what they cost.
func buy(p *Plan, _ Options) told {
	o, findings, assumed := order.Make(p.Document, p.Tiling, p.Cut, p.Takeoff, p.Days)
	p.Order = o
	return told{findings: findings, assumed: assumed}
}
