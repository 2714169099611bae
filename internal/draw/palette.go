package draw

// Black is ink and White is paper; Gray is for what stands behind.
var (
	Black = Color{0, 0, 0}
	White = Color{255, 255, 255}
	Gray  = Color{110, 110, 110}
	Pale  = Color{232, 232, 232}
)

// The eight colors that color-blind eyes tell apart: M. Okabe and K. Ito, "Color Universal Design", 2008, the
// figure with sRGB values (black is the eighth). A color never stands alone: a line type, a hatch or a word
// says the same.
var (
	Orange        = Color{230, 159, 0}
	SkyBlue       = Color{86, 180, 233}
	BluishGreen   = Color{0, 158, 115}
	Yellow        = Color{240, 228, 66}
	Blue          = Color{0, 114, 178}
	Vermilion     = Color{213, 94, 0}
	ReddishPurple = Color{204, 121, 167}
)

// Tint mixes the color with white: 0 is white, 100 the color itself. For fills behind lettering.
func (c Color) Tint(percent int) Color {
	mix := func(v uint8) uint8 { return uint8(255 - (255-int(v))*percent/100) }
	return Color{mix(c.R), mix(c.G), mix(c.B)}
}
