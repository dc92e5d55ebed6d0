package paper

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
)

func shiftsOf(n int) ShiftHistory {
	h := ShiftHistory{Number: "WS-210", Name: "Bearing sleeve into anemometer hub", From: "2026-11-01", To: "2026-11-28", Day: "2026-11-28"}
	for i := range n {
		row := ShiftRow{When: fmt.Sprintf("2026-11-%02d 06:0%d", 1+i/6%28, i%6), Who: "M. Weber", Revision: "A", Sample: "tall A", Predicted: "on · off", Came: "on · off", Passed: true}
		if i%50 == 7 {
			row.Came, row.Passed, row.Who = "on · on", false, "Maximilian von und zu Weberhausen the Younger"
		}
		h.Rows = append(h.Rows, row)
	}
	return h
}

// TestShiftHistory: every check stands on one page, whole and apart from the others; what
// failed says so, and the last page has the lines to sign on.
func TestShiftHistory(t *testing.T) {
	for _, n := range []int{0, 1, 20, 30, 31, 32, 33, 34, 35, 36, 37, 38, 39, 40, 300} {
		d := NewShiftHistory(shiftsOf(n))
		count := 0
		for i, page := range append(d.Pages(), d.Whole()) {
			var texts []drawtest.Box
			dates := 0
			for _, l := range page.Texts() {
				texts = append(texts, drawtest.Box{Text: l.Text, X0: l.X0, Y0: l.Y0, X1: l.X1, Y1: l.Y1})
				if l.Text == "Date" {
					dates++
				}
				if i < len(d.Pages()) && (l.Text == "pass" || l.Text == "FAIL") {
					count++
				}
			}
			drawtest.Apart(t, texts, page.Width, page.Height, fmt.Sprintf("%d checks, page %d", n, i+1))
			want := 0
			if i >= len(d.Pages())-1 {
				want = 2
			}
			assert.Equal(t, want, dates, "%d checks, page %d", n, i+1)
		}
		assert.Equal(t, n, count)
		for _, format := range canvas.Formats() {
			var b bytes.Buffer
			require.NoError(t, d.Write(&b, format))
		}
		if *proofLook != "" && n > 30 {
			var b bytes.Buffer
			require.NoError(t, d.Pages()[len(d.Pages())-1].PNG(&b))
			require.NoError(t, os.WriteFile(filepath.Join(*proofLook, fmt.Sprintf("shift-%d.png", n)), b.Bytes(), 0o644))
		}
	}
	all := NewShiftHistory(shiftsOf(60)).Whole().Description()
	assert.Contains(t, all, "2 failed")
	assert.Equal(t, 2, strings.Count(all, "FAIL"))
}
