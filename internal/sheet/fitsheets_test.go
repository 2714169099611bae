package sheet

import (
	"context"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/draw"
	"dryfit/internal/fit"
	"dryfit/internal/mend"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/typeset"
	"dryfit/internal/unit"
)

// fitRoom is a plain room: square, 72 by 96 between studs, 1/2 board on every wall, the floor level 40 under the level line and bare.
const fitRoom = `dryfit: 1
name: Annex washroom
units: in
survey:
  corners: A B C D
  tape to: stud
  tape: {A-B: 72, B-C: 96, C-D: 72, D-A: 96, A-C: 120, B-D: 120}
  level line: {down: {A: 40, B: 40, C: 40, D: 40}, up: {A: 56, B: 56, C: 56, D: 56}}
walls:
  basin wall: {along: A-B, build-up: [board 1/2]}
  right wall: {along: B-C, build-up: [board 1/2]}
  door wall: {along: C-D, build-up: [board 1/2]}
  left wall: {along: D-A, build-up: [board 1/2]}
openings:
  door: {in: door wall, kind: door, across: 30 to 62 from C, up: 0 to 82 above floor, leaf: {hinge: left, opens: in, thickness: 1-3/8, gap now: 1/2}}
stub-outs:
  hot stop: {in: basin wall, across: 24 from A, up: 21 above floor, diameter: 5/8, stands out: 2}
  basin waste: {in: basin wall, across: 28 from A, up: 18 above floor, diameter: 1-1/2}
boxes:
  outlet: {in: basin wall, across: center 44 from A, up: center 42 above floor, width: 2, height: 4}
in the wall:
  stud two: {in: basin wall, kind: stud, across: 15-1/4 to 16-3/4 from A, up: 0 to 96 above floor}
cabinets:
  vanity: {in: basin wall, across: 16 to 40 from A, stands: wall, bottom: 10, height: 31, depth: 20}
tops:
  vanity top: {on: vanity, made of: staves, thickness: 1-1/2, depth: 21, recess: {for: bowl, depth: 3/8}}
basins:
  bowl: {kind: vessel, on: vanity top, across: center 28 from A, off: 12, outline: oval 18 x 13, height: 4-1/2, foot: oval 12 x 8, rim: 3/8, bottom: 1/2, depth: 3-3/4, waste hole: 1-3/4, overflow: no}
taps:
  basin tap: {serves: bowl, mounted: deck, on: vanity top, across: center 28 from A, off: 2-3/4, reach: 7, outlet: {height: 8, angle: 10, opening: 1/2}, plate: 2, handle: {over: 7, swings: 1-1/2}}
wastes:
  basin drain: {from: bowl, to: basin waste, tailpiece: 12, thread: 2, washers: 1/4, for overflow: no, trap: {kind: P, size: 1-1/4, seal: 2, drop: 1-1/2 to 4, weir: 3, reach: 5 to 14, below: 3-1/2, width: 3}, vent: 8}
fittings:
  mirror: {kind: mirror, in: basin wall, across: center 28 from A, up: bottom 46 above floor, width: 22, height: 32, depth: 3/4, serves: bowl}
`

func fitPlan(t testing.TB, text string) plan.Plan {
	t.Helper()
	p, err := plan.Make(context.Background(), "room.yaml", []byte(text), plan.Options{UpTo: plan.UpToFit})
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// mended is the book of a room with what would mend it.
func mended(t testing.TB, text string, p plan.Plan, paper Paper) []draw.Page {
	t.Helper()
	m, err := mend.Make(context.Background(), "room.yaml", []byte(text), p, mend.Options{})
	if err != nil {
		t.Fatal(err)
	}
	return MendedBook(p, m, paper)
}

func wordsOf(pages []draw.Page, title string) []string {
	var out []string
	for _, page := range pages {
		if strings.HasPrefix(page.Title, title) {
			for _, w := range typeset.Placements(page) {
				out = append(out, w.Text.Body)
			}
		}
	}
	return out
}

// Every point of the card from the level line, from the studs at the left corner, by its edges and from the next stud, worked by hand: the hot
// stop is 24 from A and 5/8 wide, so from 23-11/16 to 24-5/16; 21 over a floor that is 40 below the line, so 19 below it; the stud ends at
// 16-3/4, 7-1/4 before it; board is all that is still to come.
func TestRoughInCardByHand(t *testing.T) {
	p := fitPlan(t, fitRoom)
	words := strings.Join(wordsOf(mended(t, fitRoom, p, Paper{}), "Basin wall, Rough-in"), "|") + "|"
	for _, want := range []string{"|24 hot stop|", "|21 hot stop|", "|-19|", "|28 basin waste; mirror|", "|-22|", "|18 basin waste|", "|44 outlet|", "|42 outlet|", "|2|"} {
		if !strings.Contains("|"+words, want) {
			t.Errorf("%s is not on the card: %s", want, words)
		}
	}
	rows := report.Spots(p, "basin wall").Rows
	for i, want := range []string{
		"hot stop|pipe|24 in (A)|23-11/16 and 24-5/16|7-1/4 in right of stud two|19 in below|21 in|1/2 in",
		"basin waste|pipe|28 in (A)|27-1/4 and 28-3/4|11-1/4 in right of stud two|22 in below|18 in|1/2 in",
		"outlet|box|44 in (A)|43 and 45|27-1/4 in right of stud two|2 in above|42 in|1/2 in",
	} {
		if got := strings.Join(rows[i], "|"); got != want {
			t.Errorf("the card says %s, want %s", got, want)
		}
		if !strings.Contains(squeeze(strings.ReplaceAll(words, "|", "")), squeeze(strings.ReplaceAll(want, "|", ""))) {
			t.Errorf("%s is not printed", want)
		}
	}
}

// Heights of the elevation and the section by hand: the cabinet ends at 31, the top is 1-1/2 thick: 32-1/2; the bowl stands 3/8 in it and is
// 4-1/2 high: rim 36-5/8; inside it is 3-3/4 deep: 32-7/8; the outlet is 8 over the top: 40-1/2, 3-7/8 over the rim.
func TestHeightsByHand(t *testing.T) {
	p := fitPlan(t, fitRoom)
	pages := mended(t, fitRoom, p, Paper{})
	for title, wants := range map[string][]string{
		"Basin wall, What stands": {"32-1/2 vanity top", "36-5/8 bowl, rim", "40-1/2 basin tap, outlet", "46 mirror, bottom", "78 mirror, top", "-7-1/2", "-3-3/8", "1/2", "38",
			"27-1/2 bowl, waste; basin tap; basin waste", "15-1/2 vanity, left"}, // 28 from the studs, 27-1/2 from the board
		"Bowl, Section": {"31 under the top", "32-1/2 top", "32-7/8 bowl, at the waste", "36-5/8 rim", "40-1/2 tap's outlet", "20-7/8 tailpiece ends", "5-1/2 basin's back", "18-1/2 basin's front",
			"9-3/4 tap's outlet", "12 waste", "3-7/8 in"},
		"Fit, Plan": {"27-1/2"},
	} {
		words := wordsOf(pages, title)
		for _, w := range wants {
			if !slices.Contains(words, w) {
				t.Errorf("%s: %q is not there: %q", title, w, words)
			}
		}
	}
}

// Every check is on paper, and what is not known stands before what fits.
func TestEveryCheckIsPrinted(t *testing.T) {
	text := strings.Replace(fitRoom, "height: 8, angle", "height: unknown, angle", 1)
	p := fitPlan(t, text)
	words := strings.Join(wordsOf(mended(t, text, p, PaperNamed("A3", unit.Inches)), "Fit, Clearances"), " ")
	if !strings.HasPrefix(words, fmt.Sprintf("%d clearances are not checked", report.CountChecks(p).NotChecked)) {
		t.Errorf("begins %.80q", words)
	}
	last := -1
	for _, l := range report.Checks(p) {
		if !strings.Contains(words, strings.Fields(l.Words)[0]) || l.Margin != "" && !strings.Contains(squeeze(words), squeeze(l.Margin)) {
			t.Errorf("%s, %s is not printed", l.Words, l.Margin)
		}
		order := slices.Index([]string{"misses", "not checked", "fits", "told"}, l.State)
		if order < last {
			t.Errorf("%s (%s) stands too low", l.Words, l.State)
		}
		last = order
	}
}

func squeeze(s string) string { return strings.Join(strings.Fields(s), "") }

// The drawn way of the water is the parabola of free fall: v² alone is made up here; what is compared is t ↦ (v sin t, v cos t + g t²/2).
func TestJetIsAParabola(t *testing.T) {
	const v, g = 900.0, 9806.65 // mm/s, mm/s²
	for _, degrees := range []float64{0, 5, 20, 45} {
		sin, cos := math.Sincos(degrees * math.Pi / 180)
		end := 0.17
		fall, throw := v*cos*end+g*end*end/2, v*sin*end
		j := fit.Jet{OutletOff: 100 * unit.Millimetre, OutletY: unit.FromMM(fall), Angle: unit.Angle(degrees * float64(unit.Degree))}
		way := jetWay(j, 100*unit.Millimetre+unit.FromMM(throw))
		for i, p := range way {
			at := end * float64(i) / float64(len(way)-1)
			x, y := 100+v*sin*at, fall-v*cos*at-g*at*at/2
			if degrees == 0 {
				y = p.Y.MM() // straight down, where the share of the time shows nowhere
			}
			if math.Abs(p.X.MM()-x) > 0.01 || math.Abs(p.Y.MM()-y) > 0.01 {
				t.Errorf("%v°, point %d: %.3f, %.3f, want %.3f, %.3f", degrees, i, p.X.MM(), p.Y.MM(), x, y)
			}
		}
	}
}

// Whatever is not known, no word covers another, and what is missing is told and not drawn.
func TestFitSheetsOfHalfKnownRooms(t *testing.T) {
	if words := wordsOf(Book(fitPlan(t, strings.Replace(fitRoom, "reach: 7", "reach: unknown", 1)), Paper{}), "Bowl, Section"); !strings.Contains(strings.Join(words, " "), "not known: basin tap reach") {
		t.Errorf("the reach that is missing is not told: %q", words)
	}
	for i, fact := range []string{"off: 12,", "outline: oval 18 x 13", "height: 4-1/2", "reach: 7", "mounted: deck", "depth: 21", "thickness: 1-1/2", "height: 31", "weir: 3", "tailpiece: 12",
		"up: 18 above floor", "across: 16 to 40 from A", "level line: {down: {A: 40, B: 40, C: 40, D: 40}, up: {A: 56, B: 56, C: 56, D: 56}}", "bottom: 10", "rim: 3/8", "depth: 3-3/4"} {
		if !strings.Contains(fitRoom, fact) {
			t.Fatalf("the room says no %q", fact)
		}
		key, _, _ := strings.Cut(fact, ":")
		text := strings.Replace(fitRoom, fact, key+": unknown", 1)
		p := fitPlan(t, text)
		paper := draw.Papers()[i%4]
		for n, page := range append(mended(t, text, p, Paper{paper}), fitScreens(p)...) {
			for _, o := range typeset.Overlaps(page) {
				t.Errorf("without %s on %s, page %d %s: %v", fact, paper.Name, n+1, page.Title, o)
			}
		}
	}
}

func fitScreens(p plan.Plan) []draw.Page {
	var out []draw.Page
	add := func(s Screen, ok bool) {
		if ok {
			out = append(out, s.Page)
		}
	}
	add(ClearancesOnScreen(p, nil))
	for _, b := range p.Fit.Places.Basins {
		add(SideOnScreen(p, b.Name, nil))
	}
	for _, w := range p.Fit.Places.Walls {
		add(FrontOnScreen(p, w.Name, nil))
	}
	return out
}

// On screens words stand clear and within the drawing; each thing that is placed bears the name that a page links to.
func TestFitScreens(t *testing.T) {
	texts := []string{fitRoom}
	for _, r := range demo.Rooms() {
		texts = append(texts, string(r.Text))
	}
	for _, text := range texts {
		p := fitPlan(t, text)
		for _, page := range fitScreens(p) {
			whole := draw.Span(0, 0, page.W, page.H)
			for _, o := range typeset.Overlaps(page) {
				t.Errorf("%s, %s: %v", p.Name, page.Title, o)
			}
			for _, w := range typeset.Placements(page) {
				if !whole.Holds(w.Box) {
					t.Errorf("%s, %s: %q leaves the drawing", p.Name, page.Title, w.Text.Body)
				}
			}
		}
	}
	p := fitPlan(t, fitRoom)
	s, ok := SideOnScreen(p, "bowl", func(path string) string { return "at " + path })
	if !ok {
		t.Fatal("no section")
	}
	for _, want := range []string{"at basins > bowl", "at taps > basin tap", "at wastes > basin drain", "at tops > vanity top", "at cabinets > vanity"} {
		if !slices.Contains(groupIDs(s.Page.Items), want) {
			t.Errorf("%q is not in the section: %q", want, groupIDs(s.Page.Items))
		}
	}
}

// A cabinet is in the elevation of its wall, the way of a door and the tank of a WC in the plan.
func TestFitScreensShowWhatStands(t *testing.T) {
	p := fitPlan(t, fitRoom)
	at := func(path string) string { return "at " + path }
	front, _ := FrontOnScreen(p, "basin wall", at)
	above, _ := ClearancesOnScreen(p, at)
	for _, c := range []struct {
		page draw.Page
		want []string
	}{
		{front.Page, []string{"at cabinets > vanity", "at tops > vanity top", "at basins > bowl", "at taps > basin tap", "at fittings > mirror", "at boxes > outlet", "at stub-outs > hot stop"}},
		{above.Page, []string{"at cabinets > vanity", "at tops > vanity top", "at basins > bowl", "at openings > door"}},
	} {
		for _, want := range c.want {
			if !slices.Contains(groupIDs(c.page.Items), want) {
				t.Errorf("%s: %q is not there: %q", c.page.Title, want, groupIDs(c.page.Items))
			}
		}
	}
}

func groupIDs(items []draw.Item) []string {
	var out []string
	for _, it := range items {
		if g, ok := it.(draw.Group); ok {
			if g.ID != "" {
				out = append(out, g.ID)
			}
			out = append(out, groupIDs(g.Items)...)
		}
	}
	return out
}
