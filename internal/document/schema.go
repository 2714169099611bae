package document

import (
	"encoding/json"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// Schema returns a JSON Schema (draft 2020-12) of the document, made from the table of keys that the reader uses. An
// editor can complete keys and choices from it. It is the coarser net: all that reads without a stop passes it, but
// names, sums and sizes are the reader's affair.
func Schema() []byte {
	s := schemer{defs: map[string]any{}}
	top := s.of(root.shape)
	top["$schema"] = "https://json-schema.org/draft/2020-12/schema"
	top["$id"] = "urn:dryfit:room:1"
	top["title"] = "dryfit room document"
	top["$defs"] = s.defs
	out, err := json.MarshalIndent(top, "", "  ")
	if err != nil {
		panic(err) // maps of strings can not fail
	}
	return append(out, '\n')
}

// schemer turns shapes into schemas; scalars that stand in many places are written once.
type schemer struct{ defs map[string]any }

func (s schemer) of(sh *shape) map[string]any {
	switch sh.kind {
	case choiceShape:
		return map[string]any{"enum": choices(sh.words)}
	case listShape:
		item := s.of(sh.item)
		return anyOf(item, map[string]any{"type": "array", "items": item, "minItems": 1})
	case namedShape:
		return s.named(sh)
	case recordShape:
		return s.record(sh)
	case eitherShape:
		var all []any
		for _, a := range sh.any {
			all = append(all, s.of(a))
		}
		return map[string]any{"anyOf": all}
	}
	return s.scalar(sh)
}

func (s schemer) record(sh *shape) map[string]any {
	properties := map[string]any{}
	required := []string{}
	for _, k := range sh.rows {
		properties[k.name] = s.property(k)
		if k.need {
			required = append(required, k.name)
		}
	}
	out := map[string]any{"type": "object", "description": sh.say, "properties": properties, "additionalProperties": false}
	if len(required) > 0 {
		out["required"] = required
	}
	return out
}

func (s schemer) property(k row) map[string]any {
	out := s.of(k.shape)
	if k.unknown {
		out = anyOf(out, unknownWord)
	}
	out["description"] = describe(k)
	return out
}

var unknownWord = map[string]any{"const": "unknown"}

func describe(k row) string {
	say := k.what
	if k.silent != "" {
		say += "; if silent: " + k.silent
	}
	if k.example != "" {
		say += "; example: " + k.example
	}
	return say
}

func (s schemer) named(sh *shape) map[string]any {
	item := s.of(sh.item)
	if sh.item.kind != recordShape {
		item = anyOf(item, unknownWord)
	}
	out := map[string]any{"type": "object", "additionalProperties": item}
	if sh.key != "" {
		out["propertyNames"] = map[string]any{"pattern": sh.key}
	}
	return out
}

// scalar allows text of the pattern, and the numbers that editors make out of plain figures.
func (s schemer) scalar(sh *shape) map[string]any {
	name := defName(sh.say)
	if _, have := s.defs[name]; !have {
		s.defs[name] = scalarSchema(sh)
	}
	return map[string]any{"$ref": "#/$defs/" + name}
}

func scalarSchema(sh *shape) map[string]any {
	if sh.pattern == "" {
		return map[string]any{"type": []string{"string", "number"}, "description": sh.say}
	}
	alternatives := []any{map[string]any{"type": "string", "pattern": sh.pattern}}
	allowed := regexp.MustCompile(sh.pattern)
	number := map[string]any{"type": "integer"}
	if allowed.MatchString("2.5") {
		number["type"] = "number"
	}
	if !allowed.MatchString("-2") {
		number["minimum"] = 0
	}
	if allowed.MatchString("2") || allowed.MatchString("1") {
		alternatives = append(alternatives, number)
	}
	return map[string]any{"anyOf": alternatives, "description": sh.say}
}

var notName = regexp.MustCompile(`[^a-z0-9]+`)

func defName(say string) string {
	return strings.Trim(notName.ReplaceAllString(strings.ToLower(say), "-"), "-")
}

// choices adds the truth values and numbers that editors make out of plain words.
func choices(words []string) []any {
	var all []any
	for _, w := range words {
		all = append(all, w)
		if n, err := strconv.Atoi(w); err == nil {
			all = append(all, n)
		}
	}
	if slices.Contains(words, "yes") {
		all = append(all, true, false)
	}
	return all
}

func anyOf(schemas ...any) map[string]any { return map[string]any{"anyOf": schemas} }
