//! How well a word fits the word that is sought.

/// How a word fits.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Fit {
    /// It is the word sought.
    Same,
    /// It begins with it; with so many letters to come.
    Begins(usize),
    /// The word sought stands within it.
    Within,
    /// It is so many slips away.
    Near(usize),
    /// It is another word.
    None,
}

impl Fit {
    /// How much it counts for, from 0 to 100.
    pub fn worth(self) -> u32 {
        match self {
            Self::Same => 100,
            Self::Begins(more) => 80_u32
                .saturating_sub(3 * u32::try_from(more).unwrap_or(20))
                .max(50),
            Self::Within => 35,
            Self::Near(1) => 45,
            Self::Near(_) => 25,
            Self::None => 0,
        }
    }
}

/// The shortest word within which slips are forgiven, and the shortest that
/// may stand within another.
const LEAST: usize = 4;

/// The longest word that is compared; more letters are not looked at.
const MOST: usize = 24;

/// How well `word` fits what is `sought`; both in the form of the index.
pub(super) fn fit(sought: &str, word: &str) -> Fit {
    if word.starts_with(sought) {
        return match word.len() - sought.len() {
            0 => Fit::Same,
            more => Fit::Begins(more),
        };
    }
    if sought.len() < LEAST || sought.bytes().any(|b| b.is_ascii_digit()) {
        return Fit::None;
    }
    if word.contains(sought) {
        return Fit::Within;
    }
    let allowed = if sought.len() < 7 { 1 } else { 2 };
    // A word shorter by more than the slips cannot be near, and one that is
    // begun with a slip has to be longer than a few letters to be known by.
    if word.len() + allowed < sought.len() {
        return Fit::None;
    }
    slips(sought.as_bytes(), word.as_bytes(), allowed).map_or(Fit::None, Fit::Near)
}

/// The fewest slips between what is sought and the word, or its beginning if
/// five letters or more are sought: a letter left out, put in, changed, or two
/// changed about. Nothing if more than `allowed`.
fn slips(sought: &[u8], word: &[u8], allowed: usize) -> Option<usize> {
    let sought = &sought[..sought.len().min(MOST)];
    let begun = sought.len() > LEAST;
    let columns = word.len().min(sought.len() + allowed);
    if !begun && word.len() > columns {
        return None;
    }
    let start: [usize; MOST + 3] = std::array::from_fn(|at| at);
    let (mut before, mut last) = (start, start);
    for (i, letter) in sought.iter().enumerate() {
        let mut row = [i + 1; MOST + 3];
        let mut least = i + 1;
        for j in 1..=columns {
            let same = *letter == word[j - 1];
            let mut slips = (last[j] + 1)
                .min(row[j - 1] + 1)
                .min(last[j - 1] + usize::from(!same));
            if i > 0 && j > 1 && *letter == word[j - 2] && sought[i - 1] == word[j - 1] {
                slips = slips.min(before[j - 2] + 1);
            }
            row[j] = slips;
            least = least.min(slips);
        }
        if least > allowed {
            return None;
        }
        (before, last) = (last, row);
    }
    let whole = (columns == word.len()).then_some(last[columns]);
    let beginning = begun
        .then(|| last[..=columns].iter().copied().min())
        .flatten();
    let fewest = whole.into_iter().chain(beginning).min()?;
    (fewest <= allowed).then_some(fewest)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_word_fits_by_what_was_typed() {
        for (sought, word, fits) in [
            ("spoon", "spoon", Fit::Same),
            ("spo", "spoon", Fit::Begins(2)),
            ("apse", "relapsed", Fit::Within),
            ("pon", "spoon", Fit::None),
            // Left out, put in, changed, changed about.
            ("spon", "spoon", Fit::Near(1)),
            ("spooon", "spoon", Fit::Near(1)),
            ("spoob", "spoon", Fit::Near(1)),
            ("psoon", "spoon", Fit::Near(1)),
            ("excvator", "excavator", Fit::Near(1)),
            ("exacvtor", "excavator", Fit::Near(2)),
            ("explroer", "explorer", Fit::Near(1)),
            // Begun with a slip.
            ("excvat", "excavator", Fit::Near(1)),
            ("spno", "spoonful", Fit::None),
            // Too far, too short, or a number.
            ("mirror", "matrix", Fit::None),
            ("but", "bur", Fit::None),
            ("3300", "330", Fit::None),
            ("1234", "1235", Fit::None),
            ("base", "bass", Fit::Near(1)),
        ] {
            assert_eq!(fit(sought, word), fits, "{sought} for {word}");
        }
    }

    #[test]
    fn long_words_are_compared_without_harm() {
        let long = "x".repeat(80);
        assert_eq!(fit(&long, &long), Fit::Same);
        assert!(fit(&"y".repeat(80), &long) == Fit::None);
        // Letters beyond the first 24 are not looked at, in either spelling.
        let _ = fit(&("é".repeat(40) + "x"), &"é".repeat(41));
    }

    /// Worst is not better than best.
    #[test]
    fn worth_falls_from_fit_to_fit() {
        let all = [
            Fit::Same,
            Fit::Begins(1),
            Fit::Begins(30),
            Fit::Near(1),
            Fit::Within,
            Fit::Near(2),
            Fit::None,
        ];
        assert!(all.windows(2).all(|pair| pair[0].worth() > pair[1].worth()));
    }
}
