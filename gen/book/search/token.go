package search

import "strings"

// Token is one word or one quantity of a text. A quantity such as "3 mil" is a
// token of its own, followed by its number and unit as words marked Inside; a
// hyphenated word is followed by its Joined form.
type Token struct {
	Text       string // folded word; for a quantity its term, "#L-4738"
	Kind       TokenKind
	Inside     bool // part of the quantity before it
	Start, End int  // bytes of the text
	from, to   int  // folded characters
}

// TokenKind says what a token is.
type TokenKind int

// The kinds of token.
const (
	Word TokenKind = iota
	Joined
	Amount
)

// Tokens splits a text into words and quantities.
func Tokens(text string) []Token {
	cs := fold(text)
	out := make([]Token, 0, len(text)/5)
	add := func(text string, kind TokenKind, inside bool, from, to int) {
		out = append(out, Token{text, kind, inside, cs[from].start, cs[to-1].end, from, to})
	}
	inside := 0 // words that start before this character belong to a quantity
	for i := 0; i < len(cs); {
		if !isWord(cs[i].r) {
			i++
			continue
		}
		if isDigit(cs[i].r) {
			if i >= inside {
				if term, end, ok := amountAt(cs, i); ok {
					add(term, Amount, false, i, end)
					inside = end
				}
			}
			number, stop := numberAt(cs, i)
			second := separatorAt(cs, stop)
			if i < inside || second > 0 || stop == len(cs) || !isWord(cs[stop].r) {
				add(number, Word, i < inside, i, stop)
				i = max(stop, second)
				continue
			}
		}
		word, stop := wordAt(cs, i)
		add(word, Word, i < inside, i, stop)
		i = stop
	}
	return joinHyphens(cs, out)
}

// wordAt reads the word at i; apostrophes inside it are dropped (won't, wont).
func wordAt(cs []char, i int) (word string, stop int) {
	var b strings.Builder
	for ; i < len(cs); i++ {
		if isWord(cs[i].r) {
			b.WriteRune(cs[i].r)
		} else if cs[i].r != '\'' || i+1 == len(cs) || !isWord(cs[i+1].r) {
			break
		}
	}
	return b.String(), i
}

// joinHyphens adds, after the last part of a hyphenated word, its joined form:
// eco, solvent, ecosolvent.
func joinHyphens(cs []char, tokens []Token) []Token {
	out := make([]Token, 0, len(tokens))
	plain := func(t Token) bool { return t.Kind == Word && !t.Inside && !isDigit(rune(t.Text[0])) }
	first, joined := 0, "" // the chain's first token, and what it reads so far
	for i, t := range tokens {
		out = append(out, t)
		if !plain(t) {
			joined = ""
			continue
		}
		if joined == "" {
			first = i
		}
		joined += t.Text
		if i+1 < len(tokens) && plain(tokens[i+1]) && tokens[i+1].from == t.to+1 && cs[t.to].r == '-' {
			continue
		}
		if first < i {
			f := tokens[first]
			out = append(out, Token{joined, Joined, false, f.Start, t.End, f.from, t.to})
		}
		joined = ""
	}
	return out
}
