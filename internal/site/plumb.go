package site

// plumb adjusts a wall's shape to its own readings; see below.
func (s *solver) plumb(i int, e *elevation) {}
