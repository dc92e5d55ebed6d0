package web

import (
	"io"
	"net/http"
	"net/http/httptest"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"

	"ramplan/press/archive"
	"ramplan/press/proving"
)

// signedExample keeps an example study of the example plan, signed.
func signedExample(t testing.TB, store *archive.Archive, name string) archive.KeptStudy {
	t.Helper()
	typed, lines := proving.ReadTyped([]byte(exampleStudy(t, name)))
	require.NotNil(t, typed, lines)
	k, err := store.StartStudy(t.Context(), 1, typed.Kind, typed)
	require.NoError(t, err)
	k, err = store.SignStudy(t.Context(), 1, k.ID, k.Version, "A. Weber")
	require.NoError(t, err)
	return k
}

// textAfter is the text of a page from an element on, words apart by one blank.
func textAfter(t testing.TB, body, id string) string {
	t.Helper()
	_, body, found := strings.Cut(body, `id="`+id+`"`)
	require.True(t, found, id)
	return strings.Join(strings.Fields(html.UnescapeString(regexp.MustCompile(`<[^>]*>`).ReplaceAllString(body, " "))), " ")
}

// TestNestCorrectionIsShown: of a trial whose station is off by more than is unsure, the page says
// by how many steps the nest is to move, and what share of the parts gives which lamps before and
// after: figures of the design page, section 10, computed by a second implementation.
func TestNestCorrectionIsShown(t *testing.T) {
	store := exampleArchive(t)
	signedExample(t, store, "trial-parts")
	p := plainly(t, New(store))
	require.Equal(t, http.StatusOK, p.get(provingPath+"/1"))
	said := textAfter(t, p.was, "correction")
	assert.Contains(t, said, "Enter the nest as 140.01 mm, 1 step of 0.01 mm past the plan's: 99.71 % of the parts then give both lamps, as it is 98.6 %.")
	assert.Contains(t, said, "Share of parts Now After both on 98.6 % 99.71 %", "0.985646 to 0.997145, rounded")
	require.Equal(t, http.StatusOK, p.send(p.at, "take all", nil))
	head, err := store.Get(t.Context(), 1)
	require.NoError(t, err)
	nest, _ := head.Draft.Get("station.nest")
	assert.Equal(t, "140.01", nest, "design page, section 10")
}

// recordOf is what stands on all pages of a sheet with the proof of the station behind it.
func recordOf(p *plainBrowser, query string) string {
	p.t.Helper()
	require.Equal(p.t, http.StatusOK, p.get(benchPath+"/sheet?behind=record"+query))
	all := ""
	for _, m := range regexp.MustCompile(`"(`+benchPath+`/sheet\.svg\?[^"]*)"`).FindAllStringSubmatch(p.was, -1) {
		was := p.was
		require.Equal(p.t, http.StatusOK, p.get(html.UnescapeString(m[1])))
		all, p.was = all+p.was, was
	}
	return all
}

// TestRecordSaysWhatWasTaken: the record behind the sheet says which values came from which
// study, of the draft what stands in it still, of a revision what it was issued with.
func TestRecordSaysWhatWasTaken(t *testing.T) {
	store := exampleArchive(t)
	k := signedExample(t, store, "trial-parts")
	p := plainly(t, New(store))
	const title = "Taken over from studies"
	assert.NotContains(t, recordOf(p, ""), title)
	take := func() {
		require.Equal(t, http.StatusOK, p.get(provingPath+"/1"))
		require.Equal(t, http.StatusOK, p.send(p.at, "take all", nil))
	}
	take()
	record := recordOf(p, "")
	assert.Contains(t, record, title)
	short := k.Digest[len("sha256:"):][:12]
	record = strings.Join(strings.Fields(regexp.MustCompile(`<[^>]*>`).ReplaceAllString(record, " ")), " ")
	row := record[strings.LastIndex(record, title):]
	row, _, _ = strings.Cut(row, "Signed")
	for _, said := range []string{time.Now().Format(time.DateOnly), short, "Nest", "140.000 mm", "140.010 mm"} {
		assert.Contains(t, row, said)
	}

	head, err := store.Get(t.Context(), 1)
	require.NoError(t, err)
	head, err = store.Undo(t.Context(), 1, archive.At(head.Version))
	require.NoError(t, err)
	assert.NotContains(t, recordOf(p, ""), title, "it was undone")
	d := head.Draft
	d.Set("station.nest", "140.01")
	_, err = store.Save(t.Context(), 1, archive.At(head.Version), d, "station.nest")
	require.NoError(t, err)
	assert.NotContains(t, recordOf(p, ""), title, "the same figure, but typed")
	head, err = store.Get(t.Context(), 1)
	require.NoError(t, err)
	_, err = store.Undo(t.Context(), 1, archive.At(head.Version))
	require.NoError(t, err)

	take()
	issuedA(t, store)
	assert.Contains(t, recordOf(p, "&revision=A"), title)
	head, err = store.Get(t.Context(), 1)
	require.NoError(t, err)
	d = head.Draft
	d.Set("station.nest", "140.02")
	_, err = store.Save(t.Context(), 1, archive.At(head.Version), d, "station.nest")
	require.NoError(t, err)
	assert.NotContains(t, recordOf(p, "&revision=draft"), title, "changed by hand since")
	assert.Contains(t, recordOf(p, "&revision=A"), title, "what was issued stays what it is")
}

// BenchmarkSignedStudyPage is the page of a signed trial of 10,000 parts, asked for the first
// time; aimed at 30 ms.
func BenchmarkSignedStudyPage(b *testing.B) {
	store := exampleArchive(b)
	k := longTrial(b, store, 10_000)
	_, err := store.SignStudy(b.Context(), 1, k.ID, k.Version, "A. Weber")
	require.NoError(b, err)
	b.ReportAllocs()
	for b.Loop() {
		srv := httptest.NewServer(New(store)) // that remembers nothing
		resp, err := srv.Client().Get(srv.URL + provingPath + "/1")
		if err != nil || resp.StatusCode != http.StatusOK {
			b.Fatal(err, resp.StatusCode)
		}
		_, _ = io.Copy(io.Discard, resp.Body)
		_ = resp.Body.Close()
		srv.Close()
	}
}
