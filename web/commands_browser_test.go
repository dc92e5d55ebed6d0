package web

import (
	"bytes"
	"io"
	"net/http"
	"net/url"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A gate holds the answers to commands back until it is opened.
type gate struct {
	inner http.Handler
	shut  chan struct{}
	once  sync.Once
	mu    sync.Mutex
	asked []string // what was asked, in order
}

// gated visits the bench behind a gate.
func gated(t *testing.T) (*tab, *gate) {
	t.Helper()
	g := &gate{inner: example(t), shut: make(chan struct{})}
	b, _ := visit(t, g)
	t.Cleanup(g.open) // or a failed test waits for the server for ever
	return b, g
}

func (g *gate) open() { g.once.Do(func() { close(g.shut) }) }

func (g *gate) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	body, _ := io.ReadAll(r.Body)
	r.Body = io.NopCloser(bytes.NewReader(body))
	if r.Method == http.MethodPost {
		do := doOf(string(body))
		g.mu.Lock()
		g.asked = append(g.asked, do)
		g.mu.Unlock()
		if do != "recompute" {
			select {
			case <-g.shut:
			case <-time.After(2 * patience): // a test that failed on the way must still end
			}
		}
	}
	g.inner.ServeHTTP(w, r)
}

// doOf finds the command in a body, whichever way it was sent.
func doOf(body string) string {
	if _, rest, ok := strings.Cut(body, `name=":do"`); ok {
		return strings.TrimSpace(strings.SplitN(rest, "\n", 4)[2])
	}
	values, _ := url.ParseQuery(body)
	return values.Get(":do")
}

func (g *gate) questions() []string {
	g.mu.Lock()
	defer g.mu.Unlock()
	return append([]string(nil), g.asked...)
}

// wait waits for so many questions.
func (g *gate) wait(t *testing.T, n int) {
	t.Helper()
	require.Eventually(t, func() bool { return len(g.questions()) >= n }, patience, 5*time.Millisecond)
}

func click(b *tab, selector string) {
	b.t.Helper()
	eval[any](b, "(document.querySelector('"+selector+"').focus(), document.querySelector('"+selector+"').click(), 0)")
}

const addPart = `#f-parts-rows button[value="add parts"]`

func valueOf(b *tab, id string) string {
	b.t.Helper()
	return eval[string](b, "document.getElementById('"+id+"')?.value ?? 'not there'")
}

// TestTypeDuringCommand types while a button's answer is on its way: the row
// comes, what was typed stays, focus and caret too, and is then computed.
func TestTypeDuringCommand(t *testing.T) {
	for name, pause := range map[string]time.Duration{"before the keys rest": 0, "after the keys rested": 600 * time.Millisecond} {
		t.Run(name, func(t *testing.T) {
			b, g := gated(t)
			click(b, addPart)
			g.wait(t, 1)
			b.retype("f-station-nest", "141")
			b.retype("f-title-name", "Workshop")
			eval[any](b, "document.getElementById('f-title-name').setSelectionRange(3, 3) ?? 0")
			eval[any](b, "document.getElementById('f-parts-0-insert').click() ?? 0")
			time.Sleep(pause)
			assert.Equal(t, []string{"add parts"}, g.questions(), "no recompute overtakes the command")
			g.open()
			b.until("document.getElementById('f-parts-3-nominal') !== null")
			assert.Equal(t, "141", valueOf(b, "f-station-nest"))
			assert.Equal(t, "Workshop", valueOf(b, "f-title-name"))
			assert.True(t, eval[bool](b, "document.getElementById('f-parts-0-insert').checked"))
			assert.Equal(t, "f-title-name", eval[string](b, "document.activeElement.id"), "the focus is where one types")
			assert.Equal(t, 3, eval[int](b, "document.activeElement.selectionStart"))
			g.wait(t, 2)
			assert.Equal(t, "recompute", g.questions()[1], "what was typed meanwhile is computed")
			eval[any](b, "document.getElementById('f-parts-0-insert').click() ?? 0")
			click(b, `#f-parts-3 button[value="remove parts 3"]`)
			b.until(setpointsText + ".includes('116.08')") // derived: 115.08 of the example and 1
		})
	}
}

// TestTypeIntoMovedRow types into a row that the command on its way moves.
func TestTypeIntoMovedRow(t *testing.T) {
	b, g := gated(t)
	first, third := valueOf(b, "f-parts-0-name"), valueOf(b, "f-parts-2-name")
	click(b, `#f-parts-1 button[value="remove parts 1"]`)
	g.wait(t, 1)
	b.retype("f-parts-2-name", "sleeve, measured")
	b.retype("f-parts-1-name", "goes with its row")
	g.open()
	b.until("document.getElementById('f-parts-2') === null")
	assert.Equal(t, first, valueOf(b, "f-parts-0-name"))
	assert.Equal(t, "sleeve, measured", valueOf(b, "f-parts-1-name"))
	assert.NotEqual(t, third, valueOf(b, "f-parts-1-name"))
}

// TestCommandsInARow presses buttons faster than they are answered: each is
// done once, on the row that it was pressed for.
func TestCommandsInARow(t *testing.T) {
	b, g := gated(t)
	third := valueOf(b, "f-parts-2-name")
	click(b, `#f-parts-0 button[value="remove parts 0"]`)
	click(b, `#f-parts-0 button[value="remove parts 0"]`) // once too often
	click(b, `#f-parts-2 button[value="up parts 2"]`)
	click(b, addPart)
	click(b, addPart)
	g.wait(t, 1)
	g.open()
	b.until("document.getElementById('f-parts-3-name') !== null")
	assert.Equal(t, []string{"remove parts 0", "up parts 1", "add parts", "add parts"}, g.questions()[:4])
	assert.Equal(t, third, valueOf(b, "f-parts-0-name"))
	assert.Equal(t, "not there", valueOf(b, "f-parts-4-name"))
}

// TestTypeDuringPaste types while columns are being read.
func TestTypeDuringPaste(t *testing.T) {
	b, g := gated(t)
	eval[any](b, `(document.getElementById("paste-text").value = "10 % 250 N\n40 % 1400 N\n70 % 2700 N", 0)`)
	click(b, `#paste button[value="paste ram.curve.points"]`)
	g.wait(t, 1)
	b.retype("f-title-name", "Workshop")
	b.retype("f-title-number", "WS-211")
	time.Sleep(400 * time.Millisecond)
	assert.Equal(t, []string{"paste ram.curve.points"}, g.questions())
	// The next answer may take what was read from the page before a test can look.
	eval[any](b, "(window.leads = '', new MutationObserver(() => { leads += document.getElementById('lead').textContent; }).observe(document.body, {subtree: true, childList: true, characterData: true}), 0)")
	g.open()
	b.until("leads.includes('Read 3 points')")
	assert.Equal(t, "1400", valueOf(b, "f-ram-curve-points-1-1"))
	assert.Equal(t, "Workshop", valueOf(b, "f-title-name"))
	assert.Equal(t, "WS-211", valueOf(b, "f-title-number"))
	assert.Contains(t, eval[string](b, "leads.replace(/\\s+/g, ' ')"), "settings 10 to 70 %, forces 250 to 2700 N")
	g.wait(t, 2)
	assert.Equal(t, "recompute", g.questions()[1], "what was typed meanwhile is saved")
	b.until(stateText + ".includes('Up to date')")
}

// TestCommandOfLostServer gives a command to a server that is away and goes on
// typing: both are there when it is back.
func TestCommandOfLostServer(t *testing.T) {
	b := newTab(t)
	program := example(t)
	address, stop, ended := serving(t, program, DefaultTimeouts)
	b.do(chromedp.Navigate("http://" + address + benchPath))
	b.until("document.documentElement.classList.contains('live')")
	stop()
	require.NoError(t, <-ended)
	click(b, addPart)
	b.until(stateText + ".includes('does not answer')")
	b.retype("f-station-nest", "143")
	time.Sleep(400 * time.Millisecond)
	ln, err := Listen(address)
	require.NoError(t, err)
	srv := &http.Server{Handler: program}
	go func() { _ = srv.Serve(ln) }()
	defer srv.Close()
	b.until("document.getElementById('f-parts-3-nominal') !== null")
	assert.Equal(t, "143", valueOf(b, "f-station-nest"))
	assert.NotContains(t, b.text("state"), "does not answer")
}

// TestRefusedSave lets the program refuse to save: its own sentence is shown,
// the page is not lost, and stays so while one types on.
func TestRefusedSave(t *testing.T) {
	inner := example(t)
	refuse := answer(func(http.ResponseWriter, *http.Request) error {
		return refusal{http.StatusRequestEntityTooLarge, "The request is larger than 8 MiB.", []string{"Go back."}}
	})
	b, _ := visit(t, http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if strings.HasSuffix(r.URL.Path, "/file") {
			refuse.ServeHTTP(w, r)
			return
		}
		inner.ServeHTTP(w, r)
	}))
	eval[any](b, "scrollTo(0, 2000) ?? 0")
	click(b, `.acts button[value="save"]`)
	b.until("document.getElementById('refusal').textContent === 'The request is larger than 8 MiB.'")
	b.until("document.getElementById('refusal').getBoundingClientRect().top > 50") // under the bar
	assert.NotContains(t, b.text("state"), "does not answer")
	assert.False(t, eval[bool](b, "document.documentElement.classList.contains('lost')"))
	b.retype("f-station-nest", "141")
	b.until(setpointsText + ".includes('116.08')")
	assert.NotEmpty(t, b.text("refusal"), "it stands until the next thing is asked for")
	click(b, addPart)
	b.until("document.getElementById('f-parts-3-nominal') !== null")
	assert.Empty(t, b.text("refusal"))
}

// TestRefusedCommand asks for something that the program refuses: its sentence is
// shown, nothing typed is lost, and the next command is done.
func TestRefusedCommand(t *testing.T) {
	b, _ := visit(t, example(t))
	eval[any](b, `(document.querySelector('`+addPart+`').value = "add nothing", 0)`)
	click(b, `#f-parts-rows .rowsfoot button`)
	b.until("document.getElementById('refusal').textContent.includes('does not know: add nothing')")
	b.retype("f-station-nest", "141")
	b.until(setpointsText + ".includes('116.08')")
	assert.Contains(t, b.text("state"), "Up to date")
	click(b, `#f-parts-2 button[value="up parts 2"]`)
	b.until("document.getElementById('refusal').textContent === ''")
}
