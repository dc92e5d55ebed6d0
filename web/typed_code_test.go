package web

import (
	"net/http"
	"net/http/httptest"
	"net/url"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/drill"
	"ramplan/press/training"
	"ramplan/press/words"
)

// typeCode types a code in at the records page, and gives where that leads.
func typeCode(t testing.TB, h http.Handler, code string) (status int, to, text string) {
	t.Helper()
	r := httptest.NewRequest(http.MethodPost, "http://127.0.0.1/plans/1/records", strings.NewReader(url.Values{"code": {code}}.Encode()))
	r.Header.Set("Content-Type", formType)
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	return w.Code, w.Header().Get("Location"), w.Body.String()
}

// codeOfExample is a passed exam on the draft of the example plan. Invented.
func codeOfExample(t testing.TB) drill.Code {
	t.Helper()
	return drill.Code{
		Role: drill.Technician, Passed: true, Digest: words.ShortDigest(mustExample(t).Digest()), Right: 18, Items: 20, Needed: 16, Seed: 1_000_101, Took: 300 * time.Second,
		Day: words.Day(time.Now()), Who: "Kim Ito",
	}
}

// A code becomes one record, which says everywhere that nobody here watched: in the
// list, on its page, on the sheet to sign and in the table. Typed in twice, in whatever
// case, it is one record.
func TestTypedCode(t *testing.T) {
	h, _ := drillSite(t)
	code := codeOfExample(t)
	status, to, text := typeCode(t, h, "  "+strings.ToLower(code.String()))
	require.Equal(t, http.StatusSeeOther, status, text)
	require.Equal(t, "/records/1", to)
	_, again, _ := typeCode(t, h, code.String())
	assert.Equal(t, to, again)
	_, _, page := asked(t, h, http.MethodGet, to, nil)
	for _, s := range []string{words.TypedIn, "Passed on a draft, by a code", "18 of 20 right, 16 needed", code.Day, code.Key(), words.NoMissesInCode, "Technician&#39;s exam"} {
		assert.Contains(t, page, s)
	}
	assert.NotContains(t, page, "Nothing was missed")
	_, _, list := asked(t, h, http.MethodGet, "/plans/1/records", nil)
	assert.Contains(t, list, words.TypedIn)
	assert.Equal(t, 2, strings.Count(list, ">18 of 20 right")+strings.Count(list, "</b> 18 of 20 right"), "in the list, and among those to be trained again: nobody watched")
	for _, address := range []string{"/plans/1/records.csv", "/people.csv", to + "/sheet.svg"} {
		_, _, text := asked(t, h, http.MethodGet, address, nil)
		assert.Contains(t, text, words.TypedIn, address)
		assert.NotContains(t, text, "Nothing was missed", address)
	}
	// Practice is kept as practice, and asks nobody to be trained.
	code = drill.Code{Level: 4, Digest: code.Digest, Right: 9, Items: 18, Seed: 1_000_003, Took: time.Minute, Day: code.Day, Who: "Somebody Else"}
	_, to, _ = typeCode(t, h, code.String())
	_, _, page = asked(t, h, http.MethodGet, to, nil)
	for _, s := range []string{"Practised", "Practice round", "9 of 18 right", words.TypedIn} {
		assert.Contains(t, page, s)
	}
	assert.NotContains(t, page, "needed")
	_, _, list = asked(t, h, http.MethodGet, "/plans/1/records", nil)
	assert.Equal(t, 1, strings.Count(list, "/people?who=Somebody+Else"))
}

// What is mistyped, of another plan, of a day to come or impossible is not taken; what
// was typed stays in the field.
func TestCodesThatAreNotTaken(t *testing.T) {
	h, _ := drillSite(t)
	code := codeOfExample(t)
	right := code.String()
	other, later, never := code, code, code
	other.Digest = "0123456789ab"
	later.Day = words.Day(time.Now().Add(72 * time.Hour))
	never.Right = 3
	issued := code
	issued.Revision = "B"
	for typed, says := range map[string]string{
		"":                                      words.NoCode,
		"ET-P-0":                                words.NoCode,
		strings.Replace(right, "18/", "19/", 1): words.CodeTyped,
		strings.Replace(right, "Ito", "Oti", 1): words.CodeTyped,
		other.String():                          words.CodeOther,
		issued.String():                         words.CodeOther,
		later.String():                          words.CodeFromAfter,
		never.String():                          words.CodeSense,
	} {
		status, _, text := typeCode(t, h, typed)
		assert.Equal(t, http.StatusUnprocessableEntity, status, typed)
		assert.Contains(t, strings.ReplaceAll(text, "&#39;", "'"), says, typed)
		assert.Contains(t, text, `value="`+typed+`"`)
	}
	_, _, list := asked(t, h, http.MethodGet, "/plans/1/records", nil)
	assert.Contains(t, list, "Nobody was trained on this plan yet")
}

// A typed record takes nobody off the list of who is to be trained again, and a failed
// one does not outdo an exam that was passed here.
func TestTypedRecordsCountForNothing(t *testing.T) {
	demand := training.Demand{Exam: "technician", Counts: []string{"d"}}
	typed := training.Record{Sitting: training.TypedInSitting("X"), Who: "A", Exam: "technician", Digest: "d", Passed: true}
	here := training.Record{Sitting: "s", Who: "A", Exam: "technician", Digest: "d", Passed: true}
	assert.Len(t, training.Due([]training.Record{typed}, demand), 1, "a typed pass")
	assert.Empty(t, training.Due([]training.Record{typed, here}, demand), "passed here before")
	typed.Passed = false
	assert.Empty(t, training.Due([]training.Record{typed, here}, demand), "a typed failure after it")
	here.Passed = false
	assert.Len(t, training.Due([]training.Record{typed, here}, demand), 1)
	practice := training.Record{Sitting: training.TypedInSitting("Y"), Who: "B", Exam: training.PracticeExam, Digest: "d"}
	assert.Empty(t, training.Due([]training.Record{practice}, demand), "practice asks nobody")
}
