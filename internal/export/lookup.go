package export

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/plan"
)

// lineAt is where a center line is written.
func lineAt(p plan.Plan, name string) diag.Place {
	for _, l := range p.Document.Lines {
		if l.Name == name {
			return l.At
		}
	}
	return diag.Place{Path: "center lines > " + name}
}

// tileNamed is a good of the document; the zero Tile where it has none of that name.
func tileNamed(p plan.Plan, name string) document.Tile {
	for _, t := range p.Document.Tiles {
		if t.Name == name {
			return t
		}
	}
	return document.Tile{}
}
