//! Kinds of things in words.

use class::pack::{Pack, place::Kind};

/// How many files of each kind a pack holds.
pub fn held(pack: &Pack) -> Vec<(Kind, usize)> {
    let kinds: Vec<Kind> = pack
        .files()
        .filter_map(|(path, _)| Kind::of(path).ok())
        .collect();
    let count = |kind: Kind| kinds.iter().filter(|each| **each == kind).count();
    let each = Kind::ALL.into_iter().map(|kind| (kind, count(kind)));
    each.filter(|(_, count)| *count > 0).collect()
}

/// What a pack holds, in words: `a procedure, 2 lessons`.
pub fn counted(held: &[(Kind, usize)]) -> String {
    if held.is_empty() {
        return "no file yet".into();
    }
    let words: Vec<String> = held
        .iter()
        .map(|(kind, count)| match (kind, count) {
            (Kind::Procedure | Kind::Lesson, 1) => format!("a {}", kind.label()),
            (Kind::Procedure | Kind::Lesson, many) => format!("{many} {}s", kind.label()),
            (kind, 1) => format!("a file of {}s", kind.label()),
            (kind, many) => format!("{many} files of {}s", kind.label()),
        })
        .collect();
    words.join(", ")
}

/// A kind as the name of a group: `Preference cards`.
pub fn group(kind: Kind) -> &'static str {
    match kind {
        Kind::Procedure => "Procedures",
        Kind::Lesson => "Lessons",
        Kind::Instruments => "Instruments",
        Kind::Materials => "Materials",
        Kind::Drawings => "Drawings",
        Kind::Cases => "Cases",
        Kind::Rules => "Rules",
        Kind::Plans => "Plans",
        Kind::Cards => "Preference cards",
        Kind::Sources => "Sources",
    }
}

/// A title as an id: lower-case words joined by hyphens.
pub fn slug(title: &str) -> String {
    let mut slug = String::new();
    for c in title.to_lowercase().chars() {
        if c.is_ascii_alphanumeric() {
            slug.push(c);
        } else if !slug.is_empty() && !slug.ends_with('-') {
            slug.push('-');
        }
        if slug.len() >= 40 {
            break;
        }
    }
    slug.trim_end_matches('-').to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_title_becomes_an_id() {
        for (title, id) in [
            ("Our practice", "our-practice"),
            ("  Year 2: sutures & co. ", "year-2-sutures-co"),
            ("Größe", "gr-e"),
            ("…", ""),
        ] {
            assert_eq!(slug(title), id);
        }
    }
}
