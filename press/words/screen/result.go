package screen

func (say Words) TableAmbiguous() string {
	return "The table is ambiguous: one pair of signals stands for parts that must be told apart."
}
