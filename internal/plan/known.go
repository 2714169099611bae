package plan

import (
	"dryfit/internal/cut"
	"dryfit/internal/schedule"
	"dryfit/internal/tiling"
)

// Known keeps what the long searches of the last runs found, for runs that follow each other while a room is worked on: what such a
// search sees is compared with what it saw before, and where all is alike its answer is taken. A plan is the same to the byte with it
// and without. The zero value is ready, nil keeps nothing, and runs may share it at the same time.
type Known struct {
	tiles tiling.Known
	stock cut.Known
	days  schedule.Known
}

func (k *Known) tilesOf() *tiling.Known {
	if k == nil {
		return nil
	}
	return &k.tiles
}

func (k *Known) stockOf() *cut.Known {
	if k == nil {
		return nil
	}
	return &k.stock
}

func (k *Known) daysOf() *schedule.Known {
	if k == nil {
		return nil
	}
	return &k.days
}
