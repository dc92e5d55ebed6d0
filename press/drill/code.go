package drill

import (
	"errors"
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"time"
	"unicode/utf8"
)

// A Code is a result that somebody types in from another device: what was done, on
// which plan, by whom. It ends with a check figure, which finds typing mistakes and
// proves nothing else: whoever knows the rule can make a code.
//
//	KIND-OUTCOME-REVISION-DIGEST-RIGHT/ITEMS/NEEDED-SET-SECONDS-DAY-CHECK NAME
//
// KIND is P and the level of a round, or E and T or S for an exam of a technician or a
// setter. OUTCOME is D for a round that was done; of an exam P passed, or N not, with T
// for over the time and G for an answer that fails alone.
type Code struct {
	Level    int  // of a practice round; 0 for an exam
	Role     Role // of an exam
	Passed   bool // an exam
	OverTime bool
	Grave    bool   // an answer that fails an exam alone
	Revision string // empty for a draft
	Digest   string // first digits of the plan's
	Right    int
	Items    int
	Needed   int // of an exam
	Seed     uint64
	Took     time.Duration
	Day      string // when it was done by the clock of that device, such as 2026-11-28
	Who      string
}

// DraftCode stands in a code for a draft.
const DraftCode = "0"

// The refusals of a code.
var (
	ErrNoCode    = errors.New("drill: this is no record code")
	ErrCodeTyped = errors.New("drill: the check figure of this code does not fit: something is mistyped")
	ErrCodeSense = errors.New("drill: this code says what cannot be")
)

// longestWho is the longest name in a code, in characters.
const longestWho = 80

var codeForm = regexp.MustCompile(`^(P[1-4]|E[TS])-(D|P|NT?G?)-([A-Z]{1,3}|0)-([0-9A-F]{12})-(\d{1,3})/(\d{1,3})/(\d{1,3})-(\d{1,9})-(\d{1,6})-(\d{8})-(\d{4}) (.+)$`)

// roleLetters name roles in a code.
var roleLetters = map[Role]string{Technician: "T", Setter: "S"}

// RoleLetter names a role in a code.
func RoleLetter(r Role) string { return roleLetters[r] }

// String writes the code.
func (c Code) String() string {
	body := c.body()
	return body[0] + "-" + checkFigure(body[0]+" "+body[1]) + " " + c.Who
}

// Key is the same for codes that differ in the case of letters alone.
func (c Code) Key() string { return asciiUpper(c.String()) }

// body is what the check figure stands for: the part before it, and the name.
func (c Code) body() [2]string {
	kind, outcome, revision := "E"+RoleLetter(c.Role), "N", c.Revision
	switch {
	case c.Level > 0:
		kind, outcome = "P"+strconv.Itoa(c.Level), "D"
	case c.Passed:
		outcome = "P"
	default:
		if c.OverTime {
			outcome += "T"
		}
		if c.Grave {
			outcome += "G"
		}
	}
	if revision == "" {
		revision = DraftCode
	}
	return [2]string{fmt.Sprintf("%s-%s-%s-%s-%d/%d/%d-%d-%d-%s", kind, outcome, revision, asciiUpper(c.Digest), c.Right, c.Items, c.Needed, c.Seed, int(c.Took.Seconds()), strings.ReplaceAll(c.Day, "-", "")), asciiUpper(c.Who)}
}

// checkFigure is four digits of a text: a weighted sum of its characters modulo a
// prime. No single wrong character of the ASCII set and no exchange of two that stand
// side by side leaves it as it is; of all other mistakes one in 9973 does.
func checkFigure(text string) string {
	const prime, weight = 9973, 31
	sum := 0
	for _, r := range text {
		sum = (sum*weight + int(r)) % prime
	}
	return fmt.Sprintf("%04d", sum)
}

// asciiUpper writes small letters of ASCII as capital ones and leaves the rest.
func asciiUpper(s string) string {
	return strings.Map(func(r rune) rune {
		if r >= 'a' && r <= 'z' {
			r -= 'a' - 'A'
		}
		return r
	}, s)
}

var (
	dashes  = regexp.MustCompile(`\s*[-‐‑‒–—−]\s*`)
	slashes = regexp.MustCompile(`\s*/\s*`)
)

// ParseCode reads a code as it was typed: blanks and the kind of dash do not matter,
// nor does the case of letters.
func ParseCode(typed string) (Code, error) {
	text := strings.Join(strings.Fields(typed), " ")
	const partsOfForm = 9 // after which a name may have dashes of its own
	parts := dashes.Split(text, partsOfForm)
	if len(parts) < partsOfForm {
		return Code{}, ErrNoCode
	}
	head, who, ok := strings.Cut(parts[partsOfForm-1], " ")
	if !ok {
		return Code{}, ErrNoCode
	}
	parts[partsOfForm-1] = head
	before := slashes.ReplaceAllString(asciiUpper(strings.Join(parts, "-")), "/")
	m := codeForm.FindStringSubmatch(before + " " + who)
	if m == nil || utf8.RuneCountInString(who) > longestWho {
		return Code{}, ErrNoCode
	}
	number := func(s string) int { n, _ := strconv.Atoi(s); return n }
	c := Code{
		OverTime: strings.Contains(m[2], "T"), Grave: strings.Contains(m[2], "G"), Passed: strings.HasPrefix(m[2], "P"), Revision: m[3], Digest: strings.ToLower(m[4]),
		Right: number(m[5]), Items: number(m[6]), Needed: number(m[7]), Took: time.Duration(number(m[9])) * time.Second, Who: who,
	}
	c.Seed, _ = strconv.ParseUint(m[8], 10, 64)
	if c.Revision == DraftCode {
		c.Revision = ""
	}
	if m[1][0] == 'P' {
		c.Level = number(m[1][1:])
	}
	for role, letter := range roleLetters {
		if m[1] == "E"+letter {
			c.Role = role
		}
	}
	// What was typed is checked before it is asked whether it can be.
	day := m[10]
	c.Day = day[:4] + "-" + day[4:6] + "-" + day[6:]
	if cut := strings.LastIndex(before, "-"); checkFigure(before[:cut]+" "+asciiUpper(who)) != m[11] {
		return Code{}, ErrCodeTyped
	}
	_, err := time.Parse(time.DateOnly, c.Day)
	exam := c.Level == 0
	if err != nil || c.Right > c.Items || c.Items == 0 || c.Needed > c.Items || exam == (m[2] == "D") ||
		exam && c.Passed && (c.Right < c.Needed || c.Grave || c.OverTime) || exam && !c.Passed && c.Right >= c.Needed && !c.Grave && !c.OverTime {
		return Code{}, ErrCodeSense
	}
	return c, nil
}
