package export

import (
	"reflect"
	"strings"

	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// key is one key of an object, read from a view type: the schema and the handbook both come from here.
type key struct {
	name, doc string
	need      bool // it is always there
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

// says is what the key means, with the unit of its number.
func (k key) says() string {
	if u := unitOf(k.is); u != "" {
		return k.doc + " (" + u + ")"
	}
	return k.doc
}

// unitOf is the unit of a number, or of the numbers in a list.
func unitOf(t reflect.Type) string {
	switch t.Kind() {
	case reflect.Pointer, reflect.Slice:
		return unitOf(t.Elem())
	case reflect.Struct:
		return ""
	}
	return quantityOf(t).unit
}

// chosen is a type whose values are a short list.
type chosen interface{ choices() []string }

// choicesOf are the words that a type allows; nil: it is free.
func choicesOf(t reflect.Type) []string {
	if c, ok := reflect.Zero(t).Interface().(chosen); ok {
		return c.choices()
	}
	return nil
}

// quantity is what a plain value is in JSON.
type quantity struct {
	kind  string // the schema's word
	unit  string
	least *int
}

func quantityOf(t reflect.Type) quantity {
	switch t {
	case reflect.TypeFor[unit.Length]():
		return quantity{kind: "number", unit: "mm"}
	case reflect.TypeFor[area]():
		return quantity{kind: "number", unit: "mm²", least: new(int)}
	case reflect.TypeFor[angle]():
		return quantity{kind: "number", unit: "degrees"}
	case reflect.TypeFor[share](), reflect.TypeFor[thousandths]():
		return quantity{kind: "number"}
	case reflect.TypeFor[liters]():
		return quantity{kind: "number", unit: "liters", least: new(int)}
	case reflect.TypeFor[kilograms]():
		return quantity{kind: "number", unit: "kg", least: new(int)}
	case reflect.TypeFor[price]():
		return quantity{kind: "number", unit: "of the currency"}
	case reflect.TypeFor[minutes]():
		return quantity{kind: "integer", unit: "minutes", least: new(int)}
	case reflect.TypeFor[geom.Label]():
		return quantity{kind: "integer"}
	}
	return plain(t)
}

// plain is a value without a unit. Every whole number of the plan counts something.
func plain(t reflect.Type) quantity {
	switch t.Kind() {
	case reflect.String:
		return quantity{kind: "string"}
	case reflect.Bool:
		return quantity{kind: "boolean"}
	case reflect.Int, reflect.Int64:
		return quantity{kind: "integer", least: new(int)}
	}
	panic("export: no schema for " + t.String())
}
