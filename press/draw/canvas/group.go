package canvas

// grouping is a canvas that keeps shapes in groups, which a script can find and
// move: see [Station].
type grouping interface {
	openGroup(class string, hidden bool)
	closeGroup()
}

// Group draws shapes as one group. A hidden group is kept in an SVG, for a script
// to show, and left out of every other format.
func (p *Pen) Group(class string, hidden bool, paint func()) {
	g, ok := p.c.(grouping)
	if !ok {
		if !hidden {
			paint()
		}
		return
	}
	kept := len(p.Texts)
	g.openGroup(class, hidden)
	paint()
	g.closeGroup()
	if hidden { // nobody reads it now
		p.Texts = p.Texts[:kept]
	}
}

// openGroup begins a group; hidden by an attribute, because pages forbid style.
func (c *svg) openGroup(class string, hidden bool) {
	c.write(`<g class="` + class + `"`)
	if hidden {
		c.write(` visibility="hidden"`)
	}
	c.write(">\n")
}

func (c *svg) closeGroup() { c.write("</g>\n") }
