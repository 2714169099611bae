package store

func becomeNobody() { panic("Windows has no such user") }
