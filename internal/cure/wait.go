package cure

import "dryfit/internal/unit"

// A Reading is a temperature that holds from a minute on, until the next reading.
type Reading struct {
	From unit.Minutes
	Temp unit.Temperature
}

// A History is readings, ascending. The first one holds before its time too. Minutes count from any one origin.
type History []Reading

// Constant is a room that never changes.
func Constant(t unit.Temperature) History { return History{{0, t}} }

// at gives the reading that holds at a minute, and the minute at which it ends; 0 if it does not.
func (h History) at(m unit.Minutes) (t unit.Temperature, until unit.Minutes, ends bool) {
	i := 0
	for i+1 < len(h) && h[i+1].From <= m {
		i++
	}
	if i+1 < len(h) {
		return h[i].Temp, h[i+1].From, true
	}
	return h[i].Temp, 0, false
}

// Coldest is the history of what lies between two things of different temperature, taken for the colder of the two at every minute. Of one that
// is not known it is the other.
func Coldest(a, b History) History {
	if len(a) == 0 || len(b) == 0 {
		return append(append(History{}, a...), b...)
	}
	var out History
	for i, j := 0, 0; i < len(a) || j < len(b); {
		var from unit.Minutes
		switch {
		case j == len(b) || i < len(a) && a[i].From <= b[j].From:
			from = a[i].From
		default:
			from = b[j].From
		}
		for i < len(a) && a[i].From == from {
			i++
		}
		for j < len(b) && b[j].From == from {
			j++
		}
		x, _, _ := a.at(from)
		y, _, _ := b.at(from)
		out = append(out, Reading{from, min(x, y)})
	}
	return out
}

// Range gives the coldest and the warmest reading that hold between two minutes.
func (h History) Range(from, to unit.Minutes) (coldest, warmest unit.Temperature) {
	coldest, _, _ = h.at(from)
	warmest = coldest
	for _, r := range h {
		if r.From > from && r.From < to {
			coldest, warmest = min(coldest, r.Temp), max(warmest, r.Temp)
		}
	}
	return coldest, warmest
}

// A Label is a time that a label gives and the temperature that it gives it at.
type Label struct {
	Time unit.Minutes
	At   unit.Temperature
}

// Age is the equivalent age at the reference temperature of what has lain from one minute to another, rounded half up.
func Age(f Form, h History, reference unit.Temperature, from, to unit.Minutes) unit.Minutes {
	var age int64
	for from < to {
		t, until, ends := h.at(from)
		next := to
		if ends {
			next = min(to, until)
		}
		age += int64(next-from) * int64(f.Speed(t, reference))
		from = next
	}
	return unit.Minutes((age + int64(unit.One)/2) / int64(unit.One))
}

// Never is what Wait returns where the cold lets nothing harden.
const Never unit.Minutes = -1

// Wait is how long the label's time takes from a minute on in this room, rounded half up: never less than the label
// says, Never if the room stays so cold that nothing hardens. Without a reading it is what the label says.
func Wait(f Form, h History, l Label, from unit.Minutes) unit.Minutes {
	if len(h) == 0 {
		return l.Time
	}
	return through(h, l, from, func(t unit.Temperature) unit.Ratio { return min(unit.One, f.Speed(t, l.At)) })
}

// through adds up the time until the age that the label asks for is reached.
func through(h History, l Label, from unit.Minutes, speed func(unit.Temperature) unit.Ratio) unit.Minutes {
	left := int64(l.Time) * int64(unit.One) // millionths of a minute of age
	now := from
	for {
		t, until, ends := h.at(now)
		v := int64(speed(t))
		switch {
		case ends && (v == 0 || left > int64(until-now)*v):
			left -= int64(until-now) * v
			now = until
		case v == 0:
			return Never
		default:
			return now - from + unit.Minutes((2*left+v)/(2*v))
		}
	}
}
