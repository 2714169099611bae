package cut

import (
	"dryfit/internal/memo"
	"dryfit/internal/opt/bar"
	"dryfit/internal/opt/nest"
)

// Known keeps how the last few lots were cut, for runs that follow each other while a room is worked on: a lot whose pieces, stock and
// saw are alike is cut alike. A plan is the same to the byte with it and without. The zero value is ready, nil keeps nothing, and
// runs may share it at the same time.
type Known struct {
	sheets memo.Memo[nest.Problem, nest.Result]
	sticks memo.Memo[bar.Problem, bar.Result]
}

func (k *Known) nested(p nest.Problem) nest.Result {
	if k == nil {
		return nest.Pack(p)
	}
	return k.sheets.Of(p, nest.Pack)
}

func (k *Known) packed(p bar.Problem) bar.Result {
	if k == nil {
		return bar.Pack(p)
	}
	return k.sticks.Of(p, bar.Pack)
}
