package bond

import (
	"strconv"

	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// side is one side of a tile and how many modules it and its joint must measure.
type side struct {
	length  unit.Length
	modules int
}

// sides closes if one module fits all: (length + joint) / modules is the same for every side.
type sides []side

// give is how far a joint within the pattern may differ from the others before it is seen: 0.3 mm, a tenth of a 3 mm joint
// (our choice; a dry lay gives sizes no better than that).
const give = 300 * unit.Micrometre

// Joints that are offered to make a bond close: 1/16 in is the least of A108.02 s. 4.3.8; above 1/2 in a joint is no longer
// a joint of common practice.
const (
	leastJoint  = unit.Inch / 16
	widestJoint = unit.Inch / 2
)

// most returns the longest side, the one that sets the module.
func (s sides) most() side {
	best := s[0]
	for _, x := range s[1:] {
		if x.modules > best.modules {
			best = x
		}
	}
	return best
}

// ruler returns the place of the k-th module line, rounded once from the longest side.
func (s sides) ruler(joint unit.Length) func(k int) unit.Length {
	m := s.most()
	return func(k int) unit.Length { return (m.length + joint).MulDiv(int64(k), int64(m.modules)) }
}

// misfit returns by how much the joint after a side differs from the joint asked for, where it differs most.
func (s sides) misfit(joint unit.Length) unit.Length {
	_, d := s.worst(joint)
	return d
}

// worst returns the side after which the joint differs most, and by how much.
func (s sides) worst(joint unit.Length) (side, unit.Length) {
	at, found := s.ruler(joint), s[0]
	var most unit.Length
	for _, x := range s {
		if d := at(x.modules) - x.length - joint; d.Abs() > most.Abs() {
			found, most = x, d
		}
	}
	return found, most
}

// closing returns the joint with which all sides fit, if there is one a setter would grout. From the longest side L (a modules) and the
// shortest S (c modules): (L+j)/a = (S+j)/c gives j = (c·L - a·S)/(a-c).
func (s sides) closing() (unit.Length, bool) {
	l, c := s.most(), s.least()
	if l.modules == c.modules {
		return 0, false
	}
	raw := int64(l.length)*int64(c.modules) - int64(c.length)*int64(l.modules)
	j := unit.Length(raw).MulDiv(1, int64(l.modules-c.modules))
	return j, j >= leastJoint && j <= widestJoint && s.misfit(j).Abs() <= give
}

func (s sides) least() side {
	best := s[0]
	for _, x := range s[1:] {
		if x.modules < best.modules {
			best = x
		}
	}
	return best
}

// close reports whether the bond can be laid, and says why not or what the joints become.
func (s sides) close(spec Spec, joint unit.Length, found *diag.List) bool {
	d := s.misfit(joint)
	switch {
	case d == 0:
		return true
	case d.Abs() <= give && joint+d >= 0:
		found.Add(diag.Note, "bond-eased", diag.Place{}, "{0} closes with some joints {1} instead of {2}", "",
			diag.T(spec.String()), diag.X(joint+d), diag.X(joint))
		return true
	}
	s.refuse(spec, joint, found)
	return false
}

// refuse says that the bond does not close, by how much, and with which joint it would. With L the longest side (a modules) and S the one that
// misses most (c modules), c·L is held against a·S and a-c joints, which is the same as one module for both.
func (s sides) refuse(spec Spec, joint unit.Length, found *diag.List) {
	l := s.most()
	x, _ := s.worst(joint)
	a, c := l.modules, x.modules
	long, short := l.length*unit.Length(c), x.length*unit.Length(a)+joint*unit.Length(a-c)
	values := []diag.Value{diag.T(spec.String()), diag.X(joint), diag.X((long - short).Abs()), diag.F(widestJoint), diag.X(l.length), diag.X(x.length)}
	mend := "no joint up to {3} makes these sizes close: choose another bond or tile made for it"
	if j, ok := s.closing(); ok {
		mend = "a joint of {6} would make it close"
		values = append(values, diag.X(j))
	}
	sum := times(c, "{4}") + " against " + times(a, "{5}")
	if a > c {
		sum += " + " + times(a-c, "{1}")
	}
	found.Add(diag.Stop, "bond-does-not-close", diag.Place{}, "{0} does not close with these sizes at a joint of {1}: they miss by {2}: "+sum, mend, values...)
}

// times words a product, and one time a thing as the thing.
func times(n int, what string) string {
	if n == 1 {
		return what
	}
	return strconv.Itoa(n) + " × " + what
}
