package sheet

import (
	"slices"

	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/report"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// dimensions are the running dimensions of a face (ISO 129-1): courses on the left, heights with their names on the
// right, columns below, and above those of the courses that differ.
func (d *facade) dimensions() []parts.Running {
	var out []parts.Running
	out = append(out, d.courseRun())
	if d.site.Kind == site.WallFace {
		out = append(out, d.heightRun())
	}
	return append(out, d.columnRuns()...)
}

// patterned says that a field has no joint that runs through.
func (d *facade) patterned(z tiling.Field) bool {
	return len(report.Courses(z)) == 0 && len(report.Columns(z)) == 0 && len(z.Layouts) > 0
}

// courseRun gives the tops of all courses, and the foot of the lowest, from the level line or the floor's datum.
func (d *facade) courseRun() parts.Running {
	b := d.box(d.area)
	at, _, _ := report.Datum(d.p, d.site)
	r := d.run(true, b.Lo.X, b.Lo.X-lineOff, d.y(at.Y), "0")
	mark := func(y unit.Length) { r.mark(d.y(y), d.p.Style.Bare(report.Up(d.p, d.site, y)), false) }
	for _, z := range d.face.Fields {
		for i, c := range report.Courses(z) {
			if i == 0 {
				mark(c.Lo)
			}
			mark(c.Hi)
		}
		if d.patterned(z) {
			mark(z.Chosen().Origin.Y)
		}
	}
	if d.site.Kind != site.WallFace {
		mark(d.area.Min.Y)
		mark(d.area.Max.Y)
	}
	return r.Running
}

// run is a running dimension in the making.
type run struct{ parts.Running }

func (d *facade) run(vertical bool, feature, line, origin draw.Um, text string) *run {
	return &run{parts.Running{Vertical: vertical, Feature: feature, Line: line, Origin: parts.Mark{At: origin, Text: text, Bold: true}}}
}

// mark adds a place, once; what is as near to another as half a line's width is the same place.
func (r *run) mark(at draw.Um, text string, bold bool) {
	same := func(m parts.Mark) bool { return abs(m.At-at) < draw.Narrow/2 && m.Text == text }
	if same(r.Origin) || slices.ContainsFunc(r.Marks, same) {
		return
	}
	r.Marks = append(r.Marks, parts.Mark{At: at, Text: text, Bold: bold})
}

// heightRun names the heights that matter, above the finished floor.
func (d *facade) heightRun() parts.Running {
	b := d.box(d.area)
	from, name := d.p.Room.FinishedFloor, "0 finished floor"
	if !d.p.Room.FinishedKnown {
		from, name = 0, "0 level line"
	}
	r := d.run(false, b.Hi.X, b.Hi.X+lineOff, d.y(from), name)
	r.Vertical = true
	mark := func(y unit.Length, what string) { r.mark(d.y(y), d.p.Style.Bare(y-from)+" "+what, false) }
	if from != 0 {
		mark(0, "level line")
	}
	if l := d.face.Ledger; l != nil {
		mark(l.Y, "ledger, first course")
	}
	for _, o := range d.site.Openings {
		if o.Kind == "box" { // too many; the table of holes has them
			continue
		}
		tile := d.opening(o)
		mark(tile.Min.Y, o.Name+", bottom")
		mark(tile.Max.Y, o.Name+", top")
	}
	for _, z := range d.face.Fields {
		mark(z.Region.Bounds().Max.Y, "top of "+z.Name)
	}
	return r.Running
}

// columnRuns give the columns of the largest field: below, those of the first courses; above, those of the next.
func (d *facade) columnRuns() []parts.Running {
	b := d.box(d.area)
	rows := report.Columns(d.main())
	if len(rows) == 0 {
		return []parts.Running{d.acrossRun(report.Run{}, b.Lo.Y, b.Lo.Y-lineOff)}
	}
	out := []parts.Running{d.acrossRun(rows[0], b.Lo.Y, b.Lo.Y-lineOff)}
	if len(rows) > 1 {
		out = append(out, d.acrossRun(rows[1], b.Hi.Y, b.Hi.Y+lineOff))
	}
	return out
}

// main is the field with the most pieces.
func (d *facade) main() tiling.Field {
	best := d.face.Fields[0]
	for _, z := range d.face.Fields {
		if z.Region.Area2() > best.Region.Area2() {
			best = z
		}
	}
	return best
}

func (d *facade) acrossRun(row report.Run, feature, line draw.Um) parts.Running {
	at, _, _ := report.Datum(d.p, d.site)
	r := d.run(false, feature, line, d.x(at.X), "0")
	mark := func(x unit.Length, bold bool) { r.mark(d.x(x), d.p.Style.Bare(x-at.X), bold) }
	for _, s := range row.Spans {
		mark(s.Lo, false)
	}
	if n := len(row.Spans); n > 0 {
		mark(row.Spans[n-1].Hi, false)
	}
	for _, c := range d.site.Lines {
		if line < feature { // named once, below
			r.mark(d.x(c.X), d.p.Style.Bare(c.X-at.X)+" "+c.Name, true)
		}
	}
	if z := d.main(); d.patterned(z) {
		mark(z.Chosen().Origin.X, false)
	}
	mark(d.area.Max.X, true)
	return r.Running
}
