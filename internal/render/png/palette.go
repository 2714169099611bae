package png

import (
	"encoding/binary"
	"image"
	"image/color"
)

// paletted is the picture with a palette, which is packed several times quicker and smaller, or the picture itself where it has more
// colors than a palette holds. The palette is in the order in which the colors first stand in the picture.
func paletted(img *image.RGBA) image.Image {
	const most = 256
	out := image.NewPaletted(img.Rect, nil)
	index := map[uint32]uint8{}
	last, at := uint32(0), uint8(0)
	for i := range out.Pix {
		c := binary.LittleEndian.Uint32(img.Pix[4*i:])
		if i == 0 || c != last {
			k, have := index[c]
			if !have {
				if len(index) == most {
					return img
				}
				k = uint8(len(index))
				index[c] = k
				out.Palette = append(out.Palette, color.RGBA{img.Pix[4*i], img.Pix[4*i+1], img.Pix[4*i+2], img.Pix[4*i+3]})
			}
			last, at = c, k
		}
		out.Pix[i] = at
	}
	return out
}
