package unit

import "math/big"

// Temperature counts thousandths of a degree Celsius. A reading in degrees Fahrenheit is rounded to that once, half up.
type Temperature int64

// Celsius is one degree; as a difference it is one kelvin too.
const Celsius Temperature = 1000

// FromFahrenheit converts thousandths of a degree Fahrenheit, half up: 32 °F is 0 °C and 9 °F are 5 K exactly.
func FromFahrenheit(thousandths int64) Temperature {
	return Temperature(floorDiv(2*5*(thousandths-32_000)+9, 2*9))
}

// Fahrenheit returns thousandths of a degree Fahrenheit, half up.
func (t Temperature) Fahrenheit() int64 { return floorDiv(2*(int64(t)*9+32_000*5)+5, 2*5) }

// Kelvin returns the absolute temperature for a formula.
func (t Temperature) Kelvin() float64 { return float64(t)/float64(Celsius) + 273.15 }

// Temperature shows a temperature to a tenth of a degree in the reader's own scale: "54 °F", "12.2 °C".
func (s Style) Temperature(t Temperature) string {
	if s.System == Millimetres {
		return tenths(int64(t)) + " °C"
	}
	return tenths(t.Fahrenheit()) + " °F"
}

// tenths words thousandths to a tenth, half up.
func tenths(thousandths int64) string {
	n := floorDiv(2*thousandths+100, 200)
	return trimZeros(big.NewRat(n, 10).FloatString(1))
}
