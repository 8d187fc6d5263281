package book

import (
	"bytes"
	"html/template"
	"strings"

	"github.com/alecthomas/chroma/v2"
	chromahtml "github.com/alecthomas/chroma/v2/formatters/html"
	"github.com/alecthomas/chroma/v2/lexers"
	"github.com/alecthomas/chroma/v2/styles"
	"github.com/yuin/goldmark/ast"
	extast "github.com/yuin/goldmark/extension/ast"
	"github.com/yuin/goldmark/renderer"
	"github.com/yuin/goldmark/util"
)

// blockRenderer writes code blocks and tables our way, code with classes for
// its colours and tables in a region that scrolls; and what our marks in
// braces stand for.
type blockRenderer struct{}

// RegisterFuncs names the nodes that it writes.
func (blockRenderer) RegisterFuncs(reg renderer.NodeRendererFuncRegisterer) {
	reg.Register(ast.KindFencedCodeBlock, fencedCode)
	reg.Register(extast.KindTable, table)
	reg.Register(insertKind, renderInsert)
}

var codeFormat = chromahtml.New(chromahtml.WithClasses(true), chromahtml.ClassPrefix("c-"), chromahtml.WithCSSComments(false), chromahtml.TabWidth(4))

func fencedCode(w util.BufWriter, src []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if !entering {
		return ast.WalkContinue, nil
	}
	b := n.(*ast.FencedCodeBlock)
	code := string(b.Lines().Value(src))
	lexer := lexers.Get(string(b.Language(src)))
	if lexer == nil {
		lexer = lexers.Fallback
	}
	tokens, err := chroma.Coalesce(lexer).Tokenise(nil, code)
	if err != nil {
		return ast.WalkStop, err
	}
	var out bytes.Buffer
	if err := codeFormat.Format(&out, styles.Get("modus-operandi"), tokens); err != nil {
		return ast.WalkStop, err
	}
	// A long line scrolls sideways: the block is a stop for the keyboard, with a name.
	_, _ = w.WriteString(strings.Replace(out.String(), "<pre", `<pre tabindex="0" role="group" aria-label="Example"`, 1))
	return ast.WalkSkipChildren, nil
}

// codeCSS is the colours of code blocks, light, and dark on screens set so.
func codeCSS() (string, error) {
	var b bytes.Buffer
	if err := codeFormat.WriteCSS(&b, styles.Get("modus-operandi")); err != nil {
		return "", err
	}
	b.WriteString("@media screen and (prefers-color-scheme: dark) {\n")
	if err := codeFormat.WriteCSS(&b, styles.Get("modus-vivendi")); err != nil {
		return "", err
	}
	b.WriteString("}\n")
	return b.String(), nil
}

func table(w util.BufWriter, _ []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if entering {
		id, name := attribute(n, "data-id"), attribute(n, "data-name")
		_, _ = w.WriteString(`<div class="scroll" role="region" tabindex="0" aria-labelledby="` + template.HTMLEscapeString(id) + `"><span id="` + template.HTMLEscapeString(id) + `" hidden>` + template.HTMLEscapeString(name) + "</span><table>\n")
		return ast.WalkContinue, nil
	}
	// The library closes the body's element itself, at its last row.
	_, _ = w.WriteString("</table></div>\n")
	return ast.WalkContinue, nil
}
