package tables

import "laydown/gen/quantity"

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
	Pieces            string // good pieces wanted; empty: one
}

// Plan is the answer for one job. Fields that a later computation fills are
// null and say why.
type Plan struct {
	Verdict Verdict  `json:"verdict"`
	Reasons []Reason `json:"reasons"` // the worst first
	// WaitHours is the whole wait from printing, as the job is kept; null
	// when it hardly dries, with WaitReason.
	WaitHours  *float64 `json:"wait_hours"`
	WaitReason string   `json:"wait_reason,omitempty"`
	// RemainingHours is what is still to come from now.
	RemainingHours *float64 `json:"remaining_hours"`
	MakerWaitHours float64  `json:"maker_wait_hours"`
	// ReadyBy is a time on the shop's clock, 2026-11-25T18:30; null when unknown.
	ReadyBy *string `json:"ready_by"`
	// HandOverBy is when the job can leave the shop, on the shop's clock, and
	// HandOverHours the time from now till then; HandOver says what is counted. They
	// are null where nothing can be promised, with HandOverReason.
	HandOverBy     *string  `json:"hand_over_by"`
	HandOverHours  *float64 `json:"hand_over_hours"`
	HandOver       string   `json:"hand_over,omitempty"`
	HandOverReason string   `json:"hand_over_reason,omitempty"`
	// Counted says how the time until now was counted.
	Counted string `json:"counted,omitempty"`
	// Window is the range of set temperatures; null where there is none, with
	// WindowReason.
	Window       *Window `json:"window"`
	WindowReason string  `json:"window_reason,omitempty"`
	// Others are films (ids) that would do where this one will not.
	Others   []string `json:"others,omitempty"`
	Feed     Feed     `json:"feed"`
	Cautions []string `json:"cautions"`
	// Laminate is where a test strip begins and what comes after the nip, at the
	// machine's usual speed in the shop's usual room.
	Laminate []Line `json:"laminate,omitempty"`
	// Evidence is what the job's numbers make of the causes of faults, and Faults those
	// that they make likelier.
	Evidence []Factor      `json:"evidence,omitempty"`
	Faults   []LikelyFault `json:"faults,omitempty"`
	Tests    []string      `json:"tests,omitempty"` // readiness tests (heading ids)
	Working  Working       `json:"working"`
	// HandOverWorking is the way to the hand-over.
	HandOverWorking Working       `json:"hand_over_working"`
	remaining       quantity.Time // until it is dry, unrounded
	// HeatWorking is the way to the window.
	HeatWorking Working `json:"heat_working"`
}

// Reason is one ground of the verdict.
type Reason struct {
	Verdict Verdict `json:"verdict"`
	Test    bool    `json:"test,omitempty"` // it asks for a test first; with Go
	Text    string  `json:"text"`
	Source  string  `json:"source,omitempty"`
}

// Window holds the set temperatures that will do, in whole °C.
type Window struct {
	// Low and High hold for the whole run; null where the first piece and the
	// steady run want different settings.
	Low  *float64 `json:"low_c"`
	High *float64 `json:"high_c"`
	// First is for the first piece, Steady for the steady run.
	First  Span `json:"first"`
	Steady Span `json:"steady"`
	// LowLimit and HighLimit name what bounds it: activation; film, medium, gas, laminator.
	LowLimit  string `json:"low_limit"`
	HighLimit string `json:"high_limit"`
}

// Span is a range of set temperatures in whole °C.
type Span struct {
	Low  float64 `json:"low_c"`
	High float64 `json:"high_c"`
}

// Feed says which way round the sheet goes in.
type Feed struct {
	Advice string `json:"advice"` // as it lies, turn it, cannot be turned, too wide that way, unknown: test first, does not matter
	Why    string `json:"why"`
}
