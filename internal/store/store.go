// Package store keeps rooms on disk: every revision of every room document, ticks and photos, in one SQLite file.
package store

import _ "modernc.org/sqlite" // the driver "sqlite", without cgo
