// Package book makes the pages of the handbook: it takes the computed tables,
// the chapters and the templates, and gives finished files.
//
// # How a page comes about
//
// Each page has a kind, which names its template (templates/<kind>.html, a
// block called main), its data, its title and the tab of the thumb index that
// it belongs to. Build makes all pages, fills their main blocks, takes the
// stamp of the whole edition from them, and then sets each into the layout
// (templates/layout.html). Links inside pages are written from the handbook's
// root, "/tables/waits.html"; as the last step they become relative to the
// page, so that the handbook works from any folder.
//
// Chapters are Markdown. Raw HTML, links with a scheme that could run script,
// attributes other than an id, ids used twice and links that lead nowhere are
// problems with file, line and column. So is everything else that would
// otherwise vanish in silence.
//
// Every finished page is looked through once more: ids used twice, links
// without a target, script or style inside the page. What is found there is a
// fault of a template and reported like the rest.
package book
