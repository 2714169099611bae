package wood

import (
	"slices"
	"strings"
)

// Species is a wood and how much it moves. Coefficients are of table 13-5 of the Wood Handbook, in hundred-thousandths of the size
// for each percent of moisture: CR across quarter-sawn boards, CT across flat-sawn ones. Shrinkages are of its table 4-3, from
// green to oven-dry, in tenths of a percent. A zero stands for what was not read there; the other table then gives it, by the
// identity that both obey. The oaks are the commercial groups of table 13-5; table 4-3 gives single species of them.
type Species struct {
	Name   string
	cr, ct int64 // table 13-5
	sr, st int64 // table 4-3
}

// species in the order of table 13-5, then what table 4-3 alone gives.
var species = [...]Species{
	{"red alder", 151, 256, 44, 73},
	{"white ash", 169, 274, 49, 78},
	{"quaking aspen", 119, 234, 0, 0},
	{"basswood", 230, 330, 0, 0},
	{"beech", 190, 431, 55, 119},
	{"paper birch", 219, 304, 0, 0},
	{"yellow birch", 256, 338, 73, 95},
	{"black cherry", 126, 248, 37, 71},
	{"chestnut", 116, 234, 0, 0},
	{"sugar maple", 165, 353, 0, 0},
	{"red maple", 137, 289, 0, 0},
	{"red oak", 158, 369, 0, 0},
	{"white oak", 180, 365, 0, 0},
	{"sweetgum", 183, 365, 0, 0},
	{"sycamore", 172, 296, 0, 0},
	{"black walnut", 190, 274, 55, 78},
	{"pecan hickory", 169, 315, 0, 0},
	{"American elm", 144, 338, 0, 0},
	{"yellow-poplar", 0, 0, 46, 82},
	{"coast Douglas-fir", 0, 0, 48, 76},
	{"white fir", 112, 245, 33, 70},
	{"western redcedar", 0, 0, 24, 50},
}

// Find returns the species of a name, written in any case.
func Find(name string) (Species, bool) {
	i := slices.IndexFunc(species[:], func(s Species) bool { return strings.EqualFold(s.Name, name) })
	if i < 0 {
		return Species{}, false
	}
	return species[i], true
}

// Names lists the species.
func Names() []string {
	out := make([]string, len(species))
	for i, s := range species {
		out[i] = s.Name
	}
	return out
}

// radial and tangential return a coefficient as a share for each share of moisture, and the whole shrinkage as a share.
func (s Species) radial() swelling     { return swellingOf(s.cr, s.sr) }
func (s Species) tangential() swelling { return swellingOf(s.ct, s.st) }

// swelling is one direction of a species: the coefficient of equation 13-2 for each percent, and S of equation 13-3 in percent.
type swelling struct{ c, s float64 }

// swellingOf fills what one table lacks from the other. Equation 13-3 at an initial moisture of 10 % gives C = 1/(3000/S - 20),
// and the printed tables agree with that to all their digits.
func swellingOf(c, s int64) swelling {
	w := swelling{float64(c) / 1e5, float64(s) / 10}
	if c == 0 {
		w.c = 1 / (3000/w.s - 20)
	}
	if s == 0 {
		w.s = 3000 / (1/w.c + 20)
	}
	return w
}
