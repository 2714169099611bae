// Package export writes a plan for other programs: plan.json with its JSON Schema and its handbook, and pieces.csv.
//
// It takes a plan.Plan and gives bytes. It computes nothing: every number is the plan's own, and every sentence is
// worded by the packages that word it for sheets. The view types in this package are the only description of the
// file's structure: the JSON, the Schema and docs/plan.md all come from them. Lengths, areas, angles and shares are
// exact decimals, keys stand in a fixed order, nothing reads a clock: the same plan gives the same bytes.
package export

import "dryfit/internal/plan"

// Format is the version of plan.json. Additions leave it; a removal or a new meaning raises it.
const Format = 1

// JSON returns plan.json.
func JSON(p plan.Plan) []byte { return indented(encoded(viewOf(p))) }
