package web

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/static"
)

// What pages load is packed when a browser first asks for it: a verb that serves
// nothing does not wait for it.
func TestAssetsArePackedWhenAskedFor(t *testing.T) {
	began := time.Now()
	l := loadAssets(static.FS)
	loaded := time.Since(began)
	began = time.Now()
	packed := 0
	for _, a := range l.files {
		if small := a.small(); small != nil {
			packed++
			assert.Less(t, len(small), len(a.plain))
		}
	}
	require.NotZero(t, packed)
	assert.Less(t, loaded, time.Since(began)/2)
}
