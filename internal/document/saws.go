package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// Saw is one saw for wood and board.
type Saw struct {
	Name  string
	At    diag.Place
	Kerf  Value[unit.Length]
	Reach Value[unit.Length] // deepest cut
	Cuts  []StockKind        // silent: all
	First Value[FirstCut]
}

// FirstCut is the way in which a saw has to cut a whole sheet first.
type FirstCut uint8

const (
	EitherFirst FirstCut = iota
	RipFirst
	CrosscutFirst
)

// Bit is a router bit or drill bit.
type Bit struct {
	Name     string
	At       diag.Place
	Diameter Value[unit.Length]
	Reach    Value[unit.Length]
}

var stockKind = choice("sheet, board or stick", word[StockKind]{"sheet", SheetStock}, word[StockKind]{"board", BoardStock}, word[StockKind]{"stick", StickStock})

var saw = record("a saw for wood and board", func(s *Saw, at diag.Place) { s.At = at },
	fact("kerf", "the width of its cut", length(fine), func(s *Saw) *Value[unit.Length] { return &s.Kerf }).unless("1/8 in or 3 mm").like("3/32"),
	fact("reach", "how deep it cuts", length(over), func(s *Saw) *Value[unit.Length] { return &s.Reach }).unless("not checked").like("2-1/8"),
	part("cuts", "what it is used for", list(stockKind), func(s *Saw) *[]StockKind { return &s.Cuts }).unless("all").like("[sheet, board]"),
	fact("first", "the first cuts that it can make in a whole sheet: rips along the grain, crosscuts, or either", choice("rip, crosscut or either", word[FirstCut]{"either", EitherFirst}, word[FirstCut]{"rip", RipFirst}, word[FirstCut]{"crosscut", CrosscutFirst}), func(s *Saw) *Value[FirstCut] { return &s.First }).unless("either").like("rip"),
)

var bitRecord = record("a router bit or drill bit", func(b *Bit, at diag.Place) { b.At = at },
	fact("diameter", "its diameter", length(bore), func(b *Bit) *Value[unit.Length] { return &b.Diameter }).like("1/2"),
	fact("reach", "how deep it goes", length(over), func(b *Bit) *Value[unit.Length] { return &b.Reach }).unless("not checked").like("1-1/4"),
)
