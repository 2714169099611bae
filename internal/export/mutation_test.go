package export_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"maps"
	"math/big"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// A mutation changes one thing of a plan.json. The path walks down it: a key, an index, or [key], [key=value] and [key~word] for
// the first entry of a list that has the key with something in it, with that value (its spaces written as _), with that word somewhere in it.
type mutation struct{ path, change, want string }

var mutations = []mutation{
	{"survey area", "+1", "survey: area"},
	{"survey corners 1 stud x", "+0.5", "is off its corners"},
	{"survey readings [use=used] correction", "+0.01", "is off its corners"},
	{"survey readings [use=used] reduced", "-1", "is off its corners"},
	{"survey corners 2 angle", "+0.001", "angle of its finished faces"},
	{"survey corners 0 outside", "=true", "angle of its finished faces"},
	{"survey corners 0 board x", "+0.1", "its layers are"},
	{"survey corners 3 finished y", "-0.1", "its layers are"},
	{"survey closing", "+0.1", "largest closing error"},
	{"survey freedom", "-1", "freedom is"},
	{"survey readings [use=superseded] differs", "+1", "no later one"},
	{"faces [kind=wall] set", "=false", "and laid"},
	{"faces 1 order", "=1", "order of setting"},
	{"faces [openings] openings 0 rect left", "-1", "lie in"},
	{"faces [openings] openings 0 rect right", "-1", "not on the board's outline"},
	{"faces [kind=wall] floor low", "-1", "its floor is"},
	{"faces [kind=wall] floor high", "+1", "its floor is"},
	{"faces [kind=wall] layers bed", "+1", "its layers are"},
	{"faces [kind=wall] edges 1 hidden", "+1", "is not the face's"},
	{"faces [kind=wall] cut 0 0 x", "+0.25", "off its gap"},
	{"faces [kind=wall] edges 0 gap", "+0.25", "off its gap"},
	{"faces [kind=wall] edges 1 label", "=9", "not among its edges"},
	{"tiling [ledger] ledger y", "+1", "ledger"},
	{"tiling [ledger] ledger cutHigh", "+1", "ledger"},
	{"tiling [ledger] ledger aboveFloor", "-1", "ledger"},
	{"tiling 0 movementJoints 0 where", `="nowhere"`, "movement joint"},
	{"tiling 0 movementJoints 0 to x", "+0.5", "no movement joint along"},
	{"tiling 0 movementJoints 0", "drop", "movement joint"},
	{"tiling 0 edges 4 weight", "+1", "is not the face's"},
	{"tiling 0 setting 3", `="9-99"`, "order of setting"},
	{"tiling 0 setting 0", "drop", "order of setting"},
	{"tiling 0 setting 0", "twice", "order of setting"},
	{"tiling 0 fields 0 pieces 2 address", `="2-2"`, "its id is not made"},
	{"tiling 0 fields 0 joint", "+1", "the joint is"},
	{"tiling 0 fields 0 angle", "+1", "turned and moved"},
	{"tiling 0 fields 0 sizes 0 length", "+2", "tile's"},
	{"tiling 0 fields 0 region 0 0 x", "-400", "outside of the face"},
	{"tiling 0 fields 0 region 0 0 x", "+40", "outside of its field"},
	{"tiling 0 fields 0 layouts 0 whole", "+1", "whole and"},
	{"tiling 0 fields 0 layouts 0 tilesLeast", "+99", "at least"},
	{"tiling 0 fields 0 layouts 0 origin x", "+3", "whole tiles from the origin"},
	{"tiling 0 fields 0 layouts 0 measures [name=tiles_to_buy] count", "+1", "tiles to buy are"},
	{"tiling 0 fields 0 layouts 0 measures [name=number_of_cuts] count", "+9", "tiles are cut"},
	{"tiling 0 fields 0 layouts 0 measures [count] none", "=true", "is there and is not"},
	{"tiling 0 fields 0 pieces 4", "drop", "nothing covers"},
	{"tiling 0 fields 0 pieces 4", "twice", "two pieces are"},
	{"tiling 0 fields 0 pieces [cut] area", "+0.00000000390625", "outline's area"},
	{"tiling 0 fields 0 pieces [cut] inTile 0 0 x", "+0.5", "outline's area"},
	{"tiling 0 fields 0 pieces [cut] onFace 0 0 x", "-0.5", "turned and moved"},
	{"tiling 0 fields 0 pieces [cut] turn", "=2", "turned and moved"},
	{"tiling 0 fields 0 pieces [cut] whole", "=true", "said to be whole"},
	{"tiling 0 fields 0 pieces [whole] whole", "=false", "nothing is cut off it"},
	{"tiling 0 fields 0 pieces [whole] inTile 0 0 x", "+1", "outline's area"},
	{"tiling 0 fields 0 pieces [whole] sides 0 kept", "=false", "need not be kept"},
	{"tiling 0 fields 0 pieces [cut] sides 0", "drop", "kinds of sides"},
	{"tiling 0 fields 0 pieces [cut] cut steps 0 sawFrom", "+3.175", "above"},
	{"tiling 0 fields 0 pieces [cut] cut steps 0 sawFrom", "-3.175", "more than a mark below"},
	{"tiling 0 fields 0 pieces [cut] cut steps 0 sawFrom", "-0.5", "no mark of the tape"},
	{"tiling 0 fields 0 pieces [cut] cut steps 0 leaves", "+1", "before rounding"},
	{"tiling 0 fields 0 pieces [cut] cut steps 0 keep", `="top"`, "its steps make a piece"},
	{"tiling 0 fields 0 pieces [cut] cut visible", "+400", "shows"},
	{"tiling 0 fields 0 pieces [cut] cut visible", "-70", "shows"},
	{"tiling 0 fields 0 pieces [holes] holes 0 fromX", "+1", "not where the face has it"},
	{"tiling 0 fields 0 pieces [holes] holes 0 toEdge", "+1", "from the edge"},
	{"tiling [fields~cutY] fields [pieces~cutY] pieces [holes~cutY] holes [cutY] cutY", "+1", "no cut is so far"},
	{"tiling 0 fields 0 pieces [holes] holes 0 bit", "=1", "the bit is less"},
	{"tiling 0 fields 0 pieces [holes] holes 0", "drop", "it is not drilled"},
	{"tiling 0 fields 0 pieces [holes] holes 0 fromY", "+500", "not in the piece"},
	{"goods 0 whole", "+1", "whole tiles"},
	{"goods 0 buy", "-1", "parts of what to buy"},
	{"goods 0 boxes", "-1", "boxes of"},
	{"goods 0 leftover", "+1", "boxes of"},
	{"goods 0 least", "+50", "at least"},
	{"goods 0 cutFrom", "-1", "tile"},
	{"goods 0 blank kerf", "+200", "the kerf is"},
	{"goods 0 sources 0", "drop", "comes from 0 tiles"},
	{"goods 0 sources 0", "twice", "comes from 2 tiles"},
	{"goods 0 sources 0 at x", "+1000", "lies outside of tile"},
	{"goods 0 sources 0 turn", "=1", "turns are not allowed"},
	{"goods 0 sources 0 piece", `="BW 0-0"`, "which is no piece"},
	{"goods 0 sources 1 tile", "=99", "tile 99"},
	{"days jobs [state=planned] minutes", "+20", "of work in sessions of"},
	{"days jobs [state=planned] hands", "+1", "hands, and has"},
	{"days jobs [state=planned] latest", `="2026-01-01 8:00"`, "latest start"},
	{"days jobs 5", "twice", "begins later"},
	{"days waits 0 labelMinutes", "+600000", "where"},
	{"days waits [before] to", `="2027-01-01 8:00"`, "does not wait"},
	{"days waits [slower=true] slower", "=false", "where"},
	{"days finish", `="2027-01-01 8:00"`, "the finish is"},
	{"days bound", `="2027-01-01 8:00"`, "the bound"},
	{"days chain last job", "=0", "does not lead to the finish"},
	{"days trips days", "+1", "work in the room on"},
	{"days trips least", "+99", "work in the room on"},
	{"days hired 0 count days", "+1", "is kept"},
	{"days hired 0 to", `="2027-01-01"`, "is kept"},
	{"days without 1 dates 0", "drop", "without"},
	{"days batches 0 pieces 1", "drop", "do not set all"},
	{"days batches 0 area", "+1", "do not set all"},
	{"days batches 2", "twice", "do not set all"},
	{"takeoff lines 0 waste", "+0.01", "its parts with the waste are"},
	{"takeoff lines 0 parts 0 takes kilograms", "+1", "its parts with the waste are"},
	{"takeoff faces 0 comb", "+1", "its trowel leaves"},
	{"takeoff faces 0 trowel depth", "+1", "its trowel leaves"},
	{"takeoff faces 0 skim", "+1", "its bed takes"},
	{"takeoff faces 0 bed", "+0.1", "its bed takes"},
	{"takeoff faces 0 area", "+100", "its tile covers"},
	{"takeoff faces 0 jointsArea", "+100", "its joints cover"},
	{"order lines 0 need pieces", "+1", "the order needs"},
	{"order lines 0 packs 0 count", "+1", "packs at"},
	{"order lines 0 packs 0 price", "+0.01", "packs at"},
	{"order lines [have~kilograms] have kilograms", "+1", "its packs hold"},
	{"order lines [left~kilograms] left kilograms", "+1", "its packs hold"},
	{"order lines 4 cost", "+1", "its packs cost"},
	{"order trips 0 goods", "+1", "trip to"},
	{"order trips 0 delivery", "+1", "free, and costs"},
	{"order trips 0 delivery", "+1", "its deliveries are"},
	{"stock lots 0 money", "+1", "it costs"},
	{"stock lots 0 least", "+1000", "it costs"},
	{"stock lots 0 buy 0 count", "+1", "is not what is bought"},
	{"stock lots 0 used 0 cuts 0 set", "+1", "divides what is not there"},
	{"stock lots 0 kerf", "+1", "divides what is not there"},
	{"lining 0 sheets 0 rect right", "+20", "is sawn to another size"},
	{"lining 0 sheets 0 rect left", "+1", "its bounds are not those"},
	{"lining 0 sheets 0 covers 0 0 x", "-30", "reaches out of the board"},
	{"lining 0 sheets 0", "drop", "are not covered"},
	{"lining 0 sheets 0", "twice", "lies on"},
	{"stock lots 0 used 0 panels 0 rect x", "+1", "does not fall off"},
	{"stock pieces [stock=birch_3/4] sawn width", "+1", "does not fall off"},
	{"stock pieces 0 from", "+1", "is said to come from elsewhere"},
	{"order goods", "+0.01", "its lines are"},
	{"order total", "+0.01", "its total is"},
	{"wood cabinets 0 pieces 0 length", "+1", "not those of its box"},
	{"wood cabinets 0 pieces 0 box hi x", "+1", "not those of its box"},
	{"wood cabinets 0 asked hi y", "+1", "outside that was asked for"},
	{"wood cabinets 0 pieces [channels] channels 0 depth", "+500", "no cut into its"},
	{"wood tops 0 holes 0 left 0 left", "+1", "leaves another width"},
	{"wood tops 0 glueUp jointed 0", "-1", "not so wide together"},
	{"wood tops 0 glueUp area", "+100", "another area"},
	{"wood tops 0 glueUp boardFeet", "-1", "board feet"},
	{"wood tops 0 movement slots 1 away", "+1", "not so far from the fixed line"},
	{"wood tops 0 movement slots 1 long", "-8", "a slot is not long enough"},
	{"wood scribes 0 line 1 cut", "+1", "not what its gap leaves"},
	{"wood scribes 0 needs", "+1", "needs another width"},
	{"wood trim 1 runs 0 pieces 0 short", "+90", "its short point is longer"},
	{"order tax", "+0.01", "its total is"},
}

// Each mutation of the demo's plan is found, for the reason that it should be.
func TestRecheckFindsMutations(t *testing.T) {
	text := demos()[0].json
	if wrong := recheck(text); len(wrong) > 0 {
		t.Fatalf("before any change:\n%s", summary(wrong))
	}
	tree := treeOf(t, text)
	for _, m := range mutations {
		changed, err := m.apply(tree)
		if err != nil {
			t.Errorf("%s %s: %v", m.path, m.change, err)
			continue
		}
		if wrong := strings.Join(recheck(changed), "\n"); !strings.Contains(wrong, m.want) {
			t.Errorf("%s %s: want %q, got %q", m.path, m.change, m.want, wrong)
		}
	}
}

// treeOf reads a text without knowing what it is about.
func treeOf(t *testing.T, text []byte) any {
	t.Helper()
	d := json.NewDecoder(bytes.NewReader(text))
	d.UseNumber()
	var tree any
	if err := d.Decode(&tree); err != nil {
		t.Fatal(err)
	}
	return tree
}

// apply returns the text of a tree with the change made; the tree stays as it is.
func (m mutation) apply(tree any) ([]byte, error) {
	steps := strings.Split(m.path, " ")
	tree, err := m.walk(tree, steps)
	if err != nil {
		return nil, err
	}
	return json.Marshal(tree)
}

func (m mutation) walk(v any, steps []string) (any, error) {
	if len(steps) == 0 {
		return m.value(v)
	}
	switch v := v.(type) {
	case map[string]any:
		inner, ok := v[steps[0]]
		if !ok {
			return nil, fmt.Errorf("no key %s", steps[0])
		}
		var err error
		v = maps.Clone(v)
		v[steps[0]], err = m.walk(inner, steps[1:])
		return v, err
	case []any:
		return m.inList(v, steps)
	}
	return nil, fmt.Errorf("%s: neither object nor list", steps[0])
}

func (m mutation) inList(v []any, steps []string) (any, error) {
	i := indexOf(v, steps[0])
	switch {
	case i < 0 || i >= len(v):
		return nil, fmt.Errorf("no entry %s", steps[0])
	case len(steps) == 1 && m.change == "drop":
		return append(v[:i:i], v[i+1:]...), nil
	case len(steps) == 1 && m.change == "twice":
		return append(v[:len(v):len(v)], v[i]), nil
	}
	var err error
	v = slices.Clone(v)
	v[i], err = m.walk(v[i], steps[1:])
	return v, err
}

// indexOf finds the entry that a step of a path means; -1 if there is none.
func indexOf(list []any, step string) int {
	if step == "last" {
		return len(list) - 1
	}
	want, ok := strings.CutPrefix(strings.TrimSuffix(step, "]"), "[")
	if !ok {
		i, err := strconv.Atoi(step)
		if err != nil {
			return -1
		}
		return i
	}
	key, word, some := strings.Cut(want, "~")
	key, value, exact := strings.Cut(strings.ReplaceAll(key, "_", " "), "=")
	for i, e := range list {
		o, _ := e.(map[string]any)
		text := fmt.Sprint(o[key])
		if exact && text == value || some && strings.Contains(text, word) || !exact && !some && o[key] != nil && text != "false" && text != "[]" {
			return i
		}
	}
	return -1
}

// value is a plain value, changed: another, or a number with something added.
func (m mutation) value(v any) (any, error) {
	if other, ok := strings.CutPrefix(m.change, "="); ok {
		return json.RawMessage(other), nil
	}
	n, isNumber := v.(json.Number)
	by, ok := new(big.Rat).SetString(m.change)
	if !isNumber || !ok {
		return nil, fmt.Errorf("%v can not take %s", v, m.change)
	}
	was, _ := new(big.Rat).SetString(n.String())
	text := was.Add(was, by).FloatString(14)
	return json.RawMessage(strings.TrimSuffix(strings.TrimRight(text, "0"), ".")), nil
}
