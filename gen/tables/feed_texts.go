package tables

// feedTexts are the sentences of feeding advice; the plan page fills the same.
// The rule for hot film on paper is the trade's, not computed.
var feedTexts = map[string]string{
	"rule":     "Hot film on paper wants the grain across the feed, parallel to the roller axes, so that the way the sheet moves most lies along the feed, where it is free (common practice, no source).",
	"cold":     "A cold film brings no heat, so the grain does not decide the way round: feed the edge that lies flat.",
	"no-grain": "This medium has no paper grain: feed the edge that lies flat.",
	"roll":     "On a roll the grain runs along the feed and cannot be turned: less tension, less heat, and look for lines along the feed. {rule}",
	"unknown":  "Find the grain by fold, bend or wetting on an unlaminated sheet. {rule}",
	"lies":     "The grain lies across the feed, parallel to the roller axes, as the sheet lies now. {rule}",
	"wide":     "Turned so that the grain lies across the feed, the sheet would be {across} wide; {laminator} takes {limit}. {rule}",
	"turn":     "As it lies the grain runs along the feed. Turn the sheet by a quarter. {rule}",
}
