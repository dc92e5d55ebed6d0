package words

// FirstTerms are the words of the glossary without which nobody reads two lamps.
func (say Printer) FirstTerms() []Term {
	var out []Term
	for _, word := range []string{"ram", "setting", "insert", "seat", "reading", "arrival signal", "zone", "push end", "limit sample"} {
		for _, t := range Glossary {
			if t.Word == word {
				out = append(out, t)
			}
		}
	}
	return out
}

// Glossary explains the words of the product, in the order in which a newcomer
// needs them.
var Glossary = []Term{
	{"ram", "The driven rod with its tool. Its position x runs along its stroke and grows toward the work."},
	{"setting", "The motor-current limit in force during the push, in percent of the motor's rated current."},
	{"curve", "Push force against setting, entered point by point as it was measured."},
	{"nest", "The fixture face that carries the parts; also the ram position at which the tool would touch it empty, at zero force."},
	{"insert", "The part that the ram pushes in: it comes last, and the other parts lie in the nest before it."},
	{"seat", "Where the insert comes to rest when it is fully in: the face that stops it."},
	{"approach", "The fast move from home to the approach end. It is not force-limited."},
	{"slow-contact travel", "From the approach end, at slow speed, to the nominal first contact with the part."},
	{"press-in travel", "From first contact to the seated position."},
	{"push stroke", "The travel allowed from the approach end at limited force."},
	{"push end", "Where the push stroke ends and the ram comes to rest when nothing stops it."},
	{"overtravel", "From the reading of the nominal seated part to the push end; negative when the push end comes first."},
	{"reading", "The ram position at which the ram has come to rest against a part, as the controller shows it."},
	{"expected reading", "Where the ram comes to rest on the nominal part, seated: what the display should show at the first good part."},
	{"arrival signal", "Comes on when the set force is reached, because the ram stalls against the part, at or before the push end."},
	{"zone", "An interval of ram positions; the zone signal is on while the ram is inside, both ends included."},
	{"window", "What the plan sets so that the two signals tell good parts from bad: zone start, zone end and push end."},
	{"proposed", "A setpoint that the program suggests, because none was set by hand; another one can be entered in its place. On an issued sheet it reads as proposed: it was taken as it stood."},
	{"computed", "A result: it follows from the entries, and nobody sets it."},
	{"overlap", "The readings that give both signals."},
	{"datum", "The face from which the drawing measures the seated height: the nest, or the rows of the parts marked so."},
	{"requirement", "The seated heights that the drawing allows."},
	{"good", "Seated where the drawing wants it."},
	{"too tall", "Stands taller than the drawing allows: the ram stops too early."},
	{"too short", "Stands shorter than the drawing allows: the ram goes too deep."},
	{"no insert", "The insert is missing, and the other parts lie in the nest as ever."},
	{"empty nest", "Nothing at all lies in the nest: no insert and no other part."},
	{"long", "In files for programs: too tall."},
	{"short", "In files for programs: too short."},
	{"missing", "In files for programs: no insert."},
	{"early contact", "A part is met while the ram still approaches, where no push limit is in force."},
	{"need", "The force that seats every part which the drawing allows: the press-in force of the tightest fit and the least seating force."},
	{"cap", "The force that part and tool may bear."},
	{"force window", "The settings at which even a weak ram gives the need and even a strong one stays within the cap."},
	{"weak ram, strong ram", "The push at a setting less or more two standard deviations of its scatter: one ram, or one day, in about forty lies further out on either side."},
	{"one step is worth", "By how much the typical push changes when the setting is moved by one step."},
	{"at this setting", "The force that stays on once the ram rests: from a weak ram to a strong one. The blow of the moving mass is not in it; see met at the seat."},
	{"met at first contact", "The force of the blow when the moving mass touches the part at slow speed."},
	{"met at the seat", "The force when the part reaches its seat: from the typical push alone to that push and the blow of the moving mass together. Where between them depends on how fast the controller gives way; note the peak when the load cell is pushed."},
	{"at the seat, undamped", "What the force at the seat would be without any friction or damping: the most that it can be, and no forecast."},
	{"met in the approach", "The least force when something stands in the way of the fast move: the blow of the moving mass alone. The motor pushes on behind it, and no limit holds it back."},
	{"heats like", "The steady setting that would heat the motor as much as the whole cycle does."},
	{"von Mises stress", "One stress that stands for the several that act at a place; the part yields where it reaches the yield strength."},
	{"stiffness", "How much force it takes to deflect everything between encoder and seat by 1\u202fmm: under force the encoder reads deeper."},
	{"uncertainty", "How far a reading may be off: twice its standard uncertainty, on either side."},
	{"guard band", "What the window stays inside the requirement, on both sides, because readings are uncertain."},
	{"acceptance range", "The requirement, in readings, less its two guard bands."},
	{"watch time", "How long to wait, from leaving home, until a missing arrival signal means something."},
	{"confirm time", "From arrival until the two signals are read."},
	{"wrong heights accepted", "Parts whose seated height is outside the drawing and that are accepted all the same, as a share of all parts. What else may be wrong with a part is not in it."},
	{"good parts refused", "Parts whose seated height is within the drawing and that are refused, as a share of all parts."},
	{"judged rightly", JudgedRightly},
	{"limit sample", "A complete assembly of known height that the station must judge rightly: made to prove the station."},
	{"first look", "With a probe the signals are looked at twice. The first look, in the probe, asks for arrival on and zone off: only then the push goes on. Everything else is refused."},
	{"second look", "The look at the end of the push, of a part that the probe let through: by it the part is judged."},
	{"worst day", "A day on which everything that is the same for all its parts, as drift, reference, stiffness and push force, puts all readings off to one side by the root sum of squares of its limits: passed on at most about one day in twenty."},
	{"bad lot", "A lot in which all has come together: friction at one end of its range for all parts, hole and shaft anywhere within their limits."},
	{"probe", "A first push with little force and an end of its own before the zone. A sound part stops it there, which gives arrival; a loose one lets it run on, without arrival. It shows nothing of the seat, of a grip that comes from dirt, a burr or a tilted start, nor of one that is lost later."},
	{"study", "Pushes at the station, typed or logged, that are held against the plan: what refutes it, and what the station itself offers as new entries."},
	{"load cell study", "Pushes into a load cell at the tool, several at each of several settings: whether the force is what the curve says, and how far it scatters."},
	{"block push", "A push on a hard block of known height in the nest. How much deeper the ram reads as the force grows is the stiffness; where the line starts is the nest."},
	{"master", "A hard block that always reads the same: many pushes on one show how well the station repeats, and how far its readings are off."},
	{"trend", "Readings that climb or fall over a study, more than chance does in one of a hundred. Such a study stays open: find the cause and push again."},
	{"E_n", "A difference between what was measured and what was planned, divided by how far both may be off together: up to 1 they agree."},
	{"Cg and Cgk", "How small the scatter of pushes on a master is against the tolerance of the drawing; in Cgk what the readings are off counts as well. From 1.33 on a gauge is usually called capable."},
	{"Ppk", "How many times three standard deviations of the parts that were made fit between their mean and the nearer limit of the drawing."},
	{"not refuted", "What a check that passes says: these pushes do not contradict the plan. How small an error they would have shown hangs on how many there are."},
	{"as found", "The shares promised by the plan, computed again with the offset and the repeatability that this station showed on its master."},
	{"proved", "State of an issued revision: load cell, stiffness, master and limit samples passed within a year, nothing has happened since that takes them back, and the station as found meets the targets."},
	{"ppm", "Parts in a million. Shares here are averages over stations and days."},
}
