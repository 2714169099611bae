package export

import (
	"bytes"
	"encoding/json"
	"math/big"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/unit"
)

// Exact numbers by hand: 1 in² = 645.16 mm² and a ft² = 92903.04 mm² exactly (16 CFR 500.19); the grid's square is
// 1/256,000,000 mm².
func TestExactNumbers(t *testing.T) {
	for _, c := range []struct {
		value any
		want  string
	}{
		{area(unit.SquareInch), "645.16"},
		{area(unit.SquareFoot), "92903.04"},
		{area(1), "0.00000000390625"},
		{area(0), "0"},
		{area(unit.Reach.Times(unit.Reach)), "1125899906.842624"},
		{angle(45 * unit.Degree), "45"},
		{angle(-1), "-0.000001"},
		{angle(89_498_203), "89.498203"},
		{share(unit.One / 50), "0.02"},
		{thousandths(-1250), "-1.25"},
		{liters(1_500_000), "1.5"},
	} {
		b, err := json.Marshal(c.value)
		if err != nil || string(b) != c.want {
			t.Errorf("%T %v: %s, want %s", c.value, c.value, b, c.want)
		}
	}
}

// Any area comes back exactly.
func TestAreasComeBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.Int64Range(0, 1<<58).Draw(t, "area")
		b, _ := json.Marshal(area(a))
		back, ok := new(big.Rat).SetString(string(b))
		if !ok || back.Cmp(big.NewRat(a, 256_000_000)) != 0 {
			t.Fatalf("%d: %s", a, b)
		}
	})
}

// Taken apart again, indented JSON is the same JSON: encoding/json compacts it back.
func TestIndentedIsTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`[a-z {}\[\]",:\\é]{0,40}`)
		var tree func(depth int) any
		tree = func(depth int) any {
			switch kind := rapid.IntRange(0, 4).Draw(t, "kind"); {
			case kind == 0 || depth == 0:
				return text.Draw(t, "text")
			case kind == 1:
				return rapid.Int().Draw(t, "number")
			case kind == 2:
				out := map[string]any{}
				for range rapid.IntRange(0, 4).Draw(t, "keys") {
					out[text.Draw(t, "key")] = tree(depth - 1)
				}
				return out
			}
			out := []any{}
			for range rapid.IntRange(0, 4).Draw(t, "entries") {
				out = append(out, tree(depth-1))
			}
			return out
		}
		compact := encoded(tree(4))
		var back bytes.Buffer
		if err := json.Compact(&back, indented(compact)); err != nil || back.String() != string(compact) {
			t.Fatalf("%s came back as %s, %v", compact, back.String(), err)
		}
	})
}

// What fits on a line stands on one; strings, order and numbers stay as they are.
func TestIndented(t *testing.T) {
	long := `"aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa"`
	for _, c := range []struct{ in, want string }{
		{`{"b":1,"a":[1,2]}`, "{\"b\": 1, \"a\": [1, 2]}\n"},
		{`{"a,b:c\"d,":1.50}`, "{\"a,b:c\\\"d,\": 1.50}\n"},
		{`{"z":` + long + `,"a > b":{"y":[],"x":{}}}`, "{\n  \"z\": " + long + ",\n  \"a > b\": {\"y\": [], \"x\": {}}\n}\n"},
		{`12`, "12\n"},
		{`"a\\"`, "\"a\\\\\"\n"},
		{`[]`, "[]\n"},
		{`[true,"}",null]`, "[true, \"}\", null]\n"},
		{`[[` + long + `,2]]`, "[\n  [\n    " + long + ",\n    2\n  ]\n]\n"},
	} {
		if got := string(indented([]byte(c.in))); got != c.want {
			t.Errorf("%s:\n%s\nwant\n%s", c.in, got, c.want)
		}
	}
}
