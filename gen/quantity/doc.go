// Package quantity gives every number of the handbook its unit: it reads
// quantities as they stand on data sheets ("75 µm", "3 mil", "240 °F"), converts
// them to SI, and prints them in metric and imperial units with sensible digits.
//
// A kind of quantity is a Go type, so that a length cannot be taken for a time,
// nor a temperature for a difference of temperatures. Inside, everything is SI.
//
// Conversion factors are exact by definition where the international yard and
// pound agreement of 1959 and the SI define them so (1 in = 0.0254 m,
// 1 lb = 0.45359237 kg, standard gravity 9.80665 m/s²); see NIST Special
// Publication 811, appendix B. A gallon and a fluid ounce are those of the
// United States.
package quantity
