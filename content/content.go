// Package content holds the handbook's chapters and its glossary, carried
// inside the program so that it publishes a whole handbook with no folder
// beside it.
package content

import "embed"

// Files are the chapters, one Markdown file each, and words.yaml, the glossary
// with the slang and misspellings that the search knows.
//
//go:embed *.md words.yaml
var Files embed.FS
