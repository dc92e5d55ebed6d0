package probe

import (
	"flag"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/integrate/quad"
	"pgregory.net/rapid"

	"ramplan/press/stack"
)

// parts are simulated for each figure; a million takes 3 s.
var parts = flag.Int("parts", 200_000, "how many parts are simulated")

// The place of contact, the force and the joint of a small bush; invented.
var (
	someJoint = Joint{Drag: 12, Pilot: 4.2, Length: 5, Travel: math.Inf(1)}
	somePush  = Push{Force: 276, Sigma: 9, Stiffness: 21000, Limit: 153.89}
	someFit   = Fit{PerMicron: 70, FrictionLow: 0.09, FrictionHigh: 0.14}
)

func contact(mean float64, terms ...stack.Term) *stack.Sum {
	return stack.NewSum(append(terms, stack.Term{Row: stack.Row{Mean: mean}, Times: 1}))
}

func normal(sd float64) stack.Term {
	return stack.Term{Row: stack.Row{Half: sd, Shape: stack.Normal, Sigmas: 1}, Times: 1}
}

func uniform(half float64) stack.Term {
	return stack.Term{Row: stack.Row{Half: half}, Times: 1}
}

func anyJoint(t *rapid.T) Joint {
	j := Joint{
		Drag: rapid.Float64Range(0, 50).Draw(t, "drag"), Pilot: rapid.Float64Range(0, 5).Draw(t, "pilot"),
		Length: rapid.Float64Range(1, 8).Draw(t, "length"), Travel: math.Inf(1),
	}
	if rapid.Bool().Draw(t, "pushes back") {
		j.Counter = rapid.Float64Range(0.1, 30).Draw(t, "counter")
	}
	return j
}

// TestDoubtsByHand: u_d² = 2·0.0075² + 0.004² + 0.001² + (0.1·0.08/2)², and so
// L_p = 150 − 0.1 − 2u_d.
func TestDoubtsByHand(t *testing.T) {
	d := Doubts{Repeatability: 0.015, Scatter: 160, ProbeScatter: 40, Stiffness: 20000, StiffnessTau: 0.08, Between: 0.1}
	u := math.Sqrt(0.0001125 + 0.000016 + 0.000001 + 0.000016)
	assert.InDelta(t, u, d.Differ(), 1e-15)
	assert.InDelta(t, 149.9-2*u, d.Latest(150, 1), 1e-12)
}

// TestOverrunByHand: 10 mm/s, 4 kg and 16 N/mm = 16e3 N/m give
// 0.01·√(4/16e3) m = 0.158114 mm.
func TestOverrunByHand(t *testing.T) {
	assert.InDelta(t, 0.1581138830, Overrun(10, 4, 16), 1e-10)
	assert.True(t, math.IsInf(Overrun(10, 4, 0), 1))
	assert.Zero(t, Overrun(10, 0, 0))
}

// TestThresholdByHand: drag 12 and 40 N/mm over 5 mm after 4.2. A limit 5.2 mm past the
// contact without deflection lets 12 + 40·1 N through, one that is 2 mm past it the drag,
// one 20 mm past it 12 + 40·5, one before the part nothing.
func TestThresholdByHand(t *testing.T) {
	p := Push{Stiffness: 1e12, Limit: 105.2}
	for x, want := range map[float64]float64{100: 52, 103.2: 12, 85.2: 212} {
		assert.InDelta(t, want, p.Threshold(someJoint, x, 40), 1e-6)
	}
	p.Stiffness = 1000
	assert.InDelta(t, -800, p.Threshold(someJoint, 106, 40), 1e-9, "0.8 mm before the part")
}

// TestThresholdIsWhereTheStallPassesTheLimit holds the closed form against the depth at
// which a force stalls: two ways of saying the same.
func TestThresholdIsWhereTheStallPassesTheLimit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := Push{NestForce: rapid.Float64Range(0, 100).Draw(t, "nest force"), Stiffness: rapid.Float64Range(300, 1e5).Draw(t, "stiffness"), Limit: 100}
		j, grip := anyJoint(t), rapid.Float64Range(0, 300).Draw(t, "grip")
		x, force := rapid.Float64Range(85, 101).Draw(t, "x"), rapid.Float64Range(-50, 2500).Draw(t, "force")
		threshold := p.Threshold(j, x, grip)
		if math.Abs(force-threshold) < 1e-6 {
			t.Skip("on the very border")
		}
		r := Refusal{Push: p, Joint: j}
		for _, piece := range j.pieces(grip) {
			if force > piece.from && force <= piece.to {
				require.Equal(t, force > threshold, x > r.stall(piece, force))
				return
			}
		}
		t.Fatal("no piece holds the force")
	})
}

// TestRefusalByAnotherIntegral holds the probability against the same one integrated the
// other way round: over the places of contact, with the closed form of the threshold.
func TestRefusalByAnotherIntegral(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := somePush
		p.Force, p.Sigma = rapid.Float64Range(20, 900).Draw(t, "force"), rapid.Float64Range(4, 40).Draw(t, "sigma")
		p.Stiffness, p.NestForce = rapid.Float64Range(500, 6e4).Draw(t, "stiffness"), rapid.Float64Range(0, 200).Draw(t, "nest force")
		j, grip := anyJoint(t), rapid.Float64Range(0, 200).Draw(t, "grip")
		x := contact(rapid.Float64Range(140, 154).Draw(t, "mean"), normal(rapid.Float64Range(0.005, 0.2).Draw(t, "sd")), uniform(rapid.Float64Range(0, 0.3).Draw(t, "half")))
		r := &Refusal{Push: p, Joint: j, Contact: NewSpread(x)}
		// Gauss's rule in 160 panels between the corners of the threshold and of the density.
		low, high := x.Support()
		cuts := append([]float64{low, high}, x.Kinks()...)
		for _, z := range []float64{0, j.Pilot, j.Pilot + j.Length} {
			demand := j.Drag + j.Counter*z + grip*math.Min(math.Max(z-j.Pilot, 0), j.Length)
			cuts = append(cuts, min(max(p.Limit-(demand-p.NestForce)/p.Stiffness-z, low), high))
		}
		slices.Sort(cuts)
		refused := func(at float64) float64 {
			return x.PDF(at) * math.Erfc((p.Threshold(j, at, grip)-p.Force)/p.Sigma/math.Sqrt2) / 2
		}
		want := 0.0
		for k := 1; k < len(cuts); k++ {
			const panels = 160
			width := (cuts[k] - cuts[k-1]) / panels
			for i := range panels {
				if from := cuts[k-1] + width*float64(i); width > 0 {
					want += quad.Fixed(refused, from, from+width, 8, quad.Legendre{}, 0)
				}
			}
		}
		require.InDelta(t, want, r.Of(grip), 1e-8)
	})
}

// TestRefusalWithoutSpread holds the steps: without scatter the answer is yes or no,
// and a force at the very threshold stalls.
func TestRefusalWithoutSpread(t *testing.T) {
	r := &Refusal{Push: Push{Force: 52, Stiffness: 1e12, Limit: 105.2 + 1e-9}, Joint: someJoint, Contact: NewSpread(contact(100))}
	assert.Zero(t, r.Of(40.001))
	assert.Equal(t, 1.0, r.Of(39.999))
	assert.Equal(t, 1.0, r.Of(0))
	r.Force = 12
	assert.Zero(t, r.Of(0), "the drag itself stalls it")
	r.Sigma = 1
	assert.InDelta(t, 0.5, r.Of(0), 1e-12, "half of the forces are above the drag")
}

// TestSeatedBeforeTheLimitPasses: with a seat after 2 mm a ram without deflection rests
// at 102, before the limit, whatever it pushes with.
func TestSeatedBeforeTheLimitPasses(t *testing.T) {
	r := &Refusal{Push: Push{Force: 500, Sigma: 20, Stiffness: 1e9, Limit: 102.1}, Joint: someJoint, Contact: NewSpread(contact(100))}
	assert.Equal(t, 1.0, r.Of(0))
	r.Travel = 2
	assert.InDelta(t, 0, r.Of(0), 1e-12)
	r.Limit = 101.9
	assert.InDelta(t, 1, r.Of(0), 1e-12)
}

// TestOverIsTheMean holds the mean over a range of grips against a sum of many.
func TestOverIsTheMean(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := &Refusal{Push: somePush, Joint: anyJoint(t), Contact: NewSpread(contact(rapid.Float64Range(143, 146).Draw(t, "mean"), normal(0.02), uniform(0.12)))}
		r.Sigma = rapid.Float64Range(0.5, 30).Draw(t, "sigma")
		low := rapid.Float64Range(0, 120).Draw(t, "low")
		high := low + rapid.Float64Range(0.1, 80).Draw(t, "width")
		const n = 2000
		sum := 0.0
		for i := range n {
			sum += r.Of(low + (high-low)*(float64(i)+0.5)/n)
		}
		require.InDelta(t, sum/n, r.Over(low, high), 3e-6)
	})
}

// TestRefusalNeverRises holds that more grip is refused no more often, over all
// interferences.
func TestRefusalNeverRises(t *testing.T) {
	f := someFit
	f.Refusal = &Refusal{Push: somePush, Joint: someJoint, Contact: NewSpread(contact(144.8, normal(0.03), uniform(0.12)))}
	last := 1.0
	for i := 0.0; i < 1000; i += 0.37 {
		v := f.Refused(i)
		require.LessOrEqual(t, v, last+1e-10, i)
		last = v
	}
	for _, p := range []float64{0.999, 0.5, 0.001} {
		at, known := f.Bound(p)
		require.True(t, known)
		assert.InDelta(t, p, f.Refused(at), 1e-9)
	}
	f.Refusal = &Refusal{Push: somePush, Joint: someJoint, Contact: f.Contact}
	f.Limit = 140
	_, known := f.Bound(0.5)
	assert.False(t, known, "the limit lies before the part: everything is refused")
}

// TestAgainstSimulatedParts holds refusal, and the share of all parts that is refused,
// against parts at random: within five standard deviations of the count.
func TestAgainstSimulatedParts(t *testing.T) {
	f := someFit
	f.Refusal = &Refusal{Push: somePush, Joint: someJoint, Contact: NewSpread(contact(144.8, normal(0.03), uniform(0.12)))}
	r := rand.New(rand.NewPCG(3, 4))
	refused := func(i float64) bool {
		x := 144.8 + 0.03*r.NormFloat64() + 0.12*(2*r.Float64()-1)
		force := f.Force + f.Sigma*r.NormFloat64()
		grip := (f.FrictionLow + (f.FrictionHigh-f.FrictionLow)*r.Float64()) * f.PerMicron * i
		// The ram goes on by small steps of depth until the demand stops it.
		demand := func(z float64) float64 { return f.Drag + grip*math.Min(math.Max(z-f.Pilot, 0), f.Length) }
		at := f.Limit - (force-f.NestForce)/f.Stiffness - x // the depth at the limit
		return at < 0 || force > demand(at)
	}
	within := func(want float64, draw func() float64, what string) {
		n := 0
		for range *parts {
			if refused(draw()) {
				n++
			}
		}
		all := float64(*parts)
		assert.InDelta(t, want*all, float64(n), 5*math.Sqrt(want*(1-want)*all)+1, what)
	}
	for _, i := range []float64{0, 3, 5, 6, 7, 8, 12} {
		within(f.Refused(i), func() float64 { return i }, "interference")
	}
	raw := stack.NewSum([]stack.Term{{Row: stack.Row{Mean: 9}, Times: 1}, normal(3), uniform(1)})
	within(f.Wrongly(raw), func() float64 { return math.Max(0, 9+3*r.NormFloat64()+2*r.Float64()-1) }, "all parts")
}

// TestSpreadIsTheSum holds the table against what it was made from.
func TestSpreadIsTheSum(t *testing.T) {
	for name, s := range map[string]*stack.Sum{
		"normal": contact(3, normal(0.1)), "uniform": contact(3, uniform(0.1)), "two": contact(3, uniform(0.1), uniform(0.003)),
		"many": contact(3, uniform(0.1), uniform(0.05), uniform(0.05), normal(1e-4)), "mixed": contact(3, uniform(0.1), normal(0.02)),
	} {
		table := NewSpread(s)
		low, high := s.Support()
		for x := low - 0.01; x < high+0.01; x += (high - low) / 3333 {
			require.InDelta(t, s.Above(x), table.Above(x), 1e-9, "%s at %v", name, x)
		}
	}
}

func BenchmarkFit(b *testing.B) {
	x := contact(144.8, normal(0.03), uniform(0.12), uniform(0.015), uniform(0.008))
	raw := stack.NewSum([]stack.Term{{Row: stack.Row{Mean: 20}, Times: 1}, normal(3), uniform(1)})
	for b.Loop() {
		f := someFit
		f.Refusal = &Refusal{Push: somePush, Joint: someJoint, Contact: NewSpread(x)}
		f.Bound(0.999)
		f.Bound(0.001)
		f.Wrongly(raw)
	}
}

// TestTheTableEnds: a place of contact whose law nearly has kinks (a triangle and a flat
// law under an error of 0.05 µm) is known to 1e-9 only, finer than which no table of grips
// may be cut. Expected counts from memory of how it is cut: some leaves a panel.
func TestTheTableEnds(t *testing.T) {
	place := contact(104.53215, normal(5e-5), uniform(0.1), stack.Term{Row: stack.Row{Half: 0.01885, Shape: stack.Triangular}, Times: 1})
	f := someFit
	f.Refusal = &Refusal{Push: Push{Force: 87.5, Sigma: 2.6093, Stiffness: 21951.4044, Limit: 111.21}, Joint: Joint{Drag: 0.1818, Pilot: 4.3023, Length: 2.4772, Travel: math.Inf(1)}, Contact: NewSpread(place)}
	f.PerMicron, f.FrictionLow, f.FrictionHigh = 312.0229, 0.0334, 0.1431
	for i := 0.5; i <= 41; i += 0.5 {
		f.Refused(i)
		leaves := 0
		for _, panel := range f.panels {
			leaves += len(panel)
		}
		require.Less(t, leaves, 2000, "up to %g µm", i)
	}
}
