package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// Setting is how tile meets tile: order, soft joints, floor.
type Setting struct {
	At             diag.Place
	BackWall       Value[string]      // seen on entering; runs through by default
	Order          []Name             // `order: [end wall, basin wall, floor]`: first set runs through
	SoftJoint      Value[unit.Length] // at changes of plane
	FloorJoint     Value[unit.Length] // under the first course
	CeilingJoint   Value[unit.Length]
	PerimeterJoint Value[unit.Length] // round the floor
}

var setting = record("how tile meets tile", func(s *Setting, at diag.Place) { s.At = at },
	fact("back wall", "the wall that is seen on entering; its tile runs through and the side walls butt against it", calledText("wall"), func(s *Setting) *Value[string] { return &s.BackWall }).like("end wall"),
	part("order", "the faces in the order of setting; the one set first runs through at a corner", list(called("wall", "face")), func(s *Setting) *[]Name { return &s.Order }).like("[end wall, basin wall, floor]"),
	fact("soft joint", "the soft joint at changes of plane", length(joint), func(s *Setting) *Value[unit.Length] { return &s.SoftJoint }).like("1/8"),
	fact("floor joint", "the joint under the first course", length(joint), func(s *Setting) *Value[unit.Length] { return &s.FloorJoint }).like("1/8"),
	fact("ceiling joint", "the joint between the last course and the ceiling", length(joint), func(s *Setting) *Value[unit.Length] { return &s.CeilingJoint }).like("1/8"),
	fact("perimeter joint", "the joint round the floor", length(joint), func(s *Setting) *Value[unit.Length] { return &s.PerimeterJoint }).like("1/4"),
)
