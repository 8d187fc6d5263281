package curl

import "math"

// Vector holds what belongs to the feed, to across the feed, and to shear: strains,
// curvatures, forces, moments. Shear strain and twist are the engineer's, twice the
// tensor's.
type Vector [3]float64

// Matrix is a stiffness between two vectors.
type Matrix [3][3]float64

func (v Vector) plus(w Vector) Vector {
	return Vector{v[0] + w[0], v[1] + w[1], v[2] + w[2]}
}

func (v Vector) minus(w Vector) Vector {
	return Vector{v[0] - w[0], v[1] - w[1], v[2] - w[2]}
}

func (v Vector) times(f float64) Vector { return Vector{v[0] * f, v[1] * f, v[2] * f} }

func (v Vector) dot(w Vector) float64 { return v[0]*w[0] + v[1]*w[1] + v[2]*w[2] }

func (m Matrix) apply(v Vector) Vector {
	return Vector{Vector(m[0]).dot(v), Vector(m[1]).dot(v), Vector(m[2]).dot(v)}
}

func (m Matrix) times(n Matrix) Matrix {
	var p Matrix
	for i := range 3 {
		for j := range 3 {
			p[i][j] = m[i][0]*n[0][j] + m[i][1]*n[1][j] + m[i][2]*n[2][j]
		}
	}
	return p
}

func (m Matrix) minus(n Matrix) Matrix {
	for i := range 3 {
		for j := range 3 {
			m[i][j] -= n[i][j]
		}
	}
	return m
}

// add puts f·n on top of m.
func (m *Matrix) add(f float64, n Matrix) {
	for i := range 3 {
		for j := range 3 {
			m[i][j] += f * n[i][j]
		}
	}
}

// inverse is by cofactors; false for a matrix that has none.
func (m Matrix) inverse() (Matrix, bool) {
	var c Matrix
	for i := range 3 {
		for j := range 3 {
			a, b := (i+1)%3, (i+2)%3
			d, e := (j+1)%3, (j+2)%3
			c[j][i] = m[a][d]*m[b][e] - m[a][e]*m[b][d]
		}
	}
	det := m[0][0]*c[0][0] + m[0][1]*c[1][0] + m[0][2]*c[2][0]
	if det == 0 || math.IsNaN(det) || math.IsInf(det, 0) {
		return Matrix{}, false
	}
	for i := range 3 {
		for j := range 3 {
			c[i][j] /= det
		}
	}
	return c, true
}
