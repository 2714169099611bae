// Package parts builds what every sheet is made of: dimensions, leaders, rulers, tables, notes, title block, frame.
//
// Takes places and finished texts in paper space; gives items of the display list. Rules: dimensions after
// ISO 129-1, lettering heights after ISO 3098, title block after ISO 7200; lettering that finds no room is moved
// with a line that leads back, broken over lines or carried to the next page, and never dropped; nothing here
// knows what a room, a tile or a scale is.
package parts

import (
	"dryfit/internal/draw"
	"dryfit/internal/typeset"
)

// Heights of capitals (ISO 3098-1). Numbers on a sheet are at least Small high, captions of cells are Tiny.
const (
	Tiny  draw.Um = 1800
	Small draw.Um = 2500
	Large draw.Um = 3500
	Huge  draw.Um = 5000
)

// axis lays a run of dimensions along x, or along y where it is vertical.
type axis struct{ vertical bool }

func (a axis) at(along, across draw.Um) draw.XY {
	if a.vertical {
		return draw.At(across, along)
	}
	return draw.At(along, across)
}

func (a axis) stroke(width, along0, across0, along1, across1 draw.Um) draw.Path {
	return draw.Stroke(draw.Line(width), a.at(along0, across0), a.at(along1, across1))
}

// reach gives how far a box goes along and across.
func (a axis) reach(b draw.Box) (along0, along1, across0, across1 draw.Um) {
	if a.vertical {
		return b.Lo.Y, b.Hi.Y, b.Lo.X, b.Hi.X
	}
	return b.Lo.X, b.Hi.X, b.Lo.Y, b.Hi.Y
}

// Parts of a dimension in paper space; ISO 129-1 states them as multiples of the line width or leaves them free.
const (
	dimPen           = draw.Narrow
	offFeat          = draw.MM     // from the thing measured to its extension line
	beyond           = 2 * draw.MM // from the dimension line to the end of the extension line
	tickHalf draw.Um = 1_100       // half the reach of an oblique stroke along each axis
	textOff  draw.Um = 800         // from the dimension line to the lettering above it
	originR  draw.Um = 1_500       // radius of the origin's circle
	labelOff draw.Um = 700         // from an extension line to the value in line with it
	// lineClear is kept between a value and a line that passes it, and between values.
	lineClear draw.Um = 600
	// slantLow and slantHigh bound the depth over which lines lead aside.
	slantLow  = 3 * draw.MM
	slantHigh = 10 * draw.MM
)

// outward is the sign of the direction from the thing measured to its dimension line.
func outward(feature, line draw.Um) draw.Um {
	if line < feature {
		return -1
	}
	return 1
}

// extension draws a line from the thing measured past the dimension line; ISO 129-1, extension lines.
func (a axis) extension(along, feature, line draw.Um) draw.Path {
	out := outward(feature, line)
	start := feature + out*offFeat
	if (line-start)*out < 0 {
		start = line
	}
	return a.stroke(dimPen, along, start, along, line+out*beyond)
}

// tick is the oblique stroke that ends a dimension, at 45 degrees to the line and read as a slash from below or
// from the right.
func (a axis) tick(along, across draw.Um) draw.Path {
	p := a.at(along, across)
	if a.vertical {
		return draw.Stroke(draw.Line(draw.Wide), draw.At(p.X+tickHalf, p.Y-tickHalf), draw.At(p.X-tickHalf, p.Y+tickHalf))
	}
	return draw.Stroke(draw.Line(draw.Wide), draw.At(p.X-tickHalf, p.Y-tickHalf), draw.At(p.X+tickHalf, p.Y+tickHalf))
}

// sized gives the height asked for, or the usual one.
func sized(size draw.Um) draw.Um {
	if size <= 0 {
		return Small
	}
	return size
}

// width measures regular lettering.
func width(text string, size draw.Um) draw.Um { return typeset.Width(text, size, false) }
