package site

import (
	"slices"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/opt/lsq"
	"dryfit/internal/unit"
)

// judge words what the readings say of each other. It is false where they fix no shape.
func (s *solver) judge(res lsq.Result, v lsq.Verdict) bool {
	switch v.Outcome {
	case lsq.TooFew:
		s.tooFew(v)
	case lsq.Contradictory:
		s.contradictory(v)
	case lsq.NotConverging, lsq.Malformed:
		s.list.Add(diag.Stop, "survey-unsolved", s.doc.Survey.At, "no shape was found for these readings", "look for a reading that is far off, or for two corners in the wrong order")
	default:
		s.mirrors(res)
		s.agreement(res)
		return true
	}
	return false
}

func (s *solver) tooFew(v lsq.Verdict) {
	take := v.Enough
	if len(take) == 0 {
		take = v.Pairs[:min(len(v.Pairs), 1)]
	}
	var names []string
	for _, p := range take {
		if name := s.pointName(p.From) + "-" + s.pointName(p.To); !s.unread(name) {
			names = append(names, name)
		}
	}
	if s.unreadMissing(v.Missing, names) {
		return
	}
	if len(names) == 0 {
		s.list.Add(diag.Stop, "readings-in-line", s.doc.Survey.At, "the readings put the corners in one line", "look for a reading that is as long as two others together")
		return
	}
	s.list.Add(diag.Stop, "readings-too-few", s.doc.Survey.At, "the readings do not fix the shape of the room: {0} more needed", "take {1}",
		diag.N(v.Missing), diag.T(join(names)))
}

// unread reports whether something is written for a line that could not be read.
func (s *solver) unread(line string) bool {
	from, to, _ := strings.Cut(line, "-")
	return slices.ContainsFunc(s.doc.Survey.Unread, func(n document.Name) bool { return n.Text == line || n.Text == to+"-"+from })
}

// unreadMissing: where readings are written that could not be read, nobody is sent to take others before these are put right.
func (s *solver) unreadMissing(missing int, others []string) bool {
	var written []string
	for _, n := range s.doc.Survey.Unread {
		written = append(written, n.Text)
	}
	if len(written) == 0 {
		return false
	}
	mend := "put right what is written for {1}"
	if len(written) < missing && len(others) > 0 {
		mend += ", and take {2}"
	}
	s.list.Add(diag.Stop, "readings-too-few", s.doc.Survey.At, "the readings do not fix the shape of the room: {0} more needed, and what is written for {1} can not be read", mend,
		diag.N(missing), diag.T(join(written)), diag.T(join(others)))
	return true
}

// pointName names a point of the network.
func (s *solver) pointName(k int) string {
	p := s.points[k]
	if n := len(s.doc.Survey.Corners); p >= n {
		return s.doc.Survey.Points[p-n].Text
	}
	return s.cornerName(p)
}

// contradictory: one reading is longer than the way round by others.
func (s *solver) contradictory(v lsq.Verdict) {
	used := s.used()
	long := s.out.Survey.Readings[used[v.Readings[0]]]
	var round []string
	for _, i := range v.Readings[1:] {
		round = append(round, s.out.Survey.Readings[used[i]].Name)
	}
	s.list.Add(diag.Stop, "readings-contradict", long.At, "{0} is longer than the way round by {1}, by {2}: no room has both", "take them again",
		diag.T(long.Name), diag.T(join(round)), diag.L(unit.FromMM(v.Excess)))
}

// used lists the readings that went into the adjustment, in its order.
func (s *solver) used() []int {
	var out []int
	for i, r := range s.out.Survey.Readings {
		if r.Use == Used {
			out = append(out, i)
		}
	}
	return out
}

func (s *solver) mirrors(res lsq.Result) {
	for _, m := range res.Mirrors {
		var names []string
		for _, p := range m {
			names = append(names, s.pointName(p))
		}
		s.list.Add(diag.Look, "outline-mirrors", s.doc.Survey.At, "the readings fit as well with {0} on the other side", "take one more reading to it, from a corner that is in no line with those read so far", diag.T(join(names)))
	}
}

// agreement settles the verdict of readings that fix a shape.
func (s *solver) agreement(res lsq.Result) {
	sv, used := &s.out.Survey, s.used()
	for _, i := range res.Suspects {
		sv.Suspects = append(sv.Suspects, used[i])
	}
	switch {
	case res.Freedom == 0:
		sv.Verdict = NoCheck
		s.list.Add(diag.Unchecked, "readings-unchecked", s.doc.Survey.At, "the readings just fix the shape: nothing checks them", "take one more, such as a diagonal")
	case len(sv.Suspects) == 0:
		sv.Verdict = Agree
		sv.Closing = s.greatestClosing()
		s.list.Add(diag.Note, "readings-agree", s.doc.Survey.At, "the readings agree with each other; the greatest closing error is {0}", "", diag.X(s.fine(sv.Closing.Abs())))
	case len(sv.Suspects) == 1:
		s.oneSuspect()
	default:
		s.cannotTell()
	}
}

// fine rounds a computed length to the finest part of it that is worth words, the same that the sheets print.
func (s *solver) fine(l unit.Length) unit.Length {
	if s.doc.Units == unit.Millimetres {
		return l.Round(unit.Millimetre / 10)
	}
	return l.Round(unit.Inch / 64)
}

func (s *solver) greatestClosing() (most unit.Length) {
	for _, r := range s.out.Survey.Readings {
		if r.Closing.Abs() > most.Abs() {
			most = r.Closing
		}
	}
	return most
}

func (s *solver) oneSuspect() {
	sv := &s.out.Survey
	r := sv.Readings[sv.Suspects[0]]
	sv.Verdict, sv.Closing, sv.Again = OneSuspect, r.Closing, sv.Suspects
	s.list.Add(diag.Look, "reading-suspect", r.At, "these readings disagree by {0}; {1} is the likeliest to be wrong: it says {2}, the others make it {3}", "take {1} again and write the new figure after the old one",
		diag.L(r.Closing.Abs()), diag.T(r.Name), diag.X(r.Measured), diag.L(r.Measured-r.Closing))
}

// cannotTell: several readings are as likely as each other. The two to take again are diagonals where there are any, for a
// diagonal is the hardest to tape.
func (s *solver) cannotTell() {
	sv := &s.out.Survey
	again := s.again()
	first := sv.Readings[again[0]]
	sv.Verdict, sv.Closing, sv.Again = CannotTell, first.Closing, again
	var names []string
	for _, i := range again {
		names = append(names, sv.Readings[i].Name)
	}
	s.list.Add(diag.Look, "readings-disagree", first.At, "these readings disagree by {0} in {1}, and cannot tell which of them is wrong", "take {2} again and write the new figures after the old ones",
		diag.L(first.Closing.Abs()), diag.T(first.Name), diag.T(join(names)))
}

func (s *solver) again() []int {
	var diagonals, sides []int
	for _, i := range s.out.Survey.Suspects {
		if s.isSide(s.out.Survey.Readings[i].Name) {
			sides = append(sides, i)
		} else {
			diagonals = append(diagonals, i)
		}
	}
	all := append(diagonals, sides...)
	return all[:2]
}

func (s *solver) isSide(name string) bool {
	for _, w := range s.walls {
		l, r := s.cornerName(w.left), s.cornerName(w.right)
		if name == l+"-"+r || name == r+"-"+l {
			return true
		}
	}
	return false
}

// join lists names as a person says them.
func join(names []string) string {
	if len(names) < 2 {
		return strings.Join(names, "")
	}
	return strings.Join(names[:len(names)-1], ", ") + " and " + names[len(names)-1]
}
