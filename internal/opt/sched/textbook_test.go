package sched

import (
	"fmt"
	"strings"
	"testing"
)

// Critical path networks of two textbooks, both from memory; starts, slacks and chains are worked out by hand beside
// them, forward pass and backward pass.
var textbooks = []struct {
	name, line, starts, slack, chain string
	finish                           int
}{
	{ // Milwaukee Paper Manufacturing: Heizer, Render, Operations Management, chapter Project Management
		name:   "Heizer and Render",
		line:   "A2 B3 C2 D4 E4 F3 G5 H2 A>C A>D B>D C>E C>F D>G E>G F>H G>H",
		finish: 15,
		starts: "0 0 2 3 4 4 8 13",
		slack:  "0 1 0 1 0 6 0 0",
		chain:  "A C E G H",
	},
	{ // Reliable Construction: Hillier, Lieberman, Introduction to Operations Research, chapter PERT/CPM
		name: "Hillier and Lieberman",
		line: "A2 B4 C10 D6 E4 F5 G7 H9 I7 J8 K4 L5 M2 N6 " +
			"A>B B>C C>D C>E C>I E>F D>G E>H G>H F>J I>J J>K J>L H>M K>N L>N",
		finish: 44,
		starts: "0 2 6 16 16 20 22 29 16 25 33 33 38 38",
		slack:  "0 0 0 4 0 0 4 4 2 0 1 0 4 0",
		chain:  "A B C E F J L N",
	},
}

func TestTextbookCriticalPath(t *testing.T) {
	for _, b := range textbooks {
		p := parse(t, b.line)
		r := Solve(p, Options{})
		if bad := wrong(p, &r); bad != "" {
			t.Fatal(b.name, bad)
		}
		if r.Outcome != Optimal || r.Finish != b.finish || r.Proof != ByPath {
			t.Errorf("%s: finish %d by %d, want %d by the path", b.name, r.Finish, r.Proof, b.finish)
		}
		if got := numbers(r.Starts); got != b.starts {
			t.Errorf("%s: starts\n%s want\n%s", b.name, got, b.starts)
		}
		var slack []int
		for j, s := range r.Starts {
			slack = append(slack, r.Latest[j]-s)
		}
		if got := numbers(slack); got != b.slack {
			t.Errorf("%s: slack\n%s want\n%s", b.name, got, b.slack)
		}
		if got := chainNames(r.Chain); got != b.chain {
			t.Errorf("%s: chain %s, want %s", b.name, got, b.chain)
		}
	}
}

func numbers(list []int) string { return strings.Trim(fmt.Sprint(list), "[]") }

func chainNames(chain []Link) string {
	var names []string
	for _, l := range chain {
		names = append(names, string(rune('A'+l.Job)))
	}
	return strings.Join(names, " ")
}
