package web

import (
	"encoding/json"
	"hash/fnv"
	"strconv"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
)

// field is one value of the document as a form asks for it.
type field struct {
	Name    string // of the input: what to do and the path, as JSON
	ID      string
	Label   string
	Value   string
	Example string
	Help    string
	Choices []string
	Length  bool // a length: the keypad helps
	Says    []said
}

// What a form's input does to its path; the input's name is the word, a colon and the path as JSON.
const (
	doSet   = "set"   // one value as typed
	doList  = "list"  // a list, typed with commas between
	doAgain = "again" // a further reading, behind those that are there
	doValue = "value" // what would stand behind the colon

	doRename = "rename" // another name, wherever the document speaks of the thing
)

// field asks for a single value.
func (v *view) field(label string, path ...string) field {
	f := v.input(doSet, label, path)
	if n := text.At(v.Tree, path); n != nil && f.Value == "" {
		f.Value = plain(n)
	}
	f.Says = v.about(path)
	return f
}

// list asks for a list in one line.
func (v *view) list(label string, path ...string) field {
	f := v.input(doList, label, path)
	if n := text.At(v.Tree, path); n != nil && f.Value == "" {
		f.Value = joined(n)
	}
	f.Says = v.about(path)
	return f
}

func (v *view) input(do, label string, path []string) field {
	name := do + ":" + pathName(path)
	return field{Name: name, ID: idOf(name), Label: label, Value: v.Typed[name]}
}

func pathName(path []string) string {
	b, err := json.Marshal(path)
	if err != nil {
		panic(err) // strings can not fail
	}
	return string(b)
}

// idOf makes an id of letters and figures from any name.
func idOf(name string) string {
	h := fnv.New64a()
	h.Write([]byte(name))
	return "f" + strconv.FormatUint(h.Sum64(), 36)
}

// plain is a node as a person would type it into one input.
func plain(n *text.Node) string {
	switch n.Kind {
	case text.Scalar:
		if strings.EqualFold(n.Text, "unknown") {
			return ""
		}
		return n.Text
	case text.Empty:
		return ""
	}
	return text.Flow(n)
}

func joined(n *text.Node) string {
	if n.Kind != text.List {
		return plain(n)
	}
	words := make([]string, len(n.Items))
	for i, c := range n.Items {
		words[i] = plain(c)
	}
	return strings.Join(words, ", ")
}

// about lists what is said of a path, of what it holds, and nothing of what holds it.
func (v *view) about(path []string) []said {
	where := strings.Join(path, " > ")
	var out []said
	for _, l := range []diag.List{v.Refused, v.Plan.Findings} {
		for _, f := range l {
			if f.Class != diag.Note && (f.At.Path == where || strings.HasPrefix(f.At.Path, where+" > ")) {
				out = append(out, v.say(f))
			}
		}
	}
	return out
}

// like adds an example, help adds a sentence, oneOf the only answers, tape the keypad.
func (f field) like(example string) field { f.Example = example; return f }
func (f field) help(words string) field   { f.Help = words; return f }
func (f field) oneOf(c ...string) field {
	if f.Value != "" && !contains(c, f.Value) {
		c = append(c, f.Value) // what stands in the document is never changed by being shown
	}
	f.Choices = c
	return f
}
func (f field) tape() field { f.Length = true; return f }

func contains(list []string, s string) bool {
	for _, x := range list {
		if x == s {
			return true
		}
	}
	return false
}
