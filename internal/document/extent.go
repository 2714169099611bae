package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// Bounds of an opening beyond which its figures are a slip of the pen or of the unit (our own): nothing is set into a hole of less than an
// inch, nor a niche into a wall that is deeper than two feet.
const (
	leastOpening = unit.Inch
	deepestNiche = 24 * unit.Inch
)

// checkExtent tells of an opening that no one can have meant.
func (r *reader) checkExtent(o Opening) {
	if o.Across.Both {
		r.tooSmall(o, "wide", o.Across.At, o.Across.Hi-o.Across.Lo)
	} else if o.Width.Known {
		r.tooSmall(o, "wide", o.Width.At, o.Width.V)
	}
	if o.Up.Both {
		r.tooSmall(o, "high", o.Up.At, o.Up.Hi-o.Up.Lo)
	} else if o.Height.Known {
		r.tooSmall(o, "high", o.Height.At, o.Height.V)
	}
	if o.Kind == Niche && o.Depth.Known && o.Depth.V > deepestNiche {
		r.stop("opening-absurd", o.Depth.At, "{0} is {1} deep: no wall takes a niche deeper than {2}", "check the figure and its unit", diag.T(o.Name), diag.X(o.Depth.V), diag.L(deepestNiche))
	}
}

func (r *reader) tooSmall(o Opening, way string, at diag.Place, size unit.Length) {
	if size < leastOpening {
		r.stop("opening-absurd", at, "{0} is {1} {2}: an opening is at least {3}", "check the figure and its unit", diag.T(o.Name), diag.X(size), diag.T(way), diag.L(leastOpening))
	}
}
