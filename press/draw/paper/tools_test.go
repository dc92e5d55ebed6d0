package paper

import (
	"bytes"
	"image"
	"image/png"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/carry"
	"ramplan/press/draw/drawtest"
	"ramplan/press/words"
)

// sheetFile writes the sheet of the example plan in a format.
func sheetFile(t *testing.T, o SheetOptions, format string) (p *press.Plan, r *press.Result, file string) {
	t.Helper()
	p = drawtest.Example(t, nil)
	r = press.Evaluate(p)
	file = filepath.Join(t.TempDir(), "sheet."+format)
	require.NoError(t, os.WriteFile(file, written(t, NewSheet(p, r, o), format, 0), 0o644))
	return p, r, file
}

func comesOut(t *testing.T, file string, want *press.Result, issue *carry.Issue) {
	t.Helper()
	data, err := os.ReadFile(file)
	require.NoError(t, err)
	got, err := carry.Extract(data)
	require.NoError(t, err)
	assert.Equal(t, want.PlanDigest(), got.Digest)
	assert.Equal(t, issue, got.Issue)
}

// TestSoundPDF: another program finds the file sound, and the plan outlives what
// such programs do to a file when they save it.
func TestSoundPDF(t *testing.T) {
	_, r, pdf := sheetFile(t, SheetOptions{Issue: issued}, "pdf")
	assert.Contains(t, drawtest.Tool(t, "qpdf", "--check", pdf), "No syntax or stream encoding errors")
	for _, how := range [][]string{
		{"--object-streams=generate", "--recompress-flate", "--compression-level=9"},
		{"--stream-data=uncompress"}, {"--qdf"}, {"--linearize"}, {"--object-streams=generate", "--stream-data=uncompress"},
	} {
		again := filepath.Join(t.TempDir(), "again.pdf")
		drawtest.Tool(t, "qpdf", append(how, pdf, again)...)
		comesOut(t, again, r, issued)
	}
	locked := filepath.Join(t.TempDir(), "locked.pdf")
	drawtest.Tool(t, "qpdf", "--encrypt", "u", "o", "256", "--", pdf, locked)
	data, err := os.ReadFile(locked)
	require.NoError(t, err)
	_, err = carry.Extract(data)
	assert.ErrorIs(t, err, carry.ErrLocked)
}

// TestSoundPNG: the plan outlives a program that makes a picture smaller.
func TestSoundPNG(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	d, err := NewSingle("cycle", p, r, 60, false, SheetOptions{})
	require.NoError(t, err)
	png := filepath.Join(t.TempDir(), "cycle.png")
	require.NoError(t, os.WriteFile(png, written(t, d, "png", 0), 0o644))
	small := filepath.Join(t.TempDir(), "small.png")
	drawtest.Tool(t, "optipng", "-quiet", "-o1", "-out", small, png)
	comesOut(t, small, r, nil)
}

// TestFonts: every font of the file is inside it, cut down, and its text can be
// taken out.
func TestFonts(t *testing.T) {
	_, _, pdf := sheetFile(t, SheetOptions{}, "pdf")
	lines := strings.Split(strings.TrimSpace(drawtest.Tool(t, "pdffonts", pdf)), "\n")
	require.Len(t, lines, 4, "two fonts under two lines of heading")
	for _, line := range lines[2:] {
		f := strings.Fields(line)
		assert.Equal(t, []string{"yes", "yes", "yes"}, f[len(f)-5:len(f)-2], "embedded, subset, with Unicode: %s", line)
	}
}

// TestTextOfPDF: every text of every page is found by another program.
func TestTextOfPDF(t *testing.T) {
	p, r, pdf := sheetFile(t, SheetOptions{Issue: issued}, "pdf")
	found := squeezed(drawtest.Tool(t, "pdftotext", "-raw", pdf, "-"))
	d := NewSheet(p, r, SheetOptions{Issue: issued})
	texts := 0
	for i := range d.Pages() {
		for _, l := range d.Page(i).Texts() {
			texts++
			assert.Contains(t, found, squeezed(l.Text))
		}
	}
	assert.Greater(t, texts, 150)
	for _, s := range words.Setpoints(p, r) {
		assert.Contains(t, found, s.Value)
	}
	info := drawtest.Tool(t, "pdfinfo", pdf)
	for _, want := range []string{"WS-210 Bearing sleeve into anemometer hub", "A. Anders", "2026", "841.89 x 595.28 pts (A4)"} { // ISO 216 in points
		assert.Contains(t, info, want)
	}
	assert.Contains(t, drawtest.Tool(t, "pdfdetach", "-list", pdf), carry.FileName)
}

// Tolerances of the comparison below: of the grey (0 to 255) of a square of one
// mm, where letters and lines are smoothed in another way, and of the mean of
// all.
const (
	squareTolerance = 80
	meanTolerance   = 2.0
)

// TestPDFLooksLikePNG: the PDF, rendered by another program, is the PNG.
func TestPDFLooksLikePNG(t *testing.T) {
	if testing.Short() {
		t.Skip("rendering and comparing a page takes its time; not in short runs")
	}
	_, _, pdf := sheetFile(t, SheetOptions{}, "pdf")
	_, _, ours := sheetFile(t, SheetOptions{}, "png")
	prefix := filepath.Join(t.TempDir(), "page")
	drawtest.Tool(t, "pdftoppm", "-r", "300", "-f", "1", "-singlefile", "-png", pdf, prefix)
	a, b := squares(t, ours), squares(t, prefix+".png")
	require.Equal(t, len(a), len(b))
	sum, most, moved, inked := 0.0, 0.0, 0.0, 0
	for i := range a {
		off := math.Abs(a[i] - b[i])
		sum, most = sum+off, math.Max(most, off)
		moved += math.Abs(a[i] - b[(i+2)%len(b)])
		if a[i] < 250 {
			inked++
		}
	}
	t.Logf("a square of one mm differs by %.1f at most, %.2f on average; %d of %d hold something", most, sum/float64(len(a)), inked, len(a))
	assert.Less(t, most, float64(squareTolerance))
	assert.Less(t, sum/float64(len(a)), meanTolerance)
	assert.Greater(t, moved/float64(len(a)), 2*meanTolerance, "the comparison does not even see 2 mm")
	assert.Greater(t, inked, len(a)/10)
}

// squares gives the mean grey of every square of 12 dots, which is 1 mm.
func squares(t *testing.T, file string) []float64 {
	t.Helper()
	data, err := os.ReadFile(file)
	require.NoError(t, err)
	picture, err := png.Decode(bytes.NewReader(data))
	require.NoError(t, err)
	m, ok := picture.(*image.RGBA)
	require.True(t, ok, "%s is of another kind: %T", file, picture)
	const side = 12
	var out []float64
	for y := 0; y+side <= 2480; y += side { // 210 mm at 300 dots an inch
		for x := 0; x+side <= 3507; x += side {
			out = append(out, greyness(m, image.Rect(x, y, x+side, y+side)))
		}
	}
	return out
}

// greyness is the mean of a part of a picture without holes.
func greyness(m *image.RGBA, r image.Rectangle) float64 {
	sum := 0
	for y := r.Min.Y; y < r.Max.Y; y++ {
		row := m.Pix[m.PixOffset(r.Min.X, y):m.PixOffset(r.Max.X, y)]
		for i := 0; i < len(row); i += 4 {
			sum += 30*int(row[i]) + 59*int(row[i+1]) + 11*int(row[i+2])
		}
	}
	return float64(sum) / 100 / float64(r.Dx()*r.Dy())
}
