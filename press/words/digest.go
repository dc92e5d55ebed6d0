package words

import "strings"

// ShortDigest is what paper carries of a plan's digest: the first 12 digits, by
// which paper and file are matched.
func ShortDigest(digest string) string {
	const digits = 12
	d := strings.TrimPrefix(digest, "sha256:")
	return d[:min(digits, len(d))]
}
