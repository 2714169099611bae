package fit

import (
	"strings"
	"testing"
)

// rows: what is changed in the room (several changes parted by ;;) | the check | what it says, worked out by hand. Of each check one row stands
// just inside its limit and one just outside. 1 in = 25.4 mm; the room's figures are beside the room.
const rows = `
# heights of the rim: carcass + top 40 - recess 12 + basin 130 = carcass + 158; guide 32 to 43 in = 812.8 to 1092.2
height: 800 => height: 654.8 | basins > bowl > rim height least | fits by 0
height: 800 => height: 654.7 | basins > bowl > rim height least | misses by -0.1
height: 800 => height: 934.2 | basins > bowl > rim height most | fits by 0
height: 800 => height: 934.3 | basins > bowl > rim height most | misses by -0.1
height: 800 => height: 742 | basins > bowl > rim for one least | fits by 0
height: 800 => height: 741.9 | basins > bowl > rim for one least | misses by -0.1
height: 800 => height: 802 | basins > bowl > rim for one most | fits by 0
height: 800 => height: 802.1 | basins > bowl > rim for one most | misses by -0.1

# basin 360 across on a top from 200 to 800, 520 deep
slab, across: center 500 => slab, across: center 380 | basins > bowl > on its top, left | fits by 0
slab, across: center 500 => slab, across: center 379.9 | basins > bowl > on its top, left | misses by -0.1
slab, across: center 500 => slab, across: center 620 | basins > bowl > on its top, right | fits by 0
slab, across: center 500 => slab, across: center 620.1 | basins > bowl > on its top, right | misses by -0.1
off: 260, => off: 340, | basins > bowl > on its top, front | fits by 0
off: 260, => off: 340.1, | basins > bowl > on its top, front | misses by -0.1
off: 260, => off: 180, | basins > bowl > on its top, back | fits by 0
off: 260, => off: 179.9, | basins > bowl > on its top, back | misses by -0.1
outline: round 360 => outline: round 700 | basins > bowl > on its top, left | misses by -50
# a cut-out keeps 2 in = 50.8 beside it: 430.8 - 180 - 200
kind: vessel => kind: drop-in ;; height: 130 => lip: 10 ;; slab, across: center 500 => slab, across: center 430.8 | basins > bowl > on its top, left | fits by 0
kind: vessel => kind: drop-in ;; height: 130 => lip: 10 ;; slab, across: center 500 => slab, across: center 430.7 | basins > bowl > on its top, left | misses by -0.1

# as high as it is deep, with its bottom: 110 + 12
height: 130 => height: 122 | basins > bowl > height | fits by 0
height: 130 => height: 121.9 | basins > bowl > height | misses by -0.1

# top left under the recess: 40 - depth against 25, or 1/2 in = 12.7 by custom
bowl, depth: 12, => bowl, depth: 15, | basins > bowl > top under recess | fits by 0
bowl, depth: 12, => bowl, depth: 15.1, | basins > bowl > top under recess | misses by -0.1
, least under: 25 =>  ;; bowl, depth: 12, => bowl, depth: 27.3, | basins > bowl > top under recess | fits by 0
, least under: 25 =>  ;; bowl, depth: 12, => bowl, depth: 27.4, | basins > bowl > top under recess | misses by -0.1
foot: round 200 => foot: round 210 | basins > bowl > recess width | told 214 mm

# center to the finished side walls (board 12.5): 15 in = 381; edge 4 in = 101.6
slab, across: center 500 => slab, across: center 393.5 | basins > bowl > center to the side wall, left | fits by 0
slab, across: center 500 => slab, across: center 393.4 | basins > bowl > center to the side wall, left | misses by -0.1
slab, across: center 500 => slab, across: center 1406.5 | basins > bowl > center to the side wall, right | fits by 0
slab, across: center 500 => slab, across: center 1406.6 | basins > bowl > center to the side wall, right | misses by -0.1
slab, across: center 500 => slab, across: center 294.1 | basins > bowl > edge to the left wall | fits by 0
slab, across: center 500 => slab, across: center 294 | basins > bowl > edge to the left wall | misses by -0.1
left:  {along: D-A, build-up: [board 12.5]} => left:  {along: D-A, build-up: [board 14]} ;; slab, across: center 500 => slab, across: center 395 | basins > bowl > center to the side wall, left | fits by 0
# from center to center 30 in = 762: the WC is at 1300
slab, across: center 500 => slab, across: center 538 | basins > bowl > centers: WC | fits by 0
slab, across: center 500 => slab, across: center 538.1 | basins > bowl > centers: WC | misses by -0.1

# outlet over the rim at 958: hands 3 in = 76.2; air gap twice 12 but not under 1 in = 25.4
up: center 1100 => up: center 1044.2 | taps > spout > hand gap | fits by 0
up: center 1100 => up: center 1044.1 | taps > spout > hand gap | misses by -0.1
up: center 1100 => up: center 993.4 | taps > spout > air gap | fits by 0
up: center 1100 => up: center 993.3 | taps > spout > air gap | misses by -0.1
opening: 12 => opening: 20 ;; up: center 1100 => up: center 1008 | taps > spout > air gap | fits by 0
opening: 12 => opening: 20 ;; up: center 1100 => up: center 1007.9 | taps > spout > air gap | misses by -0.1
# near a wall: within 3 times 12 of the opening's edge, 36 + 6 off it, 1-1/2 in = 38.1 is asked
    reach: 200 =>     reach: 42 ;; up: center 1100 => up: center 1006.1 | taps > spout > air gap | fits by 0
    reach: 200 =>     reach: 42 ;; up: center 1100 => up: center 1006 | taps > spout > air gap | misses by -0.1
    reach: 200 =>     reach: 42.1 ;; up: center 1100 => up: center 993.4 | taps > spout > air gap | fits by 0
# in a corner: both walls within 4 times 12 of the opening's edge; neither is within 3 times
    across: center 500 from A =>     across: center 66.5 from A ;;     reach: 200 =>     reach: 54 ;; up: center 1100 => up: center 1006.1 | taps > spout > air gap | fits by 0
    across: center 500 from A =>     across: center 66.5 from A ;;     reach: 200 =>     reach: 54 ;; up: center 1100 => up: center 1006 | taps > spout > air gap | misses by -0.1
    across: center 500 from A =>     across: center 66.6 from A ;;     reach: 200 =>     reach: 54 ;; up: center 1100 => up: center 993.4 | taps > spout > air gap | fits by 0
# UK practice: twice the bore, not under 20
units: mm => units: mm, rules: {sets: [UK practice]} ;; up: center 1100 => up: center 992 | taps > spout > air gap | fits by 0
units: mm => units: mm, rules: {sets: [UK practice]} ;; up: center 1100 => up: center 991.9 | taps > spout > air gap | misses by -0.1

# a spout on its body loses plate 27.5 + build-up 27.5 = 55 of its reach; less is behind the wall
fixes to: face => fixes to: body ;;     reach: 200 =>     reach: 55 | taps > spout > outlet before the wall | fits by 0
fixes to: face => fixes to: body ;;     reach: 200 =>     reach: 54.9 | taps > spout > outlet before the wall | misses by -0.1
# the bowl is open from 90 to 430 off the wall, and 170 to each side
    reach: 200 =>     reach: 430 | taps > spout > outlet over the bowl, front | fits by 0
    reach: 200 =>     reach: 430.1 | taps > spout > outlet over the bowl, front | misses by -0.1
    reach: 200 =>     reach: 90 | taps > spout > outlet over the bowl, back | fits by 0
    reach: 200 =>     reach: 89.9 | taps > spout > outlet over the bowl, back | misses by -0.1
    across: center 500 from A =>     across: center 670 from A | taps > spout > outlet over the bowl, side | fits by 0
    across: center 500 from A =>     across: center 670.1 from A | taps > spout > outlet over the bowl, side | misses by -0.1

# the band of the published case: 0.8 to 1.5 gpm, 8 to 15 mm, 20 degrees, 150 mm of fall: 14.6 to 45.6 mm, from the finished wall outward
up: center 1100 => up: center 1008 | taps > spout > water lands from | told 214.6 mm
up: center 1100 => up: center 1008 | taps > spout > water lands to | told 245.6 mm
# 1.5 gpm through 12 mm throws 32.1 mm
up: center 1100 => up: center 1008 ;; opening: 12 => opening: 12, bore: 12, flow: 1.5 gpm | taps > spout > water lands to | told 232.1 mm
# plumb, the water lands under the outlet: behind the waste, by 50 at most
angle: 20 => angle: 0 ;; off: 260, => off: 200, | taps > spout > water at the waste | fits by 0
angle: 20 => angle: 0 ;; off: 260, => off: 199.9, | taps > spout > water at the waste | misses by -0.1
angle: 20 => angle: 0 ;; off: 260, => off: 250, | taps > spout > water behind the waste | fits by 0
angle: 20 => angle: 0 ;; off: 260, => off: 250.1, | taps > spout > water behind the waste | misses by -0.1
# fall 10 in = 254: outlet 10 under 1112, bottom at 848
up: center 1100 => up: center 1112 | taps > spout > fall of the water | fits by 0
up: center 1100 => up: center 1112.1 | taps > spout > fall of the water | misses by -0.1
# 2 in = 50.8 from the stream's edge, 6.469/2 wide on each side after 242 mm, to the inside at 170: 84.03 and 315.97
angle: 20 => angle: 0 ;; off: 260, => off: 84.04, | taps > spout > splash to the front | fits by 0.01
angle: 20 => angle: 0 ;; off: 260, => off: 84.03, | taps > spout > splash to the front | misses by 0
angle: 20 => angle: 0 ;; off: 260, => off: 315.96, | taps > spout > splash to the back | fits by 0.01
angle: 20 => angle: 0 ;; off: 260, => off: 315.97, | taps > spout > splash to the back | misses by 0

# the body's label: 55 to 80 from plate to finished face; 12.7 + 4.8 + 10 = 27.5 lie on the studs
behind: 27.5} => behind: 27.5 } | taps > spout > body depth least | fits by 0
behind: 27.5} => behind: 27.4} | taps > spout > body depth least | misses by -0.1
behind: 27.5} => behind: 52.5} | taps > spout > body depth most | fits by 0
behind: 27.5} => behind: 52.6} | taps > spout > body depth most | misses by -0.1
# a plate covers 1/8 in = 3.175 all round
hole: 35 => hole: 53.65 | taps > spout > plate over the hole | fits by 0
hole: 35 => hole: 53.75 | taps > spout > plate over the hole | misses by -0.05
# fingers want 1 in = 25.4: handle 100 right of 500, at 1100, swinging 80
up: center 1100 => up: center 1063.4 | taps > spout > handle to the basin | fits by 0
up: center 1100 => up: center 1063.3 | taps > spout > handle to the basin | misses by -0.1
swings: 80 => swings: 562.1 | taps > spout > handle to the left | fits by 0
swings: 80 => swings: 562.2 | taps > spout > handle to the left | misses by -0.1
swings: 80 => swings: 1162.1 | taps > spout > handle to the right | fits by 0
swings: 80 => swings: 1162.2 | taps > spout > handle to the right | misses by -0.1
swings: 80 => swings: 124.6 | taps > spout > handle to mirror | fits by 0
swings: 80 => swings: 124.7 | taps > spout > handle to mirror | misses by -0.1
opening: 12 => opening: 12, flow: 2.2 gpm | taps > spout > flow | fits
opening: 12 => opening: 12, flow: 2.3 gpm | taps > spout > flow | misses

# clamp: basin 12 + top left 28 + washers 6 = 46
thread: 48 => thread: 46 | wastes > pipe > clamp | fits by 0
thread: 48 => thread: 45 | wastes > pipe > clamp | misses by -1
thread: 48 => thread: 45 ;; bowl, depth: 12, => bowl, depth: 13, | wastes > pipe > clamp | fits by 0
for overflow: no => for overflow: yes | wastes > pipe > overflow | misses
overflow: no, weight => overflow: yes, weight | wastes > pipe > overflow | misses
# seal 2 to 4 in = 50.8 to 101.6
seal: 51 => seal: 50.8 | wastes > pipe > seal least | fits by 0
seal: 51 => seal: 50.7 | wastes > pipe > seal least | misses by -0.1
seal: 51 => seal: 101.6 | wastes > pipe > seal most | fits by 0
seal: 51 => seal: 101.7 | wastes > pipe > seal most | misses by -0.1
units: mm => units: mm, rules: {sets: [UK practice]} ;; seal: 51 => seal: 75 | wastes > pipe > seal least | fits by 0
units: mm => units: mm, rules: {sets: [UK practice]} ;; seal: 51 => seal: 74.9 | wastes > pipe > seal least | misses by -0.1
units: mm => units: mm, rules: {sets: [UK practice]} ;; vent: 200 => vent: 1487.5 | wastes > pipe > arm length | fits by 0
units: mm => units: mm, rules: {sets: [UK practice]} ;; vent: 200 => vent: 1487.6 | wastes > pipe > arm length | misses by -0.1
# the inspector's own number goes before all
units: mm => units: mm, rules: {sets: [UPC], inspector: {trap-seal-least: 60}} ;; seal: 51 => seal: 60 | wastes > pipe > seal least | fits by 0
units: mm => units: mm, rules: {sets: [UPC], inspector: {trap-seal-least: 60}} ;; seal: 51 => seal: 59.9 | wastes > pipe > seal least | misses by -0.1
size: 1-1/4 in => size: 1-1/2 in | wastes > pipe > trap size | fits by 6.35
size: 1-1/4 in => size: 31.65 | wastes > pipe > trap size | misses by -0.1
# outlet down to the weir 24 in = 609.6: 848 - pipe - fall 185/48 = 3.85, and half a pipe 15.88
drain:     {in: back, across: center 500 from A, up: 520 => drain:     {in: back, across: center 500 from A, up: 250.5 | wastes > pipe > outlet to weir, down | fits by 0.08
drain:     {in: back, across: center 500 from A, up: 520 => drain:     {in: back, across: center 500 from A, up: 250.4 | wastes > pipe > outlet to weir, down | misses by -0.02
weir: 75 => weir: 762 | wastes > pipe > outlet to weir, across | fits by 0
weir: 75 => weir: 762.1 | wastes > pipe > outlet to weir, across | misses by -0.1
# drop 60 to 150: tailpiece's end 648, less the fall of 3.85 to the wall
drain:     {in: back, across: center 500 from A, up: 520 => drain:     {in: back, across: center 500 from A, up: 584.1 | wastes > pipe > trap drop least | fits by 0.05
drain:     {in: back, across: center 500 from A, up: 520 => drain:     {in: back, across: center 500 from A, up: 584.2 | wastes > pipe > trap drop least | misses by -0.05
drain:     {in: back, across: center 500 from A, up: 520 => drain:     {in: back, across: center 500 from A, up: 494.2 | wastes > pipe > trap drop most | fits by 0.05
drain:     {in: back, across: center 500 from A, up: 520 => drain:     {in: back, across: center 500 from A, up: 494.1 | wastes > pipe > trap drop most | misses by -0.05
off: 260, => off: 130, | wastes > pipe > trap reach least | fits by 0
off: 260, => off: 129.9, | wastes > pipe > trap reach least | misses by -0.1
off: 260, => off: 300, | wastes > pipe > trap reach most | fits by 0
off: 260, => off: 300.1, | wastes > pipe > trap reach most | misses by -0.1
# 195 aside and 260 off: 325 (3-4-5 times 65)
drain:     {in: back, across: center 500 => drain:     {in: back, across: center 695 | wastes > pipe > trap reach most | misses by -25
drain:     {in: back, across: center 500 => drain:     {in: back, across: 675 to 715 | wastes > pipe > trap reach most | misses by -25
# arm: 260 - weir 75 + build-up 27.5 + vent; IPC 5 ft = 1524, UPC 2 ft 6 in = 762, least two diameters = 63.5
vent: 200 => vent: 1311.5 | wastes > pipe > arm length | fits by 0
vent: 200 => vent: 1311.6 | wastes > pipe > arm length | misses by -0.1
units: mm => units: mm, rules: {sets: [UPC]} ;; vent: 200 => vent: 549.5 | wastes > pipe > arm length | fits by 0
units: mm => units: mm, rules: {sets: [UPC]} ;; vent: 200 => vent: 549.6 | wastes > pipe > arm length | misses by -0.1
size: 1-1/4 in => size: 1-1/2 in ;; vent: 200 => vent: 1616.3 | wastes > pipe > arm length | fits by 0
size: 1-1/4 in => size: 1-1/2 in ;; vent: 200 => vent: 1616.4 | wastes > pipe > arm length | misses by -0.1
weir: 75 => weir: 424 | wastes > pipe > arm least | fits by 0
weir: 75 => weir: 424.1 | wastes > pipe > arm least | misses by -0.1
# it falls at most its diameter, 31.75: at 1/24 over 762
fall: 1/48 => fall: 1/24 ;; vent: 200 => vent: 549.4 | wastes > pipe > arm fall most | fits by 0
fall: 1/48 => fall: 1/24 ;; vent: 200 => vent: 549.6 | wastes > pipe > arm fall most | misses by 0
fall: 1/48 => fall: 1/48  | wastes > pipe > arm fall least | fits by 0
fall: 1/48 => fall: 1/49 | wastes > pipe > arm fall least | misses by -0.18

# stops: 60 of pipe less 27.5 of build-up; 25 to 40 are wanted
cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 22, stands out: 60} => cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 22, stands out: 52.5} | stops > stop > pipe least | fits by 0
cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 22, stands out: 60} => cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 22, stands out: 52.4} | stops > stop > pipe least | misses by -0.1
cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 22, stands out: 60} => cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 22, stands out: 67.5} | stops > stop > pipe most | fits by 0
cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 22, stands out: 60} => cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 22, stands out: 67.6} | stops > stop > pipe most | misses by -0.1
cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 22 => cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 48.65 | stops > stop > plate over the hole | fits by 0
cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 22 => cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 48.75 | stops > stop > plate over the hole | misses by -0.05
cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 22 => cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 21 | stops > stop > hole least | fits by 0
cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 22 => cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 20.9 | stops > stop > hole least | misses by -0.05
cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 22 => cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 27 | stops > stop > hole most | fits by 0
cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 22 => cold:      {in: back, across: center 400 from A, up: 520 above floor, diameter: 15, hole: 27.1 | stops > stop > hole most | misses by -0.05
# a hose has a tenth of slack over its straight way: 155 up and 65 out, 168.077 x 1.1 = 184.885
serves: WC, takes: 25 to 40, plate: 55, stands out: 70, outlet: 25, hose: 400 => serves: WC, takes: 25 to 40, plate: 55, stands out: 70, outlet: 25, hose: 184.9 | stops > WC stop > hose | fits by 0.01
serves: WC, takes: 25 to 40, plate: 55, stands out: 70, outlet: 25, hose: 400 => serves: WC, takes: 25 to 40, plate: 55, stands out: 70, outlet: 25, hose: 184.8 | stops > WC stop > hose | misses by -0.09

# WC: flange 332.5 off the studs is 305 off the finished wall; its sheet wants 305 with 13 behind the tank
off: {back: 332.5 => off: {back: 319.5 | WCs > WC > rough-in | fits by 0
off: {back: 332.5 => off: {back: 319.4 | WCs > WC > rough-in | misses by -0.1
back:  {along: A-B, build-up: [board 12.7, bed 4.8, tile 10]} => back:  {along: A-B, build-up: [board 15.7, bed 4.8, tile 10]} | WCs > WC > rough-in | fits by 10
off: {back: 332.5 => off: {back: 325.85 | WCs > WC > tank gap least | fits by 0
off: {back: 332.5 => off: {back: 325.8 | WCs > WC > tank gap least | misses by -0.05
off: {back: 332.5 => off: {back: 370.3 | WCs > WC > tank gap most | fits by 0
off: {back: 332.5 => off: {back: 370.4 | WCs > WC > tank gap most | misses by -0.1
# flange 25 over the bare floor, as the build-up is: level; up to 3/8 in = 9.525 over it
flange top: 25 => flange top: 25.0 | WCs > WC > flange least | fits by 0
flange top: 25 => flange top: 24.9 | WCs > WC > flange least | misses by -0.1
flange top: 25 => flange top: 19 | WCs > WC > flange ring | told 6 mm
flange top: 25 => flange top: 34.525 | WCs > WC > flange most | fits by 0
flange top: 25 => flange top: 34.6 | WCs > WC > flange most | misses by -0.07
bolts: 57 => bolts: 45 | WCs > WC > bolts | fits by 0
bolts: 57 => bolts: 44.9 | WCs > WC > bolts | misses by -0.1
flange top: 25 => flange top: 20 ;; bolts: 57 => bolts: 50 | WCs > WC > bolts | fits by 0
flange top: 25 => flange top: 20 ;; bolts: 57 => bolts: 49.9 | WCs > WC > bolts | misses by -0.1
left: 1300 => left: 1406.5 | WCs > WC > center to the side wall, right | fits by 0
left: 1300 => left: 1406.6 | WCs > WC > center to the side wall, right | misses by -0.1
left: 1300 => left: 1181 | WCs > WC > center to vanity | fits by 0
left: 1300 => left: 1180.9 | WCs > WC > center to vanity | misses by -0.1
left: 1300 => left: 1262 | basins > bowl > centers: WC | fits by 0
left: 1300 => left: 1261.9 | basins > bowl > centers: WC | misses by -0.1
seat: 420 => seat: 355.6 | WCs > WC > seat least | fits by 0
seat: 420 => seat: 355.5 | WCs > WC > seat least | misses by -0.1
seat: 420 => seat: 482.6 | WCs > WC > seat most | fits by 0
seat: 420 => seat: 482.7 | WCs > WC > seat most | misses by -0.1
A, up: 200 => A, up: 152.4 | WCs > WC > supply least | fits by 0
A, up: 200 => A, up: 152.3 | WCs > WC > supply least | misses by -0.1
A, up: 200 => A, up: 209.55 | WCs > WC > supply most | fits by 0
A, up: 200 => A, up: 209.6 | WCs > WC > supply most | misses by -0.05
# the room is 2400 - 27.5 - 12.5 = 2360 deep; 21 in = 533.4 clear before the pan, 24 in = 609.6 by the UPC
length: 700 => length: 1813.6 | WCs > WC > clear in front | fits by 0
length: 700 => length: 1813.7 | WCs > WC > clear in front | misses by -0.1
units: mm => units: mm, rules: {sets: [UPC]} ;; length: 700 => length: 1737.4 | WCs > WC > clear in front | fits by 0
units: mm => units: mm, rules: {sets: [UPC]} ;; length: 700 => length: 1737.5 | WCs > WC > clear in front | misses by -0.1
depth: 520 => depth: 1826.6 | basins > bowl > clear in front | fits by 0
depth: 520 => depth: 1826.7 | basins > bowl > clear in front | misses by -0.1
# 48 in = 1219.2 of clear floor
depth: 520 => depth: 1140.8 | basins > bowl > clear floor | fits by 0
depth: 520 => depth: 1140.9 | basins > bowl > clear floor | misses by -0.1

# a WC on a frame: plate to finished face 10 to 70; bolts and pipe through 27.5
kind: floor => kind: wall-hung, carrier: {behind: -17.5, wall: 10 to 70, bolts: 107.5, bolts need: 80, pipe: 82.5, pipe needs: 55, bolts up: 100} ;; outlet: flange => outlet: drain | WCs > WC > frame least | fits by 0
kind: floor => kind: wall-hung, carrier: {behind: -17.6, wall: 10 to 70, bolts: 107.5, bolts need: 80, pipe: 82.5, pipe needs: 55, bolts up: 100} ;; outlet: flange => outlet: drain | WCs > WC > frame least | misses by -0.1
kind: floor => kind: wall-hung, carrier: {behind: 42.5, wall: 10 to 70, bolts: 150, bolts need: 80, pipe: 82.5, pipe needs: 55, bolts up: 100} ;; outlet: flange => outlet: drain | WCs > WC > frame most | fits by 0
kind: floor => kind: wall-hung, carrier: {behind: 42.6, wall: 10 to 70, bolts: 150, bolts need: 80, pipe: 82.5, pipe needs: 55, bolts up: 100} ;; outlet: flange => outlet: drain | WCs > WC > frame most | misses by -0.1
kind: floor => kind: wall-hung, carrier: {behind: 0, wall: 10 to 70, bolts: 107.5, bolts need: 80, pipe: 82.5, pipe needs: 55, bolts up: 100} ;; outlet: flange => outlet: drain | WCs > WC > frame bolts | fits by 0
kind: floor => kind: wall-hung, carrier: {behind: 0, wall: 10 to 70, bolts: 107.4, bolts need: 80, pipe: 82.5, pipe needs: 55, bolts up: 100} ;; outlet: flange => outlet: drain | WCs > WC > frame bolts | misses by -0.1
kind: floor => kind: wall-hung, carrier: {behind: 0, wall: 10 to 70, bolts: 107.5, bolts need: 80, pipe: 82.5, pipe needs: 55, bolts up: 100} ;; outlet: flange => outlet: drain | WCs > WC > frame pipe | fits by 0
kind: floor => kind: wall-hung, carrier: {behind: 0, wall: 10 to 70, bolts: 107.5, bolts need: 80, pipe: 82.4, pipe needs: 55, bolts up: 100} ;; outlet: flange => outlet: drain | WCs > WC > frame pipe | misses by -0.1
# a level outlet: 180 to 190 over the finished floor
kind: floor => kind: horizontal, outlet up: 180 to 190 ;; outlet: flange => outlet: WC supply ;; A, up: 200 => A, up: 180 | WCs > WC > outlet least | fits by 0
kind: floor => kind: horizontal, outlet up: 180 to 190 ;; outlet: flange => outlet: WC supply ;; A, up: 200 => A, up: 179.9 | WCs > WC > outlet least | misses by -0.1
kind: floor => kind: horizontal, outlet up: 180 to 190 ;; outlet: flange => outlet: WC supply ;; A, up: 200 => A, up: 190 | WCs > WC > outlet most | fits by 0
kind: floor => kind: horizontal, outlet up: 180 to 190 ;; outlet: flange => outlet: WC supply ;; A, up: 200 => A, up: 190.1 | WCs > WC > outlet most | misses by -0.1
# a baseboard behind a skirted pan, 13 off the wall
people: => stock: {base: {kind: stick, size: 2400 x 90 x 13}} ## trim: {base round: {kind: baseboard, stock: base}} ## people: ;; skirted: no => skirted: yes | WCs > WC > baseboard: base round | fits by 0
people: => stock: {base: {kind: stick, size: 2400 x 90 x 13.1}} ## trim: {base round: {kind: baseboard, stock: base}} ## people: ;; skirted: no => skirted: yes | WCs > WC > baseboard: base round | misses by -0.1

# the door: gap now 16 less 25 of floor; 8 wanted
gap now: 16 => gap now: 33 | openings > door > gap under it | fits by 0
gap now: 16 => gap now: 32.9 | openings > door > gap under it | misses by -0.1
rise: 0 => rise: 3 | openings > door > cut off | told 20 mm
opens: in => opens: out ;; rise: 0 => rise: 3 | openings > door > cut off | told 17 mm
, gap wanted: 8 =>  ;; gap now: 16 => gap now: 34.525 | openings > door > gap under it | fits by 0
, gap wanted: 8 =>  ;; gap now: 16 => gap now: 34.5 | openings > door > gap under it | misses by -0.02
hall floor: 19 => hall floor: 25 | openings > door > step | told 0 mm
jamb gap: 3 => jamb gap: 30 | openings > door > jamb cut off | told 0 mm

# box: 27.5 - 21.15 = 1/4 in behind the face; flush where the surface burns; gap 1/8 in = 3.175
stands out: 23.5 => stands out: 21.15 | boxes > outlet > depth | fits by 0
stands out: 23.5 => stands out: 21.1 | boxes > outlet > depth | misses by -0.05
stands out: 23.5 => stands out: 21.1 | boxes > outlet > ring | told 6.4 mm
stands out: 23.5, surface burns: no => stands out: 27.5, surface burns: yes | boxes > outlet > depth | fits by 0
stands out: 23.5, surface burns: no => stands out: 27.4, surface burns: yes | boxes > outlet > depth | misses by -0.1
stands out: 23.5 => stands out: 27.5 | boxes > outlet > proud | fits by 0
stands out: 23.5 => stands out: 27.6 | boxes > outlet > proud | misses by -0.1
receptacle, stands out: 23.5, surface burns: no, gap: 3 => receptacle, stands out: 23.5, surface burns: no, gap: 3.175 | boxes > outlet > gap | fits by 0
receptacle, stands out: 23.5, surface burns: no, gap: 3 => receptacle, stands out: 23.5, surface burns: no, gap: 3.2 | boxes > outlet > gap | misses by -0.02
plate width: 75 => plate width: 66 | boxes > outlet > plate across | fits by 0
plate width: 75 => plate width: 65.9 | boxes > outlet > plate across | misses by -0.05
plate height: 115 => plate height: 106 | boxes > outlet > plate up | fits by 0
plate height: 115 => plate height: 105.9 | boxes > outlet > plate up | misses by -0.05
# receptacle: 36 in = 914.4 from the basin's edge (80 off the wall): 910.89 along it; 12 in = 304.8 under the top at 840
center 900 from A, up: center 1000 => center 1590.8 from A, up: center 1000 | basins > bowl > receptacle | fits by 0.09
center 900 from A, up: center 1000 => center 1591 from A, up: center 1000 | basins > bowl > receptacle | misses by -0.11
center 900 from A, up: center 1000 => center 900 from A, up: center 535.2 | basins > bowl > receptacle low | fits by 0
center 900 from A, up: center 1000 => center 900 from A, up: center 535.1 | basins > bowl > receptacle low | misses by -0.1

# mirror and light
bottom 1250 => bottom 1600 | fittings > mirror > eyes of one, bottom | fits by 0
bottom 1250 => bottom 1600.1 | fittings > mirror > eyes of one, bottom | misses by -0.1
bottom 1250 => bottom 1000 | fittings > mirror > eyes of one, top | fits by 0
bottom 1250 => bottom 999.9 | fittings > mirror > eyes of one, top | misses by -0.1
kind: mirror => kind: light ;; bottom 1250 => bottom 1224 | fittings > mirror > light least | fits by 0
kind: mirror => kind: light ;; bottom 1250 => bottom 1223.9 | fittings > mirror > light least | misses by -0.1
kind: mirror => kind: light ;; bottom 1250 => bottom 1528.8 | fittings > mirror > light most | fits by 0
kind: mirror => kind: light ;; bottom 1250 => bottom 1528.9 | fittings > mirror > light most | misses by -0.1
# fan: 50 cfm when wanted, 20 always; 1.8 x 2.4 m = 46.5 sq ft
flow: 80 cfm => flow: 50 cfm | fittings > fan > fan | fits
flow: 80 cfm => flow: 49.9 cfm | fittings > fan > fan | misses
runs: when wanted, flow: 80 cfm => runs: always, flow: 20 cfm | fittings > fan > fan | fits
runs: when wanted, flow: 80 cfm => runs: always, flow: 19.9 cfm | fittings > fan > fan | misses
flow: 80 cfm => flow: 47 cfm | fittings > fan > fan by area | fits
flow: 80 cfm => flow: 46.9 cfm | fittings > fan > fan by area | misses
# ceiling 80 in = 2032: 1057 over a level line that is 975 over the floor
up: {A: 1400, B: 1400, C: 1400, D: 1400} => up: {A: 1057, B: 1057, C: 1057, D: 1057} ;; 0 to 2050 => 0 to 2000 | basins > bowl > ceiling | fits by 0
up: {A: 1400, B: 1400, C: 1400, D: 1400} => up: {A: 1056.9, B: 1056.9, C: 1056.9, D: 1056.9} ;; 0 to 2050 => 0 to 2000 | basins > bowl > ceiling | misses by -0.1
`

// accessRows are held against the 2010 ADA Standards.
const accessRows = `
height: 800 => height: 705.6 | basins > bowl > rim height most | fits by 0
height: 800 => height: 705.7 | basins > bowl > rim height most | misses by -0.1
bottom 1250 => bottom 1016 | fittings > mirror > bottom | fits by 0
bottom 1250 => bottom 1016.1 | fittings > mirror > bottom | misses by -0.1
, serves: bowl} => } ;; bottom 1250 => bottom 889 | fittings > mirror > bottom | fits by 0
, serves: bowl} => } ;; bottom 1250 => bottom 889.1 | fittings > mirror > bottom | misses by -0.1
bottom 1250 => bottom 1279.6 | fittings > mirror > top | fits by 0
bottom 1250 => bottom 1279.5 | fittings > mirror > top | misses by -0.1
seat: 420 => seat: 431.8 | WCs > WC > seat least | fits by 0
seat: 420 => seat: 431.7 | WCs > WC > seat least | misses by -0.1
seat: 420 => seat: 482.6 | WCs > WC > seat most | fits by 0
seat: 420 => seat: 482.7 | WCs > WC > seat most | misses by -0.1
left: 1300 => left: 1381.1 | WCs > WC > center to the side wall, right | fits by 0
left: 1300 => left: 1381.2 | WCs > WC > center to the side wall, right | misses by -0.1
left: 1300 => left: 1330.3 | WCs > WC > center to the nearer side wall | fits by 0
left: 1300 => left: 1330.2 | WCs > WC > center to the nearer side wall | misses by -0.1
top 880 => top 838.2 | fittings > rail > bar least | fits by 0
top 880 => top 838.1 | fittings > rail > bar least | misses by -0.1
top 880 => top 914.4 | fittings > rail > bar most | fits by 0
top 880 => top 914.5 | fittings > rail > bar most | misses by -0.1
bar: 32 => bar: 31.75 | fittings > rail > bar thick least | fits by 0
bar: 32 => bar: 31.7 | fittings > rail > bar thick least | misses by -0.05
bar: 32 => bar: 50.8 | fittings > rail > bar thick most | fits by 0
bar: 32 => bar: 50.9 | fittings > rail > bar thick most | misses by -0.1
# side bar 42 in = 1066.8 from 12 in = 304.8 to 54 in = 1371.6 off the finished wall, 27.5 off its studs
center 600 from B => center 865.7 from B ;; posts: 600 => serves: WC, posts: 986.8 | fittings > rail > side bar | fits by 0
center 600 from B => center 865.7 from B ;; posts: 600 => serves: WC, posts: 986.7 | fittings > rail > side bar | misses by -0.1
center 600 from B => center 865.7 from B ;; posts: 600 => serves: WC, posts: 986.8 | fittings > rail > side bar, near end | fits by 0
center 600 from B => center 865.8 from B ;; posts: 600 => serves: WC, posts: 986.8 | fittings > rail > side bar, near end | misses by -0.1
center 600 from B => center 865.7 from B ;; posts: 600 => serves: WC, posts: 986.8 | fittings > rail > side bar, far end | fits by 0
center 600 from B => center 865.6 from B ;; posts: 600 => serves: WC, posts: 986.8 | fittings > rail > side bar, far end | misses by -0.1
# knees: without a cabinet the trap stands from 440 up, 300 off the wall under a top 520 deep; asked there 11 in - (440 - 9 in)/6 = 244.17
slab: {on: vanity => slab: {in: back, across: 200 to 800 from A, up: 685.8 ;; vanity: {in: back, across: 200 to 800 from A, stands: wall, bottom: 250, height: 800, depth: 500} => vanity: {in: right, across: 200 to 800 from B, stands: wall, bottom: 250, height: 800, depth: 100} | basins > bowl > knees up | fits by 0
slab: {on: vanity => slab: {in: back, across: 200 to 800 from A, up: 685.7 ;; vanity: {in: back, across: 200 to 800 from A, stands: wall, bottom: 250, height: 800, depth: 500} => vanity: {in: right, across: 200 to 800 from B, stands: wall, bottom: 250, height: 800, depth: 100} | basins > bowl > knees up | misses by -0.1
slab: {on: vanity => slab: {in: back, across: 200 to 800 from A, up: 800 ;; vanity: {in: back, across: 200 to 800 from A, stands: wall, bottom: 250, height: 800, depth: 500} => vanity: {in: right, across: 200 to 800 from B, stands: wall, bottom: 250, height: 800, depth: 100} | basins > bowl > knees under pipe, trap | misses by -24.17
slab: {on: vanity => slab: {in: back, across: 200 to 800 from A, up: 800 ;; vanity: {in: back, across: 200 to 800 from A, stands: wall, bottom: 250, height: 800, depth: 500} => vanity: {in: right, across: 200 to 800 from B, stands: wall, bottom: 250, height: 800, depth: 100} ;; off: 260, => off: 235.8, | basins > bowl > knees under pipe, trap | fits by 0.03
slab: {on: vanity => slab: {in: back, across: 200 to 800 from A, up: 800 ;; vanity: {in: back, across: 200 to 800 from A, stands: wall, bottom: 250, height: 800, depth: 500} => vanity: {in: right, across: 200 to 800 from B, stands: wall, bottom: 250, height: 800, depth: 100} ;; off: 260, => off: 235.9, | basins > bowl > knees under pipe, trap | misses by -0.07
hall floor: 19 => hall floor: 12.3 | openings > door > step most | fits by 0
hall floor: 19 => hall floor: 12.2 | openings > door > step most | misses by -0.1
width: 760, thickness: 40 => width: 852.8, thickness: 40 | openings > door > clear width | fits by 0
width: 760, thickness: 40 => width: 852.7, thickness: 40 | openings > door > clear width | misses by -0.1
`

// missingRows: without a fact a check is not made, and says which is missing.
const missingRows = `
outlet: {drop: 10, => outlet: { | taps > spout > hand gap | not checked: taps > spout > outlet > drop
outlet: {drop: 10, => outlet: {drop: unknown, | taps > spout > air gap | not checked: taps > spout > outlet > drop
angle: 20 => angle: unknown | taps > spout > water at the waste | not checked: taps > spout > outlet > angle
fixes to: face => fixes to: unknown | taps > spout > outlet before the wall | not checked: taps > spout > fixes to
behind: 27.5} => behind: unknown} | taps > spout > body depth least | not checked: taps > spout > body > behind
depth: 55 to 80 => depth: unknown | taps > spout > body depth most | not checked: taps > spout > body > depth
thread: 48 => thread: unknown | wastes > pipe > clamp | not checked: wastes > pipe > thread
bowl, depth: 12, => bowl, depth: unknown, | wastes > pipe > clamp | not checked: tops > slab > recess > depth
height: 130 => height: unknown | basins > bowl > rim height most | not checked: basins > bowl > height
size: 1-1/4 in => size: unknown | wastes > pipe > arm length | not checked: wastes > pipe > trap > size
vent: 200 => vent: unknown | wastes > pipe > arm least | not checked: wastes > pipe > vent
tank gap: 13, =>  | WCs > WC > rough-in | not checked: WCs > WC > tank gap
flange top: 25 => flange top: unknown | WCs > WC > flange least | not checked: WCs > WC > flange top
hinge: left, =>  | openings > door > leaf | not checked: openings > door > leaf > hinge
gap now: 16 => gap now: unknown | openings > door > gap under it | not checked: openings > door > leaf > gap now
surface burns: no => surface burns: unknown | boxes > outlet > depth | not checked: boxes > outlet > surface burns
flow: 80 cfm => flow: unknown | fittings > fan > fan | not checked: fittings > fan > flow
eyes: 1600 => eyes: unknown | fittings > mirror > eyes of one, bottom | not checked: people > one > eyes
hole: 35 => hole: unknown | taps > spout > plate over the hole | not checked: taps > spout > hole
swings: 80 => swings: unknown | taps > spout > handle to the basin | not checked: taps > spout > handle > swings
`

func TestRows(t *testing.T) { tryRows(t, rows) }
func TestAccessRows(t *testing.T) {
	tryRows(t, accessRows, "units: mm => units: mm, rules: {sets: [US residential, ADA 2010]}")
}
func TestMissing(t *testing.T) { tryRows(t, missingRows) }

func tryRows(t *testing.T, all string, always ...string) {
	n := 0
	for line := range strings.Lines(all) {
		line = strings.TrimSuffix(line, "\n")
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		parts := strings.Split(line, " | ")
		if len(parts) != 3 {
			t.Fatalf("%q is no row", line)
		}
		n++
		edits := append([]string{}, always...)
		for _, e := range strings.Split(parts[0], " ;; ") {
			edits = append(edits, strings.ReplaceAll(e, " ## ", "\n"))
		}
		p, _ := run(t, edits...)
		k, ok := p.Find(parts[1])
		if got := k.line(); !ok || got != parts[2] {
			t.Errorf("%s\n  %s: %s, want %s", parts[0], parts[1], got, parts[2])
		}
	}
	if n < 10 {
		t.Errorf("only %d rows", n)
	}
}
