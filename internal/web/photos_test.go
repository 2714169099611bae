package web

import (
	"bytes"
	"context"
	"encoding/binary"
	"fmt"
	"mime/multipart"
	"net/http"
	"net/http/httptest"
	"net/url"
	"strings"
	"testing"

	"dryfit/internal/store"
)

// sendPhotos sends a form with files, as the person at this machine, or by a link.
func (s *site) sendPhotos(face, passed string, files ...[]byte) *httptest.ResponseRecorder {
	s.Helper()
	var body bytes.Buffer
	form := multipart.NewWriter(&body)
	err := form.WriteField("note", " pipe left of the stud ")
	for i, f := range files {
		part, err := form.CreateFormFile("photo", fmt.Sprintf(`..\../photo<%d>.jpg`, i+1))
		if err != nil {
			s.Fatal(err)
		}
		part.Write(f)
	}
	if err != nil || form.Close() != nil {
		s.Fatal(err)
	}
	r := httptest.NewRequest("POST", "http://127.0.0.1:8080/room/1/photos?face="+url.QueryEscape(face), &body)
	r.RemoteAddr = "127.0.0.1:5000"
	if passed != "" {
		r.Host, r.RemoteAddr = "192.0.2.7:80", "192.0.2.9:4000"
		r.AddCookie(&http.Cookie{Name: pass, Value: passed})
	}
	r.Header.Set("Content-Type", form.FormDataContentType())
	return s.send(r)
}

func (s *site) photos() []store.Photo {
	s.Helper()
	list, err := s.store.Photos(context.Background(), 1)
	if err != nil {
		s.Fatal(err)
	}
	return list
}

// A photo is added, seen, noted on, moved and removed; its place is not kept.
func TestPhotoOfAWall(t *testing.T) {
	s := open(t, nil)
	has(t, s.get("/room/1/photos"), "What is behind the face?", "No photo yet", "Add photos of basin wall", "Add photos of floor")
	place := camera(binary.LittleEndian, 6)
	w := s.sendPhotos("basin wall", "", withSegment(jpegOf(t, chart(60, 40)), 0xe1, place))
	if w.Code != 303 || w.Header().Get("Location") != "/room/1/photos#"+faceID("basin wall") {
		t.Fatalf("%d %s", w.Code, w.Body)
	}
	list := s.photos()
	if len(list) != 1 || list[0].Face != "basin wall" || list[0].Note != "pipe left of the stud" || list[0].Width != 40 || list[0].By != "here" {
		t.Fatalf("%+v", list)
	}
	at := fmt.Sprintf("/room/1/photos/%d", list[0].ID)
	has(t, s.get("/room/1/photos"), "1 photo.", `alt="Photo of basin wall: pipe left of the stud"`, at)
	seen := s.ask("GET", at, nil)
	if b := seen.Body.Bytes(); seen.Header().Get("Content-Type") != "image/jpeg" || bytes.Contains(b, []byte("Exif")) || bytes.Contains(b, place[6+100:6+148]) {
		t.Error("the photo as it is served is no JPEG or has its place in it")
	}
	if w := s.post(at, "note", "seen from the door", "face", "floor"); w.Code != 303 {
		t.Fatalf("%d %s", w.Code, w.Body)
	}
	if p := s.photos()[0]; p.Face != "floor" || p.Note != "seen from the door" {
		t.Errorf("%+v", p)
	}
	s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `rename:["walls","long wall"]`, "bath wall")
	for _, step := range []struct {
		do   string
		left int
		says string
	}{{"remove", 0, "Removed: 1"}, {"back", 1, "seen from the door"}, {"remove", 0, "Put it back"}, {"forever", 0, "No photo yet"}} {
		if w := s.post(at+"/"+step.do, "", ""); w.Code != 303 || len(s.photos()) != step.left {
			t.Errorf("%s: %d, %d left", step.do, w.Code, len(s.photos()))
		}
		has(t, s.get("/room/1/photos"), step.says)
	}
	if w := s.ask("GET", at, nil); w.Code != 404 {
		t.Errorf("a removed photo: %d", w.Code)
	}
}

// What can not be kept is said at its face's input; what came with it and can be kept is.
func TestBadFilesAreToldAtTheInput(t *testing.T) {
	for name, c := range refused(t) {
		s := open(t, nil)
		w := s.sendPhotos("basin wall", "", c.file, jpegOf(t, chart(30, 20)))
		if w.Code != http.StatusUnprocessableEntity || len(s.photos()) != 1 {
			t.Errorf("%s: %d, %d kept", name, w.Code, len(s.photos()))
		}
		_, rest, _ := strings.Cut(w.Body.String(), `id="`+faceID("basin wall")+`-s"`)
		at, _, _ := strings.Cut(rest, "</div>")
		has(t, at, c.why, "photo&lt;1&gt;.jpg", "said stop")
		if strings.Count(w.Body.String(), "said stop") != strings.Count(s.get("/room/1/photos"), "said stop")+1 {
			t.Errorf("%s: told elsewhere too", name)
		}
	}
}

func TestPhotoFormsThatAreRefused(t *testing.T) {
	s := open(t, nil)
	if w := s.sendPhotos("basin wall", ""); w.Code != 422 {
		t.Errorf("no photo: %d", w.Code)
	}
	if w := s.sendPhotos("no such wall", "", jpegOf(t, chart(9, 9))); w.Code != 422 {
		t.Errorf("no such face: %d", w.Code)
	}
	if w := s.post("/room/1/photos?face=floor", "photo", "x"); w.Code != http.StatusUnsupportedMediaType {
		t.Errorf("no files: %d", w.Code)
	}
	w := s.sendPhotos("floor", "", bytes.Repeat([]byte{7}, mostSent+1))
	has(t, w.Body.String(), "up to 64 MB of photos")
	many := make([][]byte, mostPhotosSent+1)
	has(t, s.sendPhotos("floor", "", many...).Body.String(), "up to 20 photos at a time")
	s.sendPhotos("floor", "", jpegOf(t, chart(9, 9)))
	at := fmt.Sprintf("/room/1/photos/%d", s.photos()[0].ID)
	for path, want := range map[string]int{"/room/1/photos/x": 404, "/room/1/photos/99": 404, "/room/2/photos/1": 404, "/room/1/photos/..%2f1": 404} {
		if w := s.ask("GET", path, nil); w.Code != want {
			t.Errorf("%s: %d", path, w.Code)
		}
	}
	if w := s.post(at, "note", strings.Repeat("ü", longestNote+1), "face", "floor"); w.Code != 422 {
		t.Errorf("a long note: %d", w.Code)
	}
	if w := s.post(at, "note", "x", "face", "elsewhere"); w.Code != 422 || s.photos()[0].Note == "x" {
		t.Errorf("to no face: %d", w.Code)
	}
	if got := s.photos(); len(got) != 1 || got[0].Face != "floor" {
		t.Errorf("%+v", got)
	}
}

// A link for looking shows photos and changes none; other forms stay as small as they were.
func TestPhotosByALink(t *testing.T) {
	share := NewShare("http://192.0.2.7:80")
	s := open(t, share)
	photo := jpegOf(t, chart(9, 9))
	for passed, want := range map[string]int{"guess": 403, share.Look: 403, share.Change: 303} {
		if w := s.sendPhotos("floor", passed, photo); w.Code != want {
			t.Errorf("sent by %q: %d", passed, w.Code)
		}
	}
	if n := len(s.photos()); n != 1 {
		t.Fatalf("%d photos", n)
	}
	at := fmt.Sprintf("/room/1/photos/%d", s.photos()[0].ID)
	look := func(path string) *httptest.ResponseRecorder {
		r := httptest.NewRequest("GET", "http://192.0.2.7:80"+path, nil)
		r.AddCookie(&http.Cookie{Name: pass, Value: share.Look})
		return s.send(r)
	}
	if w := look(at); w.Code != 200 {
		t.Errorf("looked at: %d", w.Code)
	}
	if page := look("/room/1/photos").Body.String(); strings.Contains(page, "multipart/form-data") || strings.Contains(page, "Remove this photo") {
		t.Error("a page for looking has forms to change photos")
	}
	for _, q := range []request{{"192.0.2.9", "192.0.2.7:80", share.Look, "POST", at, "", 403}, {"192.0.2.9", "192.0.2.7:80", share.Look, "POST", at + "/remove", "", 403},
		{"127.0.0.1", "127.0.0.1:80", "", "POST", at + "/remove", "http://rooms.example", 403}} {
		if got := q.send(s); got != q.want {
			t.Errorf("%+v: %d", q, got)
		}
	}
	s.post(at+"/remove", "", "")
	if w := look(at); w.Code != 404 || strings.Contains(look("/room/1/photos").Body.String(), "Removed: 1") {
		t.Errorf("a removed photo is shown to who may only look: %d", w.Code)
	}
	if got := bodyLimit(httptest.NewRequest("POST", "/room/1/edit", nil)); got != maxBody {
		t.Errorf("an edit may have %d bytes", got)
	}
}

// A photo of a wall that has got another name is still shown, and can be moved.
func TestPhotoOfAFaceThatIsGone(t *testing.T) {
	s := open(t, nil)
	s.sendPhotos("basin wall", "", jpegOf(t, chart(9, 9)))
	p := s.photos()[0]
	if err := s.store.MovePhoto(context.Background(), 1, p.ID, "<b>old wall"); err != nil {
		t.Fatal(err)
	}
	has(t, s.get("/room/1/photos"), "&lt;b&gt;old wall", "no face of this name any more")
	if w := s.post(fmt.Sprintf("/room/1/photos/%d", p.ID), "note", "x", "face", "basin wall"); w.Code != 303 || s.photos()[0].Face != "basin wall" {
		t.Errorf("%d %+v", w.Code, s.photos())
	}
}
