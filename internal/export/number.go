package export

import (
	"fmt"
	"math/big"
	"strings"

	"dryfit/internal/unit"
)

// area is an exact number of square millimetres: (1/16000 mm)² has fourteen decimals.
type area unit.Area

// MarshalJSON writes all decimals that are not zero.
func (a area) MarshalJSON() ([]byte, error) {
	return []byte(decimal(int64(a), int64(unit.SquareMillimetre), 14)), nil
}

// angle is an exact number of degrees, counter-clockwise positive.
type angle unit.Angle

// MarshalJSON writes at most six decimals.
func (a angle) MarshalJSON() ([]byte, error) {
	return []byte(decimal(int64(a), int64(unit.Degree), 6)), nil
}

// share is an exact ratio: 0.02 is 2 %.
type share unit.Ratio

// MarshalJSON writes at most six decimals.
func (r share) MarshalJSON() ([]byte, error) {
	return []byte(decimal(int64(r), int64(unit.One), 6)), nil
}

// thousandths is a plain number kept in thousandths.
type thousandths int64

// MarshalJSON writes at most three decimals.
func (n thousandths) MarshalJSON() ([]byte, error) { return []byte(decimal(int64(n), 1000, 3)), nil }

// decimal writes n/one, which must end within the given number of places.
func decimal(n, one int64, places int) string {
	s := big.NewRat(n, one).FloatString(places)
	if back, ok := new(big.Rat).SetString(s); !ok || back.Cmp(big.NewRat(n, one)) != 0 {
		panic(fmt.Sprintf("export: %d/%d does not end within %d places", n, one, places))
	}
	return strings.TrimSuffix(strings.TrimRight(s, "0"), ".")
}

// liters is an exact volume.
type liters unit.Volume

// MarshalJSON writes at most six decimals.
func (v liters) MarshalJSON() ([]byte, error) {
	return []byte(decimal(int64(v), int64(unit.Liter), 6)), nil
}
