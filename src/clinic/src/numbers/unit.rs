//! Units, what they measure, and how they turn into one another.

use super::exact::Exact;

/// What a unit measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Dimension {
    /// Mass.
    Mass,
    /// Volume.
    Volume,
    /// How much of a drug a volume holds.
    Strength,
    /// Length.
    Length,
    /// An angle.
    Angle,
    /// Temperature.
    Temperature,
    /// Time.
    Time,
    /// A part in so many.
    Share,
    /// Bacteria in a volume.
    Germs,
    /// A number of things of one kind.
    Count(&'static str),
}

impl Dimension {
    /// What it is, in a sentence: `a volume`.
    pub fn words(self) -> String {
        match self {
            Self::Mass => "a weight".into(),
            Self::Volume => "a volume".into(),
            Self::Strength => "a strength".into(),
            Self::Length => "a length".into(),
            Self::Angle => "an angle".into(),
            Self::Temperature => "a temperature".into(),
            Self::Time => "a time".into(),
            Self::Share => "a share".into(),
            Self::Germs => "a count of bacteria".into(),
            Self::Count(what) => format!("a number of {what}"),
        }
    }
}

/// A unit that may be typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unit {
    /// Kilograms.
    Kilogram,
    /// Pounds of 0.453 592 37 kg.
    Pound,
    /// Grams.
    Gram,
    /// Milligrams.
    Milligram,
    /// Micrograms.
    Microgram,
    /// Millilitres.
    Millilitre,
    /// Litres.
    Litre,
    /// Per cent: grams in 100 mL.
    Percent,
    /// Milligrams in a millilitre.
    MilligramPerMl,
    /// Micrograms in a millilitre.
    MicrogramPerMl,
    /// Millimetres.
    Millimetre,
    /// Centimetres.
    Centimetre,
    /// Degrees of angle.
    Degree,
    /// Hundredths of a circle.
    Centigrade,
    /// Degrees Celsius.
    Celsius,
    /// Degrees Fahrenheit.
    Fahrenheit,
    /// Seconds.
    Second,
    /// Minutes.
    Minute,
    /// Hours.
    Hour,
    /// Days.
    Day,
    /// Weeks.
    Week,
    /// Months of the calendar; no fixed number of days.
    Month,
    /// Years of the calendar; no fixed number of days.
    Year,
    /// Parts in a million.
    Ppm,
    /// Colony-forming units in a millilitre.
    CfuPerMl,
    /// Cartridges.
    Cartridge,
    /// Scoops.
    Scoop,
}

/// Every spelling of every unit; the first of each is the one that is shown.
const SPELLINGS: [(Unit, &[&str]); 27] = [
    (
        Unit::Kilogram,
        &["kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"],
    ),
    (Unit::Pound, &["lb", "lbs", "lb.", "pound", "pounds"]),
    (Unit::Gram, &["g", "gram", "grams"]),
    (Unit::Milligram, &["mg", "milligram", "milligrams"]),
    (
        Unit::Microgram,
        &["µg", "μg", "mcg", "ug", "microgram", "micrograms"],
    ),
    (
        Unit::Millilitre,
        &[
            "mL",
            "cc",
            "millilitre",
            "millilitres",
            "milliliter",
            "milliliters",
        ],
    ),
    (Unit::Litre, &["L", "litre", "litres", "liter", "liters"]),
    (Unit::Percent, &["%", "per cent", "percent", "pct"]),
    (Unit::MilligramPerMl, &["mg/mL", "mg per mL"]),
    (Unit::MicrogramPerMl, &["µg/mL", "μg/mL", "mcg/mL", "ug/mL"]),
    (
        Unit::Millimetre,
        &[
            "mm",
            "millimetre",
            "millimetres",
            "millimeter",
            "millimeters",
        ],
    ),
    (Unit::Centimetre, &["cm", "centimetre", "centimetres"]),
    (Unit::Degree, &["°", "deg", "degree", "degrees"]),
    (Unit::Centigrade, &["cg", "centigrade", "centigrades"]),
    (Unit::Celsius, &["°C", "C", "degC", "celsius"]),
    (Unit::Fahrenheit, &["°F", "F", "degF", "fahrenheit"]),
    (Unit::Second, &["s", "sec", "secs", "second", "seconds"]),
    (Unit::Minute, &["min", "mins", "minute", "minutes"]),
    (Unit::Hour, &["h", "hr", "hrs", "hour", "hours"]),
    (Unit::Day, &["days", "d", "day"]),
    (Unit::Week, &["weeks", "wk", "week"]),
    (Unit::Month, &["months", "month"]),
    (Unit::Year, &["years", "y", "yr", "yrs", "year"]),
    (Unit::Ppm, &["ppm"]),
    (Unit::CfuPerMl, &["CFU/mL", "CFU per mL"]),
    (
        Unit::Cartridge,
        &["cartridges", "cartridge", "cart", "carts", "carpules"],
    ),
    (Unit::Scoop, &["scoops", "scoop"]),
];

impl Unit {
    /// The unit with this spelling; capitals and small letters count the same.
    pub fn spelled(text: &str) -> Option<Self> {
        let plain = |s: &str| s.to_lowercase().split_whitespace().collect::<String>();
        let wanted = plain(text);
        SPELLINGS
            .iter()
            .find(|(_, all)| all.iter().any(|s| plain(s) == wanted))
            .map(|(unit, _)| *unit)
    }

    /// Its sign: `kg`, `mL`, `°C`.
    pub fn sign(self) -> &'static str {
        SPELLINGS
            .iter()
            .find(|(unit, _)| *unit == self)
            .and_then(|(_, all)| all.first())
            .copied()
            .unwrap_or_default()
    }

    /// What it measures.
    pub const fn dimension(self) -> Dimension {
        match self {
            Self::Kilogram | Self::Pound | Self::Gram | Self::Milligram | Self::Microgram => {
                Dimension::Mass
            }
            Self::Millilitre | Self::Litre => Dimension::Volume,
            Self::Percent | Self::MilligramPerMl | Self::MicrogramPerMl => Dimension::Strength,
            Self::Millimetre | Self::Centimetre => Dimension::Length,
            Self::Degree | Self::Centigrade => Dimension::Angle,
            Self::Celsius | Self::Fahrenheit => Dimension::Temperature,
            Self::Second | Self::Minute | Self::Hour | Self::Day | Self::Week => Dimension::Time,
            Self::Month => Dimension::Count("calendar months"),
            Self::Year => Dimension::Count("years"),
            Self::Ppm => Dimension::Share,
            Self::CfuPerMl => Dimension::Germs,
            Self::Cartridge => Dimension::Count("cartridges"),
            Self::Scoop => Dimension::Count("scoops"),
        }
    }

    /// How many of the smallest unit of its kind it makes, and what is added first:
    /// a Fahrenheit degree starts 32 lower.
    fn scale(self) -> (Exact, Exact) {
        let plain = |scale| (scale, Exact::ZERO);
        match self {
            Self::Kilogram => plain(Exact::whole(1_000_000_000)),
            Self::Pound => plain(Exact::whole(453_592_370)),
            Self::Gram => plain(Exact::whole(1_000_000)),
            Self::Milligram | Self::Litre | Self::MilligramPerMl => plain(Exact::whole(1000)),
            Self::Percent => plain(Exact::whole(10_000)),
            Self::Centimetre => plain(Exact::whole(10)),
            Self::Centigrade => plain(Exact::of(18, 5)),
            Self::Fahrenheit => (Exact::of(5, 9), Exact::whole(-32)),
            Self::Minute => plain(Exact::whole(60)),
            Self::Hour => plain(Exact::whole(3600)),
            Self::Day => plain(Exact::whole(86_400)),
            Self::Week => plain(Exact::whole(604_800)),
            _ => plain(Exact::whole(1)),
        }
    }

    /// A value in this unit, told in another; none where they measure different things.
    pub fn told_in(self, value: Exact, other: Self) -> Option<Exact> {
        if self.dimension() != other.dimension() {
            return None;
        }
        let ((scale, shift), (to_scale, to_shift)) = (self.scale(), other.scale());
        Some((value + shift) * scale / to_scale - to_shift)
    }
}

/// A number with its unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Quantity {
    /// The number.
    pub value: Exact,
    /// The unit.
    pub unit: Unit,
}

impl Quantity {
    /// Told in another unit; none where that measures something else.
    pub fn told_in(self, unit: Unit) -> Option<Exact> {
        self.unit.told_in(self.value, unit)
    }

    /// With at most so many decimals: `68.04 kg`.
    pub fn text(self, places: u32) -> String {
        format!("{} {}", self.value.text(places), self.unit.sign())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn units_turn_into_one_another_exactly() {
        // The pound is 0.453 592 37 kg by the agreement of 1959: value from memory.
        for (value, from, to, other) in [
            (
                Exact::whole(1),
                Unit::Pound,
                Unit::Kilogram,
                Exact::of(45_359_237, 100_000_000),
            ),
            (
                Exact::whole(2),
                Unit::Percent,
                Unit::MilligramPerMl,
                Exact::whole(20),
            ),
            (
                Exact::whole(121),
                Unit::Celsius,
                Unit::Fahrenheit,
                Exact::of(2498, 10),
            ),
            (
                Exact::whole(14),
                Unit::Centigrade,
                Unit::Degree,
                Exact::of(504, 10),
            ),
            (Exact::whole(2), Unit::Week, Unit::Day, Exact::whole(14)),
        ] {
            assert_eq!(from.told_in(value, to), Some(other));
            assert_eq!(to.told_in(other, from), Some(value));
        }
        assert_eq!(
            Unit::Kilogram.told_in(Exact::whole(1), Unit::Millilitre),
            None
        );
    }

    #[test]
    fn no_spelling_belongs_to_two_units() {
        for (unit, all) in SPELLINGS {
            for text in all {
                assert_eq!(Unit::spelled(text), Some(unit), "{text}");
            }
        }
    }
}
