package rule

import "dryfit/internal/unit"

// Basins holds heights of rims and tops, the room for hands and the water's way. Heights fit the people who will use them:
// all but the accessible ones are advice.
var Basins = []Rule{
	{ID: "rim-guide-least", Sets: Guide, Advice: true, Subject: RimHeight, Bound: AtLeast, Limit: 32 * in, Source: planning, Clause: "p. 48", Known: Quoted,
		What: "rim of a basin above the finished floor, to fit the user"},
	{ID: "rim-guide-most", Sets: Guide, Advice: true, Subject: RimHeight, Bound: AtMost, Limit: 43 * in, Source: planning, Clause: "p. 48", Known: Quoted,
		What: "rim of a basin above the finished floor, to fit the user"},
	{ID: "vanity-height-least", Sets: Customary, Advice: true, Subject: VanityHeight, Bound: AtLeast, Limit: 30 * in, Known: Practice,
		What: "top of a vanity; 30 to 32 in in older rooms, 34 to 36 in in newer ones"},
	{ID: "vanity-height-most", Sets: Customary, Advice: true, Subject: VanityHeight, Bound: AtMost, Limit: 36 * in, Known: Practice,
		What: "top of a vanity; 30 to 32 in in older rooms, 34 to 36 in in newer ones"},
	{ID: "vanity-depth", Sets: Customary, Advice: true, Subject: VanityDepth, Limit: 21 * in, Known: Practice, What: "depth of an ordinary vanity"},
	{ID: "hand-gap", Sets: Customary, Advice: true, Subject: HandGap, Bound: AtLeast, Limit: 3 * in, Known: Practice,
		What: "tap outlet above the rim of the basin, so that hands pass between"},
	{ID: "splash-fall", Sets: Customary, Advice: true, Subject: SplashFall, Bound: AtMost, Limit: 10 * in, Known: Practice,
		What: "fall of the water to the bottom of the basin, before it splashes out"},
	{ID: "splash-margin", Sets: Customary, Advice: true, Subject: SplashMargin, Bound: AtLeast, Limit: 2 * in, Known: Practice,
		What: "where the water lands to the inside edge of the bowl"},
	{ID: "jet-at-waste", Sets: Customary, Advice: true, Subject: JetBehind, Bound: AtLeast, Limit: 0, Known: Practice,
		What: "the water lands behind the waste or on it, never in front"},
	{ID: "jet-behind-waste", Sets: Customary, Advice: true, Subject: JetBehind, Bound: AtMost, Limit: 50 * mm, Known: Practice,
		What: "the water lands at most this far behind the waste; 25 to 50 mm behind is usual"},
	{ID: "jet-bore-least", Sets: Customary, Advice: true, Subject: JetBore, Bound: AtLeast, Limit: 8 * mm, Known: Practice,
		What: "bore of the stream that leaves a basin tap"},
	{ID: "jet-bore-most", Sets: Customary, Advice: true, Subject: JetBore, Bound: AtMost, Limit: 15 * mm, Known: Practice,
		What: "bore of the stream that leaves a basin tap"},
	{ID: "handle-clear", Sets: Customary, Advice: true, Subject: HandleClear, Bound: AtLeast, Limit: in, Known: Practice,
		What: "tap handle, over its whole swing, to wall, basin, mirror or splash: room for fingers"},
	{ID: "wood-under", Sets: Customary, Advice: true, Subject: WoodUnder, Bound: AtLeast, Limit: in / 2, Known: Practice,
		What: "material left under a recess in a top"},
	{ID: "wood-beside", Sets: Customary, Advice: true, Subject: WoodBeside, Bound: AtLeast, Limit: 2 * in, Known: Practice,
		What: "material left between a cut-out and the edge of a top"},
}

// Taps holds flows. US EPA's specification for high-efficiency basin taps was read itself.
var Taps = []Rule{
	{ID: "tap-flow", Sets: Guide, Advice: true, Subject: TapFlow, Bound: AtMost, Flow: 3 * unit.GallonMinute / 2, Source: "US EPA specification for high-efficiency basin taps", Known: Read,
		What: "flow of a basin tap at 60 psi"},
	{ID: "tap-flow-least", Sets: Guide, Advice: true, Subject: TapFlowLeast, Bound: AtLeast, Flow: 4 * unit.GallonMinute / 5, Source: "US EPA specification for high-efficiency basin taps", Known: Read,
		What: "flow of a basin tap at 20 psi"},
	{ID: "tap-flow-federal", Sets: IRC | IPC | UPC, Subject: TapFlow, Bound: AtMost, Flow: 11 * unit.GallonMinute / 5, Source: "US federal limit, as the EPA quotes it", Known: Quoted,
		What: "flow of a basin tap at 60 psi"},
	{ID: "tap-flow-public", Sets: IPC | UPC, Subject: TapFlowPublic, Bound: AtMost, Flow: unit.GallonMinute / 2, Source: "US federal limit, as the EPA quotes it", Known: Quoted,
		What: "flow of a tap in a public washroom"},
}
