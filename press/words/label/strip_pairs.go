package label

func (say Words) NoVerdictZoneAndPush() string { return "No verdict: zone and push end are not known." }
