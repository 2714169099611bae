package report

import (
	"fmt"

	"dryfit/internal/unit"
)

// VolumeWords words an amount of filler: liters, and US quarts for those who measure in inches.
func VolumeWords(s unit.Style, v unit.Volume) string {
	const quart = 946_353 // mm³; exactly 57.75 cubic inches
	liters := fmt.Sprintf("%.1f L", float64(v)/float64(unit.Liter))
	if s.System == unit.Inches {
		return fmt.Sprintf("%.1f qt (%s)", float64(v)/quart, liters)
	}
	return liters
}
