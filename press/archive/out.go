package archive

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"unicode"

	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"

	"ramplan/press/issue"
)

// Names of the plain files of a plan, which has a folder of its own.
const (
	planFile    = "plan.json"
	draftFile   = "draft.json"
	ramsFolder  = "rams"
	revisionOf  = "revision-"   // then the letter
	issueEnding = ".issue.json" // what is said of a revision
)

// issueFormat is the name of the format of what is said of a revision.
const issueFormat = "ramplan.issue/1"

// An issueFile is what is said of an issued revision, as a plain file.
type issueFile struct {
	Format     string `json:"format"`
	Letter     string `json:"letter"`
	Issued     string `json:"issued"`
	Prepared   string `json:"prepared"`
	Checked    string `json:"checked"`
	Approved   string `json:"approved"`
	Reason     string `json:"reason"`
	Despite    string `json:"despite,omitempty"`
	Second     string `json:"second,omitempty"`
	Drill      string `json:"drill,omitempty"`
	PlanDigest string `json:"plan_digest"`
}

// Moved tells what went out of an archive, or came in.
type Moved struct {
	Plans, Revisions, Rams int
	Studies                int      // shift checks too
	Binned                 int      // plans in the bin, which are left there
	Trainings              int      // training records, which stay in the archive
	Faults                 []string // what could not be moved, or only an older state of it
}

func (m *Moved) String() string {
	parts := []string{counted(m.Plans, "plan"), counted(m.Revisions, "revision"), counted(m.Rams, "ram")}
	if m.Studies > 0 {
		parts = append(parts, countedStudies(m.Studies))
	}
	return strings.Join(parts, ", ")
}

func (m *Moved) fault(name, format string, args ...any) {
	m.Faults = append(m.Faults, name+": "+fmt.Sprintf(format, args...))
}

// A Progress is told of each thing before it is moved.
type Progress func(done, all int, name string)

// WriteOut writes every plan on the shelf, its issued revisions, its studies and shift checks,
// and the rams as plain files into a new or empty folder. Earlier states and training records stay
// behind.
func (a *Archive) WriteOut(ctx context.Context, folder string, tell Progress) (*Moved, error) {
	if err := newFolder(folder); err != nil {
		return nil, err
	}
	items, err := a.everything(ctx)
	if err != nil {
		return nil, err
	}
	rams, err := a.Rams(ctx, "")
	if err != nil {
		return nil, err
	}
	m := &Moved{}
	if _, m.Binned, err = a.List(ctx, Query{Binned: true}); err != nil {
		return nil, err
	}
	people, err := a.People(ctx)
	if err != nil {
		return nil, err
	}
	for _, p := range people {
		m.Trainings += p.Records
	}
	taken := names{ramsFolder: true}
	all := len(items) + len(rams)
	for i, item := range items {
		if err := ctx.Err(); err != nil {
			return m, err
		}
		name := taken.of(item.Number+" "+item.Name, "plan")
		tell(i, all, name)
		if err := a.planOut(ctx, m, item.ID, filepath.Join(folder, name), name); err != nil {
			return m, copyFault(err)
		}
	}
	taken = names{}
	for i, r := range rams {
		if err := ctx.Err(); err != nil {
			return m, err
		}
		name := taken.of(r.Name, "ram")
		tell(len(items)+i, all, name)
		if err := ramOut(m, r, filepath.Join(folder, ramsFolder), name); err != nil {
			return m, copyFault(err)
		}
	}
	return m, nil
}

// everything lists all plans on the shelf, the oldest first.
func (a *Archive) everything(ctx context.Context) ([]Item, error) {
	var out []Item
	err := each(ctx, a.reader(ctx), "select id, name, number from plan where binned is null order by id", nil, func(scan scanner) error {
		var i Item
		err := scan(&i.ID, &i.Name, &i.Number)
		out = append(out, i)
		return err
	})
	return out, explain(err)
}

func newFolder(folder string) error {
	there, err := os.ReadDir(folder)
	switch {
	case err == nil && len(there) > 0:
		return &Failure{Text: fmt.Sprintf("The folder %s is not empty; nothing is ever overwritten, name a new one.", folder), Err: fs.ErrExist}
	case err != nil && !errors.Is(err, fs.ErrNotExist):
		return copyFault(err)
	}
	return copyFault(os.MkdirAll(folder, 0o755))
}

// planOut writes the files of one plan.
func (a *Archive) planOut(ctx context.Context, m *Moved, id ID, folder, name string) error {
	h, err := a.Get(ctx, id)
	var damaged *Damaged
	if errors.Is(err, ErrNotFound) {
		return nil // removed meanwhile
	} else if errors.As(err, &damaged) && damaged.Good != nil {
		m.fault(name, "its draft is damaged; state %d, the newest that is whole, was written in its place", damaged.State)
		h.Draft = damaged.Good.Draft
	} else if damaged != nil {
		m.fault(name, "its draft is damaged, and so is every earlier state")
	} else if err != nil {
		return err
	}
	issued, err := a.Revisions(ctx, id)
	if err != nil {
		return err
	}
	kept, err := a.studies(ctx, "from study where plan = $1 order by id", id)
	if err != nil {
		return err
	}
	if err := os.Mkdir(folder, 0o755); err != nil {
		return err
	}
	if h.Draft != nil {
		body, file := h.Draft.Encode(), draftFile
		if plan, faults := h.Draft.Check(); len(faults) == 0 {
			body, file = plan.JSON(), planFile
		}
		if err := writeNew(filepath.Join(folder, file), body); err != nil {
			return err
		}
	}
	m.Plans++
	for _, r := range issued {
		if r.Damaged {
			m.fault(name, "revision %s is damaged and was left out", r.Letter)
			continue
		}
		if r.Document == nil {
			m.fault(name, "revision %s is no document that this program reads, and was left out; a backup holds it", r.Letter)
			continue
		}
		if err := revisionOut(&r, folder); err != nil {
			return err
		}
		m.Revisions++
	}
	return studiesOut(m, kept, folder, name)
}

// revisionOut writes the two files of a revision.
func revisionOut(r *issue.Revision, folder string) error {
	said, err := json.Marshal(issueFile{
		Format: issueFormat, Letter: r.Letter, Issued: r.At.UTC().Format(stampLayout), Prepared: r.Prepared, Checked: r.Checked, Approved: r.Approved,
		Reason: r.Reason, Despite: r.Despite, Second: r.Second, Drill: r.Drill, PlanDigest: r.PlanDigest,
	}, jsontext.WithIndent("  "))
	if err != nil {
		return err
	}
	base := filepath.Join(folder, revisionOf+r.Letter)
	if err := writeNew(base+".json", r.Document.JSON()); err != nil {
		return err
	}
	return writeNew(base+issueEnding, append(said, '\n'))
}

// ramOut writes the file of one ram: the document as it is stored.
func ramOut(m *Moved, r Ram, folder, name string) error {
	if r.Damaged {
		m.fault(name, "this ram is damaged and was left out")
		return nil
	}
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return err
	}
	m.Rams++
	return writeNew(filepath.Join(folder, name+".json"), r.Document().Encode())
}

// writeNew writes a file that is not there yet.
func writeNew(name string, data []byte) error {
	f, err := os.OpenFile(name, os.O_CREATE|os.O_EXCL|os.O_WRONLY, 0o644)
	if err != nil {
		return err
	}
	_, err = f.Write(data)
	if err == nil {
		err = f.Sync()
	}
	return errors.Join(err, f.Close())
}

// names are the file names that are taken already, in lower case: many systems
// do not tell Aa from aA.
type names map[string]bool

// of makes a readable file name of a text.
func (n names) of(text, otherwise string) string {
	base := fileName(text)
	if base == "" {
		base = otherwise
	}
	name := base
	for i := 2; n[strings.ToLower(name)]; i++ {
		name = fmt.Sprintf("%s (%d)", base, i)
	}
	n[strings.ToLower(name)] = true
	return name
}

const longestName = 80 // characters, of up to four bytes

// fileName keeps of a text what every system allows in a file name.
func fileName(text string) string {
	clean := strings.Map(func(c rune) rune {
		switch {
		case unicode.IsLetter(c), unicode.IsDigit(c), unicode.IsMark(c), strings.ContainsRune(" -_.,+()", c):
			return c
		case unicode.IsSpace(c):
			return ' '
		}
		return '-'
	}, text)
	clean = strings.Join(strings.Fields(clean), " ")
	if runes := []rune(clean); len(runes) > longestName {
		clean = string(runes[:longestName])
	}
	for len(clean) > 3*longestName { // names are limited in bytes, too
		runes := []rune(clean)
		clean = string(runes[:len(runes)-1])
	}
	clean = strings.TrimRight(strings.TrimLeft(clean, " .-"), " .") // a name that begins with - is taken for a flag
	stem, _, _ := strings.Cut(strings.ToUpper(clean), ".")
	switch {
	case stem == "CON", stem == "PRN", stem == "AUX", stem == "NUL",
		len(stem) == 4 && (strings.HasPrefix(stem, "COM") || strings.HasPrefix(stem, "LPT")):
		clean = "_" + clean // names of devices on some systems
	}
	return clean
}
