// Package plan runs the whole pipeline: the only caller of the stages and the only place that knows their order.
//
// It takes a document and gives a Plan with every finding and assumption on the way. It reads no clock, no
// environment and no file: the same document gives the same plan, to the byte, on every machine.
package plan

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"slices"

	"dryfit/internal/clash"
	"dryfit/internal/cut"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/fit"
	"dryfit/internal/joinery"
	"dryfit/internal/lining"
	"dryfit/internal/order"
	"dryfit/internal/place"
	"dryfit/internal/schedule"
	"dryfit/internal/site"
	"dryfit/internal/takeoff"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// Plan is everything that is known of a room.
type Plan struct {
	Name     string
	Revision string // the first eight hex digits of the SHA-256 of the document's text
	Style    unit.Style
	Document document.Room
	Room     site.Room
	Tiling   tiling.Plan
	Fit      fit.Plan
	Wood     joinery.Plan
	Clash    clash.Plan
	Lining   lining.Plan // sheets of board on the faces
	Cut      cut.Plan
	Takeoff  takeoff.Plan
	Order    order.Plan
	Days     schedule.Plan
	Findings diag.List
	Assumed  []diag.Assumption
	// FitAssumed is how many of Assumed measuring and fitting took: what the checks hang on, whatever stages run besides.
	FitAssumed int

	places place.Plan // of all things, also where nothing of them is to be checked
}

// Stage is a point in the pipeline to stop after.
type Stage uint8

const (
	All Stage = iota
	UpToSite
	UpToTiling
	UpToFit // without any tile laid: fit knows a tile by its thickness
	UpToWood
	UpToClash
	UpToCut
	UpToTakeoff
	UpToDays
)

// Options bound a run. The zero value runs everything.
type Options struct {
	UpTo  Stage
	Face  string             // lay out this face alone; silent: all
	Quick bool               // for following a hand: a held layout is not compared with the best, no goods are counted up and no days planned
	Known *Known             // what runs before this one found, to take from and to add to; the plan is the same without
	Step  func(stage string) // told before each stage starts, for progress and for tests that count runs
}

func (o Options) step(stage string) {
	if o.Step != nil {
		o.Step(stage)
	}
}

// Make reads a document's text and runs the stages. Trouble in the document is in the plan's findings; the error is
// for a canceled context alone.
func Make(ctx context.Context, file string, text []byte, o Options) (Plan, error) {
	o.step("read")
	doc, findings := document.Read(file, text)
	return Of(ctx, text, doc, findings, o)
}

// Of makes a plan of a document that is read already: what document.Read gave of this very text, which stays as it is.
func Of(ctx context.Context, text []byte, doc document.Room, findings diag.List, o Options) (Plan, error) {
	p := Plan{Name: doc.Name, Revision: revision(text), Document: doc, Findings: slices.Clone(findings), Style: style(doc)}
	err := run(ctx, &p, o)
	p.Findings = p.Findings.Sorted()
	return p, err
}

func style(doc document.Room) unit.Style {
	s := unit.DefaultStyle(doc.Units)
	s.Mark = doc.Mark.Or(s.Mark)
	return s
}

func revision(text []byte) string {
	sum := sha256.Sum256(text)
	return hex.EncodeToString(sum[:4])
}
