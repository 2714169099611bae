package mip

import (
	"fmt"
	"strconv"
	"strings"
	"testing"
)

// parse reads a problem from one line, variables and then rows:
//
//	-2..3@1 0..5 | 1 2 >= 3 | -1 0 >= -2
//
// A variable is lo..hi@cost, the cost 1 where it is not written.
func parse(tb testing.TB, line string) Problem {
	tb.Helper()
	part := strings.Split(line, "|")
	var p Problem
	for _, w := range strings.Fields(part[0]) {
		span, cost, priced := strings.Cut(w, "@")
		lo, hi, _ := strings.Cut(span, "..")
		v := Var{number(tb, lo), number(tb, hi), 1}
		if priced {
			v.Cost = number(tb, cost)
		}
		p.Vars = append(p.Vars, v)
	}
	for _, text := range part[1:] {
		sum, least, _ := strings.Cut(text, ">=")
		r := Row{B: number(tb, strings.TrimSpace(least))}
		for _, w := range strings.Fields(sum) {
			r.A = append(r.A, number(tb, w))
		}
		p.Rows = append(p.Rows, r)
	}
	return p
}

func number(tb testing.TB, s string) int64 {
	tb.Helper()
	n, err := strconv.ParseInt(s, 10, 64)
	if err != nil {
		tb.Fatal(err)
	}
	return n
}

func (p Problem) line() string {
	var b strings.Builder
	for i, v := range p.Vars {
		if i > 0 {
			b.WriteByte(' ')
		}
		fmt.Fprintf(&b, "%d..%d@%d", v.Lo, v.Hi, v.Cost)
	}
	for _, r := range p.Rows {
		b.WriteString(" |")
		for _, a := range r.A {
			fmt.Fprintf(&b, " %d", a)
		}
		fmt.Fprintf(&b, " >= %d", r.B)
	}
	return b.String()
}
