// Package money holds decimal amounts of money: parsed, added, multiplied and rounded without a float.
//
// An Amount counts thousandths of a currency's unit, which is as fine as any currency of ISO 4217 with a coin of its own
// goes; a Currency says how many decimals its prices have. A line is rounded once, to the currency's smallest coin, and a
// total is the sum of its rounded lines: it equals them to the cent.
package money

import (
	"errors"
	"fmt"
	"math/big"
	"strconv"
	"strings"

	"dryfit/internal/unit"
)

// Amount counts thousandths of the currency's unit.
type Amount int64

// One is one unit of any currency.
const One Amount = 1000

// Most is the largest price that a document may state; a hundred thousand of them still add up in an int64.
const Most = 10_000_000 * One

// Currency is a code of ISO 4217: three capital letters.
type Currency string

// Decimals is how many decimals prices in the currency have: two, but for those that ISO 4217 lists with none or three.
func (c Currency) Decimals() int {
	switch c {
	case "BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "VND", "VUV", "XAF", "XOF", "XPF":
		return 0
	case "BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND":
		return 3
	}
	return 2
}

// coin is the smallest amount that the currency has.
func (c Currency) coin() Amount { return Amount([...]int64{1000, 100, 10, 1}[c.Decimals()]) }

// Exact reports whether an amount can be paid in the currency.
func (c Currency) Exact(a Amount) bool { return a%c.coin() == 0 }

// Valid reports whether the code has the form of one.
func (c Currency) Valid() bool {
	return len(c) == 3 && strings.Trim(string(c), "ABCDEFGHIJKLMNOPQRSTUVWXYZ") == ""
}

// Parse reads a plain decimal number: 28, 28.5, 28.50. It takes no sign, no currency sign and no thousands mark, whose
// meaning differs from land to land.
func Parse(s string) (Amount, error) {
	whole, part, point := strings.Cut(s, ".")
	switch {
	case whole == "" || strings.Trim(whole+part, "0123456789") != "" || point && part == "":
		return 0, errors.New("not a plain number")
	case len(part) > 3:
		return 0, errors.New("more than three decimals")
	case len(whole) > 8:
		return 0, errors.New("more than ten million")
	}
	n, err := strconv.ParseInt(whole+part+strings.Repeat("0", 3-len(part)), 10, 64)
	if err != nil || Amount(n) > Most {
		return 0, errors.New("more than ten million")
	}
	return Amount(n), nil
}

// Times is so many of a price.
func (a Amount) Times(n int) Amount { return a * Amount(n) }

// Per is the amount's share of den parts, num of them, rounded half up to the currency's coin: a tax, or what part of a pack costs.
func (a Amount) Per(num, den int64, c Currency) Amount {
	coin := int64(c.coin())
	n := new(big.Int).Mul(big.NewInt(int64(a)), big.NewInt(2*num))
	d := new(big.Int).Mul(big.NewInt(den), big.NewInt(coin))
	n.Add(n, d).Div(n, d.Mul(d, big.NewInt(2)))
	return Amount(n.Int64()) * Amount(coin)
}

// Tax is the share of an amount, rounded half up to the coin.
func (a Amount) Tax(rate unit.Ratio, c Currency) Amount {
	return a.Per(int64(rate), int64(unit.One), c)
}

// Say writes an amount with the currency's decimals and no sign of it, for a column: "28.50".
func (c Currency) Say(a Amount) string {
	sign := ""
	if a < 0 {
		sign, a = "-", -a
	}
	if d := c.Decimals(); d > 0 {
		return fmt.Sprintf("%s%d.%0*d", sign, a/One, d, a%One/c.coin())
	}
	return fmt.Sprintf("%s%d", sign, a/One)
}

// With writes an amount with its currency's code: "28.50 USD".
func (c Currency) With(a Amount) string { return c.Say(a) + " " + string(c) }
