package pair

import (
	"testing"

	"pgregory.net/rapid"
)

// mostPairs tries every pairing of the vertices in mask.
func mostPairs(edge [][]bool, mask int, memo map[int]int) int {
	if mask == 0 {
		return 0
	}
	if n, ok := memo[mask]; ok {
		return n
	}
	v := 0
	for mask>>v&1 == 0 {
		v++
	}
	best := mostPairs(edge, mask&^(1<<v), memo)
	for w := v + 1; w < len(edge); w++ {
		if mask>>w&1 == 1 && edge[v][w] {
			best = max(best, 1+mostPairs(edge, mask&^(1<<v|1<<w), memo))
		}
	}
	memo[mask] = best
	return best
}

// pairsOf counts the pairs of a matching and tells what is wrong with it.
func pairsOf(mate []int, edge [][]bool) (n int, wrong string) {
	for v, w := range mate {
		switch {
		case w < 0:
		case mate[w] != v:
			return 0, "not mutual"
		case !edge[v][w]:
			return 0, "not an edge"
		default:
			n++
		}
	}
	return n / 2, ""
}

func TestMatchingAgainstBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 13).Draw(t, "n")
		sparse := rapid.IntRange(1, 5).Draw(t, "sparse")
		edge := make([][]bool, n)
		edges := make([][]int, n)
		for v := range n {
			edge[v] = make([]bool, n)
			for w := range v {
				if rapid.IntRange(0, sparse).Draw(t, "edge") == 0 {
					edge[v][w], edge[w][v] = true, true
					edges[v], edges[w] = append(edges[v], w), append(edges[w], v)
				}
			}
		}
		got, wrong := pairsOf(matching(edges), edge)
		if want := mostPairs(edge, 1<<n-1, map[int]int{}); wrong != "" || got != want {
			t.Fatalf("%d pairs, brute force %d %s", got, want, wrong)
		}
	})
}

// A triangle on each end of a path: greedy pairing must be undone through both
// blossoms. By hand: 8 vertices, all paired.
func TestMatchingThroughBlossoms(t *testing.T) {
	edges := [][]int{{1, 2}, {0, 2}, {0, 1, 3}, {2, 4}, {3, 5}, {4, 6, 7}, {5, 7}, {5, 6}}
	for v, w := range matching(edges) {
		if w < 0 {
			t.Errorf("vertex %d is left single", v)
		}
	}
}
