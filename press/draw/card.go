package draw

import (
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
	"ramplan/press/words"
)

// cardMargin is kept free around a card, px.
const cardMargin = 8 * canvas.PerMM

// CardCapitals is the height of the card's capitals, mm, to be read from two
// metres; they are higher where there is room, and a long text may press them down
// to the least.
const (
	CardCapitals      = 6.0
	cardCapitalsMost  = 8.0
	cardCapitalsLeast = 4.2
)

// NewCard makes the card of a draft; its size is that of the paper.
func NewCard(p *press.Plan, r *press.Result, o Options) *canvas.Picture {
	return NewCardOf(p, r, say.IdentityOf(p, r, "", ""), o)
}

// NewCardOf makes the reference card for the wall at the station: one upright A4
// page in black and white with the four lamp pairs, the limit samples, what is
// not seen, and the cautions. The identity says of which state of the plan it is.
func NewCardOf(p *press.Plan, r *press.Result, id words.Identity, o Options) *canvas.Picture {
	own := ownChecks(p, r)
	return typeset.Paged(typeset.UprightHeight, func(height float64) *canvas.Picture {
		var c *card
		for step := 0.0; ; step++ {
			mm := cardCapitalsMost - 0.2*step
			c = layCard(p, r, id, own, mm, 0)
			c.bottom = height - cardMargin
			if c.end <= c.bottom-cardFoot && c.named() || mm <= cardCapitalsLeast {
				break
			}
		}
		// What is left of the page goes between the rows.
		if rows := len(c.pairs) + len(c.lists); c.end < c.bottom-cardFoot {
			free := min((c.bottom-cardFoot-c.end)/float64(rows), c.size)
			c = layCard(p, r, id, own, c.size/canvas.Lettered(1), free)
			c.bottom = height - cardMargin
		}
		return canvas.NewPicture(canvas.Layout{Kind: "card", ID: o.ID, Title: say.CardTitle(p.Title.Name), Desc: c.desc(), Width: typeset.UprightWidth, Height: height, Paint: c.paint})
	})
}

// ownChecks are the first checks that the plan's own reaction list gives.
func ownChecks(p *press.Plan, r *press.Result) map[words.Pair]string {
	out := map[words.Pair]string{}
	for _, x := range say.Reactions(p, r) {
		if x.Own && x.Situation == words.One {
			out[x.Pair] = x.Checks[0]
		}
	}
	return out
}

// cardLists is the size of what stands under the pairs of lamps, in sizes of the
// pairs, which are looked at from afar.
const cardLists = 0.84

// cardFoot is the room of the last line, px.
const cardFoot = 20

// card is the card laid out.
type card struct {
	size          float64 // px of the running text
	name, foot    string
	draft, broken bool
	old           bool   // superseded
	standing      string // whether the station of the revision is proved; empty where that is not known
	pairs         []cardPair
	lists         []cardList
	first         cardFirst     // nothing where there is one look
	reads         string        // when the lamps are read, in one text
	when          typeset.Block // when the lamps are read, before what they mean
	whenTop       float64
	none          typeset.Block // said instead of the pairs
	end, bottom   float64
}

type cardPair struct {
	text words.PairText
	top  float64
	high float64
	body []typeset.Block
}

type cardList struct {
	head     string
	text     []string // each begins a line
	top, pad float64
	body     typeset.Block
}

// layCard lays out a card with capitals of a height in mm, and each row higher by
// what is free.
func layCard(p *press.Plan, r *press.Result, id words.Identity, own map[words.Pair]string, mm, free float64) *card {
	c := &card{size: canvas.Lettered(mm), name: p.Title.Name, draft: id.Draft(), broken: r.Blocked(), old: id.Superseded != ""}
	c.standing = id.Standing
	id.Proved = "" // that stands on top
	c.foot = cardFootOf(id)
	y := cardMargin + 1.35*c.size + 6
	if c.draft || c.broken || c.old || c.standing != "" {
		y += 1.2 * c.size
	}
	y = c.layFirst(say.CardFirsts(r), y)
	c.reads = say.CardReads(r)
	c.when, c.whenTop = typeset.Fill((canvas.Bold(canvas.Black, cardLists*c.size)), c.reads, typeset.UprightWidth-2*cardMargin), y
	y += c.when.Height() + 1.05*c.lampStyle().Size + 6 // and the names of the lamps
	left := c.textLeft()
	room := typeset.UprightWidth - cardMargin - left
	for _, t := range say.PairTexts(p, r) {
		check := say.CardCheck(t)
		if x, ok := own[t.Pair]; ok {
			check = x
		}
		plain := canvas.Plain(canvas.Black, c.size)
		q := cardPair{text: t, top: y, body: []typeset.Block{
			typeset.Fill((canvas.Bold(canvas.Black, 1.15*c.size)), words.CardVerdict(t), room),
			typeset.Fill(plain, say.CardAct(t), room), typeset.Fill(plain, check, room).Most(2),
		}}
		for _, b := range q.body {
			q.high += b.Height()
		}
		q.high += 8 + free
		c.pairs = append(c.pairs, q)
		y += q.high
	}
	if len(c.pairs) == 0 {
		c.none = typeset.Fill((canvas.Bold(canvas.Black, c.size)), say.LampsMeanNothing(), typeset.UprightWidth-2*cardMargin)
		y += c.none.Height()
	}
	y += 6
	unseen := words.Sentence(say.CardUnseen(p, r))
	samples := say.CardSamples(p, r)
	if len(samples) == 0 {
		samples = []string{say.NoneAccepted()}
	}
	for _, l := range []cardList{
		{head: say.CardSamplesHead(p), text: samples},
		{head: say.UnseenHead(), text: []string{unseen}},
		{head: "Caution", text: []string{strings.Join(words.CardCautions, " ")}},
	} {
		l.top, l.pad = y, free/2
		l.head = c.headStyle().Clip(l.head, typeset.UprightWidth-2*cardMargin)
		l.body = typeset.Block{Style: canvas.Style{Ink: canvas.Black, Size: cardLists * c.size, Bold: l.head == "Caution"}}
		for _, text := range l.text {
			l.body.Lines = append(l.body.Lines, typeset.Fill(l.body.Style, text, typeset.UprightWidth-2*cardMargin).Lines...)
		}
		c.lists = append(c.lists, l)
		y += 0.95*c.size + l.body.Height() + 6 + free
	}
	c.end = y
	return c
}

// cardFootOf is the last line. The name stands on top already; a number that would
// push the digest off the card goes behind it.
func cardFootOf(id words.Identity) string {
	parts := id.Parts()
	number, parts := parts[:1], parts[1:]
	if id.Number == "" {
		number = nil
	}
	st := cardFootStyle()
	for _, list := range [][]string{slices.Concat(number, parts, []string{say.WorksFirst()}), slices.Concat(number, parts)} {
		if line := strings.Join(list, " · "); st.Width(line) <= typeset.UprightWidth-2*cardMargin {
			return line
		}
	}
	return strings.Join(append(parts, number...), " · ")
}

func cardFootStyle() canvas.Style { return canvas.Plain(canvas.Black, canvas.Lettered(2.2)) }

// Columns of the lamps, in sizes of the running text.
func (c *card) lampX(i int) float64     { return cardMargin + c.size*(0.95+2.05*float64(i)) }
func (c *card) glyphX() float64         { return cardMargin + c.size*4.15 }
func (c *card) textLeft() float64       { return cardMargin + c.size*5.55 }
func (c *card) headStyle() canvas.Style { return canvas.Bold(canvas.Black, 0.62*c.size) }
func (c *card) lampStyle() canvas.Style { return canvas.Bold(canvas.Black, 0.66*c.size) }
func (c *card) ruleAt(p *canvas.Pen, y float64) {
	p.Line(canvas.Black, canvas.Outline, canvas.Solid, [2]float64{cardMargin, y}, [2]float64{typeset.UprightWidth - cardMargin, y})
}

func (c *card) paint(p *canvas.Pen) {
	title := canvas.Bold(canvas.Black, 1.2*c.size)
	y := cardMargin + 0.95*title.Size
	title.Size *= canvas.Fit(title.Width(c.name), typeset.UprightWidth-2*cardMargin, 1)
	title.Size = max(title.Size, 0.8*c.size)
	p.Text(title, cardMargin, y, canvas.Start, title.Clip(c.name, typeset.UprightWidth-2*cardMargin))
	c.bar(p, y)
	c.paintFirst(p)
	typeset.WriteBlock(p, c.when, cardMargin, c.whenTop)
	if len(c.pairs) == 0 {
		typeset.WriteBlock(p, c.none, cardMargin, c.whenTop+c.when.Height()+0.3*c.size)
	} else {
		c.nameLamps(p, c.pairs[0].top-6)
	}
	for _, q := range c.pairs {
		c.ruleAt(p, q.top)
		c.pair(p, q)
	}
	for _, l := range c.lists {
		c.ruleAt(p, l.top)
		p.Text(c.headStyle(), cardMargin, l.top+l.pad+0.8*c.size, canvas.Start, l.head)
		typeset.WriteBlock(p, l.body, cardMargin, l.top+l.pad+0.88*c.size)
	}
	foot := cardFootStyle()
	p.Text(foot, cardMargin, c.bottom, canvas.Start, foot.Clip(c.foot, typeset.UprightWidth-2*cardMargin))
}

// nameLamps says over the lamps which is which.
func (c *card) nameLamps(p *canvas.Pen, y float64) {
	for i, name := range []string{"arrival", "zone"} {
		p.Text(c.lampStyle(), c.lampX(i), y, canvas.Middle, name)
	}
}

// bar says under the title of which state the card is: white on black where no parts may
// be judged by it, in a frame whether the station is proved.
func (c *card) bar(p *canvas.Pen, y float64) {
	text, ink := c.standing, canvas.Black
	switch {
	case c.broken:
		text = say.NotReadyCard()
	case c.old:
		text = say.SupersededCard()
	case c.draft:
		text = say.DraftCard()
	case text == "":
		return
	}
	bar := canvas.Rect(cardMargin, y+0.3*c.size, typeset.UprightWidth-cardMargin, y+1.45*c.size)
	if c.broken || c.old || c.draft {
		p.Fill(canvas.Black, bar)
		ink = canvas.Paper
	} else {
		p.Frame(canvas.Black, canvas.Outline, canvas.Solid, bar)
	}
	p.Text(canvas.Bold(ink, 0.9*c.size), (bar.X0+bar.X1)/2, bar.Y1-0.3*c.size, canvas.Middle, text)
}

// pair is a row: the two lamps, where the part lies, and the words.
func (c *card) pair(p *canvas.Pen, q cardPair) {
	y := q.top + q.high/2
	r := 0.9 * c.size
	for i, on := range []bool{q.text.Pair.Arrival, q.text.Pair.Zone} {
		lampSaying(p, c.lampX(i), y, r, 0.8*r, words.OnOff(on))
	}
	c.glyph(p, q, canvas.Rect(c.glyphX(), q.top+8, c.glyphX()+c.size, q.top+q.high-8))
	high := 0.0
	for _, b := range q.body {
		high += b.Height()
	}
	top := q.top + (q.high-high)/2
	for _, b := range q.body {
		top = typeset.WriteBlock(p, b, c.textLeft(), top)
	}
}

// glyph shows where the part lies between too tall and too short: three fields,
// those of the pair filled and hatched; a crossed frame for a fault.
func (c *card) glyph(p *canvas.Pen, q cardPair, box canvas.Rectangle) {
	if len(q.text.Words) == 0 {
		p.Frame(canvas.Black, canvas.Outline, canvas.Solid, box)
		p.Line(canvas.Black, canvas.Outline, canvas.Solid, [2]float64{box.X0, box.Y0}, [2]float64{box.X1, box.Y1})
		p.Line(canvas.Black, canvas.Outline, canvas.Solid, [2]float64{box.X0, box.Y1}, [2]float64{box.X1, box.Y0})
		return
	}
	h := (box.Y1 - box.Y0) / 3
	for i, w := range []string{press.Long, press.Good, press.Short} {
		f := canvas.Rect(box.X0, box.Y0+h*float64(i), box.X1, box.Y0+h*float64(i+1))
		if slices.Contains(q.text.Words, w) {
			p.Hatch(canvas.Black, fateOfWord(w).hatch(), f)
			if w == press.Good {
				p.Fill(canvas.Black, f)
			}
		}
		if w == press.Short && slices.Contains(q.text.Words, press.Missing) && !slices.Contains(q.text.Words, press.Short) {
			p.Line(canvas.Black, canvas.Outline, canvas.Dashed, [2]float64{f.X0, f.Y0}, [2]float64{f.X1, f.Y1})
		}
		p.Frame(canvas.Black, canvas.Outline, canvas.Solid, f)
	}
}

// named tells whether the verdicts stand on one line each: that is what is looked
// for from afar.
func (c *card) named() bool {
	for _, q := range c.pairs {
		if q.text.Clear && len(q.body[0].Lines) > 1 {
			return false
		}
	}
	return true
}

func (c *card) desc() string {
	var s []string
	if c.standing != "" {
		s = append(s, c.standing+".")
	}
	s = append(append(s, c.first.said()...), c.reads)
	for _, q := range c.pairs {
		s = append(s, "With "+q.text.Pair.String()+": "+strings.ToLower(words.CardVerdict(q.text))+". "+strings.Join(append(slices.Clone(q.body[1].Lines), q.body[2].Lines...), " "))
	}
	for _, l := range c.lists {
		s = append(s, l.head+": "+strings.Join(l.text, " "))
	}
	return strings.Join(s, " ")
}
