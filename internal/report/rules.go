package report

import (
	"fmt"

	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// Cite words a rule that a solved face names by its id; an id without a record is shown as it is.
func Cite(id string) string {
	for _, r := range []rule.Rule{rule.FlatSmall10, rule.FlatSmall12, rule.FlatLarge10, rule.FlatLarge24} {
		if r.ID == id {
			return r.Cite()
		}
	}
	return id
}

// VolumeWords words an amount of filler: liters, and US quarts for those who measure in inches.
func VolumeWords(s unit.Style, v unit.Volume) string {
	const quart = 946_353 // mm³; exactly 57.75 cubic inches
	liters := fmt.Sprintf("%.1f L", float64(v)/float64(unit.Liter))
	if s.System == unit.Inches {
		return fmt.Sprintf("%.1f qt (%s)", float64(v)/quart, liters)
	}
	return liters
}
