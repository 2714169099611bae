package document

import (
	"strconv"
	"strings"

	"dryfit/internal/unit"
)

// dressedLess is what dry dressing takes off a nominal size of softwood lumber: PS 20, American Softwood Lumber
// Standard, as quoted by two trade tables; 1 in boards are 3/4 in thick.
var dressedLess = map[int]unit.Length{
	1: unit.Inch / 4,
	2: unit.Inch / 2, 3: unit.Inch / 2, 4: unit.Inch / 2, 6: unit.Inch / 2,
	8: 3 * unit.Inch / 4, 10: 3 * unit.Inch / 4, 12: 3 * unit.Inch / 4, 14: 3 * unit.Inch / 4, 16: 3 * unit.Inch / 4,
}

// dressed gives the dry dressed thickness and width of a nominal size such as "2x10". Timbers, over 4 in thick, follow
// another rule and are not known here.
func dressed(nominal string) (thick, wide unit.Length, ok bool) {
	a, b, _ := strings.Cut(nominal, "x")
	t, err1 := strconv.Atoi(a)
	w, err2 := strconv.Atoi(b)
	lessT, ok1 := dressedLess[t]
	lessW, ok2 := dressedLess[w]
	if err1 != nil || err2 != nil || !ok1 || !ok2 || t > 4 {
		return 0, 0, false
	}
	return unit.Length(t)*unit.Inch - lessT, unit.Length(w)*unit.Inch - lessW, true
}
