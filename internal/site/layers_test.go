package site

import (
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// The board reaches to the last board or membrane; a bed before it belongs to it. Tile of 3/8 in where the goods give it.
func TestLayers(t *testing.T) {
	for _, c := range []struct {
		layers           string
		laid             bool
		board, bed, tile string
	}{
		{"board 1/2, bed 1/4, tile", true, "1/2", "1/4", "3/8"},
		{"board 1/2", true, "1/2", "3/16", "3/8"}, // the usual bed is assumed
		{"", true, "0", "3/16", "3/8"},
		{"board 1/2, bed 1/8, membrane 1/16, bed 1/8, tile", true, "11/16", "1/8", "3/8"},
		{"board 1/2, bed 1/4, tile 5/16", true, "1/2", "1/4", "5/16"}, // what is written counts
		{"board 1/2, bed 1/4", false, "1/2", "0", "0"},                // a bed waits for its tile
		{"board 1/2, bed 1/4, tile 3/8", false, "1/2", "1/4", "3/8"},  // a tile that is there already
	} {
		r := rectangle60(t, exact60)
		r.tile("white", "12 x 6 x 3/8", document.Ceramic)
		r.Walls[0].BuildUp = r.layers(c.layers)
		if c.laid {
			r.lay("white", "back")
		}
		f := r.solve().face("back")
		wantLength(t, c.layers+": board", f.BoardThick, c.board)
		wantLength(t, c.layers+": bed", f.BedThick, c.bed)
		wantLength(t, c.layers+": tile", f.TileThick, c.tile)
	}
}

// A thickness that is not known is no zero: the face and those that end at it are left out, and it is said where.
func TestThicknessUnknown(t *testing.T) {
	r := rectangle60(t, exact60)
	r.Walls[1].BuildUp[0].Thick = document.Value[unit.Length]{Unknown: true}
	got := r.solve()
	got.wantSaid("layer-thickness", "the thickness of board is not known")
	for name, want := range map[string]bool{"back": false, "right": false, "front": false, "left": true, "floor": false} {
		if _, ok := got.Face(name); ok != want {
			t.Errorf("%s is there: %v, want %v", name, ok, want)
		}
	}

	r = rectangle60(t, exact60)
	r.tile("white", "12 x 6 x 3/8", document.Ceramic).Thick = document.Value[unit.Length]{}
	r.lay("white", "back")
	got = r.solve()
	got.wantSaid("tile-thickness", "the thickness of white is not known")
	if _, ok := got.Face("left"); ok {
		t.Error("the left wall ends at a tile of no known thickness")
	}
}

// The thickest tile of a face's fields gives its face.
func TestThickestTile(t *testing.T) {
	r := rectangle60(t, exact60)
	r.tile("white", "12 x 6 x 1/4", document.Ceramic)
	r.tile("slate", "24 x 12 x 1/2", document.Stone)
	r.lay("white", "back")
	r.Lay[0].Fields = append(r.Lay[0].Fields, document.Field{Name: "band", Tile: document.Name{Text: "slate"}})
	wantLength(t, "tile", r.solve().face("back").TileThick, "1/2")
}

func TestLayersAbsurd(t *testing.T) {
	r := rectangle60(t, exact60)
	r.Walls[0].BuildUp = r.layers("board 30ft")
	r.solve().wantSaid("build-up-absurd", "back")

	r = rectangle60(t, exact60)
	r.Walls[0].Lean = r.at("A 40")
	r.solve().wantSaid("lean-absurd", "back leans more than")

	r = rectangle60(t, exact60)
	r.Walls[0].BuildUp = r.layers("board 1/2, tile")
	r.solve().wantSaid("tile-not-laid", "back")
}

// A room of more than 15 m is a reading in a wrong unit.
func TestRoomTooLarge(t *testing.T) {
	newRoom(t, "A B C D", "A-B 60ft, B-C 80ft, C-D 60ft, D-A 80ft, A-C 100ft, B-D 100ft").withLevels().solve().wantSaid("room-too-large", "wrong unit")
}

// The joint of a corner, of the floor, the ceiling and the perimeter, each where it is written; the soft joint elsewhere.
func TestJoints(t *testing.T) {
	r := rectangle60(t, exact60)
	r.tile("white", "12 x 6 x 3/8", document.Ceramic)
	r.lay("white", "back", "floor")
	r.Setting.SoftJoint, r.Setting.FloorJoint = val(r.in("1/4")), val(r.in("3/16"))
	r.Setting.CeilingJoint, r.Setting.PerimeterJoint = val(r.in("1/2")), val(r.in("3/8"))
	r.Corners = append(r.Corners, document.Corner{Name: "A", Joint: val(r.in("5/16"))})
	got := r.solve()
	f := got.face("back")
	for name, want := range map[string]string{"corner A": "5/16", "corner B": "1/4", "floor": "3/16", "ceiling": "1/2"} {
		e := edgeNamed(t, f, name)
		wantLength(t, name, e.Joint, want)
		if !e.Soft {
			t.Errorf("%s is a change of plane", name)
		}
	}
	wantLength(t, "perimeter", edgeNamed(t, got.face("floor"), "back").Joint, "3/8")
}
