package site

func (s *solver) flatness() {}
