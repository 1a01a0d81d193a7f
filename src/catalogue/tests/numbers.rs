//! Faults in the figures are told with file, line and column.

use std::{
    fs,
    path::{Path, PathBuf},
};

/// A copy of the content in which one text of one file is another.
fn spoiled(name: &str, file: &str, from: &str, to: &str) -> Vec<String> {
    let here = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../content");
    let copy = std::env::temp_dir()
        .join(format!("trayward-numbers-{}-{name}", std::process::id()))
        .join("content");
    copy_all(&here, &copy);
    let path = copy.join(file);
    let text = fs::read_to_string(&path).expect("the file");
    assert!(text.contains(from), "'{from}' is not in {file}");
    fs::write(&path, text.replacen(from, to, 1)).expect("the copy");
    let faults = catalogue::source::read(&copy).err().unwrap_or_default();
    fs::remove_dir_all(copy.parent().expect("a folder")).expect("the copy goes");
    faults.iter().map(ToString::to_string).collect()
}

fn copy_all(from: &Path, to: &PathBuf) {
    fs::create_dir_all(to).expect("a folder");
    for entry in fs::read_dir(from).expect("the content") {
        let path = entry.expect("an entry").path();
        let target = to.join(path.file_name().expect("a name"));
        if path.is_dir() {
            copy_all(&path, &target);
        } else {
            fs::copy(&path, &target).expect("a copy");
        }
    }
}

#[test]
fn faults_in_figures_name_their_place() {
    for (name, file, from, to, place, words) in [
        (
            "source",
            "numbers/dose-rules.toml",
            "[\"fda-lidocaine-label\", \"malamed-tables\"]",
            "[\"fda-lidocain-label\"]",
            "content/numbers/dose-rules.toml:16:12",
            "'fda-lidocaine-label' is the nearest one",
        ),
        (
            "zero",
            "numbers/solutions.toml",
            "percent = 2\n",
            "percent = 0\n",
            "content/numbers/solutions.toml:8:1",
            "has to be above 0",
        ),
        (
            "field",
            "numbers/needles.toml",
            "gauge = 21",
            "guage = 21",
            "content/numbers/needles.toml:5:1",
            "guage",
        ),
        (
            "gap",
            "numbers/teeth.toml",
            "place = 2",
            "place = 1",
            "content/numbers/teeth.toml:",
            "stands twice",
        ),
        (
            "figure",
            "numbers/figures.toml",
            "id = \"spore-test\"",
            "id = \"spore-tests\"",
            "content/numbers/figures.toml:",
            "'spore-test' is missing",
        ),
        (
            "list",
            "numbers/cycles.toml",
            "[[cycle]]",
            "[[cycles]]",
            "content/numbers/cycles.toml:",
            "this file holds [[cycle]]",
        ),
    ] {
        let faults = spoiled(name, file, from, to);
        let hit = |fault: &String| fault.starts_with(place) && fault.contains(words);
        assert!(faults.iter().any(hit), "{name}: {faults:#?}");
    }
}

#[test]
fn figures_come_back_from_the_pack() {
    let here = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../content");
    let read = catalogue::source::read(&here).expect("content without faults");
    let back = catalogue::unpack(&catalogue::pack(&read)).expect("a pack");
    assert_eq!(back.numbers, read.numbers);
    assert!(read.numbers.solutions.len() >= 9 && read.numbers.teeth.len() == 26);
}
