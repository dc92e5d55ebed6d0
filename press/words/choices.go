package words

import "strings"

// choices are the words of a plan that say too little by themselves, by the path of their
// field.
var choices = map[string]map[string]string{
	"sequence.relative_from":   {"actual": "where the ram is", "target": "where it was last sent to"},
	"sequence.steps[].on_hold": {"go_on": "goes on to its target", "cancel": "the next step begins"},
}

// ChoiceOf writes a choice of a field as people read it.
func ChoiceOf(path, choice string) string {
	if said, ok := choices[path][choice]; ok {
		return said
	}
	return strings.ReplaceAll(choice, "_", " ")
}
