package web

import (
	"net/http"
	"strings"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/draw/paper"
	"ramplan/press/issue"
	"ramplan/web/page"
	"ramplan/web/view"
)

// drilling is the drill of one request: a state of a plan, practised on.
type drilling struct {
	view.Drill
	site    *site
	id      archive.ID
	refused string
	foot    string   // of its printed pages
	counts  []string // digests of what people must have passed on: of the last issued revision and those that its drill is the same as, or of the draft
}

// drillingOf finds what a request wants to practise on: the revision that it
// names, else the last that was issued, else the draft.
func (s *site) drillingOf(r *http.Request) (drilling, error) {
	id, err := planID(r)
	if err != nil {
		return drilling{}, err
	}
	head, err := s.store.Get(r.Context(), id)
	if err != nil {
		return drilling{}, err
	}
	issued, err := s.store.Revisions(r.Context(), id)
	if err != nil {
		return drilling{}, err
	}
	wanted := strings.ToUpper(r.URL.Query().Get("revision"))
	named := wanted != ""
	if !named && len(issued) > 0 {
		wanted = issued[0].Letter
	}
	if wanted == "" || wanted == strings.ToUpper(draftSide) {
		plan, faults := head.Draft.Check()
		if plan == nil {
			return drilling{}, faulty{refusal{http.StatusUnprocessableEntity, say.DraftNotForPractice(), lines(faults)}, faults}
		}
		return s.newDrilling(id, plan, "", issued), nil
	}
	rev, err := s.revision(r.Context(), id, wanted)
	if err != nil {
		return drilling{}, err
	}
	d := s.newDrilling(id, rev.Plan, rev.Letter, issued)
	if rev.Letter == issued[0].Letter { // of earlier ones nobody asks any more
		d.Standing = s.standing(r.Context(), id, rev.PlanDigest, rev.Letter)
	}
	return d, nil
}

func (s *site) newDrilling(id archive.ID, plan *press.Plan, letter string, issued []issue.Revision) drilling {
	r := press.Evaluate(plan)
	v, refused := view.NewDrill(plan, r)
	v.Plan, v.Letter = planPath(id, ""), letter
	v.Letters = lettersOf(issued)
	drawn := scenes{plan, r}
	v.Draw, v.DrawEnd = drawn.before, drawn.end
	d := drilling{Drill: v, site: s, id: id, refused: refused, counts: []string{r.PlanDigest()}}
	if len(issued) > 0 {
		d.counts = issue.Counting(issued)
	}
	d.foot = drillFoot(plan, r, letter, issued)
	return d
}

// lettersOf are the letters of revisions, the newest first as they stand.
func lettersOf(issued []issue.Revision) []string {
	var out []string
	for _, rev := range issued {
		out = append(out, rev.Letter)
	}
	return out
}

// sendCard answers GET …/card.{format}.
func (s *site) sendCard(w http.ResponseWriter, r *http.Request) error {
	d, err := s.drillingOf(r)
	if err != nil {
		return err
	}
	p := printed{plan: d.P}
	if d.Letter != "" {
		rev, err := s.revision(r.Context(), d.id, d.Letter)
		if err != nil {
			return err
		}
		p.issue = rev.Paper()
		if p.old, err = s.supersededBy(r.Context(), d.id, rev.Letter); err != nil {
			return err
		}
	}
	return send(w, r, p, "card", func() (*paper.Document, error) {
		return paper.NewSingle("card", d.P, d.R, 0, false, p.options())
	})
}

// drillPage gives the addresses of what the pages of a drill load.
func (l library) drillPage() page.Assets {
	a := l.plainPage()
	a.Styles = append(a.Styles, l.address("css/shelf.css"), l.address("css/drill.css"), l.address("css/records.css"))
	a.Scripts = []string{l.address("js/station.js"), l.address("js/runplay.js")}
	return a
}
