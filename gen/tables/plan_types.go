package tables

// Job is one print, as it is asked about: ids of the shop's records and the
// circumstances. Empty fields take the shop's usual ones.
type Job struct {
	Ink, Medium, Film string
	Coverage          string // light, normal, heavy
	Storage           string // how it waits from now on, and since printing where History does not say
	History           string // "6 h hung, 14 h tight-roll": since printing, in order
	Printed           string // 2026-11-24T15:40, or "unknown"; empty: just printed
	Now               string // 2026-11-25T09:00
	Room              string
	Laminator         string
	Speed             string // with a unit
	Grain             string // long, short, unknown
	Sheet             string // 320x450 mm, or roll
	Back              string // open, film, mounted
	StackRH           string // with a unit: the humidity measured in the stack
}

// Plan is the answer for one job. Fields that a later computation fills are
// null and say why.
type Plan struct {
	Verdict Verdict  `json:"verdict"`
	Reasons []Reason `json:"reasons"`
	// WaitHours is the whole wait from printing, as the job is kept; null
	// when it hardly dries, with WaitReason.
	WaitHours  *float64 `json:"wait_hours"`
	WaitReason string   `json:"wait_reason,omitempty"`
	// RemainingHours is what is still to come from now.
	RemainingHours *float64 `json:"remaining_hours"`
	MakerWaitHours float64  `json:"maker_wait_hours"`
	// ReadyBy is a time on the shop's clock, 2026-11-25T18:30; null when unknown.
	ReadyBy *string `json:"ready_by"`
	// Counted says how the time until now was counted.
	Counted string `json:"counted,omitempty"`
	// Window is the range of set temperatures; null until it is computed, or
	// where there is none, with WindowReason.
	Window       *Window `json:"window"`
	WindowReason string  `json:"window_reason,omitempty"`
	// Others are films (ids) that would do where this one will not.
	Others   []string `json:"others,omitempty"`
	Feed     Feed     `json:"feed"`
	Cautions []string `json:"cautions"`
	Tests    []string `json:"tests,omitempty"` // readiness tests (heading ids)
	Working  Working  `json:"working"`
}

// Reason is one ground of the verdict.
type Reason struct {
	Verdict Verdict `json:"verdict"`
	Text    string  `json:"text"`
	Source  string  `json:"source,omitempty"`
}

// Window is a range of roller set temperatures in °C.
type Window struct {
	Low  float64 `json:"low_c"`
	High float64 `json:"high_c"`
}

// Feed says which way round the sheet goes in.
type Feed struct {
	Advice string `json:"advice"` // as it lies, turn it, cannot be turned, too wide that way, unknown: test first, does not matter
	Why    string `json:"why"`
}
