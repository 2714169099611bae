package store

import (
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"testing"
	"testing/fstest"
	"time"
)

// oldFolder is a data folder that an older program made.
func oldFolder(t *testing.T) (dir string) {
	t.Helper()
	script, err := os.ReadFile("testdata/form1.sql")
	if err != nil {
		t.Fatal(err)
	}
	dir = t.TempDir()
	if err := alter(filepath.Join(dir, dataFile), string(script)); err != nil {
		t.Fatal(err)
	}
	return dir
}

func TestOlderDatabaseIsBroughtUp(t *testing.T) {
	s := reopen(t, oldFolder(t))
	sound(t, s)
	now, err := s.Head(t.Context(), 1)
	want := Revision{Room: 1, Number: 3, Seen: 1, Undoes: 2, Text: []byte("name: Boathouse"), Ops: []byte(`[{"set":"name"}]`), By: "editor",
		At: time.Date(2026, 3, 1, 12, 2, 0, 0, time.UTC)}
	if err != nil || fmt.Sprint(now) != fmt.Sprint(want) {
		t.Errorf("%+v %v, want %+v", now, err, want)
	}
	if bin, err := s.Bin(t.Context()); err != nil || len(bin) != 1 || bin[0].Name != "Attic bath" || !bin[0].Binned.Equal(noon.Add(time.Hour)) {
		t.Errorf("%+v %v", bin, err)
	}
	e := next(1)
	e.From = Delivery{Client: "phone", Seq: 4}
	if r, again, err := s.Append(t.Context(), 1, e); err != nil || !again || r.Number != 2 {
		t.Errorf("what was delivered before: %+v %v %v", r, again, err)
	}
	appended(t, s, 1, next(3))
	tick(t, s, 1, Tick{Address: "a", At: noon})
	addPhoto(t, s, 1, snapshot("wall A", 1))
	sound(t, s)
}

// An older database that was brought up has the same form as a new one.
func TestSameFormOldAndNew(t *testing.T) {
	old, young := form(t, reopen(t, oldFolder(t))), form(t, fresh(t))
	if !maps.Equal(old, young) {
		t.Errorf("%v\nwant %v", old, young)
	}
	if len(young) < 9 {
		t.Errorf("only %d objects", len(young))
	}
}

func form(t *testing.T, s *Store) map[string]string {
	t.Helper()
	rows, err := s.reader.Query(`SELECT name, coalesce(sql, '') FROM sqlite_schema`)
	if err != nil {
		t.Fatal(err)
	}
	defer rows.Close()
	all := map[string]string{}
	for rows.Next() {
		var name, sql string
		if err := rows.Scan(&name, &sql); err != nil {
			t.Fatal(err)
		}
		all[name] = sql
	}
	return all
}

func TestBackupOfAnOlderForm(t *testing.T) {
	dir := t.TempDir()
	if err := Restore(t.Context(), filepath.Join(oldFolder(t), dataFile), dir, false); err != nil {
		t.Fatal(err)
	}
	if rooms, err := reopen(t, dir).Rooms(t.Context()); err != nil || len(rooms) != 1 {
		t.Errorf("%v %v", rooms, err)
	}
}

func TestStepsAreNumbered(t *testing.T) {
	if texts, err := steps(migrations()); err != nil || len(texts) != 5 {
		t.Errorf("%d steps, %v", len(texts), err)
	}
	for _, names := range [][]string{{"0002_b.sql"}, {"0001_a.sql", "0003_c.sql"}, {"0001_a.sql", "0001_b.sql"}, {"1_a.sql"}} {
		files := fstest.MapFS{}
		for _, n := range names {
			files[n] = &fstest.MapFile{}
		}
		if texts, err := steps(files); err == nil {
			t.Errorf("%v was read as %q", names, texts)
		}
	}
}

// A step that fails half way leaves the form before it, and what is stored.
func TestStepIsAllOrNothing(t *testing.T) {
	s := fresh(t)
	newRoom(t, s, "room")
	before := form(t, s)
	files := fstest.MapFS{"0006_bad.sql": {Data: []byte(`CREATE TABLE extra (x); DROP TABLE tick; CREATE TABLE room (y);`)}}
	entries, err := fs.ReadDir(migrations(), ".")
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		files[e.Name()] = &fstest.MapFile{}
	}
	if err := migrate(t.Context(), s.writer, files); err == nil {
		t.Error("a step that cannot be taken was taken")
	}
	if after := form(t, s); !maps.Equal(after, before) {
		t.Errorf("%v\nwant %v", after, before)
	}
	version, err := recognize(t.Context(), s.writer)
	if err != nil || version != 5 {
		t.Errorf("form %d %v", version, err)
	}
	sound(t, s)
}
