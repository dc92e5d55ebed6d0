package web

import (
	"io"
	"net/http"
	"net/http/httptest"
	"net/url"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/proving"
	"ramplan/web/page"
	proofview "ramplan/web/view/proving"
)

// A plainBrowser sends forms and follows where they lead, without a script.
type plainBrowser struct {
	t   *testing.T
	srv *httptest.Server
	at  string // the address that it came to
	was string // the page
}

func plainly(t *testing.T, h http.Handler) *plainBrowser {
	t.Helper()
	srv := httptest.NewServer(h)
	t.Cleanup(srv.Close)
	return &plainBrowser{t: t, srv: srv}
}

func (p *plainBrowser) came(resp *http.Response, err error) int {
	p.t.Helper()
	require.NoError(p.t, err)
	body, err := io.ReadAll(resp.Body)
	require.NoError(p.t, err)
	require.NoError(p.t, resp.Body.Close())
	p.at, p.was = resp.Request.URL.RequestURI(), string(body)
	return resp.StatusCode
}

func (p *plainBrowser) get(path string) int {
	p.t.Helper()
	return p.came(p.srv.Client().Get(p.srv.URL + path))
}

// send presses a button of the form that stands on the page.
func (p *plainBrowser) send(path, do string, fields url.Values) int {
	p.t.Helper()
	if fields == nil {
		fields = url.Values{}
	}
	fields.Set(page.NameDo, do)
	var walk func(n *html.Node, inside bool)
	walk = func(n *html.Node, inside bool) {
		at := map[string]string{}
		for _, x := range n.Attr {
			at[x.Key] = x.Val
		}
		inside = inside || n.Data == "form" && (at["id"] == "study" || at["id"] == "check" || at["id"] == "adopt")
		box := at["type"] == "radio" || at["type"] == "checkbox"
		_, ticked := at["checked"]
		if name := at["name"]; inside && n.Data == "input" && !fields.Has(name) && (!box || ticked) {
			fields.Set(name, at["value"])
		}
		for c := n.FirstChild; c != nil; c = c.NextSibling {
			walk(c, inside)
		}
	}
	walk(parsed(p.t, p.was), false)
	path, _, _ = strings.Cut(path, "?")
	return p.came(p.srv.Client().PostForm(p.srv.URL+path, fields))
}

// TestStudyWithoutScript types a study by the buttons of a plain form: rows, a column more, a
// row less, a fault beside its cell, a signature, and a correction of it.
func TestStudyWithoutScript(t *testing.T) {
	store := exampleArchive(t)
	p := plainly(t, New(store))
	require.Equal(t, 200, p.get(provingPath))
	assert.Contains(t, p.was, "Nothing is issued yet")
	require.Equal(t, 200, p.send(provingPath, "start master", nil))
	require.Equal(t, provingPath+"/1", p.at)
	fields := url.Values{"head.height": {"40"}, "head.taken_at": {today()}}
	for i, reading := range []string{"100,137", "100,141", "1oo"} {
		fields.Set("rows["+strconv.Itoa(i)+"].0", reading)
	}
	require.Equal(t, 200, p.send(p.at, "save", fields))
	assert.Contains(t, p.was, `aria-invalid="true"`)
	assert.Contains(t, p.was, "Reading: found", "the fault in words")
	assert.Contains(t, p.was, `value="1oo"`, "what cannot be read stays to be mended")
	assert.Contains(t, p.was, "1 row cannot be read yet")
	assert.Contains(t, p.was, "open", "two pushes are too few")

	again := url.Values{"who": {"A. Weber"}, "head.height": {"40"}, "head.taken_at": {today()}}
	for i, reading := range []string{"100,137", "100,141", "1oo"} {
		again.Set("rows["+strconv.Itoa(i)+"].0", reading)
	}
	require.Equal(t, 422, p.send(p.at, "sign", again))
	assert.Contains(t, p.was, "Not signed: 1 entry cannot be read or missing.")
	require.Equal(t, 200, p.send(p.at, "remove rows 2", nil))
	assert.NotContains(t, p.was, `value="1oo"`)
	require.Equal(t, 200, p.send(p.at, "column time", nil))
	assert.Contains(t, p.was, `id="col-time"`)
	require.Equal(t, 422, p.send(p.at, "sign", url.Values{"who": {" "}}))
	require.Equal(t, 200, p.send(p.at, "sign", url.Values{"who": {"A. Weber"}}))
	assert.Contains(t, p.was, "Signed by A. Weber")
	assert.NotContains(t, p.was, `id="study"`, "a signed study is not typed into")

	require.Equal(t, 422, p.send(p.at, "sign", url.Values{"who": {"B. Roth"}, page.NameVersion: {"9"}}))
	require.Equal(t, 200, p.send(provingPath+"/1", "correct", nil))
	require.Equal(t, provingPath+"/2", p.at)
	assert.Contains(t, p.was, `value="100,141"`, "it begins with the rows of the one that it corrects")
	assert.Contains(t, p.was, "The study that it corrects")
	require.Equal(t, 200, p.send(p.at, "sign", url.Values{"who": {"A. Weber"}}))
	require.Equal(t, 200, p.get(provingPath))
	assert.Contains(t, p.was, "Another study corrects it; it counts no more.")
	counting, err := store.CountingStudies(t.Context(), 1)
	require.NoError(t, err)
	assert.Len(t, counting, 1)
}

// TestStudyOfTwoWindows: a window that is older than what stands overwrites nothing, and keeps
// what was typed in it.
func TestStudyOfTwoWindows(t *testing.T) {
	p := plainly(t, example(t))
	p.get(provingPath)
	require.Equal(t, 200, p.send(provingPath, "start master", nil))
	at := p.at
	require.Equal(t, 200, p.send(at, "save", url.Values{"rows[0].0": {"100.1"}}))
	require.Equal(t, 409, p.send(at, "save", url.Values{"rows[0].0": {"100.2"}, page.NameVersion: {"1"}}))
	assert.Contains(t, p.was, "Another window changed this study")
	assert.Contains(t, p.was, `value="100.2"`)
	require.Equal(t, 200, p.get(at))
	assert.Contains(t, p.was, `value="100.1"`)
	require.Equal(t, 200, p.send(at, "overwrite", url.Values{"rows[0].0": {"100.2"}}))
	require.Equal(t, 200, p.get(at))
	assert.Contains(t, p.was, `value="100.2"`)
}

// TestRefusedLinesStay: of a table with lines that cannot be read every line comes into the
// table, the good ones count, and the others stand beside their faults.
func TestRefusedLinesStay(t *testing.T) {
	p := plainly(t, example(t))
	p.get(provingPath)
	text := "# kind: load_cell\n# taken_at: " + today() + "\nsetting;force\n60;2200\n60;2190;7\n60;22x0\n60\n;\n60;2210\n"
	require.Equal(t, 200, p.send(provingPath, "read", url.Values{page.NameText: {text}}))
	assert.Contains(t, p.was, "5 rows were read in. 3 rows cannot be read yet; what can be read is taken.")
	assert.Contains(t, p.was, `value="22x0"`)
	assert.Contains(t, p.was, `value="2190 7"`, "a cell too many is not lost")
	assert.Contains(t, p.was, "Force: not given")
	require.Equal(t, 422, p.send(provingPath, "read", url.Values{page.NameText: {"setting;force\n60;2200\n"}}))
	assert.Contains(t, p.was, "kind", "what is missing is named")
	assert.Contains(t, p.was, "60;2200", "the text stays")
	require.Equal(t, 422, p.send(provingPath, "read", url.Values{page.NameText: {" "}}))
}

// longTrial is a signed trial of many parts.
func longTrial(t testing.TB, store *archive.Archive, rows int) archive.KeptStudy {
	t.Helper()
	typed := &proving.Typed{Kind: proving.Trial, Columns: []string{"reading", "arrival", "zone", "height"}}
	typed.SetHead("taken_at", today())
	for i := range rows {
		off := float64(i*7919%41-20) / 1000 // in no order
		typed.Rows = append(typed.Rows, []string{strconv.FormatFloat(115.137+off, 'f', 3, 64), "on", "on", strconv.FormatFloat(25-off, 'f', 3, 64)})
	}
	k, err := store.StartStudy(t.Context(), 1, proving.Trial, typed)
	require.NoError(t, err)
	return k
}

// TestLongStudy: of many rows a page has a leaf, each leaf leads to the next, and what is typed
// into one leaf changes no row of another.
func TestLongStudy(t *testing.T) {
	store := exampleArchive(t)
	longTrial(t, store, 1000)
	p := plainly(t, New(store))
	require.Equal(t, 200, p.get(provingPath+"/1"))
	assert.Contains(t, p.was, "Rows 1 to 200 of 1000")
	assert.Equal(t, 200, strings.Count(p.was, `aria-label="Remove row`))
	require.Equal(t, 200, p.get(provingPath+"/1?from=200"))
	assert.Contains(t, p.was, "Rows 201 to 400 of 1000")
	fields := url.Values{}
	for i := 200; i < 400; i++ {
		for j, text := range []string{"115.2", "on", "on", "25"} {
			fields.Set("rows["+strconv.Itoa(i)+"]."+strconv.Itoa(j), text)
		}
	}
	require.Equal(t, 200, p.send(p.at, "save", fields))
	k, err := store.Study(t.Context(), 1, 1)
	require.NoError(t, err)
	require.Len(t, k.Typed.Rows, 1000)
	assert.Equal(t, "115.117", k.Typed.Rows[0][0], "before the leaf")
	assert.Equal(t, "115.2", k.Typed.Rows[200][0])
	assert.Equal(t, "115.2", k.Typed.Rows[399][0])
	assert.NotEqual(t, "115.2", k.Typed.Rows[400][0], "behind the leaf")
	require.Equal(t, 200, p.get(provingPath+"/1?from=800"))
	assert.NotContains(t, p.was, "Rows after")
	assert.Contains(t, p.was, `name="rows[1000].0"`, "room to go on typing")
}

// BenchmarkStudyPage is the page of a trial of 10,000 parts; aimed at 30 ms. What it says is
// worked out beforehand in no part of it: the whole answer is measured.
func BenchmarkStudyPage(b *testing.B) {
	store := exampleArchive(b)
	longTrial(b, store, 10_000)
	srv := httptest.NewServer(New(store))
	b.Cleanup(srv.Close)
	for b.Loop() {
		resp, err := srv.Client().Get(srv.URL + provingPath + "/1")
		if err != nil || resp.StatusCode != http.StatusOK {
			b.Fatal(err, resp.StatusCode)
		}
		_, _ = io.Copy(io.Discard, resp.Body)
		_ = resp.Body.Close()
	}
}

// TestShiftCheck fills in a shift check on the page without a script: pass or fail is said, it is
// signed once, listed, printed and written as a table.
func TestShiftCheck(t *testing.T) {
	store := exampleArchive(t)
	p := plainly(t, New(store))
	require.Equal(t, 200, p.get(benchPath+"/check"))
	assert.Contains(t, p.was, "Nothing is issued yet")
	plan := issuedA(t, store)
	require.Equal(t, 200, p.get(benchPath+"/check"))
	assert.Contains(t, p.was, "to go")
	fill := func(answer string) url.Values {
		fields := url.Values{"who": {"B. Roth"}}
		for i, line := range shiftAsPredicted(t, press.Evaluate(plan)) {
			m := regexp.MustCompile(`name="rows\[` + strconv.Itoa(i) + `\]\.0" value="([^"]*)"`).FindStringSubmatch(p.was)
			require.NotNil(t, m, "row %d", i)
			fields.Set("rows["+strconv.Itoa(i)+"].0", m[1])
			for j, cell := range strings.Split(line, "\t") {
				fields.Set("rows["+strconv.Itoa(i)+"]."+strconv.Itoa(j+1), cell)
			}
		}
		if answer != "" { // the master, which shows both
			fields.Set("rows[2].2", answer)
			fields.Set("rows[2].3", answer)
		}
		return fields
	}
	require.Equal(t, 422, p.send(benchPath+"/check", "sign", url.Values{"who": {"B. Roth"}}))
	require.Equal(t, 200, p.get(benchPath+"/check"))
	require.Equal(t, 200, p.send(benchPath+"/check", "save", fill("")))
	assert.Contains(t, p.was, "Passed")
	good := fill("")
	require.Equal(t, 200, p.send(benchPath+"/check", "sign", good))
	require.Equal(t, benchPath+"/checks/1", p.at)
	assert.Contains(t, p.was, "passed")
	require.Equal(t, 200, p.send(benchPath+"/check", "sign", good), "sent twice, as after a lost answer")
	require.Equal(t, benchPath+"/checks/1", p.at, "it is kept once")

	require.Equal(t, 200, p.get(benchPath+"/check"))
	assert.Contains(t, p.was, `value="25.1`, "the heights of the samples are known from the last time")
	require.Equal(t, 200, p.send(benchPath+"/check", "save", fill("off")))
	assert.Contains(t, p.was, "Other lamps than predicted")
	require.Equal(t, 200, p.send(benchPath+"/check", "sign", fill("off")))
	assert.Contains(t, p.was, "failed")
	require.Equal(t, 200, p.get(benchPath+"/checks"))
	assert.Contains(t, p.was, "The last shift check failed")
	assert.Equal(t, 2, strings.Count(p.was, "revision A"))
	require.Equal(t, 200, p.get(benchPath+"/checks.csv"))
	assert.Equal(t, 1+2*6, strings.Count(p.was, "\n"), "a row for each push, and the head")
	assert.Contains(t, p.was, "WS-210,A,")
	assert.Contains(t, p.was, ",B. Roth,failed,Master,end of the push,")
	assert.Regexp(t, `,on,on,\d+\.\d{4},\d+\.\d{4},off,off,[\d.]+,fail,`, p.was, "predicted both on, came both off")
	assert.Equal(t, 1, strings.Count(p.was, ",fail,"), "one push failed, and it alone is told so")
	require.Equal(t, 200, p.get(benchPath+"/checks.csv?separator=semicolon"))
	assert.Regexp(t, `;on;on;\d+,\d{4};`, p.was)
	require.Equal(t, 200, p.get(benchPath+"/checks/2"))
	assert.Regexp(t, `<th scope="row">Master</th> *<td class="num">FAIL</td> *<td class="num">arrival on, zone on</td> *<td class="num">arrival off, zone off</td>`, p.was)
	require.Equal(t, 200, p.get(benchPath+"/checks.pdf"))
	assert.True(t, strings.HasPrefix(p.was, "%PDF-"))
	require.Equal(t, 200, p.get(provingPath))
	assert.NotContains(t, p.was, `class="studyname">Limit samples`, "a shift check is no study that proves")
}

// provedParts fills an archive with what the pages of proving show: a signed study of the load
// cell, a study that is typed with faults, limit samples that are begun, all against revision A,
// and a shift check.
func provedParts(t testing.TB, store *archive.Archive) {
	t.Helper()
	ctx := t.Context()
	typed, _ := proving.ReadTyped([]byte(exampleStudy(t, "load-cell")))
	k, err := store.StartStudy(ctx, 1, proving.LoadCell, typed)
	require.NoError(t, err)
	_, err = store.SignStudy(ctx, 1, k.ID, k.Version, "A. Weber")
	require.NoError(t, err)
	plan := issuedA(t, store)
	master := proving.NewTyped(proving.Master)
	master.Rows = [][]string{{"100.137", ""}, {"1oo", ""}, {"100.141", "odd"}}
	_, err = store.StartStudy(ctx, 1, proving.Master, master)
	require.NoError(t, err)
	r := press.Evaluate(plan)
	_, err = store.StartStudy(ctx, 1, proving.Samples, proofview.Begun(proving.Samples, today(), "A", r))
	require.NoError(t, err)
	shift := proofview.ShiftBegun(r)
	shift.SetHead("taken_at", today())
	for i, line := range shiftAsPredicted(t, r) {
		copy(shift.Rows[i][1:], strings.Split(line, "\t"))
	}
	_, err = store.AddShiftCheck(ctx, 1, archive.NewCheck{Letter: "A", By: "B. Roth", Passed: proving.Pass, Typed: shift})
	require.NoError(t, err)
}

// TestPostedStudyIsSigned: what a program sent is looked at, and signed by a person, on its page.
func TestPostedStudyIsSigned(t *testing.T) {
	store := exampleArchive(t)
	p := plainly(t, New(store))
	study, faults := proving.Decode([]byte(masterJSON))
	require.Empty(t, faults)
	_, err := store.PostStudy(t.Context(), 1, study, "logger")
	require.NoError(t, err)
	require.Equal(t, 200, p.get(provingPath))
	assert.Contains(t, p.was, "Look at it and sign")
	require.Equal(t, 200, p.get(provingPath+"/1"))
	assert.NotContains(t, p.was, `name="rows[0].0"`, "it is not typed over")
	require.Equal(t, 200, p.send(p.at, "sign", url.Values{"who": {"A. Weber"}}))
	assert.Contains(t, p.was, "Signed by A. Weber")
}

// TestStudyOfTomorrow: nobody signs for pushes of a day that has not come yet, and a wrong date
// can still be mended.
func TestStudyOfTomorrow(t *testing.T) {
	p := plainly(t, example(t))
	p.get(provingPath)
	require.Equal(t, 200, p.send(provingPath, "start master", nil))
	ahead := time.Now().UTC().AddDate(1, 0, 0).Format(time.DateOnly)
	fields := func(day string) url.Values {
		return url.Values{"who": {"A. Weber"}, "head.height": {"40"}, "head.taken_at": {day}, "rows[0].0": {"100.137"}}
	}
	require.Equal(t, 422, p.send(p.at, "sign", fields(ahead)))
	assert.Contains(t, p.was, "that day has not come yet")
	require.Equal(t, 200, p.send(p.at, "sign", fields(today())))
	assert.Contains(t, p.was, "Signed by A. Weber")
}
