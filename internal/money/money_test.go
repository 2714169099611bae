package money

import (
	"math/big"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/unit"
)

func TestParse(t *testing.T) {
	for in, want := range map[string]Amount{"28.50": 28_500, "28": 28_000, "0.125": 125, "0": 0, "10000000": Most} {
		if a, err := Parse(in); err != nil || a != want {
			t.Errorf("%s: %d %v", in, a, err)
		}
	}
	for _, in := range []string{"", ".", "28.", ".5", "-1", "+1", "1,000", "$5", "1e3", "1.2345", "10000000.001", "99999999999999999999"} {
		if a, err := Parse(in); err == nil {
			t.Errorf("%q reads as %d", in, a)
		}
	}
}

func TestSay(t *testing.T) {
	for _, c := range []struct {
		a    Amount
		c    Currency
		want string
	}{{28_500, "USD", "28.50 USD"}, {5, "KWD", "0.005 KWD"}, {1_234_000, "JPY", "1234 JPY"}, {-1_050, "EUR", "-1.05 EUR"}, {40, "EUR", "0.04 EUR"}} {
		if got := c.c.With(c.a); got != c.want {
			t.Errorf("%d: %s, want %s", c.a, got, c.want)
		}
	}
}

// 8.25 % of 28.50 is 2.35125: 2.35. 8.25 % of 100.00 is 8.25. 19 % of 0.50 is 0.095, half up 0.10. 10 % of 1,235 yen is 123.5: 124.
func TestTax(t *testing.T) {
	for _, c := range []struct {
		a    Amount
		rate unit.Ratio
		c    Currency
		want Amount
	}{{28_500, 82_500, "USD", 2_350}, {100_000, 82_500, "USD", 8_250}, {500, 190_000, "EUR", 100}, {1_235_000, 100_000, "JPY", 124_000}, {0, 82_500, "USD", 0}} {
		if got := c.a.Tax(c.rate, c.c); got != c.want {
			t.Errorf("%d at %d: %d, want %d", c.a, c.rate, got, c.want)
		}
	}
}

// Rounding is within half a coin of the exact share, for any currency.
func TestPerIsNear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := rapid.SampledFrom([]Currency{"USD", "JPY", "KWD"}).Draw(t, "currency")
		a := Amount(rapid.Int64Range(0, int64(Most)).Draw(t, "amount"))
		num, den := rapid.Int64Range(0, 1_000_000).Draw(t, "num"), rapid.Int64Range(1, 1_000_000).Draw(t, "den")
		got := a.Per(num, den, c)
		off := new(big.Rat).Sub(big.NewRat(int64(got), 1), new(big.Rat).Mul(big.NewRat(int64(a), 1), big.NewRat(num, den)))
		if half := big.NewRat(int64(c.coin()), 2); off.Abs(off).Cmp(half) > 0 || !c.Exact(got) {
			t.Fatalf("%d x %d/%d = %d", a, num, den, got)
		}
	})
}

func TestCurrencyForm(t *testing.T) {
	for c, want := range map[Currency]bool{"USD": true, "usd": false, "US": false, "US$": false, "": false, "EURO": false} {
		if c.Valid() != want {
			t.Errorf("%q: %v", c, !want)
		}
	}
}
