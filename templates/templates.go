// Package templates holds the pages' templates, style sheets and scripts,
// carried inside the program. layout.html is the page around every page,
// parts.html the blocks that several pages share; every other .html file is
// one kind of page. Style sheets go to style/, scripts to script/.
package templates

import "embed"

// Files are the templates, style sheets and scripts.
//
//go:embed *.html *.css *.js
var Files embed.FS
