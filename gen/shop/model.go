package shop

import "laydown/gen/quantity"

// Pos is a place in a data file.
type Pos struct {
	File      string
	Line, Col int
}

// Value is a quantity as the data states it: the number, how far it may be
// off, and where it comes from.
type Value[Q quantity.Quantity] struct {
	// Best is the value to compute with.
	Best Q
	// Low and High bound the spread; both equal Best where none is stated.
	Low, High Q
	// Source is the id of a record in sources; a value without one of its own
	// takes its record's.
	Source string
	// Text is the value as its author wrote it.
	Text string
	// Pos is where it stands.
	Pos Pos
	// Set says that the data states the value at all.
	Set bool
}

// Shop is one finishing room with everything that its handbook is computed from.
type Shop struct {
	Front      Shopfront // the one record of shop.yaml
	Rooms      []*Room
	Carriers   []*Carrier
	Substances []*Substance
	Inks       []*Ink
	Media      []*Medium
	Films      []*Film
	Laminators []*Laminator
	Storages   []*Storage
	Limits     []*Limit
	// Predictions are what the trade would expect, written before it was computed.
	Predictions []*Prediction
	// WindowPredictions are the same of windows.
	WindowPredictions []*WindowPrediction
	// Claims are the same of what happens after the nip.
	Claims   []*Claim
	Contacts []*Contact
	Cautions []*Caution
	Forms    []*Form
	// Checks are those that families of faults share.
	Checks []*GeneralCheck
	Faults []*FaultFamily
	// FaultsLog is every logged case; LoggedFaults gives those that count.
	FaultsLog []*LoggedFault
	Sources   []*Source
}

// Shopfront is what the shop says of itself.
type Shopfront struct {
	Name      string                 `yaml:"name,required"`
	Place     string                 `yaml:"place"`
	Invented  bool                   `yaml:"invented"` // the data is a demonstration's
	Altitude  Value[quantity.Length] `yaml:"altitude" range:"-400 m .. 5000 m"`
	Revised   string                 `yaml:"revised,required,date"`              // the day the data was last gone through, 2026-11-20
	Room      Ref                    `yaml:"room,required" to:"rooms"`           // where prints wait unless a job says otherwise
	Laminator Ref                    `yaml:"laminator,required" to:"laminators"` // the usual machine
	Storage   Ref                    `yaml:"storage,required" to:"storage"`      // how prints wait unless a job says otherwise
	// Branch is the side from which the shop's paper comes to the room: damp
	// paper holds a point or two more water than paper that was dry.
	Branch string `yaml:"moisture_branch" oneof:"mean wetting drying"`
	Work   *Work  `yaml:"work"`
	Charts Charts `yaml:"charts"`
	Source Ref    `yaml:"source" to:"sources"`
	Pos    Pos
}

// Work is what a job takes beside the running itself.
type Work struct {
	SetUp     Value[quantity.Time]     `yaml:"set_up,required" range:"0 min .. 8 h"`
	Threading Value[quantity.Length]   `yaml:"threading,required" range:"0 m .. 20 m"` // film lost at the start and the end
	Gap       Value[quantity.Length]   `yaml:"gap,required" range:"0 mm .. 1 m"`       // between pieces
	Border    Value[quantity.Length]   `yaml:"border,required" range:"0 mm .. 200 mm"` // film past each edge
	Spoils    Value[quantity.Fraction] `yaml:"spoils,required" range:"0 % .. 50 %"`
	Feeding   Value[quantity.Time]     `yaml:"feeding,required" range:"0 s .. 1 h"` // hand work for each piece
	Trim      Value[quantity.Time]     `yaml:"trim" range:"0 s .. 1 h"`             // cutting for each piece
	Currency  string                   `yaml:"currency"`
	HourRate  float64                  `yaml:"hour_rate"`
	Source    Ref                      `yaml:"source" to:"sources"`
	Pos       Pos
}

// Charts says what the shop wants on its walls.
type Charts struct {
	Paper []string `yaml:"paper" oneof:"A4 A3 A2 Letter Tabloid"` // sheet sizes to make
	Waits []Pair   `yaml:"waits"`                                 // rows of the chart of waits, in this order
	// Windows are the rows of the chart of windows.
	Windows []WindowRow `yaml:"windows"`
	// Stacks are the media of the chart of stacks and the room.
	Stacks []Ref `yaml:"stacks" to:"media"`
	// Matrices are charts of films on prints, each of as many prints as stand side by side.
	Matrices []Matrix `yaml:"matrices"`
	// Cautions are the rows of the chart of cautions.
	Cautions []Ref `yaml:"cautions" to:"cautions"`
	// Faults are the families whose keys hang as charts.
	Faults []Ref `yaml:"faults" to:"faults"`
	// Notices are charts in words: tests, steps.
	Notices []Notice `yaml:"notices"`
}

// Matrix says which films go on which prints: a row for each film, a column for each
// print.
type Matrix struct {
	Name   string `yaml:"name,required"`
	Films  []Ref  `yaml:"films,required" to:"films"`
	Prints []Pair `yaml:"prints,required"`
	Pos    Pos
}

// Notice is a wall chart in words.
type Notice struct {
	Name    string `yaml:"name,required"`
	Where   string `yaml:"where"`
	Counted bool   `yaml:"counted"` // the steps are done in this order
	Steps   []Step `yaml:"steps,required"`
	Advice  string `yaml:"advice"`
	Caution Ref    `yaml:"caution" to:"cautions"`
	Source  Ref    `yaml:"source" to:"sources"`
	Pos     Pos
}

// Step is a row of a notice: a few words that read from afar, and how it is done.
type Step struct {
	Do      string `yaml:"do,required"`
	How     string `yaml:"how"`
	Picture string `yaml:"picture" oneof:"grain-feed grain-label grain-fold grain-bend grain-droop grain-strips grain-wet grain-nail"`
	Pos     Pos
}

// WindowRow names a film on a medium in a laminator.
type WindowRow struct {
	Film      Ref `yaml:"film,required" to:"films"`
	Medium    Ref `yaml:"medium,required" to:"media"`
	Laminator Ref `yaml:"laminator,required" to:"laminators"`
	Pos       Pos
}

// Pair names an ink on a medium.
type Pair struct {
	Ink    Ref `yaml:"ink,required" to:"inks"`
	Medium Ref `yaml:"medium,required" to:"media"`
	Pos    Pos
}

// Ref is the id of another record.
type Ref struct {
	ID  string
	Pos Pos
}

// Head is what every record begins with.
type Head struct {
	ID     string   `yaml:"id,required,id"`
	Name   string   `yaml:"name,required"`
	Also   []string `yaml:"also"`                // other names: slang, abbreviations, misspellings that people type
	Notes  string   `yaml:"notes"`               // one or two sentences for the page
	Source Ref      `yaml:"source" to:"sources"` // where its values come from unless one says otherwise
	Demo   bool     // came with the program, not from the shop's folder
	Pos    Pos
}

// Room is a place, or a season of one, where prints wait and are laminated.
type Room struct {
	Head        `yaml:",inline"`
	Temperature Value[quantity.Temperature] `yaml:"temperature,required" range:"0 °C .. 50 °C"`
	Humidity    Value[quantity.Fraction]    `yaml:"humidity,required" range:"1 % .. 99 %"`
	AirSpeed    Value[quantity.Speed]       `yaml:"air_speed,required" range:"0.01 m/s .. 5 m/s"`
	Volume      Value[quantity.Volume]      `yaml:"volume" range:"5 m3 .. 100000 m3"`
	AirChanges  Value[quantity.Rate]        `yaml:"air_changes" range:"0 1/h .. 60 1/h"`
	// Mixing is how badly the fresh air reaches the place where people breathe:
	// 1 is perfect, 10 very poor. 0: not stated.
	Mixing float64 `yaml:"mixing"`
	// Vapour is the carrier vapour that the room's air already holds.
	Vapour Value[quantity.Density] `yaml:"vapour" range:"0 mg/m3 .. 5000 mg/m3"`
}

// Carrier is a liquid that carries an ink and has to leave the print.
type Carrier struct {
	Head      `yaml:",inline"`
	MolarMass Value[quantity.MolarMass] `yaml:"molar_mass,required" range:"10 g/mol .. 500 g/mol"`
	Density   Value[quantity.Density]   `yaml:"density,required" range:"500 kg/m3 .. 2000 kg/m3"` // of the liquid
	// InAir is its diffusivity in air at 25 °C and one atmosphere.
	InAir Value[quantity.Diffusivity] `yaml:"diffusivity_in_air,required" range:"1e-6 m2/s .. 5e-5 m2/s"`
	// Antoine holds its vapour pressure: ln(p/Pa) = A - B/(T/K + C).
	Antoine *Antoine `yaml:"antoine"`
	// VapourPoint with VaporisationHeat is the other way to give it.
	VapourPoint *VapourPoint `yaml:"vapour_pressure"`
	// Hygroscopic carriers hold water from the air; by Raoult's law that
	// lowers their own vapour pressure by the room's relative humidity.
	Hygroscopic bool `yaml:"hygroscopic"`
	// ExposureLimit is that of an eight-hour day; LowerExplosive the lower
	// explosive limit as a share of the air's volume.
	ExposureLimit  Value[quantity.Density]  `yaml:"exposure_limit" range:"0.01 mg/m3 .. 10000 mg/m3"`
	LowerExplosive Value[quantity.Fraction] `yaml:"lower_explosive" range:"0.1 % .. 30 %"`
}

// Antoine holds the constants of ln(p/Pa) = A - B/(T/K + C), and the range they were fitted in.
type Antoine struct {
	A      float64                     `yaml:"a,required"`
	B      float64                     `yaml:"b,required"`
	C      float64                     `yaml:"c,required"`
	From   Value[quantity.Temperature] `yaml:"from,required" range:"-100 °C .. 400 °C"`
	To     Value[quantity.Temperature] `yaml:"to,required" range:"-100 °C .. 400 °C"`
	Source Ref                         `yaml:"source" to:"sources"`
	Pos    Pos
}

// VapourPoint is one vapour pressure and the heat that carries it to other
// temperatures by the Clausius-Clapeyron relation.
type VapourPoint struct {
	Pressure Value[quantity.Pressure]    `yaml:"pressure,required" range:"0.00001 Pa .. 100 kPa"`
	At       Value[quantity.Temperature] `yaml:"at,required" range:"-20 °C .. 100 °C"`
	Heat     Value[quantity.MolarEnergy] `yaml:"heat,required" range:"20 kJ/mol .. 150 kJ/mol"`
	Source   Ref                         `yaml:"source" to:"sources"`
	Pos      Pos
}

// Substance is what films, adhesives, liners and roller covers are made of.
type Substance struct {
	Head         `yaml:",inline"`
	Class        string                         `yaml:"class,required" oneof:"film adhesive liner rubber metal"`
	Density      Value[quantity.Density]        `yaml:"density,required" range:"100 kg/m3 .. 10000 kg/m3"`
	Conductivity Value[quantity.Conductivity]   `yaml:"conductivity,required" range:"0.01 W/mK .. 500 W/mK"`
	SpecificHeat Value[quantity.SpecificHeat]   `yaml:"specific_heat,required" range:"300 J/kgK .. 5000 J/kgK"`
	ExpansionMD  Value[quantity.Expansion]      `yaml:"expansion_md" range:"0 1/K .. 0.0005 1/K"`
	ExpansionCD  Value[quantity.Expansion]      `yaml:"expansion_cd" range:"0 1/K .. 0.0005 1/K"`
	ModulusMD    Value[quantity.Pressure]       `yaml:"modulus_md" range:"0.01 MPa .. 300 GPa"`
	ModulusCD    Value[quantity.Pressure]       `yaml:"modulus_cd" range:"0.01 MPa .. 300 GPa"`
	Fusion       Value[quantity.SpecificEnergy] `yaml:"fusion" range:"0 J/g .. 400 J/g"`
	Sets         Value[quantity.Temperature]    `yaml:"sets" range:"-50 °C .. 250 °C"` // an adhesive: solid below
	Permeability Value[quantity.Permeability]   `yaml:"water_permeability" range:"1e-18 kg/msPa .. 1e-11 kg/msPa"`
	Poisson      Value[quantity.Fraction]       `yaml:"poisson" range:"0 % .. 50 %"`
	// HumidStrain is how much it grows from dry air to damp air of 100 %, in
	// proportion between; HumidLoss how much of its modulus at 50 % goes on the
	// way from dry to 100 %.
	HumidStrain Value[quantity.Fraction] `yaml:"humid_strain" range:"0 % .. 10 %"`
	HumidLoss   Value[quantity.Fraction] `yaml:"humid_modulus_loss" range:"0 % .. 100 %"`
	// WebStress is the tension that good practice runs a web of it with.
	WebStress Value[quantity.Pressure] `yaml:"web_stress" range:"0.01 MPa .. 50 MPa"`
	// CarrierMobility is how freely an ink's carrier moves in it, relative to
	// plasticised calendered vinyl.
	CarrierMobility Value[quantity.Fraction] `yaml:"carrier_mobility" range:"0 % .. 10000 %"`
	Flows           *Flow                    `yaml:"flows"` // an adhesive
}

// Flow is how an adhesive flows into the relief of a print.
type Flow struct {
	Viscosity Value[quantity.Viscosity]   `yaml:"viscosity,required" range:"0.01 Pas .. 1e10 Pas"`
	At        Value[quantity.Temperature] `yaml:"at,required" range:"-50 °C .. 300 °C"`
	// Activation carries a melt's viscosity to other temperatures; Glass, the
	// glass transition, that of a pressure-sensitive adhesive. One of the two.
	Activation     Value[quantity.MolarEnergy]    `yaml:"activation" range:"5 kJ/mol .. 300 kJ/mol"`
	Glass          Value[quantity.Temperature]    `yaml:"glass" range:"-120 °C .. 100 °C"`
	SurfaceTension Value[quantity.SurfaceTension] `yaml:"surface_tension,required" range:"0.005 N/m .. 0.1 N/m"`
	Source         Ref                            `yaml:"source" to:"sources"`
	Pos            Pos
}

// Ink is a print process with the ink or toner that it lays down.
type Ink struct {
	Head  `yaml:",inline"`
	Dries string `yaml:"dries,required" oneof:"evaporation oxidation radiation toner"`
	// Class is how films' and media's rules speak of it.
	Class string `yaml:"class,required" oneof:"solvent latex uv-inkjet aqueous toner offset offset-uv"`

	Coverage Coverage  `yaml:"coverage,required"`
	Makers   MakerWait `yaml:"maker_wait,required"`

	Evaporation *Evaporation `yaml:"evaporation"` // for dries: evaporation
	Reaction    *Reaction    `yaml:"reaction"`    // for dries: oxidation, radiation
	Toner       *Toner       `yaml:"toner"`       // for dries: toner

	DryFilm Value[quantity.Length] `yaml:"dry_thickness" range:"0.1 µm .. 1 mm"`
	Relief  Value[quantity.Length] `yaml:"relief" range:"0.05 µm .. 1 mm"`
	// ReliefWidth is the width of the hollows that the relief leaves.
	ReliefWidth Value[quantity.Length]      `yaml:"relief_width" range:"1 µm .. 10 mm"`
	Density     Value[quantity.Density]     `yaml:"density" range:"500 kg/m3 .. 3000 kg/m3"`
	Softens     Value[quantity.Temperature] `yaml:"softens" range:"20 °C .. 250 °C"`
	ReadyTests  []string                    `yaml:"ready_tests"` // headings' ids in the chapter of readiness tests
	Ask         []string                    `yaml:"ask"`         // what to ask at the counter
}

// Coverage gives the shares of full single-colour coverage that the shop calls
// light, normal and heavy: 300 % is three full layers.
type Coverage struct {
	Light  Value[quantity.Fraction] `yaml:"light,required" range:"1 % .. 1200 %"`
	Normal Value[quantity.Fraction] `yaml:"normal,required" range:"1 % .. 1200 %"`
	Heavy  Value[quantity.Fraction] `yaml:"heavy,required" range:"1 % .. 1200 %"`
}

// MakerWait is the wait that the ink's maker states, and what it holds for.
type MakerWait struct {
	Wait        Value[quantity.Time]        `yaml:"wait,required" range:"0 h .. 400 h"`
	Medium      Ref                         `yaml:"medium,required" to:"media"`
	Storage     Ref                         `yaml:"storage,required" to:"storage"`
	Coverage    string                      `yaml:"coverage,required" oneof:"light normal heavy"`
	Temperature Value[quantity.Temperature] `yaml:"temperature,required" range:"0 °C .. 50 °C"`
	Humidity    Value[quantity.Fraction]    `yaml:"humidity,required" range:"1 % .. 99 %"`
	AirSpeed    Value[quantity.Speed]       `yaml:"air_speed,required" range:"0.01 m/s .. 5 m/s"`
	// Least is the shortest wait that the record allows whatever is computed;
	// without it that is the maker's wait itself.
	Least Value[quantity.Time] `yaml:"least" range:"0 h .. 400 h"`
	Pos   Pos
}

// Evaporation holds what an ink needs whose carrier leaves by evaporation.
type Evaporation struct {
	Carrier Ref `yaml:"carrier,required" to:"carriers"`
	// Load is the carrier in the print as it leaves the printer, at normal coverage.
	Load Value[quantity.Grammage] `yaml:"load,required" range:"0.01 g/m2 .. 100 g/m2"`
	// Safe is the carrier that may still be there when it is laminated.
	Safe Value[quantity.Grammage] `yaml:"safe_residue,required" range:"0.001 g/m2 .. 20 g/m2"`
	// Saturation is the concentration in the layer at which the air at its
	// face would be saturated.
	Saturation Value[quantity.Density] `yaml:"saturation,required" range:"10 kg/m3 .. 2000 kg/m3"`
	// Activation is the activation energy of the carrier's diffusion in the layer.
	Activation Value[quantity.MolarEnergy] `yaml:"activation,required" range:"5 kJ/mol .. 200 kJ/mol"`
	// Believable bounds the diffusivity in the maker's medium; a solved one
	// outside is a warning.
	Believable Value[quantity.Diffusivity] `yaml:"diffusivity,required" range:"1e-18 m2/s .. 1e-8 m2/s"`
	Pos        Pos
}

// Reaction holds what an ink needs that hardens by a first-order reaction.
type Reaction struct {
	Activation Value[quantity.MolarEnergy] `yaml:"activation,required" range:"5 kJ/mol .. 200 kJ/mol"`
	// Unreacted is the share of normal coverage's film that may still be
	// unreacted when it is laminated.
	Unreacted Value[quantity.Fraction] `yaml:"unreacted,required" range:"0.1 % .. 99 %"`
	Pos       Pos
}

// Toner holds the additive hours of a fused toner: the trade's rule is data here.
type Toner struct {
	Base   Value[quantity.Time] `yaml:"base,required" range:"0 h .. 100 h"`   // any sheet
	Coated Value[quantity.Time] `yaml:"coated,required" range:"0 h .. 100 h"` // more on a gloss-coated sheet
	Heavy  Value[quantity.Time] `yaml:"heavy,required" range:"0 h .. 100 h"`  // more for heavy coverage
	Pos    Pos
}

// Medium is what is printed on.
type Medium struct {
	Head        `yaml:",inline"`
	Class       string                 `yaml:"class,required" oneof:"vinyl banner canvas plastic paper board photo"`
	Finish      string                 `yaml:"finish,required" oneof:"plain matt silk gloss textured"`
	Coated      bool                   `yaml:"coated"` // a pigment or receiving coat on the printed face
	Forms       []string               `yaml:"forms,required" oneof:"roll sheet"`
	Inks        []Ref                  `yaml:"inks,required" to:"inks"`             // what it is printed with
	Width       Value[quantity.Length] `yaml:"width,required" range:"50 mm .. 6 m"` // of the roll, or the sheet's shorter side
	SheetLength Value[quantity.Length] `yaml:"sheet_length" range:"50 mm .. 6 m"`   // a sheet's longer side

	Thickness    Value[quantity.Length]       `yaml:"thickness,required" range:"10 µm .. 10 mm"`
	Grammage     Value[quantity.Grammage]     `yaml:"grammage,required" range:"10 g/m2 .. 5000 g/m2"`
	FibreShare   Value[quantity.Fraction]     `yaml:"fibre_share" range:"0 % .. 100 %"`
	HasGrain     bool                         `yaml:"has_grain"`
	Conductivity Value[quantity.Conductivity] `yaml:"conductivity" range:"0.01 W/mK .. 5 W/mK"`
	SpecificHeat Value[quantity.SpecificHeat] `yaml:"specific_heat" range:"300 J/kgK .. 5000 J/kgK"`
	ExpansionMD  Value[quantity.Expansion]    `yaml:"expansion_md" range:"0 1/K .. 0.0005 1/K"`
	ExpansionCD  Value[quantity.Expansion]    `yaml:"expansion_cd" range:"0 1/K .. 0.0005 1/K"`
	ModulusMD    Value[quantity.Pressure]     `yaml:"modulus_md" range:"0.1 MPa .. 20 GPa"`
	ModulusCD    Value[quantity.Pressure]     `yaml:"modulus_cd" range:"0.1 MPa .. 20 GPa"`
	SwellingMD   Value[quantity.Fraction]     `yaml:"swelling_md" range:"0 % .. 100 %"` // strain per unit moisture ratio
	SwellingCD   Value[quantity.Fraction]     `yaml:"swelling_cd" range:"0 % .. 100 %"`
	HeatLimit    Value[quantity.Temperature]  `yaml:"heat_limit" range:"30 °C .. 250 °C"` // of the print's face
	// Texture is the depth of the hollows in its face, TextureWidth their width.
	Texture      Value[quantity.Length] `yaml:"texture" range:"0.05 µm .. 2 mm"`
	TextureWidth Value[quantity.Length] `yaml:"texture_width" range:"1 µm .. 10 mm"`

	// Receives is the layer that takes the ink up and holds water of its own.
	Receives *Receiving `yaml:"receives"`

	Drying *LayerDrying `yaml:"drying"` // needed where an evaporating ink prints on it
}

// Receiving is a receiving layer as far as its water is concerned.
type Receiving struct {
	Layer    string                   `yaml:"layer,required" oneof:"gelatine pva silica"`
	Grammage Value[quantity.Grammage] `yaml:"grammage,required" range:"1 g/m2 .. 200 g/m2"`
	Pos      Pos
}

// LayerDrying is how a medium takes up an ink's carrier and lets it go.
type LayerDrying struct {
	// Absorbs is the thickness of the layer that takes the carrier up.
	Absorbs Value[quantity.Length] `yaml:"absorbing_thickness,required" range:"1 µm .. 2 mm"`
	// Mobility is the carrier's diffusivity in it, relative to plasticised
	// calendered vinyl.
	Mobility Value[quantity.Fraction] `yaml:"mobility,required" range:"0.0001 % .. 100000000 %"`
	// Back says whether vapour can leave through the back.
	Back string `yaml:"back,required" oneof:"sealed open"`
	// BackResistance is the resistance of an open back.
	BackResistance Value[quantity.Resistance] `yaml:"back_resistance" range:"0 s/m .. 1e9 s/m"`
	Pos            Pos
}

// Film is a laminating film: a base with an adhesive.
type Film struct {
	Head   `yaml:",inline"`
	Class  string `yaml:"class,required" oneof:"thermal high-tack lay-flat low-melt heat-set cold"`
	Finish string `yaml:"finish,required" oneof:"gloss matt satin textured soft-touch"`

	Base              Ref                    `yaml:"base,required" to:"substances"`
	BaseThickness     Value[quantity.Length] `yaml:"base_thickness,required" range:"5 µm .. 1 mm"`
	Adhesive          Ref                    `yaml:"adhesive,required" to:"substances"`
	AdhesiveThickness Value[quantity.Length] `yaml:"adhesive_thickness,required" range:"2 µm .. 500 µm"`
	LinerThickness    Value[quantity.Length] `yaml:"liner_thickness" range:"10 µm .. 500 µm"`
	Width             Value[quantity.Length] `yaml:"width,required" range:"50 mm .. 3 m"`
	RunsOn            []Ref                  `yaml:"runs_on,required" to:"laminators"`

	// The three temperatures of a hot film; they are not interchangeable.
	Melts      *Span                       `yaml:"adhesive_melts"`                     // the adhesive's melting range
	Activation Value[quantity.Temperature] `yaml:"activation" range:"30 °C .. 200 °C"` // the activation figure on the maker's sheet
	Rollers    *RollerRange                `yaml:"roller_range"`                       // the maker's roller range and what it holds for
	HeatLimit  Value[quantity.Temperature] `yaml:"heat_limit" range:"30 °C .. 250 °C"`
	// OpenTime is how long the adhesive must stay at its activation to take hold.
	OpenTime Value[quantity.Time] `yaml:"open_time" range:"0 s .. 60 s"`
	// Assist is the range of a warmed roller that helps a cold film.
	Assist *Span `yaml:"roller_assist"`
	// ApplyAbove is a cold film's lowest application temperature.
	ApplyAbove Value[quantity.Temperature] `yaml:"apply_above" range:"0 °C .. 50 °C"`
	// Safe is the carrier that may be left under this film, where its maker says so.
	Safe Value[quantity.Grammage] `yaml:"safe_residue" range:"0.001 g/m2 .. 20 g/m2"`

	RollLength Value[quantity.Length] `yaml:"roll_length" range:"1 m .. 10000 m"`
	Core       Value[quantity.Length] `yaml:"core" range:"20 mm .. 300 mm"` // the core's outside diameter
	// Rest is how long a laminate with it lies before it is cut, creased or mounted.
	Rest  Value[quantity.Time] `yaml:"rest" range:"0 h .. 400 h"`
	Price float64              `yaml:"price"` // of a square metre, in the shop's currency
}

// Span is a range of temperature.
type Span struct {
	From   Value[quantity.Temperature] `yaml:"from,required" range:"0 °C .. 250 °C"`
	To     Value[quantity.Temperature] `yaml:"to,required" range:"0 °C .. 250 °C"`
	Source Ref                         `yaml:"source" to:"sources"`
	Pos    Pos
}

// RollerRange is the set temperature that a film's maker gives, with the speed
// and the class of machine it holds for.
type RollerRange struct {
	From    Value[quantity.Temperature] `yaml:"from,required" range:"0 °C .. 250 °C"`
	To      Value[quantity.Temperature] `yaml:"to,required" range:"0 °C .. 250 °C"`
	Speed   Value[quantity.Speed]       `yaml:"speed,required" range:"0.1 m/min .. 100 m/min"`
	Machine string                      `yaml:"machine,required" oneof:"wide-cold wide-hot encapsulator sheet-fed desktop"`
	// Medium is what the maker ran it on; without it the range calibrates nothing.
	Medium Ref `yaml:"medium" to:"media"`
	Source Ref `yaml:"source" to:"sources"`
	Pos    Pos
}

// Laminator is a machine.
type Laminator struct {
	Head                `yaml:",inline"`
	Class               string                      `yaml:"class,required" oneof:"wide-cold wide-hot encapsulator sheet-fed desktop"`
	Films               []string                    `yaml:"films,required" oneof:"thermal high-tack lay-flat low-melt heat-set cold"` // classes it can run
	Width               Value[quantity.Length]      `yaml:"width,required" range:"100 mm .. 4 m"`                                     // widest that passes
	Opening             Value[quantity.Length]      `yaml:"opening" range:"0.1 mm .. 100 mm"`                                         // thickest that passes
	Forms               []string                    `yaml:"forms,required" oneof:"roll sheet"`
	Hottest             Value[quantity.Temperature] `yaml:"hottest,required" range:"15 °C .. 250 °C"` // highest set temperature
	SensedAt            string                      `yaml:"sensed_at,required" oneof:"core surface none"`
	Heated              string                      `yaml:"heated,required" oneof:"upper both"`
	TwoSided            bool                        `yaml:"two_sided"` // films both sides in one pass
	Slowest             Value[quantity.Speed]       `yaml:"slowest,required" range:"0.05 m/min .. 100 m/min"`
	Usual               Value[quantity.Speed]       `yaml:"usual,required" range:"0.05 m/min .. 100 m/min"`
	Fastest             Value[quantity.Speed]       `yaml:"fastest,required" range:"0.05 m/min .. 100 m/min"`
	Diameter            Value[quantity.Length]      `yaml:"roller_diameter,required" range:"10 mm .. 1 m"`
	Cover               Ref                         `yaml:"cover" to:"substances"`
	CoverThickness      Value[quantity.Length]      `yaml:"cover_thickness" range:"0 mm .. 50 mm"`
	Wrap                Value[quantity.Length]      `yaml:"wrap" range:"0 mm .. 2 m"` // film on the hot roller before the nip
	Nip                 Value[quantity.Length]      `yaml:"nip,required" range:"1 mm .. 50 mm"`
	NipLoad             Value[quantity.LineLoad]    `yaml:"nip_load" range:"0.1 N/mm .. 100 N/mm"`
	LowerCover          Ref                         `yaml:"lower_cover" to:"substances"` // of an unheated lower roller
	LowerCoverThickness Value[quantity.Length]      `yaml:"lower_cover_thickness" range:"0 mm .. 50 mm"`
	LowerRoller         Value[quantity.Temperature] `yaml:"lower_roller" range:"5 °C .. 200 °C"` // what an unheated one settles at
	// Shoe heats the film ahead of an unheated roller; Preheat warms the print
	// ahead of the nip; Chill cools the laminate after it.
	Shoe    *Stretch             `yaml:"shoe"`
	Preheat *Stretch             `yaml:"preheat"`
	Chill   *Stretch             `yaml:"chill"`
	WarmUp  Value[quantity.Time] `yaml:"warm_up" range:"0 min .. 3 h"`
	// Rollers are the others that touch film or print, beside the laminating ones.
	Rollers []NamedRoller `yaml:"rollers"`
}

// NamedRoller is a roller of a laminator beside the laminating ones.
type NamedRoller struct {
	Name     string                 `yaml:"name,required"`
	Diameter Value[quantity.Length] `yaml:"diameter,required" range:"5 mm .. 1 m"`
	Pos      Pos
}

// Stretch is a heated or cooled stretch of the way through a laminator.
type Stretch struct {
	Length      Value[quantity.Length]      `yaml:"length,required" range:"1 mm .. 5 m"`
	Temperature Value[quantity.Temperature] `yaml:"temperature" range:"-10 °C .. 250 °C"` // a shoe has the set temperature
	Pos         Pos
}

// Storage is a way to keep a print while it waits.
type Storage struct {
	Head  `yaml:",inline"`
	Kind  string   `yaml:"kind,required" oneof:"hung flat loose-roll tight-roll stack"`
	Forms []string `yaml:"forms,required" oneof:"roll sheet"`
	// AirSpeed past the print; where the room's is greater, the room's counts.
	AirSpeed Value[quantity.Speed] `yaml:"air_speed" range:"0 m/s .. 20 m/s"`
	// Length along the air's way over which the boundary layer grows.
	Length Value[quantity.Length] `yaml:"length" range:"10 mm .. 10 m"`
	// Gap between the wraps of a tight roll or the sheets of a stack.
	Gap Value[quantity.Length] `yaml:"gap" range:"1 µm .. 10 mm"`
	// Draught is a loose roll's drying at the face relative to hung: observed, not derived.
	Draught Value[quantity.Fraction] `yaml:"draught" range:"0 % .. 200 %"`
	// BackOpen says whether air reaches the back of the print.
	BackOpen bool `yaml:"back_open"`
	// Oxygen is how fast an oxidising ink hardens here relative to hung.
	Oxygen Value[quantity.Fraction] `yaml:"oxygen,required" range:"0 % .. 100 %"`
}

// Limit is a rule about films on prints: where it is good, where a test must
// come first, and where it will not do. A rule with an empty list holds for all.
type Limit struct {
	Head          `yaml:",inline"`
	Films         []string `yaml:"films" oneof:"thermal high-tack lay-flat low-melt heat-set cold"` // film classes
	FilmIDs       []Ref    `yaml:"film_ids" to:"films"`
	Inks          []Ref    `yaml:"inks" to:"inks"`
	InkClasses    []string `yaml:"ink_classes" oneof:"solvent latex uv-inkjet aqueous toner offset offset-uv"`
	Media         []Ref    `yaml:"media" to:"media"`
	MediumClasses []string `yaml:"medium_classes" oneof:"vinyl banner canvas plastic paper board photo"`
	Coverages     []string `yaml:"coverages" oneof:"light normal heavy"`
	Verdict       string   `yaml:"verdict,required" oneof:"test change refuse"`
	Why           string   `yaml:"why,required"`
}

// Prediction is a fact of the trade that the computations should meet: what is
// expected of one print, written down with its ground before the program had
// computed it. The handbook shows it beside what came out, hit or miss.
type Prediction struct {
	Head     `yaml:",inline"`
	Written  string               `yaml:"written,required,date"`
	Ink      Ref                  `yaml:"ink,required" to:"inks"`
	Medium   Ref                  `yaml:"medium,required" to:"media"`
	Coverage string               `yaml:"coverage,required" oneof:"light normal heavy"`
	Room     Ref                  `yaml:"room,required" to:"rooms"`
	Storage  Ref                  `yaml:"storage,required" to:"storage"`
	History  string               `yaml:"history"`                                          // before that: 20 h tight-roll
	Measure  string               `yaml:"measure,required" oneof:"wait computed remaining"` // what is told, what physics gives, what is still to go
	From     Value[quantity.Time] `yaml:"from,required" range:"0 h .. 1000 h"`
	To       Value[quantity.Time] `yaml:"to,required" range:"0 h .. 1000 h"`
	Basis    string               `yaml:"basis,required"` // why that is expected, and who says so
}

// WindowPrediction is what the trade would expect of a temperature window,
// written down before the program had computed one.
type WindowPrediction struct {
	Head    `yaml:",inline"`
	Written string `yaml:"written,required,date"`
	// Claim is what is expected of the case:
	//
	//	makers-range   it has a window that overlaps the film maker's roller range
	//	no-window      it has none
	//	higher         its lowest set temperature is above the other case's
	//	lower          its lowest set temperature is below the other case's
	//	narrower       its window is narrower than the other case's
	Claim string      `yaml:"claim,required" oneof:"makers-range no-window higher lower narrower"`
	Case  *WindowCase `yaml:"case,required"`
	Other *WindowCase `yaml:"other"` // for higher, lower, narrower
	Basis string      `yaml:"basis,required"`
}

// WindowCase is a film on a medium in a machine.
type WindowCase struct {
	Film      Ref                   `yaml:"film,required" to:"films"`
	Medium    Ref                   `yaml:"medium,required" to:"media"`
	Laminator Ref                   `yaml:"laminator,required" to:"laminators"`
	Speed     Value[quantity.Speed] `yaml:"speed,required" range:"0.05 m/min .. 100 m/min"`
	// Humidity that the sheet is in equilibrium with, at 23 °C.
	Humidity Value[quantity.Fraction] `yaml:"humidity,required" range:"1 % .. 99 %"`
	Pos      Pos
}

// Claim is a fact of the trade about what happens to a laminate after the nip,
// written down before the program had computed it.
type Claim struct {
	Head    `yaml:",inline"`
	Written string `yaml:"written,required,date"`
	// Measure is what the claim is about:
	//
	//	ridges      the greatest risk of lines on the way from the nip to the room
	//	curl        curvature of the cool laminate in the room it was laid in
	//	room-curl   how far the curvature moves when the laminate comes from Room to Then
	//	turn        the same with its sign, in 1/m, above 0 where it turns towards the film
	//	swelling    growth across the grain over growth along it
	//	recovery    days until an early print under film is down to its safe residue
	Measure string `yaml:"measure,required" oneof:"ridges curl room-curl turn swelling recovery"`
	// Is compares the case with the other case, Factor times, or with Amount.
	Is     string     `yaml:"is,required" oneof:"more less"`
	Factor float64    `yaml:"factor"` // of the other case's; 1 where none is stated
	Amount float64    `yaml:"amount"` // where there is no other case
	Case   *ClaimCase `yaml:"case,required"`
	Other  *ClaimCase `yaml:"other"`
	Basis  string     `yaml:"basis,required"`
}

// ClaimCase is a laminate, as far as a claim needs it.
type ClaimCase struct {
	Film      Ref    `yaml:"film" to:"films"`
	Medium    Ref    `yaml:"medium,required" to:"media"`
	Laminator Ref    `yaml:"laminator" to:"laminators"`
	Grain     string `yaml:"grain" oneof:"along across"` // of the sheet to the feed
	Ink       Ref    `yaml:"ink" to:"inks"`
	Back      string `yaml:"back" oneof:"open film mounted"`
	// Spent is the share of its wait that a print had when it was laminated.
	Spent Value[quantity.Fraction] `yaml:"spent" range:"0 % .. 100 %"`
	// Humidity is that of the room it was laid in, Then that of a later room.
	Humidity Value[quantity.Fraction] `yaml:"humidity" range:"1 % .. 99 %"`
	Then     Value[quantity.Fraction] `yaml:"then" range:"1 % .. 99 %"`
	Pos      Pos
}

// Contact is a contact conductance between two surfaces, or what a face gives
// to the air. The program asks for them by id.
type Contact struct {
	Head        `yaml:",inline"`
	Conductance Value[quantity.Conductance] `yaml:"conductance,required" range:"1 W/m2K .. 100000 W/m2K"`
}

// Source is where a value comes from.
type Source struct {
	ID    string `yaml:"id,required,id"`
	Kind  string `yaml:"kind,required" oneof:"published maker measured practice memory invented"`
	Title string `yaml:"title,required"`
	Where string `yaml:"where"` // section, table, equation, page
	Demo  bool
	Pos   Pos
}
