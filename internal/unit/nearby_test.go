package unit

import (
	"errors"
	"strings"
	"testing"
)

// What to write for a figure that is finer than the grid, worked out by hand: 0.312 in is 0.0005 in short of 5/16, 1/3 in is nearest to 43/128
// (0.3359), and of 0.0001 mm the finest is 0.001 mm.
func TestInstead(t *testing.T) {
	for _, c := range []struct {
		typed string
		bare  System
		want  string
	}{
		{"0.312", Inches, "0.31 in or 5/16 in"},
		{"-0.312", Inches, "0.31 in or 5/16 in"},
		{"0.312 in", Millimetres, "0.31 in or 5/16 in"},
		{`96' 0.312"`, Millimetres, "1152.31 in or 1152-5/16 in"},
		{"1/3", Inches, "0.33 in or 43/128 in"},
		{"4.999", Inches, "5 in"},
		{"0.001", Inches, "0.01 in or 1/128 in"},
		{"1/3", Millimetres, "0.333 mm"},
		{"1/3 mm", Inches, "0.333 mm"},
		{"0.00001 mm", Inches, "0.001 mm"},
	} {
		_, err := Parse(c.typed, c.bare)
		var parse *ParseError
		if !errors.As(err, &parse) || parse.Instead != c.want {
			t.Errorf("%s in %s: %+v, want %s", c.typed, c.bare, err, c.want)
			continue
		}
		for _, one := range strings.Split(parse.Instead, " or ") {
			if _, err := Parse(one, c.bare); err != nil {
				t.Errorf("%s: what is offered can not be read: %v", c.typed, err)
			}
		}
	}
}
