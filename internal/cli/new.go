package cli

import (
	"errors"
	"fmt"
	"os"

	"dryfit/internal/document"
	"dryfit/internal/unit"
)

type newCmd struct {
	File    string `arg:"" help:"The file to write; it must not exist yet."`
	Units   string `enum:"in,mm" default:"in" help:"What a bare number means: in or mm."`
	Corners int    `default:"4" help:"How many corners the floor has, 4 to 12."`
}

// Run writes the starter and never over a file that is there.
func (c newCmd) Run(s Streams) error {
	if c.Corners < 4 || c.Corners > 12 {
		return fmt.Errorf("--corners %d: a starter has 4 to 12 corners; more can be added by hand", c.Corners)
	}
	if _, err := os.Lstat(c.File); !errors.Is(err, os.ErrNotExist) {
		return fmt.Errorf("%s is there already and is left as it is; choose another name", c.File)
	}
	if err := writeFile(c.File, document.Starter(system(c.Units), c.Corners)); err != nil {
		return err
	}
	fmt.Fprintf(s.Out, "Wrote %s. Put your readings in, then: dryfit check %s\n", c.File, c.File)
	return nil
}

func system(units string) unit.System {
	if units == "mm" {
		return unit.Millimetres
	}
	return unit.Inches
}
