package rule

import "strings"

// Sets names families of requirements, one bit each.
type Sets uint16

const (
	IRC       Sets = 1 << iota // US residential code
	IPC                        // US plumbing code
	UPC                        // the other US plumbing code
	ADA                        // 2010 ADA Standards for Accessible Design
	NEC                        // US electrical code
	UK                         // UK approved documents, British and European standards, UK habit
	Ontario                    // Ontario building code
	Guide                      // published guidance for planning bathrooms, not a code
	Customary                  // common practice: never asked for, always told
)

// advised are the sets that no document needs to choose: they only advise.
const advised = Guide | Customary

var setNames = []string{"IRC", "IPC", "UPC", "ADA 2010", "NEC", "UK practice", "Ontario", "planning guidance", "common practice"}

// String lists the sets by name.
func (s Sets) String() string {
	var names []string
	for i, name := range setNames {
		if s&(1<<i) != 0 {
			names = append(names, name)
		}
	}
	return strings.Join(names, ", ")
}

// Choice is a name by which a document chooses sets.
type Choice struct {
	Name string
	Sets Sets
	What string
}

// Choices lists what a document may choose, in the order to offer it in.
func Choices() []Choice {
	return []Choice{
		{"US residential", IRC | IPC | NEC, "the residential, plumbing and electrical codes that most US states start from"},
		{"UPC", UPC | NEC, "the plumbing code of the western US, with the electrical code"},
		{"ADA 2010", ADA, "the 2010 ADA Standards, sections 303 to 609: an accessible room"},
		{"UK practice", UK, "approved documents, British and European standards, UK habit"},
		{"Ontario", Ontario, "Ontario building code: the seal of a trap alone"},
	}
}

// ChoiceNamed finds a choice by its name.
func ChoiceNamed(name string) (Choice, bool) {
	for _, c := range Choices() {
		if strings.EqualFold(c.Name, strings.TrimSpace(name)) {
			return c, true
		}
	}
	return Choice{}, false
}

// Bound says on which side of its number a requirement holds.
type Bound uint8

const (
	Stated  Bound = iota // as its words say
	AtLeast              // not less
	AtMost               // not more
)

func (b Bound) String() string { return [...]string{"stated", "at least", "at most"}[b] }
