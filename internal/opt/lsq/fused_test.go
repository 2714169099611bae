package lsq

import (
	"os"
	"os/exec"
	"regexp"
	"strings"
	"testing"
)

// No product is fused with a sum: the assembly for a machine that has the instruction, searched for it.
func TestNoFusedProducts(t *testing.T) {
	if testing.Short() {
		t.Skip("compiles")
	}
	build := exec.Command("go", "build", "-gcflags=-S", ".")
	build.Env = append(os.Environ(), "GOARCH=arm64", "CGO_ENABLED=0")
	out, err := build.CombinedOutput()
	if err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	if !strings.Contains(string(out), "FMULD") {
		t.Fatal("no product in the assembly: not what was to be searched")
	}
	for _, line := range regexp.MustCompile(`.*\bFN?M(ADD|SUB)D?\b.*`).FindAllString(string(out), -1) {
		t.Error(line)
	}
}
