package png

import (
	"bytes"
	"image"
	"image/color"
	stdpng "image/png"
	"testing"
)

// A picture comes back pixel by pixel, with a palette where its colors fit into one.
func TestPictureComesBack(t *testing.T) {
	for _, c := range []struct {
		colors  int
		palette bool
	}{{1, true}, {2, true}, {256, true}, {257, false}, {900, false}} {
		img := image.NewRGBA(image.Rect(0, 0, 30, 30))
		for i := range 900 {
			n := i % c.colors
			img.SetRGBA(i%30, i/30, color.RGBA{uint8(n), uint8(n / 256), 7, 255})
		}
		data, err := encode(img, 150)
		if err != nil {
			t.Fatal(err)
		}
		back, err := stdpng.Decode(bytes.NewReader(data))
		if err != nil {
			t.Fatal(err)
		}
		if _, is := back.(*image.Paletted); is != c.palette {
			t.Errorf("%d colors: palette %v", c.colors, is)
		}
		for i := range 900 {
			if got := color.RGBAModel.Convert(back.At(i%30, i/30)); got != img.At(i%30, i/30) {
				t.Fatalf("%d colors: pixel %d is %v", c.colors, i, got)
			}
		}
	}
}

// A color that covers nothing leaves what is under it, one that covers all replaces it, and between the two none overshoots.
func TestMixed(t *testing.T) {
	for _, under := range []uint8{0, 1, 127, 200, 255} {
		for _, over := range []uint8{0, 1, 127, 200, 255} {
			if mixed(under, over, 0) != under || mixed(under, over, 255) != over {
				t.Errorf("%d under %d", under, over)
			}
			for m := range 256 {
				got := mixed(under, over, uint8(m))
				want := (float64(under)*float64(255-m) + float64(over)*float64(m)) / 255
				if d := float64(got) - want; d > 0.5 || d < -0.5 {
					t.Errorf("%d under %d by %d: %d, want %.2f", under, over, m, got, want)
				}
			}
		}
	}
}
