package bar

import (
	"math/big"
	"slices"
	"testing"
)

// check holds all of a result against the rules of the package.
func check(tb testing.TB, p Problem, r Result) {
	tb.Helper()
	checkPlan(tb, p, r)
	checkProof(tb, p, r)
}

// checkPlan has the rules written out anew: place by place, without runs or
// kinds.
func checkPlan(tb testing.TB, p Problem, r Result) {
	tb.Helper()
	bad := func(what string, more ...any) {
		tb.Helper()
		tb.Fatalf("%s\n%s\n%s: %v", notation(p), cuts(r), what, more)
	}
	done := make([]int, len(p.Pieces))
	used := make([]int, len(p.Stocks))
	var money int64
	for _, s := range r.Sticks {
		st := p.Stocks[s.Stock]
		used[s.Stock]++
		money += st.Price
		if len(s.Cuts) == 0 {
			bad("a stick without a piece")
		}
		end := int64(-1)
		for _, c := range s.Cuts {
			length := p.Pieces[c.Piece].Length
			if !free(p, st, c.At, c.At+length) {
				bad("a piece in a trim or a defect", c)
			}
			if end >= 0 && c.At < end+p.Kerf {
				bad("no room for the cut before", c)
			}
			end = c.At + length
			done[c.Piece]++
		}
	}
	for s, n := range used {
		if c := p.Stocks[s].Count; c != Unlimited && n > c {
			bad("more sticks than there are", s)
		}
	}
	for i, q := range p.Pieces {
		unfit := slices.Contains(r.Unfit, i)
		if unfit && done[i]+r.Lacking[i] != 0 || !unfit && done[i]+r.Lacking[i] != q.Count {
			bad("pieces not counted right", i)
		}
		if unfit != (q.Count > 0 && !anyHolds(p, q.Length)) {
			bad("unfit", i)
		}
	}
	if money != r.Money || r.Lower > r.Money || r.Lower < 0 {
		bad("money", money, r.Money, r.Lower)
	}
	if r.Fewest > sum(r.Lacking) {
		bad("fewest", r.Fewest)
	}
	if got := longestLeft(p, r, used); got != r.Remnant.Length || got > r.Longest {
		bad("remnant", got, r.Remnant, r.Longest)
	}
	if x := r.Remnant; x.Length > 0 && !free(p, p.Stocks[x.Stock], x.At, x.At+x.Length) {
		bad("remnant in a trim or a defect", x)
	}
}

func sum(list []int) (n int) {
	for _, v := range list {
		n += v
	}
	return n
}

// free tells whether a stretch keeps off trims and defects.
func free(p Problem, s Stock, from, to int64) bool {
	if from < p.Trim || to > s.Length-p.Trim {
		return false
	}
	for _, d := range s.Defects {
		if d.To > d.From && from < max(d.To, d.From+p.Kerf) && to > d.From {
			return false
		}
	}
	return true
}

// anyHolds tells whether some stock holds a length, at any place where it could
// begin: behind the trim or a defect.
func anyHolds(p Problem, length int64) bool {
	for _, s := range p.Stocks {
		if s.Count == 0 {
			continue
		}
		starts := []int64{p.Trim}
		for _, d := range s.Defects {
			starts = append(starts, max(d.To, d.From+p.Kerf))
		}
		for _, at := range starts {
			if free(p, s, at, at+length) {
				return true
			}
		}
	}
	return false
}

// longestLeft measures what each stick that is owned has left.
func longestLeft(p Problem, r Result, used []int) (most int64) {
	for _, s := range r.Sticks {
		most = max(most, longestIn(p, p.Stocks[s.Stock], s.Cuts))
	}
	for i, s := range p.Stocks {
		if s.Price == 0 && (s.Count == Unlimited || used[i] < s.Count) {
			most = max(most, longestIn(p, s, nil))
		}
	}
	return most
}

// longestIn is the longest stretch between what is taken, by looking from every
// place where one could begin to the first thing in its way.
func longestIn(p Problem, s Stock, taken []Cut) (most int64) {
	starts := []int64{p.Trim}
	var stops []Span
	for _, d := range s.Defects {
		if d.To > d.From {
			starts = append(starts, max(d.To, d.From+p.Kerf))
			stops = append(stops, Span{d.From, max(d.To, d.From+p.Kerf)})
		}
	}
	for _, c := range taken {
		end := c.At + p.Pieces[c.Piece].Length
		starts = append(starts, end+p.Kerf)
		stops = append(stops, Span{c.At - p.Kerf, end + p.Kerf})
	}
	for _, at := range starts {
		end := s.Length - p.Trim
		for _, x := range stops {
			if x.To > at {
				end = min(end, max(x.From, at))
			}
		}
		if at >= p.Trim {
			most = max(most, end-at)
		}
	}
	return most
}

// checkProof looks at every promise of a proof; for short sticks, by filling
// them length by length.
func checkProof(tb testing.TB, p Problem, r Result) {
	tb.Helper()
	worth, total := new(big.Int), 0
	for i, q := range p.Pieces {
		w := r.Proof.Weights[i]
		if slices.Contains(r.Unfit, i) {
			if w != 0 {
				tb.Fatalf("%s\nan unfit piece weighs", notation(p))
			}
			continue
		}
		total += q.Count
		worth.Add(worth, product(w, int64(q.Count)))
		if big.NewInt(w).Cmp(product(r.Proof.Penalty, r.Proof.Scale)) > 0 || w < 0 {
			tb.Fatalf("%s\npiece %d weighs %d", notation(p), i, w)
		}
	}
	for s, st := range p.Stocks {
		top := new(big.Int).Add(product(st.Price, r.Proof.Scale), big.NewInt(r.Proof.Excess[s]))
		if heavy := heaviest(p, st, r.Proof.Weights); st.Count != 0 && big.NewInt(heavy).Cmp(top) > 0 {
			tb.Fatalf("%s\na stick of stock %d weighs %d, not at most %v", notation(p), s, heavy, top)
		}
		n := total
		if st.Count != Unlimited {
			n = min(n, st.Count)
		}
		worth.Sub(worth, product(r.Proof.Excess[s], int64(n)))
	}
	if r.Proof.By == ProofExhaustive {
		return
	}
	worth.Add(worth, big.NewInt(r.Proof.Scale-1))
	worth.Div(worth, big.NewInt(r.Proof.Scale))
	worth.Add(worth, product(r.Proof.Penalty, -int64(sum(r.Lacking))))
	if lower := nextSumOfPrices(p, max(worth.Int64(), 0)); r.Lower > lower {
		tb.Fatalf("%s\nthe proof gives %d, not %d", notation(p), lower, r.Lower)
	}
}

func product(a, b int64) *big.Int { return new(big.Int).Mul(big.NewInt(a), big.NewInt(b)) }

// nextSumOfPrices goes up until prices add up.
func nextSumOfPrices(p Problem, from int64) int64 {
	sums := map[int64]bool{0: true}
	for at := int64(0); ; at++ {
		for _, s := range p.Stocks {
			if s.Count != 0 && s.Price > 0 && sums[at-s.Price] {
				sums[at] = true
			}
		}
		if at >= from && sums[at] || at > from+1<<20 {
			return at
		}
	}
}

// heaviest fills a stick with what weighs most, by a table over lengths.
func heaviest(p Problem, s Stock, weights []int64) (most int64) {
	var line []bool // whether each unit of the stick is free
	for at := range s.Length {
		line = append(line, free(p, s, at, at+1))
	}
	for i := 0; i < len(line); i++ {
		n := 0
		for i+n < len(line) && line[i+n] {
			n++
		}
		if n > 0 {
			most += fillTable(p, int64(n)+p.Kerf, weights)
			i += n - 1
		}
	}
	return most
}

func fillTable(p Problem, size int64, weights []int64) int64 {
	table := make([]int64, size+1)
	for i, q := range p.Pieces {
		for range min(int64(q.Count), size) {
			for c := size; c >= q.Length+p.Kerf; c-- {
				table[c] = max(table[c], table[c-q.Length-p.Kerf]+weights[i])
			}
		}
	}
	return table[size]
}
