package paper

import "laydown/gen/quantity"

// Reading is a moisture that papers were found to have at a humidity, at room temperature.
type Reading struct {
	Humidity  quantity.Fraction
	Low, High quantity.Fraction // kg/kg dry, from the driest to the wettest
}

// Miss is how far a computed moisture lies outside the reading: negative below it, 0
// inside, positive above it.
func (r Reading) Miss(m quantity.Fraction) quantity.Fraction {
	return min(m-r.Low, 0) + max(m-r.High, 0)
}

// Handsheets are laboratory sheets of pure fibre, a dense and a loose one, on both branches:
// data published with the fibre network code of A. Brandberg (fibnetCalibrate, file
// determineRHtoMCRatio.m). They probably belong to Brandberg, Motamedian, Kulachenko and
// Hirn, International Journal of Solids and Structures (2020), on the curl of thin freely
// dried sheets (from memory). Their loop was turned at 80 %, so the branches meet there.
//
//	dense  20 % 6.83  33 % 8.12  50 %  9.50  66 % 11.29  80 % 13.95, then 66 % 12.04  50 % 11.04  33 % 8.75  20 % 7.08
//	loose  20 % 7.13  33 % 8.53  50 % 10.23  66 % 12.18  80 % 15.07, then 66 % 13.50  50 % 11.46
var Handsheets = []Reading{
	{0.20, 0.0683, 0.0713},
	{0.33, 0.0812, 0.0875},
	{0.50, 0.0950, 0.1146},
	{0.66, 0.1129, 0.1350},
	{0.80, 0.1395, 0.1507},
}

// Eucalyptus is a handsheet of eucalyptus pulp: 15.78 % at 90 %, Seelinger et al. 2024 (one
// value; 0.01 points to either side are its rounding).
var Eucalyptus = Reading{0.90, 0.15775, 0.15785}

// PrintingPapers are commercial printing papers while they take water up: K. Niskanen (ed.),
// Paper Physics (from memory). Giving it off they hold 0.5 to 1.5 points more.
var PrintingPapers = []Reading{
	{0.20, 0.030, 0.040},
	{0.50, 0.055, 0.070},
	{0.75, 0.090, 0.110},
	{0.90, 0.130, 0.160},
}
