package cli_test

import (
	"bufio"
	"fmt"
	"net/url"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"strings"
	"testing"
)

// network is two machines on a cable of their own: network namespaces with a virtual pair between them, and no way out.
type network struct {
	*testing.T
	here, there string // the namespace of the server and that of who asks
	bin         string // the test binary, as dryfit and as ask
}

const (
	hereAddress  = "10.77.19.1" // private, RFC 1918; it exists within the namespaces alone
	thereAddress = "10.77.19.2"
)

// cable makes the network, or skips the test and says that it was not made.
func cable(t *testing.T) network {
	t.Helper()
	if _, err := exec.LookPath("ip"); err != nil || os.Getuid() != 0 {
		t.Skip("NOT CHECKED: sharing over an address that is not this machine's own needs root and the program ip")
	}
	n := network{t, fmt.Sprintf("dryfit-%d-a", os.Getpid()), fmt.Sprintf("dryfit-%d-b", os.Getpid()), t.TempDir()}
	t.Cleanup(func() {
		for _, name := range []string{n.here, n.there} {
			exec.Command("ip", "netns", "del", name).Run() // it may never have been made
		}
	})
	for _, step := range []string{
		"netns add " + n.here, "netns add " + n.there,
		"-n " + n.here + " link add cable type veth peer name cable netns " + n.there,
		"-n " + n.here + " address add " + hereAddress + "/24 dev cable", "-n " + n.there + " address add " + thereAddress + "/24 dev cable",
		"-n " + n.here + " link set lo up", "-n " + n.here + " link set cable up", "-n " + n.there + " link set cable up",
	} {
		if said, err := exec.Command("ip", strings.Fields(step)...).CombinedOutput(); err != nil {
			t.Skipf("NOT CHECKED: sharing over a network: no namespaces can be made here: ip %s: %s", step, said)
		}
	}
	self, err := os.Executable()
	for _, name := range []string{"dryfit", "ask"} {
		if err == nil {
			err = os.Symlink(self, filepath.Join(n.bin, name))
		}
	}
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// serve starts the program on the first machine and gives what it prints before it waits for requests.
func (n network) serve(args ...string) (out []string) {
	n.Helper()
	cmd := exec.Command("ip", append([]string{"netns", "exec", n.here, filepath.Join(n.bin, "dryfit"), "serve", "--data", n.TempDir()}, args...)...)
	cmd.Stderr = os.Stderr
	pipe, err := cmd.StdoutPipe()
	if err == nil {
		err = cmd.Start()
	}
	if err != nil {
		n.Fatal(err)
	}
	n.Cleanup(func() { cmd.Process.Kill(); cmd.Wait() })
	for lines := bufio.NewScanner(pipe); lines.Scan(); {
		if strings.HasPrefix(lines.Text(), "Stop with") {
			return out
		}
		out = append(out, lines.Text())
	}
	n.Fatalf("the server ended: %s", out)
	return nil
}

// ask sends one request from the second machine.
func (n network) ask(method, path, pass, host, form string) (status, page string) {
	n.Helper()
	address := "http://" + hereAddress + ":7327" + path
	out, err := exec.Command("ip", "netns", "exec", n.there, filepath.Join(n.bin, "ask"), method, address, pass, host, form).Output()
	if err != nil {
		n.Fatalf("%s %s: %v %s", method, path, err, out)
	}
	status, page, _ = strings.Cut(string(out), "\n")
	return status, page
}

// secret takes the secret from the line that begins with the given words.
func secret(t *testing.T, out []string, words string) string {
	t.Helper()
	for _, line := range out {
		if link, ok := strings.CutPrefix(line, words+": "); ok && strings.HasPrefix(link, "http://"+hereAddress+":7327/s/") {
			return path.Base(link)
		}
	}
	t.Fatalf("no link %q in %s", words, out)
	return ""
}

// Over a network the links open the rooms, each for what it is for; without a secret nothing opens.
func TestSharedOverANetwork(t *testing.T) {
	n := cable(t)
	out := n.serve("--share")
	look, change := secret(t, out, "For looking only"), secret(t, out, "For changing")
	edit := url.Values{"back": {"/room/1/measure"}, `set:["name"]`: {"Changed from a phone"}}.Encode()
	for _, c := range []struct{ method, path, pass, host, form, want string }{
		{"GET", "/", "", "", "", "403"},
		{"GET", "/room/1/measure", "", "", "", "403"},
		{"GET", "/room/1/live", "", "", "", "403"},
		{"GET", "/room/1/get/wall.html", "", "", "", "403"},
		{"GET", "/everything.db", "", "", "", "403"},
		{"GET", "/share", "", "", "", "403"},
		{"POST", "/room/1/edit", "", "", edit, "403"},
		{"GET", "/", "guess", "", "", "403"},
		{"GET", "/s/guess", "", "", "", "403"},
		{"GET", "/", "", "localhost:7327", "", "403"},         // says it is that machine itself
		{"GET", "/", look, "rooms.example:7327", "", "421"},   // a name that points there
		{"GET", "/s/" + look, "", "", "", "303"},              // the link of a looker
		{"GET", "/", look, "", "", "200"},                     //
		{"GET", "/room/1/wall", look, "", "", "200"},          //
		{"GET", "/room/1/get/wall.html", look, "", "", "200"}, //
		{"POST", "/room/1/edit", look, "", edit, "403"},       //
		{"GET", "/share", look, "", "", "403"},                //
		{"GET", "/everything.db", change, "", "", "403"},      // for the person at that machine alone
		{"GET", "/everything.db", change, "localhost", "", "403"},
		{"POST", "/room/1/edit", change, "", edit, "303"},
	} {
		if got, page := n.ask(c.method, c.path, c.pass, c.host, c.form); got != c.want {
			t.Errorf("%s %s with pass %t, host %q: %s, want %s\n%.200s", c.method, c.path, c.pass != "", c.host, got, c.want, page)
		}
	}
	if _, page := n.ask("GET", "/s/"+look, "", "", ""); !strings.HasPrefix(page, "dryfit-pass="+look+"\n") {
		t.Errorf("the link gives no pass: %.100s", page)
	}
	if _, page := n.ask("GET", "/room/1/measure", look, "", ""); !strings.Contains(page, "Changed from a phone") || strings.Contains(page, ">Save<") {
		t.Error("who looks does not see the change, or sees a form to change it")
	}
}

// A server that is not shared answers nobody over the network, even where it was told to listen there.
func TestNotSharedOverANetwork(t *testing.T) {
	n := cable(t)
	n.serve("--listen", "0.0.0.0:7327")
	for _, host := range []string{"", "localhost", "127.0.0.1:7327"} {
		if got, page := n.ask("GET", "/room/1/measure", "", host, ""); got != "403" && got != "421" || strings.Contains(page, "Quarry Row") {
			t.Errorf("host %q: %s %.200s", host, got, page)
		}
	}
}
