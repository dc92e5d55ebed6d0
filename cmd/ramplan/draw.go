package main

import (
	"bytes"
	"context"
	"errors"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/carry"
	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/paper"
	"ramplan/press/draw/proof"
	"ramplan/press/proving"
	"ramplan/press/words"
)

// Names that -what and -format know beside those of the package draw: the whole
// sheet, the card, and the rows of its pages.
const (
	sheetName  = "sheet"
	cardName   = "card"
	rowsFormat = "csv"
)

// drawn is what the command line asks draw for.
type drawn struct {
	what, to, format string
	paper            string
	tables           []string // on pages behind the sheet
	every            bool     // of these all that the plan has
	separation       words.Separation
	width            paper.Width
	title            bool
	folder           bool // one file for each plan goes into the folder -o
	plans            []string
	kept             kept     // what is drawn from the archive in place of files
	studies          []string // files of studies of the plan's station
	record           bool     // the proof of the station stands behind the sheet
}

// drawVerb draws plans: into a file whose ending names the format, or many into a
// folder or into one PDF.
func drawVerb(ctx context.Context, c console, args []string) int {
	d, err := drawFlags(c, args)
	switch {
	case err == flag.ErrHelp:
		return statusGood
	case err != nil:
		c.complain("%v", err)
		return statusRefused
	case d == nil:
		return statusRefused // the flags have said why
	case d.what == drillName:
		return d.drill(ctx, c)
	case d.format == rowsFormat:
		return d.rows(ctx, c)
	case d.folder:
		return d.intoFolder(ctx, c)
	}
	return d.intoOne(ctx, c)
}

// drawFlags reads the command line; nil without an error where the flags said
// what is wrong.
func drawFlags(c console, args []string) (*drawn, error) {
	var d drawn
	var papers []string
	for _, p := range paper.Papers {
		papers = append(papers, p.Name)
	}
	flags := flag.NewFlagSet("draw", flag.ContinueOnError)
	flags.SetOutput(c.err)
	text(flags, &d.what, "what", sheetName, say.WhatFlag(sheetName, strings.Join(draw.Names(), ", "), drillName, strings.Join(proof.Names(), ", ")))
	text(flags, &d.to, "o", "-", say.OutFlag(strings.Join(canvas.Formats(), ", .")))
	text(flags, &d.format, "format", "", say.FormatFlag(strings.Join(canvas.Formats(), ", ")))
	text(flags, &d.paper, "size", papers[0], say.SizeFlag(strings.Join(papers, ", ")))
	var pages, width, separator, studies string
	known := append(words.PaperNames(), paper.RecordPage)
	text(flags, &pages, "pages", "", say.PagesFlag(strings.Join(known, ", ")))
	text(flags, &studies, "study", "", say.StudyFlag())
	text(flags, &width, "width", "", say.WidthFlag())
	text(flags, &separator, "separator", words.Separations[0].Name, say.SeparatorFlag(separators()))
	flags.BoolVar(&d.title, "title", true, say.TitleFlag())
	font := fontFlag(flags)
	d.kept.flags(flags)
	switch err := flags.Parse(args); err {
	case nil:
	case flag.ErrHelp:
		return nil, err
	default:
		return nil, nil
	}
	var err error
	if d.plans, err = names(flags, args); err != nil {
		return nil, err
	}
	switch {
	case d.kept.number != "" && len(d.plans) > 0:
		return nil, errors.New(say.ArchiveOrFiles())
	case d.kept.number != "":
		d.plans = []string{d.kept.number}
	case d.kept.letter != "":
		return nil, errors.New(say.RevisionNeedsPlan())
	case *d.kept.data != "":
		return nil, errors.New(say.DataNeedsPlan())
	}
	if width != "" {
		if d.width, err = paper.ParseWidth(width); err != nil {
			return nil, err
		}
	}
	if pages != "" {
		d.tables = strings.Split(pages, ",")
		if pages == "all" {
			d.tables, d.every = words.PaperNames(), true
		}
		for _, name := range d.tables {
			if !slices.Contains(known, name) {
				return nil, errors.New(say.NoSuchPage(name, strings.Join(known, ", ")))
			}
		}
	}
	if studies != "" {
		d.studies = strings.Split(studies, ",")
	}
	if err = d.proving(); err != nil {
		return nil, err
	}
	var found bool
	if d.separation, found = words.SeparationOf(separator); !found {
		return nil, errors.New(say.NoSuchSeparator(separator, strings.Join(words.SeparationNames(), ", ")))
	}
	drawings := slices.Concat([]string{sheetName}, draw.Names(), proof.Names(), []string{drillName})
	switch {
	case d.what == drillName && len(d.plans) > 0:
		if isGiven(flags, "size") || isGiven(flags, "separator") || isGiven(flags, "font") {
			return nil, errors.New(say.NotForTheDrill())
		}
		return &d, d.asDrill()
	case !slices.Contains(drawings, d.what):
		return nil, errors.New(say.NoSuchDrawing(d.what, strings.Join(drawings, ", ")))
	case !slices.Contains(papers, d.paper):
		return nil, errors.New(say.NoSuchSize(d.paper, strings.Join(papers, ", ")))
	case d.what != sheetName && len(d.tables) > 0:
		return nil, errors.New(say.PagesNeedASheet())
	case d.what == sheetName && (d.width != 0 || !d.title):
		return nil, errors.New(say.WidthAndTitleNeedOneDrawing())
	case d.what != sheetName && isGiven(flags, "size"):
		return nil, errors.New(say.SizeNeedsASheet())
	case d.what == cardName && !d.title:
		return nil, errors.New(say.CardKeepsItsTitle())
	case len(d.plans) == 0:
		return nil, errors.New(say.DrawNeedsPlans())
	}
	if err := d.chooseFormat(); err != nil {
		return nil, err
	}
	if d.format == rowsFormat && isGiven(flags, "size") {
		return nil, errors.New(say.RowsHaveNoSize())
	}
	if d.format == rowsFormat && isGiven(flags, "font") {
		return nil, errors.New(say.RowsHaveNoFont())
	}
	if d.format != rowsFormat && isGiven(flags, "separator") {
		return nil, errors.New(say.SeparatorNeedsRows())
	}
	return &d, useFonts(*font)
}

// separators are those that can be named, with what they mean.
func separators() string {
	var out []string
	for _, s := range words.Separations {
		out = append(out, s.Name+" ("+s.Label+")")
	}
	return strings.Join(out, ", ")
}

// chooseFormat tells from the ending of -o what is written, and into what.
func (d *drawn) chooseFormat() error {
	ending := strings.ToLower(strings.TrimPrefix(filepath.Ext(d.to), "."))
	info, err := os.Stat(d.to)
	d.folder = d.to != "-" && (err == nil && info.IsDir() || strings.HasSuffix(d.to, "/") || strings.HasSuffix(d.to, string(filepath.Separator)))
	usual := ending
	switch {
	case d.folder:
		usual = "pdf"
	case d.to == "-":
		usual = "svg"
	}
	if d.format == "" {
		d.format = usual
	}
	switch {
	case d.format == rowsFormat && !d.folder && (usual == rowsFormat || d.to == "-"):
		if len(d.tables) == 0 || len(d.plans) > 1 {
			return errors.New(say.OneCSVOnePlan())
		}
	case d.format == rowsFormat && d.folder:
		return errors.New(say.RowsNeedOneFile())
	case !slices.Contains(canvas.Formats(), d.format) && d.format != ending:
		return errors.New(say.NoSuchFormat(d.format, strings.Join(canvas.Formats(), ", ")))
	case !slices.Contains(canvas.Formats(), d.format) || d.format != usual && !d.folder && d.to != "-":
		return errors.New(say.NoFormatInName(d.to, strings.Join(canvas.Formats(), ", .")))
	case len(d.plans) > 1 && !d.folder && d.format != "pdf":
		return errors.New(say.ManyPlansNeedPDFOrFolder())
	}
	return nil
}

// A source is a plan with its own bytes, as a file has them, or with what is said
// of it as a revision.
type source struct {
	plan  *press.Plan
	bytes []byte
	issue *carry.Issue

	superseded string // by which revision; empty where it is the last, and for a file

	studies []*proving.Study // of its station
	damaged bool             // one that is kept cannot be read
	past    past             // that took values of studies into it
	asked   bool             // whether the station is proved can be told: it is kept, or its studies were named
}

// read reads one plan, from the archive where it is named there.
func (d *drawn) read(ctx context.Context, c console, name string) (source, bool) {
	var s source
	if d.kept.number == "" {
		var ok bool
		s.bytes, s.plan, ok = c.readSource(name)
		return s, ok && s.readStudies(c, d.studies)
	}
	var err error
	if s.plan, s.issue, err = d.kept.plan(ctx, &s); err != nil {
		c.give(err)
	} else if s.superseded = d.kept.old; s.superseded != "" {
		c.complain("%s", say.RevisionSuperseded(s.issue.Revision, s.superseded))
	}
	return s, err == nil
}

// lay reads and lays out one plan.
func (d *drawn) lay(ctx context.Context, c console, name string) (*paper.Document, bool) {
	from, ok := d.read(ctx, c, name)
	if !ok {
		return nil, false
	}
	o := from.options()
	result := press.Evaluate(from.plan)
	if o.Proof, ok = from.proof(result), true; d.what == sheetName {
		o.Paper, o.Pages, o.Record = d.paper, d.papers(from, result), d.record
		return paper.NewSheet(from.plan, result, o), true
	}
	if slices.Contains(proof.Names(), d.what) {
		return d.layStudy(c, result, o)
	}
	doc, err := paper.NewSingle(d.what, from.plan, result, d.width, !d.title, o)
	if err != nil {
		c.complain("%s", say.CannotDrawPlan(name, err))
	}
	return doc, err == nil
}

// intoOne draws one plan, or many into one PDF.
func (d *drawn) intoOne(ctx context.Context, c console) int {
	var docs []*paper.Document
	tell := c.progress("draw")
	for i, name := range d.plans {
		tell(i, len(d.plans), name)
		if ctx.Err() != nil {
			c.complain("%s", say.StoppedUnwrittenBefore(name))
			return statusRefused
		}
		doc, ok := d.lay(ctx, c, name)
		if !ok {
			return statusRefused
		}
		docs = append(docs, doc)
	}
	if d.format == "pdf" {
		var b bytes.Buffer
		if err := paper.WritePDF(&b, docs...); err != nil {
			c.complain("%s", say.CannotDraw(err))
			return statusRefused
		}
		if ctx.Err() != nil {
			c.complain("%s", say.StoppedUnwritten())
			return statusRefused
		}
		return c.put(d.to, b.Bytes())
	}
	return d.pages(c, docs[0], d.to)
}

// intoFolder draws each plan into a file of its own, named like the plan. A plan
// that cannot be drawn keeps no other from it.
func (d *drawn) intoFolder(ctx context.Context, c console) int {
	files, err := d.filesFor()
	if err == nil {
		err = os.MkdirAll(d.to, 0o755)
	}
	if err != nil {
		c.complain("%v", err)
		return statusRefused
	}
	status := statusGood
	tell := c.progress("draw")
	for i, name := range d.plans {
		tell(i, len(d.plans), name)
		if ctx.Err() != nil {
			c.complain("%s", say.StoppedAfterPlans(name, i, len(d.plans)))
			return statusRefused
		}
		if doc, ok := d.lay(ctx, c, name); !ok || d.pages(c, doc, filepath.Join(d.to, files[i])) != statusGood {
			status = statusRefused
		}
	}
	return status
}

// filesFor names a file for each plan, and refuses two of one name, and one that
// the second page of another would have.
func (d *drawn) filesFor() ([]string, error) {
	var out []string
	for _, plan := range d.plans {
		base := filepath.Base(plan)
		stem := strings.TrimSuffix(base, filepath.Ext(base))
		switch {
		case d.kept.number != "":
			stem = d.kept.stem()
		case plan == "-":
			stem = "plan"
		}
		out = append(out, stem+"."+d.format)
	}
	first := map[string]string{} // by what no system tells apart
	for i, name := range out {
		if other, taken := first[strings.ToLower(name)]; taken {
			return nil, errors.New(say.TwoPlansOneFile(other, d.plans[i], name))
		}
		first[strings.ToLower(name)] = d.plans[i]
	}
	for i, name := range out {
		stem := strings.TrimSuffix(name, "."+d.format)
		if before := strings.TrimRight(stem, "0123456789"); d.format != "pdf" && before != stem && strings.HasSuffix(before, "-") {
			if other, taken := first[strings.ToLower(strings.TrimSuffix(before, "-")+"."+d.format)]; taken {
				return nil, errors.New(say.PagesOverPlan(other, name, d.plans[i]))
			}
		}
	}
	return out, nil
}

// pages writes a document: one file as PDF, else one for each page, the first of
// them under the name itself.
func (d *drawn) pages(c console, doc *paper.Document, to string) int {
	count := doc.Pages()
	if d.format == "pdf" || to == "-" {
		if n := count - 1; n > 0 && d.format != "pdf" {
			c.complain("%s", say.FirstPageOnly(count))
		}
		count = 1
	}
	var files []string
	var data [][]byte
	for i := range count {
		var b bytes.Buffer
		if err := doc.Write(&b, d.format, i); err != nil {
			c.complain("%s", say.CannotDraw(err))
			return statusRefused
		}
		files, data = append(files, pageName(to, i)), append(data, b.Bytes())
	}
	if status := c.putAll(files, data); status != statusGood {
		return status
	}
	if count > 1 {
		c.complain("%s", say.PagesWritten(count, to, pageName(to, count-1)))
	}
	return statusGood
}

// pageName is the name of a page's file: NAME.svg, NAME-2.svg, NAME-3.svg …
func pageName(to string, page int) string {
	if page == 0 {
		return to
	}
	ending := filepath.Ext(to)
	return fmt.Sprintf("%s-%d%s", strings.TrimSuffix(to, ending), page+1, ending)
}
