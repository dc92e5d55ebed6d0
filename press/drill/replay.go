package drill

// After is a round of a level and seed in which so many answers were given. It is
// false for more answers than the round has questions.
func (d *Drill) After(level int, seed uint64, answers []Answer) (Session, bool) {
	s := NewSession(d.Round(level, RoundLength, seed))
	for _, a := range answers {
		key, ok := s.Next()
		if !ok {
			return s, false
		}
		e, _ := d.Exercise(key, seed)
		s = s.Answered(e.Judge(a).Right)
	}
	return s, true
}
