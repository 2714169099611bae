package rule

import (
	"strings"
	"testing"

	"dryfit/internal/unit"
)

// The printed numbers, one a line: subject, side, sets, number. IPC 405.3.1 (15, 30, 21), UPC 402.5 (24), 2010 ADA 603.3, 604, 606.3,
// 609.4, IRC P3201.2 and P3201.6, NEC 210.52(D), IRC M1505.4.4 are read or quoted; the others are from memory or common practice.
func TestPrintedNumbers(t *testing.T) {
	for _, c := range []struct {
		subject Subject
		side    Bound
		sets    Sets
		want    string
	}{
		{WCSide, AtLeast, IPC, "15"}, {WCSide, AtLeast, UPC, "15"}, {WCSide, AtLeast, IRC, "15"},
		{WCSide, AtLeast, ADA, "16"}, {WCSide, AtMost, ADA, "18"}, {WCSide, AtLeast, IRC | ADA, "16"},
		{WCCenters, AtLeast, IPC, "30"}, {WCCenters, AtLeast, UPC, "30"},
		{WCFront, AtLeast, IPC, "21"}, {WCFront, AtLeast, IRC, "21"}, {WCFront, AtLeast, UPC, "24"}, {WCFront, AtLeast, IPC | UPC, "24"},
		{BasinSide, AtLeast, IPC, "15"}, {BasinEdge, AtLeast, IRC, "4"}, {BasinFront, AtLeast, UPC, "24"}, {BasinCenters, AtLeast, IPC, "30"},
		{WCClearWide, AtLeast, ADA, "60"}, {WCClearDeep, AtLeast, ADA, "56"}, {WCToBasin, AtLeast, ADA, "18"},
		{WCSeat, AtLeast, ADA, "17"}, {WCSeat, AtMost, ADA, "19"}, {SideAmbulator, AtLeast, ADA, "17"}, {SideAmbulator, AtMost, ADA, "19"},
		{SideBar, AtLeast, ADA, "42"}, {SideBarStart, AtMost, ADA, "12"}, {SideBarEnd, AtLeast, ADA, "54"},
		{RearBar, AtLeast, ADA, "36"}, {RearBarShort, AtLeast, ADA, "12"}, {RearBarLong, AtLeast, ADA, "24"},
		{BarHeight, AtLeast, ADA, "33"}, {BarHeight, AtMost, ADA, "36"}, {BarThick, AtLeast, ADA, "1 1/4"}, {BarThick, AtMost, ADA, "2"},
		{BarGap, AtLeast, ADA, "1 1/2"}, {BarGap, AtMost, ADA, "1 1/2"},
		{RimHeight, AtMost, ADA, "34"}, {RimHeight, AtLeast, IRC, "32"}, {RimHeight, AtMost, IRC, "43"}, {RimHeight, AtMost, UK, "850 mm"},
		{RimHeight, AtLeast, UK, "32"}, // 812.8 mm of the guidance is stricter than the habit's 800
		{MirrorBottom, AtMost, ADA, "40"}, {MirrorBare, AtMost, ADA, "35"}, {MirrorTop, AtLeast, ADA, "74"},
		{FloorWide, AtLeast, ADA, "30"}, {FloorDeep, AtLeast, ADA, "48"}, {KneeHeight, AtLeast, ADA, "27"}, {KneeWide, AtLeast, ADA, "30"},
		{KneeDeepMost, AtMost, ADA, "25"}, {ToeHeight, AtLeast, ADA, "9"}, {ToeDeep, AtLeast, ADA, "17"}, {ToeDeep, AtMost, ADA, "25"}, {ToeBeyond, AtMost, ADA, "6"},
		{TrapSeal, AtLeast, IRC, "2"}, {TrapSeal, AtMost, IRC, "4"}, {TrapSeal, AtLeast, Ontario, "38 mm"}, {TrapSeal, AtLeast, UK, "75 mm"},
		{WeirDown, AtMost, IRC, "24"}, {WeirAcross, AtMost, IRC, "30"},
		{BasinTrap, AtLeast, IPC, "1 1/4"}, {BathTrap, AtLeast, IPC, "1 1/2"}, {ShowerTrap, AtLeast, IPC, "2"}, {BasinTrap, AtLeast, UK, "32 mm"},
		{ReceptacleTo, AtMost, NEC, "36"}, {ReceptacleLow, AtMost, NEC, "12"}, {BoxBack, AtMost, NEC, "1/4"}, {BoxBackWood, AtMost, NEC, "0"}, {BoxGap, AtMost, NEC, "1/8"},
		{SocketZone, AtLeast, UK, "2500 mm"}, {CeilingHeight, AtLeast, IRC, "6ft 8in"}, {ShowerWide, AtLeast, IRC, "30"}, {ShowerFront, AtLeast, IRC, "24"},
		{WCFlange, AtLeast, IRC, "0"}, {WCFlange, AtMost, IRC, "3/8"}, {FlangeBrass, AtLeast, 0, "1/8"}, {FlangePlastic, AtLeast, 0, "1/4"}, {FlangeIron, AtLeast, 0, "1/4"}, {CaulkDepth, AtLeast, 0, "2"},
		{StepPlain, AtMost, ADA, "1/4"}, {StepBeveled, AtMost, ADA, "1/2"}, {JetBore, AtLeast, 0, "8 mm"}, {JetBore, AtMost, 0, "15 mm"}, {JetBehind, AtMost, 0, "50 mm"},
		{PipeClear, AtLeast, 0, "3 mm"}, {PipeClear, AtMost, 0, "6 mm"}, {WCSupplyUp, AtMost, 0, "8 1/4"},
	} {
		b := For(c.sets)
		get := b.Least
		if c.side == AtMost {
			get = b.Most
		}
		e, ok := get(c.subject)
		if !ok || e.Rule.Limit != inches(t, c.want) || e.Rule.Kind() != Length {
			t.Errorf("%s %v by %v: %v (%s), want %s", c.subject, c.side, c.sets, unit.DefaultStyle(unit.Inches).Exact(e.Rule.Limit), e.Cite(), c.want)
		}
		if ok && !e.Rule.Holds(e.Rule.Value()) {
			t.Errorf("%s does not hold at its own limit", e.Rule.ID)
		}
		off := int64(1)
		if c.side == AtLeast {
			off = -1
		}
		if e.Rule.Holds(e.Rule.Value() + off) {
			t.Errorf("%s still holds just beyond its limit", e.Rule.ID)
		}
	}
}

// IRC M1505.4.4: 50 cfm when wanted or 20 always; England and Scotland 15 L/s. The EPA's specification: at most 1.5 gpm (5.7 L/min) at 60 psi,
// at least 0.8 gpm (3.0 L/min) at 20 psi, as it prints them.
func TestFlows(t *testing.T) {
	for _, c := range []struct {
		id   string
		want unit.Flow
	}{
		{"fan-runs", 50 * unit.CubicFtMinute}, {"fan-always", 20 * unit.CubicFtMinute}, {"fan-england", 15 * unit.LiterSecond},
		{"fan-wc-england", 6 * unit.LiterSecond}, {"fan-england-always", 8 * unit.LiterSecond}, {"tap-flow-public", unit.GallonMinute / 2},
		{"tap-flow-federal", 22 * unit.GallonMinute / 10},
	} {
		if r, ok := ByID(c.id); !ok || r.Flow != c.want || r.Kind() != Flow {
			t.Errorf("%s: %d, want %d", c.id, r.Flow, c.want)
		}
	}
	for id, tenths := range map[string]int64{"tap-flow": 57, "tap-flow-least": 30} {
		r, _ := ByID(id)
		if got := int64((r.Flow + unit.LiterMinute/20) / (unit.LiterMinute / 10)); got != tenths {
			t.Errorf("%s prints as %d tenths of a liter a minute, want %d", id, got, tenths)
		}
	}
}

// Every record says what it limits, by whom it is asked and whence it comes; it has one number, its id is its own, and all records of a subject count
// the same thing.
func TestEveryRecord(t *testing.T) {
	ids, kinds := map[string]bool{}, map[Subject]Kind{}
	for _, r := range all {
		if r.ID == "" || r.What == "" || r.Cite() == "" || strings.HasPrefix(r.Cite(), " ") || ids[r.ID] {
			t.Errorf("%+v lacks its id, words or source, or is there twice", r)
		}
		ids[r.ID] = true
		if n := numbers(r); n > 1 {
			t.Errorf("%s has %d numbers", r.ID, n)
		}
		if r.Subject == "" {
			continue
		}
		if k, seen := kinds[r.Subject]; seen && k != r.Kind() {
			t.Errorf("%s counts %v, others of %q %v", r.ID, r.Kind(), r.Subject, k)
		}
		kinds[r.Subject] = r.Kind()
		if r.Sets == 0 || (r.Sets&^advised == 0) && !r.Advice {
			t.Errorf("%s: no set, or asked for by habit alone", r.ID)
		}
		if r.Per != 0 && r.Per != foot {
			t.Errorf("%s: falls are compared by the foot", r.ID)
		}
		if r.Known == Practice && r.Source != "" {
			t.Errorf("%s is common practice and names a source", r.ID)
		}
	}
}

func numbers(r Rule) int {
	n := 0
	for _, set := range []bool{r.Limit != 0, r.Ratio != 0, r.Number != 0, r.Flow != 0, r.Area != 0} {
		if set {
			n++
		}
	}
	return n
}
