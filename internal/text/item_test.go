package text

import (
	"encoding/json"
	"testing"
)

// Values of lists, new keys in front of others, and texts put back as they stood.
func TestApplyToLists(t *testing.T) {
	for _, c := range []struct{ src, op, want, found string }{
		{"a: [1, 2, 3] # c\n", "set a/#2 = x", "a: [1, x, 3] # c\n", ""},
		{"a: [1, 2, 3]\n", "set a/#2 = x, y", "a: [1, \"x, y\", 3]\n", ""},
		{"a:\n  - 1 # one\n  - 2 # two\n", "set a/#2 = {b: c}", "a:\n  - 1 # one\n  - {b: c} # two\n", ""},
		{"a:\n  - {b: 1, c: 2} # one\n", "set a/#1/c = 3", "a:\n  - {b: 1, c: 3} # one\n", ""},
		{"a:\n  - b: 1 # one\n    c: 2\n  - b: 3\n", "set a/#1/c = 4", "a:\n  - b: 1 # one\n    c: 4\n  - b: 3\n", ""},
		{"a:\n  - b: 1\n    c: 2\n", "add a/#1/d = 4", "a:\n  - b: 1\n    c: 2\n    d: 4\n", ""},
		{"a:\n  - b: 1\n    c: 2\n", "remove a/#1/c", "a:\n  - b: 1\n", ""},
		{"a: {b: [[1, 2], [3]]}\n", "set a/b/#1/#2 = 5", "a: {b: [[1, 5], [3]]}\n", ""},
		{"a: [1, 2, 3]\n", "remove a/#1", "a: [2, 3]\n", ""},
		{"a: [1, 2, 3]\n", "remove a/#3", "a: [1, 2]\n", ""},
		{"a: [1]\n", "remove a/#1", "a: []\n", ""},
		{"a:\n  - 1 # one\n  - 2 # two\n  # foot\n", "remove a/#1", "a:\n  - 2 # two\n  # foot\n", ""},
		{"a:\n  - 1\nb: 2\n", "remove a/#1", "a: []\nb: 2\n", ""},
		{"a: [1, 2]\n", "add a/#3 = 3", "a: [1, 2, 3]\n", ""},
		{"a: [1, 2]\n", "add a/#1 = 0", "a: [0, 1, 2]\n", ""},
		{"a: []\n", "add a/#1 = 0", "a: [0]\n", ""},
		{"a:\n  - 1 # one\n  # between\n  - 2\nb: 3\n", "add a/#3 = 3", "a:\n  - 1 # one\n  # between\n  - 2\n  - 3\nb: 3\n", ""},
		{"a:\n  - 1\n  - 2", "add a/#3 = 3", "a:\n  - 1\n  - 2\n  - 3", ""},
		{"a:\n- 1 # one\n- 2\n", "add a/#2 = 9", "a:\n- 1 # one\n- 9\n- 2\n", ""},
		{"a:\n  -   1\n  -   2\n", "add a/#2 = 9", "a:\n  -   1\n  -   9\n  -   2\n", ""},
		{"a:\n  - - 1\n    - 2\n  - [3]\n", "add a/#1/#1 = 0", "a:\n  - [0, 1, 2]\n  - [3]\n", "edit-rewrote"},
		{"'#1': x\n", "set #1 = y", "'#1': y\n", ""}, // a key may be called so
		{"a: [1, 2]\n", "set a/#3 = 3", "", "edit-impossible"},
		{"a: [1, 2]\n", "add a/#4 = 3", "", "edit-impossible"},
		{"a: [1, 2]\n", "remove a/#0", "", "edit-impossible"},
		{"a: [1, 2]\n", "remove a/#01", "", "edit-impossible"},
		{"a: [1, 2]\n", "remove a/#-1", "", "edit-impossible"},
		{"a: [1, 2]\n", "remove a/#99999999999999999999", "", "edit-impossible"},
		{"a: [1, 2]\n", "rename a/#1 = b", "", "edit-impossible"},
		{"a: [1, 2]\n", "set a/b = 1", "", "edit-impossible"},
		{"a: [1, 2]\n", "set a/#1/b = 1", "", "edit-impossible"},
	} {
		got, found := Apply([]byte(c.src), []Op{do(t, c.op)})
		code := ""
		if len(found) > 0 {
			code = found[len(found)-1].Code
		}
		want := c.want
		if found.Stops() {
			want = c.src
		}
		if code != c.found || string(got) != want {
			t.Errorf("%q %s: %q\n got %q\nwant %q", c.src, c.op, code, got, want)
		}
	}
}

// A new key goes in front of the one that is named; the comments above that one stay with it.
func TestApplyBefore(t *testing.T) {
	for _, c := range []struct{ src, before, want string }{
		{"a: 1\n# about b\nb: 2\n", "b", "a: 1\nx: 9\n# about b\nb: 2\n"},
		{"# head\na: 1\nb: 2\n", "a", "# head\nx: 9\na: 1\nb: 2\n"},
		{"a: 1\nb: 2\n", "gone", "a: 1\nb: 2\nx: 9\n"},
		{"a: 1\nb: 2\n", "", "a: 1\nb: 2\nx: 9\n"},
		{"{a: 1, b: 2}\n", "b", "{a: 1, x: 9, b: 2}\n"},
		{"{a: 1, b: 2}\n", "a", "{x: 9, a: 1, b: 2}\n"},
	} {
		got, found := Apply([]byte(c.src), []Op{{Do: Add, Path: []string{"x"}, Value: "9", Before: c.before}})
		if len(found) > 0 || string(got) != c.want {
			t.Errorf("%q before %s: %v\n got %q\nwant %q", c.src, c.before, found, got, c.want)
		}
	}
}

// A text that an operation carries is used only where it reads as the value and takes no comment away.
func TestApplyAsItStood(t *testing.T) {
	for _, c := range []struct {
		src  string
		op   Op
		want string
	}{
		{"a: 5 # c\n", Op{Do: Set, Path: []string{"a"}, Value: "{b: 1}", As: " # c\n  b: 1 # b"}, "a: # c\n  b: 1 # b\n"},
		{"a: 5 # other\n", Op{Do: Set, Path: []string{"a"}, Value: "{b: 1}", As: " # c\n  b: 1 # b"}, "a: {b: 1} # other\n"},
		{"a: 5 # c\n", Op{Do: Set, Path: []string{"a"}, Value: "{b: 1}", As: " # c\n  b: 2"}, "a: {b: 1} # c\n"},
		{"a: 5\n", Op{Do: Set, Path: []string{"a"}, Value: "1", As: " 1\nevil: 2"}, "a: 1\n"},
		{"a: 5\n", Op{Do: Set, Path: []string{"a"}, Value: "1", As: " 1 # fine"}, "a: 1 # fine\n"},
		{"a: 1\nc: 3\n", Op{Do: Add, Path: []string{"b"}, Value: "2", Before: "c", As: "# about\nb: 2 # b\n"}, "a: 1\n# about\nb: 2 # b\nc: 3\n"},
		{"a: 1\n# about\nc: 3\n", Op{Do: Add, Path: []string{"b"}, Value: "2", Before: "c", As: "# about\nb: 2\n"}, "a: 1\n# about\nb: 2\nc: 3\n"},
		{"a: 1\nc: 3\n", Op{Do: Add, Path: []string{"b"}, Value: "2", Before: "c", As: "    b: 2\n"}, "a: 1\nb: 2\nc: 3\n"},
		{"{a: 1, c: 3}\n", Op{Do: Add, Path: []string{"b"}, Value: "2", Before: "c", As: "b:  2,  "}, "{a: 1, b:  2,  c: 3}\n"},
		{"{a: 1}\n", Op{Do: Rename, Path: []string{"a"}, Value: "b", As: "'b'"}, "{'b': 1}\n"},
		{"{a: 1}\n", Op{Do: Rename, Path: []string{"a"}, Value: "b", As: "c"}, "{b: 1}\n"},
		{"a:\n  b: 1\n", Op{Do: Set, Path: []string{"a"}, Value: "~", As: ""}, "a:\n"},
		{"{a: 1}\n", Op{Do: Set, Path: []string{"a"}, Value: "~"}, "{a: ~}\n"},
	} {
		got, found := Apply([]byte(c.src), []Op{c.op})
		if len(found) > 0 || string(got) != c.want {
			t.Errorf("%q %+v: %v\n got %q\nwant %q", c.src, c.op, found, got, c.want)
		}
	}
}

// Operations are kept and sent as JSON: in words, with nothing that is not said.
func TestOpJSON(t *testing.T) {
	all := []Op{{Do: Set, Path: []string{"a", "b > c"}, Value: "8' 2\""}, {Do: Remove, Path: []string{"a"}}, {Do: Add, Path: []string{"x"}, Value: "1", Before: "y", As: "x: 1\n"}, {Do: Rename, Path: []string{"a"}, Value: "b"}}
	const want = `[{"do":"set","path":["a","b \u003e c"],"value":"8' 2\""},{"do":"remove","path":["a"]},{"do":"add","path":["x"],"value":"1","before":"y","as":"x: 1\n"},{"do":"rename","path":["a"],"value":"b"}]`
	got, err := json.Marshal(all)
	if err != nil || string(got) != want {
		t.Errorf("%s %v", got, err)
	}
	var back []Op
	if err := json.Unmarshal(got, &back); err != nil || len(back) != len(all) || back[2].As != all[2].As || back[3].Do != Rename {
		t.Errorf("%+v %v", back, err)
	}
	if err := json.Unmarshal([]byte(`[{"do":"explode"}]`), &back); err == nil {
		t.Error("an operation that is none was read")
	}
}
