package document

import "testing"

// What is no text of a document is told from what is a document with something wrong in it.
func TestUnreadable(t *testing.T) {
	const good = "dryfit: 1\nname: It\nunits: in\nsurvey:\n  corners: A B C\n  tape: {A-B: 60, B-C: 60, C-A: 60}\n"
	for _, c := range []struct {
		what, src string
		want      bool
	}{
		{"a document", good, false},
		{"a length that is none", good + "mark: often\n", false},
		{"a key that is none", good + "flor: {}\n", false},
		{"a tab in the indent, which is read as two spaces", good + "floor:\n\tbuild-up: unknown\n", false},
		{"a bracket that is never closed", good + "floor: {build-up: [board 1/2\n", true},
		{"no YAML", "name: a: b\n", true},
		{"a quote that ends in the middle", good + "mark: '1/16' in\n", true},
		{"UTF-16", "\xff\xfed\x00r\x00y\x00", true},
		{"another encoding", good + "climate: {exterior: no} # \xe9\n", true},
		{"a binary", "\x7fELF\x02\x01\x01\x00\x00\x00", true},
		{"nothing", "", true},
		{"a list", "- dryfit: 1\n", true},
		{"a newer version", "dryfit: 2\n", true},
	} {
		_, found := Read("it.yaml", []byte(c.src))
		if got := Unreadable(found); got != c.want {
			t.Errorf("%s: %v, findings %+v", c.what, got, found)
		}
	}
}
