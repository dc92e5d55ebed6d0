package web

import (
	"strconv"
	"sync"

	"ramplan/press/proving"
)

// mostJudged is how many studies are remembered with what they say: a page of a long one is
// asked for leaf by leaf.
const mostJudged = 32

// judgements remember what studies say, as long as study, plan and day stay the same.
type judgements struct {
	mu   sync.Mutex
	of   map[string]judgement
	keys []string // the one remembered first first
}

// A judgement is a study as it reads, and what it says of a plan. Nothing of it is changed.
type judgement struct {
	study  *proving.Study
	faults proving.TypedFaults
	judged *proving.Judged // nil where nothing can be said
}

// get gives a judgement, made where it is not remembered.
func (m *judgements) get(key string, judge func() judgement) judgement {
	m.mu.Lock()
	j, known := m.of[key]
	m.mu.Unlock()
	if known {
		return j
	}
	j = judge() // two that ask at once both judge, and come to the same
	m.mu.Lock()
	defer m.mu.Unlock()
	if _, known := m.of[key]; !known {
		if m.of == nil {
			m.of = map[string]judgement{}
		}
		if len(m.keys) == mostJudged {
			delete(m.of, m.keys[0])
			m.keys = m.keys[1:]
		}
		m.of[key], m.keys = j, append(m.keys, key)
	}
	return j
}

// judge reads the study and holds it against the plan.
func (s *site) judge(d *studyDesk, a against) {
	v := &d.v
	j := judgement{study: v.Study}
	if v.Typed == d.kept.Typed {
		key := strconv.FormatInt(int64(d.kept.ID), 10) + " " + strconv.FormatInt(d.kept.Version, 10) + " " + today()
		if a.result != nil {
			key += " " + a.result.PlanDigest()
		}
		j = s.judged.get(key, func() judgement { return judgedAgainst(v.Study, v.Typed, a) })
	} else {
		j = judgedAgainst(v.Study, v.Typed, a)
	}
	v.Study, v.Faults, v.Judged = j.study, j.faults, j.judged
}

// judgedAgainst reads a study where it was not read yet, and holds it against the plan.
func judgedAgainst(study *proving.Study, typed *proving.Typed, a against) judgement {
	j := judgement{study: study}
	if j.study == nil {
		j.study, j.faults = typed.Study()
	}
	if a.result == nil || len(j.study.Rows) == 0 || headFaulty(j.faults) {
		return j
	}
	if j.study.TakenAt == "" { // not typed yet, or no day: what it says hangs on it little
		dated := *j.study
		dated.TakenAt = today()
		j.study = &dated
	}
	j.judged = &proving.Assess(a.result, []*proving.Study{j.study}, today()).Studies[0]
	return j
}
