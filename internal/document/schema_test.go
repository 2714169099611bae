package document

import (
	"bytes"
	"encoding/json"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"dryfit/internal/text"
	"dryfit/internal/unit"
)

func schema(t *testing.T) *jsonschema.Schema {
	t.Helper()
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(Schema()))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	if err := c.AddResource("room.json", doc); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile("room.json")
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// jsonOf gives a document as an editor sees it: YAML 1.2, core schema, for the plain scalars that are numbers or truth values.
func jsonOf(n *text.Node) any {
	switch n.Kind {
	case text.Map:
		m := map[string]any{}
		for _, e := range n.Entries {
			m[e.Key] = jsonOf(e.Value)
		}
		return m
	case text.List:
		l := []any{}
		for _, c := range n.Items {
			l = append(l, jsonOf(c))
		}
		return l
	case text.Empty:
		return nil
	}
	if !n.Quoted && jsonNumber.MatchString(n.Text) {
		return json.Number(n.Text)
	}
	if !n.Quoted && (n.Text == "true" || n.Text == "false") {
		return n.Text == "true"
	}
	return n.Text
}

var jsonNumber = regexp.MustCompile(`^-?(0|[1-9][0-9]*)(\.[0-9]+)?$`)

func valid(t *testing.T, s *jsonschema.Schema, src []byte) error {
	t.Helper()
	tree, _ := text.Parse(src)
	return s.Validate(jsonOf(tree))
}

func TestSchemaTakesWhatReads(t *testing.T) {
	s := schema(t)
	docs := map[string][]byte{"full": readFile(t, "testdata/full.yaml"), "starter in": Starter(unit.Inches, 4), "starter mm": Starter(unit.Millimetres, 6)}
	demos, err := filepath.Glob("../demo/*.yaml")
	if err != nil || len(demos) == 0 {
		t.Fatal("no demo documents", err)
	}
	for _, f := range demos {
		docs[f] = readFile(t, f)
	}
	for name, src := range docs {
		if _, found := Read(name, src); found.Stops() {
			t.Errorf("%s: %s", name, line(found[0]))
		}
		if err := valid(t, s, src); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// Each change breaks the full document for the reader, with a stop, and for the schema.
func TestSchemaRefusesWhatStops(t *testing.T) {
	s := schema(t)
	full := string(readFile(t, "testdata/full.yaml"))
	for _, c := range []struct{ was, is string }{
		{"dryfit: 1", "dryfit: 9"},
		{"dryfit: 1\n", ""},
		{"units: in", "units: cubits"},
		{"mark: 1/16", "marc: 1/16"},
		{"A-B: 71-3/8", "A-B: about seventy"},
		{"C-D: 71-1/2", "C-D: -71"},
		{"along: A-B", "along: A"},
		{"cement board 1/2 in", "cement bord 1/2 in"},
		{"tile face: follow", "tile face: flat"},
		{"order: [end wall, basin wall, floor]", "order: {end wall: 1}"},
		{"{in: basin wall, across: 36 from A to board}", "{across: 36 from A to board}"},
		{"across: 24 to 48 from B", "across: somewhere"},
		{"up: 48 to 84 above floor", "up: 48 to 84 above sea"},
		{"sill fall: 2 %", "sill fall: gentle"},
		{"size: 24 x 12 x 3/8", "size: 24"},
		{"kind: stone", "kind: marble"},
		{"per box: 8", "per box: 8.5"},
		{"cutter: wet saw", "cutter: grinder"},
		{"bond: stack", "bond: stacked"},
		{"look for: even cuts", "look for: beauty"},
		{"exterior: no", "exterior: nope"},
		{"yearly range: 115 F", "yearly range: wide"},
		{"load: 50 psf", "load: 50"},
	} {
		src := []byte(strings.Replace(full, c.was, c.is, 1))
		if string(src) == full {
			t.Fatalf("%s is not in the full document", c.was)
		}
		if _, found := Read("x", src); !found.Stops() {
			t.Errorf("the reader takes %s", c.is)
		}
		if valid(t, s, src) == nil {
			t.Errorf("the schema takes %s", c.is)
		}
	}
}

// What an editor is told and what the reader says may differ only one way: the schema never refuses what reads clean.
func TestSchemaIsTheCoarserNet(t *testing.T) {
	s := schema(t)
	full := readFile(t, "testdata/full.yaml")
	for _, typed := range []string{`98 3/8`, `98-3/8 in`, `8' 2-3/8"`, `8ft 2 3/8in`, `2498 mm`, `2.498 m`, `12.7 cm`, `8′ 2⅜″`, `96½`, `96`, `96.5`, `8 ft. 2 in.`, `8 feet 2 inches`, `+71`, `.5 m`} {
		src := bytes.Replace(full, []byte("A-B: 71-3/8"), []byte("A-B: "+typed), 1)
		if _, found := Read("x", src); len(found) > 0 {
			t.Errorf("%s does not read: %s", typed, line(found[0]))
		}
		if err := valid(t, s, src); err != nil {
			t.Errorf("the schema refuses %s: %v", typed, err)
		}
	}
}
