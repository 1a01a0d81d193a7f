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
fn faults(path: &str, text: &str) -> Vec<String> {
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
fn what_is_too_large_is_not_read() {
    let begun = Instant::now();
    let large = vec![b'['; 50 * 1024 * 1024];
    let told = pack::read(&large).unwrap_err();
    assert_eq!(
        told,
        ["The file has 51200 kB; a pack has 512 kB at most. Nothing of it was read."]
    );
    assert!(begun.elapsed() < Duration::from_secs(5));
    let mut pack = small();
    let many = (0..300).find_map(|n| pack.put(&format!("lessons/l{n}.md"), added("# L\n")).err());
    assert!(many.unwrap().contains("at most 200 files"));
    let long = "x\n".repeat(210_000);
    let refused = small().put("lessons/long.md", added(&long)).unwrap_err();
    assert!(refused.contains("400 kB"), "{refused}");
}

#[test]
fn deep_nesting_ends_in_words() {
    let deep = |open: &str, close: &str, n: usize| format!("{}{}", open.repeat(n), close.repeat(n));
    for text in [
        deep("[", "]", 200_000),
        deep("{\"a\":", "}", 80_000),
        deep("[", "", 500_000),
    ] {
        assert!(pack::read(text.as_bytes()).is_err());
    }
    for (path, text) in [
        (
            "rules/deep.toml",
            format!("rule = {}\n", deep("[", "]", 150_000)),
        ),
        (
            "rules/deep.toml",
            format!("rule = {}\n", deep("{ a = ", "}", 50_000)),
        ),
        (
            "rules/deep.toml",
            format!("{} = 1\n", "a.".repeat(100_000) + "a"),
        ),
        (
            "rules/deep.toml",
            format!("[[rule]]\nid = 'x'\nwhen = '{}a'\n", "not ".repeat(50_000)),
        ),
        (
            "rules/deep.toml",
            format!("[[rule]]\nid = 'x'\nwhen = '{}a'\n", "(".repeat(200_000)),
        ),
        (
            "lessons/deep.md",
            format!("# T\n\n{}x\n", ">".repeat(200_000)),
        ),
        (
            "lessons/deep.md",
            format!("# T\n\n{}x\n", "- ".repeat(100_000)),
        ),
        (
            "lessons/deep.md",
            format!("# T\n\n{}x\n", "*a **b ".repeat(30_000)),
        ),
        (
            "lessons/deep.md",
            format!("# T\n\n{}x\n", "[".repeat(200_000)),
        ),
        (
            "lessons/deep.md",
            format!("# T\n\n{}\n", "![a](".repeat(40_000)),
        ),
        (
            "lessons/deep.md",
            format!("# T\n\n{}\n", "<!--".repeat(50_000)),
        ),
    ] {
        // Some of these are only text to a reader of Markdown, which is harmless.
        let mut pack = Pack::new("bad", "Bad", Version(0)).unwrap();
        pack.put(path, added(&text))
            .expect("a text that can be kept");
        let begun = Instant::now();
        let read = over::read(built_in(), &[&pack]);
        assert!(
            begun.elapsed() < Duration::from_secs(20),
            "{:.40} took {:?}",
            text,
            begun.elapsed()
        );
        if let Err(faults) = read {
            let here = format!("content/{path}");
            assert!(faults.iter().all(|f| f.file == here), "{text:.40}");
        } else {
            assert!(path.starts_with("lessons/"), "{text:.40} passed");
        }
    }
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

/// Set-ups that include the next one twice: two to the power of their number.
#[test]
fn set_ups_that_double_are_refused_at_once() {
    let mut pack = Pack::new("bad", "Bad", Version(0)).unwrap();
    let own = built_in()
        .get("procedures/basic-set/procedure.toml")
        .unwrap();
    for n in 0..60 {
        let next = if n == 59 { 0 } else { n + 1 };
        let mut text = own.replacen("id = \"basic-set\"", &format!("id = \"s{n}\""), 1);
        for twice in ["\"x\"", "\"y\""] {
            text += "\n[[step]]\nphase = \"More\"\nwho = \"team\"\nid = ";
            text += &[twice, "\ninclude = \"s", &next.to_string(), "\"\n"].concat();
        }
        pack.put(&format!("procedures/s{n}/procedure.toml"), added(&text))
            .unwrap();
        pack.put(
            &format!("procedures/s{n}/lesson.md"),
            added("# S\n\nA set.\n"),
        )
        .unwrap();
    }
    let begun = Instant::now();
    let told = over::read(built_in(), &[&pack]).unwrap_err();
    assert!(
        told.iter().any(|f| f.message.contains("includes itself")),
        "{told:?}"
    );
    assert!(begun.elapsed() < Duration::from_secs(20));
    // Without the circle they double all the same.
    let last = pack
        .file("procedures/s59/procedure.toml")
        .unwrap()
        .text
        .clone();
    let last = last.replace("include = \"s0\"", "include = \"basic-set\"");
    pack.put("procedures/s59/procedure.toml", added(&last))
        .unwrap();
    let told = over::read(built_in(), &[&pack]).unwrap_err();
    assert!(
        told.iter().any(|f| f.message.contains("400 are the most")),
        "{told:?}"
    );
}

/// Thousands of faults in one file are told in bounded number and time.
#[test]
fn many_faults_are_told_in_bounded_time() {
    let entry = "[[card]]\nid = \"A\"\nname = \"n\"\nabout = \"a\"\nwishes = [{ leave-out = { item = \"explorr\" } }]\n";
    let told = faults("preference-cards/many.toml", &entry.repeat(3500));
    assert!((100..=500).contains(&told.len()), "{}", told.len());
}

/// Rows of rows of pieces: sixty to the power of their depth.
#[test]
fn drawings_that_multiply_are_refused_at_once() {
    let mut pieces = "[{ line = { points = [[0, 0], [1, 1]] } }]".to_owned();
    for _ in 0..8 {
        pieces = format!("[{{ row = {{ count = 60, step = [1, 0], pieces = {pieces} }} }}]");
    }
    let own = built_in().get("drawings/devices.toml").unwrap();
    let first = own.lines().find(|line| line.starts_with("id = ")).unwrap();
    let text = format!("[[drawing]]\n{first}\n[drawing.form.figure]\npieces = {pieces}\n");
    let told = faults("drawings/rows.toml", &text);
    assert!(
        told.iter().any(|it| it.contains("more than 2000 shapes")),
        "{told:?}"
    );
}
