package geom

import (
	"math/big"

	"dryfit/internal/unit"
)

// JogTurn is the turn below which two edges that move by different amounts are joined by a jog (our choice). Where their
// lines met, a difference of 1/2 in would push the corner 3 in along the wall; on site the thicker build-up just
// ends there.
const JogTurn = 10 * unit.Degree

// miter returns where the edges u and w, which met at v, meet after moving to their left by du and dw, or false
// if a jog must join them. Lengths of edges are square roots, taken to 96 fractional bits, so that the result is rounded
// once, half up.
//
// With p = v + αu + βw, moving by du means β(u×w) = du·|u|, by dw means -α(u×w) = dw·|w|.
func miter(v, u, w Point, du, dw unit.Length) (Point, bool) {
	cross, along := Cross(Point{}, u, w), dot(Point{}, u, Point{}, w)
	if cross == 0 || du != dw && along > 0 && gentle(cross, along) {
		return Point{}, false
	}
	lu, lw := scaled(norm(u), du), scaled(norm(w), dw)
	den := new(big.Int).Lsh(big.NewInt(cross), sqrtBits)
	return v.Add(Point{blendBig(lu, w.X, lw, u.X, den), blendBig(lu, w.Y, lw, u.Y, den)}), true
}

// gentle reports whether a turn with the given sine and cosine, both to one scale, is below JogTurn.
func gentle(sine, cosine int64) bool {
	r := rotationBy(JogTurn)
	s := new(big.Int).Mul(new(big.Int).SetUint64(abs(sine)), big.NewInt(r.cos))
	return s.Cmp(new(big.Int).Mul(big.NewInt(cosine), big.NewInt(r.sin))) < 0
}

const sqrtBits = 96

// norm returns |u| in 2^-96.
func norm(u Point) *big.Int {
	square := big.NewInt(dot(Point{}, u, Point{}, u))
	return square.Sqrt(square.Lsh(square, 2*sqrtBits))
}

func scaled(n *big.Int, d unit.Length) *big.Int { return n.Mul(n, big.NewInt(int64(d))) }

// blendBig returns (p·x - q·y)/den, rounded half up.
func blendBig(p *big.Int, x unit.Length, q *big.Int, y unit.Length, den *big.Int) unit.Length {
	num := new(big.Int).Mul(p, big.NewInt(int64(x)))
	num.Sub(num, new(big.Int).Mul(q, big.NewInt(int64(y))))
	return roundBig(num, den)
}

// roundBig returns floor(num/den + 1/2), held within a range that no caller takes for a place.
func roundBig(num, den *big.Int) unit.Length {
	if den.Sign() < 0 {
		num, den = new(big.Int).Neg(num), new(big.Int).Neg(den)
	}
	num = new(big.Int).Add(new(big.Int).Lsh(num, 1), den)
	q := new(big.Int).Div(num, new(big.Int).Lsh(den, 1)) // Euclidean: floor for a positive divisor
	if !q.IsInt64() || q.BitLen() > 60 {
		return unit.Length(q.Sign()) << 60
	}
	return unit.Length(q.Int64())
}

// shifted returns v moved by d to the left of u, rounded half up.
func shifted(v, u Point, d unit.Length) Point {
	l := norm(u)
	n := big.NewInt(int64(d))
	n.Lsh(n, sqrtBits)
	zero := new(big.Int)
	return v.Add(Point{blendBig(zero, 0, n, u.Y, l), blendBig(n, u.X, zero, 0, l)})
}

func within(p Point) bool { return p.X.Abs() <= unit.Reach && p.Y.Abs() <= unit.Reach }
