package web

import (
	"bufio"
	"context"
	"io"
	"net"
	"net/http"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// serving runs the server on a free port until stop is called; ended gives what
// Serve returned.
func serving(t *testing.T, h http.Handler, wait Timeouts) (address string, stop func(), ended <-chan error) {
	t.Helper()
	ln, err := Listen("127.0.0.1:0")
	require.NoError(t, err)
	ctx, cancel := context.WithCancel(context.Background())
	t.Cleanup(cancel)
	done := make(chan error, 1)
	go func() { done <- Serve(ctx, ln, h, wait, io.Discard) }()
	return ln.Addr().String(), cancel, done
}

// TestShutdownFinishesRequests stops the server while a request is in flight: it
// is answered, and then nothing listens any more.
func TestShutdownFinishesRequests(t *testing.T) {
	entered := make(chan struct{})
	slow := http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		close(entered)
		time.Sleep(200 * time.Millisecond)
		_, _ = io.WriteString(w, "done")
	})
	address, stop, ended := serving(t, slow, DefaultTimeouts)
	answer := make(chan string, 1)
	go func() {
		resp, err := http.Get("http://" + address + "/")
		if err != nil {
			answer <- err.Error()
			return
		}
		defer resp.Body.Close()
		body, _ := io.ReadAll(resp.Body)
		answer <- string(body)
	}()
	<-entered
	stop()
	assert.Equal(t, "done", <-answer)
	assert.NoError(t, <-ended)
	_, err := net.Dial("tcp", address)
	assert.Error(t, err)
}

func TestShutdownGivesUp(t *testing.T) {
	entered := make(chan struct{})
	release := make(chan struct{})
	defer close(release)
	stuck := http.HandlerFunc(func(http.ResponseWriter, *http.Request) {
		close(entered)
		<-release
	})
	wait := DefaultTimeouts
	wait.Shutdown = 50 * time.Millisecond
	address, stop, ended := serving(t, stuck, wait)
	go func() { _, _ = http.Get("http://" + address + "/") }()
	<-entered
	stop()
	assert.ErrorContains(t, <-ended, "gave up waiting")
}

// TestHalfHeader sends half a header and wants the connection closed by the time that
// a header may take, and by nothing else: all other times are far longer. How fast the
// machine is does not matter.
func TestHalfHeader(t *testing.T) {
	wait := DefaultTimeouts
	wait.Header, wait.Read, wait.Idle = 200*time.Millisecond, time.Hour, time.Hour
	address, _, _ := serving(t, example(t), wait)
	begun := time.Now() // the server counts from the connection on, which comes later
	conn, err := net.Dial("tcp", address)
	require.NoError(t, err)
	defer conn.Close()
	_, err = io.WriteString(conn, "GET / HTTP/1.1\r\nHost: "+address+"\r\nX-Half: ")
	require.NoError(t, err)
	require.NoError(t, conn.SetReadDeadline(begun.Add(patience)))
	_, err = io.ReadAll(conn)
	assert.NoError(t, err, "closed by the server, not by our own deadline")
	assert.GreaterOrEqual(t, time.Since(begun), wait.Header)
}

func TestLargeHeader(t *testing.T) {
	address, _, _ := serving(t, example(t), DefaultTimeouts)
	conn, err := net.Dial("tcp", address)
	require.NoError(t, err)
	defer conn.Close()
	_, _ = io.WriteString(conn, "GET / HTTP/1.1\r\nHost: "+address+"\r\nX-Long: "+strings.Repeat("x", 2*maxHeader)+"\r\n\r\n")
	resp, err := http.ReadResponse(bufio.NewReader(conn), nil)
	require.NoError(t, err)
	defer resp.Body.Close()
	assert.Equal(t, http.StatusRequestHeaderFieldsTooLarge, resp.StatusCode)
}

func TestListenRefusesOtherMachines(t *testing.T) {
	for _, address := range []string{"0.0.0.0:0", ":0", "[::]:0", "192.0.2.1:0", "example.invalid:0", "localhost.example.invalid:0", "127.0.0.1", "127.0.0.1:http", "127.0.0.1:70000", "127.0.0.1:-1", "[::1%lo]:0", "nonsense"} {
		ln, err := Listen(address)
		if !assert.Error(t, err, address) {
			_ = ln.Close()
			continue
		}
		assert.True(t, strings.HasPrefix(err.Error(), "web: "), err)
		assert.Contains(t, err.Error(), "127.0.0.1", "says what to use instead")
	}
}

func TestListenPortInUse(t *testing.T) {
	first, err := Listen("127.0.0.1:0")
	require.NoError(t, err)
	defer first.Close()
	_, err = Listen(first.Addr().String())
	require.Error(t, err)
	assert.Contains(t, err.Error(), "is in use")
	assert.Contains(t, err.Error(), "-listen")
}

// TestListenTakesTheNextPort asks twice for the default address: the second
// gets another port of the same host.
func TestListenTakesTheNextPort(t *testing.T) {
	first, err := Listen("")
	require.NoError(t, err)
	defer first.Close()
	second, err := Listen("")
	require.NoError(t, err)
	defer second.Close()
	assert.NotEqual(t, first.Addr().String(), second.Addr().String())
	host, _, err := net.SplitHostPort(second.Addr().String())
	require.NoError(t, err)
	assert.Equal(t, "127.0.0.1", host)
}
