package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/text"
)

// SurfaceTemperature is what a face itself has, or by date what it read.
type SurfaceTemperature struct {
	Face string
	At   diag.Place
	Read []RoomTemperature
}

// surfaceTemperatures reads temperatures by face.
var surfaceTemperatures = form[[]SurfaceTemperature]{&shape{kind: namedShape, say: "by face: a temperature", names: "face", item: roomTemperature.shape}, func(r *reader, n *text.Node) ([]SurfaceTemperature, bool) {
	if !r.want(n, text.Map, "a temperature for each face, like {window wall: 50 F}") {
		return nil, false
	}
	var all []SurfaceTemperature
	for _, e := range n.Entries {
		r.refer(e.Key, e.At, "face")
		switch {
		case e.Value.Kind == text.Empty:
			r.empty(e, row{name: e.Key, shape: roomTemperature.shape})
		case isUnknown(e.Value):
			r.unknown(e.Value, "the temperature of "+e.Key)
			all = append(all, SurfaceTemperature{Face: e.Key, At: e.At})
		default:
			if read, ok := roomTemperature.read(r, e.Value); ok {
				all = append(all, SurfaceTemperature{e.Key, e.At, read})
			}
		}
	}
	return all, true
}}
