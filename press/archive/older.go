package archive

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// keepOlder copies an archive of an older schema before it is brought forward, so
// that the program that made it can still be had back.
func keepOlder(ctx context.Context, path string) error {
	db, schema, err := look(ctx, path)
	if err != nil {
		return nil // new, or no archive: opening it says so
	}
	if err := db.Close(); err != nil {
		return err
	}
	if schema == Schema() {
		return nil
	}
	part, _, err := copyChecked(ctx, path, filepath.Dir(path))
	if err != nil {
		return err
	}
	defer os.Remove(part)
	err = place(part, strings.TrimSuffix(path, ".db")+fmt.Sprintf("-schema%d.db", schema))
	if errors.Is(err, fs.ErrExist) {
		return nil // an older copy is the better one
	}
	return err
}
