package shop

import "reflect"

// kind is one sort of record: the key that it stands under in the data files,
// and what a person calls one of it.
type kind struct {
	key    string
	one    string // "film"
	many   string // "films"
	record reflect.Type
	single bool // one mapping, not a list of records
	log    bool // records without an id: nothing refers to them, and the shop's stand in place of the demo's
}

// kinds lists every sort of record in the order in which Load reads them.
var kinds = []kind{
	{key: "shop", one: "shop", many: "shops", record: reflect.TypeFor[Shopfront](), single: true},
	{key: "rooms", one: "room", many: "rooms", record: reflect.TypeFor[Room]()},
	{key: "carriers", one: "carrier", many: "carriers", record: reflect.TypeFor[Carrier]()},
	{key: "substances", one: "substance", many: "substances", record: reflect.TypeFor[Substance]()},
	{key: "inks", one: "ink", many: "inks", record: reflect.TypeFor[Ink]()},
	{key: "media", one: "medium", many: "media", record: reflect.TypeFor[Medium]()},
	{key: "films", one: "film", many: "films", record: reflect.TypeFor[Film]()},
	{key: "laminators", one: "laminator", many: "laminators", record: reflect.TypeFor[Laminator]()},
	{key: "storage", one: "way of storing", many: "ways of storing", record: reflect.TypeFor[Storage]()},
	{key: "limits", one: "limit", many: "limits", record: reflect.TypeFor[Limit]()},
	{key: "predictions", one: "prediction", many: "predictions", record: reflect.TypeFor[Prediction]()},
	{key: "window_predictions", one: "window prediction", many: "window predictions", record: reflect.TypeFor[WindowPrediction]()},
	{key: "claims", one: "claim", many: "claims", record: reflect.TypeFor[Claim]()},
	{key: "contacts", one: "contact", many: "contacts", record: reflect.TypeFor[Contact]()},
	{key: "cautions", one: "caution", many: "cautions", record: reflect.TypeFor[Caution]()},
	{key: "forms", one: "form", many: "forms", record: reflect.TypeFor[Form]()},
	{key: "checks", one: "check", many: "checks", record: reflect.TypeFor[GeneralCheck]()},
	{key: "faults", one: "family of faults", many: "families of faults", record: reflect.TypeFor[FaultFamily]()},
	{key: "faults_log", one: "logged fault", many: "logged faults", record: reflect.TypeFor[LoggedFault](), log: true},
	{key: "sources", one: "source", many: "sources", record: reflect.TypeFor[Source]()},
}

// kindOf finds a kind by its key.
func kindOf(key string) (kind, bool) {
	for _, k := range kinds {
		if k.key == key {
			return k, true
		}
	}
	return kind{}, false
}

// kindKeys lists the keys of all kinds.
func kindKeys() []string {
	keys := make([]string, len(kinds))
	for i, k := range kinds {
		keys[i] = k.key
	}
	return keys
}
