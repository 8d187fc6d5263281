package shop

import "laydown/gen/quantity"

// Others is the word under which a table gives one row for every cause that
// has no row of its own.
const Others = "others"

// Caution is what is said where work can hurt somebody. Checks, remedies and
// chapters name the cautions that they call for; rules call for the others.
type Caution struct {
	Head  `yaml:",inline"`
	Says  string   `yaml:"says,required"` // it gives way to local codes, the maker's manual and licensed practice
	Brief string   `yaml:"brief"`         // a line for a wall chart or a form; where none is written, they print what it says
	Words []string `yaml:"words"`         // a page that uses one of them shows the caution
}

// The cautions that rules call for: every shop has them.
const (
	NipCaution       = "nip"
	HotRollerCaution = "hot-roller"
	BladeCaution     = "blade"
	SolventCaution   = "solvent"
	FumesCaution     = "fumes"
	StaticCaution    = "static"
	LiftingCaution   = "lifting"
)

// ruleCautions are the cautions that rules call for.
var ruleCautions = []string{NipCaution, HotRollerCaution, BladeCaution, SolventCaution, FumesCaution, StaticCaution, LiftingCaution}

// FaultFamily is a group of faults that look alike or are taken for each other,
// with what can be behind them, what can be looked at and what can be done.
type FaultFamily struct {
	Head    `yaml:",inline"`
	Looks   string `yaml:"looks,required"` // a sentence
	When    string `yaml:"when,required"`  // when it is first seen
	Where   string `yaml:"where,required"` // where on the piece
	Drawing string `yaml:"drawing"`
	// Help is what it costs, as time, to call somebody who always finds out.
	Help     Value[quantity.Time] `yaml:"help,required" range:"1 min .. 100 h"`
	Signs    []FaultSign          `yaml:"signs,required"`
	Causes   []FaultCause         `yaml:"causes,required"`
	Checks   []FaultCheck         `yaml:"checks"`
	Remedies []Remedy             `yaml:"remedies,required"`
	Cautions []Ref                `yaml:"cautions" to:"cautions"`
	See      []string             `yaml:"see"` // headings of chapters: drying#late-bubbles
	Tables   []string             `yaml:"tables" oneof:"waits windows humidity cooling grain curl stacks bond rolls vapour"`
}

// FaultSign is one of the ways in which a family shows itself: what people have
// a name for.
type FaultSign struct {
	ID      string   `yaml:"id,required,id"`
	Name    string   `yaml:"name,required"`
	Also    []string `yaml:"also"`
	Looks   string   `yaml:"looks,required"`
	When    string   `yaml:"when"`  // the family's where none is stated
	Where   string   `yaml:"where"` // the same
	Drawing string   `yaml:"drawing"`
	Pos     Pos
}

// FaultCause is what can be behind a fault.
type FaultCause struct {
	ID   string `yaml:"id,required,id"`
	Name string `yaml:"name,required"`
	Why  string `yaml:"why,required"` // a sentence: how it makes the fault
	// Weight is how often it is behind the fault, relative to the family's other
	// causes. It is the parameter of a Dirichlet distribution: the weights of a
	// family count as so many cases, and the shop's log adds its own.
	Weight float64  `yaml:"weight,required,positive"`
	Signs  []string `yaml:"signs,required"` // ids of the family's signs that it shows itself by
	// Physics is the computed quantity that tells how near a job is to it:
	//
	//	outgassing       residue of carrier against the safe residue
	//	moist-sheet      gas under the film against its limit, from the sheet's moisture
	//	dry-sheet        moisture below the room's
	//	too-hot          set temperature against the highest
	//	too-cold         set temperature and speed against the lowest
	//	first-piece      roller after standing against the steady run
	//	wet-out          relief of the print against what the adhesive fills
	//	grain            risk of ridges with the grain along the feed
	//	tension          strain that the film was laid with
	//	damp-room        curl in a room damper than the one it was laid in
	//	dry-room         curl in a drier one
	//	stack-moisture   edge of a stack against its middle
	//	warm-stack       temperature of the laminate when it is stacked
	//	short-rest       time before it is cut, creased or mounted
	//	dry-air          static charge below a room's humidity
	Physics string `yaml:"physics" oneof:"outgassing moist-sheet dry-sheet too-hot too-cold first-piece wet-out grain tension damp-room dry-room stack-moisture warm-stack short-rest dry-air"`
	Prevent string `yaml:"prevent"` // a sentence: how it is kept from coming back
	// Alike says that no check and no remedy tells it from another cause, and
	// that this is meant.
	Alike  bool `yaml:"alike"`
	Source Ref  `yaml:"source" to:"sources"` // of the weight; the family's where none is stated
	Pos    Pos
}

// Outcome is one of the things that a check can show.
type Outcome struct {
	ID      string `yaml:"id,required,id"`
	Says    string `yaml:"says,required"` // what is seen
	Drawing string `yaml:"drawing"`
	Pos     Pos
}

// GeneralCheck is a check that families share: what is done and what can be
// seen. How likely each outcome is with each cause is the family's to say.
type GeneralCheck struct {
	Head     `yaml:",inline"`
	Takes    Value[quantity.Time] `yaml:"takes,required" range:"0 min .. 24 h"`
	Do       string               `yaml:"do,required"`
	Outcomes []Outcome            `yaml:"outcomes,required"`
	Cautions []Ref                `yaml:"cautions" to:"cautions"`
	See      []string             `yaml:"see"`
}

// FaultCheck is a check in a family: a general one by its id under use, or one
// of the family's own. Once a shop is loaded, a general one has all that its
// record says, and its time where the family states none.
type FaultCheck struct {
	Use      Ref                  `yaml:"use" to:"checks"`
	ID       string               `yaml:"id,id"`
	Name     string               `yaml:"name"`
	Takes    Value[quantity.Time] `yaml:"takes" range:"0 min .. 24 h"`
	Do       string               `yaml:"do"`
	Outcomes []Outcome            `yaml:"outcomes"`
	Cautions []Ref                `yaml:"cautions" to:"cautions"`
	See      []string             `yaml:"see"`
	// Found gives for each cause how likely each outcome is; an outcome that a
	// row leaves out has no chance.
	Found  Rows `yaml:"found,required"`
	Source Ref  `yaml:"source" to:"sources"`
	Pos    Pos
}

// Remedy is something that can be done about a fault. Its time, like a check's,
// is that of hands and machine; a wait during which other work goes on is not
// in it.
type Remedy struct {
	ID    string               `yaml:"id,required,id"`
	Name  string               `yaml:"name,required"`
	Takes Value[quantity.Time] `yaml:"takes,required" range:"0 min .. 100 h"`
	// Material is what it uses up, in the shop's currency; the shop's hour rate
	// turns it into time.
	Material float64 `yaml:"material,positive"`
	Do       string  `yaml:"do,required"`
	// Cures gives for each cause the chance that the fault is gone after it; a
	// cause without a row is not cured.
	Cures    Shares   `yaml:"cures,required"`
	Prevent  string   `yaml:"prevent"` // a sentence: how it is kept from coming back
	Cautions []Ref    `yaml:"cautions" to:"cautions"`
	See      []string `yaml:"see"`
	Source   Ref      `yaml:"source" to:"sources"`
	Pos      Pos
}

// LoggedFault is one case of the shop's log: a fault whose cause was found.
type LoggedFault struct {
	Date    string   `yaml:"date,required,date"`
	Family  Ref      `yaml:"family,required" to:"faults"`
	Cause   string   `yaml:"cause,required"`
	Checks  Findings `yaml:"checks"`   // what was looked at, and what was seen
	CuredBy string   `yaml:"cured_by"` // the remedy that it was gone after
	Notes   string   `yaml:"notes"`
	Source  Ref      `yaml:"source" to:"sources"`
	Demo    bool     // came with the program
	Pos     Pos
}

// Share is a share under a key that the data chooses: the id of a cause or of
// an outcome.
type Share struct {
	Of    string
	Value Value[quantity.Fraction]
	Pos   Pos // of the key
}

// Shares are shares in the order in which they are written.
type Shares []Share

// Row is a row of a table: the shares under one key.
type Row struct {
	Of     string
	Shares Shares
	Pos    Pos // of the key
}

// Rows is a table in the order in which it is written.
type Rows []Row

// Finding is what one check showed.
type Finding struct {
	Check, Outcome  string
	Pos, OutcomePos Pos
}

// Findings are what checks showed, in the order in which they are written.
type Findings []Finding

// Get gives the share under a key, or under others where the key has none, and
// whether there is either.
func (s Shares) Get(key string) (quantity.Fraction, bool) {
	other, found := quantity.Fraction(0), false
	for _, one := range s {
		if one.Of == key {
			return one.Value.Best, true
		}
		if one.Of == Others {
			other, found = one.Value.Best, true
		}
	}
	return other, found
}

// Get gives the row under a key, or under others where the key has none, and
// whether there is either.
func (r Rows) Get(key string) (Shares, bool) {
	var other Shares
	found := false
	for _, one := range r {
		if one.Of == key {
			return one.Shares, true
		}
		if one.Of == Others {
			other, found = one.Shares, true
		}
	}
	return other, found
}

// Chance is how likely a check is to show an outcome where a cause is behind
// the fault. The chances of a row are taken relative to their sum, which may be
// a little off 100 % from rounding.
func (c *FaultCheck) Chance(outcome, cause string) quantity.Fraction {
	row, _ := c.Found.Get(cause)
	var this, sum quantity.Fraction
	for _, one := range row {
		sum += one.Value.Best
		if one.Of == outcome {
			this = one.Value.Best
		}
	}
	if sum == 0 {
		return 0
	}
	return this / sum
}

// Cure is the chance that the fault is gone after the remedy where a cause is
// behind it.
func (r *Remedy) Cure(cause string) quantity.Fraction {
	chance, _ := r.Cures.Get(cause)
	return chance
}
