// Package wood holds what is published about wood as a material: how it moves with its moisture, what moisture it takes from the
// air, the sizes that lumber and plywood are sold in, how closely joints must meet, and what glue wants.
//
// It takes sizes, moisture contents and climates and gives lengths and shares, each rounded once by floor(x + 1/2). It knows no
// room, no part and no document. Every table names its source; what is known from memory or is common practice says so.
//
// Moisture contents and relative humidities are unit.Ratio: the share of water by dry weight, and of what the air could hold.
package wood

import "dryfit/internal/unit"

// Percent is one percent as a Ratio.
const Percent = unit.One / 100

// Handbook is the source of tables and equations that say no other.
const Handbook = "Wood Handbook, FPL-GTR-190"
