package book

import (
	"crypto/sha256"
	"encoding/binary"
	"strconv"
	"time"
)

// stampLetters are the signs of a stamp: none looks like another from two
// metres off (no B and 8, G and 6, I and 1, O and 0, S and 5, U and V, Z and 2
// together).
const stampLetters = "ACDEFHJKLMNPQRTVWXY234679"

// stamp is a short code of a content: K7-Q2. It changes when the content
// does, but for one time in some 390 000.
func stamp(parts ...[]byte) string {
	h := sha256.New()
	for _, p := range parts {
		h.Write([]byte(strconv.Itoa(len(p)) + ":"))
		h.Write(p)
	}
	n := binary.BigEndian.Uint64(h.Sum(nil))
	code := make([]byte, 0, 5)
	for i := range 4 {
		if i == 2 {
			code = append(code, '-')
		}
		code = append(code, stampLetters[n%uint64(len(stampLetters))])
		n /= uint64(len(stampLetters))
	}
	return string(code)
}

// day writes a date of the data, 2026-11-20, by a layout of package time; a
// text that is no date stays as it is.
func day(text, layout string) string {
	t, err := time.Parse("2006-01-02", text)
	if err != nil {
		return text
	}
	return t.Format(layout)
}
