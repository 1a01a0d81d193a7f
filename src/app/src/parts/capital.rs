//! Names that stand in sentences, set as headings.

/// A name with a capital first letter.
pub fn capital(name: &str) -> String {
    let mut letters = name.chars();
    let first = letters.next().map(char::to_uppercase);
    first.into_iter().flatten().chain(letters).collect()
}

#[cfg(test)]
mod tests {
    use super::capital;

    #[test]
    fn only_the_first_letter_is_changed() {
        for (name, heading) in [
            ("burs", "Burs"),
            ("élan", "Élan"),
            ("MTA carrier", "MTA carrier"),
            ("", ""),
        ] {
            assert_eq!(capital(name), heading);
        }
    }
}
