package main

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Sources: XDG Base Directory Specification 0.8 (a relative path is ignored; from
// memory); the systems' usual folders for one user's data: common practice, no
// source.
func TestUserFolder(t *testing.T) {
	for _, c := range []struct {
		system, home string
		env          map[string]string
		want         string
	}{
		{"linux", "/home/u", nil, "/home/u/.local/share/ramplan"},
		{"linux", "/home/u", map[string]string{"XDG_DATA_HOME": "/data"}, "/data/ramplan"},
		{"linux", "/home/u", map[string]string{"XDG_DATA_HOME": "data"}, "/home/u/.local/share/ramplan"},
		{"linux", "", map[string]string{"XDG_DATA_HOME": "/data"}, "/data/ramplan"},
		{"freebsd", "/home/u", nil, "/home/u/.local/share/ramplan"},
		{"darwin", "/Users/u", map[string]string{"XDG_DATA_HOME": "/data"}, "/Users/u/Library/Application Support/ramplan"},
		{"windows", "/Users/u", map[string]string{"LocalAppData": "/Local"}, "/Local/ramplan"},
		{"windows", "/Users/u", nil, "/Users/u/AppData/Local/ramplan"},
	} {
		got, err := userFolder(c.system, c.home, func(name string) string { return c.env[name] })
		require.NoError(t, err)
		assert.Equal(t, c.want, got, "%s, home %q, %v", c.system, c.home, c.env)
	}
	_, err := userFolder("linux", "", func(string) string { return "" })
	assert.ErrorContains(t, err, "-data")
}
