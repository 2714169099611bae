package web

import (
	"context"
	"fmt"
	"net/http"
	"os"
	"path/filepath"
	"strconv"
	"strings"

	"dryfit/internal/plan"
	"dryfit/internal/sheet"
	"dryfit/internal/store"
	"dryfit/internal/text"
)

// roomLine is a room in the list.
type roomLine struct {
	ID      store.RoomID
	Name    string
	Changed string
	Head    int64
}

// roomList is the list, what was typed for a new room, and what is wrong with it.
type roomList struct {
	Rooms, Bin  []roomLine
	Name, Units string
	Corners     int
	Wrong       string
}

func (s *Server) rooms(w http.ResponseWriter, r *http.Request) error {
	return s.listRooms(w, r, http.StatusOK, roomList{Units: "in", Corners: 4})
}

func (s *Server) listRooms(w http.ResponseWriter, r *http.Request, status int, list roomList) error {
	rooms, err := s.store.Rooms(r.Context())
	if err != nil {
		return err
	}
	binned, err := s.store.Bin(r.Context())
	if err != nil {
		return err
	}
	list.Rooms, list.Bin = roomLines(rooms), roomLines(binned)
	return s.show(w, r, "rooms", status, &frame{Title: "Rooms", Body: list})
}

func roomLines(rooms []store.Room) []roomLine {
	var out []roomLine
	for _, m := range rooms {
		out = append(out, roomLine{m.ID, m.Name, m.Changed.Format("2006-01-02 15:04 UTC"), m.Head})
	}
	return out
}

// bin puts a room in the bin, or takes it out again. Nothing is removed for good from a page.
func (s *Server) bin(w http.ResponseWriter, r *http.Request) error {
	do, name := s.store.TakeOut, "out"
	if r.PostFormValue("in") != "" {
		do, name = func(ctx context.Context, id store.RoomID) error { return s.store.PutInBin(ctx, id, s.now()) }, "in"
	}
	id, err := strconv.ParseInt(r.PostFormValue(name), 10, 64)
	if err != nil {
		return fault{http.StatusBadRequest, "That form is not one of ours."}
	}
	if err := do(r.Context(), store.RoomID(id)); err != nil {
		return err
	}
	http.Redirect(w, r, "/", http.StatusSeeOther)
	return nil
}

// everything gives a copy of all rooms as one file, while others go on. It is for the person at this machine alone.
func (s *Server) everything(w http.ResponseWriter, r *http.Request) error {
	if !atThisMachine(r) {
		return fault{http.StatusForbidden, "A copy of everything is made at the machine that keeps it."}
	}
	dir, err := os.MkdirTemp("", "dryfit")
	if err != nil {
		return err
	}
	defer os.RemoveAll(dir)
	file := filepath.Join(dir, "rooms.db")
	if err := s.store.Backup(r.Context(), file); err != nil {
		return err
	}
	w.Header().Set("Content-Disposition", `attachment; filename="dryfit-rooms.db"`)
	w.Header().Set("Content-Type", "application/octet-stream")
	http.ServeFile(w, r, file)
	return nil
}

// Corners of a new room: fewer make no room, more are better written in the document.
const (
	fewestCorners = 3
	mostCorners   = 12
)

// newRoom writes a first document: corners and walls by name, and every reading still unknown.
func (s *Server) newRoom(w http.ResponseWriter, r *http.Request) error {
	list := roomList{Name: strings.TrimSpace(r.PostFormValue("name")), Units: r.PostFormValue("units")}
	corners, err := strconv.Atoi(r.PostFormValue("corners"))
	list.Corners = corners
	switch {
	case list.Name == "":
		list.Wrong = "Give the room a name."
	case len(list.Name) > 200:
		list.Wrong = "That name is too long."
	case err != nil || corners < fewestCorners || corners > mostCorners:
		list.Wrong = fmt.Sprintf("A room here has %d to %d corners.", fewestCorners, mostCorners)
	case list.Units != "in" && list.Units != "mm":
		list.Wrong = "Choose inches or millimeters."
	}
	if list.Wrong != "" {
		return s.listRooms(w, r, http.StatusUnprocessableEntity, list)
	}
	room, err := s.store.Create(r.Context(), store.NewRoom{Name: list.Name, Text: firstDocument(list.Name, list.Units, corners), By: s.who(r), At: s.now(), From: delivery(r)})
	if err != nil {
		return err
	}
	http.Redirect(w, r, fmt.Sprintf("/room/%d/measure", room.ID), http.StatusSeeOther)
	return nil
}

func (s *Server) toMeasure(w http.ResponseWriter, r *http.Request) error {
	id, err := roomID(r)
	if err == nil {
		http.Redirect(w, r, fmt.Sprintf("/room/%d/measure", id), http.StatusSeeOther)
	}
	return err
}

// firstDocument is a room of which nothing is known but its corners.
func firstDocument(name, units string, corners int) []byte {
	letters := make([]string, corners)
	for i := range letters {
		letters[i] = string(rune('A' + i))
	}
	var b strings.Builder
	fmt.Fprintf(&b, "dryfit: 1\nname: %s\nunits: %s\n\n", text.Quote(name), units)
	fmt.Fprintf(&b, "survey:\n  # Clockwise seen from above; facing wall A-B, corner A is on the left.\n  corners: %s\n  tape to: stud\n  tape:\n", strings.Join(letters, " "))
	for _, l := range walk(letters) {
		fmt.Fprintf(&b, "    %s: unknown\n", l)
	}
	b.WriteString("\nwalls:\n")
	for i, c := range letters {
		next := letters[(i+1)%corners]
		fmt.Fprintf(&b, "  wall %s%s: {along: %s-%s}\n", c, next, c, next)
	}
	return []byte(b.String())
}

// walk lists the lines in the order of a walk with the tape: round the walls, then across from the first corner and from
// the second. That is one more than fixes the shape of a room of four corners, so that a slip is found.
func walk(letters []string) []string {
	var out []string
	n := len(letters)
	for i := range n {
		out = append(out, letters[i]+"-"+letters[(i+1)%n])
	}
	for i := 2; i < n-1; i++ {
		out = append(out, letters[0]+"-"+letters[i])
	}
	for i := 3; i < n; i++ {
		out = append(out, letters[1]+"-"+letters[i])
	}
	return out
}

// planPicture draws the floor of a room for the list.
func (s *Server) planPicture(w http.ResponseWriter, r *http.Request) error {
	v, err := s.view(r)
	if err != nil {
		return err
	}
	if err := v.make(plan.Options{UpTo: plan.UpToSite}); err != nil {
		return err
	}
	w.Header().Set("Cache-Control", "private, max-age=3600")
	return sendDrawing(w, r, sheet.PlanInList(v.Plan))
}

// cornerSketch draws what a room of so many corners may look like.
func (s *Server) cornerSketch(w http.ResponseWriter, r *http.Request) error {
	n, err := strconv.Atoi(r.PathValue("n"))
	if err != nil || n < fewestCorners || n > mostCorners {
		return fault{http.StatusNotFound, "There is no such sketch."}
	}
	w.Header().Set("Cache-Control", "private, max-age=86400")
	return sendDrawing(w, r, sheet.SketchOfCorners(n))
}
