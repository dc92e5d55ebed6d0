package web

import (
	"cmp"
	"context"
	"errors"
	"maps"
	"net/http"
	"slices"
	"strconv"
	"strings"

	"ramplan/press/archive"
	"ramplan/press/drill"
	"ramplan/press/training"
	"ramplan/press/words"
	"ramplan/web/page"
	"ramplan/web/view"
)

// showPeople answers GET /people: everybody who has records, or one of them.
func (s *site) showPeople(w http.ResponseWriter, r *http.Request) error {
	if who := r.URL.Query().Get("who"); who != "" {
		return s.person(w, r, http.StatusOK, who, "")
	}
	s.endLeft(r.Context())
	people, err := s.store.People(r.Context())
	if err != nil {
		return err
	}
	all, err := s.store.AllTrainings(r.Context())
	if err != nil {
		return err
	}
	due, err := s.dueByPerson(r.Context(), all)
	if err != nil {
		return err
	}
	newest := map[string]training.Record{}
	for _, t := range slices.Backward(all) {
		key := training.PersonKey(t.Who)
		if old, known := newest[key]; known && t.Unfinished && !old.Unfinished {
			continue // an exam that was left says nothing of the one that was judged
		}
		newest[key] = t
	}
	v := view.People{}
	for _, p := range people {
		key := training.PersonKey(p.Who)
		x := view.Person{Who: p.Who, Records: p.Records, Due: due[key]}
		x.Newest = s.viewTrainings(r.Context(), []training.Record{newest[key]})[0]
		v.All = append(v.All, x)
	}
	open, err := s.store.AllSittings(r.Context())
	if err != nil {
		return err
	}
	p := v.Page(assets.drillPage().With(printedToday(say.RecordsOfEverybody())))
	p.UnderWay = view.UnderWayLines(viewUnderWay(open, true), s.desk.now())
	return show(w, r, http.StatusOK, page.PeopleOf(p))
}

// dueByPerson gives the names of the plans on which people have to be trained, with
// the exam, and why.
// A plan that is gone asks nobody.
func (s *site) dueByPerson(ctx context.Context, all []training.Record) (map[string][]view.PersonDue, error) {
	byPlan := map[archive.ID][]training.Record{}
	for _, t := range all {
		byPlan[t.Plan] = append(byPlan[t.Plan], t)
	}
	out := map[string][]view.PersonDue{}
	for _, id := range slices.Sorted(maps.Keys(byPlan)) {
		head, err := s.store.Get(ctx, id)
		var damaged *archive.Damaged
		if errors.Is(err, archive.ErrNotFound) || errors.As(err, &damaged) {
			continue
		}
		if err != nil {
			return nil, err
		}
		on, err := s.counting(ctx, head)
		if err != nil {
			return nil, err
		}
		if len(on.counts) == 0 {
			continue
		}
		due := dueByExam(byPlan[id], on.counts)
		for _, role := range drill.Roles {
			for _, t := range due[role] {
				key := training.PersonKey(t.Who)
				out[key] = append(out[key], view.PersonDue{Again: training.PassedOnce(byPlan[id], t.Who, string(role)), What: titleOf(head).Name + " (" + strings.ToLower(say.ExamOf(string(role))) + ")", Why: on.why(t)})
			}
		}
	}
	return out, nil
}

// person shows somebody's records, and why they were not removed.
func (s *site) person(w http.ResponseWriter, r *http.Request, status int, who, trouble string) error {
	s.endLeft(r.Context())
	all, err := s.store.TrainingsOf(r.Context(), who)
	if err != nil {
		return err
	}
	if len(all) == 0 {
		return refusal{http.StatusNotFound, say.NoRecordsOfPerson(), []string{say.MayBeRemoved()}}
	}
	v := view.Personal{Who: all[0].Who, All: s.viewTrainings(r.Context(), all), Trouble: trouble}
	return show(w, r, status, page.PersonOf(v.Page(assets.drillPage().With(printedToday(say.RecordsOfPerson(v.Who))))))
}

// removePerson answers POST /people.
func (s *site) removePerson(w http.ResponseWriter, r *http.Request) error {
	if err := r.ParseForm(); err != nil {
		return broken(err)
	}
	who := r.PostForm.Get("who")
	if r.PostForm.Get("do") != "remove" || training.PersonName(who) == "" {
		return unknownCommand(r.PostForm.Get("do"))
	}
	if r.PostForm.Get("sure") != "yes" {
		return s.person(w, r, http.StatusUnprocessableEntity, who, say.NotRemovedTick())
	}
	if _, err := s.store.RemovePerson(r.Context(), who); err != nil {
		return err
	}
	return seeOther(w, r, "/people")
}

// sendRecords answers GET /plans/{id}/records.csv.
func (s *site) sendRecords(w http.ResponseWriter, r *http.Request) error {
	id, err := planID(r)
	if err != nil {
		return err
	}
	if _, err := s.store.Get(r.Context(), id); err != nil {
		return err
	}
	s.endLeft(r.Context())
	all, err := s.store.Trainings(r.Context(), id)
	if err != nil {
		return err
	}
	return s.sendTable(w, r, "records-station-"+strconv.FormatInt(int64(id), 10), all)
}

// sendPerson answers GET /people.csv: one person's records, or everybody's.
func (s *site) sendPerson(w http.ResponseWriter, r *http.Request) error {
	s.endLeft(r.Context())
	name, who := "records-person", r.URL.Query().Get("who")
	all, err := s.store.TrainingsOf(r.Context(), who)
	if who == "" {
		name = "records-everybody"
		all, err = s.store.AllTrainings(r.Context())
	}
	if err != nil {
		return err
	}
	return s.sendTable(w, r, name, all)
}

// recordColumns are the columns of a table of records.
var recordColumns = []string{
	"record", "person", "when", "plan_number", "plan_name", "revision", "plan_digest", "exam", "seed", "set", "right", "items", "needed", "pass_percent", "passed", "over_time", "failed_by",
	"seconds", "limit_seconds", "missed", "finished", "answered", "state",
}

// Places of what an exam that is not finished says otherwise.
var right, answeredColumn = slices.Index(recordColumns, "right"), slices.Index(recordColumns, "answered")

// sendTable answers with records as comma-separated values (RFC 4180).
func (s *site) sendTable(w http.ResponseWriter, r *http.Request, name string, all []training.Record) error {
	separation, err := separationOf(r)
	if err != nil {
		return err
	}
	rows := [][]string{recordColumns}
	for _, t := range all {
		revision, state, exam := t.Revision, "sound", cmp.Or(t.Exam, "everything")
		if revision == "" {
			revision = draftSide
		}
		set := cmp.Or(say.SetOf(t.Repeat, t.Known), say.FreshSet())
		row := []string{
			strconv.FormatInt(int64(t.ID), 10), words.Cell(t.Who), words.Stamp(t.At), words.Cell(t.Number), words.Cell(t.Name), revision, t.Digest, exam, strconv.FormatUint(t.Seed, 10), set,
			strconv.Itoa(t.Right), strconv.Itoa(t.Items), strconv.Itoa(t.Needed), separation.Number(words.Exact(100 * t.Pass)), strconv.FormatBool(t.Passed), strconv.FormatBool(t.OverTime), strings.Join(words.AllAnswered(t.Grave), "; "),
			separation.Number(words.Exact(t.Took.Seconds())), separation.Number(words.Exact(t.Limit.Seconds())), words.Cell(view.MissesInWords(s.missed(r.Context(), t))), strconv.FormatBool(!t.Unfinished), "", state,
		}
		if t.Unfinished { // nothing of it was judged
			row[right], row[answeredColumn] = "", strconv.Itoa(t.Answered)
		}
		if t.TypedIn() != "" {
			row[len(row)-1] = words.TypedIn
		}
		if t.Damaged { // nothing that it says can be relied on
			for i := 3; i < len(row); i++ {
				row[i] = ""
			}
			row[len(row)-1] = "damaged"
		}
		rows = append(rows, row)
	}
	sendCSV(w, name, separation.File(rows))
	return nil
}
