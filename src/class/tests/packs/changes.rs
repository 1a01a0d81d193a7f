//! What differs from the built-in catalogue, by thing and by line.

use super::{built_in, small};
use class::pack::{
    PackFile,
    difference::{Change, Line, lines, things},
    over,
};
use proptest::prelude::*;

#[test]
fn added_and_changed_things_are_told_by_kind() {
    let mut pack = small();
    let text = built_in().get("rules/depth.toml").unwrap();
    let text = text.replacen(
        "Two millimetres of dentine",
        "Two full millimetres of dentine",
        1,
    );
    let replaces = PackFile {
        text,
        replaces: true,
    };
    pack.put("rules/depth.toml", replaces).unwrap();
    let before = over::read(built_in(), &[]).unwrap();
    let after = over::read(built_in(), &[&pack]).unwrap();
    let told: Vec<_> = things(&before.catalogue, &after.catalogue)
        .into_iter()
        .map(|it| (it.kind, it.change, it.id))
        .collect();
    let wanted = [
        ("procedure", Change::Added, "our-stitches"),
        ("lesson", Change::Added, "our-stitches"),
        ("rule", Change::Changed, "band-ample"),
    ];
    assert_eq!(
        told,
        wanted.map(|(kind, change, id)| (kind, change, id.to_owned()))
    );
    assert_eq!(things(&before.catalogue, &before.catalogue), []);
}

#[test]
fn lines_come_and_go() {
    use Line::{Gone, New, Same};
    for (before, after, wanted) in [
        ("", "", vec![]),
        ("a\nb\nc", "a\nb\nc", vec![Same("a"), Same("b"), Same("c")]),
        (
            "a\nb\nc",
            "a\nx\nc",
            vec![Same("a"), Gone("b"), New("x"), Same("c")],
        ),
        ("a", "", vec![Gone("a")]),
        ("", "a", vec![New("a")]),
        ("a\nb", "b\na", vec![Gone("a"), Same("b"), New("a")]),
    ] {
        assert_eq!(lines(before, after), wanted, "{before:?} {after:?}");
    }
}

proptest! {
    #[test]
    fn both_texts_can_be_read_off_the_difference(before in "([ab]\n){0,12}", after in "([ab]\n){0,12}") {
        let told = lines(&before, &after);
        let old: Vec<&str> = told.iter().filter_map(|l| match l {
            Line::Same(t) | Line::Gone(t) => Some(*t),
            Line::New(_) => None,
        }).collect();
        let new: Vec<&str> = told.iter().filter_map(|l| match l {
            Line::Same(t) | Line::New(t) => Some(*t),
            Line::Gone(_) => None,
        }).collect();
        prop_assert_eq!(old, before.lines().collect::<Vec<_>>());
        prop_assert_eq!(new, after.lines().collect::<Vec<_>>());
    }
}

#[test]
fn texts_with_nothing_in_common_are_told_at_once() {
    let numbers = |letter: &str| {
        let lines: Vec<String> = (0..20_000).map(|n| format!("{letter}{n}")).collect();
        lines.join("\n")
    };
    let (before, after) = (numbers("a"), numbers("b"));
    assert_eq!(lines(&before, &after).len(), 40_000);
}
