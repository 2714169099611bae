package judge

import (
	"strconv"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// Reason is a sentence about a layout: a template and its typed values, worded when it is shown, in the reader's
// own units.
type Reason struct {
	Text   string       `json:"text"`
	Values []diag.Value `json:"values,omitempty"`
}

// Because builds a reason from a template in which {0}, {1} … stand for the values.
func Because(text string, values ...diag.Value) Reason { return Reason{text, values} }

// Say words the reason for a reader.
func (r Reason) Say(s unit.Style) string { return diag.Finding{Text: r.Text, Values: r.Values}.Say(s) }

// Join strings reasons together; each keeps its own values.
func Join(between string, reasons ...Reason) Reason {
	var out Reason
	var texts []string
	for _, r := range reasons {
		if r.Text != "" {
			texts = append(texts, r.shifted(len(out.Values)))
			out.Values = append(out.Values, r.Values...)
		}
	}
	out.Text = strings.Join(texts, between)
	return out
}

// shifted is the template with its places counted from by.
func (r Reason) shifted(by int) string {
	var pairs []string
	for i := range r.Values {
		pairs = append(pairs, "{"+strconv.Itoa(i)+"}", "{"+strconv.Itoa(i+by)+"}")
	}
	return strings.NewReplacer(pairs...).Replace(r.Text)
}
