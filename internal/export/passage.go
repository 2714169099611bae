package export

import (
	"dryfit/internal/joinery"
	"dryfit/internal/unit"
)

// passage is a place that a thing has to go through on its way in.
type passage struct {
	Way    wayWord       `json:"way" doc:"slid in between walls, carried through a door, stood up from lying"`
	Needs  []unit.Length `json:"needs" doc:"of the thing: a width, the two lesser sides, a diagonal"`
	Has    []unit.Length `json:"has" doc:"of the place: the width, width and height in the clear, the height"`
	By     string        `json:"by" doc:"where the figures of the place come from, or the door's name"`
	Passes bool          `json:"passes" doc:"it does"`
}

// wayWord is a way in.
type wayWord string

var wayWords = [...]wayWord{joinery.BetweenWalls: "between walls", joinery.ThroughDoor: "through a door", joinery.TippedUp: "stood up"}

func (wayWord) choices() []string {
	out := make([]string, len(wayWords))
	for i, w := range wayWords {
		out[i] = string(w)
	}
	return out
}

func passageOf(p joinery.Passage) passage {
	n := 1
	if p.Way == joinery.ThroughDoor {
		n = 2
	}
	return passage{wayWords[p.Way], p.Needs[:n], p.Has[:n], p.Source, p.Passes}
}
