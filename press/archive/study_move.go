package archive

import (
	"context"
	"database/sql"
	"errors"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"

	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"

	"ramplan/press/issue"
	"ramplan/press/proving"
	"ramplan/press/training"
)

// Names of the plain files of a study: the study itself, and what is said of it. One that
// was neither signed nor posted has the latter alone.
const (
	studyOf    = "study-"     // then its number among those of the plan
	keptEnding = ".kept.json" // what is said of a study, and what was typed
)

// keptFormat is the name of the format of what is said of a study.
const keptFormat = "ramplan.kept/1"

// A keptFile is what is said of a study, as a plain file.
type keptFile struct {
	Format      string         `json:"format"`
	Number      int            `json:"number"`
	Kind        string         `json:"kind"`
	Posted      bool           `json:"posted,omitzero"`
	Begun       string         `json:"begun"`
	Changed     string         `json:"changed"`
	Signed      string         `json:"signed,omitzero"`
	SignedBy    string         `json:"signed_by,omitzero"`
	Replaces    int            `json:"replaces,omitzero"` // the number of the one that it corrects
	StudyDigest string         `json:"study_digest,omitzero"`
	Shift       *shiftFile     `json:"shift_check,omitempty"`
	Typed       jsontext.Value `json:"typed"`
}

type shiftFile struct {
	Outcome    proving.Answer `json:"outcome"`
	Letter     string         `json:"letter"`
	PlanDigest string         `json:"plan_digest"`
}

// studiesOut writes the files of a plan's studies and shift checks.
func studiesOut(m *Moved, all []KeptStudy, folder, name string) error {
	number := map[StudyID]int{}
	for i, k := range all {
		if k.Damaged {
			m.fault(name, "%s", say.DamagedLeftOut(studyName(k.ID)))
			continue
		}
		number[k.ID] = i + 1
		said := keptFile{
			Format: keptFormat, Number: i + 1, Kind: k.Kind, Posted: k.Posted, Begun: k.Made.UTC().Format(stampLayout), Changed: k.Changed.UTC().Format(stampLayout),
			SignedBy: k.SignedBy, Replaces: number[k.Replaces], StudyDigest: k.Digest, Typed: k.Typed.Encode(),
		}
		if k.Signed() {
			said.Signed = k.SignedAt.UTC().Format(stampLayout)
		}
		if k.Shift {
			said.Shift = &shiftFile{k.Check.Passed, k.Check.Letter, k.Check.Digest}
		}
		body, err := json.Marshal(said, jsontext.WithIndent("  "))
		if err != nil {
			return err
		}
		base := filepath.Join(folder, studyOf+strconv.Itoa(i+1))
		if k.Study != nil {
			if err := writeNew(base+".json", k.Study.JSON()); err != nil {
				return err
			}
		}
		if err := writeNew(base+keptEnding, append(body, '\n')); err != nil {
			return err
		}
		m.Studies++
	}
	return nil
}

// outside says why something stays outside.
func outside(parts ...string) error { return errors.New("archive: " + strings.Join(parts, ": ")) }

// A movedStudy is a study that comes in, with its number among those of its plan.
type movedStudy struct {
	row              studyRow
	number, replaces int
}

// readKept reads what is said of a study, and the study from beside it.
func readKept(file string) (movedStudy, error) {
	var one movedStudy
	base := filepath.Base(file)
	fault := func(why string) (movedStudy, error) { return one, outside(base, why) }
	data, err := readFile(file)
	if err != nil {
		return one, err
	}
	var said keptFile
	if err := json.Unmarshal(data, &said, json.RejectUnknownMembers(true)); err != nil || said.Format != keptFormat {
		return fault(say.IsNo(keptFormat))
	}
	k := &KeptStudy{Kind: said.Kind, Posted: said.Posted, SignedBy: said.SignedBy, Digest: said.StudyDigest}
	one.row, one.number, one.replaces = studyRow{kept: k, made: said.Begun, changed: said.Changed, signed: said.Signed}, said.Number, said.Replaces
	typed, ok := proving.DecodeTyped(said.Typed)
	if !ok || typed.Kind != k.Kind {
		return fault(say.NothingTyped())
	}
	k.Typed = typed
	if err := one.row.setTyped(); err != nil {
		return fault(plainFault(err))
	}
	for _, at := range []string{said.Begun, said.Changed, said.Signed} {
		if _, err := time.Parse(stampLayout, at); err != nil && (at != "" || said.Begun == "" || said.Changed == "") {
			return fault(say.NoStudyDate(at, stampLayout))
		}
	}
	if (said.Signed == "") != (said.SignedBy == "") || training.PersonName(said.SignedBy) != said.SignedBy {
		return fault(say.NoSignature())
	}
	if said.Shift != nil {
		one.row.purpose = Shift
		k.Shift, k.Check = true, ShiftCheck{Letter: said.Shift.Letter, Digest: said.Shift.PlanDigest, Passed: said.Shift.Outcome}
		if said.Signed == "" || k.Kind != proving.Samples || k.Check.Passed != proving.Pass && k.Check.Passed != proving.Fail {
			return fault(say.NoShiftCheck())
		}
	}
	if said.Signed == "" && !said.Posted {
		if said.StudyDigest != "" {
			return fault(say.NoSignature())
		}
		return one, nil
	}
	beside := strings.TrimSuffix(base, keptEnding) + ".json"
	if data, err = readFile(filepath.Join(filepath.Dir(file), beside)); err != nil {
		return one, outside(beside, plainFault(err))
	}
	if k.Study, ok = readStudy(data, said.StudyDigest); !ok || k.Study.Kind != k.Kind {
		return one, outside(beside, say.NotTheStudy())
	}
	return one, nil
}

// studiesInOrder sorts the studies that come in with a plan, and looks whether what they
// name is there: the studies that they correct, and the revisions that they checked.
func studiesInOrder(all []movedStudy, issued []issue.Revision) error {
	slices.SortFunc(all, func(a, b movedStudy) int { return a.number - b.number })
	for i, one := range all {
		if i > 0 && all[i-1].number == one.number || one.number < 1 {
			return outside(say.StudyTwice(one.number))
		}
		if one.replaces != 0 && !slices.ContainsFunc(all[:i], func(o movedStudy) bool { return o.number == one.replaces }) {
			return outside(say.StudyCorrectsNothing(one.number, one.replaces))
		}
		if c := one.row.kept.Check; one.row.kept.Shift && !slices.ContainsFunc(issued, func(r issue.Revision) bool { return r.Letter == c.Letter && r.PlanDigest == c.Digest }) {
			return outside(say.CheckOfNoRevision(one.number, c.Letter))
		}
	}
	return nil
}

// studiesIn adds the studies of a plan that comes in, sealed anew as those of that plan.
func studiesIn(ctx context.Context, tx *sql.Tx, plan ID, all []movedStudy) error {
	ids := map[int]StudyID{}
	for _, one := range all {
		row := one.row
		k := *row.kept
		row.kept = &k
		k.Plan, k.Replaces = plan, ids[one.replaces]
		if k.Posted {
			row.once = postedOnce(plan, k.Study)
		}
		id, err := row.add(ctx, tx)
		if refused := StudyRefused(0); errors.As(err, &refused) {
			return outside(say.StudyNotTaken(one.number, refused.Text()))
		} else if err != nil {
			return err
		}
		ids[one.number] = id
	}
	return nil
}
