package pdfread

import (
	"fmt"
	"math"
	"strings"
	"unicode/utf16"
)

// matrix is [a b c d e f] of ISO 32000-1, 8.3.3.
type matrix [6]float64

func (m matrix) times(n matrix) matrix {
	return matrix{
		m[0]*n[0] + m[1]*n[2], m[0]*n[1] + m[1]*n[3],
		m[2]*n[0] + m[3]*n[2], m[2]*n[1] + m[3]*n[3],
		m[4]*n[0] + m[5]*n[2] + n[4], m[4]*n[1] + m[5]*n[3] + n[5],
	}
}

func (m matrix) at(x, y float64) Pt {
	return Pt{(m[0]*x + m[2]*y + m[4]) * mmPerPoint, (m[1]*x + m[3]*y + m[5]) * mmPerPoint}
}

// state is the graphics state that q and Q keep.
type state struct {
	ctm         matrix
	width, em   float64
	dash, color string
	font        string
}

type machine struct {
	page  *Page
	now   state
	saved []state
	stack []token
	path  Path
	open  bool // points are on the path: only path and painting operators may come
	td    Pt
}

func interpret(body []byte, p *Page) error {
	m := &machine{page: p, now: state{ctm: matrix{1, 0, 0, 1, 0, 0}}}
	for _, t := range tokens(body) {
		if t.quoted || t.text == "[" || t.text == "]" || t.text[0] == '/' || strings.Trim(t.text, "+-.0123456789") == "" {
			m.stack = append(m.stack, t)
			continue
		}
		if err := m.do(t.text); err != nil {
			return err
		}
		m.stack = m.stack[:0]
	}
	if len(m.saved) > 0 {
		return fmt.Errorf("pdfread: %d q without Q", len(m.saved))
	}
	return nil
}

func (m *machine) arg(fromEnd int) float64 {
	if i := len(m.stack) - 1 - fromEnd; i >= 0 {
		return number([]byte(m.stack[i].text))
	}
	return math.NaN()
}

func (m *machine) do(op string) error {
	if m.open && !strings.Contains(" m l c h S f f* B B* W n ", " "+op+" ") {
		return fmt.Errorf("pdfread: operator %s within a path", op)
	}
	if m.pathOp(op) || m.paintOp(op) || m.textOp(op) || m.stateOp(op) {
		return nil
	}
	return fmt.Errorf("pdfread: unknown operator %q", op)
}

func (m *machine) pathOp(op string) bool {
	n := len(m.path.Lines) - 1
	switch op {
	case "m":
		m.path.Lines = append(m.path.Lines, []Pt{m.now.ctm.at(m.arg(1), m.arg(0))})
		m.path.Handles = append(m.path.Handles, nil)
		m.open = true
	case "l":
		m.path.Lines[n] = append(m.path.Lines[n], m.now.ctm.at(m.arg(1), m.arg(0)))
	case "c":
		m.path.Handles[n] = append(m.path.Handles[n], m.now.ctm.at(m.arg(5), m.arg(4)), m.now.ctm.at(m.arg(3), m.arg(2)))
		m.path.Lines[n] = append(m.path.Lines[n], m.now.ctm.at(m.arg(1), m.arg(0)))
	case "h":
		m.path.Lines[n] = append(m.path.Lines[n], m.path.Lines[n][0])
	case "re", "W":
		// Only clips are rectangles here; what they hide is not told.
	default:
		return false
	}
	return true
}

func (m *machine) paintOp(op string) bool {
	switch op {
	case "S", "f", "f*", "B", "B*":
		m.path.Op, m.path.Width, m.path.Dash, m.path.Color = op, m.now.width*mmPerPoint, m.now.dash, m.now.color
		m.page.Paths = append(m.page.Paths, m.path)
	case "n":
	default:
		return false
	}
	m.path, m.open = Path{}, false
	return true
}

func (m *machine) textOp(op string) bool {
	switch op {
	case "BT":
		m.td = Pt{}
	case "ET":
	case "Tf":
		m.now.font, m.now.em = m.stack[0].text, m.arg(0)
	case "Td":
		m.td = Pt{m.td.X + m.arg(1), m.td.Y + m.arg(0)}
	case "Tj":
		t := Text{At: m.now.ctm.at(m.td.X, m.td.Y), Em: m.now.em * mmPerPoint, Font: m.now.font, Body: utf16be(m.stack[0].text)}
		t.Turn = math.Atan2(m.now.ctm[1], m.now.ctm[0]) * 180 / math.Pi
		m.page.Texts = append(m.page.Texts, t)
	default:
		return false
	}
	return true
}

func (m *machine) stateOp(op string) bool {
	switch op {
	case "q":
		m.saved = append(m.saved, m.now)
	case "Q":
		if len(m.saved) == 0 {
			return false
		}
		m.now, m.saved = m.saved[len(m.saved)-1], m.saved[:len(m.saved)-1]
	case "cm":
		m.now.ctm = matrix{m.arg(5), m.arg(4), m.arg(3), m.arg(2), m.arg(1), m.arg(0)}.times(m.now.ctm)
	case "w":
		m.now.width = m.arg(0)
	case "d":
		m.now.dash = m.words()
	case "RG", "G":
		m.now.color = m.words()
	case "rg", "g", "J", "j":
	default:
		return false
	}
	return true
}

func (m *machine) words() string {
	var s []string
	for _, t := range m.stack {
		s = append(s, t.text)
	}
	return strings.Join(s, " ")
}

// utf16be: the font's codes are UTF-16 (Identity-H).
func utf16be(s string) string {
	var u []uint16
	for i := 0; i+1 < len(s); i += 2 {
		u = append(u, uint16(s[i])<<8|uint16(s[i+1]))
	}
	return string(utf16.Decode(u))
}
