package web

import (
	"context"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// browser is the one browser of this package's tests, started when first needed.
var browser struct {
	once    sync.Once
	ctx     context.Context
	profile string // the folder of its settings
	err     error
}

// atOnce is how many browser tests run side by side where the command line does not say:
// they wait most of the time, for keys to rest and for pages.
const atOnce = 4

// patience is how long a test waits for what must come, at each step: a busy machine is no
// fault, but one that never comes shall be told soon.
const patience = 45 * time.Second

// beside holds the tests that run beside others already.
var beside sync.Map

func TestMain(m *testing.M) {
	flag.Parse()
	if asked := flag.Lookup("test.parallel"); asked.Value.String() == asked.DefValue {
		_ = asked.Value.Set(strconv.Itoa(max(atOnce, runtime.GOMAXPROCS(0))))
	}
	status := m.Run()
	if browser.ctx != nil {
		_ = chromedp.Cancel(browser.ctx) // or it lingers
	}
	if browser.profile != "" {
		_ = os.RemoveAll(browser.profile)
	}
	os.Exit(status)
}

// names of browsers that understand the tests; one without windows comes first, as it has
// less to do.
var browserNames = []string{"chromium-headless-shell", "chromium", "chromium-browser", "google-chrome"}

// plainSettings switch off what reads the entries of every page again after each change
// of it, to fill in addresses and passwords: it cost more than the pages themselves.
const plainSettings = `{"autofill": {"profile_enabled": false, "credit_card_enabled": false}, "credentials_enable_service": false}`

// notNeeded are parts of a browser with a window that no test looks at, each with a process
// or a reader of pages of its own. A browser that does not know a name passes over it.
var notNeeded = []string{
	"Translate", "BlinkGenPropertyTrees", // those that chromedp leaves out
	"PreloadTopChromeWebUI", "InitialWebUI", "WebUIToolbar", "WebUIReloadButton", "WebUILocationBar",
	"WebUIOmniboxPopup", "WebUIOmniboxFullPopup", "WebUIOmniboxAimPopup",
	"SpareRendererForSitePerProcess",
	"AnnotatedPageContentExtraction", "PageContentAnnotations", "OptimizationHints",
}

// plainProfile makes a folder of settings for a browser.
func plainProfile() (string, error) {
	folder, err := os.MkdirTemp("", "ramplan-browser-")
	if err != nil {
		return "", err
	}
	if err := os.Mkdir(filepath.Join(folder, "Default"), 0o700); err != nil {
		return folder, err
	}
	return folder, os.WriteFile(filepath.Join(folder, "Default", "Preferences"), []byte(plainSettings), 0o600)
}

func startBrowser() {
	path := ""
	names := browserNames
	if asked := os.Getenv("RAMPLAN_BROWSER_PROGRAM"); asked != "" {
		names = []string{asked}
	}
	for _, name := range names {
		if found, err := exec.LookPath(name); err == nil {
			path = found
			break
		}
	}
	if path == "" {
		browser.err = fmt.Errorf("no browser found (looked for %v)", names)
		return
	}
	if browser.profile, browser.err = plainProfile(); browser.err != nil {
		return
	}
	opts := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(path), chromedp.NoSandbox, chromedp.DisableGPU,
		chromedp.Flag("font-render-hinting", "none"), // letters as wide as in print
		chromedp.UserDataDir(browser.profile), chromedp.Flag("disable-features", strings.Join(notNeeded, ",")),
		chromedp.Flag("disable-quic", true), chromedp.Flag("disable-background-networking", true),
		chromedp.Flag("disable-component-update", true), chromedp.Flag("disable-sync", true),
		chromedp.Flag("host-resolver-rules", "MAP *.example 127.0.0.1"))
	alloc, _ := chromedp.NewExecAllocator(context.Background(), opts...)
	ctx, _ := chromedp.NewContext(alloc)
	if err := chromedp.Do(ctx, chromedp.Navigate("about:blank")); err != nil { // the first call carries no deadline
		browser.err = err
		return
	}
	browser.ctx = ctx
}

// A tab is one tab of the browser on a server of its own.
type tab struct {
	t     *testing.T
	ctx   context.Context
	still bool // scripts of pages do not run
	mu    sync.Mutex
	noise []string // warnings and errors of the console
}

// newTab opens a tab in a profile of its own, or skips the test when there is no browser.
// With RAMPLAN_BROWSER=required a missing browser is a failure. From here on the test
// runs beside others: so a tab comes before anything that must not wait.
func newTab(t *testing.T) *tab {
	t.Helper()
	if testing.Short() {
		t.Skip("browser tests are left out of short runs")
	}
	if _, already := beside.LoadOrStore(t, true); !already {
		t.Parallel()
	}
	browser.once.Do(startBrowser)
	if browser.err != nil {
		if os.Getenv("RAMPLAN_BROWSER") == "required" {
			t.Fatalf("a browser is required: %v", browser.err)
		}
		t.Skipf("no browser test: %v", browser.err)
	}
	ctx, closeTab := chromedp.NewContext(browser.ctx, chromedp.WithNewBrowserContext())
	t.Cleanup(closeTab)
	require.NoError(t, chromedp.Do(ctx, chromedp.Navigate("about:blank")))
	_, err := chromedp.Call(ctx, emulation.SetFocusEmulationEnabled, emulation.SetFocusEmulationEnabledParams{Enabled: true}) // each tab is the one in front
	require.NoError(t, err)
	ctx, cancel := context.WithTimeout(ctx, 5*patience)
	t.Cleanup(cancel)
	b := &tab{t: t, ctx: ctx}
	messages := chromedp.Console(ctx)
	go func() {
		for m, err := range messages {
			if err != nil {
				return
			}
			refused := strings.Contains(m.Text, "status of 422") // the browser remarks on every refused form
			if m.IsException() || (m.Type == "error" || m.Type == "warning") && !refused {
				b.mu.Lock()
				b.noise = append(b.noise, m.String())
				b.mu.Unlock()
			}
		}
	}()
	return b
}

// complaints are what the browser said against the page so far.
func (b *tab) complaints() []string {
	b.mu.Lock()
	defer b.mu.Unlock()
	return append([]string(nil), b.noise...)
}

func (b *tab) do(steps ...chromedp.Action[chromedp.Void]) {
	b.t.Helper()
	ctx, cancel := context.WithTimeout(b.ctx, patience)
	defer cancel()
	require.NoError(b.t, chromedp.Do(ctx, steps...))
}

// withoutScript switches off the scripts of pages: what a test asks still runs, but nothing
// in the page waits any more.
func (b *tab) withoutScript() {
	b.t.Helper()
	_, err := chromedp.Call(b.ctx, emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: true})
	require.NoError(b.t, err)
	b.still = true
}

// eval gives the value of a script's expression.
func eval[T any](b *tab, script string) T {
	b.t.Helper()
	ctx, cancel := context.WithTimeout(b.ctx, patience)
	defer cancel()
	v, err := chromedp.Run(ctx, chromedp.Evaluate[T](script, chromedp.EvalAwaitPromise))
	require.NoError(b.t, err, script)
	return v
}

// holding waits in the page for a second at most until an expression is true and the page
// has been read to its end: before that the browser may still renumber what stands in it,
// and a step that looked an element up finds it gone. Asked from outside every 20 ms, the
// questions alone kept a slow machine busy.
const holding = `(async () => {
	for (const end = performance.now() + 1000; performance.now() < end; await new Promise((go) => setTimeout(go, 20))) {
		try {
			if ((await (%s)) === true && document.readyState === "complete") return true;
		} catch {}
	}
	return false;
})()`

// standing asks the same once, where no script of the page can wait.
const standing = `(%s) === true && document.readyState === "complete"`

// until waits for an expression to hold.
func (b *tab) until(script string) {
	b.t.Helper()
	question, rest := chromedp.Evaluate[bool](fmt.Sprintf(holding, script), chromedp.EvalAwaitPromise), 20*time.Millisecond
	if b.still {
		question, rest = chromedp.Evaluate[bool](fmt.Sprintf(standing, script)), 100*time.Millisecond
	}
	ask := func() bool {
		ctx, cancel := context.WithTimeout(b.ctx, patience/4) // a page that goes may never answer
		defer cancel()
		holds, err := chromedp.Run(ctx, question) // between two pages there is nothing to ask
		return err == nil && holds
	}
	for end := time.Now().Add(patience); time.Now().Before(end) && b.ctx.Err() == nil; time.Sleep(rest) {
		if ask() {
			return
		}
	}
	require.Fail(b.t, "never became true", script)
}

// retype replaces what stands in a field, as a user would.
func (b *tab) retype(id, text string) {
	b.t.Helper()
	eval[any](b, fmt.Sprintf("(() => { const field = document.getElementById(%q); field.focus(); field.select(); return 0; })()", id))
	if text == "" {
		b.do(chromedp.KeyEvent("\b"))
		return
	}
	b.do(chromedp.KeyEvent(text))
}

// text gives the text of an element.
func (b *tab) text(id string) string {
	b.t.Helper()
	return eval[string](b, fmt.Sprintf("document.getElementById(%q)?.textContent.replace(/\\s+/g, ' ').trim() ?? ''", id))
}
