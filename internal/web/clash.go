package web

import (
	"strings"

	"dryfit/internal/document"
	"dryfit/internal/text"
)

// clashed is one value that two people changed, as it is shown to the second.
type clashed struct {
	Where              string
	Theirs, Yours, Was string
	Name, Value        string // of the input that does it after all; no name: it can not be done with one input
}

// shown readies clashes for the page. What stands in them stands as behind a colon, so it is set as that; where a name
// was given there is no single value to set.
func shown(list []document.Clash, ops []text.Op) []clashed {
	named := hasName(ops)
	var out []clashed
	for _, c := range list {
		e := clashed{Where: strings.Join(c.Path, " > "), Theirs: c.Theirs, Yours: c.Yours, Was: c.Was}
		switch {
		case named:
		case c.Yours == "":
			e.Name, e.Value = "remove", pathName(c.Path)
		default:
			e.Name, e.Value = doValue+":"+pathName(c.Path), c.Yours
		}
		out = append(out, e)
	}
	return out
}
