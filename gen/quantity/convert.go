package quantity

// Handy sizes. Multiply: 75*quantity.Micrometre.
const (
	Micrometre Length = 1e-6
	Millimetre Length = 1e-3
	Metre      Length = 1
	Mil        Length = inch / 1000
	Inch       Length = inch
	Foot       Length = foot

	Second Time = 1
	Minute Time = minute
	Hour   Time = hour
	Day    Time = day

	MetrePerSecond Speed = 1
	MetrePerMinute Speed = 1 / minute
	FootPerMinute  Speed = foot / minute

	Pascal     Pressure = 1
	Kilopascal Pressure = 1e3
	Megapascal Pressure = 1e6
	Gigapascal Pressure = 1e9

	Gram               Mass     = 1e-3
	Kilogram           Mass     = 1
	GramPerSquareMetre Grammage = 1e-3
	GramPerCubicMetre  Density  = 1e-3

	NewtonPerMillimetre LineLoad = 1e3

	Percent Fraction = 0.01

	GramPerMole      MolarMass   = 1e-3
	KilojoulePerMole MolarEnergy = 1e3

	PerHour Rate = 1 / hour

	MillinewtonPerMetre SurfaceTension = 1e-3

	// ZeroCelsius is 0 °C.
	ZeroCelsius Temperature = 273.15
)

// FromCelsius gives the temperature of c degrees Celsius.
func FromCelsius(c float64) Temperature { return Temperature(c + 273.15) }

// FromFahrenheit gives the temperature of f degrees Fahrenheit.
func FromFahrenheit(f float64) Temperature { return Temperature((f + 459.67) * 5 / 9) }

// Celsius gives the temperature in degrees Celsius.
func (t Temperature) Celsius() float64 { return float64(t) - 273.15 }

// Fahrenheit gives the temperature in degrees Fahrenheit.
func (t Temperature) Fahrenheit() float64 { return float64(t)*9/5 - 459.67 }

// Minus gives the difference t − u.
func (t Temperature) Minus(u Temperature) TemperatureDifference {
	return TemperatureDifference(t - u)
}

// Plus gives the temperature that lies a difference away.
func (t Temperature) Plus(d TemperatureDifference) Temperature {
	return t + Temperature(d)
}

// Hours gives the time in hours.
func (t Time) Hours() float64 { return float64(t / Hour) }

// Minutes gives the time in minutes.
func (t Time) Minutes() float64 { return float64(t / Minute) }

// Days gives the time in days.
func (t Time) Days() float64 { return float64(t / Day) }

// Micrometres gives the length in micrometres.
func (l Length) Micrometres() float64 { return float64(l) * 1e6 }

// Millimetres gives the length in millimetres.
func (l Length) Millimetres() float64 { return float64(l) * 1e3 }

// GramsPerSquareMetre gives the grammage in g/m².
func (g Grammage) GramsPerSquareMetre() float64 { return float64(g) * 1e3 }

// Percent gives the fraction in per cent.
func (f Fraction) Percent() float64 { return float64(f) * 100 }
