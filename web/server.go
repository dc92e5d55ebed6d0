package web

import (
	"context"
	"errors"
	"fmt"
	"io"
	"log"
	"net"
	"net/http"
	"time"
)

// Timeouts are how long the server waits.
type Timeouts struct {
	Header   time.Duration // for the header of a request
	Read     time.Duration // for a whole request
	Write    time.Duration // for its answer
	Idle     time.Duration // between requests of one connection
	Shutdown time.Duration // for requests in flight when it is told to stop
}

// DefaultTimeouts are those of a user's own machine.
var DefaultTimeouts = Timeouts{Header: 5 * time.Second, Read: 30 * time.Second, Write: time.Minute, Idle: 2 * time.Minute, Shutdown: 5 * time.Second}

const maxHeader = 64 << 10 // bytes

// Serve answers on the listener until the context ends, then lets the requests
// in flight finish.
func Serve(ctx context.Context, ln net.Listener, h http.Handler, wait Timeouts, faults io.Writer) error {
	srv := &http.Server{
		Handler:           h,
		ReadHeaderTimeout: wait.Header,
		ReadTimeout:       wait.Read,
		WriteTimeout:      wait.Write,
		IdleTimeout:       wait.Idle,
		MaxHeaderBytes:    maxHeader,
		ErrorLog:          log.New(faults, "ramplan: ", 0),
	}
	done := make(chan error, 1)
	go func() { done <- safely(func() error { return srv.Serve(ln) }) }()
	select {
	case err := <-done:
		return fmt.Errorf("web: serving %s: %w", ln.Addr(), err)
	case <-ctx.Done():
	}
	grace, cancel := context.WithTimeout(context.WithoutCancel(ctx), wait.Shutdown)
	defer cancel()
	err := srv.Shutdown(grace)
	if errors.Is(err, context.DeadlineExceeded) {
		_ = srv.Close()
		return fmt.Errorf("web: gave up waiting for requests in flight after %v", wait.Shutdown)
	}
	return err
}
