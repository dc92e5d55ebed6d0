package archive

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"github.com/go-json-experiment/json"

	"ramplan/press"
	"ramplan/press/carry"
	"ramplan/press/drafts"
	"ramplan/press/issue"
)

// BringIn brings files in: plans, drafts and, where they are named, exported sheets
// and drawings as new plans, with the issued
// revisions and the studies that stand beside them in a folder, and rams. A revision comes in with
// its own date, letter and names, and only if it is the plan of which the digest
// was issued and could be issued today; else its plan stays outside as a whole.
// Each plan is one transaction.
func (a *Archive) BringIn(ctx context.Context, from []string, tell Progress) (*Moved, error) {
	m := &Moved{}
	var all []bundle
	for _, name := range from {
		found, err := bundles(name)
		if err != nil {
			m.fault(name, "%s", plainFault(err))
		}
		all = append(all, found...)
	}
	for i, b := range all {
		if err := ctx.Err(); err != nil {
			return m, err
		}
		tell(i, len(all), b.name)
		err := a.bundleIn(ctx, m, b)
		if failure := (*Failure)(nil); errors.As(err, &failure) || errors.Is(err, context.Canceled) {
			return m, err // of the archive: the next would fail too
		}
		if problems := (press.Problems)(nil); errors.As(err, &problems) {
			for _, p := range problems {
				m.fault(b.name, "%s", p)
			}
		} else if err != nil {
			m.fault(b.name, "%s", plainFault(err))
		}
	}
	return m, nil
}

func plainFault(err error) string {
	if errors.Is(err, fs.ErrNotExist) {
		return say.NothingThere()
	}
	text := err.Error()
	for _, room := range []string{"archive: ", "carry: ", "issue: "} {
		text = strings.TrimPrefix(text, room)
	}
	return text
}

// A bundle is the files that make one plan or ram.
type bundle struct {
	name   string   // for people
	body   string   // file of the draft; empty where only revisions are left
	issued []string // files of what is said of revisions
	kept   []string // files of what is said of studies
	alone  []string // files of revisions and studies of which nothing is said
}

// bundles finds what a file, or a folder and those in it, holds.
func bundles(name string) ([]bundle, error) {
	s, err := os.Stat(name)
	if err != nil {
		return nil, err
	}
	if !s.IsDir() {
		return []bundle{{name: name, body: name}}, nil
	}
	var out []bundle
	err = filepath.WalkDir(name, func(path string, d fs.DirEntry, err error) error {
		if err != nil || !d.IsDir() {
			return err
		}
		found, err := inFolder(path)
		out = append(out, found...)
		return err
	})
	if err == nil && len(out) == 0 {
		err = errors.New("archive: no plan, draft or ram is in this folder; name a sheet or a drawing by itself")
	}
	return out, err
}

// inFolder finds what the files of one folder hold: a plan with its revisions,
// and every other file for itself.
func inFolder(folder string) ([]bundle, error) {
	entries, err := os.ReadDir(folder)
	if err != nil {
		return nil, err
	}
	one := bundle{name: folder}
	var files []string
	for _, e := range entries {
		path := filepath.Join(folder, e.Name())
		switch {
		case e.IsDir() || strings.HasPrefix(e.Name(), ".") || !strings.EqualFold(filepath.Ext(path), ".json"):
		case strings.HasPrefix(e.Name(), revisionOf) && strings.HasSuffix(e.Name(), issueEnding):
			one.issued = append(one.issued, path)
		case strings.HasPrefix(e.Name(), studyOf) && strings.HasSuffix(e.Name(), keptEnding):
			one.kept = append(one.kept, path)
		default:
			files = append(files, path)
		}
	}
	whole := len(one.issued)+len(one.kept) > 0
	if whole {
		files = slices.DeleteFunc(files, func(path string) bool {
			base := filepath.Base(path)
			switch stem := strings.TrimSuffix(path, ".json"); {
			case base == planFile, base == draftFile:
				one.body = path
			case strings.HasPrefix(base, revisionOf):
				if !slices.Contains(one.issued, stem+issueEnding) {
					one.alone = append(one.alone, base)
				}
			case strings.HasPrefix(base, studyOf):
				if !slices.Contains(one.kept, stem+keptEnding) {
					one.alone = append(one.alone, base)
				}
			default:
				return false
			}
			return true
		})
	}
	var out []bundle
	if whole {
		out = append(out, one)
	}
	for _, path := range files {
		out = append(out, bundle{name: path, body: path})
	}
	return out, nil
}

// bundleIn brings one plan or ram in.
func (a *Archive) bundleIn(ctx context.Context, m *Moved, b bundle) error {
	if len(b.alone) > 0 {
		return outside(say.NothingSaidBeside(b.alone[0]))
	}
	var issued []issue.Revision
	for _, file := range b.issued {
		r, err := readIssue(file)
		if err != nil {
			return err
		}
		issued = append(issued, r)
	}
	issue.InOrder(issued)
	if err := issue.TrueLine(issued); err != nil {
		return err
	}
	var kept []movedStudy
	for _, file := range b.kept {
		one, err := readKept(file)
		if err != nil {
			return err
		}
		kept = append(kept, one)
	}
	if err := studiesInOrder(kept, issued); err != nil {
		return err
	}
	if b.body == "" && len(issued) == 0 {
		return outside(say.StudiesWithoutPlan())
	}
	if b.body == "" {
		return a.planIn(ctx, m, issued[len(issued)-1].Plan.Draft(), issued, kept)
	}
	drafts, err := readDrafts(b.body)
	if err != nil {
		return err
	}
	for _, d := range drafts {
		if err := a.planIn(ctx, m, d, issued, kept); err != nil {
			return err
		}
	}
	return nil
}

// planIn brings a draft in, as a plan with its revisions and studies, or as a ram.
func (a *Archive) planIn(ctx context.Context, m *Moved, d *press.Draft, issued []issue.Revision, kept []movedStudy) error {
	if _, is := d.Get(drafts.PathRamName); is && len(issued)+len(kept) == 0 {
		return a.ramIn(ctx, m, d)
	}
	err := a.change(ctx, func(ctx context.Context, tx *sql.Tx) error {
		h, err := a.create(ctx, tx, d, drafts.DidOpen)
		if err != nil {
			return err
		}
		for i := range issued {
			if err := addRevision(ctx, tx, h.ID, i+1, &issued[i]); err != nil {
				return err
			}
		}
		return studiesIn(ctx, tx, h.ID, kept)
	})
	if err == nil {
		m.Plans++
		m.Revisions += len(issued)
		m.Studies += len(kept)
	}
	return err
}

func (a *Archive) ramIn(ctx context.Context, m *Moved, d *press.Draft) error {
	_, err := a.CreateRam(ctx, drafts.RamOf(d))
	if err == nil {
		m.Rams++
	}
	return err
}

// readIssue reads what is said of a revision, and its plan from beside it.
func readIssue(file string) (issue.Revision, error) {
	var said issueFile
	data, err := readFile(file)
	if err != nil {
		return issue.Revision{}, err
	}
	base := filepath.Base(file)
	if err := json.Unmarshal(data, &said, json.RejectUnknownMembers(true)); err != nil || said.Format != issueFormat {
		return issue.Revision{}, fmt.Errorf("archive: %s is no %s", base, issueFormat)
	}
	at, err := time.Parse(stampLayout, said.Issued)
	if err != nil {
		return issue.Revision{}, fmt.Errorf("archive: %s: found %q as the date of issue; one such as %s is needed", base, said.Issued, stampLayout)
	}
	if said.Drill != "" && said.Drill != issue.DrillAgain && said.Drill != issue.DrillSame {
		return issue.Revision{}, fmt.Errorf("archive: %s: found %q as what is said of the drill; %s or %s is allowed", base, said.Drill, issue.DrillAgain, issue.DrillSame)
	}
	planName := strings.TrimSuffix(base, issueEnding) + ".json"
	if data, err = readFile(filepath.Join(filepath.Dir(file), planName)); err != nil {
		return issue.Revision{}, fmt.Errorf("archive: %s: %s", planName, plainFault(err))
	}
	plan, faults := press.Decode(data)
	if len(faults) > 0 {
		return issue.Revision{}, fmt.Errorf("archive: %s: %s", planName, faults[0])
	}
	if plan.Digest() != said.PlanDigest {
		return issue.Revision{}, fmt.Errorf("archive: %s is not the plan that was issued: its digest is another one", planName)
	}
	return issue.Revision{
		Letter: said.Letter, At: at, Document: plan.Document(), Plan: plan, PlanDigest: said.PlanDigest,
		Signed: issue.Signed{Prepared: said.Prepared, Checked: said.Checked, Approved: said.Approved, Reason: said.Reason, Despite: said.Despite, Second: said.Second, Drill: said.Drill},
	}, nil
}

// readDrafts reads a plan or a draft as a draft, and each plan in a sheet or a
// drawing.
func readDrafts(file string) ([]*press.Draft, error) {
	data, err := readFile(file)
	if err != nil {
		return nil, err
	}
	if carry.Foreign(data) {
		return nil, carry.ErrForeign
	}
	plans := [][]byte{data}
	if carry.Is(data) {
		all, err := carry.All(data)
		if err != nil {
			return nil, err
		}
		plans = nil
		for _, one := range all {
			plans = append(plans, one.Plan)
		}
	}
	var out []*press.Draft
	for _, data := range plans {
		d, err := decodeDraft(data)
		if err != nil {
			return nil, err
		}
		out = append(out, d)
	}
	return out, nil
}

func decodeDraft(data []byte) (*press.Draft, error) {
	if d, faults := press.DecodeDraft(data); len(faults) == 0 {
		return d, nil
	} else if !faults.Has("format") {
		return nil, faults
	}
	plan, faults := press.Decode(data)
	if len(faults) > 0 {
		return nil, faults
	}
	return plan.Draft(), nil
}

// readFile takes one byte more than a file may have, so that the check can say so.
func readFile(name string) ([]byte, error) {
	f, err := os.Open(name)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	return io.ReadAll(io.LimitReader(f, carry.MaxFile+1))
}
