// Command dryfit plans the finishing of a small room from tape readings.
package main

import (
	"context"
	"os"
	"os/signal"

	"dryfit/internal/cli"
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	os.Exit(cli.Run(ctx, os.Args[1:], cli.System()))
}
