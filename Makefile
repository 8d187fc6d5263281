# make        publishes the demo handbook into site/ (needs only Go)
# make test   runs every test; installs Chromium, poppler, Node and npm packages where it may
# make bench  times the computations and a whole publish
# make fuzz   searches for bad input, a short while each (FUZZTIME=10s)
# make race   runs the Go tests with the race detector
# make clean  empties site/

.DEFAULT_GOAL := publish
.PHONY: publish test check gotest nodetest bench fuzz race clean

FUZZTIME ?= 10s
GOFILES = $(shell find content data gen templates testdata -name node_modules -prune -o -name '*.go' -print)
NODETESTS = $(wildcard testdata/*_test.mjs)

publish:
	@go run ./gen publish

# The steps in turn, each with its own output; the last one proves the first target.
test:
	@.ci/tools
	@$(MAKE) --no-print-directory check
	@$(MAKE) --no-print-directory gotest
	@$(MAKE) --no-print-directory nodetest
	@$(MAKE) --no-print-directory publish
	@.ci/tools report

check:
	@unformatted="$$(gofmt -l $(GOFILES))"; if [ -n "$$unformatted" ]; then echo "gofmt would change:"; echo "$$unformatted"; exit 1; fi
	@go vet ./... ./testdata

gotest:
	@go test -timeout 30m ./...

nodetest:
ifneq ($(NODETESTS),)
	@if command -v node >/dev/null; then node --test $(NODETESTS); fi
endif

bench:
	@go test -run '^$$' -bench . -benchmem -timeout 60m ./...

fuzz:
	@for p in $$(go list ./gen/...); do \
	  for f in $$(go test -list '^Fuzz' $$p | grep '^Fuzz'); do \
	    echo "$$p $$f"; go test -run '^$$' -fuzz "^$$f\$$" -fuzztime $(FUZZTIME) $$p || exit 1; \
	  done; \
	done

race:
	@go test -race -timeout 60m $$(go list ./... | grep -v /gen/browser)

clean:
	@find site -mindepth 1 ! -path site/.gitignore -delete
	@rm -rf .laydown-site-new-* .laydown-site-old-*
