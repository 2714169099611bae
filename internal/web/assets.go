package web

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"embed"
	"encoding/hex"
	"net/http"
	"path"
	"strings"
	"sync"

	"dryfit/internal/typeset"
)

//go:embed static
var staticFiles embed.FS

// asset is a file that pages load, packed once, when it is first asked for: the program starts quicker so.
type asset struct {
	kind  string
	body  []byte
	small func() []byte
	tag   string
}

// assets are all such files by name: what is not in the map is not served.
type assets map[string]asset

var assetKinds = map[string]string{".css": "text/css; charset=utf-8", ".js": "text/javascript; charset=utf-8", ".ttf": "font/ttf", ".svg": "image/svg+xml"}

// allAssets are read once: nothing changes them.
var allAssets = sync.OnceValue(readAssets)

func readAssets() assets {
	out := assets{}
	list, err := staticFiles.ReadDir("static")
	if err != nil {
		panic(err) // it is within the program
	}
	for _, e := range list {
		b, err := staticFiles.ReadFile("static/" + e.Name())
		if err != nil {
			panic(err)
		}
		out.add(e.Name(), b)
	}
	out.add("letters.ttf", typeset.Data(false))
	return out
}

func (a assets) add(name string, body []byte) {
	sum := sha256.Sum256(body)
	small := sync.OnceValue(func() []byte { return packed(body) })
	a[name] = asset{assetKinds[path.Ext(name)], body, small, `"` + hex.EncodeToString(sum[:8]) + `"`}
}

func packed(body []byte) []byte {
	var small bytes.Buffer
	z, err := gzip.NewWriterLevel(&small, gzip.BestCompression)
	if err == nil {
		_, err = z.Write(body)
	}
	if err == nil {
		err = z.Close()
	}
	if err != nil {
		panic(err) // memory does not fail
	}
	return small.Bytes()
}

func (a assets) text(name string) string { return string(a[name].body) }

func (a assets) serve(w http.ResponseWriter, r *http.Request) {
	f, ok := a[r.PathValue("file")]
	if !ok {
		http.NotFound(w, r)
		return
	}
	h := w.Header()
	h.Set("ETag", f.tag)
	h.Set("Cache-Control", "no-cache")
	h.Set("Vary", "Accept-Encoding")
	if r.Header.Get("If-None-Match") == f.tag {
		w.WriteHeader(http.StatusNotModified)
		return
	}
	h.Set("Content-Type", f.kind)
	body := f.body
	if strings.Contains(r.Header.Get("Accept-Encoding"), "gzip") {
		h.Set("Content-Encoding", "gzip")
		body = f.small()
	}
	w.Write(body) // a reader that has gone away can not be told
}
