package rule

import "dryfit/internal/unit"

// Arm is what a table asks of a trap arm.
type Arm struct {
	Most     unit.Length // longest way from the weir to the vent
	Fall     unit.Length // least fall in a foot; 0 where the table gives none
	Least    unit.Length // shortest way: two diameters; 0 where the sets give none
	MostDrop unit.Length // the whole drop: one diameter; 0 where the sets give none
	Length   Rule        // the record behind Most
	Slope    Rule        // the record behind Fall
}

// nominal pairs sizes of pipe that go by two names: inches and millimeters of nominal bore. Common practice.
var nominal = [][2]unit.Length{{5 * in / 4, 32 * mm}, {3 * in / 2, 40 * mm}, {2 * in, 50 * mm}, {3 * in, 80 * mm}, {4 * in, 100 * mm}}

// sameSize says whether two nominal sizes are one.
func sameSize(a, b unit.Length) bool {
	if a == b {
		return true
	}
	for _, n := range nominal {
		if a == n[0] && b == n[1] || a == n[1] && b == n[0] {
			return true
		}
	}
	return false
}

// TrapArm returns what one set asks of a trap arm of a nominal size of pipe; ok is false where its table has no such size.
func TrapArm(set Sets, size unit.Length) (Arm, bool) { return For(set).TrapArm(size) }

// TrapArm returns the strictest of the chosen sets for a nominal size of pipe; ok is false where no table has it.
func (b Book) TrapArm(size unit.Length) (Arm, bool) {
	length, ok := b.sized(ArmLength, AtMost, size)
	if !ok {
		return Arm{}, false
	}
	a := Arm{Most: length.Rule.Limit, Length: length.Rule}
	if fall, ok := b.sized(ArmFall, AtLeast, size); ok {
		a.Fall, a.Slope = fall.Rule.Limit, fall.Rule
	}
	if least, ok := b.Least(ArmLeast); ok {
		a.Least = unit.Length(least.Rule.Number) * size
	}
	if drop, ok := b.Most(ArmDrop); ok {
		a.MostDrop = unit.Length(drop.Rule.Number) * size
	}
	return a, true
}

// DropAt returns how far a pipe drops over a length at a fall in a foot.
func DropAt(fall, length unit.Length) unit.Length { return length.MulDiv(int64(fall), int64(foot)) }
