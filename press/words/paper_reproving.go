package words

import "ramplan/press"

// reprovingTitle is the title of the one list of what a change takes back, and provedAgain
// points to it.
const (
	reprovingTitle = "What to prove again after a change"
	provedAgain    = "all of it stands under “" + reprovingTitle + "”"
)

// reprovingTable says what a change takes back. Common practice, no source.
func (say Printer) reprovingTable(_ *press.Plan, r *press.Result) Table {
	t := Table{say: say,
		Lead:    "The one list of this: where another page says “after a change”, it means what stands here. What a change takes back, and what is proved again before parts are released. Common practice, no source; your own works' rules go first. Limit samples are all of them here, as at set-up.",
		Fill:    []string{"Date", "Station"},
		Columns: []Column{{"After", 1.5, false}, {"Prove again", 4.9, false}, {"Done", 0.6, true}, {"Signed", 0.8, true}},
	}
	for _, x := range [][2]string{
		{"Tool changed", "Approach end and nest position; weight on the ram, and with it the curve when it was taken at the tool; empty nest, master, limit samples; the first good part measured."},
		{"Nest changed or reworked", "Nest position and drift; stiffness; empty nest, master, limit samples; the first good part measured."},
		{"Ram, motor or drive changed", "Curve with a load cell, at the station's own speed and temperature; scatter; repeatability; then the whole of set-up and proving."},
		{"Controller changed", "Every setpoint, read back; scan, confirm and watch time; both signals on and off; reading rule; then master and limit samples."},
		{"Software or program changed", "Every setpoint, read back; reading rule; stuck-signal check; master and limit samples."},
		{"Setpoints changed, or a new revision issued", "Every setpoint, read back against the sheet of the new revision, whose digest is written down; push with a load cell where setting or need moved; empty nest, master, limit samples, made anew where their heights moved."},
		{"New lot of parts", "One of its parts measured before it is pressed, and compared with one of the lot before; empty nest, limit samples; the first good part measured."},
		{"Lubricant or coating changed", "Press-in force with a load cell over a new lot; force window; limit samples."},
		{"Part drawing revised", "Rows of the tolerance stack, fit and requirement in the plan; new revision of the plan; new limit samples where heights moved."},
		{"A crash, or the ram ran into something", "Guarding and stopping by a qualified person first; then nest position, stiffness, straightness of the ram, curve at three points, master, limit samples."},
		{"Maintenance of screw, bearings or frame", "Stiffness; repeatability; curve at three points; master, limit samples."},
		{"A long stop, or a cold start", "Warm up, reference anew; empty nest, master."},
	} {
		t.Rows = append(t.Rows, []string{x[0], x[1], "", ""})
	}
	if TwoLooks(r) {
		t.Rows = append(t.Rows, []string{"Probe setting, probe end or its confirm time changed, or the fit of the parts", "The three read back; load cell at the probe setting, over the new lot where the fit changed; empty nest and a loose sample refused by the probe; good parts stall in it and go on; limit samples; the first good part measured.", "", ""})
	}
	return t
}
