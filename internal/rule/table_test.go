package rule

import (
	"testing"

	"dryfit/internal/unit"
)

// IPC 909.1: 5, 6, 8, 12, 16 ft; UPC 1002.2: 2 ft 6 in, 3 ft 6 in, 5, 6, 10 ft, as quoted in a builders' field guide and a plumbers' handbook.
func TestTrapArms(t *testing.T) {
	sizes := []string{"1 1/4", "1 1/2", "2", "3", "4"}
	for _, c := range []struct {
		sets Sets
		want []string
	}{
		{IPC, []string{"5ft", "6ft", "8ft", "12ft", "16ft"}},
		{IRC, []string{"5ft", "6ft", "8ft", "12ft", "16ft"}},
		{UPC, []string{"2ft 6in", "3ft 6in", "5ft", "6ft", "10ft"}},
		{IPC | UPC, []string{"2ft 6in", "3ft 6in", "5ft", "6ft", "10ft"}},
	} {
		for i, size := range sizes {
			d := inches(t, size)
			a, ok := TrapArm(c.sets, d)
			if !ok || a.Most != inches(t, c.want[i]) {
				t.Errorf("%v, %s in: %v, want %s", c.sets, size, unit.DefaultStyle(unit.Inches).Exact(a.Most), c.want[i])
			}
			if a.Least != 2*d || a.MostDrop != d {
				t.Errorf("%v, %s in: at least two diameters, dropping at most one", c.sets, size)
			}
		}
	}
	if _, ok := TrapArm(IPC, inches(t, "1")); ok {
		t.Error("no table has a 1 in arm")
	}
	if _, ok := TrapArm(ADA, inches(t, "2")); ok {
		t.Error("the ADA has no trap arms")
	}
	uk, ok := TrapArm(UK, inches(t, "1 1/4"))
	if !ok || uk.Most != 1700*mm || uk.Fall != 0 || uk.Least != 0 {
		t.Errorf("a 32 mm branch is 1.7 m by UK practice, and no fall is known: %+v", uk)
	}
}

// Why the IPC's table is what it is: at 1/4 in a foot the longest arm drops by exactly the pipe's diameter, up to 2 in.
func TestArmDropsItsDiameter(t *testing.T) {
	for _, size := range []string{"1 1/4", "1 1/2", "2"} {
		a, _ := TrapArm(IPC, inches(t, size))
		if got := DropAt(a.Fall, a.Most); got != inches(t, size) || got != a.MostDrop {
			t.Errorf("%s in: drops %v", size, unit.DefaultStyle(unit.Inches).Exact(got))
		}
	}
	// 1/4 in a foot is 20.83 mm a meter.
	if got := DropAt(in/4, unit.Metre).Round(mm / 100); got != 2083*mm/100 {
		t.Errorf("20.83 mm a meter, got %v", got.MM())
	}
}

// ASME A112.1.2 as in IRC 2003 table P2902.2.1: openings up to 1/2 in 1 in away from a wall and 1 1/2 near, up to 3/4 in 1 1/2 and 2 1/4, up to 1 in 2 and 3, above
// that twice and three times; EN 1717 twice the bore, 20 mm at least.
func TestAirGap(t *testing.T) {
	for _, c := range []struct {
		sets    Sets
		opening string
		near    Near
		want    string
	}{
		{IPC, "1/2", Clear, "1"}, {IPC, "3/8", Clear, "1"}, {IPC, "1/2", NearWall, "1 1/2"}, {IPC, "3/8", NearCorner, "1 1/2"},
		{IRC, "3/4", Clear, "1 1/2"}, {IRC, "3/4", NearWall, "2 1/4"}, {UPC, "1", Clear, "2"}, {UPC, "1", NearWall, "3"},
		{UPC, "1 1/4", Clear, "2 1/2"}, {UPC, "1 1/4", NearWall, "3 3/4"},
		{UK, "8 mm", Clear, "20 mm"}, {UK, "10 mm", Clear, "20 mm"}, {UK, "12 mm", Clear, "24 mm"}, {UK, "12 mm", NearWall, "24 mm"},
		{UK | IPC, "12 mm", Clear, "1"}, {UK | IPC, "13 mm", Clear, "26 mm"},
	} {
		got, r, ok := AirGap(c.sets, inches(t, c.opening), c.near)
		if !ok || got != inches(t, c.want) || r.ID == "" {
			t.Errorf("%v, opening %s, %v: %v, want %s", c.sets, c.opening, c.near, unit.DefaultStyle(unit.Inches).Exact(got), c.want)
		}
	}
	if _, _, ok := AirGap(ADA, in/2, Clear); ok {
		t.Error("the ADA asks for no air gap")
	}
	own := For(IPC, Inspected{"air-gap", int64(2 * in)})
	if got, _, _ := own.AirGap(in/2, Clear); got != 2*in {
		t.Error("the inspector's air gap holds")
	}
}

// A wall is near within three openings, two that meet within four.
func TestNearTo(t *testing.T) {
	for _, c := range []struct {
		one, two string
		want     Near
	}{
		{"1 1/2", "-1", NearWall}, {"1 17/32", "-1", Clear}, {"2", "2", NearCorner}, {"2", "2 1/32", Clear}, {"1 1/2", "5", NearWall}, {"-1", "-1", Clear}, {"1", "1", NearCorner},
	} {
		if got := NearTo(in/2, inches(t, c.one), inches(t, c.two)); got != c.want {
			t.Errorf("%+v: %v", c, got)
		}
	}
}

// 2010 ADA 306.3.3 and .4: 11 in deep at 9 in, 8 in at 27 in, 1 in less every 6 in between: the rule of taper joins both ends exactly.
func TestKneeDepth(t *testing.T) {
	for _, c := range []struct{ height, want string }{{"9", "11"}, {"15", "10"}, {"21", "9"}, {"27", "8"}, {"12", "10 1/2"}} {
		if got, ok := KneeDepth(inches(t, c.height)); !ok || got != inches(t, c.want) {
			t.Errorf("at %s in: %v", c.height, got.In())
		}
	}
	low, _ := ByID("knee-deep-low")
	high, _ := ByID("knee-deep-high")
	at9, _ := KneeDepth(9 * in)
	at27, _ := KneeDepth(27 * in)
	if at9 != low.Limit || at27 != high.Limit {
		t.Error("the taper misses a printed minimum")
	}
	for _, h := range []unit.Length{9*in - 1, 27*in + 1} {
		if _, ok := KneeDepth(h); ok {
			t.Errorf("nothing is asked at %v", h.In())
		}
	}
}
