package text

import (
	"slices"
	"strings"
	"unicode"
)

// Three puts together what two people made of one text: line by line, and word by word where both changed the same lines.
// False where both changed the same words to something else, or the texts differ too much to be compared. It knows
// nothing of what the words mean: whether the outcome says what both meant is for its caller to look at.
func Three(base, mine, theirs []byte) ([]byte, bool) {
	out, ok := three(linesOf(base), linesOf(mine), linesOf(theirs), func(base, mine, theirs []string) ([]string, bool) {
		return three(wordsOf(base), wordsOf(mine), wordsOf(theirs), besideEachOther)
	})
	return []byte(strings.Join(out, "")), ok
}

func linesOf(b []byte) []string { return strings.SplitAfter(string(b), "\n") }

// wordsOf are the words, and what stands between them, in order; each line end by itself.
func wordsOf(lines []string) []string {
	var out []string
	kind := func(c rune) int {
		switch {
		case c == '\n':
			return 0
		case unicode.IsSpace(c):
			return 1
		}
		return 2
	}
	for _, l := range lines {
		last := -1
		for _, c := range l {
			k := kind(c)
			if k == last && k != 0 {
				out[len(out)-1] += string(c)
			} else {
				out = append(out, string(c))
			}
			last = k
		}
	}
	return out
}

// besideEachOther: one put something before or behind what the other changed.
func besideEachOther(base, mine, theirs []string) ([]string, bool) {
	n := len(base)
	for _, c := range [][2][]string{{mine, theirs}, {theirs, mine}} {
		one, other := c[0], c[1]
		switch {
		case n == 0 || len(one) <= n:
		case slices.Equal(one[:n], base):
			return slices.Concat(other, one[n:]), true
		case slices.Equal(one[len(one)-n:], base):
			return slices.Concat(one[:len(one)-n], other), true
		}
	}
	return nil, false
}

// three walks along what all have in common; between, who changed something has it, and where both did, both decides.
func three(base, mine, theirs []string, both func(base, mine, theirs []string) ([]string, bool)) ([]string, bool) {
	inMine, ok1 := common(base, mine)
	inTheirs, ok2 := common(base, theirs)
	if !ok1 || !ok2 {
		return nil, false
	}
	var out []string
	i, a, b := 0, 0, 0
	for i < len(base) || a < len(mine) || b < len(theirs) {
		k := i
		for k < len(base) && (inMine[k] < 0 || inTheirs[k] < 0) {
			k++
		}
		endA, endB := len(mine), len(theirs)
		if k < len(base) {
			endA, endB = inMine[k], inTheirs[k]
		}
		part, ok := between(base[i:k], mine[a:endA], theirs[b:endB], both)
		if !ok {
			return nil, false
		}
		out = append(out, part...)
		i, a, b = k, endA, endB
		if k < len(base) {
			out = append(out, base[k])
			i, a, b = k+1, endA+1, endB+1
		}
	}
	return out, true
}

func between(base, mine, theirs []string, both func(base, mine, theirs []string) ([]string, bool)) ([]string, bool) {
	switch {
	case slices.Equal(mine, base):
		return theirs, true
	case slices.Equal(theirs, base), slices.Equal(mine, theirs):
		return mine, true
	}
	return both(base, mine, theirs)
}

// mostCompared bounds the table of two texts without what they begin and end with in common.
const mostCompared = 4_000_000

// common gives for each part of a where it stands in b, or -1: a longest common subsequence, the first of them.
func common(a, b []string) ([]int, bool) {
	at := make([]int, len(a))
	for i := range at {
		at[i] = -1
	}
	lo := 0
	for lo < len(a) && lo < len(b) && a[lo] == b[lo] {
		at[lo] = lo
		lo++
	}
	endA, endB := len(a), len(b)
	for endA > lo && endB > lo && a[endA-1] == b[endB-1] {
		endA, endB = endA-1, endB-1
		at[endA] = endB
	}
	n, m := endA-lo, endB-lo
	if n*m > mostCompared {
		return nil, false
	}
	long := make([][]int32, n+1) // of what is left from i in a and j in b
	for i := range long {
		long[i] = make([]int32, m+1)
	}
	for i := n - 1; i >= 0; i-- {
		for j := m - 1; j >= 0; j-- {
			if a[lo+i] == b[lo+j] {
				long[i][j] = long[i+1][j+1] + 1
			} else {
				long[i][j] = max(long[i+1][j], long[i][j+1])
			}
		}
	}
	for i, j := 0, 0; i < n && j < m; {
		switch {
		case a[lo+i] == b[lo+j]:
			at[lo+i] = lo + j
			i, j = i+1, j+1
		case long[i+1][j] >= long[i][j+1]:
			i++
		default:
			j++
		}
	}
	return at, true
}
