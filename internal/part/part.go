// Package part says what a piece of wood, board or other stock is to become: its size when it is finished, the run of its
// grain, its banded edges, and all that is cut, bored or shaped in it. The trades make parts; package cut finds stock for them.
//
// The frame of a part. A part lies face up, its front edge toward the person, its left end at the left hand. x runs from the left
// end to the right, y from the front edge to the rear, z from the face down into the thickness. Length goes along x, width along
// y, thickness along z. What is done to the part is located on one of its six sides in these same coordinates: on the face and
// the back by x and y (the back is seen through the face, so that a hole bored through has one place), on the front and the rear
// edge by x and z, on the ends by y and z. So every number is measured from the left end, the front edge or the face.
//
// All sizes are exact. A part holds no stock, no price and no place in a sheet.
package part

import (
	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// Part is one thing to make, or several alike.
type Part struct {
	Name  string
	At    diag.Place // the entry of the document that asks for it
	For   string     // what it belongs to: "vanity"
	Count int
	Size  Size // finished, banding included
	Grain Grain
	Stock string // the name of the stock that is asked for

	Over   Over    // what is left on beyond the finished size, to be trimmed off later
	Bands  []Band  // banded edges
	Labels []Label // what is written on the part itself

	// Match names parts that are to come from one board or sheet side by side, so that their figure runs on; Order is the place
	// in that row, from the left end or the front edge.
	Match string
	Order int

	Channels []Channel
	Holes    []Hole
	Cutouts  []Cutout
	Ends     []End
	Tapers   []Taper
	Profiles []Profile
}

// Size is length along the part's x, width along y, thickness along z.
type Size struct {
	Length unit.Length `json:"length"`
	Width  unit.Length `json:"width"`
	Thick  unit.Length `json:"thick"`
}

// Grain is how the stock's grain must run in the part. Solid wood is Along, but for odd parts; sheets without a grain take Any.
type Grain uint8

const (
	Along  Grain = iota // along the length
	Across              // along the width
	Any
)

func (g Grain) String() string { return [...]string{"along", "across", "any way"}[g] }

// Over is what a part is cut larger than it ends up: in all, not for each side.
type Over struct {
	Length unit.Length `json:"length"`
	Width  unit.Length `json:"width"`
	Thick  unit.Length `json:"thick"`
}

// Band is edging on one edge or end. The finished size holds it, so the part is cut smaller by Thick; edging too thin to count
// has Thick 0.
type Band struct {
	On    Side        `json:"on"`
	Thick unit.Length `json:"thick"`
	Name  string      `json:"name,omitempty"` // of the edging, as the document has it
}

// Label is a word that stands on a side of the part: "this face up", "front edge".
type Label struct {
	On   Side   `json:"on"`
	Text string `json:"text"`
}

// Cut returns the size to which the part is sawn out: finished, less its edging, more what is trimmed off later.
func (p Part) Cut() Size {
	s := Size{p.Size.Length + p.Over.Length, p.Size.Width + p.Over.Width, p.Size.Thick + p.Over.Thick}
	for _, b := range p.Bands {
		switch b.On {
		case Left, Right:
			s.Length -= b.Thick
		case Front, Rear:
			s.Width -= b.Thick
		}
	}
	return s
}

// Extent returns how far a side reaches: across is along its first coordinate, up along its second, deep into the part.
func (s Size) Extent(on Side) (across, up, deep unit.Length) {
	switch on {
	case Front, Rear:
		return s.Length, s.Thick, s.Width
	case Left, Right:
		return s.Width, s.Thick, s.Length
	}
	return s.Length, s.Width, s.Thick
}

// Offcut is what a cut leaves that is worth keeping.
type Offcut struct {
	Stock string
	Size  Size // length along the stock's grain
	From  int  // the number of the stick or sheet that it is left of, from 1
}
