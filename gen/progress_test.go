package main

import (
	"bytes"
	"os"
	"strings"
	"testing"
	"time"
)

// The line says what is done and for how long, and is gone at the end.
func TestProgress(t *testing.T) {
	var out bytes.Buffer
	end := progress{w: &out, every: 5 * time.Millisecond}.step("computing")
	time.Sleep(60 * time.Millisecond)
	end()
	text := out.String()
	if !strings.HasPrefix(text, wipe+"computing …") || strings.Count(text, "computing … 0 s") < 2 || !strings.HasSuffix(text, wipe) {
		t.Errorf("it printed %q", text)
	}
	if rest := strings.ReplaceAll(text, wipe, ""); strings.ContainsAny(rest, "\r\n") {
		t.Errorf("it does not stay on its line: %q", text)
	}
	size := out.Len()
	time.Sleep(20 * time.Millisecond)
	if out.Len() != size {
		t.Error("it goes on after its end")
	}
}

// Nothing of it reaches a file, a pipe or another program.
func TestProgressIsForTerminals(t *testing.T) {
	read, write, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	defer read.Close()
	defer write.Close()
	file, err := os.Create(t.TempDir() + "/errors")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	if terminal(write) || terminal(file) || terminal(&bytes.Buffer{}) {
		t.Error("a pipe, a file or a buffer counts as a terminal")
	}
	c := command{errs: file}
	c.progress().step("computing")()
	if info, err := file.Stat(); err != nil || info.Size() > 0 {
		t.Errorf("%v, %d bytes in the file", err, info.Size())
	}
}
