package web

import (
	"errors"
	"fmt"
	"net"
	"net/netip"
	"strconv"
	"strings"
	"syscall"
)

// DefaultAddress is where the bench is served when nothing else is asked for.
const DefaultAddress = "127.0.0.1:8647"

// triedPorts is how many ports are tried from the default one upwards.
const triedPorts = 20

// Listen opens a listener on a loopback address. An empty address is the default
// one, or the next free port above it.
func Listen(address string) (net.Listener, error) {
	if address != "" {
		if err := loopback(address); err != nil {
			return nil, err
		}
		return listen(address)
	}
	host, port, err := net.SplitHostPort(DefaultAddress)
	if err != nil {
		panic("web: " + err.Error())
	}
	first, _ := strconv.Atoi(port)
	for i := range triedPorts {
		ln, err := listen(net.JoinHostPort(host, strconv.Itoa(first+i)))
		if err == nil || !errors.Is(err, syscall.EADDRINUSE) {
			return ln, err
		}
	}
	return nil, fmt.Errorf("web: ports %d to %d of %s are all in use; name a free one with -listen %s:PORT", first, first+triedPorts-1, host, host)
}

func listen(address string) (net.Listener, error) {
	ln, err := net.Listen("tcp", address)
	if errors.Is(err, syscall.EADDRINUSE) {
		return nil, fmt.Errorf("web: %s is in use, perhaps by another ramplan; stop that one, or name a free port with -listen: %w", address, err)
	}
	if err != nil {
		return nil, fmt.Errorf("web: cannot listen on %s: %w", address, err)
	}
	return ln, nil
}

// loopback refuses an address that other machines could reach.
func loopback(address string) error {
	host, port, err := net.SplitHostPort(address)
	if err != nil {
		return fmt.Errorf("web: found address %q; HOST:PORT such as %s is needed", address, DefaultAddress)
	}
	if n, err := strconv.ParseUint(port, 10, 16); err != nil {
		return fmt.Errorf("web: found port %q; a number from 0 to 65535 is needed, as in %s", port, DefaultAddress)
	} else if !localHost(host) {
		return fmt.Errorf("web: found host %q; only this machine may be served: use 127.0.0.1:%d, [::1]:%d or localhost:%d", host, n, n, n)
	}
	return nil
}

// localHost tells whether a host name or address is this machine's own.
func localHost(host string) bool {
	if strings.EqualFold(host, "localhost") {
		return true
	}
	ip, err := netip.ParseAddr(host)
	return err == nil && ip.Unmap().IsLoopback() && ip.Zone() == ""
}
