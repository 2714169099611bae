package export

import (
	"dryfit/internal/lining"
	"dryfit/internal/plan"
)

// boarded is a face with the sheets of board or membrane that cover it.
type boarded struct {
	Face    string       `json:"face" doc:"name of the face"`
	At      place        `json:"at" doc:"of the face, in the document"`
	Stock   string       `json:"stock" doc:"the user's name of it"`
	Upright bool         `json:"upright" doc:"the sheets' length runs up; else along the wall"`
	Sheets  []boardSheet `json:"sheets" doc:"band by band from below, each from the left"`
}

// boardSheet is one piece of board where it goes, in the face's frame.
type boardSheet struct {
	Name   string  `json:"name" doc:"band and place in it, from 1: '2-1'; with a letter where a cell falls into several"`
	Piece  string  `json:"piece" doc:"name among the pieces of the stock"`
	Rect   rect    `json:"rect" doc:"its bounds"`
	Covers outline `json:"covers" doc:"what it covers: its bounds less its cut-outs"`
}

func boardedOf(p plan.Plan) []boarded {
	return list(p.Lining.Faces, func(f lining.Face) boarded {
		return boarded{Face: f.Name, At: placeOf(f.At), Stock: f.Stock, Upright: f.Upright, Sheets: list(f.Sheets, func(s lining.Sheet) boardSheet {
			return boardSheet{s.Name, s.Part.For + " > " + s.Part.Name, rectOf(s.Rect), outlineOf(s.Region)}
		})}
	})
}
