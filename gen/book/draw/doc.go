// Package draw makes the handbook's drawings as SVG text: curves against a
// limit, the marks of the four verdicts, and the layers of a film on a print.
//
// A drawing carries no colours and no style attributes. It has classes, and
// the style sheet gives these their ink in light, in dark and in print. Every
// drawing that says something has a title and a description made from its own
// numbers, and its labels stand on the drawing and not in a box beside it.
// Numbers are rounded to a tenth of a unit before they are written, so equal
// input gives equal text on every machine.
package draw
