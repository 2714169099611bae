package export_test

import (
	"bytes"
	"flag"
	"os"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"dryfit/internal/export"
)

var update = flag.Bool("update", false, "write the golden files")

// schemaOf compiles the schema with a validator that is not ours (JSON Schema, draft 2020-12).
func schemaOf(t *testing.T) *jsonschema.Schema {
	t.Helper()
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(export.Schema()))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	c.DefaultDraft(jsonschema.Draft2020)
	if err := c.AddResource("plan.json", doc); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile("plan.json")
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func valid(t *testing.T, s *jsonschema.Schema, text []byte) error {
	t.Helper()
	v, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	return s.Validate(v)
}

// Both built-in rooms pass the schema, and so does a plan of a document that says nothing.
func TestSchemaTakesPlans(t *testing.T) {
	s := schemaOf(t)
	for _, r := range demos() {
		if err := valid(t, s, r.json); err != nil {
			t.Errorf("%s: %v", r.file, err)
		}
	}
	for _, text := range []string{"", "dryfit: 1\n", "no: [thing", "dryfit: 1\nsurvey: {corners: A B C}\n"} {
		if err := valid(t, s, export.JSON(planned(t, "room.yaml", []byte(text)))); err != nil {
			t.Errorf("%q: %v", text, err)
		}
	}
}

// Every fact leads back to the document: no place in the built-in rooms' plans is without a path.
func TestPlacesHavePaths(t *testing.T) {
	for _, r := range demos() {
		if n := bytes.Count(r.json, []byte(`"path": ""`)); n > 0 {
			t.Errorf("%s: %d places without a path", r.file, n)
		}
		if bytes.Count(r.json, []byte(`"path": "`)) < 100 {
			t.Errorf("%s: next to no places", r.file)
		}
	}
}

// A file that is not a plan does not pass: each row changes one text of the demo's plan.
func TestSchemaRefuses(t *testing.T) {
	s := schemaOf(t)
	text := string(demos()[0].json)
	for _, c := range []struct{ what, old, new string }{
		{"a key that is not ours", `"revision":`, `"revison":`},
		{"a length in quotes", `"mark": `, `"mark": "1", "name": "`},
		{"a word that is no choice", `"kind": "wall"`, `"kind": "roof"`},
		{"a null", `"outside": false`, `"outside": null`},
		{"a fraction of a count", `"cutFrom": `, `"cutFrom": 0.5, "size": `},
		{"less than nothing", `"spares": `, `"spares": -`},
		{"a list for a record", `"finishedFloor": {`, `"finishedFloor": [], "x": {`},
		{"a key too few", `"soft": true,`, ``},
		{"a word for a truth", `"kept": true`, `"kept": "yes"`},
	} {
		broken := strings.Replace(text, c.old, c.new, 1)
		if broken == text {
			t.Errorf("%s: the plan has no %q", c.what, c.old)
			continue
		}
		v, err := jsonschema.UnmarshalJSON(strings.NewReader(broken))
		if err == nil && s.Validate(v) == nil {
			t.Errorf("%s: passed", c.what)
		}
	}
}

const handbookFile = "../../docs/plan.md"

// docs/plan.md is what the view types say.
func TestHandbook(t *testing.T) {
	if *update {
		if err := os.WriteFile(handbookFile, export.Handbook(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(handbookFile)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(want, export.Handbook()) {
		t.Error("docs/plan.md is not what the view types say; run the test with -update")
	}
}
