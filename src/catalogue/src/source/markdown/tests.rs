//! What a lesson may hold.

use super::*;

fn read(text: &str) -> Result<Lesson, Vec<Fault>> {
    lesson("x".into(), Some(&"p".into()), text)
}

#[test]
fn directives_become_derived_blocks() {
    let lesson = read("# T\n\n::tray\n\n::steps Mix\n\n::ask Why? Because.\n").unwrap();
    assert_eq!(
        lesson.blocks,
        [
            Block::Tray("p".into()),
            Block::Steps("p".into(), Some("Mix".into())),
            Block::Ask("Why?".into(), "Because.".into()),
        ]
    );
}

#[test]
fn what_could_do_harm_is_refused() {
    for text in [
        "# T\n\n<script>x</script>\n",
        "# T\n\na <b>b</b>\n",
        "# T\n\n[a](javascript:x)\n",
        "# T\n\n[a](http://x)\n",
        "# T\n\n![a](item:x)\n",
        "# T\n\n::nothing\n",
        "No title\n",
    ] {
        assert!(read(text).is_err(), "{text}");
    }
}

#[test]
fn a_refused_link_is_named_by_its_scheme() {
    for (link, named) in [
        ("javascript:alert(1)", "'javascript:'"),
        ("JavaScript:alert(1)", "'javascript:'"),
        ("data:text/html,x", "'data:'"),
        ("vbscript:x", "'vbscript:'"),
        ("//elsewhere.example", "goes to item:"),
    ] {
        let faults = read(&format!("# T\n\nA [b]({link}).\n")).unwrap_err();
        assert!(faults[0].1.contains(named), "{faults:?}");
    }
}

#[test]
fn what_is_nested_too_deep_is_refused_at_once() {
    for open in [">", "> - ", "- ", "*a **", "[", "1. "] {
        let _ = read(&format!(
            "# T\n\n{}deep\n",
            open.repeat(100_000 / open.len())
        ));
    }
    assert!(read(&format!("# T\n\n{}deep\n", "> ".repeat(10))).is_ok());
    assert!(read(&format!("# T\n\n{}deep\n", "> ".repeat(40))).is_err());
}

#[test]
fn lists_and_tables_keep_their_shape() {
    let lesson = read("# T\n\n- a *b*\n- c\n\n| h | i |\n|---|---|\n| 1 | 2 |\n").unwrap();
    assert!(matches!(&lesson.blocks[0], Block::List(false, entries) if entries.len() == 2));
    assert!(
        matches!(&lesson.blocks[1], Block::Table(head, rows) if head.len() == 2 && rows.len() == 1)
    );
}
