package draw

import (
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
)

// cardMargin is kept free around a card, px.
const cardMargin = 8 * perMM

// CardCapitals is the height of the card's capitals, mm, to be read from two
// metres; they are higher where there is room, and a long text may press them down
// to the least.
const (
	CardCapitals      = 6.0
	cardCapitalsMost  = 8.0
	cardCapitalsLeast = 4.2
)

// NewCard makes the card of a draft; its size is that of the paper.
func NewCard(p *press.Plan, r *press.Result, o Options) *Picture {
	return NewCardOf(p, r, words.IdentityOf(p, r, "", ""), o)
}

// NewCardOf makes the reference card for the wall at the station: one upright A4
// page in black and white with the four lamp pairs, the limit samples, what is
// not seen, and the cautions. The identity says of which state of the plan it is.
func NewCardOf(p *press.Plan, r *press.Result, id words.Identity, o Options) *Picture {
	own := ownChecks(p, r)
	return paged(uprightHeight, func(height float64) *Picture {
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
			c = layCard(p, r, id, own, c.size/lettered(1), free)
			c.bottom = height - cardMargin
		}
		return newPicture(layout{kind: "card", id: o.ID, title: "Card for the station: " + p.Title.Name, desc: c.desc(), width: uprightWidth, height: height, paint: c.paint})
	})
}

// ownChecks are the first checks that the plan's own reaction list gives.
func ownChecks(p *press.Plan, r *press.Result) map[words.Pair]string {
	out := map[words.Pair]string{}
	for _, x := range words.Reactions(p, r) {
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
	old           bool // superseded
	pairs         []cardPair
	lists         []cardList
	reads         string // when the lamps are read, in one text
	when          block  // when the lamps are read, before what they mean
	whenTop       float64
	none          block // said instead of the pairs
	end, bottom   float64
}

type cardPair struct {
	text words.PairText
	top  float64
	high float64
	body []block
}

type cardList struct {
	head     string
	text     []string // each begins a line
	top, pad float64
	body     block
}

// layCard lays out a card with capitals of a height in mm, and each row higher by
// what is free.
func layCard(p *press.Plan, r *press.Result, id words.Identity, own map[words.Pair]string, mm, free float64) *card {
	c := &card{size: lettered(mm), name: p.Title.Name, draft: id.Draft(), broken: r.Blocked(), old: id.Superseded != ""}
	c.foot = cardFootOf(id)
	y := cardMargin + 1.35*c.size + 6
	if c.draft || c.broken || c.old {
		y += 1.2 * c.size
	}
	c.reads = words.CardReads(r)
	c.when, c.whenTop = (style{black, cardLists * c.size, true}).fill(c.reads, uprightWidth-2*cardMargin), y
	y += c.when.height() + 1.05*c.lampStyle().size + 6 // and the names of the lamps
	left := c.textLeft()
	room := uprightWidth - cardMargin - left
	for _, t := range words.PairTexts(p, r) {
		check := words.CardCheck(t)
		if x, ok := own[t.Pair]; ok {
			check = x
		}
		plain := style{black, c.size, false}
		q := cardPair{text: t, top: y, body: []block{
			(style{black, 1.15 * c.size, true}).fill(words.CardVerdict(t), room),
			plain.fill(words.CardAct(t), room), plain.fill(check, room).most(2),
		}}
		for _, b := range q.body {
			q.high += b.height()
		}
		q.high += 8 + free
		c.pairs = append(c.pairs, q)
		y += q.high
	}
	if len(c.pairs) == 0 {
		c.none = (style{black, c.size, true}).fill("This plan has no push end or no zone yet: the lamps mean nothing.", uprightWidth-2*cardMargin)
		y += c.none.height()
	}
	y += 6
	unseen := words.Sentence(words.CardUnseen(p, r))
	samples := words.CardSamples(p, r)
	if len(samples) == 0 {
		samples = []string{"None: no height is accepted."}
	}
	for _, l := range []cardList{
		{head: words.CardSamplesHead(p), text: samples},
		{head: "The lamps do not see", text: []string{unseen}},
		{head: "Caution", text: []string{strings.Join(words.CardCautions, " ")}},
	} {
		l.top, l.pad = y, free/2
		l.head = c.headStyle().clip(l.head, uprightWidth-2*cardMargin)
		l.body = block{style: style{black, cardLists * c.size, l.head == "Caution"}}
		for _, text := range l.text {
			l.body.lines = append(l.body.lines, l.body.style.fill(text, uprightWidth-2*cardMargin).lines...)
		}
		c.lists = append(c.lists, l)
		y += 0.95*c.size + l.body.height() + 6 + free
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
	for _, list := range [][]string{slices.Concat(number, parts, []string{"instructions of the works go first"}), slices.Concat(number, parts)} {
		if line := strings.Join(list, " · "); st.width(line) <= uprightWidth-2*cardMargin {
			return line
		}
	}
	return strings.Join(append(parts, number...), " · ")
}

func cardFootStyle() style { return style{black, lettered(2.2), false} }

// Columns of the lamps, in sizes of the running text.
func (c *card) lampX(i int) float64 { return cardMargin + c.size*(0.95+2.05*float64(i)) }
func (c *card) glyphX() float64     { return cardMargin + c.size*4.15 }
func (c *card) textLeft() float64   { return cardMargin + c.size*5.55 }
func (c *card) headStyle() style    { return style{black, 0.62 * c.size, true} }
func (c *card) lampStyle() style    { return style{black, 0.66 * c.size, true} }
func (c *card) ruleAt(p *pen, y float64) {
	p.line(black, outline, solid, [2]float64{cardMargin, y}, [2]float64{uprightWidth - cardMargin, y})
}

func (c *card) paint(p *pen) {
	title := style{black, 1.2 * c.size, true}
	y := cardMargin + 0.95*title.size
	title.size *= fit(title.width(c.name), uprightWidth-2*cardMargin, 1)
	title.size = max(title.size, 0.8*c.size)
	p.text(title, cardMargin, y, start, title.clip(c.name, uprightWidth-2*cardMargin))
	if c.draft || c.broken || c.old {
		text := "DRAFT: do not judge parts by this card"
		switch {
		case c.broken:
			text = "NOT READY: do not judge parts by this"
		case c.old:
			text = "SUPERSEDED: do not judge parts by this"
		}
		s := style{paper, 0.9 * c.size, true}
		bar := rect{cardMargin, y + 0.3*c.size, uprightWidth - cardMargin, y + 1.45*c.size}
		p.fill(black, bar)
		p.text(s, (bar.x0+bar.x1)/2, bar.y1-0.3*c.size, middle, text)
	}
	p.block(c.when, cardMargin, c.whenTop)
	if len(c.pairs) == 0 {
		p.block(c.none, cardMargin, c.whenTop+c.when.height()+0.3*c.size)
	} else {
		for i, name := range []string{"arrival", "zone"} {
			p.text(c.lampStyle(), c.lampX(i), c.pairs[0].top-6, middle, name)
		}
	}
	for _, q := range c.pairs {
		c.ruleAt(p, q.top)
		c.pair(p, q)
	}
	for _, l := range c.lists {
		c.ruleAt(p, l.top)
		p.text(c.headStyle(), cardMargin, l.top+l.pad+0.8*c.size, start, l.head)
		p.block(l.body, cardMargin, l.top+l.pad+0.88*c.size)
	}
	foot := cardFootStyle()
	p.text(foot, cardMargin, c.bottom, start, foot.clip(c.foot, uprightWidth-2*cardMargin))
}

// pair is a row: the two lamps, where the part lies, and the words.
func (c *card) pair(p *pen, q cardPair) {
	y := q.top + q.high/2
	r := 0.9 * c.size
	for i, on := range []bool{q.text.Pair.Arrival, q.text.Pair.Zone} {
		p.lampSaying(c.lampX(i), y, r, 0.8*r, words.OnOff(on))
	}
	c.glyph(p, q, rect{c.glyphX(), q.top + 8, c.glyphX() + c.size, q.top + q.high - 8})
	high := 0.0
	for _, b := range q.body {
		high += b.height()
	}
	top := q.top + (q.high-high)/2
	for _, b := range q.body {
		top = p.block(b, c.textLeft(), top)
	}
}

// glyph shows where the part lies between too tall and too short: three fields,
// those of the pair filled and hatched; a crossed frame for a fault.
func (c *card) glyph(p *pen, q cardPair, box rect) {
	if len(q.text.Words) == 0 {
		p.frame(black, outline, solid, box)
		p.line(black, outline, solid, [2]float64{box.x0, box.y0}, [2]float64{box.x1, box.y1})
		p.line(black, outline, solid, [2]float64{box.x0, box.y1}, [2]float64{box.x1, box.y0})
		return
	}
	h := (box.y1 - box.y0) / 3
	for i, w := range []string{press.Long, press.Good, press.Short} {
		f := rect{box.x0, box.y0 + h*float64(i), box.x1, box.y0 + h*float64(i+1)}
		if slices.Contains(q.text.Words, w) {
			p.hatch(black, fateOfWord(w).hatch(), f)
			if w == press.Good {
				p.fill(black, f)
			}
		}
		if w == press.Short && slices.Contains(q.text.Words, press.Missing) && !slices.Contains(q.text.Words, press.Short) {
			p.line(black, outline, dashed, [2]float64{f.x0, f.y0}, [2]float64{f.x1, f.y1})
		}
		p.frame(black, outline, solid, f)
	}
}

// named tells whether the verdicts stand on one line each: that is what is looked
// for from afar.
func (c *card) named() bool {
	for _, q := range c.pairs {
		if q.text.Clear && len(q.body[0].lines) > 1 {
			return false
		}
	}
	return true
}

func (c *card) desc() string {
	s := []string{c.reads}
	for _, q := range c.pairs {
		s = append(s, "With "+q.text.Pair.String()+": "+strings.ToLower(words.CardVerdict(q.text))+". "+strings.Join(append(slices.Clone(q.body[1].lines), q.body[2].lines...), " "))
	}
	for _, l := range c.lists {
		s = append(s, l.head+": "+strings.Join(l.text, " "))
	}
	return strings.Join(s, " ")
}
