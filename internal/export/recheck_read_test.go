package export_test

import (
	"encoding/json"
	"fmt"
	"math/big"
	"reflect"
	"strings"
)

// This file and the other recheck files are an independent reader of plan.json: they import the standard library alone and
// recompute what the file claims. TestRecheckStandsAlone holds them to that.

// num is a length on the grid of 1/16000 mm, read as an exact decimal.
type num int64

const mm = 16000

func (n *num) UnmarshalJSON(b []byte) error { return exactly(b, mm, (*int64)(n)) }

func (n num) mm() float64 { return float64(n) / mm }

// square is an area in squares of the grid.
type square int64

func (a *square) UnmarshalJSON(b []byte) error { return exactly(b, mm*mm, (*int64)(a)) }

// degrees are kept in millionths.
type degrees int64

func (d *degrees) UnmarshalJSON(b []byte) error { return exactly(b, 1e6, (*int64)(d)) }

func exactly(b []byte, scale int64, to *int64) error {
	r, ok := new(big.Rat).SetString(string(b))
	if !ok {
		return fmt.Errorf("%s is no number", b)
	}
	r.Mul(r, new(big.Rat).SetInt64(scale))
	if !r.IsInt() {
		return fmt.Errorf("%s is finer than the grid", b)
	}
	*to = r.Num().Int64()
	return nil
}

type (
	readPlan struct {
		Mark   num
		Survey readSurvey
		Faces  []readFace
		Tiling []readWork
		Goods  []readGood
	}
	readXY     struct{ X, Y num }
	readVertex struct {
		X, Y num
		Edge int
	}
	readShape  [][]readVertex
	readSurvey struct {
		Area    square
		Freedom int
		Closing *num
		Corners []struct {
			Name                  string
			Stud, Board, Finished readXY
			Angle                 degrees
			Outside               bool
			BareFloor             *num
		}
		Points []struct {
			Name string
			P    readXY
		}
		Readings []struct {
			Name, Use         string
			Measured, Reduced num
			Correction        *num
			Closing, Differs  *num
		}
	}
	readEdge struct {
		Label                    int
		Kind, Name, Meets        string
		Gap, Hidden, Joint       num
		Runs, Soft, Shows, Miter bool
		Weight                   int
	}
	readOpening struct {
		Name, Kind string
		Rect       struct{ Left, Bottom, Right, Top num }
	}
	readFace struct {
		Name, Kind, Left, Right string
		Board, Cut              readShape
		Edges                   []readEdge
		Set                     bool
		Order                   int
		Layers                  struct{ Board, Bed, BedLeast, BedMost, Tile num }
		Floor                   *struct{ Low, High num }
		Openings                []readOpening
		Holes                   []struct {
			Name   string
			Center readXY
		}
	}
	readWork struct {
		Face, Mark string
		Edges      []readEdge
		Fields     []readField
		Setting    []string
		Movement   []struct {
			Where    string
			From, To readXY
		} `json:"movementJoints"`
		Ledger *struct{ Y, AboveFloor, CutHigh, CutLow, Joint, JointMost num }
	}
	readField struct {
		Name, Tile, Bond string
		Joint            num
		Sizes            []struct{ Length, Width num }
		Region           readShape
		Angle            degrees
		Layouts          []readLayout
		Pieces           []readPiece
	}
	readLayout struct {
		Origin                        readXY
		Whole, Cut, Tiles, TilesLeast int
		Measures                      []readMeasure
	}
	readMeasure struct {
		Name   string
		None   bool
		Length *num
		Count  *int
	}
	readPiece struct {
		ID, Address          string
		Course, Column, Size int
		Turn                 int
		Whole                bool
		Area                 square
		InTile, OnFace       readShape
		Sides                []struct {
			Label int
			Name  string
			Kept  bool
		}
		Cut   *readCut
		Holes []readHole
	}
	readCut struct {
		Kind       string
		Steps      []readStep
		Neck       *num
		Visible    num
		Tolerance  num
		TaperShows bool
		Snaps      bool
	}
	readStep struct {
		Keep, Meets            string
		From, To               num
		SawFrom, SawTo, Leaves num
		Along                  *struct{ From, To num }
		Chips                  int
	}
	readHole struct {
		Name         string
		Drill        num
		Bit          *num
		Bite         bool
		FromX, FromY num
		EdgeX, EdgeY string
		CutX, CutY   *num
		ToEdge       *num
	}
	readGood struct {
		Tile  string
		Size  int
		Blank struct {
			Length, Width, Kerf num
			Quarter, Half       bool
		}
		Whole, CutFrom, Least, Breakage, Spares, Buy, PerBox, Boxes int
		Leftover                                                    *int
		Sources                                                     []readSource
	}
	readSource struct {
		Piece      string
		Tile, Turn int
		At         readXY
	}
)

// rechecker collects what is wrong.
type rechecker struct {
	plan  readPlan
	wrong []string
}

func (r *rechecker) complain(format string, args ...any) {
	r.wrong = append(r.wrong, fmt.Sprintf(format, args...))
}

// topKeys are what stands under the keys of the whole plan: each part of the recheck reads the few that it looks at.
type topKeys map[string]json.RawMessage

// readKeys fills the fields of a struct from the keys of their names.
func readKeys(keys topKeys, into any) error {
	v := reflect.ValueOf(into).Elem()
	for i := range v.NumField() {
		f := v.Type().Field(i)
		for key, raw := range keys {
			if !strings.EqualFold(key, f.Name) && key != f.Tag.Get("json") {
				continue
			}
			if err := json.Unmarshal(raw, v.Field(i).Addr().Interface()); err != nil {
				return fmt.Errorf("%s: %w", key, err)
			}
		}
	}
	return nil
}

// recheck reads the text of a plan.json and says everything that is wrong with it.
func recheck(text []byte) []string {
	var r rechecker
	var keys topKeys
	if err := json.Unmarshal(text, &keys); err != nil {
		return []string{err.Error()}
	}
	if err := readKeys(keys, &r.plan); err != nil {
		return []string{err.Error()}
	}
	r.survey()
	r.corners()
	r.closing()
	r.setFaces()
	for _, f := range r.plan.Faces {
		r.face(f)
	}
	for _, w := range r.plan.Tiling {
		r.work(w)
	}
	r.stock()
	r.buying(keys)
	r.days(keys)
	r.fits(keys)
	r.sheets(keys)
	r.boards(text)
	r.wrong = append(r.wrong, recheckWood(keys)...)
	return r.wrong
}

func (r *rechecker) faceNamed(name string) readFace {
	for _, f := range r.plan.Faces {
		if f.Name == name {
			return f
		}
	}
	r.complain("no face %s", name)
	return readFace{}
}

func summary(wrong []string) string {
	if n := len(wrong); n > 12 {
		return strings.Join(wrong[:12], "\n") + fmt.Sprintf("\n… and %d more", n-12)
	}
	return strings.Join(wrong, "\n")
}
