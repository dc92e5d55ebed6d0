package web

import (
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/base64"
	"errors"
	"net/http"
	"regexp"
	"strings"
	"time"

	"ramplan/press"
	"ramplan/press/carry"
	"ramplan/press/draw"
	"ramplan/press/drill"
	"ramplan/static"
	"ramplan/web/page"
	"ramplan/web/view"
)

// DrillFile makes the drill and the station page of a plan as one HTML file that needs
// nothing else: no server, no network. The issue is nil for a draft; last is the letter
// of the plan's last revision, where it is known.
func DrillFile(p *press.Plan, issue *carry.Issue, last string, made time.Time) ([]byte, error) {
	r := press.Evaluate(p)
	v, refused := view.NewDrill(p, r)
	if refused != "" {
		return nil, errors.New(refused)
	}
	h := view.Handheld{Drill: v, Made: made, Newest: last}
	if issue != nil {
		h.Letter, h.Letters, h.Issued = issue.Revision, []string{issue.Revision}, issue.Date
	}
	return handheldFile(h)
}

func handheldFile(v view.Handheld) ([]byte, error) {
	v.Scene = scenes{v.P, v.R}.handheld
	p, err := v.Page(v.Head(page.Assets{}, say.AtTheStation(), ""))
	if err != nil {
		return nil, err
	}
	style, script := bundledStyles(), bundledScript("handheld.js")
	p.Style, p.Script = "<style>"+style+"</style>", "<script>"+script+"</script>"
	p.Policy = "default-src 'none'; script-src " + hashSource(script) + "; style-src " + hashSource(style) + "; img-src data:; font-src data:; base-uri 'none'; form-action 'none'"
	p.Icon = dataAddress("css/icon.svg")
	var b bytes.Buffer
	err = page.HandheldOf(p).Render(context.Background(), &b)
	return b.Bytes(), err
}

// handheld draws a scene before its push, in the narrow form, with the one pose that
// it is put into when its question was answered.
func (s scenes) handheld(q drill.Picture, id string) (svg string, m draw.Motion, ok bool, err error) {
	scene, ok := s.row(q.Row)
	if q.Height != nil {
		scene, ok = s.height(*q.Height)
	}
	if !ok {
		return "", m, false, nil
	}
	d := draw.NewStation(s.p, s.r, scene, draw.Options{Compact: true, ID: "scene-" + id})
	var out bytes.Buffer
	if err := d.Picture(d.Before()).SVG(&out); err != nil {
		return "", m, false, err
	}
	m = d.Motion(d.Before())
	m.Poses = []draw.Pose{d.Read()}
	return out.String(), m, true, nil
}

// handheldStyles are the styles that the file carries, in their order.
var handheldStyles = []string{"base", "entries", "result", "strip", "pages", "glossary", "faults", "shelf", "drill", "records", "handheld"}

var inStyles = regexp.MustCompile(`url\("\.\./([^"]+)"\)`)

// bundledStyles puts styles into one text, with the faces inside.
func bundledStyles() string {
	var out strings.Builder
	for _, name := range handheldStyles {
		out.Write(embedded("css/" + name + ".css"))
	}
	return inStyles.ReplaceAllStringFunc(out.String(), func(found string) string {
		return `url("` + dataAddress(inStyles.FindStringSubmatch(found)[1]) + `")`
	})
}

var (
	importLine = regexp.MustCompile(`(?m)^import .* from "\./([^"]+)";\n`)
	exported   = regexp.MustCompile(`(?m)^export `)
)

// bundledScript puts a script and what it imports into one text, each once.
func bundledScript(name string) string {
	var out strings.Builder
	done := map[string]bool{}
	var add func(string)
	add = func(name string) {
		if done[name] {
			return
		}
		done[name] = true
		source := string(embedded("js/" + name))
		for _, m := range importLine.FindAllStringSubmatch(source, -1) {
			add(m[1])
		}
		out.WriteString(exported.ReplaceAllString(importLine.ReplaceAllString(source, ""), ""))
	}
	add(name)
	return "(() => {\n\"use strict\";\n" + out.String() + "})();\n"
}

func embedded(name string) []byte {
	data, err := static.FS.ReadFile(name)
	if err != nil {
		panic("web: " + err.Error())
	}
	return data
}

func dataAddress(name string) string {
	kind, _, _ := strings.Cut(types[name[strings.LastIndex(name, "."):]], ";")
	return "data:" + kind + ";base64," + base64.StdEncoding.EncodeToString(embedded(name))
}

// hashSource is how a policy allows one text to stand in a page.
func hashSource(text string) string {
	sum := sha256.Sum256([]byte(text))
	return "'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"
}

// sendHandheld answers GET …/drill.html.
func (d drilling) sendHandheld(w http.ResponseWriter, r *http.Request) error {
	if d.D == nil {
		return refusal{http.StatusUnprocessableEntity, d.refused, nil}
	}
	v := view.Handheld{Drill: d.Drill, Made: time.Now()}
	if len(d.Letters) > 0 {
		v.Newest = d.Letters[0]
	}
	out := printed{plan: d.P}
	if d.Letter != "" {
		rev, err := d.site.revision(r.Context(), d.id, d.Letter)
		if err != nil {
			return err
		}
		out.issue = rev.Paper()
		v.Issued = out.issue.Date
	}
	body, err := handheldFile(v)
	if err != nil {
		return err
	}
	h := w.Header()
	h.Set("Content-Type", "text/html; charset=utf-8")
	h.Set("Cache-Control", "private, no-cache")
	h.Set("Content-Disposition", `attachment; filename="`+out.stem()+`-drill.html"`)
	_, _ = w.Write(body)
	return nil
}
