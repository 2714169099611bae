package site

func (s *solver) buried() {}
