//go:build !unix

package nest

import "time"

// cpuTime is not measured here.
func cpuTime() time.Duration { return 0 }
