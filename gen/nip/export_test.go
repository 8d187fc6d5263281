package nip

// The passes of the tests, for the tests outside the package.
var (
	WideHot, Encapsulator, Drum, Cold, Shoe = wideHot, encapsulator, drum, cold, shoe
	Celsius                                 = celsius
	Realistic                               = realistic
)
