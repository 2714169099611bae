package geom

import (
	"encoding/binary"
	"testing"

	"dryfit/internal/unit"
)

// ringOfBytes reads ordinates of 4 bytes each, folded into the reach.
func ringOfBytes(b []byte) Ring {
	var r Ring
	for ; len(b) >= 8 && len(r) < 24; b = b[8:] {
		r = append(r, Vertex{Point{fold(b), fold(b[4:])}, Label(len(r) + 1)})
	}
	return r
}

func fold(b []byte) unit.Length {
	return unit.Length(int32(binary.LittleEndian.Uint32(b))) % (unit.Reach + 1)
}

func bytesOf(ordinates ...int32) (b []byte) {
	for _, v := range ordinates {
		b = binary.LittleEndian.AppendUint32(b, uint32(v))
	}
	return b
}

// FuzzHalfPlane: no outline panics; a simple one never grows by more than its corners' rounding, and its two sides make
// up the whole within that.
func FuzzHalfPlane(f *testing.F) {
	f.Add(bytesOf(0, 0, 100, 0, 100, 100, 0, 100), bytesOf(0, 50, 1, 50))
	f.Add(bytesOf(0, 0, 100, 0, 100, 80, 50, 20, 0, 80), bytesOf(0, 20, 7, 20))
	f.Add(bytesOf(0, 0, 4, 4, 4, 0, 0, 4), bytesOf(0, 0, 3, 1))
	f.Add(bytesOf(-536870912, -536870912, 536870912, -536870911, 536870912, 536870912), bytesOf(-536870912, 7, 536870912, 9))
	f.Fuzz(func(t *testing.T, outline, line []byte) {
		r, ab := ringOfBytes(outline), ringOfBytes(line)
		if len(ab) < 2 {
			return
		}
		g := Region{r}
		kept, cut := g.HalfPlane(ab[0].P, ab[1].P, 99), g.HalfPlane(ab[1].P, ab[0].P, 98)
		ok, _, _ := r.Simple()
		if !ok || r.Area2() <= 0 || ab[0].P == ab[1].P {
			return
		}
		slack := slackOf(g) + slackOf(kept) + slackOf(cut)
		if float64(kept.Area2()-g.Area2()) > 2*slack || float64(cut.Area2()-g.Area2()) > 2*slack {
			t.Errorf("grew from %d to %d and %d", g.Area2(), kept.Area2(), cut.Area2())
		}
		if d := float64(kept.Area2() + cut.Area2() - g.Area2()); d > 2*slack || d < -2*slack {
			t.Errorf("%d and %d do not make up %d", kept.Area2(), cut.Area2(), g.Area2())
		}
	})
}

// FuzzMeasures: nothing that measures or moves an outline panics, whatever the outline.
func FuzzMeasures(f *testing.F) {
	f.Add(bytesOf(0, 0, 100, 0, 100, 100, 0, 100), int64(5))
	f.Add(bytesOf(), int64(5))
	f.Add(bytesOf(0, 0, 0, 0, 0, 0), int64(-5))
	f.Add(bytesOf(0, 0, 4, 4, 4, 0, 0, 4), int64(1)<<29)
	f.Fuzz(func(t *testing.T, outline []byte, n int64) {
		r, d := ringOfBytes(outline), unit.Length(n)%(unit.Reach+1)
		g := Region{r}
		if neck := g.Neck(); neck < 0 {
			t.Errorf("neck %d", neck)
		}
		g.Spans(Horizontal, d)
		NewIndex(g).ClipRect(Rect{Point{-d, 0}, Point{d, 100}}, [4]Label{1, 2, 3, 4})
		if c := r.Clean(); c.Area2() != r.Area2() {
			t.Errorf("area %d cleaned to %d", r.Area2(), c.Area2())
		}
		moved, err := OffsetEdges(g, func(Label) unit.Length { return d })
		if ok, _, _ := r.Simple(); ok && err == nil && r.Area2() > 0 && d > 0 && moved.Area2() >= g.Area2() {
			t.Errorf("moved in by %d the area grew from %d to %d", d, g.Area2(), moved.Area2())
		}
	})
}
