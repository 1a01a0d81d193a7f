//! The nearest known word to a mistyped one.

/// The known word with the fewest edits to `wrong`, if it is near enough to be meant.
pub(super) fn nearest<'a>(wrong: &str, known: impl Iterator<Item = &'a str>) -> Option<&'a str> {
    let long = wrong.chars().count();
    known
        .map(|word| {
            let own = word.chars().count();
            (own.max(3) / 3 + 1, own, word)
        })
        // Words that differ that much in length need no comparing.
        .filter(|(most, own, _)| own.abs_diff(long) <= *most)
        .map(|(most, _, word)| (most, edits(wrong, word), word))
        .filter(|(most, edits, _)| edits <= most)
        .map(|(_, edits, word)| (edits, word))
        .min()
        .map(|(_, word)| word)
}

/// Levenshtein distance.
fn edits(a: &str, b: &str) -> usize {
    let b: Vec<char> = b.chars().collect();
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for (i, x) in a.chars().enumerate() {
        let mut diagonal = row[0];
        row[0] = i + 1;
        for (j, y) in b.iter().enumerate() {
            let replaced = diagonal + usize::from(x != *y);
            diagonal = row[j + 1];
            row[j + 1] = replaced.min(diagonal + 1).min(row[j] + 1);
        }
    }
    row[b.len()]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_slip_of_the_finger_finds_its_word() {
        let known = ["cement-spatula", "mixing-pad", "explorer"];
        assert_eq!(
            nearest("cement-spatule", known.into_iter()),
            Some("cement-spatula")
        );
        assert_eq!(nearest("exlporer", known.into_iter()), Some("explorer"));
        assert_eq!(nearest("zzz", known.into_iter()), None);
    }
}
