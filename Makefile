# make check   everything that must hold before a change lands
# make bench   the measured numbers, as a table
# make dist    stripped binaries without cgo for six platforms, in dist/

GO ?= go
STATICCHECK = $(GO) run honnef.co/go/tools/cmd/staticcheck
PLATFORMS = linux/amd64 linux/arm64 darwin/amd64 darwin/arm64 windows/amd64 windows/arm64
FUZZED = $(shell grep -rl --include='*_test.go' '^func Fuzz' internal | xargs -r -n1 dirname | sort -u)

# axe-core holds pages against WCAG in a browser test; it is fetched once, beside the build cache.
AXE_VERSION = 4.14.1
AXE = $(or $(XDG_CACHE_HOME),$(HOME)/.cache)/dryfit-check/axe-$(AXE_VERSION).min.js
export DRYFIT_AXE = $(AXE)

# The browser tests leave a picture of every page here, in both themes and several widths, to be looked at.
PICTURES = $(or $(DRYFIT_PICTURES),$(CURDIR)/build/pictures)
export DRYFIT_PICTURES := $(PICTURES)

GOLDEN = $(shell grep -rl --include='*_test.go' '"update"' internal | xargs -r -n1 dirname | sort -u)

.PHONY: check need format vet static test seeds cross bench dist clean golden

check: need format vet static test cross
	@echo "make check: all passed"

# Go is all that the checks need, and chromium for the tests of pages; modules come pinned by go.sum.
need:
	@command -v $(GO) >/dev/null || { echo "Go 1.26 or later is needed: install it first"; exit 1; }
	@command -v chromium >/dev/null || { [ "$$(id -u)" = 0 ] && command -v apt-get >/dev/null && \
	  apt-get update -q && apt-get install -y -q --no-install-recommends chromium; } || \
	  echo "no chromium, and it could not be installed: the tests of pages in a browser are skipped"
	@test -f $(AXE) || { command -v npm >/dev/null && mkdir -p $(dir $(AXE)) && cd $(dir $(AXE)) && \
	  npm pack --silent axe-core@$(AXE_VERSION) && tar -xzf axe-core-$(AXE_VERSION).tgz && mv package/axe.min.js $(AXE) && \
	  rm -rf package axe-core-$(AXE_VERSION).tgz; } || \
	  echo "no npm to fetch axe-core with: pages are not held against WCAG"
	@mkdir -p $(PICTURES)
	$(GO) mod download
	$(GO) mod verify

format:
	@test -z "$$(gofmt -l cmd internal *.go)" || { gofmt -l cmd internal *.go; echo "run gofmt -w on these"; exit 1; }
	$(GO) mod tidy -diff

vet:
	$(GO) vet ./...

static:
	$(STATICCHECK) ./...

test:
	@mkdir -p $(PICTURES)
	$(GO) test -timeout 30m ./...
	GOMAXPROCS=1 TZ=Asia/Kathmandu $(GO) test -count=1 -run 'Words|Same|DemosPlan|Calendar' ./internal/plan ./internal/sheet ./internal/export

# Every fuzz target on its seeds and kept failures, which "test" runs too; "go test -fuzz" digs further by hand.
seeds:
	$(GO) test -count=1 -run '^Fuzz' $(addprefix ./,$(FUZZED))

cross:
	@for p in $(PLATFORMS); do \
	  echo "compile $$p"; \
	  CGO_ENABLED=0 GOOS=$${p%/*} GOARCH=$${p#*/} $(GO) build -o /dev/null ./cmd/dryfit || exit 1; \
	done

bench:
	$(GO) test -run '^$$' -bench . -benchmem ./... | grep -E '^(pkg|Benchmark)'

dist:
	@mkdir -p dist
	@for p in $(PLATFORMS); do \
	  os=$${p%/*}; arch=$${p#*/}; ext=; [ $$os = windows ] && ext=.exe; \
	  echo "dist/dryfit-$$os-$$arch$$ext"; \
	  CGO_ENABLED=0 GOOS=$$os GOARCH=$$arch $(GO) build -trimpath -ldflags '-s -w' -o dist/dryfit-$$os-$$arch$$ext ./cmd/dryfit || exit 1; \
	done

# Write the golden files anew; then read the difference before you commit it.
golden:
	$(GO) test $(addprefix ./,$(GOLDEN)) -update

clean:
	rm -rf dist out build
