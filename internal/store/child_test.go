package store

import (
	"bufio"
	"context"
	"fmt"
	"io"
	"os"
	"os/exec"
	"testing"
)

// The test binary starts itself again as another program on the same folder.
const (
	childTask   = "DRYFIT_STORE_TEST_TASK"
	childFolder = "DRYFIT_STORE_TEST_FOLDER"
)

func start(t *testing.T, task, dir string) (*exec.Cmd, *bufio.Scanner) {
	t.Helper()
	cmd := exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), childTask+"="+task, childFolder+"="+dir)
	cmd.Stderr = os.Stderr
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if _, err := cmd.StdinPipe(); err != nil { // its end tells a holder to stop
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { cmd.Process.Kill(); cmd.Wait() })
	return cmd, bufio.NewScanner(out)
}

func child(task, dir string) {
	fmt.Println("started")
	if task == "nobody" {
		becomeNobody()
	}
	s, err := Open(context.Background(), dir, Limits{})
	if err != nil {
		fmt.Println("refused", KindOf(err), err)
		return
	}
	switch task {
	case "write":
		childWrites(s)
	default:
		fmt.Println("open")
		io.Copy(io.Discard, os.Stdin)
		s.Close()
	}
}

// childWrites stores edits for ever and says of each that it is stored, after the store has said so.
func childWrites(s *Store) {
	ctx := context.Background()
	rooms, err := s.Rooms(ctx)
	if err == nil && len(rooms) == 0 {
		_, err = s.Create(ctx, NewRoom{Name: "room", Text: text(1), At: noon})
		rooms, _ = s.Rooms(ctx)
	}
	for err == nil {
		var r Revision
		if r, err = s.Head(ctx, rooms[0].ID); err != nil {
			break
		}
		if r, _, err = s.Append(ctx, rooms[0].ID, next(r.Number)); err == nil {
			fmt.Println(r.Number)
		}
	}
	fmt.Println("failed", err)
}
