package label

func (say Words) LastTenthsMm() string { return "last tenths, mm" }

func (say Words) ToolAboveAt() string { return "tool above, at " }

func (say Words) ToolBelowAt() string { return "tool below, at " }

func (say Words) DrawnAsIfItPressed() string { return "drawn as if it pressed down" }
