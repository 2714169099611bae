package demo_test

import (
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// Both rooms must read without a word of complaint: they are the first documents that a person sees.
func TestRoomsRead(t *testing.T) {
	for _, r := range demo.Rooms() {
		_, found := document.Read(r.File, r.Text)
		for _, f := range found {
			if f.Class != diag.Note {
				t.Errorf("%s:%d:%d %s %s", r.File, f.At.Line, f.At.Column, f.Code, f.Say(unit.DefaultStyle(unit.Inches)))
			}
		}
	}
}
