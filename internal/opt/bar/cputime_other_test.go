//go:build !unix

package bar

import "time"

// cpuTime is not measured here.
func cpuTime() time.Duration { return 0 }
