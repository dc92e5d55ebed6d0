package proving

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestReadTyped: every line behind the head is a row, as it stands, whether it can be read or
// not; what is said of the study comes along with its unit (by hand).
func TestReadTyped(t *testing.T) {
	text := "# kind: stiffness\n# taken_at: 2026-11-21\n# height [in]: 1,5\n# made in the morning\n\nsetting [%];load;reading [µm]\n# a remark\n60;2190;115100\r\n60;21x0;115101\n60\n66;\"2400;115102\n66;2410;115103;7\n"
	typed, lines := ReadTyped([]byte(text))
	require.NotNil(t, typed)
	assert.Equal(t, Stiffness, typed.Kind)
	assert.Equal(t, []Head{{"taken_at", "2026-11-21"}, {"height [in]", "1,5"}}, typed.Heads)
	assert.Equal(t, []string{"setting", "force", "reading [µm]"}, typed.Columns)
	assert.Equal(t, [][]string{
		{"60", "2190", "115100"}, {"60", "21x0", "115101"}, {"60", "", ""}, {`66;"2400;115102`, "", ""}, {"66", "2410", "115103 7"},
	}, typed.Rows)
	assert.False(t, lines.Sound())
	study, faults := typed.Study()
	require.Len(t, study.Rows, 1, "the good line")
	assert.InDelta(t, 115.1, *study.Rows[0].Reading, 1e-12, "µm")
	rows := map[int]bool{}
	for _, f := range faults {
		rows[f.Row] = true
	}
	assert.Equal(t, map[int]bool{2: true, 3: true, 4: true, 5: true}, rows)

	for _, none := range []string{"", "setting;force\n60;2190\n", "# kind: nothing\nforce\n1\n"} {
		typed, lines := ReadTyped([]byte(none))
		assert.Nil(t, typed, none)
		assert.NotEmpty(t, lines.Faults, none)
	}
}

// TestReadTypedIsReadCSV: of a sound table both make the same study.
func TestReadTypedIsReadCSV(t *testing.T) {
	for _, text := range []string{
		"# kind: load_cell\n# taken_at: 2026-11-20\n# cell_uncertainty: 0.5\nsetting,force,time\n10,191.8,14:05\n20,536.1,14:06:30\n",
		"# kind: trial\n# taken_at: 2026-11-20T14:05:00+01:00\nposition [in];arrival_signal;zone;note\n4,5;on;0;\"a \"\"b\"\"; c\"\n4,6;off;1;\n",
		"# kind: event\n# taken_at: 2026-11-20\n# event: crash\n",
	} {
		study, lines := ReadCSV([]byte(text))
		require.True(t, lines.Sound(), "%v", lines.Faults)
		typed, _ := ReadTyped([]byte(text))
		require.NotNil(t, typed, text)
		again, faults := typed.Study()
		require.Empty(t, faults, text)
		assert.Equal(t, study.Digest(), again.Digest(), text)
	}
}

// TestShiftOutcome: one wrong answer fails, an undecided push leaves it open (by hand).
func TestShiftOutcome(t *testing.T) {
	row := func(lamps Answer, reading Answer) SampleRow {
		r := SampleRow{Lamps: lamps}
		if reading != "" {
			r.Reading = &reading
		}
		return r
	}
	for want, rows := range map[Answer][]SampleRow{
		Pass: {row(Pass, ""), row(Pass, Pass)},
		Fail: {row(Pass, Pass), row(Open, ""), row(Fail, Pass)},
		Open: {row(Pass, Pass), row(Open, Pass)},
	} {
		assert.Equal(t, want, ShiftOutcome(&SamplesResult{Rows: rows}))
	}
	assert.Equal(t, Fail, ShiftOutcome(&SamplesResult{Rows: []SampleRow{row(Pass, Fail)}}), "the lamps alone are not enough")
	assert.Equal(t, Open, ShiftOutcome(&SamplesResult{}))
	assert.Equal(t, Open, ShiftOutcome(nil))
}
