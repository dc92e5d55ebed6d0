package web

import (
	"net/http"
	"testing"

	"github.com/go-chi/chi/v5"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestRoutes wants exactly the routes of this list.
func TestRoutes(t *testing.T) {
	want := []string{
		"GET /",
		"POST /",
		"POST /save",
		"GET /faults",
		"POST /faults",
		"GET /glossary",
		"GET /static/{hash}/*",
	}
	var got []string
	err := chi.Walk(router(), func(method, route string, _ http.Handler, _ ...func(http.Handler) http.Handler) error {
		got = append(got, method+" "+route)
		return nil
	})
	require.NoError(t, err)
	assert.ElementsMatch(t, want, got)
}
