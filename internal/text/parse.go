package text

import (
	"bytes"
	"errors"
	"io"
	"strings"
	"unicode/utf8"

	"go.yaml.in/yaml/v4"

	"dryfit/internal/diag"
)

// Bounds of a file that a person writes. A room of a hundred openings is under 50 kB and six levels deep.
const (
	MaxBytes = 1 << 20
	MaxDepth = 16
	// maxFaults bounds how many broken lines are told; a file with more is no YAML at all.
	maxFaults = 20
)

// Parse reads one document. The node is a map or a list or a scalar as written; an empty file gives an Empty node.
func Parse(src []byte) (*Node, diag.List) {
	root := &Node{At: diag.Place{Line: 1, Column: 1}}
	var found diag.List
	cleaned, ok := clean(src, &found)
	if !ok {
		return root, found
	}
	tree := load(cleaned, &found)
	if tree == nil || len(tree.Content) == 0 {
		return root, found
	}
	b := &builder{source: cleaned, found: &found}
	return b.node(tree.Content[0], "", 0), found
}

// load parses the text; at a fault it takes the faulty entry out and parses again, so that all faults are told.
func load(s *source, found *diag.List) *yaml.Node {
	for range maxFaults {
		var first yaml.Node
		loader, err := yaml.NewLoader(bytes.NewReader([]byte(strings.Join(s.lines, "\n"))))
		if err == nil {
			err = loader.Load(&first)
		}
		if errors.Is(err, io.EOF) {
			return nil
		}
		if err == nil {
			return second(loader, &first, s.lines, found)
		}
		if !fault(err, s, found) {
			return nil
		}
	}
	return nil
}

// second looks for a further document behind the first. A fault in it is told as that document.
func second(loader *yaml.Loader, first *yaml.Node, lines []string, found *diag.List) *yaml.Node {
	var more yaml.Node
	if err := loader.Load(&more); errors.Is(err, io.EOF) {
		return first
	}
	line := len(lines)
	for i := first.Line; i < len(lines); i++ {
		if strings.HasPrefix(lines[i], "---") {
			line = i + 1
			break
		}
	}
	found.Add(diag.Stop, "several-documents", diag.Place{Line: line, Column: 1},
		"a second document starts here and is not read", "keep one room in a file; take out the line ---")
	return first
}

type builder struct {
	*source
	found *diag.List
	deep  bool
}

func (b *builder) stop(code string, at diag.Place, text, mend string, v ...diag.Value) {
	b.found.Add(diag.Stop, code, at, text, mend, v...)
}

func (b *builder) node(y *yaml.Node, path string, depth int) *Node {
	n := &Node{At: b.at(path, y.Line, y.Column)}
	if depth > MaxDepth {
		if !b.deep {
			b.stop("too-deep", n.At, "nested deeper than {0} levels", "a room needs fewer levels; check the indent", diag.N(MaxDepth))
		}
		b.deep = true
		return n
	}
	b.plain(y, n.At)
	if y.Kind == yaml.AliasNode && y.Alias.Kind == yaml.ScalarNode {
		y = y.Alias
	}
	n.Flow = y.Style&yaml.FlowStyle != 0
	switch y.Kind {
	case yaml.ScalarNode:
		b.scalar(y, n)
	case yaml.SequenceNode:
		n.Kind = List
		for i, c := range y.Content {
			n.Items = append(n.Items, b.node(c, Join(path, itoa(i+1)), depth+1))
		}
	case yaml.MappingNode:
		n.Kind = Map
		b.entries(y, n, path, depth)
	}
	return n
}

// plain refuses anchors, aliases and tags: a reader on a bench can not follow them, nor can an edit in place.
func (b *builder) plain(y *yaml.Node, at diag.Place) {
	switch {
	case y.Kind == yaml.AliasNode:
		b.stop("alias", at, "an alias (*{0}) is not read here", "write the value out", diag.T(y.Value))
	case y.Anchor != "":
		b.stop("anchor", at, "an anchor (&{0}) is not read here", "take it out and write the value where it is needed", diag.T(y.Anchor))
	case y.Style&yaml.TaggedStyle != 0:
		b.stop("tag", at, "a tag ({0}) is not read here", "take it out; every value is read by its key", diag.T(y.Tag))
	}
}

func (b *builder) scalar(y *yaml.Node, n *Node) {
	n.Text = y.Value
	n.Quoted = y.Style&(yaml.SingleQuotedStyle|yaml.DoubleQuotedStyle) != 0
	n.AsIs = strings.HasPrefix(b.from(y.Line, y.Column, n.Quoted), y.Value)
	n.Kind = Scalar
	if !n.Quoted && (y.Value == "" || y.Value == "~" || y.Value == "null") {
		n.Kind, n.Text = Empty, ""
	}
}

// from returns the rest of a line from a column on, one further for a quote mark.
func (b *builder) from(line, column int, quoted bool) string {
	if quoted {
		column++
	}
	if line < 1 || line > len(b.lines) {
		return ""
	}
	rest := b.lines[line-1]
	for ; column > 1 && rest != ""; column-- {
		_, width := utf8.DecodeRuneInString(rest)
		rest = rest[width:]
	}
	return rest
}

func (b *builder) entries(y *yaml.Node, n *Node, path string, depth int) {
	seen := map[string]int{}
	for i := 0; i+1 < len(y.Content); i += 2 {
		k := y.Content[i]
		at := b.at(Join(path, k.Value), k.Line, k.Column)
		b.plain(k, at)
		if k.Kind != yaml.ScalarNode || k.Value == "" {
			at.Path = path
			b.stop("key-not-plain", at, "a key must be plain words", "write `name: value`")
			continue
		}
		if line, twice := seen[k.Value]; twice {
			b.stop("key-twice", at, "{0} is written twice; the first is on line {1}", "keep one of them", diag.T(k.Value), diag.N(line))
			continue
		}
		seen[k.Value] = k.Line
		n.Entries = append(n.Entries, Entry{Key: k.Value, At: at, Value: b.node(y.Content[i+1], at.Path, depth+1)})
	}
}
