package unit

import "strconv"

// Say words an amount for a reader: pounds, US gallons, quarts and fluid ounces, square feet and feet for those who
// measure in inches, else kilograms, liters, square metres and metres. Three digits count.
func (s Style) Say(q Quantity) string {
	if q.Of == ByCount {
		return strconv.FormatInt(q.N, 10)
	}
	for _, u := range sayings[s.System][q.Of] {
		if abs(q.N) >= u.least {
			return digits(q.N, u.one) + " " + u.word
		}
	}
	last := sayings[s.System][q.Of]
	return digits(q.N, last[len(last)-1].one) + " " + last[len(last)-1].word
}

// saying is a unit that amounts from least on are told in.
type saying struct {
	word  string
	one   float64
	least int64
}

const (
	cubicInch = 16_387.064 // mm³
	gallon    = 3_785_411  // mm³, rounded down: from where on a volume is told in it
)

var sayings = [...]map[Dimension][]saying{
	Inches: {
		ByMass:   {{"lb", float64(Pound), int64(Pound)}, {"oz", float64(Ounce), 0}},
		ByVolume: {{"gal", 231 * cubicInch, 2 * gallon}, {"qt", 231.0 / 4 * cubicInch, gallon / 4}, {"fl oz", 231.0 / 128 * cubicInch, 0}},
		ByArea:   {{"sq ft", float64(SquareFoot), 0}},
		ByLength: {{"ft", float64(Foot), int64(Foot)}, {"in", float64(Inch), 0}},
	},
	Millimetres: {
		ByMass:   {{"kg", float64(Kilogram), int64(Kilogram)}, {"g", float64(Gram), 0}},
		ByVolume: {{"L", float64(Liter), int64(Liter)}, {"mL", float64(Liter) / 1000, 0}},
		ByArea:   {{"m²", float64(Metre) * float64(Metre), 0}},
		ByLength: {{"m", float64(Metre), int64(Metre)}, {"mm", float64(Millimetre), 0}},
	},
}

// digits prints n/one half up: whole from 100 on, else with one decimal, below 10 with two.
func digits(n int64, one float64) string {
	v := float64(n) / one
	places := 2
	switch a := max(v, -v); {
	case a >= 99.95:
		places = 0
	case a >= 9.995:
		places = 1
	}
	return trimmed(strconv.FormatFloat(v, 'f', places, 64))
}

func trimmed(s string) string {
	for i := range s {
		if s[i] == '.' {
			return trimZeros(s)
		}
	}
	return s
}

func abs(n int64) int64 {
	if n < 0 {
		return -n
	}
	return n
}
