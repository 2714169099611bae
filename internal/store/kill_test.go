package store

import (
	"bytes"
	"strconv"
	"testing"
)

// A program that is killed while it writes loses nothing that it has acknowledged, fifty times over on one database.
func TestKilledWriterLosesNothingAcknowledged(t *testing.T) {
	rounds := 50
	if testing.Short() {
		rounds = 5
	}
	dir := t.TempDir()
	var acknowledged int64
	for round := range rounds {
		last := writeAndKill(t, dir, 1+round%7)
		if last <= acknowledged {
			t.Fatalf("round %d: %d acknowledged after %d", round, last, acknowledged)
		}
		acknowledged = last
		inspectKilled(t, dir, last)
	}
	t.Logf("%d edits acknowledged over %d kills", acknowledged, rounds)
}

// writeAndKill lets a writer run until it has acknowledged n edits, kills it at whatever it does next, and gives the
// last edit that it acknowledged.
func writeAndKill(t *testing.T, dir string, n int) (last int64) {
	t.Helper()
	cmd, lines := start(t, "write", dir)
	lines.Scan() // "started"
	for i := 0; lines.Scan(); i++ {
		number, err := strconv.ParseInt(lines.Text(), 10, 64)
		if err != nil {
			t.Fatal(lines.Text())
		}
		last = number
		if i+1 == n {
			cmd.Process.Kill()
		}
	}
	cmd.Wait()
	return last
}

func inspectKilled(t *testing.T, dir string, last int64) {
	t.Helper()
	s := reopen(t, dir) // which also shows that a killed program's lock is gone
	defer closed(t, s)
	sound(t, s)
	rooms, err := s.Rooms(t.Context())
	if err != nil || len(rooms) != 1 {
		t.Fatalf("%v %v", rooms, err)
	}
	if rooms[0].Head < last {
		t.Fatalf("acknowledged %d, found %d", last, rooms[0].Head)
	}
	all, err := s.Range(t.Context(), rooms[0].ID, 1, rooms[0].Head)
	if err != nil || int64(len(all)) != rooms[0].Head {
		t.Fatalf("%d of %d revisions: %v", len(all), rooms[0].Head, err)
	}
	for i, r := range all {
		if r.Number != int64(i+1) || !bytes.Equal(r.Text, text(r.Number)) {
			t.Fatalf("revision %d reads %q", i+1, r.Text)
		}
	}
}

// A program killed while it makes the data folder leaves one that opens.
func TestKilledWhileMakingTheFolder(t *testing.T) {
	for range 10 {
		dir := t.TempDir()
		cmd, lines := start(t, "hold", dir)
		lines.Scan() // "started": the folder is about to be made
		cmd.Process.Kill()
		cmd.Wait()
		s := reopen(t, dir)
		newRoom(t, s, "room")
		sound(t, s)
		closed(t, s)
	}
}
