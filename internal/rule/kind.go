package rule

import "dryfit/internal/unit"

// Kind says what a requirement's number counts.
type Kind uint8

const (
	Length Kind = iota
	Fall        // a length over Per
	Share
	Number
	Flow
	Area
)

func (k Kind) String() string {
	return [...]string{"length", "fall", "share", "number", "flow", "area"}[k]
}

// Kind returns what the number counts.
func (r Rule) Kind() Kind {
	switch {
	case r.Per != 0:
		return Fall
	case r.Ratio != 0:
		return Share
	case r.Number != 0:
		return Number
	case r.Flow != 0:
		return Flow
	case r.Area != 0:
		return Area
	}
	return Length
}

// Value returns the number in the unit of its kind: 1/16000 mm, millionths, nanoliters a minute … so that two records of
// one subject can be compared.
func (r Rule) Value() int64 {
	return int64(r.Limit) + int64(r.Ratio) + r.Number + int64(r.Flow) + int64(r.Area)
}

// with returns the record with another number of the same kind.
func (r Rule) with(value int64) Rule {
	switch r.Kind() {
	case Share:
		r.Ratio = unit.Ratio(value)
	case Number:
		r.Number = value
	case Flow:
		r.Flow = unit.Flow(value)
	case Area:
		r.Area = unit.Area(value)
	default:
		r.Limit = unit.Length(value)
	}
	return r
}

// Holds says whether a measured value keeps to the requirement; Stated ones have no side.
func (r Rule) Holds(value int64) bool {
	switch r.Bound {
	case AtLeast:
		return value >= r.Value()
	case AtMost:
		return value <= r.Value()
	}
	return true
}

// stricter says whether r allows less than s, on the side that both limit.
func (r Rule) stricter(s Rule) bool {
	if r.Bound == AtMost {
		return r.Value() < s.Value()
	}
	return r.Value() > s.Value()
}
