package web

import (
	"encoding/json"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestProgramKeys: the page names the keys that a result has, and leaves none out.
func TestProgramKeys(t *testing.T) {
	srv := httptest.NewServer(example(t))
	t.Cleanup(srv.Close)
	_, body := requested(t, srv.URL, http.MethodGet, "/plans/1/result", []string{jsonWanted}, nil)
	var result map[string]any
	require.NoError(t, json.Unmarshal([]byte(body), &result))
	for _, key := range setKeys {
		section, name, _ := strings.Cut(key, ".")
		inside, ok := result[section].(map[string]any)
		require.True(t, ok, key)
		assert.Contains(t, inside, name, key)
	}
	named := map[string]bool{"format": true, "plan_digest": true, "findings": true}
	for _, key := range restKeys {
		assert.Contains(t, result, key)
		named[key] = true
	}
	for key := range result {
		assert.True(t, named[key], "the page does not name %s", key)
	}
	_, page := requested(t, srv.URL, http.MethodGet, "/programs", nil, nil)
	assert.Contains(t, page, "force.setting, travel.approach_end")
}
