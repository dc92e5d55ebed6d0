package issue

import "strings"

// revisionLetters are those that drawing practice uses: I, O, Q, S, X and Z are
// left out, as they are taken for figures or other marks (ASME Y14.35, revision
// of engineering drawings; from memory).
const revisionLetters = "ABCDEFGHJKLMNPRTUVWY"

// Letter gives the letter of the revision with a number, counted from 1: A, B,
// and so on; after Y comes AA, after AY BA.
func Letter(n int) string {
	const base = len(revisionLetters)
	var b strings.Builder
	write(&b, n, base)
	return b.String()
}

func write(b *strings.Builder, n, base int) {
	if n > base {
		write(b, (n-1)/base, base)
	}
	b.WriteByte(revisionLetters[(n-1)%base])
}
