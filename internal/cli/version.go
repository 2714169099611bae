package cli

import (
	"fmt"
	"runtime/debug"
)

type versionCmd struct{}

// Run prints the module's version and the commit that it was built from, where the build recorded them.
func (versionCmd) Run(s Streams) error {
	version, commit := "development", ""
	if info, ok := debug.ReadBuildInfo(); ok {
		if v := info.Main.Version; v != "" && v != "(devel)" {
			version = v
		}
		for _, set := range info.Settings {
			if set.Key == "vcs.revision" {
				commit = " " + set.Value
			}
		}
	}
	_, err := fmt.Fprintf(s.Out, "dryfit %s%s\n", version, commit)
	return err
}
