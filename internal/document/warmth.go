package document

import (
	"math/big"
	"strings"
)

var (
	thousand     = big.NewRat(1000, 1)
	coverageMost = big.NewRat(1_000_000, 1)
	// 1 sq ft = 0.09290304 m2 (16 CFR 500.19) and 1 US gallon = 231 cubic inches = 3.785411784 L, so 1 sq ft/gal = 24.5424… thousandths of m2/L.
	squareFootAGallon = new(big.Rat).Mul(thousand, big.NewRat(9_290_304_000, 378_541_178_400))
)

// warmth reads a temperature in thousandths of a degree Celsius, rounded half up.
var warmth = scalar("a temperature: 68 F or 20 C", `^-?[0-9]+(\.[0-9]+)?\s*°?\s*[FC]$`, func(s string) (int64, string) {
	number, fahrenheit := strings.CutSuffix(s, "F")
	number, celsius := strings.CutSuffix(number, "C")
	number, minus := strings.CutPrefix(strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(number), "°")), "-")
	v, ok := rational(number)
	if !ok || fahrenheit == celsius {
		return 0, "not a number with F or C"
	}
	if minus {
		v.Neg(v)
	}
	if fahrenheit {
		v.Sub(v, big.NewRat(32, 1)).Mul(v, big.NewRat(5, 9))
	}
	n, _ := whole(v.Mul(v, thousand))
	if n < -60_000 || n > 80_000 {
		return 0, "no temperature of a room"
	}
	return n, ""
})
