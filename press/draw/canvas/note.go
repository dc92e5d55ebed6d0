package canvas

import (
	"fmt"
	"slices"
	"strings"
)

// Bounds of what is said under a drawing about characters that the typeface lacks.
const (
	noteLines = 3  // of the note, at most
	noteRunes = 24 // of a word in it
	noteCodes = 5  // of a word's code points
)

// lackingWords lists the words that hold characters which the face they are set
// in lacks, each with their code points, in the order of the drawing.
func lackingWords(texts []Label) []string {
	var out []string
	for _, l := range texts {
		if plainText(l.Text) {
			continue
		}
		for word := range strings.SplitSeq(l.Text, " ") {
			if codes := l.Style.face().lackingIn(word); codes != nil {
				if said := sayLacking(word, codes); !slices.Contains(out, said) {
					out = append(out, said)
				}
			}
		}
	}
	return out
}

func sayLacking(word string, codes []rune) string {
	if runes := []rune(word); len(runes) > noteRunes {
		word = string(runes[:noteRunes]) + "…"
	}
	said := make([]string, 0, noteCodes+1)
	for i, c := range codes {
		if i == noteCodes {
			said = append(said, fmt.Sprintf("%d more", len(codes)-i))
			break
		}
		said = append(said, fmt.Sprintf("%U", c))
	}
	return `“` + word + `” ` + strings.Join(said, ", ")
}

// noteOf is what is said under a drawing about characters that the typeface
// lacks: nothing where it has them all. What does not fit is counted.
func noteOf(texts []Label, width float64) []string {
	words := lackingWords(texts)
	if len(words) == 0 {
		return nil
	}
	for n := len(words); ; n-- {
		lines := regular().wrap(notInFace(words, n), Small, width-2*Margin)
		if len(lines) <= noteLines || n == 1 {
			return lines[:min(len(lines), noteLines)]
		}
	}
}

// notInFace names the first n words with characters that the typeface lacks, and
// counts the others.
func notInFace(words []string, n int) string {
	said := "Not in the typeface: " + strings.Join(words[:n], "; ")
	if n < len(words) {
		said += fmt.Sprintf("; and %d more", len(words)-n)
	}
	return said + "."
}

// SayLacking is the same on one line of a width; empty where nothing is lacking.
func SayLacking(texts []Label, s Style, width float64) string {
	words := lackingWords(texts)
	for n := len(words); n > 0; n-- {
		if said := notInFace(words, n); s.Width(said) <= width {
			return said
		}
	}
	if len(words) > 0 {
		return "The boxes are not in the typeface."
	}
	return ""
}

// noteHeight is the room that a note takes under a drawing.
func noteHeight(lines []string) float64 {
	if len(lines) == 0 {
		return 0
	}
	return float64(len(lines))*Leading*Small + 4
}
