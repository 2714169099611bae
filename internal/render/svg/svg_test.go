package svg

import (
	"bytes"
	"encoding/xml"
	"flag"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"dryfit/internal/draw"
	"dryfit/internal/typeset"
)

var update = flag.Bool("update", false, "write the golden files anew")

func write(t *testing.T, p draw.Page, opt Options) string {
	var b bytes.Buffer
	if err := Write(&b, p, opt); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// small has one of each item.
func small() draw.Page {
	outer := draw.Span(10_000, 10_000, 50_000, 30_000)
	return draw.Page{Title: "Basin wall & floor", W: 80_000, H: 60_000, Items: []draw.Item{
		draw.Path{ID: "p-1", Class: "piece", Title: "piece 1 <cut>", Rings: [][]draw.XY{outer.Ring(), outer.Inset(6_000).Ring()}, Closed: true,
			Pen: draw.Line(draw.Wide), Fill: draw.Fill{On: true, Color: draw.Pale, Hatch: draw.Diagonal}},
		draw.Circle{Class: "hole", C: draw.At(60_000, 20_000), R: 5_500, Pen: draw.Line(draw.Narrow).As(draw.Chain)},
		draw.Stroke(draw.Pen{Width: draw.Narrow, Color: draw.Blue, Dash: draw.Dashed}, draw.At(-1_500, 40_001), draw.At(70_000, 40_010)),
		draw.Group{ID: "g", Class: "detail", Title: "detail", Clip: &[2]draw.XY{draw.At(0, 0), draw.At(40_000, 9_000)}, Items: []draw.Item{
			draw.Text{At: draw.At(5_000, 3_000), Size: 2_500, Body: "2-3/8\" & up"},
		}},
		draw.Text{Class: "dimension", At: draw.At(75_000, 30_000), Size: 3_500, Anchor: draw.Middle, Turn: 90, Bold: true, Color: draw.Gray, Body: "40"},
	}}
}

func TestGolden(t *testing.T) {
	for name, opt := range map[string]Options{"file": {}, "inline": {Inline: true, Fluid: true, Prefix: "wall-"}} {
		got, path := write(t, small(), opt), filepath.Join("testdata", name+".svg")
		if *update {
			if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		want, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		if got != string(want) {
			t.Errorf("%s: got\n%s", path, got)
		}
	}
	if files, _ := filepath.Glob("testdata/*.svg"); len(files) != 2 {
		t.Errorf("golden files without a test: %v", files)
	}
}

// hostile texts go everywhere that a user's words can go.
var hostile = []string{"<script>alert(1)</script>", "\"><g onload=x>", "a\xff\xfeb", "😀", "]]>", "&amp;", "\x00\x1b", "' or ''", strings.Repeat("W", 5_000)}

func TestHostileTextIsOnlyText(t *testing.T) {
	for _, s := range hostile {
		p := draw.Page{Title: s, W: 50_000, H: 50_000, Items: []draw.Item{
			draw.Group{ID: s, Class: s, Title: s, Clip: &[2]draw.XY{{}, draw.At(1, 1)}, Items: []draw.Item{draw.Text{Class: s, Size: 2_500, Body: s}}},
			draw.Path{ID: s, Class: s, Title: s, Rings: [][]draw.XY{{}, {draw.At(1, 2)}}},
			draw.Circle{ID: s, Class: s, Title: s},
		}}
		out := write(t, p, Options{Prefix: s})
		var texts []string
		for _, e := range elements(t, out) {
			if !strings.Contains(" svg title rect clipPath g text path circle ", " "+e.name+" ") {
				t.Errorf("%.30q brought the element %q", s, e.name)
			}
			if e.name == "text" {
				texts = append(texts, e.text)
			}
			for _, a := range e.attrs {
				if strings.HasPrefix(a.Name.Local, "on") {
					t.Errorf("%.30q brought the attribute %q", s, a.Name.Local)
				}
			}
		}
		if strings.Join(texts, "|") != typeset.Clean(s) {
			t.Errorf("%.30q reads back as %.60q", s, texts)
		}
	}
}

type element struct {
	name, text string
	attrs      []xml.Attr
}

func elements(t *testing.T, doc string) []element {
	var out []element
	var open []int
	for d := xml.NewDecoder(strings.NewReader(doc)); ; {
		tok, err := d.Token()
		if err == io.EOF {
			return out
		}
		if err != nil {
			t.Fatalf("%v in %.200s", err, doc)
		}
		switch tok := tok.(type) {
		case xml.StartElement:
			open = append(open, len(out))
			out = append(out, element{name: tok.Name.Local, attrs: tok.Attr})
		case xml.EndElement:
			open = open[:len(open)-1]
		case xml.CharData:
			if len(open) > 0 {
				out[open[len(open)-1]].text += string(tok)
			}
		}
	}
}

func TestEmbedCarriesOnlyTheWeightsInUse(t *testing.T) {
	p := draw.Page{W: 50_000, H: 50_000, Items: []draw.Item{draw.Text{Size: 2_500, Body: "regular"}}}
	if out := write(t, p, Options{Embed: true}); strings.Count(out, "@font-face") != 1 || len(out) < len(typeset.Data(false)) {
		t.Errorf("%d faces in %d bytes", strings.Count(out, "@font-face"), len(out))
	}
	if out := write(t, p, Options{}); strings.Contains(out, "@font-face") {
		t.Error("a face that nobody asked for")
	}
}

func TestMM(t *testing.T) {
	for v, want := range map[draw.Um]string{0: "0", 1: "0.001", -1: "-0.001", 1_000: "1", 25_400: "25.4", -12_050: "-12.05", 100_000: "100"} {
		if got := mm(v); got != want {
			t.Errorf("mm(%d) = %q, want %q", v, got, want)
		}
	}
}

func TestWriterFailureIsTold(t *testing.T) {
	if err := Write(failing{}, small(), Options{}); err == nil {
		t.Error("a full disk went unnoticed")
	}
}

type failing struct{}

func (failing) Write([]byte) (int, error) { return 0, io.ErrShortWrite }
