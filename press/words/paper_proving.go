package words

import (
	"strings"

	"ramplan/press"
)

// firstParts is how many good parts prove the station at full speed. Common
// practice, no source.
const firstParts = 30

// newSheet says what still counts of a sheet when the plan gets a settle time.
const newSheet = "When a settle time was entered and the plan issued anew, go on with the new sheet. What was found on this one still counts for each step that the new sheet has with the same figures: write the two sheets' digests on each other and keep both. A step whose figures moved is done again."

// A checklist is a table of numbered steps, with what must be found.
type checklist struct {
	Table
	say Printer
	p   *press.Plan
	r   *press.Result
	at  shown
}

// provingTable is the order in which setpoints are entered and proved: the load cell
// before any part, everything at reduced speed before full speed.
func (say Printer) provingTable(p *press.Plan, r *press.Result) Table {
	c := checklist{say: say, p: p, r: r, at: shown{pos: say.Positions(p), unsure: r.MasterWithin()}, Table: Table{say: say,
		Lead: "In this order, by qualified people, with guarding and stopping in force. Nobody reaches into the work space to try anything. Reduced speed is what the qualified person sets, no faster than the plan's slow speed of " +
			say.Speed(p.Motion.SlowSpeed) + "; it holds for every move until full speed is entered.",
		Ranges:  []string{"Must be"},
		Columns: []Column{{"Step", 0.4, false}, {"What is done", 4.1, false}, {"Must be", 2.7, false}, {"Found", 1.1, true}, {"Signed", 1, true}},
		Fill:    []string{"Date", "Station", "Load cell number", "Calibrated on", "Controller program"},
	}}
	c.force()
	if TwoLooks(r) {
		c.Notes = append(c.Notes, SampledWithout)
	}
	c.positions()
	if sig, ok := r.Signals(); ok {
		c.at.sig = sig
		c.signals()
		c.parts()
	}
	release := "as the setpoint list; released for production"
	if r.Blocked() {
		release = "no release: the plan is not ready"
	}
	c.step("The whole setpoint list is read back once more; sign-off by whoever may release the station.", release)
	c.Notes = append([]string{"The figures are predictions from the data entered; what is found counts. Where they differ, find out why before parts are released."}, c.Notes...)
	if over := say.overStrike(r); struckTwice(r) && over != "" {
		c.Notes = append(c.Notes, "Two inserts are not tried: the approach strikes them with "+over+".")
	}
	return c.Table
}

func (c *checklist) step(what, must string) {
	c.Rows = append(c.Rows, []string{Trimmed(float64(len(c.Rows)+1), 0), what, must, "", ""})
}

// force proves the push on a load cell, from the least setting up to the one in
// force.
func (c *checklist) force() {
	rising := c.r.Rising()
	least := c.say.Setting(rising[0])
	c.step("Guarding, emergency stop and lock-out are proved by whoever may, and the stopping time is measured: how far off guards and buttons stand follows from it (ISO 13855). Two-hand control protects the one person who uses it (ISO 13851).", "released for set-up; stopping time written down")
	c.step("Everybody here is shown how a trapped person is freed with the power off, and whether the emergency stop holds the ram or lets it go.", "shown and tried, nobody in the work space")
	c.step("A shield stands between everybody and the work space: samples and parts may burst or jump out.", "in its place, and stays there")
	c.step("Reference the ram at reduced speed, the work space empty: homing and jogging crush like any other move.", "at home it shows "+c.at.pos.At(c.p.Station.Home))
	c.step("Enter the limits of the stroke, the reduced speeds and the setting "+least+"; read each of them back.", "stroke to "+c.at.pos.At(c.p.Ram.Stroke)+"; "+least+"; at most "+c.say.Speed(c.p.Motion.SlowSpeed))
	for i, setting := range rising {
		what := "Load cell in the nest, centred and fixed so that it cannot kick out, shield closed, no parts, the approach ending before it: push at setting " + least + ", three times."
		if i > 0 {
			what = "The load cell at setting " + c.say.Setting(setting) + ", three times."
		}
		c.step(what, c.pushes(setting))
	}
	c.probeForce()
	c.step("The "+c.say.same(c.r)+" at the plan's slow speed of "+c.say.Speed(c.p.Motion.SlowSpeed)+"; note the peak as well; then take the load cell out.",
		c.pushes(rising[len(rising)-1])+"; peak not over "+c.say.Force(c.r.Force.Cap))
}

// same is the push that is repeated at the plan's slow speed.
func (say Printer) same(r *press.Result) string {
	if TwoLooks(r) {
		return "full setting again"
	}
	return "same"
}

func (c *checklist) pushes(setting float64) string {
	f := c.r.PushAt(setting)
	return "at rest " + c.say.Force(f.Low) + " to " + c.say.Force(f.High) + ", typically " + c.say.Force(f.Typical)
}

// positions enters nest, approach end and push stroke.
func (c *checklist) positions() {
	p, r, pos := c.p, c.r, c.at.pos
	least := r.PushAt(r.Rising()[0])
	reads := pos.down(least.Reading - least.Within)
	must := pos.Bare(reads) + " to " + pos.Above(least.Reading+least.Within) + ", typically " + pos.At(least.Reading)
	if least.Reading <= p.Ram.Stroke {
		c.step("Touch the empty nest at setting "+c.say.Setting(least.Setting)+"; read the position. The push of "+c.say.Force(least.Typical)+" is in the figure.", must)
	} else {
		c.step("The nest lies beyond the stroke: lay a measured block on it, touch that at setting "+c.say.Setting(least.Setting)+", and add its height to what is read.", must)
	}
	if r.Pressable() {
		c.step("Enter the approach end; approach with no parts.", "stops at "+pos.At(r.Travel.ApproachEnd))
	}
	if r.Travel.PushStroke == nil {
		return
	}
	nest, arrives := emptyNest(p, r), "no arrival"
	ends := *r.Travel.PushEnd
	if nest <= ends {
		ends, arrives = nest, "arrival on"
	}
	c.step("Enter the setting "+c.say.Setting(r.Force.Setting)+" and the push stroke "+pos.SetAt(*r.Travel.PushStroke)+"; push the empty nest.", "ends at "+pos.At(ends)+"; "+arrives)
}

// signals enters zone and times, and proves what the lamps say of no part.
func (c *checklist) signals() {
	sig, pos := c.at.sig, c.at.pos
	c.step("Enter the zone; move through it by hand mode.", "zone lamp on from "+pos.between(sig.ZoneStart, sig.ZoneEnd))
	c.step("Enter confirm time, reading rule and a watch time that outlasts the push at reduced speed.", "confirm "+c.say.Seconds(c.p.Motion.ConfirmTime))
	c.step(c.unprobed("Push the empty nest; read the lamps by the rule."), c.at.lampsAt(emptyNest(c.p, c.r)))
	if m := withoutInsert(c.p, c.r); m != nil {
		c.step(c.unprobed("Push the other parts without an insert."), c.say.lamps(m.Arrival, m.Zone))
	}
	c.probe()
}

// parts proves samples and first parts, and only then full speed.
func (c *checklist) parts() {
	p, r, pos := c.p, c.r, c.at.pos
	for _, x := range made(c.say.LimitSamples(p, r)) {
		what := "Press " + allSamples(p) + " of the samples “" + lowerFirst(x.Name) + "”, " + x.Heights(p) + "."
		if x.Name == "Too tall" && p.Joint.Kind != press.Touch {
			what = strings.TrimSuffix(what, ".") + ", solid or locked, so that the push cannot seat them further."
		}
		c.step(c.unprobed(what), c.at.lampsAt(r.ReadingOf(x.near)))
	}
	if master := c.at.lampsAt(r.Nominal()); c.say.mastered(p, r) {
		c.step("Press the master, "+c.say.masterHeight(p, r)+", three times at the production setting "+c.say.Setting(r.Force.Setting)+"; read position and lamps at arrival.", "reads "+c.at.within(r.Nominal())+" each time; "+master)
	}
	c.loose()
	nominal, must := r.Nominal(), ""
	accepted := !c.at.sig.Early(nominal) && c.at.sig.Arrives(nominal)
	if accepted {
		must = "a part of " + pos.At(r.HeightOf(nominal)) + " reads " + c.at.within(nominal) + ", a taller one as much less; "
	}
	longest := "not over the settle time of " + c.say.Seconds(p.Motion.SettleTime) + "; a longer one is entered in the plan, which is then issued anew"
	if motionAlone(r) {
		longest = "written down and entered in the plan, which is then issued anew"
	}
	c.step("Time 25 arrivals, from the ram at rest to the arrival signal, and that of the shortest good sample: the longest of them belongs into the plan as its settle time.", longest)
	c.Notes = append(c.Notes, newSheet)
	c.step("Press the first good parts, five of them, measured; read position and lamps at arrival.", must+c.at.lampsAt(nominal))
	if p.Joint.Kind == press.Touch {
		c.step("Cut or measure some of them: seated without a gap.", "no gap")
	} else {
		c.step("Pull or cut some of them: seated without a gap, and held.", "no gap; "+c.say.holds(p))
	}
	c.step("Unplug each signal in turn: the station must not pass a part.", "refused, both signals"+c.say.afterFirst(r))
	c.step("Force each signal on in turn, at the input: it is never seen off, so the cycle must be refused.", "refused, both signals")
	c.step("Remove every forced input, bridge and plug again; a second person looks for any that is left.", "none left, signed by both")
	if struckTwice(r) && c.say.overStrike(r) == "" {
		c.step("Two inserts, only if it must be known: by a qualified person, still at reduced approach speed.", "what the lamps show is written down")
	}
	m := &p.Motion
	times := ""
	if w := r.Cycle.WatchTime; w != nil {
		first := ""
		if TwoLooks(r) {
			first = c.say.After(*r.Probe.WatchTime) + " in the probe, "
		}
		times = "; watch at least " + first + c.say.After(*w) + aside(r, " and the longest time found from the seat to arrival", "", "")
	}
	c.step("Enter full speed: approach, slow and retract speed, acceleration, deceleration; and the watch time.",
		c.say.SpeedBare(m.ApproachSpeed)+", "+c.say.SpeedBare(m.SlowSpeed)+", "+c.say.Speed(m.RetractSpeed)+times)
	full := c.at.lampsAt(emptyNest(p, r))
	if TwoLooks(r) {
		full = "refused at the first look"
	}
	c.step("Push the empty nest at full speed.", full)
	if a, z := c.at.sig.At(nominal); accepted && a && z {
		within := r.MeanWithin(firstParts)
		c.step("Press thirty good parts at full speed; note the readings.", "all accepted; mean "+pos.Bare(pos.down(nominal-within))+" to "+pos.Above(nominal+within))
	}
}
