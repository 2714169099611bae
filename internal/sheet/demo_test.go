package sheet_test

import (
	"context"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/draw"
	"dryfit/internal/plan"
	"dryfit/internal/render/png"
	"dryfit/internal/sheet"
	"dryfit/internal/typeset"
)

var (
	update   = flag.Bool("update", false, "write the goldens")
	pictures = flag.String("pictures", "", "a folder to draw every page into, to look at")
)

// plans are the plans of the built-in rooms, made once for all tests.
var plans = sync.OnceValue(func() map[string]plan.Plan {
	out := map[string]plan.Plan{}
	for _, r := range demo.Rooms() {
		p, err := plan.Make(context.Background(), r.File, r.Text, plan.Options{})
		if err != nil {
			panic(err)
		}
		out[r.File] = p
	}
	return out
})

func planned(t testing.TB, r demo.Room) plan.Plan {
	t.Helper()
	return plans()[r.File]
}

func stem(r demo.Room) string { return strings.TrimSuffix(r.File, ".yaml") }

// No text covers another or leaves its page, on any paper.
func TestLetteringOfDemos(t *testing.T) {
	for _, r := range demo.Rooms() {
		p := planned(t, r)
		for _, paper := range draw.Papers() {
			pages := sheet.Book(p, sheet.PaperNamed(paper.Name, p.Style.System))
			for i, page := range pages {
				for _, o := range typeset.Overlaps(page) {
					t.Errorf("%s on %s, page %d %s: %v", r.File, paper.Name, i+1, page.Title, o)
				}
			}
			if *pictures != "" && (paper.Name == "Letter" && r.File == "quarry-row.yaml" || paper.Name == "A4" && r.File == "gable.yaml") {
				picture(t, stem(r), pages)
			}
		}
	}
}

func picture(t *testing.T, name string, pages []draw.Page) {
	for i, page := range pages {
		f, err := os.Create(filepath.Join(*pictures, fmt.Sprintf("%s-%02d-%s.png", name, i+1, sheet.FileName(page.Title))))
		if err != nil {
			t.Fatal(err)
		}
		if err := png.Write(f, page, 90); err != nil {
			t.Fatal(err)
		}
		f.Close()
	}
}
