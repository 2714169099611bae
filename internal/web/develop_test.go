package web

import (
	"bytes"
	"encoding/base64"
	"encoding/binary"
	"errors"
	"fmt"
	"hash/crc32"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"strings"
	"testing"
)

// Four fields of color, far enough apart to survive being packed.
var (
	red, green, blue, white = color.RGBA{220, 0, 0, 255}, color.RGBA{0, 180, 0, 255}, color.RGBA{0, 0, 220, 255}, color.RGBA{255, 255, 255, 255}
	quarters                = [2][2]color.RGBA{{red, green}, {blue, white}} // by row and column
)

// chart is a picture of w by h pixels with a color in each quarter.
func chart(w, h int) *image.RGBA {
	p := image.NewRGBA(image.Rect(0, 0, w, h))
	for y := range h {
		for x := range w {
			p.SetRGBA(x, y, quarters[2*y/h][2*x/w])
		}
	}
	return p
}

func jpegOf(t testing.TB, p image.Image) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := jpeg.Encode(&b, p, nil); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func pngOf(t testing.TB, p image.Image) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := png.Encode(&b, p); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// withSegment puts a segment behind the start of a JPEG, where cameras put theirs (Exif, CIPA DC-008-2019, 4.7.1).
func withSegment(file []byte, marker byte, payload []byte) []byte {
	head := []byte{0xff, marker, 0, 0}
	binary.BigEndian.PutUint16(head[2:], uint16(len(payload)+2))
	return bytes.Join([][]byte{file[:2], head, payload, file[2:]}, nil)
}

// camera is what a phone writes into a photo: how to hold it, its maker, and a directory of where it was taken (tag
// 34853, with latitude and longitude as tags 2 and 4 of that).
func camera(order binary.AppendByteOrder, how uint16) []byte {
	b := []byte("Exif\x00\x00II*\x00")
	if order == binary.AppendByteOrder(binary.BigEndian) {
		b = []byte("Exif\x00\x00MM\x00*")
	}
	entry := func(tag, kind uint16, count, value uint32) {
		b = order.AppendUint16(b, tag)
		b = order.AppendUint16(b, kind)
		b = order.AppendUint32(b, count)
		b = order.AppendUint32(b, value)
	}
	b = order.AppendUint32(b, 8)
	b = order.AppendUint16(b, 3)
	entry(271, 2, 12, 200) // the maker, at 200
	b = order.AppendUint16(b, orientationTag)
	b = order.AppendUint16(b, 3)
	b = order.AppendUint32(b, 1)
	b = order.AppendUint16(b, how)
	b = order.AppendUint16(b, 0)
	entry(34853, 4, 1, 60) // the directory of the place, at 60
	b = order.AppendUint32(b, 0)
	b = append(b, make([]byte, 6+60-len(b))...)
	b = order.AppendUint16(b, 2)
	entry(2, 5, 3, 100)
	entry(4, 5, 3, 124)
	b = append(b, make([]byte, 6+100-len(b))...)
	for _, n := range []uint32{48, 1, 12, 1, 3456, 100, 16, 1, 22, 1, 1234, 100} {
		b = order.AppendUint32(b, n)
	}
	b = append(b, make([]byte, 6+200-len(b))...)
	return append(b, "Lens and Box"...)
}

// Exif (CIPA DC-008-2019), tag 274: where the 0th row and the 0th column of the stored pixels are seen.
func TestPhotosAreHeldUpright(t *testing.T) {
	for how, seen := range map[uint16]struct{ row, column string }{
		1: {"top", "left"}, 2: {"top", "right"}, 3: {"bottom", "right"}, 4: {"bottom", "left"},
		5: {"left", "top"}, 6: {"right", "top"}, 7: {"right", "bottom"}, 8: {"left", "bottom"},
	} {
		for _, order := range []binary.AppendByteOrder{binary.LittleEndian, binary.BigEndian} {
			got, err := develop(withSegment(jpegOf(t, chart(60, 40)), 0xe1, camera(order, how)))
			if err != nil {
				t.Fatal(err)
			}
			wide := seen.row == "top" || seen.row == "bottom"
			if (got.Width == 60 && got.Height == 40) != wide {
				t.Errorf("%d: %d by %d", how, got.Width, got.Height)
			}
			p, err := jpeg.Decode(bytes.NewReader(got.JPEG))
			if err != nil {
				t.Fatal(err)
			}
			for row := range 2 {
				for column := range 2 {
					wantColor(t, fmt.Sprintf("%d, row %d, column %d", how, row, column), p, place(p, seen.row, seen.column, row, column), quarters[row][column])
				}
			}
		}
	}
}

// place is a point within the quarter in which a row and a column of the stored picture are seen.
func place(p image.Image, rows, columns string, row, column int) image.Point {
	var at image.Point
	for side, n := range map[string]int{rows: row, columns: column} {
		w, h := p.Bounds().Dx(), p.Bounds().Dy()
		switch side {
		case "left":
			at.X = w/4 + n*w/2
		case "right":
			at.X = w - w/4 - n*w/2
		case "top":
			at.Y = h/4 + n*h/2
		case "bottom":
			at.Y = h - h/4 - n*h/2
		}
	}
	return at
}

func wantColor(t *testing.T, what string, p image.Image, at image.Point, want color.RGBA) {
	t.Helper()
	got := color.RGBAModel.Convert(p.At(at.X, at.Y)).(color.RGBA)
	far := func(a, b uint8) bool { return int(a)-int(b) > 40 || int(b)-int(a) > 40 }
	if far(got.R, want.R) || far(got.G, want.G) || far(got.B, want.B) {
		t.Errorf("%s: %v, want %v", what, got, want)
	}
}

func TestNothingButPixelsIsKept(t *testing.T) {
	place := camera(binary.BigEndian, 1)
	file := withSegment(jpegOf(t, chart(60, 40)), 0xe1, place)
	file = withSegment(file, 0xfe, []byte("a comment of the camera"))
	file = append(file, "PK\x03\x04 something behind the end"...)
	if !bytes.Contains(file, place[6+100:6+148]) {
		t.Fatal("the place is not in the file to begin with")
	}
	got, err := develop(file)
	if err != nil {
		t.Fatal(err)
	}
	for what, bytesOf := range map[string][]byte{"the mark of Exif": []byte("Exif"), "the place": place[6+100 : 6+148], "the maker": []byte("Lens and Box"),
		"the comment": []byte("a comment"), "what was behind the end": []byte("PK\x03\x04")} {
		if bytes.Contains(got.JPEG, bytesOf) {
			t.Errorf("%s is still in the photo", what)
		}
	}
	for rest := got.JPEG[2:]; rest[1] != 0xda; rest = rest[2+int(binary.BigEndian.Uint16(rest[2:])):] {
		if m := rest[1]; m >= 0xe0 && m <= 0xef || m == 0xfe {
			t.Errorf("the photo has a segment %x for what is not a picture", m)
		}
	}
}

func TestLargePhotosAreMadeSmaller(t *testing.T) {
	for _, c := range []struct{ w, h, wantW, wantH int }{
		{2400, 1800, 2400, 1800}, {2401, 100, 1200, 50}, {4032, 3024, 2016, 1512}, {100, 4801, 33, 1600}, {1, 5000, 1, 1666}, {3, 2, 3, 2},
	} {
		got, err := develop(pngOf(t, chart(c.w, c.h)))
		if err != nil || got.Width != c.wantW || got.Height != c.wantH {
			t.Errorf("%d by %d became %d by %d, %v", c.w, c.h, got.Width, got.Height, err)
		}
		if size, err := jpeg.DecodeConfig(bytes.NewReader(got.JPEG)); err != nil || size.Width != c.wantW || size.Height != c.wantH {
			t.Errorf("%d by %d: the file is %+v, %v", c.w, c.h, size, err)
		}
	}
}

// A pixel of a smaller picture is the mean of those that it stands for, counted by hand.
func TestMean(t *testing.T) {
	p := image.NewRGBA(image.Rect(0, 0, 4, 2))
	for i, v := range []uint8{10, 20, 0, 0, 30, 41, 0, 255} { // (10+20+30+41)/4 = 25.25, 255/4 = 63.75
		p.SetRGBA(i%4, i/4, color.RGBA{v, 0, v, 255})
	}
	got := shrink(p, 2)
	for x, want := range []uint8{25, 64} {
		if c := got.RGBAAt(x, 0); c != (color.RGBA{want, 0, want, 255}) {
			t.Errorf("pixel %d: %v, want %d", x, c, want)
		}
	}
}

func TestWhatIsClearBecomesWhite(t *testing.T) {
	p := image.NewNRGBA(image.Rect(10, 10, 40, 40))
	got, err := develop(pngOf(t, p))
	if err != nil {
		t.Fatal(err)
	}
	back, err := jpeg.Decode(bytes.NewReader(got.JPEG))
	if err != nil {
		t.Fatal(err)
	}
	wantColor(t, "a clear picture", back, image.Pt(5, 5), white)
}

// hugePNG says that it is very large and holds next to nothing (W3C PNG, 11.2.2).
func hugePNG(w, h uint32) []byte {
	head := []byte("IHDR")
	head = binary.BigEndian.AppendUint32(head, w)
	head = binary.BigEndian.AppendUint32(head, h)
	head = append(head, 8, 6, 0, 0, 0)
	b := []byte("\x89PNG\r\n\x1a\n\x00\x00\x00\x0d")
	b = append(b, head...)
	return binary.BigEndian.AppendUint32(b, crc32.ChecksumIEEE(head))
}

// hugeJPEG is a small picture whose frame header (ITU-T T.81, B.2.2) says another size.
func hugeJPEG(t testing.TB, w, h uint16) []byte {
	b := bytes.Clone(jpegOf(t, chart(16, 16)))
	at := bytes.Index(b, []byte{0xff, 0xc0})
	binary.BigEndian.PutUint16(b[at+5:], h)
	binary.BigEndian.PutUint16(b[at+7:], w)
	return b
}

// refused are files that are no photos to keep, and a word of why.
func refused(t testing.TB) map[string]struct {
	file []byte
	why  string
} {
	good := jpegOf(t, chart(600, 400))
	gif, err := base64.StdEncoding.DecodeString("R0lGODlhAQABAIAAAAAAAP///yH5BAEAAAAALAAAAAABAAEAAAIBRAA7")
	if err != nil {
		t.Fatal(err)
	}
	type row = struct {
		file []byte
		why  string
	}
	return map[string]row{
		"nothing":                   {nil, "no JPEG or PNG"},
		"a zip":                     {[]byte("PK\x03\x04\x14\x00\x00\x00\x08\x00"), "no JPEG or PNG"},
		"a drawing with a script":   {[]byte(`<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>`), "no JPEG or PNG"},
		"a page":                    {[]byte("<!doctype html><script>alert(1)</script>"), "no JPEG or PNG"},
		"a picture of another kind": {gif, "no JPEG or PNG"},
		"a bomb of a PNG":           {hugePNG(100_000, 100_000), "100000 by 100000 pixels"},
		"a bomb beyond int32":       {hugePNG(1<<31-1, 1<<31-1), "rare kind or size"},
		"a bomb of a JPEG":          {hugeJPEG(t, 65535, 65535), "65535 by 65535 pixels"},
		"just too many pixels":      {hugePNG(5001, 5000), "up to 25 million"},
		"without width":             {hugePNG(0, 10), "cut off or damaged"},
		"cut off":                   {good[:len(good)/2], "cut off or damaged"},
		"cut off in its head":       {good[:20], "cut off or damaged"},
		"a PNG cut off":             {pngOf(t, chart(60, 40))[:60], "cut off or damaged"},
		"too many passes":           {append(bytes.Clone(good), bytes.Repeat([]byte{0xff, 0xda}, mostScans+1)...), "unusual way"},
		"too many bytes":            {append(bytes.Clone(good), make([]byte, mostPhotoBytes)...), "up to 16 MB"},
	}
}

func TestWhatIsNoPhotoIsRefused(t *testing.T) {
	for name, c := range refused(t) {
		_, err := develop(c.file)
		var u unfit
		if !errors.As(err, &u) || !strings.Contains(u.Error(), c.why) {
			t.Errorf("%s: %v, want %q", name, err, c.why)
		}
	}
}

// Whatever a file holds, it becomes a photo within bounds or is refused with a reason.
func FuzzDevelop(f *testing.F) {
	f.Add(withSegment(jpegOf(f, chart(30, 20)), 0xe1, camera(binary.LittleEndian, 6)))
	f.Add(pngOf(f, chart(30, 20)))
	for _, c := range refused(f) {
		if len(c.file) < 10_000 {
			f.Add(c.file)
		}
	}
	f.Fuzz(func(t *testing.T, file []byte) {
		got, err := develop(file)
		var u unfit
		if err != nil && !errors.As(err, &u) {
			t.Fatalf("%v is no reason", err)
		}
		if err != nil {
			return
		}
		size, err := jpeg.DecodeConfig(bytes.NewReader(got.JPEG))
		if err != nil || size.Width != got.Width || size.Height != got.Height || max(size.Width, size.Height) > keptSide || min(size.Width, size.Height) < 1 {
			t.Fatalf("%+v %v", size, err)
		}
	})
}

// Directories that are cut off, lead out of the file or say nonsense are read as upright.
func FuzzOrientation(f *testing.F) {
	for _, how := range []uint16{0, 1, 6, 9} {
		f.Add(withSegment([]byte{0xff, 0xd8, 0xff, 0xda}, 0xe1, camera(binary.BigEndian, how)))
	}
	f.Fuzz(func(t *testing.T, file []byte) {
		if got := orientation(file); got < 1 || got > 8 {
			t.Fatal(got)
		}
	})
}
