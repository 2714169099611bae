package store

import (
	"context"
	"database/sql"
	"embed"
	"fmt"
	"io/fs"
	"strings"
)

//go:embed migrations/*.sql
var embedded embed.FS

// application marks the file as ours (PRAGMA application_id): "dryf" in ASCII.
const application = 0x64727966

// migrations are the steps of the database's form, 0001_….sql first. A step that has been published is never edited.
func migrations() fs.FS {
	sub, err := fs.Sub(embedded, "migrations")
	if err != nil {
		panic(err)
	}
	return sub
}

// steps reads the migrations in order and holds them to their numbering: 0001, 0002, … without a gap.
func steps(files fs.FS) ([]string, error) {
	names, err := fs.Glob(files, "*.sql") // sorted
	if err != nil {
		return nil, err
	}
	var texts []string
	for i, name := range names {
		if !strings.HasPrefix(name, fmt.Sprintf("%04d_", i+1)) {
			return nil, fmt.Errorf("migration %d is missing: found %s", i+1, name)
		}
		text, err := fs.ReadFile(files, name)
		if err != nil {
			return nil, err
		}
		texts = append(texts, string(text))
	}
	return texts, nil
}

// migrate brings a database up to the last step. Each step and its number are one transaction, so a step that fails or
// is cut off leaves the database as it was.
func migrate(ctx context.Context, db *sql.DB, files fs.FS) error {
	texts, err := steps(files)
	if err != nil {
		return err
	}
	version, err := recognize(ctx, db)
	if err != nil {
		return err
	}
	if version > len(texts) {
		return &Error{Kind: Newer, Doing: fmt.Sprintf("open a database of form %d with a program that knows %d", version, len(texts))}
	}
	for i := version; i < len(texts); i++ {
		if err := step(ctx, db, i+1, texts[i]); err != nil {
			return fmt.Errorf("bring the database to form %d: %w", i+1, err)
		}
	}
	return nil
}

// recognize tells the form of a database of ours, 0 for one with nothing in it.
func recognize(ctx context.Context, db *sql.DB) (version int, err error) {
	var app, objects int
	err = db.QueryRowContext(ctx, `SELECT (SELECT application_id FROM pragma_application_id),
		(SELECT user_version FROM pragma_user_version), (SELECT count(*) FROM sqlite_schema)`).Scan(&app, &version, &objects)
	switch {
	case err != nil:
		return 0, err
	case app == 0 && version == 0 && objects == 0:
		return 0, nil
	case app != application || version < 1:
		return 0, &Error{Kind: Foreign, Doing: "open the database"}
	}
	return version, nil
}

func step(ctx context.Context, db *sql.DB, number int, text string) error {
	tx, err := db.BeginTx(ctx, nil)
	if err != nil {
		return err
	}
	defer tx.Rollback()
	mark := fmt.Sprintf("PRAGMA application_id = %d; PRAGMA user_version = %d", application, number)
	for _, sql := range []string{text, mark} {
		if _, err := tx.ExecContext(ctx, sql); err != nil {
			return err
		}
	}
	return tx.Commit()
}
