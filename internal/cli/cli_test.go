package cli_test

import (
	"context"
	"os"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"dryfit/internal/cli"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){
		"dryfit": func() { os.Exit(cli.Run(context.Background(), os.Args[1:], cli.System())) },
		"ask":    ask,
	})
}

// Each script in testdata/script is what a person could type.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{Dir: "testdata/script", RequireExplicitExec: true, Cmds: map[string]func(*testscript.TestScript, bool, []string){
		"rooms": makeRooms,
		"hold":  holdRooms,
	}})
}
