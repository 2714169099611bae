package fit

import (
	"strconv"

	"dryfit/internal/unit"
)

// flowGrain is by how much two flows may differ and be the same: each is rounded to whole nanoliters a minute by itself, 2.2 gpm in a document and
// 11/5 gpm in a record.
const flowGrain unit.Flow = 1

// sayFlow words a flow of water in both systems: "1.5 gpm (5.7 L/min)".
func sayFlow(f unit.Flow) string {
	return tenth(f, unit.GallonMinute) + " gpm (" + tenth(f, unit.LiterMinute) + " L/min)"
}

// sayAir words a flow of air: "80 cfm (37.8 L/s)".
func sayAir(f unit.Flow) string {
	return tenth(f, unit.CubicFtMinute) + " cfm (" + tenth(f, unit.LiterSecond) + " L/s)"
}

// tenth is a flow in a unit to one decimal, half up, without a needless 0.
func tenth(f, one unit.Flow) string {
	whole := int64(f / one)
	rest := (10*(int64(f)-whole*int64(one))*2 + int64(one)) / (2 * int64(one))
	whole, rest = whole+rest/10, rest%10
	if rest == 0 {
		return strconv.FormatInt(whole, 10)
	}
	return strconv.FormatInt(whole, 10) + "." + strconv.FormatInt(rest, 10)
}
