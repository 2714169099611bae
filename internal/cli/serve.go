package cli

import (
	"context"
	"errors"
	"fmt"
	"io"
	"net"
	"net/http"
	"net/netip"
	"time"

	"dryfit/internal/demo"
	"dryfit/internal/store"
	"dryfit/internal/web"
)

type serveCmd struct {
	Data   string `help:"Folder that the rooms are kept in. Default: a folder of its own where this system keeps a person's data." type:"path" placeholder:"DIR"`
	Listen string `help:"Address to listen at. With --share every address of this machine unless told." placeholder:"HOST:PORT"`
	Share  bool   `help:"Let others on the local network open the rooms with a link that carries a secret."`
}

// port is the one that is listened at unless told; it has no meaning.
const port = "7327"

// Run serves the rooms until it is interrupted.
func (c serveCmd) Run(ctx context.Context, s Streams) error {
	dir, err := dataFolder(c.Data)
	if err != nil {
		return err
	}
	kept, err := store.Open(ctx, dir, store.Limits{})
	if err != nil {
		return err
	}
	return errors.Join(c.serve(ctx, s, kept, dir), kept.Close())
}

func (c serveCmd) serve(ctx context.Context, s Streams, kept *store.Store, dir string) error {
	if err := web.Welcome(ctx, kept, demo.Rooms(), time.Now()); err != nil {
		return err
	}
	at, err := net.Listen("tcp", c.address())
	if err != nil {
		return err
	}
	_, number, err := net.SplitHostPort(at.Addr().String())
	if err != nil {
		return err
	}
	share, err := c.shared(number)
	if err != nil {
		return errors.Join(err, at.Close())
	}
	fmt.Fprintf(s.Out, "Rooms: http://localhost:%s\nKept in: %s\n", number, dir)
	if err := invite(s.Out, share); err != nil {
		return errors.Join(err, at.Close())
	}
	fmt.Fprintln(s.Out, "Stop with Ctrl-C.")
	return listen(ctx, at, web.New(web.Options{Store: kept, Now: time.Now, Share: share}).Handler())
}

func (c serveCmd) address() string {
	switch {
	case c.Listen != "":
		return c.Listen
	case c.Share:
		return ":" + port
	}
	return "127.0.0.1:" + port
}

// shared makes the links' secrets, anew at each start. Without --share only this machine is answered, wherever it listens.
func (c serveCmd) shared(port string) (*web.Share, error) {
	if !c.Share {
		return nil, nil
	}
	all, err := net.InterfaceAddrs()
	if err != nil {
		return nil, err
	}
	var out []string
	for _, a := range all {
		p, err := netip.ParsePrefix(a.String())
		if ip := p.Addr(); err == nil && ip.Is4() && (ip.IsPrivate() || ip.IsLinkLocalUnicast()) {
			out = append(out, "http://"+net.JoinHostPort(ip.String(), port))
		}
	}
	if len(out) == 0 {
		return nil, errors.New("this machine has no address on a local network to share at")
	}
	return web.NewShare(out...), nil
}

// invite prints the links, each with its code for a phone's camera.
func invite(w io.Writer, share *web.Share) error {
	if share == nil {
		return nil
	}
	for _, change := range []bool{false, true} {
		what := "For looking only"
		if change {
			what = "For changing"
		}
		for _, a := range share.Addresses {
			link := share.Link(a, change)
			code, err := web.Terminal(link)
			if err != nil {
				return err
			}
			fmt.Fprintf(w, "\n%s: %s\n%s", what, link, code)
		}
	}
	return nil
}

// Bounds of a connection: a header must come soon; a page that follows a room stays open.
const (
	headerTime = 10 * time.Second
	closeTime  = 3 * time.Second
)

// listen answers until the context ends, then lets running answers finish.
func listen(ctx context.Context, at net.Listener, h http.Handler) error {
	server := &http.Server{Handler: h, ReadHeaderTimeout: headerTime, BaseContext: func(net.Listener) context.Context { return ctx }}
	done := make(chan error, 1)
	go func() { done <- server.Serve(at) }()
	select {
	case err := <-done:
		return err
	case <-ctx.Done():
	}
	late, stop := context.WithTimeout(context.WithoutCancel(ctx), closeTime)
	defer stop()
	if err := server.Shutdown(late); err != nil {
		return server.Close()
	}
	return nil
}
