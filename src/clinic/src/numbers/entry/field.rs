//! Reading a quantity: a number in a unit, within a range.

use super::{Refusal, number, refuse};
use crate::numbers::{
    exact::Exact,
    unit::{Quantity, Unit},
};

/// What one box takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Field {
    /// What is asked: `weight`.
    pub what: &'static str,
    /// The unit that is shown.
    pub unit: Unit,
    /// Whether a number without a unit is taken in the unit shown. Not where
    /// two units are usual, as with weight: nobody can tell which was meant.
    pub bare: bool,
    /// The least that makes sense, in the unit shown.
    pub from: Exact,
    /// The most that makes sense, in the unit shown.
    pub to: Exact,
    /// An entry that is taken.
    pub example: &'static str,
}

/// A patient's weight.
pub const WEIGHT: Field = Field {
    what: "weight",
    unit: Unit::Kilogram,
    bare: false,
    from: Exact::whole(3),
    to: Exact::whole(250),
    example: "70 kg or 154 lb",
};

/// What a cartridge holds.
pub const VOLUME: Field = Field {
    what: "volume of a cartridge",
    unit: Unit::Millilitre,
    bare: true,
    from: Exact::of(1, 2),
    to: Exact::of(5, 2),
    example: "1.7 mL",
};

/// The strength of a solution.
pub const STRENGTH: Field = Field {
    what: "strength",
    unit: Unit::Percent,
    bare: false,
    from: Exact::of(1, 10),
    to: Exact::whole(10),
    example: "2 % or 20 mg/mL",
};

/// A number of cartridges, with halves and quarters.
pub const CARTRIDGES: Field = Field {
    what: "number of cartridges",
    unit: Unit::Cartridge,
    bare: true,
    from: Exact::of(1, 10),
    to: Exact::whole(30),
    example: "2 or 1.5",
};

/// An age.
pub const AGE: Field = Field {
    what: "age",
    unit: Unit::Year,
    bare: true,
    from: Exact::ZERO,
    to: Exact::whole(120),
    example: "8 years",
};

/// The temperature of a steriliser.
pub const TEMPERATURE: Field = Field {
    what: "temperature",
    unit: Unit::Celsius,
    bare: false,
    from: Exact::whole(-50),
    to: Exact::whole(300),
    example: "121 °C or 250 °F",
};

/// An amount of powder.
pub const AMOUNT: Field = Field {
    what: "amount of powder",
    unit: Unit::Gram,
    bare: true,
    from: Exact::whole(1),
    to: Exact::whole(5000),
    example: "100 g",
};

impl Field {
    /// Reads an entry and tells it in the unit shown, beside what was typed.
    ///
    /// # Errors
    /// A sentence, if it is no number, in a unit that measures something else,
    /// without the unit it needs, or outside the range.
    pub fn read(&self, text: &str) -> Result<(Exact, Quantity), Refusal> {
        let (number, unit) = self.parts(text)?;
        let typed = Quantity {
            value: number,
            unit,
        };
        let Some(value) = typed.told_in(self.unit) else {
            return refuse(format!(
                "{} measures {}. The {} is {} in {}: {}.",
                unit.sign(),
                unit.dimension().words(),
                self.what,
                self.unit.dimension().words(),
                self.unit.sign(),
                self.example
            ));
        };
        if self.from >= Exact::ZERO && value < Exact::ZERO {
            return refuse(format!("The {} cannot be below zero.", self.what));
        }
        if self.from > Exact::ZERO && value == Exact::ZERO {
            return refuse(format!("The {} cannot be zero.", self.what));
        }
        if value < self.from || value > self.to {
            return Err(self.outside(typed, value));
        }
        Ok((value, typed))
    }

    /// The range in words: `3 to 250 kg`.
    pub fn range(&self) -> String {
        format!(
            "{} to {} {}",
            self.from.text(2),
            self.to.text(2),
            self.unit.sign()
        )
    }

    fn outside(&self, typed: Quantity, value: Exact) -> Refusal {
        let told = if typed.unit == self.unit {
            String::new()
        } else {
            format!(", which is {} {},", value.text(3), self.unit.sign())
        };
        Refusal(format!(
            "{}{told} is outside what is taken for the {}: {}. Check the number and its unit.",
            typed.text(6),
            self.what,
            self.range()
        ))
    }

    fn parts(&self, text: &str) -> Result<(Exact, Unit), Refusal> {
        let text = text.trim();
        let starts = |c: char| !(c.is_ascii_digit() || ".,'’+-−–".contains(c) || c.is_whitespace());
        let at = text.find(starts).unwrap_or(text.len());
        let (digits, unit) = (text[..at].trim(), text[at..].trim());
        if digits.is_empty() && !unit.is_empty() {
            return refuse(format!("A number comes first: {}.", self.example));
        }
        let value = number(digits)?;
        if unit.is_empty() {
            if self.bare {
                return Ok((value, self.unit));
            }
            return refuse(format!(
                "The unit is missing, and more than one is usual for the {}. Write {}.",
                self.what, self.example
            ));
        }
        match Unit::spelled(unit) {
            Some(unit) => Ok((value, unit)),
            None => refuse(format!(
                "'{unit}' is no unit that is known here. Write {}.",
                self.example
            )),
        }
    }
}

/// A patient's weight, and the unit it was given in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Weight {
    kg: Exact,
    typed: Quantity,
}

impl Weight {
    /// Reads a weight such as `70 kg` or `154 lb`.
    ///
    /// # Errors
    /// A sentence, as [`Field::read`] gives.
    pub fn read(text: &str) -> Result<Self, Refusal> {
        let (kg, typed) = WEIGHT.read(text)?;
        Ok(Self { kg, typed })
    }

    /// In kilograms.
    pub fn kg(self) -> Exact {
        self.kg
    }

    /// In pounds, where it was given so.
    pub fn pounds(self) -> Option<Exact> {
        (self.typed.unit == Unit::Pound).then_some(self.typed.value)
    }

    /// As it was given.
    pub fn typed(self) -> Quantity {
        self.typed
    }
}

/// What a cartridge holds, in millilitres.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Volume(Exact);

impl Volume {
    /// Reads a volume such as `1.7 mL`.
    ///
    /// # Errors
    /// A sentence, as [`Field::read`] gives.
    pub fn read(text: &str) -> Result<Self, Refusal> {
        Ok(Self(VOLUME.read(text)?.0))
    }

    /// A volume that the catalogue states, in mL.
    pub fn stated(value: catalogue::quantity::Milli) -> Self {
        Self(value.into())
    }

    /// In millilitres.
    pub fn ml(self) -> Exact {
        self.0
    }
}

/// The strength of a solution, in milligrams in a millilitre.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Strength(Exact);

impl Strength {
    /// Reads a strength such as `2 %` or `20 mg/mL`.
    ///
    /// # Errors
    /// A sentence, as [`Field::read`] gives.
    pub fn read(text: &str) -> Result<Self, Refusal> {
        let (percent, _) = STRENGTH.read(text)?;
        Ok(Self(percent * Exact::whole(10)))
    }

    /// A strength in per cent that the catalogue states.
    pub fn percent(value: catalogue::quantity::Milli) -> Self {
        Self(Exact::from(value) * Exact::whole(10))
    }

    /// In milligrams in a millilitre.
    pub fn mg_per_ml(self) -> Exact {
        self.0
    }

    /// In per cent.
    pub fn in_percent(self) -> Exact {
        self.0 / Exact::whole(10)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quantities_are_understood() {
        for (field, text, over, under) in [
            (WEIGHT, "70 kg", 70, 1),
            (WEIGHT, "70kg", 70, 1),
            (WEIGHT, "70,5 KG", 141, 2),
            (WEIGHT, "154 lb", 154 * 45_359_237, 100_000_000),
            (WEIGHT, "154 lbs", 154 * 45_359_237, 100_000_000),
            (WEIGHT, "70 000 g", 70, 1),
            (VOLUME, "1.7 mL", 17, 10),
            (VOLUME, "1,8 ml", 18, 10),
            (VOLUME, "1.7", 17, 10),
            (VOLUME, "0,0018 L", 18, 10),
            (STRENGTH, "2 %", 2, 1),
            (STRENGTH, "2%", 2, 1),
            (STRENGTH, "0,5 per cent", 1, 2),
            (STRENGTH, "20 mg/mL", 2, 1),
            (STRENGTH, "20 mg / ml", 2, 1),
            (CARTRIDGES, "2 cartridges", 2, 1),
            (CARTRIDGES, "1.5", 3, 2),
            (TEMPERATURE, "250 °F", 1090, 9),
            (TEMPERATURE, "121 C", 121, 1),
        ] {
            let value = field.read(text).map(|(value, _)| value);
            assert_eq!(value, Ok(Exact::of(over, under)), "{text}");
        }
    }

    #[test]
    fn the_rest_is_refused_with_the_reason() {
        for (field, text, words) in [
            (WEIGHT, "70", "unit is missing"),
            (WEIGHT, "70 mL", "mL measures a volume"),
            (WEIGHT, "0 kg", "cannot be zero"),
            (WEIGHT, "-70 kg", "below zero"),
            (WEIGHT, "700 kg", "outside"),
            (WEIGHT, "2 kg", "outside"),
            (WEIGHT, "70 g", "which is 0.07 kg"),
            (WEIGHT, "70 stone", "'stone' is no unit"),
            (WEIGHT, "about 70 kg", "number comes first"),
            (WEIGHT, "1,700 kg", "1.700 or as 1700"),
            (WEIGHT, "kg", "number comes first"),
            (WEIGHT, "", "Nothing"),
            (WEIGHT, "60-70 kg", "range"),
            (VOLUME, "18 mL", "outside"),
            (VOLUME, "1.7 mg", "mg measures a weight"),
            (VOLUME, "1,800 mL", "1.800 or as 1800"),
            (STRENGTH, "2", "unit is missing"),
            (STRENGTH, "20 %", "outside"),
            (STRENGTH, "20 mg", "mg measures a weight"),
            (CARTRIDGES, "0", "cannot be zero"),
            (CARTRIDGES, "2 mL", "mL measures a volume"),
            (TEMPERATURE, "121", "unit is missing"),
            (TEMPERATURE, "121 °", "° measures an angle"),
        ] {
            let refusal = field.read(text).expect_err(text);
            assert!(refusal.0.contains(words), "{text}: {refusal}");
        }
    }
}
