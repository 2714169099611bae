package store

import "unicode/utf8"

// Limits are the largest things kept; what is larger is refused with TooBig. A zero takes the default.
type Limits struct {
	Text   int // bytes of a document, and of the operations of one revision
	Word   int // runes of a name, an author's label, a client's id
	Path   int // bytes of a face, an address or a note
	Photo  int // bytes of a photo
	Photos int // photos of one room
	Ticks  int // ticks in one call
}

// defaultLimits are our own choice: a document of a full bathroom has some 10 kB, a photo of a phone, made smaller for
// the page, some 500 kB.
var defaultLimits = Limits{Text: 1 << 20, Word: 200, Path: 1000, Photo: 8 << 20, Photos: 400, Ticks: 1000}

func (l Limits) filled() Limits {
	d := defaultLimits
	return Limits{
		Text: or(l.Text, d.Text), Word: or(l.Word, d.Word), Path: or(l.Path, d.Path),
		Photo: or(l.Photo, d.Photo), Photos: or(l.Photos, d.Photos), Ticks: or(l.Ticks, d.Ticks),
	}
}

func or(given, otherwise int) int {
	if given > 0 {
		return given
	}
	return otherwise
}

func (l Limits) words(words ...string) error {
	for _, w := range words {
		if utf8.RuneCountInString(w) > l.Word {
			return TooBig
		}
	}
	return nil
}

func (l Limits) paths(paths ...string) error {
	for _, p := range paths {
		if len(p) > l.Path {
			return TooBig
		}
	}
	return nil
}

func (l Limits) text(b []byte) error {
	if len(b) > l.Text {
		return TooBig
	}
	return nil
}
