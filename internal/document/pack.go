package document

import (
	"errors"
	"slices"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/money"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Pack is one pack that a shop sells: `50 lb bag: 28.50`.
type Pack struct {
	Name  string // as written
	At    diag.Place
	Size  unit.Quantity
	Sides [2]unit.Length // of a sheet; zero of what is none
	Price Value[money.Amount]
}

// Supply is who sells a good and by when.
type Supply struct {
	From      Value[string]
	LeadTime  Value[unit.Minutes]
	OrderedOn Value[string] // a date
}

// Rate is one amount for another: what a good yields, covers or takes.
type Rate = unit.Rate

// Range is from one length to another.
type Range struct{ From, To unit.Length }

// TrowelCover is the area that a mortar covers with one trowel.
type TrowelCover struct {
	Trowel Trowel
	At     diag.Place
	Covers Rate
}

const priceSay = "a price, as a plain number: 28.50"

// price reads a plain decimal number; its currency stands once, under buying.
var price = scalar(priceSay, `^[0-9]+(\.[0-9]{1,3})?$`, func(s string) (money.Amount, string) {
	a, err := money.Parse(s)
	if err != nil {
		return 0, err.Error() + "; the currency stands once, under buying"
	}
	return a, ""
})

// packs reads sizes with their prices. A pack whose size can not be read is told and left out: what is in it is not known.
var packs = form[[]Pack]{&shape{kind: namedShape, say: "packs by size, each with its price", names: "pack, which is its size: 50 lb bag", item: price.shape}, func(r *reader, n *text.Node) ([]Pack, bool) {
	if !r.want(n, text.Map, "packs with their prices") {
		return nil, false
	}
	var all []Pack
	for _, e := range n.Entries {
		size, why := packSize(e.Key, r.units)
		if why != "" {
			r.stop("pack-sizeless", e.At, "how much is in the pack {0}? {1}", "write the amount first: 50 lb bag, 1 gal pail, 3 x 5 ft sheet, box of 100, each", diag.T(short(e.Key)), diag.T(short2(why)))
			continue
		}
		p := Pack{Name: e.Key, At: e.At, Size: size, Sides: unit.Sides(e.Key, r.units)}
		if e.Value.Kind == text.Empty {
			p.Price = Value[money.Amount]{Unknown: true, At: e.At}
		} else {
			p.Price = valueOf(r, price, e.Value)
		}
		all = append(all, p)
	}
	r.alike(n.Entries, "pack")
	return all, true
}}

// packSize reads "50 lb bag", "box of 100" or "each".
func packSize(name string, bare unit.System) (unit.Quantity, string) {
	if slices.Contains([]string{"each", "piece", "one"}, strings.ToLower(strings.TrimSpace(name))) {
		return unit.Count(1), ""
	}
	if i := strings.LastIndex(name, " of "); i >= 0 {
		q, rest, err := unit.ParseQuantity(strings.TrimSpace(name[i+4:])+" pieces", bare)
		if err == nil && rest == "" {
			return q, ""
		}
		q, _, err = unit.ParseQuantity(name[i+4:], bare)
		return q, reason(err)
	}
	q, _, err := unit.ParseQuantity(name, bare)
	return q, reason(err)
}

func reason(err error) string {
	var q *unit.QuantityError
	switch {
	case err == nil:
		return ""
	case errors.As(err, &q):
		return q.Why
	}
	return err.Error()
}

// quantity reads an amount with nothing behind it.
var quantity = form[unit.Quantity]{&shape{say: "an amount: 4 pieces, 12 ft, 2 kg", pattern: `^[0-9].*$`}, func(r *reader, n *text.Node) (unit.Quantity, bool) {
	if !r.want(n, text.Scalar, "an amount") {
		return unit.Quantity{}, false
	}
	q, rest, err := unit.ParseQuantity(strings.TrimSpace(n.Text), r.units)
	if err != nil || rest != "" {
		r.stop("amount-unreadable", n.At, "{0} is no amount: {1}", "write it like one of these: {2}", diag.T(short(n.Text)), diag.T(reasonOr(err, "stray text "+rest)), diag.T(unit.QuantityExamples))
		return q, false
	}
	return q, true
}}

func reasonOr(err error, other string) string {
	if err == nil {
		return other
	}
	return reason(err)
}

// rate reads "amount per amount" of the dimensions that make sense.
func rate(say string, of unit.Dimension, per ...unit.Dimension) form[Rate] {
	return form[Rate]{&shape{say: say, pattern: `^[0-9].* per .+$`}, func(r *reader, n *text.Node) (Rate, bool) {
		if !r.want(n, text.Scalar, say) {
			return Rate{}, false
		}
		v, why := parseRate(n.Text, r.units)
		switch {
		case why != "":
		case v.Amount.Of != of:
			why = "a " + v.Amount.Of.String() + " and no " + of.String()
		case !slices.Contains(per, v.Per.Of):
			why = "per a " + v.Per.Of.String() + ", which it is not sold or mixed by"
		}
		if why != "" {
			r.stop("amount-unreadable", n.At, "{0} can not be read: {1}", "write {2}", diag.T(short(n.Text)), diag.T(why), diag.T(say))
			return Rate{}, false
		}
		return v, true
	}}
}

func parseRate(s string, bare unit.System) (v Rate, why string) {
	amount, per, ok := strings.Cut(s, " per ")
	if !ok {
		return v, "per how much?"
	}
	var rest string
	var err error
	if v.Amount, rest, err = unit.ParseQuantity(strings.TrimSpace(amount), bare); err != nil || rest != "" {
		return v, reasonOr(err, "stray text "+rest)
	}
	per = strings.TrimSpace(per)
	if per != "" && notDigit([]rune(per)[0]) {
		per = "1 " + per
	}
	if v.Per, rest, err = unit.ParseQuantity(per, bare); err != nil || rest != "" {
		return v, reasonOr(err, "stray text "+rest)
	}
	return v, ""
}

// share reads a part of one: `10 %`.
var share = scalar("a share: 10 %", `^[0-9]+(\.[0-9]+)?\s*%$`, func(s string) (unit.Ratio, string) {
	v, ok := ratioOf(s)
	switch {
	case !ok || !strings.HasSuffix(s, "%"):
		return 0, "not a share in %"
	case v > unit.One:
		return 0, "more than 100 %"
	}
	return v, ""
})

// lengthRange reads two lengths, or one that is both; a unit behind the second counts for both.
var lengthRange = form[Range]{&shape{say: "a range: 1/8 to 1/2", pattern: `^.+$`}, func(r *reader, n *text.Node) (Range, bool) {
	if !r.want(n, text.Scalar, "a range") {
		return Range{}, false
	}
	from, to, two := strings.Cut(n.Text, " to ")
	if !two {
		to = from
	}
	if u := trailingUnit(to); trailingUnit(from) == "" {
		from += " " + u
	}
	lo, hi := r.side(n, from, joint), r.side(n, to, joint)
	if lo.Known && hi.Known && lo.V > hi.V {
		r.stop("range-reversed", n.At, "{0} is more than {1}", "write the smaller first", diag.X(lo.V), diag.X(hi.V))
		return Range{}, false
	}
	return Range{lo.V, hi.V}, lo.Known && hi.Known
}}

var coversWith = form[[]TrowelCover]{&shape{kind: namedShape, say: "areas by trowel", names: "trowel", item: trowelRate.shape}, func(r *reader, n *text.Node) ([]TrowelCover, bool) {
	if !r.want(n, text.Map, "areas by trowel") {
		return nil, false
	}
	var all []TrowelCover
	for _, e := range n.Entries {
		t, ok := trowel.read(r, &text.Node{Kind: text.Scalar, Text: e.Key, At: e.At})
		v, known := trowelRate.read(r, e.Value)
		if ok && known {
			all = append(all, TrowelCover{t, e.At, v})
		}
	}
	return all, true
}}

var trowelRate = rate("an area: 65 sq ft per 50 lb", unit.ByArea, unit.ByMass)
