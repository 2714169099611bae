package export

import (
	"reflect"
	"strings"

	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// Schema returns the JSON Schema (draft 2020-12) of plan.json, made from the view types.
func Schema() []byte {
	s := schemer{defs: map[string]any{}}
	top := s.record(reflect.TypeFor[view]())
	top["$schema"] = "https://json-schema.org/draft/2020-12/schema"
	top["$id"] = "urn:dryfit:plan:1"
	top["title"] = "dryfit plan.json"
	top["$defs"] = s.defs
	return indented(encoded(top))
}

// schemer turns types into schemas; a record is written once.
type schemer struct{ defs map[string]any }

// chosen is a type whose values are a short list.
type chosen interface{ choices() []string }

func (s schemer) of(t reflect.Type) map[string]any {
	if c, ok := reflect.Zero(t).Interface().(chosen); ok {
		return map[string]any{"enum": c.choices()}
	}
	if q, ok := quantityOf(t); ok {
		return map[string]any{"type": q.kind, "description": q.says}
	}
	switch t.Kind() {
	case reflect.Pointer:
		return s.of(t.Elem())
	case reflect.Slice:
		return map[string]any{"type": "array", "items": s.of(t.Elem())}
	case reflect.Struct:
		if _, have := s.defs[t.Name()]; !have {
			s.defs[t.Name()] = nil // it may hold itself
			s.defs[t.Name()] = s.record(t)
		}
		return map[string]any{"$ref": "#/$defs/" + t.Name()}
	}
	return map[string]any{"type": plain(t)}
}

// record writes an object. What is not marked as absent at times must be there.
func (s schemer) record(t reflect.Type) map[string]any {
	properties, required := map[string]any{}, []string{}
	for _, k := range keysOf(t) {
		p := s.of(k.is)
		p["description"] = k.says(p)
		properties[k.name] = p
		if k.need {
			required = append(required, k.name)
		}
	}
	return map[string]any{"type": "object", "properties": properties, "required": required, "additionalProperties": false}
}

// quantity is a number with a meaning of its own.
type quantity struct{ kind, says string }

func quantityOf(t reflect.Type) (quantity, bool) {
	q, ok := map[reflect.Type]quantity{
		reflect.TypeFor[unit.Length](): {"number", "mm"},
		reflect.TypeFor[area]():        {"number", "mm²"},
		reflect.TypeFor[angle]():       {"number", "degrees"},
		reflect.TypeFor[share]():       {"number", "ratio"},
		reflect.TypeFor[liters]():      {"number", "liters"},
		reflect.TypeFor[thousandths](): {"number", "plain"},
		reflect.TypeFor[geom.Label]():  {"integer", "label"},
	}[t]
	return q, ok
}

func plain(t reflect.Type) string {
	switch t.Kind() {
	case reflect.String:
		return "string"
	case reflect.Bool:
		return "boolean"
	case reflect.Int, reflect.Int64:
		return "integer"
	}
	panic("export: no schema for " + t.String())
}

// key is one key of an object.
type key struct {
	name, doc string
	need      bool
	is        reflect.Type
}

func keysOf(t reflect.Type) []key {
	var out []key
	for i := range t.NumField() {
		f := t.Field(i)
		name, rest, _ := strings.Cut(f.Tag.Get("json"), ",")
		out = append(out, key{name, f.Tag.Get("doc"), rest != "omitempty", f.Type})
	}
	return out
}

// says joins what the key is to the unit of its number.
func (k key) says(p map[string]any) string {
	if u, ok := p["description"]; ok {
		return k.doc + " (" + u.(string) + ")"
	}
	return k.doc
}
