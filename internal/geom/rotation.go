package geom

import (
	"math/bits"

	"dryfit/internal/unit"
)

// rotation is a turn about the origin: whole quarter turns, and the sine and cosine of the rest in 2^-62. Whole numbers
// all through, so that every machine turns a point to the same place.
type rotation struct {
	turn     Turn
	sin, cos int64
}

const fixedOne = int64(1) << 62

func rotationBy(a unit.Angle) rotation {
	const quarter = 90 * unit.Degree
	a %= 4 * quarter
	if a < 0 {
		a += 4 * quarter
	}
	r := rotation{turn: Turn(a / quarter), cos: fixedOne}
	if rest := a % quarter; rest != 0 {
		r.sin, r.cos = fixedSin(rest), fixedSin(quarter-rest)
	}
	return r
}

// fixedSin returns the sine of an angle of 0° to 90° in 2^-62, within a few units.
func fixedSin(a unit.Angle) int64 {
	if a > 45*unit.Degree {
		return fixedCos(90*unit.Degree - a)
	}
	x := fixedRadians(a)
	return series(x, x, 1)
}

func fixedCos(a unit.Angle) int64 { return series(fixedOne, fixedRadians(a), 0) }

// fixedRadians returns a·π/180° in 2^-62.
func fixedRadians(a unit.Angle) int64 {
	const piOver4 = 3622009729038561421 // π/4 · 2^62, rounded
	return mulDiv(piOver4, int64(a), int64(45*unit.Degree))
}

// series sums term - term·x²/((n+1)(n+2)) + …, the power series of the sine (n = 1) or cosine (n = 0).
func series(term, x, n int64) int64 {
	square := mulDiv(x, x, fixedOne)
	sum := int64(0)
	for ; term != 0; n += 2 {
		sum += term
		term = -mulDiv(mulDiv(term, square, fixedOne), 1, (n+1)*(n+2))
	}
	return sum
}

func (r rotation) point(p Point) Point {
	p = r.turn.Point(p)
	if r.sin == 0 {
		return p
	}
	return Point{blend(int64(p.X), r.cos, int64(p.Y), -r.sin), blend(int64(p.X), r.sin, int64(p.Y), r.cos)}
}

// blend returns x·c + y·s with c and s in 2^-62, rounded half up once.
func blend(x, c, y, s int64) unit.Length {
	hi1, lo1 := signedMul(x, c)
	hi2, lo2 := signedMul(y, s)
	lo, carry := bits.Add64(lo1, lo2, 0)
	hi := hi1 + hi2 + carry
	lo, carry = bits.Add64(lo, uint64(fixedOne)/2, 0)
	hi += carry
	return unit.Length(int64(hi)<<2 | int64(lo>>62))
}

// signedMul returns a·b as a 128-bit two's complement.
func signedMul(a, b int64) (hi, lo uint64) {
	hi, lo = bits.Mul64(uint64(a), uint64(b))
	if a < 0 {
		hi -= uint64(b)
	}
	if b < 0 {
		hi -= uint64(a)
	}
	return hi, lo
}
