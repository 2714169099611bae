package export

import "reflect"

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

func (s schemer) of(t reflect.Type) map[string]any {
	if words := choicesOf(t); words != nil {
		return map[string]any{"enum": words}
	}
	switch t.Kind() {
	case reflect.Pointer:
		return s.of(t.Elem())
	case reflect.Slice:
		return map[string]any{"type": "array", "items": s.of(t.Elem()), "minItems": least(t)}
	case reflect.Struct:
		return s.refer(t)
	}
	q := quantityOf(t)
	out := map[string]any{"type": q.kind}
	if q.least != nil {
		out["minimum"] = *q.least
	}
	return out
}

// refer writes a record once and points at it.
func (s schemer) refer(t reflect.Type) map[string]any {
	if _, have := s.defs[t.Name()]; !have {
		s.defs[t.Name()] = s.record(t)
	}
	return map[string]any{"$ref": "#/$defs/" + t.Name()}
}

// record writes an object. What is not absent at times must be there.
func (s schemer) record(t reflect.Type) map[string]any {
	properties, required := map[string]any{}, []string{}
	for _, k := range keysOf(t) {
		p := s.of(k.is)
		p["description"] = k.says()
		properties[k.name] = p
		if k.need {
			required = append(required, k.name)
		}
	}
	return map[string]any{"type": "object", "properties": properties, "required": required, "additionalProperties": false}
}

// least is how many entries a list must have: an outline's ring has three corners.
func least(t reflect.Type) int {
	if t == reflect.TypeFor[ring]() {
		return 3
	}
	return 0
}
