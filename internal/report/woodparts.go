package report

import (
	"fmt"
	"strings"

	"dryfit/internal/document"
	"dryfit/internal/joinery"
	cutpart "dryfit/internal/part"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// CabinetParts lists the parts of a cabinet with their finished sizes, numbered as its drawings are.
func CabinetParts(p plan.Plan, c joinery.Cabinet) Table {
	t := Table{Title: "Parts of " + c.Name, Empty: "None.", Columns: numbers(text("No.", "Part", "Count", "Length", "Width", "Thick", "Stock", "Banded", "What is done to it"), 0, 2, 3, 4, 5)}
	f := p.Style.Fine()
	for i, q := range c.Parts() {
		t.Rows = append(t.Rows, []string{fmt.Sprint(i + 1), q.Name, fmt.Sprint(q.Count), f.Bare(q.Size.Length), f.Bare(q.Size.Width), f.Bare(q.Size.Thick), q.Stock, bandedOf(q), workCount(q)})
	}
	return t
}

func bandedOf(q cutpart.Part) string {
	var out []string
	for _, b := range q.Bands {
		out = append(out, b.On.String())
	}
	return strings.Join(out, ", ")
}

// workCount says in few words what is done to a part: what the drawing of it shows.
func workCount(q cutpart.Part) string {
	var order []string
	many := map[string]int{}
	count := func(what string) {
		if many[what] == 0 {
			order = append(order, what)
		}
		many[what]++
	}
	for _, c := range q.Channels {
		count(c.Kind.String())
	}
	for _, h := range q.Holes {
		if h.Slot > 0 {
			count("slot")
		} else {
			count("hole")
		}
	}
	for _, k := range q.Cutouts {
		count(cutWord(k, q.Size))
	}
	for _, e := range q.Ends {
		count(endWord(e))
	}
	for range q.Tapers {
		count("taper")
	}
	for _, f := range q.Profiles {
		count(f.Kind.String())
	}
	var out []string
	for _, w := range order {
		out = append(out, Count(many[w], w, plural(w)))
	}
	return strings.Join(out, ", ")
}

func plural(w string) string {
	if strings.HasSuffix(w, "o") {
		return w + "es"
	}
	return w + "s"
}

func cutWord(k cutpart.Cutout, s cutpart.Size) string {
	if k.IsNotch(s) {
		return "notch"
	}
	return "cut-out"
}

func endWord(e cutpart.End) string {
	switch {
	case e.Cope != "":
		return "coped end"
	case e.Bevel != 0:
		return "beveled end"
	}
	return "mitered end"
}

// PartWork lists what is done to a part, each from the left end and the front edge of its face, or as its side says.
func PartWork(p plan.Plan, q cutpart.Part) []string {
	f := p.Style.Fine()
	var out []string
	for _, c := range q.Channels {
		out = append(out, fmt.Sprintf("%s in the %s for %s: %s, %s deep", capitalFirst(c.Kind.String()), c.On, c.For, areaWords(f, c), f.Format(c.Depth)))
	}
	for _, h := range q.Holes {
		out = append(out, holeWords(f, h))
	}
	for _, k := range q.Cutouts {
		b := k.Outline.Bounds()
		out = append(out, fmt.Sprintf("%s for %s: %s to %s from the left end, %s to %s from the front edge", capitalFirst(cutWord(k, q.Size)), k.For, f.Bare(b.Min.X), f.Bare(b.Max.X), f.Bare(b.Min.Y), f.Format(b.Max.Y)))
	}
	for _, e := range q.Ends {
		out = append(out, endWords(q, e))
	}
	for _, t := range q.Tapers {
		out = append(out, fmt.Sprintf("Taper on the %s: from nothing at %s to %s at %s from the left end", t.On, f.Bare(t.From), f.Bare(t.Less), f.Format(t.To)))
	}
	for _, r := range q.Profiles {
		out = append(out, fmt.Sprintf("%s of %s between %s and %s", capitalFirst(r.Kind.String()), f.Format(r.Reach), r.A, r.B))
	}
	return append(out, overWords(f, q)...)
}

func areaWords(f unit.Style, c cutpart.Channel) string {
	along, up := "the left end", "the front edge"
	switch {
	case c.On.IsEnd():
		along, up = "the front edge", "the face"
	case !c.On.Flat():
		up = "the face"
	}
	return fmt.Sprintf("%s to %s from %s, %s to %s from %s", f.Bare(c.Area.Min.X), f.Bare(c.Area.Max.X), along, f.Bare(c.Area.Min.Y), f.Bare(c.Area.Max.Y), up)
}

func holeWords(f unit.Style, h cutpart.Hole) string {
	what, size := "Hole", "diameter "+f.Bare(h.Diameter)
	if h.Slot > 0 {
		what, size = "Slot", f.Bare(h.Diameter)+" wide, "+f.Bare(h.Diameter+h.Slot)+" long"
		if h.On.Flat() {
			size += map[cutpart.Axis]string{cutpart.AcrossAxis: " along the length", cutpart.UpAxis: " across the width"}[h.Along]
		}
	}
	words := fmt.Sprintf("%s for %s in the %s: %s, center %s from the left end and %s from the front edge", what, h.For, h.On, size, f.Bare(h.At.X), f.Bare(h.At.Y))
	if h.Through {
		return words + ", through"
	}
	return words + ", " + f.Format(h.Depth) + " deep"
}

func endWords(q cutpart.Part, e cutpart.End) string {
	switch {
	case e.Cope != "":
		return fmt.Sprintf("%s coped: saw it as an inside miter first, then follow the line of the profile", capitalFirst(e.On.String()))
	case e.Bevel != 0:
		return fmt.Sprintf("%s: saw tilted %s off square, the %s keeps the long point", capitalFirst(e.On.String()), degrees(e.Bevel), keeps(e.Bevel > 0, "face", "back"))
	}
	front := "front edge"
	for _, l := range q.Labels {
		if l.On == cutpart.Front {
			front = l.Text
		}
	}
	return fmt.Sprintf("%s: saw swung %s off square, the %s keeps the long point", capitalFirst(e.On.String()), degrees(e.Miter), keeps(e.Miter > 0, front, "other edge"))
}

func keeps(yes bool, a, b string) string {
	if yes {
		return a
	}
	return b
}

// degrees shows an angle to a tenth of a degree, without its sign: a saw's scale reads no finer.
func degrees(a unit.Angle) string {
	if a < 0 {
		a = -a
	}
	t := (a + unit.Degree/20) / (unit.Degree / 10)
	return fmt.Sprintf("%d.%d°", t/10, t%10)
}

func overWords(f unit.Style, q cutpart.Part) []string {
	var out []string
	if q.Over.Length > 0 {
		out = append(out, "Sawn "+f.Format(q.Over.Length)+" longer, to be trimmed")
	}
	if q.Over.Width > 0 {
		out = append(out, "Sawn "+f.Format(q.Over.Width)+" wider, to be scribed")
	}
	return out
}

func capitalFirst(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

// CabinetWords tells what a cabinet is: its outside as asked for, and what its parts make when they are put together.
func CabinetWords(p plan.Plan, c joinery.Cabinet) []string {
	f := p.Style.Fine()
	out := c.Outside()
	words := []string{fmt.Sprintf("Carcass %s wide, %s deep, its top %s above the finished floor.", f.Format(c.Asked.Size(0)), f.Format(c.Asked.Hi[2]), f.Format(c.Asked.Hi[1]))}
	if out == c.Asked {
		words = append(words, "The parts put together make just that.")
	} else {
		words = append(words, fmt.Sprintf("The parts put together make %s x %s x %s.", f.Bare(out.Size(0)), f.Bare(out.Size(1)), f.Format(out.Size(2))))
	}
	if c.Proud > 0 {
		words = append(words, "Its fronts stand "+f.Format(c.Proud)+" before it.")
	}
	if s := c.Stands; s.Known {
		words = append(words, "Under its corners: "+feetWords(p, s)+".")
	}
	words = append(words, passageWords(p, c.Passages)...)
	for _, h := range c.Hung {
		words = append(words, fmt.Sprintf("Screw %s long at %s from the left end of %s: %s into %s.", f.Format(h.Length), p.Style.Format(h.X), c.Wall, f.Format(h.Hold), h.Into))
	}
	return words
}

func feetWords(p plan.Plan, s joinery.Standing) string {
	var out []string
	for _, foot := range s.Feet {
		out = append(out, foot.Name+" "+p.Style.Format(foot.Raise))
	}
	return strings.Join(out, ", ")
}

// Fronts lists doors and drawers with their hinges and slides.
func Fronts(p plan.Plan, c joinery.Cabinet) Table {
	t := Table{Title: "Fronts and drawers of " + c.Name, Columns: numbers(text("Front", "What", "Width", "Height", "From the left side", "Above the floor", "Hinge cups above the floor", "Box outside, width x height x length"), 2, 3, 4, 5)}
	f := p.Style.Fine()
	for _, r := range c.Fronts {
		row := []string{r.Name, frontKind(r.Kind), f.Bare(r.Box.Size(0)), f.Bare(r.Box.Size(1)), f.Bare(r.Box.Lo[0]), f.Bare(r.Box.Lo[1]), "", ""}
		var cups []string
		for _, y := range r.Cups {
			cups = append(cups, f.Bare(y))
		}
		if len(cups) > 0 {
			row[6] = r.Hinge + ": " + strings.Join(cups, ", ")
		}
		for _, d := range c.Drawers {
			if d.Name == r.Name {
				row[7] = f.Bare(d.Box.Size(0)) + " x " + f.Bare(d.Box.Size(1)) + " x " + f.Bare(d.Box.Size(2))
			}
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}

func frontKind(k document.FrontKind) string {
	return [...]string{"door", "drawer", "fixed panel", "open"}[k]
}
