package archive

import (
	"context"
	"database/sql"
	"errors"
	"strconv"
	"strings"
	"time"

	"ramplan/press"
	"ramplan/press/proving"
)

// A StudyID names a study in one archive; it is never given again.
type StudyID int64

// Shift is the purpose of a study that checked a shift. Every other study is to prove the
// station, and has none.
const Shift = "shift"

// A KeptStudy is a study of a plan's station, as the archive has it.
type KeptStudy struct {
	ID      StudyID
	Plan    ID
	Version int64 // counts every change; a save names the one it started from
	Kind    string
	Posted  bool // a program sent it: what it sent is not typed over
	Made    time.Time
	Changed time.Time

	Typed *proving.Typed // as it was typed, or as a posted one would have been
	Study *proving.Study // of a signed or posted one: as it was read then; else nil

	Replaces   StudyID // the signed study that it corrects; 0: none
	ReplacedBy StudyID // the signed study that corrects it, so that it counts no more; 0: none

	SignedAt time.Time // zero: not signed
	SignedBy string
	Digest   string // of the study, once it was signed or posted

	Check ShiftCheck // of a study that checked a shift
	Shift bool       // it is one

	Damaged bool // it is not what was stored: nothing of it is told
}

// A ShiftCheck is what is said of a study that checked a shift.
type ShiftCheck struct {
	Letter string         // of the issued revision whose window it checked
	Digest string         // of that revision's plan
	Passed proving.Answer // Pass or Fail, as it was filled in
}

// Signed tells whether somebody signed it; from then on it never changes.
func (k *KeptStudy) Signed() bool { return !k.SignedAt.IsZero() }

// Counts tells whether the plan is judged with it: it was signed, is whole, checked no shift,
// and no later one corrects it.
func (k *KeptStudy) Counts() bool {
	return k.Signed() && !k.Damaged && !k.Shift && k.ReplacedBy == 0
}

// Studies lists the studies of a plan that are to prove its station, signed or not, the one
// that was begun first first: equal dates are judged in this order. Shift checks are not
// among them.
func (a *Archive) Studies(ctx context.Context, plan ID) ([]KeptStudy, error) {
	return a.studies(ctx, "from study where plan = $1 and purpose = '' order by id", plan)
}

// CountingStudies gives the documents of the studies that a plan's revisions are judged
// with: those signed and not corrected, in the order of [Archive.Studies]. Where a signed one
// is damaged it gives [*Damaged] besides: it may be what stands against the station.
func (a *Archive) CountingStudies(ctx context.Context, plan ID) ([]*proving.Study, error) {
	all, err := a.Studies(ctx, plan)
	if err != nil {
		return nil, err
	}
	return counting(all)
}

func counting(all []KeptStudy) (out []*proving.Study, err error) {
	for _, k := range all {
		switch {
		case k.Counts():
			out = append(out, k.Study)
		case k.Signed() && k.Damaged && k.ReplacedBy == 0:
			err = &Damaged{Plan: k.Plan, What: studyName(k.ID)}
		}
	}
	return out, err
}

// Study gives one study of a plan, also one that checked a shift.
func (a *Archive) Study(ctx context.Context, plan ID, id StudyID) (KeptStudy, error) {
	k, err := study(ctx, a.reader(ctx), plan, id)
	return k, explain(err)
}

func study(ctx context.Context, q querier, plan ID, id StudyID) (KeptStudy, error) {
	k, err := scanStudy(q.QueryRowContext(ctx, studyQuery+"from study where plan = $1 and id = $2", plan, id).Scan)
	if errors.Is(err, sql.ErrNoRows) {
		return k, ErrNotFound
	}
	return k, err
}

func (a *Archive) studies(ctx context.Context, from string, args ...any) ([]KeptStudy, error) {
	out, err := studies(ctx, a.reader(ctx), from, args...)
	return out, explain(err)
}

func studies(ctx context.Context, q querier, from string, args ...any) ([]KeptStudy, error) {
	var out []KeptStudy
	err := each(ctx, q, studyQuery+from, args, func(scan scanner) error {
		k, err := scanStudy(scan)
		out = append(out, k)
		return err
	})
	return out, err
}

const studyQuery = `
select id, plan, version, kind, purpose, posted, made, changed, coalesce(replaces, 0), coalesce(signed, ''), signer, outcome, letter, revision,
	typed_sum, typed, sum, document, seal, coalesce((select c.id from study c where c.replaces = study.id and c.signed is not null), 0)
`

// scanStudy reads a study. What its documents say must be what their digests, and the seal,
// hold.
func scanStudy(scan scanner) (KeptStudy, error) {
	var k KeptStudy
	r := studyRow{kept: &k}
	if err := scan(&k.ID, &k.Plan, &k.Version, &k.Kind, &r.purpose, &k.Posted, &r.made, &r.changed, &k.Replaces, &r.signed, &k.SignedBy, &k.Check.Passed, &k.Check.Letter, &k.Check.Digest,
		&r.typedSum, &r.typed, &k.Digest, &r.document, &r.seal, &k.ReplacedBy); err != nil {
		return k, err
	}
	k.Made, k.Changed, k.SignedAt = readStamp(r.made), readStamp(r.changed), readStamp(r.signed)
	k.Shift = r.purpose == Shift
	r.read()
	return k, nil
}

// A studyRow is a study with its columns as they are stored.
type studyRow struct {
	kept                                                 *KeptStudy
	purpose, once, made, changed, signed, typedSum, seal string
	typed, document                                      []byte
}

// read reads the documents of a row, and finds damage. That the document is the one of its digest
// was looked at when it was stored, and the seal holds the two together from then on: only a check
// of the archive makes the digest anew.
func (r *studyRow) read() {
	k := r.kept
	whole := digest(r.typed) == r.typedSum
	if whole {
		k.Typed, whole = proving.DecodeTyped(r.typed)
	}
	if whole && r.document != nil {
		var faults press.Problems
		k.Study, faults = proving.Decode(r.document)
		whole = len(faults) == 0
	}
	if whole {
		whole = k.Typed.Kind == k.Kind && (k.Study == nil || k.Study.Kind == k.Kind) && (k.Study != nil) == (k.Signed() || k.Posted) && (k.Study == nil || r.sealed() == r.seal)
	}
	if !whole {
		k.Damaged, k.Typed, k.Study = true, nil, nil
	}
}

// sealed is the seal of a signed or posted study: the digest of all that is said of it.
func (r *studyRow) sealed() string {
	k := r.kept
	var b strings.Builder
	for _, s := range []string{
		strconv.FormatInt(int64(k.Plan), 10), k.Kind, r.purpose, strconv.FormatBool(k.Posted), r.made, strconv.FormatInt(int64(k.Replaces), 10), r.signed, k.SignedBy,
		string(k.Check.Passed), k.Check.Letter, k.Check.Digest, r.typedSum, k.Digest, digest(r.document),
	} {
		b.WriteString(strconv.Itoa(len(s)) + " " + s + "\n")
	}
	return digest([]byte(b.String()))
}

func studyName(id StudyID) string { return "study " + strconv.FormatInt(int64(id), 10) }
