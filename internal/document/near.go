package document

import "strings"

// nearest returns the candidate that a mistyped word most likely stands for, or "" where none is near. The
// distance counts single letters added, left out, changed or swapped with their neighbor (Damerau 1964; the
// restricted form, also called optimal string alignment). A third of the letters may be wrong, so a word of one
// letter is near to none. Of equally near ones the first is taken.
func nearest(word string, candidates []string) string {
	best, least := "", (len([]rune(word))+1)/3
	for _, c := range candidates {
		d := distance(fold(word), fold(c))
		if d == 0 || d <= least && (best == "" || d < least) {
			best, least = c, d
		}
	}
	return best
}

// fold makes words alike that differ only in case, hyphens and underscores.
func fold(s string) []rune {
	return []rune(strings.ToLower(strings.NewReplacer("-", " ", "_", " ").Replace(strings.TrimSpace(s))))
}

// Nearest is the candidate that a mistyped name most likely stands for, or "" where none is near: for stages whose names the
// document does not know.
func Nearest(word string, candidates []string) string { return nearest(word, candidates) }

func distance(a, b []rune) int {
	if len(a) > maxWord || len(b) > maxWord {
		return maxWord
	}
	before, last, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			row[j] = min(last[j]+1, row[j-1]+1, last[j-1]+differ(a[i-1], b[j-1]))
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, last, row = last, row, before
	}
	return last[len(b)]
}

// maxWord bounds the work for one hostile word; no key or name is longer.
const maxWord = 80

func differ(a, b rune) int {
	if a == b {
		return 0
	}
	return 1
}
