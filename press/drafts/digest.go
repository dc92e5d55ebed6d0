package drafts

import (
	"crypto/sha256"
	"encoding/hex"
)

// DigestName is in front of the digits of a digest.
const DigestName = "sha256:"

// Digest names a document as it is kept.
func Digest(body []byte) string {
	sum := sha256.Sum256(body)
	return DigestName + hex.EncodeToString(sum[:])
}
