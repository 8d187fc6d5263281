// Package browser holds only tests: it publishes the whole demo handbook with
// the real program, reads every file of it, and opens every page from the disk
// in a real browser.
//
// The tests need Chromium, pdfinfo (poppler), and the npm packages of
// testdata/npm; make test installs them where it may. Where one is missing the
// tests that need it are skipped with a message, and fail when CI=true.
//
// Each check is itself held to what it promises: testdata/faultypages has a
// page for each fault, and a test that wants the fault found.
//
// HANDBOOK=dir looks at an already published handbook instead of publishing one.
package browser
