package drafts

import (
	"strings"

	"ramplan/press"
)

// Where a plan says which ram it was given.
const (
	PathShelfName   = "ram.shelf_name"
	PathShelfDigest = "ram.shelf_digest"
)

// CopiedFrom gives the name of the ram that a draft's was copied from, and the digest of
// what that held then; empty where it was not copied.
func CopiedFrom(d *press.Draft) (name, digest string) {
	name, _ = d.Get(PathShelfName)
	digest, _ = d.Get(PathShelfDigest)
	if name == "" || digest == "" {
		return "", ""
	}
	return name, digest
}

// RamEntries gives what the shelf keeps of a draft's ram: its section, without
// where it was copied from, and what its controller calls the setpoints. A draft
// without an entry of a ram gives nothing.
func RamEntries(d *press.Draft) []press.Entry {
	var out []press.Entry
	ram := false
	for _, e := range d.Entries {
		switch {
		case e.Path == PathShelfName || e.Path == PathShelfDigest:
		case strings.HasPrefix(e.Path, "ram."):
			ram = true
			out = append(out, e)
		case strings.HasPrefix(e.Path, "controller."):
			out = append(out, e)
		}
	}
	if !ram {
		return nil
	}
	return out
}

// PutRam gives a copy of a draft in which the shelf's ram stands in place of the
// draft's own, and its controller's words, if it has any, in place of the draft's.
// The copy says where the ram comes from.
func PutRam(d *press.Draft, r Ram) *press.Draft {
	ram := []press.Entry{{Path: PathShelfName, Text: r.Name}, {Path: PathShelfDigest, Text: r.Digest}}
	var controller []press.Entry
	for _, e := range r.Entries {
		if within("controller", e.Path) {
			controller = append(controller, e)
		} else {
			ram = append(ram, e)
		}
	}
	out := d
	if len(controller) > 0 {
		out = replaced(out, "controller", controller)
	}
	return replaced(out, "ram", ram)
}

func within(section, path string) bool {
	return path == section || strings.HasPrefix(path, section+".")
}

// replaced gives a copy of a draft with other entries in place of a section's.
func replaced(d *press.Draft, section string, by []press.Entry) *press.Draft {
	out := &press.Draft{Entries: make([]press.Entry, 0, len(d.Entries)+len(by))}
	for _, e := range d.Entries {
		if !within(section, e.Path) {
			out.Entries = append(out.Entries, e)
			continue
		}
		out.Entries = append(out.Entries, by...)
		by = nil
	}
	out.Entries = append(out.Entries, by...)
	return out
}
