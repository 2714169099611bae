package unit

import "math"

// Flow is a flow of water or air, counted in nanoliters a minute. Gallons, cubic feet and liters, by the minute or the
// second, are whole numbers of it: 1 US gallon is 231 cubic inches, and an inch is 25.4 mm, both exactly.
type Flow int64

const (
	LiterMinute    Flow = 1_000_000_000
	LiterSecond    Flow = 60 * LiterMinute
	GallonMinute   Flow = 3_785_411_784  // 231 in³ of 16.387064 mL
	CubicFtMinute  Flow = 28_316_846_592 // 1728 in³
	MostFlow       Flow = 10_000 * LiterSecond
	secondsAMinute      = 60
)

// FlowOf rounds liters a minute to the grid.
func FlowOf(litersMinute float64) Flow {
	return Flow(math.Floor(litersMinute*float64(LiterMinute) + 0.5))
}

// MM3S returns cubic millimeters a second, for reckoning inside a stage.
func (f Flow) MM3S() float64 { return float64(f) / 1000 / secondsAMinute }

// GPM returns US gallons a minute, for showing.
func (f Flow) GPM() float64 { return float64(f) / float64(GallonMinute) }

// CFM returns cubic feet a minute, for showing.
func (f Flow) CFM() float64 { return float64(f) / float64(CubicFtMinute) }

// LS returns liters a second, for showing.
func (f Flow) LS() float64 { return float64(f) / float64(LiterSecond) }
