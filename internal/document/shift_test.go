package document

import (
	"os"
	"reflect"
	"testing"

	"dryfit/internal/text"
	"dryfit/internal/unit"
)

func TestShift(t *testing.T) {
	for _, c := range []struct{ typed, by, want string }{
		{"34 above floor", "1/2", "34-1/2 above floor"},
		{"center 34-1/4 above floor", "-1/4", "center 34 above floor"},
		{"34 1/4 above floor", "1/16", "34-5/16 above floor"},
		{"24 to 48 above floor", "1", "25 to 49 above floor"},
		{"24 to 48 from A", "-1/2", "23-1/2 to 47-1/2 from A"},
		{"3 left of basin line", "1/2", "3-1/2 left of basin line"},
		{"12 from A to tile face", "1", "13 from A to tile face"},
		{"cement board 1/2", "1/8", "cement board 5/8"},
		{"cement board 12.7 mm", "0.8 mm", "cement board 13.5 mm"},
		{"board 12.7 mm", "1/16", "board 14.2875 mm"},
		{"2.54 cm", "1", "50.8 mm"},
		{`8' 2-3/8"`, "1/8", "98-1/2 in"},
		{"32", "-1", "31"},
		{"round 15", "1", "round 16"},
		{"oval 20 x 15", "1", ""},     // two figures
		{"55 to 80", "1", ""},         // a range of a data sheet is no place
		{"on basin line", "1", ""},    // none
		{"3 left of line 2", "1", ""}, // the name may be the second figure
		{"1/3", "1 mm", ""},           // a third of an inch and a millimeter is no 1/16000 mm
	} {
		by, err := unit.Parse(c.by, unit.Inches)
		if err != nil {
			t.Fatal(err)
		}
		got, ok := Shift(c.typed, by, unit.Inches)
		if ok != (c.want != "") || got != c.want && ok {
			t.Errorf("%s by %s: %q, %v; want %q", c.typed, c.by, got, ok, c.want)
		}
	}
}

// A draft reads what Read does of the changed text.
func TestDraft(t *testing.T) {
	src, err := os.ReadFile("testdata/full.yaml")
	if err != nil {
		t.Fatal(err)
	}
	d := NewDraft("full.yaml", src)
	same, _, ok := d.With(nil)
	if whole, _ := Read("full.yaml", src); !ok || !reflect.DeepEqual(same, whole) {
		t.Error("an unchanged draft reads another room")
	}
	tree, _ := text.Parse(src)
	metric := []Op{{Do: text.Set, Path: []string{"units"}, Value: "mm"}}
	edited, _ := Apply(src, metric)
	want, _ := Read("full.yaml", edited)
	if got, _, ok := d.With(metric); !ok || !reflect.DeepEqual(got, want) {
		t.Error("in millimeters the draft reads another room")
	}
	tried, seen := 0, 0
	eachScalar(tree, nil, func(path []string, typed string) {
		to, ok := Shift(typed, unit.Inch/8, same.Units)
		if seen++; !ok || seen%4 != 0 {
			return
		}
		ops := []Op{{Do: text.Set, Path: path, Value: to}}
		edited, found := Apply(src, ops)
		if found.Stops() {
			return
		}
		tried++
		want, _ := Read("full.yaml", edited)
		got, _, ok := d.With(ops)
		if !ok || !reflect.DeepEqual(bare(got), bare(want)) {
			t.Errorf("%v = %s: the draft reads another room", path, to)
		}
	})
	if tried < 20 {
		t.Errorf("only %d values were tried", tried)
	}
	if _, _, ok := d.With([]Op{{Do: text.Set, Path: []string{"no such"}, Value: "1"}}); ok {
		t.Error("a value that is not there can not be replaced")
	}
	if _, _, ok := d.With([]Op{{Do: text.Remove, Path: []string{"name"}}}); ok {
		t.Error("a draft only sets")
	}
	if _, ok := d.Text([]string{"walls"}); ok {
		t.Error("a table is no single value")
	}
}

func eachScalar(n *text.Node, path []string, visit func([]string, string)) {
	for _, e := range n.Entries {
		eachScalar(e.Value, append(append([]string{}, path...), e.Key), visit)
	}
	for i, c := range n.Items {
		eachScalar(c, append(append([]string{}, path...), text.Item(i)), visit)
	}
	if n.Kind == text.Scalar {
		visit(path, n.Text)
	}
}

// bare takes the lines and columns out of a room: they may differ behind a changed value.
func bare(room Room) Room {
	v := reflect.New(reflect.TypeOf(room)).Elem()
	v.Set(reflect.ValueOf(room))
	return stripped(v).Interface().(Room)
}

func stripped(v reflect.Value) reflect.Value {
	out := reflect.New(v.Type()).Elem()
	out.Set(v)
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			if name := v.Type().Field(i).Name; name == "Line" || name == "Column" {
				out.Field(i).SetZero()
				continue
			}
			if out.Field(i).CanSet() {
				out.Field(i).Set(stripped(v.Field(i)))
			}
		}
	case reflect.Slice:
		if v.IsNil() {
			return out
		}
		out.Set(reflect.MakeSlice(v.Type(), v.Len(), v.Len()))
		for i := range v.Len() {
			out.Index(i).Set(stripped(v.Index(i)))
		}
	}
	return out
}
