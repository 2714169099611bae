package site

import (
	"os"
	"testing"

	"dryfit/internal/document"
)

// A whole room of six corners, with its openings and findings.
func BenchmarkSolve(b *testing.B) {
	text, err := os.ReadFile("testdata/loft.yaml")
	if err != nil {
		b.Fatal(err)
	}
	doc, _ := document.Read("loft.yaml", text)
	for b.Loop() {
		Solve(doc)
	}
}
