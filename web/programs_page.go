package web

import (
	"net/http"
	"strconv"
	"strings"

	"github.com/go-chi/chi/v5"

	"ramplan/press"
	"ramplan/web/page"
)

// programRoutes are those of the page that tells programs what they can ask.
func programRoutes(r chi.Router) {
	r.Method(http.MethodGet, "/programs", answer(showPrograms))
}

// Keys of a result, as the page names them: where what is set on the controller
// stands, and what else there is.
var (
	setKeys  = []string{"force.setting", "travel.approach_end", "travel.push_stroke", "travel.push_end", "window.zone"}
	restKeys = []string{"stack", "joint", "force", "probe", "travel", "window", "verdict", "risk", "cycle", "impact", "heating", "faults", "samples", "sequence"}
)

// addresses are what programs can ask, as the page lists it.
var addresses = []page.ProgramAddress{
	{Method: "GET", Path: "/plans", Does: "The plans on the shelf: q searches, by words or by the first digits of a digest (asked then says what has it), order is changed, name, number or due, limit and offset choose a part, bin=yes lists the bin.", Gives: "200"},
	{Method: "POST", Path: "/plans", Does: "A new plan from a plan, a draft or an exported sheet. Location names it.", Gives: "201, 413, 415, 422"},
	{Method: "GET", Path: "/plans/{id}", Does: "The working draft: as a plan where it is a sound one, else as a draft; the format in the media type says which. ETag is its version.", Gives: "200, 304, 404"},
	{Method: "PUT", Path: "/plans/{id}", Does: "Another draft in its place. If-Match names the version that it replaces. What stood there stays in the history.", Gives: "204, 404, 412, 413, 422, 428"},
	{Method: "DELETE", Path: "/plans/{id}", Does: "Into the bin, from which the shelf takes it out again. If-Match as for PUT.", Gives: "204, 404, 412, 428"},
	{Method: "GET", Path: "/plans/{id}/result", Does: "Everything that the draft leads to. What is set stands in " + strings.Join(setKeys, ", ") + "; what there is to say in findings; the rest in " + strings.Join(restKeys, ", ") + ".", Gives: "200, 404, 422"},
	{Method: "GET", Path: "/plans/{id}/revisions", Does: "The issued revisions, the newest first.", Gives: "200, 404"},
	{Method: "GET", Path: "/plans/{id}/revisions/{letter}", Does: "One issued revision with its plan, which never changes.", Gives: "200, 404"},
	{Method: "GET", Path: "/plans/{id}/studies", Does: "The studies of the plan's station, the one begun first first; counts says whether the plan is judged with it.", Gives: "200, 404"},
	{Method: "POST", Path: "/plans/{id}/studies", Does: "A finished study, as of a data logger: JSON or a table (text/csv). It waits until a person signs it; an event counts at once, under the name in by or taken_by. Location names it; the same study again gives the same. errors names every fault, of a table by its line.", Gives: "201, 404, 413, 415, 422"},
	{Method: "GET", Path: "/plans/{id}/studies/{study}.{format}", Does: "One of them, as json or csv.", Gives: "200, 404, 422"},
	{Method: "GET", Path: "/plans/{id}/assessment", Does: "What the signed studies say of the newest revision: checks, findings, what they offer as entries, whether it is proved. on is the day asked, of another revision or draft.", Gives: "200, 404, 422"},
	{Method: "GET", Path: "/rams", Does: "The rams on the shelf; q searches.", Gives: "200"},
	{Method: "GET", Path: "/rams/{id}", Does: "One of them, its figures as a draft that holds nothing else.", Gives: "200, 404"},
}

// A programExample is a request that the page prints and a test sends, in order.
type programExample struct {
	title  string
	method string
	path   string   // {plan} stands for the address of the plan that the first one made
	header []string // such as If-Match: "1"
	file   string   // whose bytes are sent; empty for none
	status int
	shows  []string // lines of the answer's header and parts of its body
}

const jsonWanted = "Accept: application/json"

// halfDraft is the file draft.json of the examples.
var halfDraft = string((&press.Draft{Entries: []press.Entry{{Path: "title.name", Text: "Half a plan"}, {Path: "station.nest", Text: "14o"}}}).Encode())

// masterTable is the file master.csv of the examples, brokenTable the file broken.csv.
const (
	masterTable = "# kind: master\n# taken_at: 2026-11-22T14:05:00+01:00\n# height: 40\nreading [mm],remark\n100.137,\n100.141,\"after a pause\"\n"
	brokenTable = "# kind: master\n# taken_at: 2026-11-22T14:05:00+01:00\n# height: 40\nreading [mm]\n1oo.137\n100.141\n"
)

// programExamples begin with a plan in the file plan.json, such as the bench
// saves, and the files draft.json, master.csv and broken.csv.
var programExamples = []programExample{
	{title: "Put a plan on the shelf", method: "POST", path: "/plans", header: []string{jsonWanted, "Content-Type: application/json"}, file: "plan.json", status: 201, shows: []string{`Etag: "1"`, "Location: {plan}"}},
	{title: "Read it", method: "GET", path: "{plan}", header: []string{jsonWanted}, status: 200, shows: []string{`Etag: "1"`, `Content-Type: application/json; format="ramplan.plan/1"`, `"format": "ramplan.plan/1"`}},
	{title: "Ask only whether it changed", method: "GET", path: "{plan}", header: []string{jsonWanted, `If-None-Match: "1"`}, status: 304, shows: []string{`Etag: "1"`}},
	{title: "Put a draft in its place that is no plan yet", method: "PUT", path: "{plan}", header: []string{`If-Match: "1"`, "Content-Type: application/json"}, file: "draft.json", status: 204, shows: []string{`Etag: "2"`}},
	{title: "A draft says so in its media type", method: "HEAD", path: "{plan}", header: []string{jsonWanted}, status: 200, shows: []string{`Content-Type: application/json; format="ramplan.draft/1"`}},
	{title: "It has no result: the problem names every fault", method: "GET", path: "{plan}/result", header: []string{jsonWanted}, status: 422, shows: []string{"Content-Type: application/problem+json", `"status":422`, `"path":"station.nest"`}},
	{title: "A version that no longer stands replaces nothing", method: "PUT", path: "{plan}", header: []string{`If-Match: "1"`, "Content-Type: application/json"}, file: "plan.json", status: 412, shows: []string{"Content-Type: application/problem+json", `"version":2`}},
	{title: "Nor does a request that names none", method: "PUT", path: "{plan}", header: []string{"Content-Type: application/json"}, file: "plan.json", status: 428, shows: []string{`"status":428`}},
	{title: "The version that stands does", method: "PUT", path: "{plan}", header: []string{`If-Match: "2"`, "Content-Type: application/json"}, file: "plan.json", status: 204, shows: []string{`Etag: "3"`}},
	{title: "Read what it leads to", method: "GET", path: "{plan}/result", header: []string{jsonWanted}, status: 200, shows: []string{`"plan_digest"`, `"findings"`}},
	{title: "List its issued revisions", method: "GET", path: "{plan}/revisions", header: []string{jsonWanted}, status: 200, shows: []string{`"revisions": []`}},
	{title: "Post what a data logger has", method: "POST", path: "{plan}/studies?by=logger+4", header: []string{"Content-Type: text/csv"}, file: "master.csv", status: 201, shows: []string{"Location: {plan}/studies/1.json"}},
	{title: "Of a table with faults each is told by its line", method: "POST", path: "{plan}/studies", header: []string{jsonWanted, "Content-Type: text/csv"}, file: "broken.csv", status: 422, shows: []string{`"path":"reading"`, `"line":5`}},
	{title: "It waits for a signature", method: "GET", path: "{plan}/studies", header: []string{jsonWanted}, status: 200, shows: []string{`"href": "{plan}/studies/1.json"`, `"counts": false`}},
	{title: "Read it as a table", method: "GET", path: "{plan}/studies/1.csv", status: 200, shows: []string{"Content-Type: text/csv; charset=utf-8", "# kind: master"}},
	{title: "Ask what the signed studies say of the plan", method: "GET", path: "{plan}/assessment?on=2026-11-28", header: []string{jsonWanted}, status: 200, shows: []string{`"format": "ramplan.assessment/1"`, `"state": "not_proved"`}},
	{title: "Move it to the bin", method: "DELETE", path: "{plan}", header: []string{`If-Match: "3"`}, status: 204},
	{title: "It is still read there", method: "GET", path: "{plan}", header: []string{jsonWanted}, status: 200, shows: []string{`Etag: "4"`}},
	{title: "Find it in the bin", method: "GET", path: "/plans?bin=yes&limit=5", header: []string{jsonWanted}, status: 200, shows: []string{`"binned": true`, `"href": "{plan}"`}},
}

// curl writes an example as a command; $PLAN stands for the plan's address.
func (e programExample) curl(server string) string {
	parts := []string{"curl", "-i"}
	switch e.method {
	case http.MethodGet:
	case http.MethodHead:
		parts = []string{"curl", "-I"}
	default:
		parts = append(parts, "-X", e.method)
	}
	for _, h := range e.header {
		parts = append(parts, "-H", "'"+h+"'")
	}
	if e.file != "" {
		parts = append(parts, "--data-binary", "@"+e.file)
	}
	to := `"` + server + e.path + `"`
	if rest, ok := strings.CutPrefix(e.path, "{plan}"); ok {
		to = `"$PLAN` + rest + `"`
	}
	return strings.Join(append(parts, to), " ")
}

// showPrograms answers GET /programs.
func showPrograms(w http.ResponseWriter, r *http.Request) error {
	server := "http://" + r.Host
	p := page.ProgramsPage{Assets: assets.programsPage(), Server: server, Addresses: addresses, Files: []page.ProgramFile{{Name: "draft.json", Text: halfDraft}, {Name: "master.csv", Text: masterTable}, {Name: "broken.csv", Text: brokenTable}}, Plan: `PLAN=` + server + `/plans/2   # what Location said`}
	for i, e := range programExamples {
		shows := []string{"HTTP/1.1 " + strconv.Itoa(e.status) + " " + http.StatusText(e.status)}
		for _, s := range e.shows {
			shows = append(shows, strings.ReplaceAll(s, "{plan}", "/plans/2"))
		}
		p.Examples = append(p.Examples, page.ProgramExample{Title: e.title, Command: e.curl(server), Shows: shows, First: i == 0})
	}
	return show(w, r, http.StatusOK, page.ProgramsOf(p))
}

// programsPage gives the addresses of what the page for other programs loads.
func (l library) programsPage() page.Assets {
	a := l.shelfPage()
	a.Styles = append(a.Styles, l.address("css/programs.css"))
	return a
}
