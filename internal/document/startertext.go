package document

// starterText is the first document, with words in capitals for what differs between units and shapes of rooms.
const starterText = `# A room for dryfit. Everything behind a # is for you and is not read.
# Measure, write your readings over these, and run: dryfit check FILE
#
# A length may be written 98 3/8 or 98-3/8 or 8' 2-3/8" or 2498 mm. A bare number is in the unit named here.
# What you do not know, write as: unknown

dryfit: 1                  # the version of this kind of file
name: My washroom
units: UNITS                  # in or mm
mark: MARK                 # the finest mark that you cut to

survey:
  # Name the corners of the floor, going clockwise as seen from above.
  # If you stand in the room and face wall A-B, corner A is on your left.
  corners: CORNERS
  tape to: stud            # what the tape touched: stud, board or tile face
  tape:                    # every side, and more lines across the room than you think you need
TAPE
  level line:              # a level line round the room, and from it at each corner
    down: DOWN    # down to the bare floor
    up: UPWARD    # up to the ceiling

walls:                     # from the studs outward: board; where you set tile: bed of mortar, tile
WALLS

floor:
  build-up: [BOARD, BED, tile]
  frame: FRAME

setting:
  back wall: wall AB       # the wall you see on entering; its tile runs through into the corners
  soft joint: SOFT          # in every corner, filled with sealant and not with grout

openings:                  # windows, doors, niches
  door: {in: wall BC, kind: door, DOOR}

stub-outs:                 # pipes that come through the tile, measured to their centers
  cold water: {in: wall AB, PIPE}

in the wall:               # what you saw while the wall was open, so that no drill finds it
  cold pipe: {in: wall AB, kind: pipe, BURIED}

tiles:
  wall tile: {size: WALLTILE, kind: ceramic, joint: JOINT, warpage: WARP, turns: any, per box: 20, breakage: 2, spares: 4}
  floor tile: {size: FLOORTILE, kind: porcelain, joint: JOINT, warpage: unknown, turns: any, per box: 10}

tools: {kerf: KERF, core bits: BITS, cutter: wet saw}

lay:                       # what goes where
  wall AB:
    look for: even cuts    # or: fewest tiles, fewest cuts, lines up, holes safe
    fields:
      main: {tile: wall tile, bond: running 1/2}
  floor:
    fields:
      main: {tile: floor tile, bond: stack}

climate: {exterior: no, sun: no}
`
