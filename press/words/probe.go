package words

// ProbeMay says what a first push with little force may do against loose fits, and no
// more than that: it has to be tried, and it has an end of its own.
func (say Printer) ProbeMay(setting float64) string {
	return "A first push at " + say.Setting(setting) + ", with an end of its own before the zone, may refuse it: a sound part stops that push, a loose one lets it run on, without arrival. " +
		"It does not show a grip from dirt, a burr or a tilted start. Prove it with loose parts."
}
