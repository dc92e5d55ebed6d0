package words

import (
	"math"
	"strconv"
	"strings"
	"unicode/utf8"

	"ramplan/press"
)

// noSetting says by how much the nearest step misses, and what would open the
// force window.
func noSetting(t *told, f press.NoSettingFigures) string {
	need, most, low, high := f.Need, f.Cap, f.Low, f.High
	var misses, mend []string
	if low < need {
		weak, wanted, gap := t.say.forces(low, need)
		misses = append(misses, "a weak ram gives only "+weak+" of the "+wanted+" needed ("+gap+" short)")
		mend = append(mend, "take "+gap+" off the need (looser fit, less friction, less seating force)")
	}
	if high > most {
		strong, allowed, gap := t.say.forces(high, most)
		misses = append(misses, "a strong ram gives "+strong+" where "+allowed+" may be borne ("+gap+" over)")
		mend = append(mend, "let part and tool bear "+gap+" more")
	}
	s := "No setting seats every part and overloads none"
	if len(misses) > 0 {
		s += ": at the nearest, " + t.say.Setting(f.Setting) + ", " + strings.Join(misses, " and ")
	}
	s += "; "
	switch in := t.r.Force.Settings; {
	case in != nil:
		s += "settings from " + t.say.Setting(in[0]) + " to " + t.say.Setting(in[1]) + " would do, so finer steps open the window, or else " + strings.Join(mend, " and ")
	case t.r.Force.Typical >= need && t.r.Force.Typical <= most:
		s += strings.Join(mend, " and ") + ", or take a ram that scatters less"
	case low < need && high <= most:
		s += strings.Join(mend, " and ") + ", or take a ram that can be set higher"
	default:
		s += strings.Join(mend, " and ")
	}
	return s + "."
}

func settingNotFeasible(t *told, f press.NotFeasibleFigures) string {
	if f.Weak {
		low, need, gap := t.say.forces(f.Force, f.Limit)
		return "At " + t.say.Setting(f.Setting) + " a weak ram pushes only " + low + " of the " + need + " needed (" + gap + " short): set it higher, or take " + gap + " off the need."
	}
	high, most, gap := t.say.forces(f.Force, f.Limit)
	return "At " + t.say.Setting(f.Setting) + " a strong ram pushes " + high + ", " + gap + " over the " + most + " that part and tool may bear: set it lower."
}

func noAcceptance(t *told) string {
	if place, rule := t.Figures.(press.NoPlaceFigures); rule {
		return noPlace(t, place)
	}
	f := t.Figures.(press.NoAcceptanceFigures)
	return "Nothing is left to accept: the drawing allows " + t.pos.Length(f.Width) + " and each side loses a guard band of " + t.pos.Length(f.Guard) +
		", because a reading is uncertain by ±" + t.pos.Length(f.Uncertainty) + ", " + t.say.Ratio(f.Ratio) +
		" times half of what is allowed; make the reading surer" + t.most(f.Of) + ", widen the requirement, or lower the guard factor."
}

// most names the field behind the largest part of the uncertainty: most of it only
// where that is over half.
func (t *told) most(of float64) string {
	if !(of > 0) {
		return ""
	}
	what := ""
	switch f, ok := press.FieldAt(t.Path); {
	case ok:
		what = lowerFirst(f.Label)
	case strings.HasPrefix(t.Path, "parts["):
		what = "datum " + t.row()
	default:
		return ""
	}
	if of > 0.5 {
		return " (most of it comes from: " + what + ")"
	}
	return " (the largest share of it comes from: " + what + ")"
}

// row is the row of the parts to which a finding leads: by its name, or by its number where
// it has none that fits into a sentence.
func (t *told) row() string {
	if t.Row != "" && utf8.RuneCountInString(t.Row) <= longName {
		return "row \u201c" + t.Row + "\u201d"
	}
	_, n, _ := rowOf(t.Path)
	return "row " + strconv.Itoa(n+1) + " of the parts"
}

// byHand tells whether a finding leads to something that was set by hand.
func (t *told) byHand() bool {
	switch t.Path {
	case "window.guard_factor", "window.rule", "window.process_sd":
		return false
	}
	return strings.HasPrefix(t.Path, "window.")
}

func neverGood(t *told, f press.StretchFigures) string {
	from, to := t.pos.both(f.From, f.To)
	s := "No reading gives both signals, so every part is refused: they would be on together only from " + from + ", but one has ended at " + to
	a := t.r.Window.Acceptance
	if z := t.r.Window.Zone; z != nil && z[0] != nil && z[1] != nil && *z[0] >= *z[1] {
		start, end := t.pos.both(*z[0], *z[1])
		which := "its end"
		if t.r.Plan != nil && !t.r.Plan.Given("window.zone_end") {
			which = "its proposed end"
		}
		s = "No reading gives both signals, so every part is refused: the zone starts at " + start + ", past " + which + " at " + end
	}
	switch {
	case a == nil:
		return s + "; bring the zone and the push end together."
	case t.Path == "window.zone_start":
		return s + "; the zone start that was set by hand is to stand at " + t.pos.At(t.pos.up(a[0])) + "."
	case t.Path == "window.zone_end":
		return s + "; the zone end that was set by hand is to stand past the push end."
	case t.Path == "window.approach_end" && t.r.Travel.ApproachEnd > a[0]:
		return s + "; the approach that was set by hand is to end before " + t.pos.At(t.pos.down(a[0])) + "."
	case t.Path == "window.push_stroke", t.Path == "window.approach_end":
		return s + "; the push is to end at " + t.pos.At(t.pos.down(a[1])) + "."
	}
	return s + "; bring the zone and the push end together."
}

func nominalRejected(t *told, f press.NominalFigures) string {
	if f.PPM != nil {
		return "Of all parts " + t.say.PPM(*f.PPM) + " are good and refused, more than a quarter: no station can be run so; centre the accepted readings on the nominal part at " +
			t.pos.At(f.Reading) + ", or make the reading surer."
	}
	reading, from, to := f.Reading, f.From, f.To
	s := "The nominal part comes to rest at " + t.pos.At(f.Reading)
	if reading < from {
		s += ", " + t.pos.Length(from-reading) + " before"
	} else {
		s += ", " + t.pos.Length(reading-to) + " past"
	}
	s += " the accepted readings of " + t.pos.between(from, to) + ", and is refused: "
	if reading < t.r.Travel.SeatReading-1e-9 {
		return s + "the push is used up before the seat, so set it higher or ease the fit."
	}
	if strings.HasPrefix(t.Path, "window.") {
		return s + "move the zone and the push end around it."
	}
	height, least := t.pos.both(f.Height, f.HeightLow)
	return s + "its seated height is " + height + ", where the drawing asks for " + least + " to " + t.pos.At(f.HeightHigh) +
		"; check the heights, which rows lie under the datum, and the position step."
}

func beyondStroke(t *told, f press.BeyondFigures) string {
	position, limit := t.pos.both(f.Position, f.Limit)
	gap := t.pos.Length(f.Position - f.Limit)
	switch {
	case f.What == press.BeyondStep && f.Position < f.Limit:
		return upperFirst(t.step()) + " takes the ram to " + position + ", before the " + limit + " that it can reach: change the step, or where it starts from."
	case f.What == press.BeyondStep:
		return upperFirst(t.step()) + " takes the ram to " + position + ", " + gap + " beyond the stroke of " + limit + ": change the step, or where it starts from."
	case f.What == press.BeyondHome:
		return "Home at " + position + " lies " + gap + " past the approach end at " + limit + ": move home back, or end the approach later."
	case f.What == press.BeyondZoneEnd:
		return "The zone ends at " + position + ", " + gap + " beyond the stroke of " + limit + ": end it earlier, or move the nest toward the ram."
	}
	return "The push end at " + position + " lies " + gap + " beyond the stroke of " + limit + ": shorten the push stroke, or move the nest toward the ram."
}

func earlyContact(t *told, f press.PPMFigures) string {
	return t.say.ppmOver(f.PPM, f.Limit) + " of the parts are met while the ram still approaches, " + t.say.TargetPPM(f.Limit) +
		" being the target: the approach is not force-limited, so end it earlier."
}

func speedOverRam(t *told, f press.LimitFigures) string {
	unit, what := "mm/s", "The approach speed"
	if strings.HasPrefix(t.Path, "sequence.") {
		what = "The speed of " + t.step()
		if !strings.HasSuffix(t.Path, ".speed") {
			unit, what = "mm/s²", "The ramp of "+t.step()
		}
	}
	switch t.Path {
	case "motion.retract_speed":
		what = "The retract speed"
	case "motion.accel":
		unit, what = "mm/s²", "The acceleration"
	case "motion.decel":
		unit, what = "mm/s²", "The deceleration"
	}
	value, limit := over(f.Value, f.Limit, 0, unit)
	return what + " of " + value + " is over the " + limit + " that the ram can do: ask for " + limit + " at most."
}

func nothingStopsIt(*told) string {
	return "Nothing stops the press-in, so an arrival signal would mean a jam: this logic needs a face for the parts to meet; watch a pressed depth in another way."
}

func missingLooksGood(t *told, f press.ReadingFigures) string {
	return "A missing insert looks good: the ram then stops at " + t.pos.At(f.Reading) +
		" and both signals are on; find a missing insert by another check and name it in the plan, change the nest so that the ram runs on, or mark every row that goes away with the insert if some are not."
}

func overYield(t *told, f press.YieldFigures) string {
	part := "hub"
	if strings.HasPrefix(t.Path, "joint.insert") {
		part = "insert"
	}
	now, limit := over(100*f.Utilisation, 100, 0, "%")
	return "The tightest fit loads the " + part + " to " + now + " of its elastic limit, " + limit + " being the most: take a looser fit or a stronger " + part + "."
}

func holdingShort(t *told, f press.HoldingFigures) string {
	holding, limit, gap := t.say.forces(f.Holding, f.Limit)
	return "The loosest joint holds " + holding + " of the " + limit + " required with its safety (" + gap + " short): take a tighter fit, a longer engagement, or smoother surfaces."
}

// NothingToPress stands where a drawing of the seated part would.
const NothingToPress = "Nothing can be pressed in: the part stands lower at first contact than seated. There is no travel and no window to show."

func travelNegative(t *told, f press.TravelFigures) string {
	return "The press-in travel comes out at " + t.pos.Length(f.Travel) + ", below 0: the seated height is greater than the height at first contact, so check the two columns of the parts."
}

func touchWithTravel(t *told, f press.TravelFigures) string {
	return "The rows give a press-in travel of " + t.pos.Length(f.Travel) + ", but a touch joint has none: make the heights at contact and seat equal, or choose a pressed joint."
}

func engagementTooLong(t *told, f press.EngagementFigures) string {
	length, travel := t.pos.both(f.Engagement, f.Has)
	return "The engaged length of " + length + " is longer than the press-in travel of " + travel + ": shorten it, or correct the heights of the parts."
}

func overlapWider(t *told, f press.WiderFigures) string {
	from, to, low, high := f.From, f.To, f.Low, f.High
	var past []string
	if from < low {
		past = append(past, t.pos.Length(low-from)+" before the first good reading at "+t.pos.At(low))
	}
	if to > high {
		past = append(past, t.pos.Length(to-high)+" past the last good reading at "+t.pos.At(high))
	}
	s := "Both signals are on from " + t.pos.between(from, to) + ", which is " + strings.Join(past, " and ")
	if t.Severity == press.Blocker {
		s += ", and more parts of a wrong height are accepted than the target allows"
	} else {
		s += "; no more wrong heights are accepted than the target" + lets(f.Tight, from < low, to > high)
	}
	return s + ": bring zone start and push end inside the drawing."
}

// lets says what else comes to rest outside the drawing and passes: what stands taller on
// the one side, and what goes deeper on the other.
func lets(tight *float64, tall, deep bool) string {
	var s string
	if tall {
		s += ", but a part that stalls or lies on a chip passes too"
		if tight != nil {
			s += ", and a fit up to " + Unit(Trimmed(math.Ceil(*tight), 0), "%") + " over the push"
		}
	}
	if deep {
		if s == "" {
			s = ", but"
		} else {
			s += "; so does"
		}
		s += " one with a crushed row or on a nest that gave way"
		if !tall {
			s += " passes too"
		}
	}
	return s
}

// faultLooksGood names the row of the catalogue that gives both signals although
// it lies outside the drawing.
func faultLooksGood(t *told, f press.FaultFigures) string {
	name := t.say.Fault(t.r.Faults[f.Row]).Word
	reading, low, high := f.Reading, f.Low, f.High
	side, by := "too tall", low-reading
	if reading > high {
		side, by = "too short", reading-high
	}
	return "With \u201c" + name + "\u201d the ram rests at " + t.pos.At(reading) + ", " + t.pos.Length(by) + " " + side +
		" for the drawing, and both signals come on: the accepted readings from " + t.pos.At(f.From) + " to " + t.pos.At(f.To) + " let it in, so bring that edge inside the drawing."
}
