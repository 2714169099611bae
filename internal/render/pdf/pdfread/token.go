package pdfread

// token is a number, a name, an operator, or a string with its escapes undone.
type token struct {
	text   string
	quoted bool
}

// tokens splits page contents. ISO 32000-1, 7.2 and 7.3; comments and dictionaries do not occur in them.
func tokens(b []byte) []token {
	var out []token
	for i := 0; i < len(b); {
		switch c := b[i]; {
		case c == '(':
			s, n := quoted(b[i:])
			out, i = append(out, token{s, true}), i+n
		case c == '[' || c == ']':
			out, i = append(out, token{string(c), false}), i+1
		case blank(c):
			i++
		default:
			j := i + 1
			for j < len(b) && !blank(b[j]) && b[j] != '[' && b[j] != ']' && b[j] != '(' {
				j++
			}
			out, i = append(out, token{string(b[i:j]), false}), j
		}
	}
	return out
}

func blank(c byte) bool { return c <= ' ' }

// quoted reads a literal string and tells how long it was.
func quoted(b []byte) (string, int) {
	var s []byte
	depth := 0
	for i := 0; i < len(b); i++ {
		switch c := b[i]; {
		case c == '\\' && i+1 < len(b):
			i++
			s = append(s, unescaped(b[i]))
		case c == '(':
			if depth++; depth > 1 {
				s = append(s, c)
			}
		case c == ')':
			if depth--; depth == 0 {
				return string(s), i + 1
			}
			s = append(s, c)
		default:
			s = append(s, c)
		}
	}
	return string(s), len(b)
}

func unescaped(c byte) byte {
	switch c {
	case 'n':
		return '\n'
	case 'r':
		return '\r'
	case 't':
		return '\t'
	}
	return c
}
