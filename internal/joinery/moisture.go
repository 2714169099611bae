package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
	"dryfit/internal/wood"
)

// moistures is what wood is reckoned to go through: its moisture when it is glued and cut, and the driest and wettest of the house.
type moistures struct {
	species            wood.Species
	rings              wood.Rings
	glued, least, most unit.Ratio
	Source             string // where the moisture of the house comes from, in words
}

// A heated house, common practice: 30 % relative humidity in winter is 6 % moisture, 65 % in summer 12 %; room temperature.
const (
	dryHouse = 6 * wood.Percent
	wetHouse = 12 * wood.Percent
)

// roomWarmth stands in where a reading of the air has no temperature: 21 °C, 70 °F.
const roomWarmth = 21 * unit.Celsius

// moisture gathers the facts of a slab's movement: its own, else the stock's, else the hygrometer's, else the climate's default.
func (r *room) moisture(own document.WoodMoves, g good, of string) (moistures, bool) {
	m := moistures{rings: r.rings(own, g)}
	name := own.Species
	if !name.Known {
		name = g.stock.Species
	}
	at := own.At
	if at.Path == "" {
		at = g.stock.At
	}
	if !name.Known {
		if at.Path == "" {
			at = diag.Place{Path: "stock"}
		}
		r.lacks(at, "the species of the wood of "+of)
		return m, false
	}
	var known bool
	if m.species, known = wood.Find(name.V); !known {
		r.look("species-unknown", name.At, "no movement is on record for {0}: how far {1} moves is not checked", "write one of the species that are, or the nearest to it: white oak, red oak, sugar maple, black walnut, black cherry, …", diag.T(name.V), diag.T(of))
		return m, false
	}
	r.house(&m, own, at)
	if own.Glued.Known {
		m.glued = own.Glued.V.Most
		return m, true
	}
	if own.Glued.Unknown {
		r.lacks(own.Glued.At, "the moisture of the wood of "+of+" when it is glued")
		return m, false
	}
	m.glued = (m.least + m.most) / 2
	r.assume(at, "the wood of {0} is taken to have {1} when it is cut and glued: the middle of the year's range", "no moisture meter reading: let the wood lie in the room for two weeks and measure it", diag.T(of), diag.Percent(m.glued))
	return m, true
}

func (r *room) rings(own document.WoodMoves, g good) wood.Rings {
	v := own.Rings
	if !v.Known {
		v = g.stock.Rings
	}
	switch {
	case !v.Known || v.V == document.Between:
		return wood.Rings{}
	case v.V == document.QuarterSawn:
		return wood.QuarterSawn
	}
	return wood.FlatSawn
}

// house finds the range of moisture of the house.
func (r *room) house(m *moistures, own document.WoodMoves, at diag.Place) {
	if own.InHouse.Known {
		m.least, m.most, m.Source = own.InHouse.V.Least, own.InHouse.V.Most, "as written"
		return
	}
	first := true
	for _, a := range r.doc.Climate.Air {
		if !a.Humidity.Known {
			continue
		}
		warm := roomWarmth
		if a.Warmth.Known {
			warm = unit.Temperature(a.Warmth.V) * unit.Celsius / 1000
		}
		lo, hi := wood.Equilibrium(warm, a.Humidity.V.Least), wood.Equilibrium(warm, a.Humidity.V.Most)
		if first {
			m.least, m.most, first = lo, hi, false
		}
		m.least, m.most = min(m.least, lo), max(m.most, hi)
	}
	m.Source = "the hygrometer's readings"
	if first || m.least == m.most {
		m.least, m.most, m.Source = dryHouse, wetHouse, "a heated house"
		r.assume(at, "wood in this house is taken to have {0} in winter and {1} in summer", "common practice for a heated house; write readings of a hygrometer over the year, or in the house, for this one", diag.Percent(dryHouse), diag.Percent(wetHouse))
	}
}
