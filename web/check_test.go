package web

import (
	"net/url"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/issue"
	"ramplan/press/proving"
	"ramplan/press/words/proof"
	proofview "ramplan/web/view/proving"
)

// shiftAsPredicted are the rows of a shift check without fault, as they are typed: height, lamps
// and reading. They are computed from the plan, as the page's predictions are: what is tested
// here is what the page makes of them.
func shiftAsPredicted(t testing.TB, r *press.Result) []string {
	t.Helper()
	var say proof.Words
	study := &proving.Study{Format: proving.Format, Kind: proving.Samples, TakenAt: today()}
	for _, x := range say.ShiftPushes(r) {
		if !x.First {
			study.Rows = append(study.Rows, proving.Row{Sample: x.Sample, Height: x.Height, Arrival: new(false), Zone: new(false)})
		}
	}
	lamp := map[bool]string{true: "on", false: "off"}
	var lines []string
	for i, x := range proving.Assess(r, []*proving.Study{study}, today()).Studies[0].Result.(*proving.SamplesResult).Rows {
		require.NotNil(t, x.Arrival)
		height, reading := "", ""
		if h := study.Rows[i].Height; h != nil {
			height = strconv.FormatFloat(*h, 'f', 3, 64)
		}
		if *x.Arrival {
			reading = strconv.FormatFloat(*x.PredictedReading, 'f', 3, 64)
		}
		lines = append(lines, strings.Join([]string{height, lamp[*x.Arrival], lamp[*x.Zone], reading}, "\t"))
	}
	return lines
}

// shiftForm is a form of a shift check filled in so.
func shiftForm(t testing.TB, r *press.Result) url.Values {
	t.Helper()
	form := url.Values{"who": {"B. Roth"}}
	for i, row := range proofview.ShiftBegun(r).Rows {
		form.Set("rows["+strconv.Itoa(i)+"].0", row[0])
		for j, cell := range strings.Split(shiftAsPredicted(t, r)[i], "\t") {
			form.Set("rows["+strconv.Itoa(i)+"]."+strconv.Itoa(j+1), cell)
		}
	}
	return form
}

// probedArchive holds the worked example of a probe as its first plan, issued.
func probedArchive(t *testing.T) (*archive.Archive, *press.Result) {
	t.Helper()
	data, err := os.ReadFile("../static/examples/pivot-bush.json")
	require.NoError(t, err)
	p, faults := press.Decode(data)
	require.Empty(t, faults)
	store, err := archive.Open(t.Context(), t.TempDir(), archive.Options{First: []*press.Draft{p.Draft()}})
	require.NoError(t, err)
	t.Cleanup(func() { _ = store.Close() })
	head, err := store.Get(t.Context(), 1)
	require.NoError(t, err)
	rev, err := store.Issue(t.Context(), 1, archive.At(head.Version), issue.Signed{Prepared: "A. Weber", Checked: "B. Roth", Approved: "C. Lind", Reason: "first"})
	require.NoError(t, err)
	return store, press.Evaluate(rev.Plan)
}

// pushOf is the part of a page that shows a push.
func pushOf(t testing.TB, page, name string) string {
	t.Helper()
	for _, part := range strings.Split(page, `<li class="block checkcard`)[1:] {
		if _, head, _ := strings.Cut(part, "<h2>"); strings.Contains(strings.SplitN(head, "</h2>", 2)[0], ". "+name+" ") {
			return part
		}
	}
	require.Fail(t, "no push "+name)
	return ""
}

// TestShiftCheckWithProbe: the first look judges what has nothing to stall in, and the check
// passes only when both looks passed. That a loose sample and a nest without an insert must show
// neither lamp at the first look is the plan's own prediction, as its printed page has it.
func TestShiftCheckWithProbe(t *testing.T) {
	store, r := probedArchive(t)
	p := plainly(t, New(store))
	const check = "/plans/1/check"
	require.Equal(t, 200, p.get(check))
	assert.Contains(t, p.was, "with the probe left out, which a qualified person sets")
	form := shiftForm(t, r)
	var first []string
	for i, l := range proofview.LooksBegun(r) {
		require.NotNil(t, l.Lamps, l.Sample)
		arrival, zone := proofview.LookNames(i)
		form.Set(arrival, "off")
		form.Set(zone, "off")
		first = append(first, l.Sample)
	}
	assert.Contains(t, first, "Loose sample")
	assert.Contains(t, pushOf(t, p.was, "Loose sample"), "refused at the first look, arrival off, zone off, no press")
	assert.Contains(t, pushOf(t, p.was, "Master"), "with the probe left out")

	loose, _ := proofview.LookNames(len(first) - 1)
	form.Del(loose)
	require.Equal(t, 422, p.send(check, "sign", form), "the loose sample is still to be pushed")
	assert.Contains(t, p.was, "1 push is not filled in")
	form.Set(loose, "on")
	require.Equal(t, 200, p.send(check, "save", form))
	assert.Contains(t, pushOf(t, p.was, "Loose sample"), "check-fail")
	require.Equal(t, 200, p.send(check, "sign", form))
	require.Equal(t, "/plans/1/checks/1", p.at)
	assert.Regexp(t, `Loose sample, first look</th> *<td class="num">FAIL</td> *<td class="num">arrival off, zone off</td> *<td class="num">arrival on, zone off</td>`, p.was)
	k, err := store.Study(t.Context(), 1, 1)
	require.NoError(t, err)
	assert.Equal(t, proving.Fail, k.Check.Passed)
	assert.Contains(t, k.Study.Notes, "First look, Loose sample: arrival on, zone off; not refused")

	require.Equal(t, 200, p.get(check))
	assert.Contains(t, p.was, "The last shift check failed")
	require.Equal(t, 200, p.get("/plans/1/station"))
	assert.Contains(t, p.was, "The last shift check failed")
	assert.Contains(t, p.was, `id="tocheck" href="/plans/1/check"`)

	form.Set(loose, "off")
	require.Equal(t, 200, p.get(check))
	form.Set(":once", "another")
	require.Equal(t, 200, p.send(check, "sign", form))
	assert.Equal(t, "/plans/1/checks/2", p.at)
	require.Equal(t, 200, p.get("/plans/1/station"))
	assert.NotContains(t, p.was, "The last shift check failed")
	require.Equal(t, 200, p.get("/plans/1/checks.csv"))
	assert.Contains(t, p.was, ",Loose sample,first look,,off,off,,,on,off,,fail,")

	k, err = store.StartStudy(t.Context(), 1, proving.Samples, proofview.Begun(proving.Samples, today(), "A", r))
	require.NoError(t, err)
	for _, at := range []string{"", "/cards"} {
		require.Equal(t, 200, p.get(provingPath+"/"+strconv.Itoa(int(k.ID))+at))
		assert.Contains(t, p.was, "These rows do not prove the probe; the shift check does", at)
	}

	typed := proving.NewTyped(proving.Event)
	typed.SetHead("taken_at", today())
	typed.SetHead("event", proving.Crash)
	crash, err := store.StartStudy(t.Context(), 1, proving.Event, typed)
	require.NoError(t, err)
	_, err = store.SignStudy(t.Context(), 1, crash.ID, crash.Version, "A. Weber")
	require.NoError(t, err)
	for _, at := range []string{check, "/plans/1/station", "/plans/1/proving"} {
		require.Equal(t, 200, p.get(at))
		assert.Contains(t, p.was, "A crash was written down", at)
	}
}

// TestWrongLampAtOnce: a push is judged by its lamps as soon as one is wrong, before its height
// is typed, and no push passes without the reading that the printed page asks for.
func TestWrongLampAtOnce(t *testing.T) {
	store := exampleArchive(t)
	r := press.Evaluate(issuedA(t, store))
	p := plainly(t, New(store))
	form := shiftForm(t, r)
	at := map[string]string{}
	for i, row := range proofview.ShiftBegun(r).Rows {
		at[row[0]] = "rows[" + strconv.Itoa(i) + "]."
	}
	send := func() {
		t.Helper()
		require.Equal(t, 200, p.send(benchPath+"/check", "save", form))
	}
	require.Equal(t, 200, p.get(benchPath+"/check"))
	tall, master := at["Too tall"], at["Master"]
	form.Set(tall+"1", "")
	form.Set(tall+"2", "on")
	form.Set(tall+"3", "on")
	send()
	assert.Contains(t, pushOf(t, p.was, "Too tall"), "Other lamps than predicted", "both on means good: a tall sample must be refused")
	assert.Contains(t, pushOf(t, p.was, "Too tall"), "check-fail")
	form.Set(tall+"3", "off") // arrival on, zone off: too tall, by the plan
	send()
	assert.Contains(t, pushOf(t, p.was, "Too tall"), "Type its measured height")
	assert.NotContains(t, p.was, "Passed")

	form = shiftForm(t, r)
	reading := form.Get(master + "4")
	form.Set(master+"4", "")
	send()
	assert.Contains(t, pushOf(t, p.was, "Master"), "to push")
	assert.Contains(t, p.was, "1 push to go")
	x, err := strconv.ParseFloat(reading, 64)
	require.NoError(t, err)
	for off, word := range map[float64]string{0.9: "check-pass", 1.2: "check-fail"} { // of the master's limits, by hand
		form.Set(master+"4", strconv.FormatFloat(x+off*r.MasterWithin(), 'f', 4, 64))
		send()
		assert.Contains(t, pushOf(t, p.was, "Master"), word, off)
	}
}

// TestScreenHasThePapersPushes: the pushes to be filled in are those of the printed page.
func TestScreenHasThePapersPushes(t *testing.T) {
	store := exampleArchive(t)
	r := press.Evaluate(issuedA(t, store))
	var names []string
	for _, row := range proofview.ShiftBegun(r).Rows {
		names = append(names, row[0])
	}
	assert.Equal(t, []string{"empty", "missing", "Master", "Too tall", "Too short", "Loose sample"}, names, "the rows of the printed page, read there")
}

// TestNewSamplesAreNoFaults: a study of limit samples that was only begun has nothing wrong in it.
func TestNewSamplesAreNoFaults(t *testing.T) {
	store := exampleArchive(t)
	r := press.Evaluate(issuedA(t, store))
	begun := proofview.Begun(proving.Samples, today(), "A", r)
	k, err := store.StartStudy(t.Context(), 1, proving.Samples, begun)
	require.NoError(t, err)
	p := plainly(t, New(store))
	require.Equal(t, 200, p.get(provingPath+"/1"))
	assert.NotContains(t, p.was, `class="fault`)
	assert.NotContains(t, p.was, `aria-invalid`)
	assert.Contains(t, p.was, strconv.Itoa(len(begun.Rows))+" rows are still empty")
	begun.Rows[0][slices.Index(begun.Columns, "arrival")] = "on"
	_, err = store.SaveStudy(t.Context(), 1, k.ID, k.Version, begun)
	require.NoError(t, err)
	require.Equal(t, 200, p.get(provingPath+"/1"))
	assert.Contains(t, p.was, "on or off is needed", "a row that was begun tells what it lacks")
}
