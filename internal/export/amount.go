package export

import (
	"dryfit/internal/money"
	"dryfit/internal/unit"
)

// amount is an exact amount: one of its keys is there.
type amount struct {
	Pieces    *int64       `json:"pieces,omitempty" doc:"how many"`
	Kilograms *kilograms   `json:"kilograms,omitempty" doc:"weight"`
	Liters    *liters      `json:"liters,omitempty" doc:"volume"`
	Area      *area        `json:"area,omitempty" doc:"area"`
	Length    *unit.Length `json:"length,omitempty" doc:"length"`
}

func (amount) shared() string { return "An exact amount: the one key that is there says of what" }

func amountOf(q unit.Quantity) amount {
	var a amount
	switch q.Of {
	case unit.ByCount:
		a.Pieces = &q.N
	case unit.ByMass:
		k := kilograms(q.N)
		a.Kilograms = &k
	case unit.ByVolume:
		l := liters(q.N)
		a.Liters = &l
	case unit.ByArea:
		s := area(q.N)
		a.Area = &s
	case unit.ByLength:
		m := unit.Length(q.N)
		a.Length = &m
	}
	return a
}

// knownAmount is absent where it is not known.
func knownAmount(q unit.Quantity, known bool) *amount {
	if !known {
		return nil
	}
	a := amountOf(q)
	return &a
}

// kilograms is an exact weight: 1/1,600,000 g has twelve decimals of a kilogram.
type kilograms unit.Mass

// MarshalJSON writes all decimals that are not zero.
func (m kilograms) MarshalJSON() ([]byte, error) {
	return []byte(decimal(int64(m), int64(unit.Kilogram), 12)), nil
}

// price is an exact amount of money, which may be negative where two are compared.
type price money.Amount

// MarshalJSON writes at most three decimals.
func (a price) MarshalJSON() ([]byte, error) {
	return []byte(decimal(int64(a), int64(money.One), 3)), nil
}

// minutes is a length of time.
type minutes unit.Minutes
