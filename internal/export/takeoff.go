package export

import (
	"dryfit/internal/document"
	"dryfit/internal/plan"
	"dryfit/internal/takeoff"
	"dryfit/internal/unit"
)

// needs is what setting and finishing take.
type needs struct {
	Lines   []need   `json:"lines" doc:"every good, or kind of good, that is needed"`
	Faces   []bed    `json:"faces" doc:"what setting each face takes"`
	Recipes []recipe `json:"recipes" doc:"how each powder is mixed"`
	Stack   stack    `json:"stack" doc:"what lies on the floor before it is set"`
}

// need is one good with what it was reckoned from.
type need struct {
	Kind      string    `json:"kind" doc:"kind of good, in the document's word"`
	What      string    `json:"what" doc:"in words"`
	Good      string    `json:"good,omitempty" doc:"the user's name of it; absent: none is chosen"`
	InsteadOf string    `json:"insteadOf,omitempty" doc:"the good that it is compared with"`
	At        place     `json:"at" doc:"in the document"`
	Parts     []portion `json:"parts" doc:"what it was reckoned from"`
	Waste     share     `json:"waste" doc:"share on top of the parts"`
	Need      *amount   `json:"need,omitempty" doc:"what has to be had, waste included; absent: not reckoned"`
	Missing   string    `json:"missing,omitempty" doc:"which figures are missing"`
	Typical   bool      `json:"typical" doc:"a figure that is no label's is in it"`
	Source    string    `json:"source,omitempty" doc:"where figures come from that are no label's"`
	Back      bool      `json:"back" doc:"it comes back after use"`
}

// portion is one part of a need.
type portion struct {
	Face   string  `json:"face,omitempty" doc:"absent: the whole room"`
	For    string  `json:"for" doc:"in words"`
	Amount amount  `json:"amount" doc:"as measured on the plan"`
	Takes  *amount `json:"takes,omitempty" doc:"of the good; absent: not reckoned"`
}

// bed is what setting one face takes.
type bed struct {
	Face       string      `json:"face" doc:"its name"`
	Mortar     string      `json:"mortar,omitempty" doc:"the user's name of it; absent: none is chosen"`
	Grout      string      `json:"grout,omitempty" doc:"the user's name of it; absent: none is chosen"`
	Trowel     notched     `json:"trowel" doc:"that the mortar is combed with"`
	Butter     bool        `json:"backButter" doc:"the backs of the tiles get a skim too"`
	Comb       unit.Length `json:"comb" doc:"mean thickness that the trowel leaves"`
	Skim       unit.Length `json:"skim" doc:"on the backs"`
	Area       area        `json:"area" doc:"of tile, joints not counted"`
	Hollow     liters      `json:"hollow" doc:"mortar that fills hollows of the ground"`
	Bed        liters      `json:"bed" doc:"all mortar"`
	Contact    *share      `json:"contact,omitempty" doc:"of a back with the mortar; absent: not checked"`
	Least      share       `json:"contactLeast" doc:"that is asked for"`
	Joints     liters      `json:"joints" doc:"grout"`
	JointsArea area        `json:"jointsArea" doc:"of grout, seen from in front"`
	Crosses    int         `json:"crosses" doc:"where four pieces meet"`
	Tees       int         `json:"tees" doc:"where three pieces meet"`
	Straights  int         `json:"straights" doc:"ends of joints at the edge of a field"`
	Clips      int         `json:"clips" doc:"leveling clips"`
	Weight     *kilograms  `json:"weight,omitempty" doc:"of tile, mortar and grout on a square metre; absent: not known"`
	Carries    *kilograms  `json:"carries,omitempty" doc:"that a square metre of the ground carries; absent: not known"`
	CarriesBy  string      `json:"carriesBy,omitempty" doc:"who says so"`
}

// notched is a notched trowel.
type notched struct {
	Notch    notch       `json:"notch" doc:"outline of a notch"`
	Width    unit.Length `json:"width" doc:"of a notch"`
	Depth    unit.Length `json:"depth" doc:"of a notch"`
	Tooth    unit.Length `json:"tooth" doc:"between two notches"`
	Held     *angle      `json:"held,omitempty" doc:"between trowel and ground; absent: not told, reckoned as upright"`
	Proposed bool        `json:"proposed" doc:"by this program; else the person's own"`
}

type notch string

func (notch) choices() []string { return []string{"square", "U", "V"} }

// recipe is how a powder is mixed.
type recipe struct {
	Good     string    `json:"good,omitempty" doc:"the user's name of it; absent: none is chosen"`
	Kind     string    `json:"kind" doc:"kind of good, in the document's word"`
	Powder   kilograms `json:"powder" doc:"for a liter in place"`
	Typical  bool      `json:"typical" doc:"the weight is no label's"`
	Source   string    `json:"source" doc:"of the weight"`
	Water    *liters   `json:"water,omitempty" doc:"for a liter in place; absent: not known"`
	PotLife  *minutes  `json:"potLife,omitempty" doc:"absent: not known"`
	OpenTime *minutes  `json:"openTime,omitempty" doc:"absent: not known"`
	Slake    *minutes  `json:"slake,omitempty" doc:"absent: not known"`
}

// stack is what lies on the floor.
type stack struct {
	Tile    *kilograms `json:"tile,omitempty" doc:"absent: not known"`
	Powders *kilograms `json:"powders,omitempty" doc:"absent: not known"`
	Typical bool       `json:"typical" doc:"a weight is no label's"`
	Spread  *area      `json:"spread,omitempty" doc:"least floor to spread it over; absent: not checked"`
}

func needsOf(p plan.Plan) needs {
	return needs{Lines: list(p.Takeoff.Lines, needOf), Faces: list(p.Takeoff.Faces, bedOf), Recipes: list(p.Takeoff.Recipes, recipeOf), Stack: stackOf(p.Takeoff.Stack)}
}

func needOf(l takeoff.Line) need {
	return need{Kind: l.Kind.String(), What: l.What, Good: l.Good, InsteadOf: l.InsteadOf, At: placeOf(orPath(l.At, "goods")), Parts: list(l.Parts, partOf), Waste: share(l.Waste),
		Need: knownAmount(l.Need, l.Known), Missing: l.Missing, Typical: l.Typical, Source: l.Source, Back: l.Back}
}

func partOf(x takeoff.Part) portion {
	return portion{Face: x.Face, For: x.For, Amount: amountOf(x.Amount), Takes: knownAmount(x.Takes, x.Known)}
}

func bedOf(f takeoff.Face) bed {
	out := bed{Face: f.Name, Mortar: f.Mortar, Grout: f.Grout, Trowel: notchedOf(f.Trowel, f.Proposed), Butter: f.Butter, Comb: f.Comb, Skim: f.Skim, Area: area(f.Area),
		Hollow: liters(f.Hollow), Bed: liters(f.Bed), Contact: known(share(f.Contact), f.ContactKnown), Least: share(f.ContactLeast), Joints: liters(f.Joints), JointsArea: area(f.JointsArea),
		Crosses: f.Crosses, Tees: f.Tees, Straights: f.Straights, Clips: f.Clips}
	w := f.Weight
	out.Weight, out.Carries, out.CarriesBy = known(kilograms(w.OnEach), w.Known), known(kilograms(w.Carries), w.CarriesKnown), w.Source
	return out
}

func notchedOf(t document.Trowel, proposed bool) notched {
	return notched{Notch: notch(t.Notch.String()), Width: t.Width, Depth: t.Depth, Tooth: t.Tooth, Held: known(angle(t.Held), t.Held > 0), Proposed: proposed}
}

func recipeOf(r takeoff.Recipe) recipe {
	b := r.Batch(unit.Liter)
	return recipe{Good: r.Good, Kind: r.Kind.String(), Powder: kilograms(b.Powder), Typical: r.Typical, Source: r.Source, Water: known(liters(b.Water), b.WaterKnown),
		PotLife: known(minutes(r.PotLife), r.PotLife > 0), OpenTime: known(minutes(r.OpenTime), r.OpenTime > 0), Slake: known(minutes(r.Slake), r.Slake > 0)}
}

func stackOf(s takeoff.Stack) stack {
	return stack{Tile: known(kilograms(s.Tile), s.Known), Powders: known(kilograms(s.Powders), s.Known), Typical: s.Typical, Spread: known(area(s.Spread), s.SpreadKnown)}
}
