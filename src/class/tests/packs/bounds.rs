//! Packs that are too large, too deep, or would grow without end: refused in
//! bounded time and room.

use super::{added, built_in, hostile::faults, small};
use class::{
    bank::Version,
    pack::{self, Pack, over},
};
use std::time::{Duration, Instant};

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
    let rules = [
        format!("rule = {}\n", deep("[", "]", 150_000)),
        format!("rule = {}\n", deep("{ a = ", "}", 50_000)),
        format!("{} = 1\n", "a.".repeat(100_000) + "a"),
        format!("[[rule]]\nid = 'x'\nwhen = '{}a'\n", "not ".repeat(50_000)),
        format!("[[rule]]\nid = 'x'\nwhen = '{}a'\n", "(".repeat(200_000)),
    ];
    let lessons = [
        ">".repeat(200_000) + "x",
        "- ".repeat(100_000) + "x",
        "*a **b ".repeat(30_000) + "x",
        "[".repeat(200_000) + "x",
        "![a](".repeat(40_000),
        "<!--".repeat(50_000),
    ];
    let rules = rules.map(|text| ("rules/deep.toml", text));
    let lessons = lessons.map(|text| ("lessons/deep.md", format!("# T\n\n{text}\n")));
    for (path, text) in rules.into_iter().chain(lessons) {
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
