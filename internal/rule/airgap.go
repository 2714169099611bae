package rule

import "dryfit/internal/unit"

// AirGaps holds how far a tap's outlet stays above the rim that water could rise to, so that it can never be sucked back.
// The limit is the floor under a multiple of the effective opening: see AirGap.
var AirGaps = []Rule{
	{ID: "air-gap", Sets: IRC | IPC | UPC, Subject: GapAway, Bound: AtLeast, Limit: in, Source: "ASME A112.1.2", Clause: "as in IRC 2003 table P2902.2.1", Known: Quoted,
		What: "tap outlet above the flood rim: twice its effective opening, and not under 1 in"},
	{ID: "air-gap-wall", Sets: IRC | IPC | UPC, Subject: GapNear, Bound: AtLeast, Limit: 3 * in / 2, Source: "ASME A112.1.2", Clause: "as in IRC 2003 table P2902.2.1", Known: Quoted,
		What: "tap outlet above the flood rim near a wall: three times its effective opening, and not under 1 1/2 in"},
	{ID: "air-gap-uk", Sets: UK, Subject: GapAway, Bound: AtLeast, Limit: 20 * mm, Source: "EN 1717, EN 13076", Clause: "type AA", Known: FromMemory,
		What: "tap outlet above the rim: twice its bore, and not under 20 mm"},
	{ID: "air-gap-uk-wall", Sets: UK, Subject: GapNear, Bound: AtLeast, Limit: 20 * mm, Source: "EN 1717, EN 13076", Clause: "type AA", Known: FromMemory,
		What: "tap outlet above the rim near a wall: nothing more is known to be asked than away from it"},
}

// Near says what stands beside a tap's outlet.
type Near uint8

const (
	Clear      Near = iota
	NearWall        // one wall within three times the opening
	NearCorner      // two walls that meet, both within four times the opening
)

// Times of the effective opening within which a wall counts as near. ASME A112.1.2, from memory.
const (
	nearOne = 3
	nearTwo = 4
)

// NearTo says what stands beside an outlet. one is the distance of the nearest wall, splash or bowl side that rises above the rim, from the
// edge of the opening; two that of another which meets it, negative where there is none.
func NearTo(opening, one, two unit.Length) Near {
	switch {
	case one < 0:
		return Clear
	case two >= 0 && max(one, two) <= nearTwo*opening:
		return NearCorner
	case one <= nearOne*opening:
		return NearWall
	}
	return Clear
}

// AirGap returns the least air gap of one set for an effective opening (the smallest bore of the outlet, as a diameter), and the
// record behind it. ok is false for a set that asks for none.
func AirGap(set Sets, opening unit.Length, near Near) (least unit.Length, r Rule, ok bool) {
	return For(set).AirGap(opening, near)
}

// times returns how many times the opening a record asks for.
func gapTimes(r Rule) unit.Length {
	if r.Subject == GapNear && r.Sets&UK == 0 {
		return 3
	}
	return 2
}

// AirGap returns the strictest air gap of the chosen sets; a number of the inspector's own stands as it is.
func (b Book) AirGap(opening unit.Length, near Near) (least unit.Length, r Rule, ok bool) {
	subject := GapAway
	if near != Clear {
		subject = GapNear
	}
	if e, found := b.inspector(subject, AtLeast, 0); found {
		return e.Rule.Limit, e.Rule, true
	}
	for _, c := range AirGaps {
		if c.Subject != subject || c.Sets&b.sets == 0 {
			continue
		}
		if gap := max(c.Limit, gapTimes(c)*opening); !ok || gap > least {
			least, r, ok = gap, c, true
		}
	}
	return least, r, ok
}
