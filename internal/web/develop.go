package web

import (
	"bytes"
	"errors"
	"fmt"
	"image"
	"image/color"
	"image/draw"
	"image/jpeg"
	"image/png"
	"io"
)

// Bounds of a photo, our own choice. A phone takes 12 or 24 million pixels in some 3 to 10 MB unless told otherwise. What
// is decoded takes up to 12 bytes a pixel for a while, so the count is what keeps a small file from filling the memory.
const (
	mostPhotoBytes  = 16 << 20
	mostPhotoPixels = 25_000_000
	mostScans       = 64   // passes over the picture that one JPEG asks for; cameras make 1 to 10
	keptSide        = 2400 // pixels of the longer side as it is kept: a screw head is still seen on a whole wall
	keptQuality     = 85
)

// unfit is why a file is no photo to keep, in words for the person who sent it.
type unfit string

func (u unfit) Error() string { return string(u) }

const (
	noPicture = unfit("it is no JPEG or PNG picture. Send a photo as the phone took it")
	cutOff    = unfit("the picture is cut off or damaged. Send it once more")
	tooManyMB = unfit("the file is too large: up to 16 MB is taken. Send it in the phone's normal size")
)

// developed is a photo made anew: pixels and nothing else.
type developed struct {
	JPEG          []byte
	Width, Height int
}

// develop reads a picture and writes it anew as JPEG, upright, and no larger than a page needs. What else the file held
// is gone with it: where and when it was taken, on which device, its little preview, whatever is hidden behind its end.
// A color profile goes too, and colors are taken as sRGB. Its size is looked at before it is decoded.
func develop(file []byte) (developed, error) {
	read, err := kindOf(file)
	if err != nil {
		return developed{}, err
	}
	size, err := read.size(bytes.NewReader(file))
	if err != nil {
		return developed{}, told(err)
	}
	if size.Width < 1 || size.Height < 1 || size.Width > mostPhotoPixels/size.Height {
		return developed{}, unfit(fmt.Sprintf("the picture is %d by %d pixels: up to %d million are taken. Send it in the phone's normal size",
			size.Width, size.Height, mostPhotoPixels/1_000_000))
	}
	picture, err := read.decode(bytes.NewReader(file))
	if err != nil {
		return developed{}, told(err)
	}
	upright := turn(shrink(flat(picture), keptSide), orientation(file))
	var out bytes.Buffer
	if err := jpeg.Encode(&out, upright, &jpeg.Options{Quality: keptQuality}); err != nil {
		return developed{}, err
	}
	return developed{out.Bytes(), upright.Rect.Dx(), upright.Rect.Dy()}, nil
}

// reader reads one kind of file.
type reader struct {
	size   func(io.Reader) (image.Config, error)
	decode func(io.Reader) (image.Image, error)
}

// kindOf goes by what a file begins with and not by what it is called.
func kindOf(file []byte) (reader, error) {
	switch {
	case len(file) > mostPhotoBytes:
		return reader{}, tooManyMB
	case bytes.HasPrefix(file, []byte("\xff\xd8\xff")):
		if bytes.Count(file, []byte{0xff, 0xda}) > mostScans {
			return reader{}, unfit("the picture is packed in an unusual way. Save it anew, and send that")
		}
		return reader{jpeg.DecodeConfig, jpeg.Decode}, nil
	case bytes.HasPrefix(file, []byte("\x89PNG\r\n\x1a\n")):
		return reader{png.DecodeConfig, png.Decode}, nil
	}
	return reader{}, noPicture
}

// told words what a decoder says.
func told(err error) error {
	var kind jpeg.UnsupportedError
	var other png.UnsupportedError
	if errors.As(err, &kind) || errors.As(err, &other) {
		return unfit("the picture is of a rare kind or size that can not be read here. Save it anew as an ordinary JPEG, and send that")
	}
	return cutOff
}

// flat puts a picture on white paper, its corner at 0, 0.
func flat(p image.Image) *image.RGBA {
	b := p.Bounds()
	out := image.NewRGBA(image.Rect(0, 0, b.Dx(), b.Dy()))
	draw.Draw(out, out.Rect, image.NewUniform(color.White), image.Point{}, draw.Src)
	draw.Draw(out, out.Rect, p, b.Min, draw.Over)
	return out
}

// shrink makes a picture smaller by a whole number, until no side is longer than the given one. Each pixel is the mean
// of those that it stands for.
func shrink(p *image.RGBA, side int) *image.RGBA {
	w, h := p.Rect.Dx(), p.Rect.Dy()
	k := (max(w, h) + side - 1) / side
	if k <= 1 {
		return p
	}
	out := image.NewRGBA(image.Rect(0, 0, max(1, w/k), max(1, h/k)))
	for y := range out.Rect.Dy() {
		for x := range out.Rect.Dx() {
			out.SetRGBA(x, y, mean(p, image.Rect(x*k, y*k, (x+1)*k, (y+1)*k).Intersect(p.Rect)))
		}
	}
	return out
}

// mean is the mean color of a part of an opaque picture.
func mean(p *image.RGBA, part image.Rectangle) color.RGBA {
	var r, g, b int
	for y := part.Min.Y; y < part.Max.Y; y++ {
		row := p.Pix[p.PixOffset(part.Min.X, y):p.PixOffset(part.Max.X, y)]
		for ; len(row) > 0; row = row[4:] {
			r, g, b = r+int(row[0]), g+int(row[1]), b+int(row[2])
		}
	}
	n := part.Dx() * part.Dy()
	return color.RGBA{uint8((r + n/2) / n), uint8((g + n/2) / n), uint8((b + n/2) / n), 255}
}
