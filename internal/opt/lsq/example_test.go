package lsq_test

import (
	"fmt"

	"dryfit/internal/opt/lsq"
)

// A room of four corners, clockwise, taped in its sides and both diagonals: one reading more than the shape needs.
func ExampleAdjust() {
	tape := func(from, to int, value float64) lsq.Observation {
		return lsq.Observation{Kind: lsq.Distance, From: from, To: to, Value: value, Sigma: 1}
	}
	problem := lsq.Problem{
		Outline: lsq.Outline{Corners: 4, Sense: lsq.Clockwise},
		Observations: []lsq.Observation{
			tape(0, 1, 2400), tape(1, 2, 1800), tape(2, 3, 2400), tape(3, 0, 1800), tape(0, 2, 3010), tape(1, 3, 3000),
		},
	}
	result, _ := lsq.Adjust(problem)
	fmt.Printf("0-2 corrected by %.1f, the others make it %+.0f\n", result.Residuals[4], result.ClosingErrors[4])
	fmt.Println("suspect, and not to be told apart:", len(result.Suspects), result.Equal)

	problem.Observations = append(problem.Observations, tape(0, 2, 3000))
	result, _ = lsq.Adjust(problem)
	fmt.Println("with 0-2 taped again:", result.Suspects, "the rest agrees:", result.Rest.Agree)

	problem.Observations = problem.Observations[:4]
	_, verdict := lsq.Adjust(problem)
	fmt.Println("sides alone:", verdict.Missing, "missing, and", len(verdict.Pairs), "pairs to choose from")
	// Output:
	// 0-2 corrected by -2.5, the others make it -10
	// suspect, and not to be told apart: 6 true
	// with 0-2 taped again: [4] the rest agrees: true
	// sides alone: 1 missing, and 2 pairs to choose from
}
