package archive

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"
)

// flip changes one bit in the middle of a stored document, as a failing disk
// would: without anybody asking.
func flip(t *testing.T, a *Archive, table, column, where string) {
	t.Helper()
	db := a.handles.Load().write
	_, err := db.Exec("drop trigger if exists revision_stays")
	require.NoError(t, err)
	var body []byte
	require.NoError(t, db.QueryRow(fmt.Sprintf("select %s from %s where %s", column, table, where)).Scan(&body))
	body[len(body)/2] ^= 1
	r, err := db.Exec(fmt.Sprintf("update %s set %s = $1 where %s", table, column, where), body)
	require.NoError(t, err)
	n, _ := r.RowsAffected()
	require.Equal(t, int64(1), n)
}
