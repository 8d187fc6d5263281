package drying

import "math"

// handover is the Fourier number at which Left passes from half spaces to modes.
//
// The half spaces' error there is proven below 20·√Fo·ierfc(1/(2√Fo)) = 3e-13:
// read the share lost from x as the chance that a Brownian particle that starts
// at x and is taken at the faces at rates B has been taken. A particle's path in the
// layer is the path in the half space of one face until it has met both faces,
// and from x it must go 1 + x or 2 − x to do that: chance at most
// 2·erfc((1+x)/(2√Fo)) + 2·erfc((2−x)/(2√Fo)), an error of at most 2 each, over
// the layer 16·√Fo·ierfc. The half spaces also count what particles from beyond
// the layer lose: at most 2√Fo·ierfc for each of two. The modes' error there is
// below exp(−(20π)²·0.01) = 7e-18 with LeftModes modes.
const handover = 0.01

// Left is the share of a uniform content that is left at Fourier number fo: 1 at
// fo = 0, falling to 0 unless both faces are sealed.
//
// Before Fo = 0.01 each face counts as the face of a half space; from there on
// the modes are summed. With LeftModes modes or more the error is below 1e-12 at
// every fo.
func (m *Modes) Left(fo float64) float64 {
	if fo <= 0 {
		return 1
	}
	if fo < handover {
		return 1 - halfSpaceLoss(m.Face, fo) - halfSpaceLoss(m.Back, fo)
	}
	sum := 0.0
	for n, b := range m.Beta {
		decay := math.Exp(-b * b * fo)
		if decay == 0 {
			break
		}
		sum += m.Mean[n] * m.Mean[n] / m.Norm[n] * decay
	}
	return sum
}

// Leaving is what leaves through the face and through the back per Fourier number
// at fo > 0, as shares of the uniform content at the start.
func (m *Modes) Leaving(fo float64) (face, back float64) {
	if fo < handover {
		return halfSpaceFlux(m.Face, fo), halfSpaceFlux(m.Back, fo)
	}
	sign := 1.0
	for n, b := range m.Beta {
		a := m.Mean[n] / m.Norm[n] * math.Exp(-b*b*fo)
		// B·X_n at a face is β·sin of that face's phase.
		if b > 0 {
			face += sign * a * b * sine(m.Face, b)
			back += a * b * sine(m.Back, b)
		}
		sign = -sign
	}
	return face, back
}
