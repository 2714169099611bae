package web

import (
	"html/template"
	"net/http"
	"slices"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/sheet"
	"dryfit/internal/text"
)

var measurePage = pageOf{name: "measure", tab: "Measure", fill: measure}

// measured is what the page asks for and shows.
type measured struct {
	Drawing     template.HTML
	ToScale     bool
	Lines       []taped
	Next        string // the line to tape next
	Left        int    // lines not taped yet
	Corners     []cornered
	Walls       []thing
	Things      []collection
	Readings    report.Table
	Floor       field
	TapeTo      field
	RoomName    field
	InInches    bool
	NameRefused bool // of a wall or a corner
	FloorGaps   readings
	Ring        cornerForms
	LevelOpen   bool // the tape has fixed the shape and the level line has not been read at any corner
}

// taped is one line of the tape.
type taped struct {
	Name  string
	Side  bool
	Field field
	Again *field // a further reading, for a line that is suspect or was read before
	Last  string // what it was read as, where there are several
}

// cornered are the readings at one corner.
type cornered struct {
	Name     string
	Down, Up field
}

// thing is one named entry of the document with what is asked of it.
type thing struct {
	Name   string
	Path   string
	Called field // its name
	Fields []field
	Says   []said
	Strips []readings
	Inner  []collection // maps by name that it holds
	Pairs  []pairs

	ID, Picture string        // a drawing of the face that it is in
	Sketch      template.HTML // or one that follows what is typed
}

// collection is the things of one kind, and what is asked of a new one.
type collection struct {
	Title, One, Path string
	Things           []thing
	Asks             []field
	NewName, Name    string // an example of a name, and what was typed
	Off              []field
	Says             []said
	Open             bool
}

func measure(v *view, r *http.Request) (*frame, error) {
	if err := v.make(plan.Options{UpTo: plan.UpToSite}); err != nil {
		return nil, err
	}
	m := measured{InInches: v.Plan.Document.Units.String() == "in"}
	asked := v.lines(&m)
	screen, scaled := sheet.SurveyOnScreen(v.Plan, asked)
	m.ToScale = scaled
	var err error
	if m.Drawing, err = drawn(screen.Page, "plan-"); err != nil {
		return nil, err
	}
	m.Left = len(asked)
	m.LevelOpen = scaled && len(v.Plan.Document.Survey.Down) == 0
	if len(asked) > 0 {
		m.Next = asked[0].From + " to " + asked[0].To
	}
	v.corners(&m)
	if err = v.walls(&m); err != nil {
		return nil, err
	}
	if m.Things, err = v.things(); err != nil {
		return nil, err
	}
	if m.FloorGaps, err = v.gaps("the floor", v.Plan.Document.Floor.Straightedge, []string{"floor", "straightedge"}, wallGapAsks[:2]); err != nil {
		return nil, err
	}
	if m.Ring, err = v.cornerForms(); err != nil {
		return nil, err
	}
	m.NameRefused = m.nameRefused()
	m.Floor = v.list("Floor, from the framing up", "floor", "build-up").like(v.sample("board 1/4, bed 3/16, tile", "board 6, bed 5, tile")).help("What is not known yet stays empty: then it is assumed, and said so.")
	m.TapeTo = v.field("The tape touched", "survey", "tape to").oneOf("stud", "board", "tile face")
	m.RoomName = v.field("Name of the room", "name")
	m.Readings = report.Readings(v.Plan)
	return &frame{Title: "Measure", Question: "What have I really got?", Answer: v.verdict(m), Body: m}, nil
}

// nameRefused reports whether a new name of a wall or a corner could not be had: the part of the page with it opens.
func (m measured) nameRefused() bool {
	refused := func(f field) bool { return len(f.Says) > 0 }
	return slices.ContainsFunc(m.Walls, func(t thing) bool {
		return refused(t.Called) || slices.ContainsFunc(t.Strips, func(s readings) bool { return s.Open })
	})
}

// verdict says what the readings say so far.
func (v *view) verdict(m measured) string {
	switch {
	case len(v.Plan.Document.Survey.Tape) == 0:
		return "Nothing is measured yet. Begin at corner " + v.first() + " and walk round the room with the tape."
	case !v.Plan.Room.Survey.Fixed:
		return capital(v.missing()) + "."
	}
	said := "Readings: " + report.Verdict(v.Plan) + "."
	switch {
	case m.LevelOpen:
		said += " Next: the level line, at each corner."
	case len(v.Plan.Document.Tiles) == 0:
		said += " Next: what the walls are made of, and on the page Lay out the tile."
	}
	return said
}

func (v *view) first() string {
	if c := v.Plan.Document.Survey.Corners; len(c) > 0 {
		return c[0].Text
	}
	return "A"
}

// missing is what stops the room from having a shape.
func (v *view) missing() string {
	for _, f := range v.Plan.Findings {
		if f.Class == diag.Stop {
			return f.Say(v.Plan.Style)
		}
	}
	return "the readings do not fix the shape of the room yet"
}

func (v *view) sample(inches, millimetres string) string {
	if v.Plan.Document.Units.String() == "mm" {
		return millimetres
	}
	return inches
}

// lines fills the lines of the tape in the document's order, then the sides that are not in it, and gives those that
// wait for a reading.
func (v *view) lines(m *measured) []sheet.Line {
	names := v.lineNames()
	var asked []sheet.Line
	for _, name := range names {
		from, to, _ := strings.Cut(name, "-")
		l := sheet.Line{From: strings.TrimSpace(from), To: strings.TrimSpace(to)}
		t := v.taped(name)
		t.Side = v.isSide(l)
		if t.Field.Value == "" && t.Last == "" {
			asked = append(asked, l)
		}
		m.Lines = append(m.Lines, t)
	}
	return asked
}

func (v *view) lineNames() []string {
	var names []string
	have := map[string]bool{}
	if n := text.At(v.Tree, []string{"survey", "tape"}); n != nil {
		for _, e := range n.Entries {
			from, to, _ := strings.Cut(e.Key, "-")
			names = append(names, e.Key)
			have[strings.TrimSpace(from)+"-"+strings.TrimSpace(to)], have[strings.TrimSpace(to)+"-"+strings.TrimSpace(from)] = true, true
		}
	}
	c := v.Plan.Document.Survey.Corners
	for i := range c {
		if name := c[i].Text + "-" + c[(i+1)%len(c)].Text; !have[name] {
			names = append(names, name)
		}
	}
	return names
}

func (v *view) isSide(l sheet.Line) bool {
	c := v.Plan.Document.Survey.Corners
	for i := range c {
		a, b := c[i].Text, c[(i+1)%len(c)].Text
		if l.From == a && l.To == b || l.From == b && l.To == a {
			return true
		}
	}
	return false
}

// taped asks for one line. Where several readings are kept the last one counts, and only a further one can be added.
func (v *view) taped(name string) taped {
	path := []string{"survey", "tape", name}
	t := taped{Name: strings.ReplaceAll(name, "-", "–")}
	n := text.At(v.Tree, path)
	switch {
	case n != nil && n.Kind == text.Map:
		t.Field = v.field(t.Name, append(path, "length")...).tape()
		t.Field.Says = v.about(path)
	case n != nil && n.Kind == text.List && len(n.Items) > 0:
		t.Last = readingText(n.Items[len(n.Items)-1])
		t.Field = v.input(doAgain, t.Name, path).tape().like("take it again")
		t.Field.Says = v.about(path)
	default:
		t.Field = v.field(t.Name, path...).tape()
	}
	if t.Last == "" && t.Field.Value != "" && len(t.Field.Says) > 0 {
		again := v.input(doAgain, t.Name+" again", path).tape()
		t.Again = &again
	}
	return t
}

// readingText is the figure of a reading that may say more than its length.
func readingText(n *text.Node) string {
	if l := n.Get("length"); l != nil {
		return plain(l)
	}
	return plain(n)
}

func (v *view) corners(m *measured) {
	for _, c := range v.Plan.Document.Survey.Corners {
		m.Corners = append(m.Corners, cornered{c.Text,
			v.field("Down to the floor at "+c.Text, "survey", "level line", "down", c.Text).tape(),
			v.field("Up to the ceiling at "+c.Text, "survey", "level line", "up", c.Text).tape()})
	}
}

// walls asks for what each wall is made of and how it leans.
func (v *view) walls(m *measured) error {
	for _, w := range v.Plan.Document.Walls {
		t := thing{Name: w.Name, Path: pathName([]string{"walls", w.Name}), Called: v.rename("Name of the wall", "walls", w.Name), Says: v.about([]string{"walls", w.Name})}
		t.Fields = append(t.Fields, v.list("Build-up, from the studs outward", "walls", w.Name, "build-up").like(v.sample("board 1/2, bed 3/16, tile", "board 12.5, bed 5, tile")))
		for _, c := range []string{w.Left, w.Right} {
			t.Fields = append(t.Fields, v.field("Out of plumb at "+c, "walls", w.Name, "out of plumb", c).tape().help("How far the top leans into the room; with a minus, away."))
		}
		t.Fields = append(t.Fields, v.more(w.Name)...)
		var err error
		if t.Strips, err = v.strips(w); err != nil {
			return err
		}
		gaps, err := v.gaps(w.Name, w.Straightedge, []string{"walls", w.Name, "straightedge"}, wallGapAsks)
		if err != nil {
			return err
		}
		t.Strips = append(t.Strips, gaps)
		if f, ok := v.Plan.Room.Face(w.Name); ok && len(f.Board) > 0 {
			t.ID, t.Picture = idOf("picture"+t.Path), v.address("bare.svg", w.Name)
		}
		m.Walls = append(m.Walls, t)
	}
	return nil
}

// more asks for what a wall's tile face is to be and what the wall carries.
func (v *view) more(wall string) []field {
	return []field{
		v.field("Tile face", "walls", wall, "tile face").oneOf("plane", "follow").help("A plane over the high spots, or one that follows the wall."),
		v.field("Thinnest bed that the mortar allows", "walls", wall, "least bed").like(v.sample("1/8", "3")).tape(),
		v.field("What the wall has to carry", "walls", wall, "carries").like("wall-hung basin"),
	}
}
