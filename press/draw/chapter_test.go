package draw

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// TestChaptersKeepTheirHeading: whatever chapters are poured into columns, every
// column begins with the heading of what stands in it, no heading stands alone, no
// line leaves its column, and every word comes in its order (derived: the texts
// that went in).
func TestChaptersKeepTheirHeading(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var list []chapter
		want := ""
		for i := range rapid.IntRange(1, 4).Draw(t, "chapters") {
			c := chapter{title: fmt.Sprintf("Heading%d", i)}
			for k := range rapid.IntRange(1, 8).Draw(t, "paragraphs") {
				word := fmt.Sprintf("w%d.%d", i, k)
				text := strings.TrimSpace(strings.Repeat(word+" ", rapid.IntRange(1, 90).Draw(t, "words")))
				want += text + " "
				c.ps = append(c.ps, paragraph{text: text, style: sheetText, above: 2})
			}
			list = append(list, c)
		}
		width, high := rapid.Float64Range(120, 320).Draw(t, "width"), rapid.Float64Range(110, 400).Draw(t, "height")
		var columns []rect
		for i := range rapid.IntRange(1, 3).Draw(t, "columns") {
			x := float64(i) * 400
			columns = append(columns, rect{x, 10, x + width, 10 + high})
		}
		got := ""
		m := setter{}
		for pages := 0; len(list) > 0; pages++ {
			if pages > 400 {
				t.Fatal("it does not come to an end")
			}
			var placed []placedLine
			placed, list = m.fill(list, columns)
			for i, l := range placed {
				heads := strings.HasPrefix(l.text, "Heading")
				if (i == 0 || l.x != placed[i-1].x) && !heads {
					t.Fatalf("a column begins with %q", l.text)
				}
				if heads && (i == len(placed)-1 || placed[i+1].x != l.x || strings.HasPrefix(placed[i+1].text, "Heading")) {
					t.Fatalf("nothing stands under %q", l.text)
				}
				if l.y < 10 || l.y > 10+high {
					t.Fatalf("%q stands at %v", l.text, l.y)
				}
				if !heads {
					got += l.text + " "
				}
			}
		}
		if got != want {
			t.Fatalf("the words are others or in another order")
		}
	})
}
