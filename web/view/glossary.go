package view

import (
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// Glossary gives the page of every word and every field.
func Glossary(assets page.Assets) page.GlossaryPage {
	out := page.GlossaryPage{
		Assets: assets,
		Words: []page.Entries{
			entries("words", "Words", say.InOrderOfNeed(), words.Glossary),
			entries("signals", say.TwoSignals(), say.TwoSignalsMean(), words.Signals),
			entries("verdicts", say.VerdictWords(), say.VerdictWordsMean(), words.Verdicts()),
		},
	}
	for _, s := range press.Sections {
		section := page.FieldEntries{ID: sectionPlace(s.Path), Label: s.Label, Help: s.Help}
		for i := range press.Fields {
			f := &press.Fields[i]
			if f.Path == s.Path || strings.HasPrefix(f.Path, s.Path+".") || strings.HasPrefix(f.Path, s.Path+"[") {
				section.Fields = append(section.Fields, fieldEntry(f))
			}
		}
		out.Sections = append(out.Sections, section)
	}
	return out
}

func entries(id, label, help string, terms []words.Term) page.Entries {
	out := page.Entries{ID: id, Label: label, Help: help}
	for _, t := range terms {
		out.Terms = append(out.Terms, page.Term{ID: id + "-" + strings.ReplaceAll(t.Word, " ", "-"), Word: t.Word, Meaning: t.Meaning})
	}
	return out
}

// glossaryPath is where the glossary is served.
const glossaryPath = "/glossary"

// WordLink leads to a word of the glossary; empty for one that it does not have.
func WordLink(word string) string {
	for _, t := range words.Glossary {
		if t.Word == word {
			return glossaryPath + "#words-" + strings.ReplaceAll(word, " ", "-")
		}
	}
	return ""
}

// SectionLink leads to the fields of a section in the glossary.
func SectionLink(path string) string { return glossaryPath + "#" + sectionPlace(path) }

func sectionPlace(path string) string { return fieldPlace(path) + "-section" }

// FieldLink leads to the glossary's entry of the field at a path of a plan; empty
// where there is no such field.
func FieldLink(path string) string {
	f, ok := press.FieldAt(path)
	if !ok {
		return ""
	}
	return entryLink(f)
}

// entryLink leads to the glossary's entry of a field of the table.
func entryLink(f *press.Field) string { return glossaryPath + "#" + fieldPlace(f.Path) }

// fieldPlace is the id of a field of the table on the page.
func fieldPlace(path string) string { return "field-" + plainID.Replace(path) }

func fieldEntry(f *press.Field) page.FieldEntry {
	out := page.FieldEntry{ID: fieldPlace(f.Path), Label: f.Label, Path: f.Path, Help: f.Help, Unit: f.Unit, Takes: takes(f), Empty: leftEmpty(f)}
	if out.Unit == "" {
		out.Unit = none
	}
	if f.For != nil {
		out.For = say.ForJointsOfKind(strings.Join(f.For, " or "))
	}
	if f.Steps != nil {
		out.For = say.ForStepsOfKind(strings.Join(f.Steps, " or "))
	}
	return out
}

// takes says what may be typed into a field.
func takes(f *press.Field) string {
	switch f.Kind {
	case press.Text:
		return say.TextOfAtMost(f.MaxRunes)
	case press.Choice:
		return strings.Join(f.Choices, ", ")
	case press.Flag:
		return say.Tick()
	case press.Rows:
		return strconv.Itoa(f.MinRows) + " to " + strconv.Itoa(f.MaxRows) + " rows"
	}
	if r := f.Range(); r != "" {
		return strings.TrimSuffix(sentence(r), ".")
	}
	return say.AnyNumber()
}

// leftEmpty says what holds when nothing is typed.
func leftEmpty(f *press.Field) string {
	switch {
	case f.Required:
		return "Needed"
	case f.Kind == press.Flag:
		return say.NotTicked()
	case f.Kind == press.Choice:
		return standIn(f) // a word of the plan, to the letter
	case f.Kind == press.Rows:
		return say.NoRows()
	case f.Derived == "" && f.Kind == press.Text && f.Default == "":
		return "Nothing"
	}
	return strings.TrimSuffix(sentence(standIn(f)), ".")
}
