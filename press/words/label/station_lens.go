package label

func (say Words) LensAxis() string { return "last tenths, mm" }

func (say Words) ToolAboveAt() string { return "tool above, at " }

func (say Words) ToolBelowAt() string { return "tool below, at " }

func (say Words) DrawnAsIfDown() string { return "drawn as if it pressed down" }
