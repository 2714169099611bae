package bar

import (
	"fmt"
	"strconv"
	"strings"
	"testing"
)

// parse reads a problem from one line: the saw, the pieces and the stocks,
//
//	kerf 3 trim 2 | 40*2 30 | 100@5 60@0*3 80@4!10-20!40-41
//
// A piece is length*count; a stock length@price*count, unlimited without a
// count, with its defects.
func parse(tb testing.TB, line string) Problem {
	tb.Helper()
	part := strings.Split(line, "|")
	if len(part) != 3 {
		tb.Fatalf("%q: want saw | pieces | stocks", line)
	}
	var p Problem
	saw := strings.Fields(part[0])
	for i := 0; i+1 < len(saw); i += 2 {
		switch n := number(tb, saw[i+1]); saw[i] {
		case "kerf":
			p.Kerf = n
		case "trim":
			p.Trim = n
		case "budget":
			p.Budget = int(n)
		default:
			tb.Fatalf("%q: what is %q", line, saw[i])
		}
	}
	for _, w := range strings.Fields(part[1]) {
		length, count, many := strings.Cut(w, "*")
		q := Piece{Length: number(tb, length), Count: 1}
		if many {
			q.Count = int(number(tb, count))
		}
		p.Pieces = append(p.Pieces, q)
	}
	for _, w := range strings.Fields(part[2]) {
		p.Stocks = append(p.Stocks, parseStock(tb, w))
	}
	return p
}

func parseStock(tb testing.TB, word string) Stock {
	tb.Helper()
	marks := strings.Split(word, "!")
	size, count, limited := strings.Cut(marks[0], "*")
	length, price, _ := strings.Cut(size, "@")
	s := Stock{Length: number(tb, length), Price: number(tb, price), Count: Unlimited}
	if limited {
		s.Count = int(number(tb, count))
	}
	for _, m := range marks[1:] {
		from, to, _ := strings.Cut(m, "-")
		s.Defects = append(s.Defects, Span{number(tb, from), number(tb, to)})
	}
	return s
}

func number(tb testing.TB, s string) int64 {
	tb.Helper()
	n, err := strconv.ParseInt(s, 10, 64)
	if err != nil {
		tb.Fatal(err)
	}
	return n
}

// notation writes a problem as parse reads it.
func notation(p Problem) string {
	var b strings.Builder
	fmt.Fprintf(&b, "kerf %d trim %d budget %d |", p.Kerf, p.Trim, p.Budget)
	for _, q := range p.Pieces {
		fmt.Fprintf(&b, " %d*%d", q.Length, q.Count)
	}
	b.WriteString(" |")
	for _, s := range p.Stocks {
		fmt.Fprintf(&b, " %d@%d", s.Length, s.Price)
		if s.Count != Unlimited {
			fmt.Fprintf(&b, "*%d", s.Count)
		}
		for _, d := range s.Defects {
			fmt.Fprintf(&b, "!%d-%d", d.From, d.To)
		}
	}
	return b.String()
}

// cuts writes a plan: "0: 0@2 1@45" is a stick of stock 0 with piece 0 at 2.
func cuts(r Result) string {
	var out []string
	for _, s := range r.Sticks {
		w := fmt.Sprintf("%d:", s.Stock)
		for _, c := range s.Cuts {
			w += fmt.Sprintf(" %d@%d", c.Piece, c.At)
		}
		out = append(out, w)
	}
	return strings.Join(out, ", ")
}
