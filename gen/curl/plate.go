package curl

import (
	"errors"
	"fmt"
)

// Stiffness is what a laminate sets against strain and curvature: A in N/m, B in N,
// D in N·m, about its middle plane.
type Stiffness struct{ A, B, D Matrix }

// Plate is the free response of a laminate as laminate theory has it: small
// curvature, no weight, no edges.
type Plate struct {
	Stiffness
	// Force N* and Moment M* are those of the layers' free strains, N/m and N.
	Force, Moment Vector
	// Strain is of the middle plane, Curvature in 1/m. Curvature above 0: the upper
	// side is the longer one, and edges go down.
	Strain, Curvature Vector
	// Bending D* and Drive M′ are left when the middle plane may strain as it
	// likes: D − B·A⁻¹·B and M* − B·A⁻¹·N*.
	Bending Matrix
	Drive   Vector
	// Energy that stays in the layers, and FlatEnergy when the sheet is pressed
	// flat, J/m².
	Energy, FlatEnergy float64
	// FlatStrain is the strain of the sheet pressed flat.
	FlatStrain Vector

	layers       []Layer
	free         []Vector
	soft, supple Matrix // A⁻¹ and D*⁻¹
}

// NewPlate solves a laminate, its layers from the lowest to the uppermost, for free
// strains of its layers.
func NewPlate(layers []Layer, free []Vector) (*Plate, error) {
	if len(layers) == 0 {
		return nil, errors.New("a laminate has at least one layer")
	}
	if len(free) != len(layers) {
		return nil, fmt.Errorf("%d free strains for %d layers", len(free), len(layers))
	}
	p := &Plate{layers: layers, free: free}
	bottom := 0.0
	for i := range layers {
		if err := layers[i].check(); err != nil {
			return nil, err
		}
		bottom -= float64(layers[i].Thickness) / 2
	}
	locked := 0.0 // ½ Σ t·fᵀ·Q̄·f
	for i := range layers {
		t := float64(layers[i].Thickness)
		mid := bottom + t/2
		q := layers[i].turned()
		p.A.add(t, q)
		p.B.add(t*mid, q)
		p.D.add(t*(mid*mid+t*t/12), q)
		qf := q.apply(free[i])
		p.Force = p.Force.plus(qf.times(t))
		p.Moment = p.Moment.plus(qf.times(t * mid))
		locked += t * free[i].dot(qf) / 2
		bottom += t
	}
	a, ok := p.A.inverse()
	if !ok {
		return nil, errors.New("the laminate's stiffness has no inverse")
	}
	ba := p.B.times(a)
	p.Bending = p.D.minus(ba.times(p.B))
	p.Drive = p.Moment.minus(ba.apply(p.Force))
	d, ok := p.Bending.inverse()
	if !ok {
		return nil, errors.New("the laminate's bending stiffness has no inverse")
	}
	p.soft, p.supple = a, d
	p.Strain, p.Curvature = p.Load(Vector{}, Vector{})
	p.FlatStrain = a.apply(p.Force)
	p.FlatEnergy = locked - p.Force.dot(p.FlatStrain)/2
	p.Energy = p.FlatEnergy - p.Drive.dot(p.Curvature)/2
	return p, nil
}

// Load is the plate's strain and curvature when forces (N/m) and moments (N) pull at
// its edges as well.
func (p *Plate) Load(force, moment Vector) (strain, curvature Vector) {
	n, m := p.Force.plus(force), p.Moment.plus(moment)
	curvature = p.supple.apply(m.minus(p.B.times(p.soft).apply(n)))
	return p.soft.apply(n.minus(p.B.apply(curvature))), curvature
}

// EnergyAt is what the layers hold when the sheet has a curvature everywhere and
// its middle plane strains as it likes, J/m².
func (p *Plate) EnergyAt(curvature Vector) float64 {
	return p.FlatEnergy + curvature.dot(p.Bending.apply(curvature))/2 - curvature.dot(p.Drive)
}

// Stress in a layer (0 the lowest) of the free plate, at a height within it: 0 its
// underside, 1 its upper side. Pa, along and across the feed.
func (p *Plate) Stress(layer int, height float64) Vector {
	z := 0.0
	for i := range p.layers {
		z -= float64(p.layers[i].Thickness) / 2
	}
	for i := range layer {
		z += float64(p.layers[i].Thickness)
	}
	z += height * float64(p.layers[layer].Thickness)
	strain := p.Strain.plus(p.Curvature.times(z)).minus(p.free[layer])
	return p.layers[layer].turned().apply(strain)
}

// FlatForce is the force in a layer of the sheet pressed flat, N/m: below 0 it is
// compressed.
func (p *Plate) FlatForce(layer int) Vector {
	l := &p.layers[layer]
	return l.turned().apply(p.FlatStrain.minus(p.free[layer])).times(float64(l.Thickness))
}
