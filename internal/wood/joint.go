package wood

import (
	"math"

	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// Gap limits of installed work: Architectural Woodwork Standards, edition 1, 2009, the installation rules on page 331.
var (
	GapFlat     = gap("gap-wood-flat", "gap between flat wood and wood", 3*unit.Inch/250)
	GapShaped   = gap("gap-wood-shaped", "gap between shaped wood and wood", unit.Inch/40)
	GapOther    = gap("gap-wood-other", "gap between wood and another material", unit.Inch/20)
	GapOthers   = gap("gap-other-flat", "gap between two other materials, flat", unit.Inch/20)
	GapMoulded  = gap("gap-other-shaped", "gap between two other materials, shaped", 3*unit.Inch/40)
	FlushFlat   = gap("flush-wood-flat", "step between flat wood and wood", 3*unit.Inch/250)
	FlushShaped = gap("flush-wood-shaped", "step between shaped wood and wood", unit.Inch/40)
	FlushOther  = gap("flush-wood-other", "step between wood and another material", unit.Inch/20)
)

// GapShare is the share of a joint's length that may gap at all.
var GapShare = rule.Rule{ID: "gap-share", What: "share of a joint's length that may gap", Ratio: 30 * Percent,
	Source: gapSource, Clause: gapClause, Known: rule.Read}

const (
	gapSource = "Architectural Woodwork Standards, ed. 1, 2009"
	gapClause = "installation 6.1.10-6.1.11"
)

func gap(id, what string, limit unit.Length) rule.Rule {
	return rule.Rule{ID: id, What: what, Limit: limit, Source: gapSource, Clause: gapClause, Known: rule.Read}
}

// Miter returns how far the saw is swung from square for each side of a mitered corner: half of what the corner lacks to 180°.
func Miter(corner unit.Angle) unit.Angle { return 90*unit.Degree - corner/2 }

// Opening returns how wide a miter gapes where both sides are sawn at an angle that does not suit the corner: the wedge over the
// length of the miter across the stock.
func Opening(stock unit.Length, saw, corner unit.Angle) unit.Length {
	length := float64(stock) / math.Cos(saw.Radians())
	wedge := (corner - (180*unit.Degree - 2*saw)).Radians()
	return unit.FromFloat(length * math.Tan(math.Abs(wedge)))
}
