package unit

import "testing"

// 1 US gallon is 231 in³ and 3.785411784 L exactly; a cubic foot 28.316846592 L; 1.5 gpm is 0.09464 L/s (a published tap flow).
func TestFlow(t *testing.T) {
	in3 := int64(Inch) * int64(Inch) / int64(Millimetre) * int64(Inch) / int64(Millimetre) // 1/16000 mm³
	if int64(GallonMinute)*16 != in3*231 || int64(CubicFtMinute)*16 != in3*1728 {
		t.Errorf("%d and %d", GallonMinute, CubicFtMinute)
	}
	if got := FlowOf(5.7); got != 57*LiterMinute/10 {
		t.Error(got)
	}
	f := 3 * GallonMinute / 2
	for _, c := range []struct{ got, want, off float64 }{
		{f.LS(), 0.09464, 0.000005}, {f.GPM(), 1.5, 0}, {f.MM3S(), 94635.2946, 0.001}, {(50 * CubicFtMinute).CFM(), 50, 0}, {(50 * CubicFtMinute).LS(), 23.597, 0.001},
	} {
		if c.got < c.want-c.off || c.got > c.want+c.off {
			t.Errorf("%v, want %v", c.got, c.want)
		}
	}
}
