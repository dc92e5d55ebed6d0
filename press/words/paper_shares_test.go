package words

import (
	"context"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// Each row of the page of the shares has the figures that its name says, of the simulation
// that its notes name: what a program without a bound estimates by the same seed and
// precision is the same, since these plans need fewer points than the bound.
func TestSharesAreOfTheirFigures(t *testing.T) {
	keys := map[string]string{ // by hand from what each name says
		"Accepted, not conforming": "false_accept", "of it too tall or too short": "false_accept_height", "of it not seated": "false_accept_unseated", "of it loose": "false_accept_loose",
		"Conforming, refused": "false_reject", "Met in the approach": "early_contact", "All that are not seated": "unseated", "All that are too tall": "long", "All that are too short": "short",
		"All that are loose, under the margin": "loose", "All that would let go": "loose_fails", "All that are accepted": "accepted",
	}
	for name, c := range keyedPlans {
		p := example(t, c)
		r := press.Evaluate(p)
		page, ok := Paper(SharesPaper, p, r)
		require.True(t, ok)
		s := r.Simulate(context.Background(), press.SimulationOptions{Seed: 1, Precision: 0.1})
		if s.Shares == nil {
			assert.Equal(t, say.NoShares(), page.Lacking, name)
			assert.Empty(t, page.Rows, name)
			continue
		}
		require.True(t, s.Shares.Met, name)
		require.NotEmpty(t, page.Rows, name)
		ppm := func(text string) string { return text + thin + "ppm" }
		for _, row := range page.Rows {
			label, _, _ := strings.Cut(row[0], " (")
			require.Contains(t, keys, label, name)
			e := s.Shares.Named.Of(keys[label])
			assert.Contains(t, row[2], ppm(SimulatedPPM(e.PPM)), "%s, %s", name, label)
			_, limits := shareWithin(*e)
			assert.Contains(t, []string{limits, ppm(limits)}, row[3], "%s, %s", name, label)
			closed := map[string]*float64{"false_accept_height": r.Risk.ConsumerPPM, "false_reject": r.Risk.ProducerPPM, "early_contact": &r.Risk.EarlyContactPPM}[keys[label]]
			if closed == nil {
				assert.Equal(t, none, row[1], "%s, %s", name, label)
			} else {
				figure, marks := figureOf(row[1])
				assert.Equal(t, ppm(closedPPM(*closed)), figure, "%s, %s", name, label)
				assert.Equal(t, *closed < 100, marks != "", "%s, %s: a small figure has its marks", name, label)
			}
			if b := s.BadLot; b != nil {
				lot, small := none, false
				for key, x := range map[string]float64{"unseated": b.UnseatedPPM, "loose": b.LoosePPM, "false_accept": b.FalseAcceptPPM, "false_reject": b.FalseRejectPPM} {
					if key == keys[label] {
						lot, small = ppm(SimulatedPPM(x)), x < 100
					}
				}
				figure, marks := figureOf(row[4])
				assert.Equal(t, lot, figure, "%s, %s", name, label)
				assert.Equal(t, small, marks != "", "%s, %s: a small figure has its marks", name, label)
			}
			// What is said beside it has its mark at the figure, and under the rows.
			for _, one := range s.Says {
				for _, key := range one.Shares {
					if key == keys[label] {
						said := saying(&one)
						i := indexOf(page.Notes, said)
						require.GreaterOrEqual(t, i, 0, "%s: %s", name, said)
						mark := strings.TrimSuffix(page.Notes[i], " "+said)
						assert.NotEmpty(t, mark)
						assert.Contains(t, strings.Join(row[1:], " "), mark, "%s, %s", name, label)
					}
				}
			}
		}
		require.Len(t, page.Then, 1)
		matrix := s.Shares.Matrix.All()
		require.Len(t, page.Then[0].Rows, len(matrix))
		for i, row := range matrix {
			for j, cell := range row.All() {
				assert.Equal(t, say.MatrixCell(*cell), page.Then[0].Rows[i][1+j], "%s, %d %d", name, i, j)
			}
		}
		notes := strings.Join(page.Notes, "\n")
		assert.Contains(t, notes, "Estimated from 16 times "+count(int64(s.Shares.Points))+" points, seed 1")
		assert.Contains(t, notes, "ramplan simulate -seed 1 -precision 0.1 -json")
	}
}

// figureOf takes the marks off a figure.
func figureOf(cell string) (figure, marks string) {
	figure = strings.TrimRight(cell, "†‡§¶‖")
	figure = strings.TrimSuffix(figure, " ")
	return figure, cell[len(figure):]
}

// indexOf is the place of the text that ends so; below 0 without one.
func indexOf(texts []string, end string) int {
	for i, text := range texts {
		if strings.HasSuffix(text, end) {
			return i
		}
	}
	return -1
}

// In a file of rows the two tables stand one behind the other, figures apart from their
// units and marks.
func TestSharesInRows(t *testing.T) {
	p := example(t, nil)
	r := press.Evaluate(p)
	page, _ := Paper(SharesPaper, p, r)
	file := string(RowsFile([]Table{page}, IdentityOf(p, r, "", ""), Separations[0]))
	first, second, both := strings.Cut(file, "\r\n\r\n")
	require.True(t, both)
	assert.Contains(t, first, "Share of all parts,Closed form,\"Closed form, unit\",\"Closed form, note\",Simulated,")
	e := r.PaperShares().Shares.Named.FalseAccept
	assert.Contains(t, first, ","+SimulatedPPM(e.PPM)+",ppm,†‡,", "the marks stand apart")
	assert.Contains(t, second, "The part is,")
	assert.Contains(t, second, "What the parts are, and what the station says")
	assert.Len(t, strings.Split(strings.TrimSpace(second), "\r\n"), 6, "the head and five truths")
}
