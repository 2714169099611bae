package bond

import (
	"fmt"

	"dryfit/internal/unit"
)

// Kind is a bond's name in the trade.
type Kind string

const (
	Stack             Kind = "stack"
	Running           Kind = "running"
	Herringbone       Kind = "herringbone"
	DoubleHerringbone Kind = "double herringbone"
	Basketweave       Kind = "basketweave"
	Hexagon           Kind = "hexagon"
	Pinwheel          Kind = "pinwheel"
	ModularThree      Kind = "modular 3"
	ModularFour       Kind = "modular 4"
)

// Spec is a bond as it is asked for.
type Spec struct {
	Kind Kind
	// Num/Den is the offset of a running bond as a share of the pitch; with Den 0 the offset is the length Shift.
	Num, Den int
	Shift    unit.Length
	// Back: courses go to and fro (0, s, 0, s …) instead of stepping on (0, s, 2s …).
	Back bool
	// Vertical: columns are straight and are shifted along themselves.
	Vertical bool
	// Diagonal: the whole pattern lies at 45 degrees to the face.
	Diagonal bool
}

// String returns the bond as a person writes it: "diagonal running 1/3", "vertical stack", "herringbone 45".
func (s Spec) String() string {
	name := string(s.Kind)
	if s.Kind == Running {
		name += " " + s.offset()
	}
	if s.Vertical {
		name = "vertical " + name
	}
	switch {
	case s.Diagonal && s.Kind == Stack && !s.Vertical:
		return "diagonal"
	case s.Diagonal && s.axis():
		return "diagonal " + name
	case s.Diagonal:
		return name + " 45"
	}
	return name
}

func (s Spec) offset() string {
	text := fmt.Sprintf("%d/%d", s.Num, s.Den)
	if s.Den == 0 {
		text = s.Shift.JSON() + " mm"
	}
	if s.Back {
		text += " to and fro"
	}
	return text
}

func (s Spec) axis() bool { return s.Kind == Stack || s.Kind == Running }
