package fit

// Thermal is a joint whose parts expand differently.
type Thermal struct {
	Diameter        float64 // mm, of the joint
	InsertExpansion float64 // 1/K, coefficient of linear thermal expansion of the inner part
	HubExpansion    float64 // 1/K, of the outer part
}

// Change is how much the interference grows with the temperature.
//
//	Δi = 1000·d·ΔT·(α_insert − α_hub)
//
// Arguments: dT, K, change from the temperature at which the interference
// holds, both parts alike.
// Result: µm on the diameter; below zero the fit loosens.
// Range: constant coefficients; no range is published here.
// Special cases: none.
// Source: linear thermal expansion, common practice.
func (t Thermal) Change(dT float64) float64 {
	return micrometres * t.Diameter * dT * (t.InsertExpansion - t.HubExpansion)
}
