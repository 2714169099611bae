package png

import (
	"bytes"
	"encoding/binary"
	"hash/crc32"
	"image"
	stdpng "image/png"
)

// encode writes the picture with a pHYs chunk (PNG specification, third edition, 11.3.4.3), so that a program that
// prints it prints it in the page's size. The standard encoder has no word for it; the chunk goes behind IHDR.
func encode(img *image.RGBA, dpi int) ([]byte, error) {
	var b bytes.Buffer
	if err := stdpng.Encode(&b, paletted(img)); err != nil {
		return nil, err
	}
	const behindIHDR = 8 + 12 + 13 // signature; length, type and checksum; the chunk's data; before any palette
	out := append([]byte{}, b.Bytes()[:behindIHDR]...)
	out = append(out, chunk("pHYs", physical(dpi))...)
	return append(out, b.Bytes()[behindIHDR:]...), nil
}

// physical is dots per metre, both ways, half up; unit 1 is the metre.
func physical(dpi int) []byte {
	perMetre := uint32((int64(dpi)*20_000 + 254) / 508)
	return append(binary.BigEndian.AppendUint32(binary.BigEndian.AppendUint32(nil, perMetre), perMetre), 1)
}

func chunk(name string, data []byte) []byte {
	c := binary.BigEndian.AppendUint32(nil, uint32(len(data)))
	c = append(append(c, name...), data...)
	return binary.BigEndian.AppendUint32(c, crc32.ChecksumIEEE(c[4:]))
}
