// Package schedule plans the days: which job when and by whom, and what waits on what.
//
// It takes the document, the solved room and the laid tile, makes jobs from what is really there (a face that is laid, a
// membrane in a build-up, a pipe in a wall) and from the user's own, and gives each hours, hands, a place and what it waits for.
// Work runs in the hours that people have; curing runs on the clock, slower in the cold where the label's good is cement. What
// has been done is fixed, and the rest is planned anew from now. opt/sched finds the days; what it could not prove is told.
//
// Jobs have names that stay: "set basin wall 1". Done marks and other jobs refer to them. Times are quarter hours; a job or a wait
// is rounded up to one. Nothing here reads a clock: "now" is in the document.
package schedule
