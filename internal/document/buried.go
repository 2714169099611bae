package document

import (
	"dryfit/internal/diag"
)

// Buried is what is recorded inside a wall while it is open.
type Buried struct {
	Name   string
	At     diag.Place
	In     Name
	Kind   BuriedKind
	Across Across
	Up     Up
}

// BuriedKind is what is in the wall.
type BuriedKind uint8

const (
	StudInWall BuriedKind = iota
	Blocking
	Pipe
	Cable
	NailPlate
)

var buried = record("what is inside the wall", func(b *Buried, at diag.Place) { b.At = at },
	part("in", "the wall, or floor", called("face"), func(b *Buried) *Name { return &b.In }).must().like("basin wall"),
	sure("kind", "what it is", choice("stud, blocking, pipe, cable or nail plate", word[BuriedKind]{"stud", StudInWall}, word[BuriedKind]{"blocking", Blocking}, word[BuriedKind]{"pipe", Pipe}, word[BuriedKind]{"cable", Cable}, word[BuriedKind]{"nail plate", NailPlate}), func(b *Buried) *BuriedKind { return &b.Kind }).must().like("pipe"),
	part("across", "where along the wall", across, func(b *Buried) *Across { return &b.Across }).like("31 to 32 from A"),
	part("up", "how high", up, func(b *Buried) *Up { return &b.Up }).unless("over the whole height").like("0 to 40 above floor"),
)
