package plan

import "dryfit/internal/tiling"

// Names for the plan's own values, so that what stands above it shows them without importing a stage.
type (
	Face   = tiling.Face
	Field  = tiling.Field
	Layout = tiling.Layout
)
