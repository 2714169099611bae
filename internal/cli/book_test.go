package cli

import (
	"os"
	"path/filepath"
	"slices"
	"testing"

	"dryfit/internal/draw"
)

// A sheet of an earlier, longer plan must not hang on beside the new ones: a cut from it would be wrong. What is not ours
// stays.
func TestSheetsOfAnEarlierPlanGo(t *testing.T) {
	dir := t.TempDir()
	for _, name := range []string{"07-basin.svg", "07-basin.png", "08-gone.svg", "100-gone.png", "1204-gone.svg", "12-my photo.jpg", "notes.png", "5-mine.png"} {
		if err := os.WriteFile(filepath.Join(dir, name), nil, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if err := removeOthers(dir, map[string]bool{"07-basin.svg": true, "07-basin.png": true}); err != nil {
		t.Fatal(err)
	}
	entries, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	var left []string
	for _, e := range entries {
		left = append(left, e.Name())
	}
	if want := []string{"07-basin.png", "07-basin.svg", "12-my photo.jpg", "5-mine.png", "notes.png"}; !slices.Equal(left, want) {
		t.Errorf("%v, want %v", left, want)
	}
}

// Page 9 of a hundred comes before page 10 and page 100 in a folder's own order.
func TestSheetNumbersSort(t *testing.T) {
	var names []string
	for _, i := range []int{8, 9, 98, 99} {
		names = append(names, sheetName(i, 100, draw.Page{}))
	}
	if !slices.IsSorted(names) || sheetName(0, 12, draw.Page{})[:3] != "01-" {
		t.Error(names)
	}
}
