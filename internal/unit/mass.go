package unit

import "math"

// Mass counts 1/1,600,000 g. On that grid a kilogram (1,600,000,000), a pound (725,747,792) and an ounce (45,359,237)
// are all whole: the pound is 453.59237 g exactly (NIST SP 811, B.8).
type Mass int64

const (
	Gram     Mass = 1_600_000
	Kilogram Mass = 1000 * Gram
	Ounce    Mass = 45_359_237
	Pound    Mass = 16 * Ounce
)

// Kg returns the mass in kilograms, for rates only.
func (m Mass) Kg() float64 { return float64(m) / float64(Kilogram) }

// MassOf rounds a computed number of kilograms to the grid, half up.
func MassOf(kg float64) Mass { return Mass(math.Floor(kg*float64(Kilogram) + 0.5)) }
