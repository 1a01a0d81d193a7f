//! A tooth by its two-digit number, and what the other notations call it.
//!
//! The two-digit code is that of FDI and ISO 3950; the numbers 1 to 32 and the
//! letters A to T are the Universal system of the American Dental Association;
//! Palmer's system counts from the midline in each quadrant.

/// A tooth that there is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Tooth {
    /// 1 to 4 for permanent teeth, 5 to 8 for primary ones, clockwise as the dentist sees them.
    quadrant: u8,
    /// From the midline backwards: 1 to 8, or 1 to 5.
    place: u8,
}

impl Tooth {
    /// The tooth with a two-digit FDI number; none where there is no such tooth.
    pub fn from_fdi(number: u8) -> Option<Self> {
        let (quadrant, place) = (number / 10, number % 10);
        let last = match quadrant {
            1..=4 => 8,
            5..=8 => 5,
            _ => return None,
        };
        (1..=last)
            .contains(&place)
            .then_some(Self { quadrant, place })
    }

    /// All 52 teeth: permanent ones first, quarter by quarter, each from the midline.
    pub fn all() -> impl Iterator<Item = Self> {
        (11..=85).filter_map(Self::from_fdi)
    }

    /// The tooth at the same place on the other side of its jaw.
    pub fn mirrored(self) -> Option<Self> {
        let quadrant = match self.quadrant {
            odd @ (1 | 3 | 5 | 7) => odd + 1,
            even => even - 1,
        };
        Self::from_fdi(quadrant * 10 + self.place)
    }

    /// Its two-digit FDI number.
    pub fn fdi(self) -> u8 {
        self.quadrant * 10 + self.place
    }

    /// Whether it is a primary tooth.
    pub fn is_primary(self) -> bool {
        self.quadrant > 4
    }

    /// Whether it stands in the upper jaw.
    pub fn is_upper(self) -> bool {
        matches!(self.quadrant, 1 | 2 | 5 | 6)
    }

    /// Whether it stands on the patient's right.
    pub fn is_right(self) -> bool {
        matches!(self.quadrant, 1 | 4 | 5 | 8)
    }

    /// Its place from the midline, from 1.
    pub fn place(self) -> u8 {
        self.place
    }

    /// Its number or letter in the Universal system: `3`, `T`.
    pub fn universal(self) -> String {
        let place = self.place;
        match self.quadrant {
            1 => (9 - place).to_string(),
            2 => (8 + place).to_string(),
            3 => (25 - place).to_string(),
            4 => (24 + place).to_string(),
            5 => letter(6 - place),
            6 => letter(5 + place),
            7 => letter(16 - place),
            _ => letter(15 + place),
        }
    }

    /// Palmer's sign in words: `upper right 6`, `lower left E`.
    pub fn palmer(self) -> String {
        let sign = if self.is_primary() {
            letter(self.place)
        } else {
            self.place.to_string()
        };
        format!("{} {sign}", self.side())
    }

    /// What it is called: `upper right first molar`.
    pub fn name(self) -> String {
        let kind = match (self.is_primary(), self.place) {
            (_, 1) => "central incisor",
            (_, 2) => "lateral incisor",
            (_, 3) => "canine",
            (false, 4) => "first premolar",
            (false, 5) => "second premolar",
            (false, 6) | (true, 4) => "first molar",
            (false, 7) | (true, 5) => "second molar",
            _ => "third molar",
        };
        let primary = if self.is_primary() { "primary " } else { "" };
        format!("{} {primary}{kind}", self.side())
    }

    fn side(self) -> &'static str {
        match (self.is_upper(), self.is_right()) {
            (true, true) => "upper right",
            (true, false) => "upper left",
            (false, false) => "lower left",
            (false, true) => "lower right",
        }
    }
}

/// The letter at a place of the alphabet, from 1.
fn letter(place: u8) -> String {
    char::from(b'A' + place.saturating_sub(1)).to_string()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn notations_agree() {
        // ISO 3950 and the Universal system, by arithmetic from their definitions;
        // Palmer's signs: value from memory.
        for (fdi, universal, palmer, name) in [
            (11, "8", "upper right 1", "upper right central incisor"),
            (18, "1", "upper right 8", "upper right third molar"),
            (16, "3", "upper right 6", "upper right first molar"),
            (21, "9", "upper left 1", "upper left central incisor"),
            (26, "14", "upper left 6", "upper left first molar"),
            (36, "19", "lower left 6", "lower left first molar"),
            (38, "17", "lower left 8", "lower left third molar"),
            (46, "30", "lower right 6", "lower right first molar"),
            (48, "32", "lower right 8", "lower right third molar"),
            (55, "A", "upper right E", "upper right primary second molar"),
            (
                51,
                "E",
                "upper right A",
                "upper right primary central incisor",
            ),
            (
                61,
                "F",
                "upper left A",
                "upper left primary central incisor",
            ),
            (65, "J", "upper left E", "upper left primary second molar"),
            (75, "K", "lower left E", "lower left primary second molar"),
            (
                71,
                "O",
                "lower left A",
                "lower left primary central incisor",
            ),
            (
                81,
                "P",
                "lower right A",
                "lower right primary central incisor",
            ),
            (85, "T", "lower right E", "lower right primary second molar"),
        ] {
            let tooth = Tooth::from_fdi(fdi).unwrap();
            assert_eq!(tooth.universal(), universal, "{fdi}");
            assert_eq!(tooth.palmer(), palmer, "{fdi}");
            assert_eq!(tooth.name(), name, "{fdi}");
            assert_eq!(tooth.fdi(), fdi);
        }
    }

    #[test]
    fn there_are_52_teeth() {
        let all = (0..=u8::MAX).filter_map(Tooth::from_fdi).count();
        assert_eq!(all, 32 + 20);
        assert_eq!(Tooth::all().count(), all);
    }

    #[test]
    fn the_other_side_of_a_jaw() {
        for (fdi, other) in [(16, 26), (26, 16), (31, 41), (48, 38), (55, 65), (85, 75)] {
            let tooth = Tooth::from_fdi(fdi).and_then(Tooth::mirrored);
            assert_eq!(tooth, Tooth::from_fdi(other));
        }
    }
}
