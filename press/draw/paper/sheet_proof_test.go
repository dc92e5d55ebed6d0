package paper

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
	"ramplan/press/draw/drawtest/grey"
	"ramplan/press/draw/drawtest/pushed"
	"ramplan/press/draw/typeset"
	"ramplan/press/proving"
	"ramplan/press/words/proof"
)

// provedBy is the proof of a station by studies that were never taken, in one of its states.
func provedBy(r *press.Result, state string, list ...pushed.Study) *Proof {
	until := "2027-11-20"
	out := &Proof{Assessment: &proving.Assessment{On: "2026-11-28", Proved: proving.Proved{State: state, Kinds: map[string]proving.KindState{}}}}
	p := &out.Assessment.Proved
	if state == proving.StateProved {
		p.Until = &until
	}
	for _, kind := range proving.Kinds[:6] {
		p.Kinds[kind] = proving.KindState{State: proving.StateMissing}
	}
	for i, s := range list {
		out.Studies = append(out.Studies, s.Study)
		out.Assessment.Studies = append(out.Assessment.Studies, *s.Judged)
		if s.Study.Kind != proving.Event {
			at := i
			p.Kinds[s.Study.Kind] = proving.KindState{State: string(s.Judged.Verdict), Study: &at}
		}
	}
	consumer, producer, met := 42.0, 1800.0, state == proving.StateProved
	p.AsFound = &proving.AsFound{Bias: 0.004, SD: 0.006, ConsumerPPM: &consumer, ProducerPPM: &producer, Met: &met}
	return out
}

func allStudies(r *press.Result) []pushed.Study {
	event := pushed.Study{Study: &proving.Study{Kind: proving.Event, TakenAt: "2026-11-19", TakenBy: "M. Weber", Event: proving.NestExchanged}, Judged: &proving.Judged{Kind: proving.Event, Verdict: proving.Pass}}
	return []pushed.Study{pushed.Forces(r, 1, 5, 0.995), pushed.Block(r, 1, 6, 3, false), pushed.Master(r, 1, 25, 0.004, 0.005), pushed.Starts(r, 1, 6, 3), pushed.Trial(r, 1, 40, 0.01), pushed.Samples(r, 3), event}
}

// TestSheetSaysWhetherProved: an issued sheet says so where its proof is known, in words on
// every page; a draft, a superseded one and one of which nothing is known say nothing of it.
func TestSheetSaysWhetherProved(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	yes, no := provedBy(r, proving.StateProved, allStudies(r)...), provedBy(r, proving.StateNotProved, pushed.Forces(r, 1, 5, 1))
	said := func(o SheetOptions) []string {
		o.Pages = papers(p, r)[:2]
		var out []string
		doc := NewSheet(p, r, o)
		for i := range doc.Pages() {
			out = append(out, strings.Join(textsOf(doc.Page(i)), "\n"))
		}
		require.Greater(t, len(out), 1)
		return out
	}
	for _, page := range said(SheetOptions{Issue: issued, Proof: yes}) {
		assert.Contains(t, page, "\nproved until 2027-11-20")
		assert.Contains(t, page, "Proved revision\n")
		assert.NotContains(t, strings.ToLower(page), "not proved")
	}
	for _, page := range said(SheetOptions{Issue: issued, Proof: no}) {
		assert.Contains(t, page, "NOT PROVED: stiffness, master and limit samples missing")
		assert.Contains(t, page, "Unproved revision\n")
	}
	for name, o := range map[string]SheetOptions{"a draft": {Proof: no}, "superseded": {Issue: issued, Superseded: "superseded by revision C, issued 2026-03-09", Proof: no}, "not known": {Issue: issued}} {
		for _, page := range said(o) {
			assert.NotContains(t, strings.ToLower(page), "proved until", name)
			assert.NotContains(t, strings.ToLower(page), "not proved", name)
		}
	}
	drawn := func(o SheetOptions) int {
		var b bytes.Buffer
		require.NoError(t, NewSheet(p, r, o).Page(0).SVG(&b))
		return strings.Count(b.String(), "<path")
	}
	assert.Greater(t, drawn(SheetOptions{Issue: issued, Proof: no}), drawn(SheetOptions{Issue: issued, Proof: yes}), "the mark across the page is drawn")
	for _, o := range []SheetOptions{{Issue: issued, Proof: yes}, {Issue: issued, Proof: no}} {
		assert.Equal(t, NewSheet(p, r, SheetOptions{Issue: issued}).Pages(), NewSheet(p, r, o).Pages(), "what is said of the proof takes no room")
	}
	assert.Contains(t, SheetOptions{Issue: issued, Proof: no}.Identity(p, r).String(), "NOT PROVED")
}

func textsOf(d *canvas.Picture) []string {
	var out []string
	for _, l := range d.Texts() {
		out = append(out, l.Text)
	}
	return out
}

// TestRecordPages: the pages of the proof hold every needed study, its digest, its day and
// the drawings, and no text lies over another; in grey nothing is lost.
func TestRecordPages(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	for name, q := range map[string]*Proof{
		"proved": provedBy(r, proving.StateProved, allStudies(r)...), "nothing": provedBy(r, proving.StateNotProved),
		"failed": provedBy(r, proving.StateNotProved, pushed.Master(r, 2, 25, 0.05, 0.005), pushed.Samples(r, 3, 2, 7)),
		"many":   provedBy(r, proving.StateProved, pushed.Forces(r, 1, 1400, 1), pushed.Samples(r, 2500, 9000), pushed.Trial(r, 1, 10000, 0)),
	} {
		q.Adopted = []proof.Adoption{{On: "2026-11-22", Digest: "sha256:56b3b07ad5d6", Label: "Nest", Was: "140 mm", Is: "140.008 mm"}}
		sizes := []string{"a4"}
		if name == "proved" {
			sizes = append(sizes, "letter")
		}
		for _, size := range sizes {
			bare := NewSheet(p, r, SheetOptions{Issue: issued, Paper: size, Proof: q}).Pages()
			doc := NewSheet(p, r, SheetOptions{Issue: issued, Paper: size, Proof: q, Record: true})
			require.Greater(t, doc.Pages(), bare, name)
			all := ""
			for i := bare; i < doc.Pages(); i++ {
				page := doc.Page(i)
				var texts []drawtest.Box
				for _, l := range page.Texts() {
					texts = append(texts, drawtest.Box{Text: l.Text, X0: l.X0, Y0: l.Y0, X1: l.X1, Y1: l.Y1})
					all += l.Text + "\n"
					assert.GreaterOrEqual(t, (l.Y1-l.Y0)/0.98, 0.99*typeset.Least, "%s, page %d: %q is lettered small", name, i+1, l.Text)
				}
				drawtest.Apart(t, texts, page.Width, page.Height, fmt.Sprintf("%s, page %d", name, i+1))
				list, labels := grey.Of(page)
				assert.Empty(t, grey.Lost(list, labels), "%s, page %d", name, i+1)
			}
			for _, want := range []string{"Proof of the station", "Load cell", "Limit samples", "Signed", "140.008 mm"} {
				assert.Contains(t, all, want, name)
			}
			assert.Equal(t, q.Assessment.Proved.FoundStands(), strings.Contains(all, "As its master found it"), name)
			for _, s := range q.Studies {
				assert.Contains(t, all, s.TakenAt[:10], name)
			}
			if *proofLook != "" {
				for i := range doc.Pages() {
					var b bytes.Buffer
					require.NoError(t, doc.Page(i).PNG(&b))
					require.NoError(t, os.WriteFile(filepath.Join(*proofLook, fmt.Sprintf("sheet-%s-%s-%d.png", name, size, i+1)), b.Bytes(), 0o644))
				}
			}
		}
	}
	assert.Equal(t, NewSheet(p, r, SheetOptions{}).Pages(), NewSheet(p, r, SheetOptions{Record: true}).Pages(), "without studies there is nothing to record")
}

var proofLook = flag.String("proof", "", "a folder to write the pages of the proof to, to be looked at")
