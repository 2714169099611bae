package rule

import (
	"slices"

	"dryfit/internal/unit"
)

const foot = unit.Foot

// Wastes holds traps, their arms and what is hidden behind plates.
var Wastes = []Rule{
	{ID: "trap-seal-least-irc", Sets: IRC, Subject: TrapSeal, Bound: AtLeast, Limit: 2 * in, Source: "IRC", Clause: "P3201.2", Known: Read,
		What: "depth of water in a trap"},
	{ID: "trap-seal-most-irc", Sets: IRC, Subject: TrapSeal, Bound: AtMost, Limit: 4 * in, Source: "IRC", Clause: "P3201.2", Known: Read,
		What: "depth of water in a trap"},
	{ID: "trap-seal-least", Sets: IPC | UPC, Subject: TrapSeal, Bound: AtLeast, Limit: 2 * in, Source: "IPC 1002.4, UPC 1005.0", Known: FromMemory,
		What: "depth of water in a trap"},
	{ID: "trap-seal-most", Sets: IPC | UPC, Subject: TrapSeal, Bound: AtMost, Limit: 4 * in, Source: "IPC 1002.4, UPC 1005.0", Known: FromMemory,
		What: "depth of water in a trap"},
	{ID: "trap-seal-ontario", Sets: Ontario, Subject: TrapSeal, Bound: AtLeast, Limit: 38 * mm, Source: "Ontario Building Code", Clause: "B 7.2.3.1", Known: Read,
		What: "depth of water in a trap"},
	{ID: "trap-seal-uk", Sets: UK, Subject: TrapSeal, Bound: AtLeast, Limit: 75 * mm, Source: "Approved Document H1, table 1", Known: FromMemory,
		What: "depth of water in a basin's trap"},
	{ID: "weir-down", Sets: IRC, Subject: WeirDown, Bound: AtMost, Limit: 24 * in, Source: "IRC", Clause: "P3201.6", Known: Quoted,
		What: "basin outlet down to the weir of its trap"},
	{ID: "weir-across", Sets: IRC, Subject: WeirAcross, Bound: AtMost, Limit: 30 * in, Source: "IRC", Clause: "P3201.6", Known: Quoted,
		What: "basin outlet across to the weir of its trap"},
	{ID: "weir-down-codes", Sets: IPC | UPC, Subject: WeirDown, Bound: AtMost, Limit: 24 * in, Source: "IPC 1002.1, UPC 1001.2", Known: FromMemory,
		What: "basin outlet down to the weir of its trap"},
	{ID: "weir-across-ipc", Sets: IPC, Subject: WeirAcross, Bound: AtMost, Limit: 30 * in, Source: "IPC", Clause: "1002.1", Known: FromMemory,
		What: "basin outlet across to the weir of its trap"},
	{ID: "trap-basin", Sets: IRC | IPC, Subject: BasinTrap, Bound: AtLeast, Limit: 5 * in / 4, Source: "IRC P3201.7, IPC 709.1", Known: FromMemory,
		What: "size of a basin's trap"},
	{ID: "trap-bath", Sets: IRC | IPC, Subject: BathTrap, Bound: AtLeast, Limit: 3 * in / 2, Source: "IRC P3201.7, IPC 709.1", Known: FromMemory,
		What: "size of a bath's trap"},
	{ID: "trap-shower", Sets: IRC | IPC, Subject: ShowerTrap, Bound: AtLeast, Limit: 2 * in, Source: "IRC P3201.7, IPC 709.1", Known: FromMemory,
		What: "size of a shower's trap"},
	{ID: "trap-basin-uk", Sets: UK, Subject: BasinTrap, Bound: AtLeast, Limit: 32 * mm, Source: "Approved Document H1, table 1", Known: FromMemory,
		What: "size of a basin's trap"},
	{ID: "arm-least", Sets: IRC | IPC | UPC, Subject: ArmLeast, Bound: AtLeast, Number: 2, Unit: "diameters", Source: "a builders' field guide on venting", Known: Quoted,
		What: "trap weir to vent, in diameters of the pipe: nearer is a crown vent"},
	{ID: "arm-drop", Sets: IRC | IPC | UPC, Subject: ArmDrop, Bound: AtMost, Number: 1, Unit: "diameters", Source: "IPC 909.2, IRC P3105.2, UPC 1002.2", Known: FromMemory,
		What: "drop over a trap arm, in diameters of the pipe: more empties the trap"},
}

// Supplies holds stubs, plates and hoses.
var Supplies = []Rule{
	{ID: "stub-out", Sets: Customary, Advice: true, Subject: StubOut, Bound: AtLeast, Limit: in, Known: Practice,
		What: "bare tube beyond the finished face, for the plate and the stop's nut"},
	{ID: "plate-cover", Sets: Customary, Advice: true, Subject: PlateCover, Bound: AtLeast, Limit: in / 8, Known: Practice,
		What: "plate over the rim of the hole that is drilled, all round"},
	{ID: "pipe-clear-least", Sets: Customary, Advice: true, Subject: PipeClear, Bound: AtLeast, Limit: 3 * mm, Known: Practice,
		What: "hole in the tile beyond the pipe, all round"},
	{ID: "pipe-clear-most", Sets: Customary, Advice: true, Subject: PipeClear, Bound: AtMost, Limit: 6 * mm, Known: Practice,
		What: "hole in the tile beyond the pipe, all round"},
	{ID: "hose-slack", Sets: Customary, Advice: true, Subject: HoseSlack, Bound: AtLeast, Ratio: unit.One * 11 / 10, Known: Practice,
		What: "length of a hose over the straight distance it spans"},
}

// TrapArms holds the tables of trap-to-vent lengths by size of pipe. The IPC's lengths and the UPC's are quoted in a builders' field
// guide and a plumbers' handbook (fig. 5.18); the falls are from memory.
var TrapArms = slices.Concat(
	arms("ipc", IPC|IRC, "IPC 909.1, IRC P3105.1",
		arm{5 * in / 4, 5 * foot, in / 4}, arm{3 * in / 2, 6 * foot, in / 4}, arm{2 * in, 8 * foot, in / 4},
		arm{3 * in, 12 * foot, in / 8}, arm{4 * in, 16 * foot, in / 8}),
	arms("upc", UPC, "UPC 1002.2",
		arm{5 * in / 4, 30 * in, in / 4}, arm{3 * in / 2, 42 * in, in / 4}, arm{2 * in, 5 * foot, in / 4},
		arm{3 * in, 6 * foot, in / 4}, arm{4 * in, 10 * foot, in / 4}),
	[]Rule{
		{ID: "arm-length-uk-32", Sets: UK, Subject: ArmLength, Bound: AtMost, Size: 32 * mm, Limit: 1700 * mm, Source: "Approved Document H1, diagram 3", Known: FromMemory,
			What: "unvented branch of a basin"},
		{ID: "arm-length-uk-40", Sets: UK, Subject: ArmLength, Bound: AtMost, Size: 40 * mm, Limit: 3000 * mm, Source: "Approved Document H1, diagram 3", Known: FromMemory,
			What: "unvented branch"},
	})

// arm is one row of a table: size of pipe, longest arm, least fall in a foot.
type arm struct{ size, most, fall unit.Length }

// arms makes the records of one table: two for each row.
func arms(name string, sets Sets, source string, rows ...arm) []Rule {
	var out []Rule
	for _, a := range rows {
		size := unit.DefaultStyle(unit.Inches).Bare(a.size)
		out = append(out,
			Rule{ID: "arm-length-" + name + "-" + size, Sets: sets, Subject: ArmLength, Bound: AtMost, Size: a.size, Limit: a.most,
				Source: source, Known: Quoted, What: "trap weir to vent with a " + size + " in pipe"},
			Rule{ID: "arm-fall-" + name + "-" + size, Sets: sets, Subject: ArmFall, Bound: AtLeast, Size: a.size, Limit: a.fall, Per: foot,
				Source: source, Known: FromMemory, What: "fall of a trap arm of a " + size + " in pipe"})
	}
	return out
}
