// Package text reads YAML into a tree in which every node and key knows its line, column and path, and collects
// everything that is wrong with the text itself. It knows nothing of rooms.
//
// It takes the bytes of a file and gives a Node and findings. What can be read is read: after a line that is no
// YAML the rest still counts. Of YAML only what a person needs on a bench is taken: one document of maps, lists and
// plain or quoted scalars. Anchors, aliases, tags, tabs in the indent, second documents and keys that are not plain
// text are findings. Every scalar is text as written: nothing here guesses that "no" is false or 1_000 a number.
package text
