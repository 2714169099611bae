package rule

import "dryfit/internal/unit"

// KneeDepth returns the depth of knee space that 2010 ADA 306.3 asks for at a height above the finished floor: 11 in at
// 9 in, 1 in less for every 6 in up (306.3.4), so 8 in at 27 in. ok is false outside 9 to 27 in, where it asks nothing.
func KneeDepth(height unit.Length) (depth unit.Length, ok bool) {
	low, high := 9*in, 27*in
	if height < low || height > high {
		return 0, false
	}
	return 11*in - (height-low).MulDiv(1, 6), true
}
