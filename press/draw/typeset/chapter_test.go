package typeset

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"ramplan/press/draw/canvas"
)

// TestChaptersKeepTheirHeading: whatever chapters are poured into columns, every
// column begins with the heading of what stands in it, no heading stands alone, no
// line leaves its column, and every word comes in its order (derived: the texts
// that went in).
func TestChaptersKeepTheirHeading(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var list []Chapter
		want := ""
		for i := range rapid.IntRange(1, 4).Draw(t, "chapters") {
			c := Chapter{Title: fmt.Sprintf("Heading%d", i)}
			for k := range rapid.IntRange(1, 8).Draw(t, "paragraphs") {
				word := fmt.Sprintf("w%d.%d", i, k)
				text := strings.TrimSpace(strings.Repeat(word+" ", rapid.IntRange(1, 90).Draw(t, "words")))
				want += text + " "
				c.Paragraphs = append(c.Paragraphs, Paragraph{Text: text, Style: Text, Above: 2})
			}
			list = append(list, c)
		}
		width, high := rapid.Float64Range(120, 320).Draw(t, "width"), rapid.Float64Range(110, 400).Draw(t, "height")
		var columns []canvas.Rectangle
		for i := range rapid.IntRange(1, 3).Draw(t, "columns") {
			x := float64(i) * 400
			columns = append(columns, canvas.Rect(x, 10, x+width, 10+high))
		}
		got := ""
		m := Setter{}
		for pages := 0; len(list) > 0; pages++ {
			if pages > 400 {
				t.Fatal("it does not come to an end")
			}
			var placed []PlacedLine
			placed, list = m.Fill(list, columns)
			for i, l := range placed {
				heads := strings.HasPrefix(l.Text, "Heading")
				if (i == 0 || l.X != placed[i-1].X) && !heads {
					t.Fatalf("a column begins with %q", l.Text)
				}
				if heads && (i == len(placed)-1 || placed[i+1].X != l.X || strings.HasPrefix(placed[i+1].Text, "Heading")) {
					t.Fatalf("nothing stands under %q", l.Text)
				}
				if l.Y < 10 || l.Y > 10+high {
					t.Fatalf("%q stands at %v", l.Text, l.Y)
				}
				if !heads {
					got += l.Text + " "
				}
			}
		}
		if got != want {
			t.Fatalf("the words are others or in another order")
		}
	})
}
