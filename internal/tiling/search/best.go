package search

import (
	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/unit"
)

// Best returns the best few truly different layouts.
func Best(in Input) Result {
	in.settle()
	if len(in.Region) == 0 || len(in.Bond.Protos) == 0 {
		return Result{}
	}
	if !in.straight() {
		return bounded(&in)
	}
	p := newProblem(&in)
	names := order(&in)
	winners, n := p.sweep(ranked(names))
	res := Result{Exact: true, Resolution: in.Mark, Evaluated: n,
		Searched: judge.Because("every {0} of both offsets", diag.X(in.Mark))}
	res.Finalists = finalists(&in, winners, names, func(o geom.Point) []judge.Measure { return p.measures(o) })
	return res
}

// Judge measures one layout, searched or not: a pinned origin.
func Judge(in Input, origin geom.Point) Candidate {
	in.settle()
	c := Candidate{Origin: origin}
	if len(in.Region) == 0 || len(in.Bond.Protos) == 0 {
		return c
	}
	c.Measures = measurer(&in)(origin)
	return in.complete(c, order(&in))
}

// straight reports whether the exact search applies: all joints run along the face's axes.
func (in *Input) straight() bool { return in.Bond.Axis && in.Bond.Angle == 0 }

// measurer returns what measures one layout of the input's bond.
func measurer(in *Input) func(geom.Point) []judge.Measure {
	if in.straight() {
		return newProblem(in).measures
	}
	return newCensus(in).measures
}

// measures lists the covered measures of one layout.
func (p *problem) measures(origin geom.Point) []judge.Measure {
	n := p.assess(origin)
	out := make([]judge.Measure, covered)
	for m := range out {
		out[m] = n.measure(m)
	}
	return out
}

// settle fills in what the caller left to us, and makes the mark as coarse as the number of offsets needs.
func (in *Input) settle() {
	if in.Mark <= 0 {
		in.Mark = DefaultMark(unit.Millimetres)
	}
	if in.Keep <= 0 {
		in.Keep = offered
	}
	for in.offsets() > mostOffsets {
		in.Mark *= 2
	}
}

// mostOffsets bounds the search: tiles larger than 600 mm square are set out to 1 mm, which is what a metric tape shows.
const mostOffsets = 1_500_000

// offsets is how many there are to judge in one pitch both ways.
func (in *Input) offsets() int64 {
	return int64(in.Bond.Pitch.X/in.Mark+1) * int64(in.Bond.Pitch.Y/in.Mark+1)
}

// offered is how many layouts a person looks at before choosing (ours).
const offered = 4

// complete adds what only a full lay tells and puts the measures in order of importance.
func (in *Input) complete(c Candidate, names []judge.Name) Candidate {
	all := c.Measures
	if in.Count != nil {
		all = append(all, counts(in.Count(c.Origin), in.Mark)...)
	}
	c.Measures = nil
	for _, n := range names {
		for _, m := range all {
			if m.Name == n {
				c.Measures = append(c.Measures, m)
			}
		}
	}
	return c
}

// counts words a full lay's count as measures. They are compared among the finalists only and never called exact.
func counts(n Count, mark unit.Length) []judge.Measure {
	tiles := judge.Measure{Name: judge.TilesToBuy, IsCount: true, Count: n.Tiles, Cost: int64(n.Tiles), None: n.Tiles == 0}
	neck := judge.Measure{Name: judge.Necks, Length: n.Neck, Where: n.NeckAt, None: n.Neck == 0, Cost: nothing}
	if !neck.None {
		neck.Cost = -int64(n.Neck.Floor(mark) / mark)
	}
	return []judge.Measure{tiles, neck}
}
