package site

func (s *solver) frame() {}
