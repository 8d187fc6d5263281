// Laydown publishes the handbook of a print-finishing room: it reads the shop's
// material data and chapters, computes the tables, and writes pages that work
// from a folder, without a server.
package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"time"
)

const usage = `Laydown makes the handbook of a print-finishing room from its material data
and chapters.

  laydown publish [-shop DIR] [-out DIR]
        compute everything and write the handbook (to site/)
  laydown proof [-shop DIR] [-against DIR]
        compute everything, report every problem and doubt, write nothing;
        against a published handbook, tell what would change in it
  laydown plan -ink ID -medium ID -film ID [more]
        the job plan for one print; laydown plan -help lists the rest
  laydown table NAME [-shop DIR] [-format text|csv|json]
        one computed table; laydown table lists their names
  laydown cure FAMILY [-ink ID -medium ID -film ID ...]
        walk a fault key, step by step; laydown cure lists the families
  laydown begin DIR
        start a shop's own folder, with examples to change
  laydown view [-shop DIR] [-port N]
        show the handbook on this machine, anew when a file changes

Without -shop it works on the demonstration that it carries. A shop's folder
has data/*.yaml and content/*.md, and may have templates/; what is in it goes
over the demonstration's, record by record.

Exit status: 0 done, 1 the data or chapters have problems, 2 the command line
is wrong.
`

// Exit statuses.
const (
	done     = 0
	problems = 1
	misuse   = 2
)

func main() {
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr, time.Now))
}

// run is the whole program. now is the shop's clock.
func run(args []string, in io.Reader, out, errs io.Writer, now func() time.Time) int {
	if len(args) == 0 {
		fmt.Fprint(errs, usage)
		return misuse
	}
	c := command{in: in, out: out, errs: errs, now: now}
	switch name, rest := args[0], args[1:]; name {
	case "publish":
		return c.publish(rest)
	case "proof":
		return c.proof(rest)
	case "plan":
		return c.plan(rest)
	case "table":
		return c.table(rest)
	case "cure":
		return c.cure(rest)
	case "begin":
		return c.begin(rest)
	case "view":
		return c.view(rest)
	case "help", "-h", "-help", "--help":
		fmt.Fprint(out, usage)
		return done
	default:
		fmt.Fprintf(errs, "laydown: no command is called %q\n\n%s", name, usage)
		return misuse
	}
}

// command is what every command works with.
type command struct {
	in        io.Reader
	out, errs io.Writer
	now       func() time.Time
}

// flags begins a command's flags; parse reads them and says how to exit when
// they are wrong or only help was asked for.
func (c command) flags(name string) *flag.FlagSet {
	f := flag.NewFlagSet("laydown "+name, flag.ContinueOnError)
	f.SetOutput(c.errs)
	return f
}

func (c command) parse(f *flag.FlagSet, args []string) (status int, ok bool) {
	switch err := f.Parse(args); {
	case errors.Is(err, flag.ErrHelp):
		return done, false
	case err != nil:
		return misuse, false
	case f.NArg() > 0:
		fmt.Fprintf(c.errs, "%s: what is %q for? it takes flags only\n", f.Name(), f.Arg(0))
		return misuse, false
	}
	return done, true
}

// wrong reports a command line that cannot be carried out.
func (c command) wrong(name string, err error) int {
	fmt.Fprintf(c.errs, "laydown %s: %v\n", name, err)
	return misuse
}
