package web

import (
	"encoding/binary"
	"hash/fnv"
	"strconv"

	"dryfit/internal/geom"
)

// outlineHash names an outline, so that a tick made for one piece is not taken for a tick of another at its place.
func outlineHash(g geom.Region) string {
	h := fnv.New64a()
	var b [8]byte
	put := func(v int64) { binary.LittleEndian.PutUint64(b[:], uint64(v)); h.Write(b[:]) }
	for _, r := range g {
		put(int64(len(r)))
		for _, v := range r {
			put(int64(v.P.X))
			put(int64(v.P.Y))
		}
	}
	return strconv.FormatUint(h.Sum64(), 36)
}
