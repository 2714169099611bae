package part

// Side is one of the six sides of a part.
type Side uint8

const (
	Face  Side = iota // up, as the part lies
	Back              // down
	Front             // the edge toward the person, y = 0
	Rear              // the edge away, y = width
	Left              // the end at x = 0
	Right             // the end at x = length
)

func (s Side) String() string {
	return [...]string{"face", "back", "front edge", "rear edge", "left end", "right end"}[s]
}

// Flat reports whether the side is the face or the back.
func (s Side) Flat() bool { return s == Face || s == Back }

// IsEnd reports whether the side is one of the ends, which cross the length.
func (s Side) IsEnd() bool { return s == Left || s == Right }

// Opposite is the side across the part.
func (s Side) Opposite() Side { return s ^ 1 }
