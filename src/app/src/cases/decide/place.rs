//! Places in a list, in words and in moves.

/// A place in words: `1st`, `2nd`, `11th`.
pub fn ordinal(place: usize) -> String {
    let ending = match (place % 10, place % 100) {
        (_, 11..=13) => "th",
        (1, _) => "st",
        (2, _) => "nd",
        (3, _) => "rd",
        _ => "th",
    };
    format!("{place}{ending}")
}

/// The list with one entry moved to a place, counted from 0. A place past the
/// end is the end; an entry that is not there changes nothing.
pub fn moved(list: &[String], id: &str, to: usize) -> Vec<String> {
    let mut list = list.to_vec();
    if let Some(from) = list.iter().position(|each| each == id) {
        let entry = list.remove(from);
        list.insert(to.min(list.len()), entry);
    }
    list
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn places_in_words() {
        for (place, words) in [
            (1, "1st"),
            (2, "2nd"),
            (3, "3rd"),
            (4, "4th"),
            (11, "11th"),
            (12, "12th"),
            (13, "13th"),
            (21, "21st"),
            (112, "112th"),
        ] {
            assert_eq!(ordinal(place), words);
        }
    }

    #[test]
    fn an_entry_moves_and_the_others_close_up() {
        let list = ["a", "b", "c"].map(String::from);
        for (id, to, after) in [
            ("a", 2, ["b", "c", "a"]),
            ("a", 9, ["b", "c", "a"]),
            ("c", 0, ["c", "a", "b"]),
            ("b", 1, ["a", "b", "c"]),
            ("x", 0, ["a", "b", "c"]),
        ] {
            assert_eq!(moved(&list, id, to), after, "{id} to {to}");
        }
    }
}
