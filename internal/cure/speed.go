package cure

import (
	"math"

	"dryfit/internal/unit"
)

// A Form gives the speed of hardening at a temperature as a share of that at a reference.
type Form interface {
	Speed(at, reference unit.Temperature) unit.Ratio
}

// Arrhenius is the speed exp(-E/R (1/T - 1/Tr)), kelvin: ASTM C1074, equation of the equivalent age (from memory). It
// holds the activation energy E in J/mol; C1074 appendix X1 gives 40,000 to 45,000 for Type I cement (from memory).
type Arrhenius int

// Cement is the form that the program uses: the lower energy of those that ASTM C1074 gives for Type I cement without
// admixtures (from memory).
const Cement Arrhenius = 40_000

// gas is the molar gas constant in J/(mol K), as ASTM C1074 prints it (from memory).
const gas = 8.314

// Speed implements Form.
func (e Arrhenius) Speed(at, reference unit.Temperature) unit.Ratio {
	return ratio(math.Exp(-float64(e) / gas * (1/at.Kelvin() - 1/reference.Kelvin())))
}

// NurseSaul is the speed (T - T0)/(Tr - T0) above the datum temperature T0, and nothing below it: ASTM C1074, equation of
// the temperature-time factor.
type NurseSaul unit.Temperature

// Speed implements Form.
func (datum NurseSaul) Speed(at, reference unit.Temperature) unit.Ratio {
	above, full := int64(at)-int64(datum), int64(reference)-int64(datum)
	if above <= 0 || full <= 0 {
		return 0
	}
	return ratio(float64(above) / float64(full))
}

// Eurocode is the speed of the age adjusted for temperature of Eurocode 2, EN 1992-1-1 annex B, equation B.10:
// exp(13.65 - 4000/(273 + T)) for 0 to 80 °C (the clause was read, its constants are from memory). It is another answer to hold the form that the
// program uses against.
type Eurocode struct{}

// Speed implements Form.
func (Eurocode) Speed(at, reference unit.Temperature) unit.Ratio {
	return ratio(eurocode(at) / eurocode(reference))
}

// eurocode is the factor as it is printed, 1 at about 20 °C.
func eurocode(t unit.Temperature) float64 {
	return math.Exp(13.65 - 4000/(273+float64(t)/float64(unit.Celsius)))
}

func ratio(v float64) unit.Ratio { return unit.Ratio(math.Floor(v*float64(unit.One) + 0.5)) }
