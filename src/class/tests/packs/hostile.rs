//! Packs that mean harm, or are broken: each is named, and nothing of it is taken.

use super::{added, built_in, small};
use class::{
    bank::Version,
    pack::{self, Pack, PackFile, over},
};
use std::time::{Duration, Instant};

/// The file of a pack with another text in it; the checksum is left as it was.
fn spoiled(from: &str, to: &str) -> Vec<String> {
    let text = small().write();
    assert!(text.contains(from), "'{from}' is not in it");
    pack::read(text.replacen(from, to, 1).as_bytes()).expect_err("it was taken")
}

/// A pack with one file, read over the built-in sources.
pub fn faults(path: &str, text: &str) -> Vec<String> {
    let mut pack = Pack::new("bad", "Bad", Version(0)).unwrap();
    pack.put(path, added(text))
        .expect("a text that can be kept");
    let begun = Instant::now();
    let faults = over::read(built_in(), &[&pack]).expect_err("it passed");
    assert!(
        begun.elapsed() < Duration::from_secs(20),
        "it took {:?}",
        begun.elapsed()
    );
    faults.iter().map(ToString::to_string).collect()
}

#[test]
fn what_is_wrong_with_the_file_is_said() {
    for (from, to, words) in [
        (
            "\"trayward-pack\"",
            "\"something-else\"",
            "not a pack of this page",
        ),
        ("\"form\": 1", "\"form\": 2", "newer version of this page"),
        (
            "\"Our practice\"",
            "\"Our clinic\"",
            "checksum does not go with",
        ),
        (
            "\"checksum\": \"",
            "\"checksum\": \"0",
            "checksum does not go with",
        ),
        (
            "\"version\": 1",
            "\"version\": -1",
            "cannot be read as a pack at line",
        ),
        ("\"our-practice\"", "\"../our-practice\"", "no id of a pack"),
        ("\"our-practice\"", "\"\"", "no id of a pack"),
        ("\"Our practice\"", "\"\"", "has no title"),
        (
            "\"Our practice\"",
            "\"Our\\u0000practice\"",
            "cannot be shown (U+0000)",
        ),
        (
            "\"Our practice\"",
            "\"Our\\u202epractice\"",
            "cannot be shown (U+202E)",
        ),
        (
            "\"files\"",
            "\"title\": \"x\",\n\"files\"",
            "duplicate field",
        ),
        ("\"files\"", "\"run\": \"x\",\n\"files\"", "unknown field"),
        (
            "procedures/our-stitches/lesson.md",
            "../../etc/passwd",
            "is no place for a file",
        ),
        (
            "procedures/our-stitches/lesson.md",
            "procedures/../rules/lesson.md",
            "is no place for a file",
        ),
        (
            "procedures/our-stitches/lesson.md",
            "/lessons/x.md",
            "is no place for a file",
        ),
        (
            "procedures/our-stitches/lesson.md",
            "lessons/x.html",
            "is no place for a file",
        ),
        (
            "procedures/our-stitches/lesson.md",
            "lessons/X.md",
            "is no place for a file",
        ),
        (
            "procedures/our-stitches/lesson.md",
            "findings/x.toml",
            "is no place for a file",
        ),
        (
            "procedures/our-stitches/lesson.md",
            "lessons/a\\u0000.md",
            "is no place for a file",
        ),
        (
            "procedures/our-stitches/lesson.md",
            "procedures/our-stitches/procedure.toml",
            "stands twice",
        ),
        ("\"# ", "\"\\u0000# ", "cannot be shown (U+0000)"),
        ("\"# ", "\"\\u001b# ", "cannot be shown (U+001B)"),
    ] {
        let told = spoiled(from, to).join(" ");
        assert!(told.contains(words), "{to}: {told}");
        // What comes from elsewhere stands in a sentence only as harmless text.
        assert!(
            !told.contains('\u{0}') && !told.contains('\u{202e}'),
            "{told}"
        );
    }
}

#[test]
fn a_path_says_the_file_and_the_line_of_what_cannot_be_shown() {
    let told = spoiled("\\n# ", "\\n#\\u0007 ").join(" ");
    assert!(told.contains("content/procedures/our-stitches/"), "{told}");
}

#[test]
fn markup_and_addresses_that_could_do_harm_are_named_with_their_place() {
    for (text, words) in [
        (
            "# T\n\n<script>alert(1)</script>\n",
            "lesson.md:3:1: HTML does not belong in a lesson",
        ),
        (
            "# T\n\nA <img src=x onerror=alert(1)>.\n",
            "HTML does not belong in a lesson",
        ),
        (
            "# T\n\n[a](javascript:alert(1))\n",
            "'javascript:' is refused",
        ),
        ("# T\n\n[a](data:text/html,x)\n", "'data:' is refused"),
        (
            "# T\n\n[a](&#106;avascript:alert(1))\n",
            "'javascript:' is refused",
        ),
        ("# T\n\n<javascript:alert(1)>\n", "'javascript:' is refused"),
        (
            "# T\n\n[a][b]\n\n[b]: javascript:x\n",
            "'javascript:' is refused",
        ),
        (
            "# T\n\n![a](https://elsewhere.example/x.png)\n",
            "images are not loaded from elsewhere",
        ),
    ] {
        let told = faults("lessons/bad-lesson.md", text);
        assert!(told[0].starts_with("content/lessons/bad-"), "{told:?}");
        assert!(told.iter().any(|it| it.contains(words)), "{text}: {told:?}");
    }
}

#[test]
fn ids_that_stand_already_are_named_in_the_file_of_the_pack() {
    let text = built_in().get("preference-cards/examples.toml").unwrap();
    let told = faults("preference-cards/a-first.toml", text);
    assert!(!told.is_empty());
    for fault in &told {
        assert!(
            fault.starts_with("content/preference-cards/a-first.toml:"),
            "{fault}"
        );
        assert!(fault.contains("stands twice"), "{fault}");
    }
}

#[test]
fn a_file_replaces_another_only_where_it_says_so() {
    let text = built_in().get("rules/depth.toml").unwrap();
    let told = faults("rules/depth.toml", text);
    assert!(
        told[0].contains("the built-in catalogue has this file"),
        "{told:?}"
    );
    let mut pack = Pack::new("bad", "Bad", Version(0)).unwrap();
    let replaces = |text: &str| PackFile {
        text: text.to_owned(),
        replaces: true,
    };
    pack.put("rules/none.toml", replaces(text)).unwrap();
    let told = over::read(built_in(), &[&pack]).unwrap_err();
    assert!(told[0].message.contains("no built-in file"), "{told:?}");
    let mut one = Pack::new("one", "One", Version(0)).unwrap();
    one.put("rules/depth.toml", replaces(text)).unwrap();
    let mut two = Pack::new("two", "Two", Version(0)).unwrap();
    two.put("rules/depth.toml", replaces(text)).unwrap();
    let told = over::read(built_in(), &[&one, &two]).unwrap_err();
    assert!(
        told[0].message.contains("the pack “One” has this file too"),
        "{told:?}"
    );
}
