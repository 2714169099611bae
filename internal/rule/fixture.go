package rule

import "dryfit/internal/unit"

const mm = unit.Millimetre

// Where the records of fixtures were read. A record that no page supports says so in its Known.
const (
	ipcSides = "IPC"                                   // quoted on a page of building questions
	upcSides = "UPC, 2021 edition"                     // the publisher's own article
	planning = "a published kitchen and bath standard" // p. 48, p. 70
	homes    = "planning guidance, as home magazines quote it"
)

// Fixtures holds the clearances of WC and basin. An edition of the IPC of 1995 still had 18 in clear in front.
var Fixtures = []Rule{
	{ID: "wc-side-ipc", Sets: IPC, Subject: WCSide, Bound: AtLeast, Limit: 15 * in, Source: ipcSides, Clause: "405.3.1", Known: Quoted,
		What: "center of a WC to a side wall, partition or vanity"},
	{ID: "wc-side-upc", Sets: UPC, Subject: WCSide, Bound: AtLeast, Limit: 15 * in, Source: upcSides, Clause: "402.5", Known: Read,
		What: "center of a WC to a side wall or obstruction"},
	{ID: "wc-side-irc", Sets: IRC, Subject: WCSide, Bound: AtLeast, Limit: 15 * in, Source: "IRC", Clause: "R307.1, P2705.1(5)", Known: FromMemory,
		What: "center of a WC to a side wall, partition or vanity"},
	{ID: "wc-side-guide", Sets: Guide, Advice: true, Subject: WCSide, Bound: AtLeast, Limit: 18 * in, Source: homes, Known: FromMemory,
		What: "center of a WC to a side wall"},
	{ID: "wc-centers-ipc", Sets: IPC, Subject: WCCenters, Bound: AtLeast, Limit: 30 * in, Source: ipcSides, Clause: "405.3.1", Known: Quoted,
		What: "center of a WC to the center of the fixture beside it"},
	{ID: "wc-centers-upc", Sets: UPC, Subject: WCCenters, Bound: AtLeast, Limit: 30 * in, Source: upcSides, Clause: "402.5", Known: Read,
		What: "center of a WC to the center of a similar fixture beside it"},
	{ID: "wc-centers-irc", Sets: IRC, Subject: WCCenters, Bound: AtLeast, Limit: 30 * in, Source: "IRC", Clause: "P2705.1(5)", Known: FromMemory,
		What: "center of a WC to the center of the fixture beside it"},
	{ID: "wc-centers-guide", Sets: Guide, Advice: true, Subject: WCCenters, Bound: AtLeast, Limit: 32 * in, Source: homes, Known: Quoted,
		What: "center of a WC to the center of the fixture beside it"},
	{ID: "wc-front-ipc", Sets: IPC, Subject: WCFront, Bound: AtLeast, Limit: 21 * in, Source: ipcSides, Clause: "405.3.1", Known: Quoted,
		What: "clear in front of a WC, to a wall, fixture or door"},
	{ID: "wc-front-irc", Sets: IRC, Subject: WCFront, Bound: AtLeast, Limit: 21 * in, Source: "IRC", Clause: "R307.1, P2705.1(5)", Known: FromMemory,
		What: "clear in front of a WC"},
	{ID: "wc-front-upc", Sets: UPC, Subject: WCFront, Bound: AtLeast, Limit: 24 * in, Source: upcSides, Clause: "402.5", Known: Read,
		What: "clear in front of a WC"},
	{ID: "wc-front-guide", Sets: Guide, Advice: true, Subject: WCFront, Bound: AtLeast, Limit: 30 * in, Source: homes, Known: Quoted,
		What: "clear in front of a fixture"},
	{ID: "basin-side-ipc", Sets: IPC, Subject: BasinSide, Bound: AtLeast, Limit: 15 * in, Source: ipcSides, Clause: "405.3.1", Known: Quoted,
		What: "center of a basin to a side wall or partition"},
	{ID: "basin-side-upc", Sets: UPC, Subject: BasinSide, Bound: AtLeast, Limit: 15 * in, Source: upcSides, Clause: "402.5", Known: Read,
		What: "center of a basin to a side wall or obstruction"},
	{ID: "basin-edge-irc", Sets: IRC, Subject: BasinEdge, Bound: AtLeast, Limit: 4 * in, Source: "IRC", Clause: "R307.1", Known: FromMemory,
		What: "edge of a basin to a side wall"},
	{ID: "basin-side-guide", Sets: Guide, Advice: true, Subject: BasinSide, Bound: AtLeast, Limit: 20 * in, Source: homes, Known: FromMemory,
		What: "center of a basin to a side wall"},
	{ID: "basin-centers-ipc", Sets: IPC, Subject: BasinCenters, Bound: AtLeast, Limit: 30 * in, Source: ipcSides, Clause: "405.3.1", Known: Quoted,
		What: "center of a basin to the center of the fixture beside it"},
	{ID: "basin-centers-upc", Sets: UPC, Subject: BasinCenters, Bound: AtLeast, Limit: 30 * in, Source: upcSides, Clause: "402.5", Known: Read,
		What: "center of a basin to the center of a similar fixture beside it"},
	{ID: "basin-centers-guide", Sets: Guide, Advice: true, Subject: BasinCenters, Bound: AtLeast, Limit: 36 * in, Source: homes, Known: FromMemory,
		What: "centers of two basins"},
	{ID: "basin-front-ipc", Sets: IPC, Subject: BasinFront, Bound: AtLeast, Limit: 21 * in, Source: ipcSides, Clause: "405.3.1", Known: Quoted,
		What: "clear in front of a basin, to a wall, fixture or door"},
	{ID: "basin-front-irc", Sets: IRC, Subject: BasinFront, Bound: AtLeast, Limit: 21 * in, Source: "IRC", Clause: "R307.1, P2705.1(5)", Known: FromMemory,
		What: "clear in front of a basin"},
	{ID: "basin-front-upc", Sets: UPC, Subject: BasinFront, Bound: AtLeast, Limit: 24 * in, Source: upcSides, Clause: "402.5", Known: Read,
		What: "clear in front of a basin"},
	{ID: "basin-front-guide", Sets: Guide, Advice: true, Subject: BasinFront, Bound: AtLeast, Limit: 30 * in, Source: homes, Known: Quoted,
		What: "clear in front of a fixture"},
}

// Setting holds how a WC is set: outlet, flange, seat, supply, paper.
var Setting = []Rule{
	{ID: "wc-roughin", Sets: Customary, Advice: true, Subject: WCRoughIn, Limit: 12 * in, Known: Practice,
		What: "center of the outlet to the finished wall of an ordinary pan; 10 and 14 in are made too, and the pan's data sheet decides"},
	{ID: "wc-flange-least", Sets: Customary, Advice: true, Subject: WCFlange, Bound: AtLeast, Limit: 0, Known: Practice,
		What: "top of the flange above the finished floor; below it a ring is wanted"},
	{ID: "wc-flange-most", Sets: Customary, Advice: true, Subject: WCFlange, Bound: AtMost, Limit: 3 * in / 8, Known: Practice,
		What: "top of the flange above the finished floor; above it the pan rocks"},
	{ID: "flange-brass", Sets: Customary, Advice: true, Subject: FlangeBrass, Bound: AtLeast, Limit: in / 8, Source: "a city plumbing code of the Midwest", Clause: "18-29-405.4", Known: Read,
		What: "thickness of a brass flange"},
	{ID: "flange-plastic", Sets: Customary, Advice: true, Subject: FlangePlastic, Bound: AtLeast, Limit: in / 4, Source: "a city plumbing code of the Midwest", Clause: "18-29-405.4", Known: Read,
		What: "thickness of a plastic flange"},
	{ID: "flange-iron", Sets: Customary, Advice: true, Subject: FlangeIron, Bound: AtLeast, Limit: in / 4, Source: "a city plumbing code of the Midwest", Clause: "18-29-405.4", Known: Read,
		What: "thickness of a cast iron flange"},
	{ID: "flange-caulk", Sets: Customary, Advice: true, Subject: CaulkDepth, Bound: AtLeast, Limit: 2 * in, Source: "a city plumbing code of the Midwest", Clause: "18-29-405.4", Known: Read,
		What: "caulking depth of a cast iron flange"},
	{ID: "wc-seat-least", Sets: Customary, Advice: true, Subject: WCSeat, Bound: AtLeast, Limit: 14 * in, Known: Practice,
		What: "top of the seat above the finished floor"},
	{ID: "wc-seat-most", Sets: Customary, Advice: true, Subject: WCSeat, Bound: AtMost, Limit: 19 * in, Known: Practice,
		What: "top of the seat above the finished floor; 17 in is the usual most where nobody asks for more"},
	{ID: "wc-tank-least", Sets: Customary, Advice: true, Subject: WCTankGap, Bound: AtLeast, Limit: in / 4, Known: Practice,
		What: "gap between the tank and the finished wall, so that the tank can be set and does not rub"},
	{ID: "wc-tank-most", Sets: Customary, Advice: true, Subject: WCTankGap, Bound: AtMost, Limit: 2 * in, Known: Practice,
		What: "gap between the tank and the finished wall, beyond which a tank that leans back wants a support"},
	{ID: "wc-supply-least", Sets: Customary, Advice: true, Subject: WCSupplyUp, Bound: AtLeast, Limit: 6 * in, Known: Practice,
		What: "height of the WC's supply, so that it clears the baseboard; 6 in left of the center is usual"},
	{ID: "wc-supply-most", Sets: Customary, Advice: true, Subject: WCSupplyUp, Bound: AtMost, Limit: 33 * in / 4, Known: Practice,
		What: "height of the WC's supply, so that the stop stays under the tank"},
	{ID: "paper-ahead-guide-least", Sets: Guide, Advice: true, Subject: PaperAhead, Bound: AtLeast, Limit: 8 * in, Source: homes, Known: FromMemory,
		What: "paper holder ahead of the bowl's front edge"},
	{ID: "paper-ahead-guide-most", Sets: Guide, Advice: true, Subject: PaperAhead, Bound: AtMost, Limit: 12 * in, Source: homes, Known: FromMemory,
		What: "paper holder ahead of the bowl's front edge"},
	{ID: "paper-up-guide", Sets: Guide, Advice: true, Subject: PaperUp, Limit: 26 * in, Source: homes, Known: FromMemory,
		What: "center of the paper holder above the finished floor"},
}
