package sheet_test

import (
	"strings"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/draw"
	"dryfit/internal/sheet"
	"dryfit/internal/unit"
)

// drawnAs lists the sizes of what is drawn with a class, in groups too.
func drawnAs(class string, items []draw.Item) (all [][2]draw.Um) {
	for _, it := range items {
		switch it := it.(type) {
		case draw.Group:
			all = append(all, drawnAs(class, it.Items)...)
		case draw.Path:
			if it.Class == class {
				b := it.Reach()
				all = append(all, [2]draw.Um{b.W(), b.H()})
			}
		}
	}
	return all
}

// A section through a basin shows the cabinet under it at the section's 1:10: the bottom of the vanity as deep and as thick as its part is,
// the drawer under the wall basin as long and as high as its box.
func TestCabinetInSection(t *testing.T) {
	tenth := func(l unit.Length) draw.Um { return draw.Um(l / unit.Micrometre / 10) }
	for _, r := range demo.Rooms() {
		p := planned(t, r)
		for _, page := range sheet.Book(p, sheet.Paper{}) {
			if !strings.HasSuffix(page.Title, "Section through its waste") {
				continue
			}
			class, want := "cabinet part", [2]draw.Um{}
			for _, c := range p.Wood.Cabinets {
				for _, q := range c.Pieces {
					if c.Name == "vanity" && q.Part.Name == "bottom" {
						want = [2]draw.Um{tenth(q.Box.Size(2)), tenth(q.Box.Size(1))}
					}
				}
				for _, d := range c.Drawers {
					if c.Name == "basin drawer" {
						class, want = "drawer", [2]draw.Um{tenth(d.Box.Size(2)), tenth(d.Box.Size(1))}
					}
				}
			}
			found := false
			for _, got := range drawnAs(class, page.Items) {
				found = found || abs(got[0]-want[0]) < 100 && abs(got[1]-want[1]) < 100 // lines have a width
			}
			if !found || want[0] == 0 {
				t.Errorf("%s: no %s of %v µm in %v", r.File, class, want, drawnAs(class, page.Items))
			}
		}
	}
}
