package document

import (
	"math/big"
	"regexp"

	"dryfit/internal/diag"
	"dryfit/internal/text"
)

// Pace is how fast somebody is at a kind of job.
type Pace struct {
	Kind  string
	At    diag.Place
	Speed Value[Speed]
}

// Speed is a time for one job, for a square metre or for a metre.
type Speed struct {
	Of      SpeedOf
	Seconds int64
}

// SpeedOf is what a speed is for.
type SpeedOf uint8

const (
	Each SpeedOf = iota
	PerArea
	PerLength
)

const pacePattern = `^(` + timeTermsPattern + `(/(m2|m²|sq ?ft|m|ft))?|[0-9]+(\.[0-9]+)?\s*(m2|m²|sq ?ft|m|ft)/h)$`

var (
	timeFor = regexp.MustCompile(`^(` + timeTermsPattern + `)/(m2|m²|sq ?ft|m|ft)$`)
	perHour = regexp.MustCompile(`^([0-9]+(?:\.[0-9]+)?)\s*(m2|m²|sq ?ft|m|ft)/h$`)
)

// A square foot is 0.09290304 m², a foot 0.3048 m: 16 CFR 500.19.
var metresOf = map[string]*big.Rat{"m2": big.NewRat(1, 1), "m²": big.NewRat(1, 1), "m": big.NewRat(1, 1),
	"sq ft": big.NewRat(9_290_304, 100_000_000), "sqft": big.NewRat(9_290_304, 100_000_000), "ft": big.NewRat(3048, 10_000)}

func speedOf(u string) SpeedOf {
	if u == "m" || u == "ft" {
		return PerLength
	}
	return PerArea
}

// speed reads how fast somebody is, in seconds rounded half up.
var speed = scalar("a pace: 1.2 h/m2, 30 sq ft/h, or the time for one: 2 h", pacePattern, func(s string) (Speed, string) {
	if m := perHour.FindStringSubmatch(s); m != nil {
		v, ok := rational(m[1])
		if !ok || v.Sign() == 0 {
			return Speed{}, "nothing an hour is no pace"
		}
		v.Mul(v, metresOf[m[2]])
		return seconds(new(big.Rat).Quo(big.NewRat(3600, 1), v), speedOf(m[2]))
	}
	of, one, typed := Each, big.NewRat(1, 1), s
	if m := timeFor.FindStringSubmatch(s); m != nil {
		unit := m[len(m)-1]
		of, one, typed = speedOf(unit), metresOf[unit], m[1]
	}
	long, why := parseLasting(typed)
	if why != "" {
		return Speed{}, why
	}
	return seconds(new(big.Rat).Quo(big.NewRat(60*int64(long), 1), one), of)
})

func seconds(v *big.Rat, of SpeedOf) (Speed, string) {
	n, ok := whole(v)
	if !ok || n > 366*24*3600 {
		return Speed{}, "more than a year"
	}
	return Speed{of, n}, ""
}

var paces = form[[]Pace]{&shape{kind: namedShape, say: "by kind of job: " + speed.shape.say, names: "kind of job", item: speed.shape}, func(r *reader, n *text.Node) ([]Pace, bool) {
	if !r.want(n, text.Map, "a pace for each kind of job, like {set: 1.2 h/m2}") {
		return nil, false
	}
	var all []Pace
	for _, e := range n.Entries {
		if e.Value.Kind == text.Empty {
			r.empty(e, row{name: e.Key, shape: speed.shape})
			continue
		}
		all = append(all, Pace{e.Key, e.At, valueOf(r, speed, e.Value)})
	}
	return all, true
}}
