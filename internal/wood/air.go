package wood

import (
	"math"

	"dryfit/internal/unit"
)

// equation holds the constants of equation 4-5 as polynomials of the temperature.
type equation struct{ w, k, k1, k2 [3]float64 }

// celsius is equation 4-5 of the Wood Handbook (Hailwood and Horrobin's form) for degrees Celsius; its constants are from memory
// and confirmed by the published example of 140 °F and 55 %.
var celsius = equation{
	w: [3]float64{349, 1.29, .0135}, k: [3]float64{.805, .000736, -.00000273},
	k1: [3]float64{6.27, -.00938, -.000303}, k2: [3]float64{1.91, .0407, -.000293},
}

// Equilibrium returns the moisture that wood takes in air of a temperature and relative humidity, whatever the species. The
// equation errs by under 0.13 points on average and 0.9 at most (Simpson).
func Equilibrium(t unit.Temperature, humidity unit.Ratio) unit.Ratio {
	m := celsius.at(float64(t)/float64(unit.Celsius), float64(humidity)/float64(unit.One))
	return unit.Ratio(math.Floor(m*float64(Percent) + 0.5))
}

// at returns percent, for a share of what the air could hold.
func (e equation) at(t, h float64) float64 {
	of := func(p [3]float64) float64 { return p[0] + p[1]*t + p[2]*t*t }
	kh, k1, k2 := of(e.k)*h, of(e.k1), of(e.k2)
	return 1800 / of(e.w) * (kh/(1-kh) + (k1*kh+2*k1*k2*kh*kh)/(1+k1*kh+k1*k2*kh*kh))
}
