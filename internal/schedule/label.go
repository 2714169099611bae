package schedule

import (
	"slices"
	"strings"

	"dryfit/internal/calendar"
	"dryfit/internal/cure"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// says is where on a label the answer to a need stands; of several the longest counts.
type says struct {
	kind  document.GoodKind
	times func(document.Cures) []document.Value[unit.Minutes]
}

var labels = map[need]says{
	toGrout: {document.Mortar, func(c document.Cures) []document.Value[unit.Minutes] {
		return []document.Value[unit.Minutes]{c.Clips, c.Grout}
	}},
	toWalk:      {document.Mortar, func(c document.Cures) []document.Value[unit.Minutes] { return []document.Value[unit.Minutes]{c.Walk} }},
	toWalkGrout: {document.Grout, func(c document.Cures) []document.Value[unit.Minutes] { return []document.Value[unit.Minutes]{c.Walk} }},
	toSeal:      {document.Grout, func(c document.Cures) []document.Value[unit.Minutes] { return []document.Value[unit.Minutes]{c.Seal} }},
	toTile:      {document.Membrane, func(c document.Cures) []document.Value[unit.Minutes] { return []document.Value[unit.Minutes]{c.Tile} }},
	toFlood:     {document.Membrane, func(c document.Cures) []document.Value[unit.Minutes] { return []document.Value[unit.Minutes]{c.Flood} }},
	toPrimed:    {document.Primer, func(c document.Cures) []document.Value[unit.Minutes] { return []document.Value[unit.Minutes]{c.Tile} }},
	toSealed: {document.Sealer, func(c document.Cures) []document.Value[unit.Minutes] {
		return []document.Value[unit.Minutes]{c.Grout, c.Wet}
	}},
	toWet:     {document.Sealant, func(c document.Cures) []document.Value[unit.Minutes] { return []document.Value[unit.Minutes]{c.Wet} }},
	toUnclamp: {document.Adhesive, func(c document.Cures) []document.Value[unit.Minutes] { return []document.Value[unit.Minutes]{c.Clamp} }},
	toRecoat:  {kind: document.WoodFinish},
	toUse:     {document.WoodFinish, func(c document.Cures) []document.Value[unit.Minutes] { return []document.Value[unit.Minutes]{c.Full} }},
}

// labeled fills a wait with what the labels of the subject's goods say: of several goods, the longest. False where none says it.
func (m *maker) labeled(n need, subject string, w *wait) bool {
	if (n == toRecoat || n == toUse) && m.finishLabel(n, subject, w) {
		return true
	}
	found := false
	for _, g := range m.goods(labels[n].kind, subject) {
		w.rangeOf(g)
		for _, t := range m.timesOf(n, g) {
			if t.Known && (!found || t.V > w.label.Time) {
				m.take(g, t, w)
				found = true
			}
		}
	}
	return found
}

func (m *maker) timesOf(n need, g document.Good) []document.Value[unit.Minutes] {
	if n == toRecoat {
		r := g.Cures.Recoat
		return []document.Value[unit.Minutes]{{V: r.V.From, Known: r.Known, At: r.At}}
	}
	if labels[n].times == nil {
		return nil
	}
	return labels[n].times(g.Cures)
}

// take notes a label's time. Cement without a temperature on its label is taken at 20 °C, which is told.
func (m *maker) take(g document.Good, t document.Value[unit.Minutes], w *wait) {
	class, known := g.Class()
	w.cement = known && class == document.CureCement
	w.label, w.at, w.source = cure.Label{Time: t.V, At: room20}, t.At, "label of "+g.Name
	w.atKnown = g.Cures.Temp.Known
	switch {
	case w.atKnown:
		w.label.At = g.Cures.Temp.V
	case w.cement:
		w.atKnown = true
		m.assume(t.At, practice, "the times of {0} are taken at {1}: its label says no temperature", diag.T(g.Name), diag.Temp(room20))
	}
}

func (w *wait) rangeOf(g document.Good) {
	if g.Range.Known {
		w.warmth = &warmth{g.Range.V.From, g.Range.V.To, g.Range.At}
	}
}

// goods are those of a kind for a subject: those that name one of its faces, else those that name none. What is only compared is none.
func (m *maker) goods(kind document.GoodKind, subject string) []document.Good {
	var named, open []document.Good
	for _, g := range m.doc.Goods {
		if g.Kind != kind || kind == document.OtherGood || g.InsteadOf.Known || g.InsteadOf.Unknown {
			continue
		}
		of := func(n document.Name) bool { return n.Text == subject || strings.HasPrefix(n.Text, subject+" > ") }
		switch {
		case len(g.For) == 0 || subject == "":
			open = append(open, g)
		case slices.ContainsFunc(g.For, of):
			named = append(named, g)
		}
	}
	if named != nil {
		return named
	}
	return open
}

// finishLabel is what the finish on a piece of woodwork says.
func (m *maker) finishLabel(n need, subject string, w *wait) bool {
	f, ok := m.finishOf(subject)
	hours := f.Hours
	if n == toUse && f.Cures.Known {
		hours = f.Cures
	}
	if !ok || !hours.Known {
		return false
	}
	w.label, w.source, w.at = cure.Label{Time: unit.Minutes(hours.V) * unit.Hour}, "label of "+f.Name, hours.At
	return true
}

func (m *maker) finishOf(subject string) (document.Finish, bool) {
	for _, f := range m.doc.Finish {
		for _, on := range f.On {
			if on.Text == subject {
				return f, true
			}
		}
	}
	return document.Finish{}, false
}

// coatsOf is how many coats a piece of woodwork gets.
func (m *maker) coatsOf(t thing) int {
	if f, ok := m.finishOf(t.subject(false)); ok && f.Coats.Known {
		return f.Coats.V
	}
	for _, g := range m.goods(document.WoodFinish, t.subject(false)) {
		if g.Coats.Known {
			return g.Coats.V
		}
	}
	m.assume(t.at, practice, "{0} gets {1} coats", diag.T(t.subject(false)), diag.N(coats))
	return coats
}

// recoatUntil is when at the latest the next coat goes on; 0 where no label says it.
func (m *maker) recoatUntil(t thing) unit.Minutes {
	if _, ok := m.finishOf(t.subject(false)); ok {
		return 0
	}
	for _, g := range m.goods(document.WoodFinish, t.subject(false)) {
		if g.Cures.Recoat.Known {
			return g.Cures.Recoat.V.To
		}
	}
	return 0
}

// supplies are the goods without which a kind of job can not begin.
var supplies = map[Kind]document.GoodKind{Board: document.BackerBoard, Prime: document.Primer, Membrane: document.Membrane, Set: document.Mortar,
	PreSeal: document.Sealer, GroutFace: document.Grout, Seal: document.Sealer, Silicone: document.Sealant, Coat: document.WoodFinish, GlueUp: document.Adhesive}

// deliveries keep a task from beginning before what was ordered for it has come.
func (m *maker) deliveries() {
	for i := range m.tasks {
		t := &m.tasks[i]
		m.stockArrives(t)
		kind, ok := supplies[t.Kind]
		if !ok {
			continue
		}
		for _, g := range m.goods(kind, t.Subject) {
			m.arrives(t, g.Supply)
		}
		if t.Kind == Set || t.Kind == DryLay {
			m.tilesArrive(t)
		}
	}
}

func (m *maker) tilesArrive(t *task) {
	for _, l := range m.doc.Lay {
		if l.Face != t.Subject && !strings.HasPrefix(l.Face, t.Subject+" > ") {
			continue
		}
		for _, f := range l.Fields {
			for _, tile := range m.doc.Tiles {
				if tile.Name == f.Tile.Text {
					m.arrives(t, tile.Supply)
				}
			}
		}
	}
}

// arrives: from the day of the order on, the lead time runs on the calendar; what comes on a day is there the next morning.
func (m *maker) arrives(t *task, s document.Supply) {
	on, ok := calendar.ParseDate(s.OrderedOn.V)
	lead := s.LeadTime
	for _, x := range m.doc.Buying.Suppliers {
		if !lead.Known && x.Name == s.From.V {
			lead = x.LeadTime
		}
	}
	if s.OrderedOn.Known && ok && lead.Known {
		t.there = max(t.there, on.At(0).Plus(lead.V+unit.Day-1).Date().At(0))
	}
}

// described lists what the document itself describes.
func (m *maker) described() []thing {
	var all []thing
	add := func(kind, name string, at diag.Place) { all = append(all, thing{kind, name, at}) }
	for _, c := range m.doc.Cabinets {
		add("cabinet", c.Name, c.At)
	}
	for _, t := range m.doc.Tops {
		add("top", t.Name, t.At)
	}
	for _, t := range m.doc.Trim {
		add("trim", t.Name, t.At)
	}
	for _, b := range m.doc.Basins {
		add("basin", b.Name, b.At)
	}
	for _, t := range m.doc.Taps {
		add("tap", t.Name, t.At)
	}
	for _, w := range m.doc.WCs {
		add("WC", w.Name, w.At)
	}
	for _, f := range m.doc.Fittings {
		add(fittingJobs[f.Kind], f.Name, f.At)
	}
	return all
}

// fittingJobs are the jobs by which fittings are put up.
var fittingJobs = map[document.FittingKind]string{document.Mirror: "mirror", document.Light: "lights", document.Fan: "fan", document.TowelBar: "shelf",
	document.PaperHolder: "shelf", document.GrabBar: "shelf", document.Hook: "shelf", document.WallShelf: "shelf"}
