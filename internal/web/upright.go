package web

import (
	"bytes"
	"encoding/binary"
	"image"
)

// A camera writes its pixels as the sensor lies and says in the file how to hold them: Exif (CIPA DC-008-2019), 4.6.5,
// tag 274, one of eight values. The files that are kept say nothing, so their pixels are turned.

const orientationTag = 274

// orientation reads that value from a JPEG; 1, which is upright, where the file does not say, is damaged or is no JPEG.
func orientation(file []byte) int {
	for rest := file[min(2, len(file)):]; len(rest) >= 4 && rest[0] == 0xff; {
		marker, size := rest[1], int(binary.BigEndian.Uint16(rest[2:]))
		if marker == 0xff { // a fill byte may stand before a marker
			rest = rest[1:]
			continue
		}
		if marker == 0xda || size < 2 || 2+size > len(rest) {
			break
		}
		if tiff, ok := bytes.CutPrefix(rest[4:2+size], []byte("Exif\x00\x00")); ok && marker == 0xe1 {
			return tagOrientation(tiff)
		}
		rest = rest[2+size:]
	}
	return 1
}

// tagOrientation looks the value up in the first directory of a TIFF header (TIFF 6.0, section 2).
func tagOrientation(tiff []byte) int {
	var order binary.ByteOrder = binary.BigEndian
	switch {
	case bytes.HasPrefix(tiff, []byte("II*\x00")):
		order = binary.LittleEndian
	case !bytes.HasPrefix(tiff, []byte("MM\x00*")):
		return 1
	}
	if len(tiff) < 8 {
		return 1
	}
	at := int64(order.Uint32(tiff[4:]))
	if at+2 > int64(len(tiff)) {
		return 1
	}
	entries := tiff[at+2:]
	for n := order.Uint16(tiff[at:]); n > 0 && len(entries) >= 12; n-- {
		if value := order.Uint16(entries[8:]); order.Uint16(entries) == orientationTag && value >= 1 && value <= 8 {
			return int(value)
		}
		entries = entries[12:]
	}
	return 1
}

// turn holds a picture upright.
func turn(p *image.RGBA, how int) *image.RGBA {
	if how < 2 || how > 8 {
		return p
	}
	w, h := p.Rect.Dx(), p.Rect.Dy()
	out := image.NewRGBA(image.Rect(0, 0, w, h))
	if how > 4 { // its rows are columns
		out = image.NewRGBA(image.Rect(0, 0, h, w))
	}
	for y := range out.Rect.Dy() {
		for x := range out.Rect.Dx() {
			sx, sy := x, y
			if how > 4 {
				sx, sy = y, x
			}
			if how == 2 || how == 3 || how == 7 || how == 8 {
				sx = w - 1 - sx
			}
			if how == 3 || how == 4 || how == 6 || how == 7 {
				sy = h - 1 - sy
			}
			copy(out.Pix[out.PixOffset(x, y):][:4], p.Pix[p.PixOffset(sx, sy):])
		}
	}
	return out
}
