package export_test

import (
	"archive/zip"
	"bytes"
	"encoding/csv"
	"encoding/xml"
	"fmt"
	"io"
	"math/big"
	"strings"
	"testing"

	"dryfit/internal/export"
	"dryfit/internal/plan"
)

// workbook is a spreadsheet read by nothing but the standard library: ECMA-376 part 1, 18.3 (sheets) and 18.4 (shared texts).
type workbook struct {
	sheets map[string][][]string // by name: the cells as written
	types  map[string]map[string]string
	order  []string
}

func readXLSX(t *testing.T, b []byte) workbook {
	t.Helper()
	z, err := zip.NewReader(bytes.NewReader(b), int64(len(b)))
	if err != nil {
		t.Fatal(err)
	}
	part := func(name string, to any) {
		f, err := z.Open(name)
		if err != nil {
			t.Fatal(err)
		}
		text, err := io.ReadAll(f)
		if err == nil {
			err = xml.Unmarshal(text, to)
		}
		if err != nil {
			t.Fatal(name, err)
		}
	}
	var book struct {
		Sheets []struct {
			Name string `xml:"name,attr"`
			ID   string `xml:"http://schemas.openxmlformats.org/officeDocument/2006/relationships id,attr"`
		} `xml:"sheets>sheet"`
	}
	part("xl/workbook.xml", &book)
	var rels struct {
		Relationship []struct {
			ID     string `xml:"Id,attr"`
			Target string `xml:"Target,attr"`
		}
	}
	part("xl/_rels/workbook.xml.rels", &rels)
	var texts struct {
		SI []struct {
			T string `xml:"t"`
		} `xml:"si"`
	}
	part("xl/sharedStrings.xml", &texts)
	out := workbook{map[string][][]string{}, map[string]map[string]string{}, nil}
	for _, s := range book.Sheets {
		target := ""
		for _, r := range rels.Relationship {
			if r.ID == s.ID {
				target = "xl/" + strings.TrimPrefix(strings.TrimPrefix(r.Target, "/xl/"), "xl/")
			}
		}
		var sheet struct {
			Row []struct {
				C []struct {
					R string `xml:"r,attr"`
					T string `xml:"t,attr"`
					V string `xml:"v"`
					F string `xml:"f"`
				} `xml:"c"`
			} `xml:"sheetData>row"`
		}
		part(target, &sheet)
		out.order = append(out.order, s.Name)
		out.types[s.Name] = map[string]string{}
		for _, r := range sheet.Row {
			row := []string{}
			for _, c := range r.C {
				v := c.V
				if c.T == "s" {
					i := 0
					fmt.Sscan(c.V, &i)
					v = texts.SI[i].T
				}
				if c.F != "" {
					t.Errorf("%s %s holds a formula: %s", s.Name, c.R, c.F)
				}
				out.types[s.Name][c.R] = c.T
				for col := strings.TrimRight(c.R, "0123456789"); len(row) < column(col); {
					row = append(row, "")
				}
				row[len(row)-1] = v
			}
			out.sheets[s.Name] = append(out.sheets[s.Name], row)
		}
	}
	return out
}

// column counts a column's letters from 1.
func column(letters string) int {
	n := 0
	for _, c := range letters {
		n = n*26 + int(c-'A') + 1
	}
	return n
}

// tricky has names that a spreadsheet would take for formulas.
const tricky = `dryfit: 1
name: "=1+1"
units: in
survey: {corners: A B C D, tape: {A-B: 48, B-C: 48, C-D: 48, D-A: 48, A-C: 67-7/8}, level line: {down: {A: 40, B: 40, C: 40, D: 40}, up: {A: 20, B: 20, C: 20, D: 20}}}
walls: {back: {along: A-B, build-up: [board 1/2, bed 1/4, tile]}, right: {along: B-C, build-up: [board 1/2]}, front: {along: C-D, build-up: [board 1/2]}, left: {along: D-A, build-up: [board 1/2]}}
tiles: {"=HYPERLINK(1)": {size: 12 x 12 x 3/8, kind: ceramic, joint: 1/8, per box: 8, price: 12.35 per box, from: "@yard"}}
goods:
  "+mortar": {kind: mortar, packs: {50 lb bag: 28.45, 25 lb bag: 16}, from: "@yard", yields: 0.45 cu ft per 50 lb}
  "-caulk": {kind: sealant, packs: {10.1 fl oz cartridge: 9.48}}
buying: {currency: USD, tax: 7 %, suppliers: {"@yard": {delivery: 10}}}
lay: {back: {fields: {main: {tile: "=HYPERLINK(1)", bond: stack}}}}
`

func orderRowsOf(t *testing.T, p plan.Plan) [][]string {
	t.Helper()
	rows, err := csv.NewReader(bytes.NewReader(export.OrderCSV(p))).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return rows
}

// The sums of order.csv are those of its rows to the cent, read by another reader; so are those of the spreadsheet.
func TestOrderAddsUp(t *testing.T) {
	for _, r := range demos() {
		p := r.plan
		x, err := export.OrderXLSX(p)
		if err != nil {
			t.Fatal(err)
		}
		for what, rows := range map[string][][]string{"csv": orderRowsOf(t, p), "xlsx": readXLSX(t, x).sheets["Order"]} {
			goods, total, extra := new(big.Rat), new(big.Rat), new(big.Rat)
			said := map[string]*big.Rat{}
			for _, row := range rows[1:] {
				if len(row) < 8 || row[7] == "" {
					continue
				}
				sum, ok := new(big.Rat).SetString(row[7])
				if !ok {
					t.Fatalf("%s %s: %q is no number", r.file, what, row[7])
				}
				if row[5] != "" {
					each, _ := new(big.Rat).SetString(row[6])
					n, _ := new(big.Rat).SetString(row[5])
					if n.Mul(n, each).Cmp(sum) != 0 {
						t.Errorf("%s %s: %v", r.file, what, row)
					}
					goods.Add(goods, sum)
					continue
				}
				if row[0] == "goods" || strings.HasPrefix(row[0], "total") {
					said[row[0][:5]] = sum
				} else {
					extra.Add(extra, sum)
				}
			}
			total.Add(goods, extra)
			if said["goods"] == nil || said["goods"].Cmp(goods) != 0 || said["total"] == nil || said["total"].Cmp(total) != 0 {
				t.Errorf("%s %s: goods %s, total %s; said %v", r.file, what, goods.FloatString(2), total.FloatString(2), said)
			}
		}
	}
}

// Names that a spreadsheet would take for formulas stay text, in both files; numbers stay numbers.
func TestOrderKeepsTextText(t *testing.T) {
	p := planned(t, "room.yaml", []byte(tricky))
	if p.Findings.Stops() || len(p.Order.Lines) < 3 {
		t.Fatal(p.Findings, len(p.Order.Lines))
	}
	for _, row := range orderRowsOf(t, p)[1:] {
		for i, c := range row {
			if i < 2 || i == 8 {
				if c != "" && strings.ContainsRune("=+-@", rune(c[0])) {
					t.Errorf("order.csv: %q", c)
				}
			}
		}
	}
	b, err := export.OrderXLSX(p)
	if err != nil {
		t.Fatal(err)
	}
	x := readXLSX(t, b)
	if got := strings.Join(x.order, ", "); got != "Order, What it was reckoned from, Setting, face by face, Compared, Trips and deliveries" {
		t.Error(got)
	}
	rows := x.sheets["Order"]
	if rows[1][0] != "=HYPERLINK(1)" || x.types["Order"]["A2"] != "s" || x.types["Order"]["F2"] == "s" || x.types["Order"]["H2"] == "s" {
		t.Errorf("%v %v", rows[1], x.types["Order"])
	}
}

// The same plan gives the same bytes, whatever the clock says.
func TestOrderSameBytes(t *testing.T) {
	p := planned(t, "room.yaml", []byte(tricky))
	a, _ := export.OrderXLSX(p)
	b, _ := export.OrderXLSX(p)
	if !bytes.Equal(a, b) || !bytes.Equal(export.OrderCSV(p), export.OrderCSV(p)) {
		t.Error("two files of one plan differ")
	}
}
