package cli

import (
	"dryfit/internal/document"
	"dryfit/internal/export"
)

type schemaCmd struct {
	Of string `arg:"" optional:"" enum:"document,plan" default:"document" help:"Which: document (the room document) or plan (plan.json)."`
}

// Run prints the schema, for an editor that completes the document or a program that checks the plan.
func (c schemaCmd) Run(s Streams) error {
	b := document.Schema()
	if c.Of == "plan" {
		b = export.Schema()
	}
	_, err := s.Out.Write(b)
	return err
}
