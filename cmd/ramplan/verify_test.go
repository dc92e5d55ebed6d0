package main

import (
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/issue"
	"ramplan/press/words"
)

// TestVerify draws an issued revision from the archive, beside the process that
// serves it, and compares the sheet with what was issued there and elsewhere.
func TestVerify(t *testing.T) {
	ctx, dir, other, folder := context.Background(), t.TempDir(), t.TempDir(), t.TempDir()
	data, err := os.ReadFile(examplePlan)
	require.NoError(t, err)
	plan, faults := press.Decode(data)
	require.Empty(t, faults)
	for _, d := range []string{dir, other} {
		a, err := archive.Open(ctx, d, archive.Options{First: []*press.Draft{plan.Draft()}})
		require.NoError(t, err)
		reason := "First issue"
		if d == other {
			reason = "Another one"
		}
		_, err = a.Issue(ctx, 1, archive.At(1), issue.Signed{Prepared: "P", Checked: "C", Approved: "A", Reason: reason})
		require.NoError(t, err)
		draft := plan.Draft()
		draft.Set("station.nest", "141")
		_, err = a.Save(ctx, 1, archive.At(1), draft, "")
		require.NoError(t, err)
		require.NoError(t, a.Close())
	}
	_, stop := served(t, "-data", dir, "-listen", "127.0.0.1:0")
	for _, ending := range []string{".pdf", ".png", ".svg"} {
		issued, draft := filepath.Join(folder, "issued"+ending), filepath.Join(folder, "draft"+ending)
		status, _, errs := command(t, "", "draw", "-data", dir, "-plan", "WS-210", "-revision", "a", "-o", issued)
		require.Equal(t, 0, status, errs)
		status, out, _ := command(t, "", "verify", "-data", dir, issued)
		assert.Equal(t, 0, status, out)
		assert.Contains(t, out, "the plan inside is revision A of WS-210")
		assert.Contains(t, out, "what is printed was not compared")
		whole, err := os.ReadFile(issued)
		require.NoError(t, err)
		cut := filepath.Join(folder, "cut"+ending)
		require.NoError(t, os.WriteFile(cut, whole[:len(whole)-len(whole)/50], 0o600))
		status, _, errs = command(t, "", "verify", "-data", dir, cut)
		assert.Equal(t, statusDiffers, status, "%s: its end is missing", ending)
		assert.Contains(t, errs, "the end of the file is missing")
		status, out, _ = command(t, "", "verify", "-data", other, issued)
		assert.Equal(t, 1, status, out)
		assert.Contains(t, out, "date, names or reason on the sheet are others")

		status, _, errs = command(t, "", "draw", "-data", dir, "-plan", "WS-210", "-o", draft)
		require.Equal(t, 0, status, errs)
		status, out, _ = command(t, "", "verify", "-data", dir, draft)
		assert.Equal(t, 1, status)
		assert.Contains(t, out, "printed from a draft that was never issued")
	}
	status, out, errs := command(t, "", "verify", "-data", dir, examplePlan)
	assert.Equal(t, 0, status, errs)
	assert.Contains(t, out, "issued as revision A of WS-210", "a plan file is compared too")
	status, out, _ = command(t, "", "verify", "-data", dir, "../../static/examples/pivot-pin.json")
	assert.Equal(t, 1, status)
	assert.Contains(t, out, "never issued")
	require.Equal(t, 0, stop())
	for _, c := range []struct {
		args []string
		want string
	}{
		{[]string{"verify", "-data", dir}, "the name of one sheet"},
		{[]string{"verify", "-data", dir, "0123abcd"}, "give the first 12"},
		{[]string{"verify", "-data", dir, "verify_test.go"}, "neither an SVG, a PNG nor a PDF"},
		{[]string{"verify", "-data", t.TempDir(), filepath.Join(folder, "issued.pdf")}, "There is no archive"},
		{[]string{"draw", "-data", dir, "-plan", "WS-211", "-o", "x.pdf"}, `has the number "WS-211"`},
		{[]string{"draw", "-data", dir, "-plan", "WS-210", "-revision", "Q", "-o", "x.pdf"}, "has a revision Q"},
		{[]string{"draw", "-data", dir, "-revision", "A", "-o", "x.pdf", examplePlan}, "-revision needs -plan"},
		{[]string{"draw", "-data", dir, "-plan", "WS-210", "-o", "x.pdf", examplePlan}, "not from both"},
	} {
		status, out, errs := command(t, "", c.args...)
		assert.Equal(t, 2, status, c.args)
		assert.Empty(t, out)
		assert.Contains(t, errs, c.want, c.args)
	}
}

// Where a newer revision was issued, what was printed before is said to be superseded;
// a digest may be typed as it is read from paper.
func TestVerifySaysSuperseded(t *testing.T) {
	ctx, dir, folder := context.Background(), t.TempDir(), t.TempDir()
	data, err := os.ReadFile(examplePlan)
	require.NoError(t, err)
	plan, faults := press.Decode(data)
	require.Empty(t, faults)
	a, err := archive.Open(ctx, dir, archive.Options{First: []*press.Draft{plan.Draft()}})
	require.NoError(t, err)
	signed := issue.Signed{Prepared: "P", Checked: "C", Approved: "A", Reason: "First issue"}
	_, err = a.Issue(ctx, 1, archive.At(1), signed)
	require.NoError(t, err)
	sheet := filepath.Join(folder, "a.pdf")
	status, _, errs := command(t, "", "draw", "-data", dir, "-plan", "WS-210", "-revision", "A", "-o", sheet)
	require.Equal(t, 0, status, errs)
	digits := words.ShortDigest(plan.Digest())
	typed := strings.ToUpper(digits[:4] + " " + digits[4:8] + " " + digits[8:])
	for name, args := range map[string][]string{
		"a sheet": {sheet}, "a plan": {examplePlan}, "a digest": {digits}, "typed in one": {typed}, "typed in three": strings.Fields(typed), "with its name": {"sha256:" + digits},
	} {
		status, out, errs := command(t, "", append([]string{"verify", "-data", dir}, args...)...)
		assert.Equal(t, 0, status, "%s: %s%s", name, out, errs)
		assert.Contains(t, out, "revision A of WS-210", name)
		assert.NotContains(t, out, "SUPERSEDED", name)
	}

	draft := plan.Draft()
	draft.Set("station.nest", "141")
	_, err = a.Save(ctx, 1, archive.At(1), draft, "")
	require.NoError(t, err)
	signed.Reason = "Nest set anew"
	newer, err := a.Issue(ctx, 1, archive.At(2), signed)
	require.NoError(t, err)
	require.NoError(t, a.Close())
	for name, args := range map[string][]string{"a sheet": {sheet}, "a plan": {examplePlan}, "a digest": strings.Fields(typed)} {
		status, out, _ := command(t, "", append([]string{"verify", "-data", dir}, args...)...)
		assert.Equal(t, 3, status, name)
		assert.Contains(t, out, "revision A of WS-210", name)
		assert.Contains(t, out, "SUPERSEDED BY REVISION B, issued "+newer.At.Local().Format(time.DateOnly), name)
	}
	status, _, errs = command(t, "", "draw", "-data", dir, "-plan", "WS-210", "-revision", "A", "-o", sheet)
	assert.Equal(t, 0, status)
	assert.Contains(t, errs, "revision A is superseded by revision B")
	status, out, _ := command(t, "", "verify", "-data", dir, words.ShortDigest(newer.PlanDigest))
	assert.Equal(t, 0, status)
	assert.Contains(t, out, "the digest of revision B of WS-210")
	status, out, _ = command(t, "", "verify", "-data", dir, "0123 4567 89ab")
	assert.Equal(t, 1, status)
	assert.Contains(t, out, "no revision and no draft in the archive has a digest that begins so")
	status, _, errs = command(t, "", "verify", "-data", dir, sheet, sheet)
	assert.Equal(t, 2, status)
	assert.Contains(t, errs, "the name of one sheet")
	status, _, errs = command(t, "", "verify", "-data", dir, "0123456789")
	assert.Equal(t, 2, status, "ten digits are too few: it is a file that is not there")
	assert.Contains(t, errs, "0123456789")
}

// TestVerifyFindsADraft: the digest of a printed draft leads to the state that it was
// printed from, also where the draft was changed since.
func TestVerifyFindsADraft(t *testing.T) {
	ctx, dir := context.Background(), t.TempDir()
	data, err := os.ReadFile(examplePlan)
	require.NoError(t, err)
	plan, faults := press.Decode(data)
	require.Empty(t, faults)
	a, err := archive.Open(ctx, dir, archive.Options{First: []*press.Draft{plan.Draft()}})
	require.NoError(t, err)
	old := words.ShortDigest(plan.Digest())
	status, out, _ := command(t, "", "verify", "-data", dir, old)
	assert.Equal(t, 1, status)
	assert.Regexp(t, `a draft state of .+, not issued; the draft stands so today, of WS-210\n`, out)
	draft := plan.Draft()
	draft.Set("station.nest", "141")
	_, err = a.Save(ctx, 1, archive.Start{Version: 1}, draft, "")
	require.NoError(t, err)
	require.NoError(t, a.Close())
	status, out, _ = command(t, "", "verify", "-data", dir, strings.ToUpper(old))
	assert.Equal(t, 1, status)
	assert.Regexp(t, `a draft state of .+, not issued, of WS-210\n`, out)
}
