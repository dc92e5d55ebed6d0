package words

import (
	"fmt"
	"strings"

	"ramplan/press"
)

// ExplainSimulation writes the sentence of everything that is said beside small shares
// into its Message.
func ExplainSimulation(s *press.Simulation) {
	for i := range s.Says {
		s.Says[i].Message = saying(&s.Says[i])
	}
}

func saying(s *press.Saying) string {
	switch s.Code {
	case press.TailAssumed:
		return "Under about 100\u202fppm this figure hangs on the assumed shape of the tails, which no one has measured. Take it for an order of magnitude."
	case press.TailHard:
		return "Rows of parts that are drawn uniform or triangular end at their limits: a part beyond them is taken not to exist, and is not in this figure. Sizes of hole and shaft run past theirs."
	case press.CountedNone:
		return "None in " + Fixed(float64(*s.Parts), 0) + " simulated parts: under " + Unit(SimulatedPPM(*s.UnderPPM), "ppm") + " with 95\u202f% confidence, if the model holds."
	case press.NotInModel:
		return "Chips, tilt, damage, wrong parts and stick-slip are not in these shares; the fault list is about them."
	case press.WhyDifferent:
		return "The closed form says " + Unit(SimulatedPPM(*s.ClosedPPM), "ppm") + ", the simulation " + Unit(SimulatedPPM(*s.PPM), "ppm") + ": " + differs[s.Cause]
	}
	return s.Code
}

// differs says by cause why the simulation says something else than the closed form.
var differs = map[string]string{
	press.ByStalls: "mostly because some parts stall, which the closed form takes as seated.",
	press.ByLoose:  "mostly because loose parts that are refused are good heights to the closed form.",
	press.ByEarly:  "mostly because parts met early are refused ones to the closed form.",
	press.ByForce:  "mostly because force and stiffness act together at each part's own force, which the closed form adds up apart.",
}

// leastSimulated is the least share, ppm, that the tables of the simulation are good for.
const leastSimulated = 1e-4

// SimulatedPPM writes a simulated share in ppm, to three digits, without its unit.
func SimulatedPPM(x float64) string {
	switch {
	case x == 0:
		return "0"
	case x < leastSimulated:
		return "<" + thin + Trimmed(leastSimulated, 4)
	case x > 1e6-0.5 && x < 1e6:
		return ">" + thin + Fixed(999999, 0)
	case x > 1e6-1e4: // what is missing is what matters
		return Fixed(x, 0)
	}
	return ppmDigits(x, 3)
}

// Truths are what a simulated part can be, in the order of the matrix.
var Truths = [5]string{"Not seated", "Too tall", "Too short", "Loose", "Conforming"}

// Seens are what the station can say of it, likewise.
var Seens = [5]string{"both signals", "arrival only", "zone only", "neither", "met early"}

// NamedShares are the named shares of all parts, in their order.
var NamedShares = [13]string{
	"Not seated", "Too tall", "Too short", "Loose: under the margin", "Conforming", "Accepted", "Met early",
	"False accept", "  of a wrong height", "  not seated", "  loose", "False reject", "Would let go",
}

// TextTable is a table of plain text.
type TextTable struct {
	Title string
	Head  []string
	Rows  [][]string
	Notes []string
}

// SimulationText are the tables of a simulation for a terminal.
func SimulationText(r *press.Result, s *press.Simulation) []TextTable {
	title := r.Plan.Title.Name
	if s.File != "" {
		title = s.File + ": " + title
	}
	first := TextTable{Title: title}
	if !s.Complete {
		first.Notes = append(first.Notes, "Stopped before the end: these are the parts that were done.")
	}
	if s.Readings == nil && s.Shares == nil {
		first.Notes = append(first.Notes, "Nothing could be pressed in: the part is lower before than after.")
		return []TextTable{first}
	}
	if s.Parts > 0 {
		first.Notes = append(first.Notes, fmt.Sprintf("%s parts counted, seed %d.", Fixed(float64(s.Parts), 0), s.Seed))
	}
	if e := s.Shares; e != nil {
		met := "as close as was asked for"
		if !e.Met {
			met = "not as close as was asked for: this many points is the most"
		}
		first.Notes = append(first.Notes, fmt.Sprintf("Estimated on %d × %s points, seed %d: %s.", e.Replications, Fixed(float64(e.Points), 0), s.Seed, met))
	}
	if r.Probe.InUse {
		first.Notes = append(first.Notes, "The probe before the push is left out: its figures are in the result.")
	}
	if s.Matrix == nil && s.Shares == nil {
		first.Notes = append(first.Notes, "The window is not known: no verdicts.")
		return []TextTable{first}
	}
	out := []TextTable{first}
	if s.Matrix != nil {
		out = append(out, matrixText(s))
	}
	out = append(out, sharesText(s), closedText(s))
	if b := s.BadLot; b != nil {
		out = append(out, TextTable{Title: "A bad lot", Head: []string{"", "ppm"}, Rows: [][]string{
			{"Not seated, friction high", SimulatedPPM(b.UnseatedPPM)}, {"Loose, friction low", SimulatedPPM(b.LoosePPM)},
			{"False accept, the worse of both", SimulatedPPM(b.FalseAcceptPPM)}, {"False reject, the worse of both", SimulatedPPM(b.FalseRejectPPM)},
		}, Notes: []string{"Friction at one end for all parts, hole and shaft anywhere within their limits."}})
	}
	said := TextTable{}
	for _, one := range s.Says {
		said.Notes = append(said.Notes, withShares(&one))
	}
	return append(out, said)
}

func matrixText(s *press.Simulation) TextTable {
	t := TextTable{Title: "Counted parts: what they are, and what the station says", Head: append([]string{""}, Seens[:]...)}
	says := []string{"the plan's words"}
	for _, v := range s.Verdicts {
		text := SayAll(v.Words)
		if text == "" {
			text = none
		}
		says = append(says, text)
	}
	t.Rows = append(t.Rows, says)
	for i, row := range s.Matrix.All() {
		cells := []string{Truths[i]}
		for _, n := range row.All() {
			cells = append(cells, Fixed(float64(*n), 0))
		}
		t.Rows = append(t.Rows, cells)
	}
	return t
}

func sharesText(s *press.Simulation) TextTable {
	t := TextTable{Title: "Shares of all parts, ppm, with 95\u202f% limits", Head: []string{"", "estimated", "from", "to", "counted", "from", "to"}}
	for i, name := range NamedShares {
		row := []string{name, none, none, none, none, none, none}
		if s.Shares != nil {
			e := s.Shares.Named.All()[i]
			row[1], row[2], row[3] = SimulatedPPM(e.PPM), SimulatedPPM(e.Low), SimulatedPPM(e.High)
		}
		if s.Counted != nil {
			c := s.Counted.All()[i]
			row[4], row[5], row[6] = SimulatedPPM(c.PPM), SimulatedPPM(c.Low), SimulatedPPM(c.High)
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}

func closedText(s *press.Simulation) TextTable {
	t := TextTable{Title: "Closed form, heights and readings alone, ppm", Head: []string{"", "ppm"}}
	c := s.Closed
	for _, one := range []struct {
		name  string
		value *float64
		times float64
	}{{"Wrong heights accepted", c.ConsumerPPM, 1}, {"Right heights refused", c.ProducerPPM, 1}, {"Met early", c.EarlyContactPPM, 1}, {"Right heights made", c.ConformingShare, 1e6}} {
		text := none
		if one.value != nil {
			text = SimulatedPPM(*one.value * one.times)
		}
		t.Rows = append(t.Rows, []string{one.name, text})
	}
	return t
}

// withShares is the sentence with the shares that it is about.
func withShares(one *press.Saying) string {
	if len(one.Shares) == 0 {
		return saying(one)
	}
	return sayShares(one.Shares) + ": " + saying(one)
}

// sayShares lists named shares by their keys, as they are said in a sentence.
func sayShares(keys []string) string {
	out := make([]string, len(keys))
	for i, key := range keys {
		out[i] = strings.ReplaceAll(key, "_", " ")
	}
	return strings.ToUpper(out[0][:1]) + strings.Join(out, ", ")[1:]
}
