package web

import (
	"crypto/sha256"
	"sync"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/text"
)

// readText is a text with what was read in it, each made once and never changed.
type readText struct {
	text.Source
	once  sync.Once
	doc   document.Room
	found diag.List
}

// room reads the document in the text.
func (r *readText) room() (document.Room, diag.List) {
	r.once.Do(func() { r.doc, r.found = document.ReadFrom("room", r.Source) })
	return r.doc, r.found
}

// texts keeps the last few texts that were read: one request looks at the same text many times, and so does the next.
type texts struct {
	mu    sync.Mutex
	made  map[textKey]*readText
	order []textKey
	bytes int
}

type textKey [sha256.Size]byte

// Bounds of what is kept: a room is some 10 kB of text, and its tree is some thirty times as large.
const (
	textsKept = 24
	bytesKept = 2 << 20
)

func (l *texts) of(src []byte) *readText {
	k := textKey(sha256.Sum256(src))
	if r := l.find(k); r != nil {
		return r
	}
	return l.keep(k, text.Parsed(src))
}

// take keeps a text that is parsed already.
func (l *texts) take(src text.Source) *readText {
	k := textKey(sha256.Sum256(src.Src))
	if r := l.find(k); r != nil {
		return r
	}
	return l.keep(k, src)
}

func (l *texts) find(k textKey) *readText {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.made[k]
}

func (l *texts) keep(k textKey, src text.Source) *readText {
	l.mu.Lock()
	defer l.mu.Unlock()
	if r := l.made[k]; r != nil {
		return r
	}
	if l.made == nil {
		l.made = map[textKey]*readText{}
	}
	for len(l.order) == textsKept || len(l.order) > 0 && l.bytes+len(src.Src) > bytesKept {
		l.bytes -= len(l.made[l.order[0]].Src)
		delete(l.made, l.order[0])
		l.order = l.order[1:]
	}
	r := &readText{Source: src}
	l.bytes += len(src.Src)
	l.made[k], l.order = r, append(l.order, k)
	return r
}
