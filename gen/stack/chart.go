package stack

import (
	"math"

	"laydown/gen/quantity"
)

// Conditioning is a row of published times for which wrapped paper is to stay wrapped
// in the room.
type Conditioning struct {
	Volume quantity.Volume
	Roll   bool
	// Hours is by the difference between paper and room, in the order of
	// ConditioningDifferences; 0 where the source gives none.
	Hours  [7]float64
	Doubt  int // 1 + the index of a figure that looks like a misprint; 0 none
	Source string
}

// FromMemory says that no reprint of the row was seen.
func (c Conditioning) FromMemory() bool { return c.Source == fromMemory }

// ConditioningDifferences are the columns: 10, 15, 20, 25, 30, 40 and 50 °F.
var ConditioningDifferences = [7]quantity.TemperatureDifference{
	10 * fahrenheit, 15 * fahrenheit, 20 * fahrenheit, 25 * fahrenheit, 30 * fahrenheit, 40 * fahrenheit, 50 * fahrenheit,
}

const (
	fahrenheit quantity.TemperatureDifference = 5.0 / 9
	cubicFoot                                 = 0.3048 * 0.3048 * 0.3048
)

const (
	oneBulletin      = "conditioning chart for wrapped paper, as one paper merchant's or printer's bulletin has it"
	severalBulletins = "conditioning chart for wrapped paper, as two or more paper merchants' and printers' bulletins have it"
	fromMemory       = "conditioning chart for wrapped paper: this line from memory"
)

// ConditioningChart is the published chart. Nobody states which nearness to the room
// its hours stand for, how the parcels were shaped and wrapped, or whether they were
// measured. So it stands beside what is computed, and is no check of it. Its 60 °F
// column is left out: in the reprints most of it is shorter than the 50 °F one. The
// figure in doubt, 17 h, breaks its own row's rise and may be 19. Last come three
// larger lines that no reprint seen has.
var ConditioningChart = []Conditioning{
	{4.9 * cubicFoot, true, [7]float64{5, 9, 12, 15, 18, 25, 35}, 0, oneBulletin},
	{6 * cubicFoot, false, [7]float64{5, 9, 12, 15, 18, 25, 0}, 0, oneBulletin},
	{8.5 * cubicFoot, true, [7]float64{7, 11, 15, 18, 22, 29, 43}, 0, oneBulletin},
	{12 * cubicFoot, false, [7]float64{8, 14, 18, 22, 27, 38, 51}, 0, severalBulletins},
	{19 * cubicFoot, true, [7]float64{10, 15, 17, 25, 31, 43, 59}, 3, oneBulletin},
	{24 * cubicFoot, false, [7]float64{11, 16, 23, 28, 35, 48, 67}, 0, fromMemory},
	{48 * cubicFoot, false, [7]float64{14, 19, 26, 32, 38, 54, 75}, 0, fromMemory},
	{96 * cubicFoot, false, [7]float64{15, 20, 27, 34, 41, 57, 79}, 0, fromMemory},
}

// PalletHours are two more published sets, by difference in kelvin. They contradict
// each other: the second is a pallet of 750 kg.
var PalletHours = []struct {
	Difference    quantity.TemperatureDifference
	First, Second float64 // hours; 0 where the source gives none
}{
	{5, 12, 0}, {10, 24, 24}, {15, 0, 40}, {20, 48, 75}, {25, 64, 90},
}

// PalletVolume is that of the first set's pallet.
const PalletVolume quantity.Volume = 0.6

// RollVolume is the volume of a roll, as the chart's users are told to take it: with
// its core, π/4·D²·L.
func RollVolume(diameter, width quantity.Length) quantity.Volume {
	return quantity.Volume(math.Pi / 4 * float64(diameter*diameter*width))
}

// Compared is one figure of the chart beside what is computed for it.
type Compared struct {
	Conditioning
	Difference quantity.TemperatureDifference
	Doubtful   bool // the figure looks like a misprint
	Published  quantity.Time
	// Core is what is computed for the core, Faces what the faces alone would take if
	// the paper conducted perfectly (Acclimatised.Lumped).
	Core, Faces quantity.Time
	// CoreLeft and MeanLeft are by how much the core, and the parcel on the mean, still
	// differ from the room after the published hours.
	CoreLeft, MeanLeft quantity.TemperatureDifference
}

// Ratio is what is computed for the core over what is published.
func (c Compared) Ratio() float64 { return float64(c.Core / c.Published) }

// Compare computes each figure of the chart for a cube of the row's volume made of the
// parcel's paper and in its wrap (its sizes are not used), warming up in a room until
// its core is within a difference of it.
func Compare(p Parcel, room Room, within quantity.TemperatureDifference) ([]Compared, error) {
	var list []Compared
	for _, row := range ConditioningChart {
		side := quantity.Length(math.Cbrt(float64(row.Volume)))
		p.Length, p.Width, p.Height = side, side, side
		for i, hours := range row.Hours {
			if hours == 0 {
				continue
			}
			d := ConditioningDifferences[i]
			a, err := p.Within(room.Temperature-quantity.Temperature(d), room, within)
			if err != nil {
				return nil, err
			}
			published := quantity.Time(hours) * quantity.Hour
			core, mean := a.Left(published)
			list = append(list, Compared{row, d, row.Doubt == i+1, published, a.Time, a.Lumped,
				d * quantity.TemperatureDifference(core), d * quantity.TemperatureDifference(mean)})
		}
	}
	return list, nil
}
