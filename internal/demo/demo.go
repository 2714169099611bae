// Package demo holds the two built-in rooms, in the form in which a person would write them. Both are invented.
package demo

import _ "embed"

//go:embed quarry-row.yaml
var quarryRow []byte

//go:embed gable.yaml
var gable []byte

// Room is one built-in document.
type Room struct {
	File string // file name that it is written under
	Text []byte
}

// Rooms returns the built-in documents: one in inches, one in millimetres. The first is the one that `demo` plans
// unless told otherwise.
func Rooms() []Room {
	return []Room{{"quarry-row.yaml", quarryRow}, {"gable.yaml", gable}}
}
