package export_test

// readFit is what is read of the checks.
type readFit struct {
	Fit struct {
		Checks []struct {
			ID, State            string
			Value, Limit, Margin *num
			Most                 bool
			Missing              []string
		}
		Jets []struct{ Nearest, Farthest, OutletOff, OutletY, Bottom num }
		Card []struct {
			Name             string
			Level, OverFloor num
		}
	}
	Clash struct {
		Meetings []struct {
			ID          string
			Apart, Need num
			Misses      bool
		}
		CutOuts []struct {
			Drawer   string
			From, To num
		}
	}
	FinishedFloor struct{ Y *num }
}

// fits: a margin is what lies between value and limit on the side that is allowed; what misses has less than nothing, and what lacks a fact has none.
func (r *rechecker) fits(text topKeys) {
	var p readFit
	if err := readKeys(text, &p); err != nil {
		r.complain("%v", err)
		return
	}
	for _, k := range p.Fit.Checks {
		if (k.State == "not checked") != (len(k.Missing) > 0) {
			r.complain("%s is %s and misses %v", k.ID, k.State, k.Missing)
		}
		if k.Margin == nil {
			continue
		}
		want := *k.Value - *k.Limit
		if k.Most {
			want = -want
		}
		if *k.Margin != want || (k.State == "misses") != (want < 0) {
			r.complain("%s: %d to %d leaves %d, not %d, and %s", k.ID, *k.Value, *k.Limit, want, *k.Margin, k.State)
		}
	}
	for _, j := range p.Fit.Jets {
		if j.Nearest < j.OutletOff || j.Farthest < j.Nearest || j.OutletY < j.Bottom {
			r.complain("water that falls from %d to %d lands at %d to %d", j.OutletY, j.Bottom, j.Nearest, j.Farthest)
		}
	}
	for _, s := range p.Fit.Card {
		if p.FinishedFloor.Y == nil || s.OverFloor != s.Level-*p.FinishedFloor.Y {
			r.complain("%s is %d from the level line and %d over the floor", s.Name, s.Level, s.OverFloor)
		}
	}
	for _, m := range p.Clash.Meetings {
		if m.Apart < m.Need && !m.Misses {
			r.complain("%s: %d apart, %d is kept", m.ID, m.Apart, m.Need)
		}
	}
	for _, c := range p.Clash.CutOuts {
		if c.From >= c.To {
			r.complain("%s is cut from %d to %d", c.Drawer, c.From, c.To)
		}
	}
}
