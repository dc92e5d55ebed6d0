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
		"GET /plans",
		"POST /plans",
		"GET /bin",
		"POST /bin",
		"GET /plans/{id}",
		"POST /plans/{id}",
		"PUT /plans/{id}",
		"DELETE /plans/{id}",
		"GET /plans/{id}/result", "GET /plans/{id}/studies", "POST /plans/{id}/studies", "GET /plans/{id}/studies/{study}.{format}", "GET /plans/{id}/assessment",
		"GET /plans/{id}/faults",
		"POST /plans/{id}/file",
		"GET /plans/{id}/file",
		"GET /plans/{id}/choice",
		"GET /plans/{id}/shelved",
		"GET /plans/{id}/drill/round",
		"GET /plans/{id}/drill/exam",
		"POST /plans/{id}/choice",
		"POST /plans/{id}/shelved",
		"GET /plans/{id}/shares",
		"GET /plans/{id}/proving",
		"POST /plans/{id}/proving",
		"GET /plans/{id}/proving/{study}",
		"POST /plans/{id}/proving/{study}",
		"GET /plans/{id}/proving/{study}/cards",
		"GET /plans/{id}/proving/{study}/drawings/{what}.{format}",
		"GET /plans/{id}/check",
		"POST /plans/{id}/check",
		"GET /plans/{id}/checks",
		"GET /plans/{id}/checks.csv",
		"GET /plans/{id}/checks.pdf",
		"GET /plans/{id}/checks/{study}",
		"GET /plans/{id}/sheet",
		"GET /plans/{id}/sheet.{format}",
		"GET /plans/{id}/rows/{name}.csv",
		"GET /plans/{id}/drawings/{what}.{format}",
		"GET /plans/{id}/history",
		"POST /plans/{id}/history",
		"GET /plans/{id}/revisions",
		"POST /plans/{id}/revisions",
		"GET /plans/{id}/revisions/{letter}",
		"POST /plans/{id}/revisions/{letter}",
		"GET /plans/{id}/compared",
		"GET /programs",
		"GET /rams",
		"POST /rams",
		"GET /rams/{id}",
		"POST /rams/{id}",
		"GET /plans/{id}/ram",
		"POST /plans/{id}/ram",
		"GET /plans/{id}/drill",
		"POST /plans/{id}/drill/round",
		"POST /plans/{id}/drill/exam",
		"GET /plans/{id}/drill/exam/{sitting}",
		"POST /plans/{id}/drill/exam/{sitting}",
		"GET /plans/{id}/motion",
		"GET /plans/{id}/station",
		"GET /plans/{id}/card.{format}",
		"GET /plans/{id}/drill.html",
		"GET /plans/{id}/records",
		"POST /plans/{id}/records",
		"GET /plans/{id}/records.csv",
		"GET /records/{record}",
		"GET /records/{record}/sheet.{format}",
		"GET /people",
		"POST /people",
		"GET /people.csv",
		"GET /glossary",
		"GET /static/{hash}/*",
	}
	var got []string
	err := chi.Walk((&site{}).router(), func(method, route string, _ http.Handler, _ ...func(http.Handler) http.Handler) error {
		got = append(got, method+" "+route)
		return nil
	})
	require.NoError(t, err)
	assert.ElementsMatch(t, want, got)
}
