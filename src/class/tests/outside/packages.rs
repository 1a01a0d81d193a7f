//! Packages: unpacked by the crate `zip`, their XML read by the crate
//! `roxmltree`, the manifest of SCORM 1.2 checked against its schemas by
//! `xmllint` where `TRAYWARD_SCORM_XSD` names the folder that they lie in.

use crate::made::{Key, assignment, table};
use class::exchange::{
    qti::{self, Expected, Question},
    scorm, xapi,
    zip::{self, File},
};
use proptest::prelude::*;
use std::collections::HashSet;
use std::io::Read;
use std::process::Command;

/// The files of an archive, in order; each is checked against its CRC-32 as it is read.
fn unpack(bytes: Vec<u8>) -> Vec<File> {
    let mut archive = ::zip::ZipArchive::new(std::io::Cursor::new(bytes)).expect("an archive");
    (0..archive.len())
        .map(|place| {
            let mut file = archive.by_index(place).expect("a file");
            let mut bytes = Vec::new();
            file.read_to_end(&mut bytes).expect("its bytes");
            File {
                path: file.name().expect("a name").into_owned(),
                bytes,
            }
        })
        .collect()
}

fn text(file: &File) -> &str {
    std::str::from_utf8(&file.bytes).expect("text")
}

proptest! {
    #[test]
    fn archives_are_unpacked_by_another_program(files in prop::collection::vec(any::<Vec<u8>>(), 0..6)) {
        let files: Vec<File> = files
            .into_iter()
            .enumerate()
            .map(|(number, bytes)| File { path: format!("folder/é {number}.bin"), bytes })
            .collect();
        prop_assert_eq!(unpack(zip::write(&files).unwrap()), files);
    }
}

fn scorm_package() -> Vec<File> {
    let set = assignment(20);
    let site = [
        File::text("index.html", "<!doctype html>".into()),
        File::text("a & b.js", String::new()),
    ];
    let start = format!("index.html#/set/{}", set.letters());
    unpack(scorm::package(&set, &site, &start).expect("a package"))
}

#[test]
fn a_scorm_package_starts_the_page() {
    let files = scorm_package();
    let manifest = roxmltree::Document::parse(text(&files[0])).expect("XML");
    let resource = manifest
        .descendants()
        .find(|n| n.has_tag_name(("http://www.imsproject.org/xsd/imscp_rootv1p1p2", "resource")))
        .expect("a resource");
    assert_eq!(
        resource.attribute(("http://www.adlnet.org/xsd/adlcp_rootv1p2", "scormtype")),
        Some("sco")
    );
    let named: HashSet<&str> = resource
        .children()
        .filter_map(|n| n.attribute("href"))
        .collect();
    let there: HashSet<&str> = files[1..].iter().map(|f| f.path.as_str()).collect();
    assert_eq!(named, there, "the manifest names every file");
    assert_eq!(resource.attribute("href"), Some(scorm::LAUNCH));
    let launch = files
        .iter()
        .find(|f| f.path == scorm::LAUNCH)
        .expect("it is there");
    assert!(text(launch).contains(&assignment(20).letters()));
}

#[test]
fn the_scorm_manifest_is_valid_by_its_schemas() {
    let Ok(schemas) = std::env::var("TRAYWARD_SCORM_XSD") else {
        println!("Left out: TRAYWARD_SCORM_XSD names no folder with the schemas.");
        return;
    };
    let folder = tempfile::tempdir().expect("a folder");
    let manifest = text(&scorm_package()[0]).to_owned();
    // One schema that takes in both name spaces of the manifest.
    let import = |space: &str, file: &str| {
        format!("<xs:import namespace=\"http://www.{space}\" schemaLocation=\"{schemas}/{file}\"/>")
    };
    let both = format!(
        "<xs:schema xmlns:xs=\"http://www.w3.org/2001/XMLSchema\">{}{}</xs:schema>",
        import(
            "imsproject.org/xsd/imscp_rootv1p1p2",
            "imscp_rootv1p1p2.xsd"
        ),
        import("adlnet.org/xsd/adlcp_rootv1p2", "adlcp_rootv1p2.xsd"),
    );
    let schema = folder.path().join("both.xsd");
    std::fs::write(&schema, both).expect("it can be written");
    let valid = |manifest: String| {
        let path = folder.path().join("imsmanifest.xml");
        std::fs::write(&path, manifest).expect("it can be written");
        Command::new("xmllint")
            .args(["--nonet", "--noout", "--schema"])
            .args([&schema, &path])
            .output()
            .expect("xmllint runs")
    };
    let found = valid(manifest.clone());
    assert!(
        found.status.success(),
        "{}",
        String::from_utf8_lossy(&found.stderr)
    );
    let wrong = valid(manifest.replace("\"sco\"", "\"page\""));
    assert!(
        !wrong.status.success(),
        "a wrong kind of resource is caught"
    );
}

fn question(answer: Expected) -> Question {
    let labels = ["<Mix & pat>", "Wait", "\"Carve\""];
    Question {
        id: "3. what next?".into(),
        title: "What comes next".into(),
        lead: "The base is hard.".into(),
        prompt: "What comes next?".into(),
        options: labels
            .iter()
            .enumerate()
            .map(|(n, l)| (format!("{n} o"), (*l).to_owned()))
            .collect(),
        answer,
    }
}

#[test]
fn items_for_other_banks_are_well_formed() {
    let ids = || vec!["2 o".to_owned(), "0 o".to_owned()];
    check_items(&[
        question(Expected::One("1 o".into())),
        question(Expected::All(ids())),
        question(Expected::Order(ids())),
    ]);
    let files = unpack(qti::package("p", &[question(Expected::One("1 o".into()))]).unwrap());
    let manifest = roxmltree::Document::parse(text(&files[0])).expect("XML");
    let href = manifest
        .descendants()
        .find_map(|n| n.attribute("type").and(n.attribute("href")));
    assert_eq!(href, Some(files[1].path.as_str()));
    let twice = vec![question(Expected::One("1 o".into())); 2];
    assert!(qti::package("p", &twice).is_err());
}

/// A number is typed within the text, and scored between its bounds.
fn check_number(item: &roxmltree::Document<'_>, from: &str, to: &str) {
    let named = |name: &'static str| {
        item.descendants()
            .filter(move |n| n.has_tag_name(name_of(name)))
    };
    let entry = named("textEntryInteraction").next().expect("an entry");
    assert_eq!(entry.attribute("responseIdentifier"), Some("RESPONSE"));
    assert_eq!(entry.parent().expect("a parent").tag_name().name(), "p");
    let bounds: Vec<&str> = ["gte", "lte"]
        .into_iter()
        .flat_map(named)
        .flat_map(|n| n.children())
        .filter(|n| n.has_tag_name(name_of("baseValue")))
        .filter_map(|n| n.text())
        .collect();
    assert_eq!(bounds, [from, to]);
    assert!(
        bounds.iter().all(|it| it.parse::<f64>().is_ok()),
        "{bounds:?}"
    );
}

fn name_of(name: &'static str) -> (&'static str, &'static str) {
    ("http://www.imsglobal.org/xsd/imsqti_v2p2", name)
}

/// The rules of QTI 2.2 that items of ours have to keep: what is declared is
/// used, what is right is offered, ids are ids and stand once.
pub fn check_items(questions: &[Question]) {
    for question in questions {
        let xml = question.xml();
        let item = roxmltree::Document::parse(&xml).expect("XML");
        let space = "http://www.imsglobal.org/xsd/imsqti_v2p2";
        let all = |name: &'static str| {
            item.descendants()
                .filter(move |n| n.has_tag_name((space, name)))
        };
        assert_eq!(item.root_element().tag_name().name(), "assessmentItem");
        let declared = all("responseDeclaration").next().expect("a response");
        if let Expected::Between { from, to, .. } = &question.answer {
            check_number(&item, from, to);
            continue;
        }
        let interaction = all("choiceInteraction")
            .chain(all("orderInteraction"))
            .next()
            .expect("an interaction");
        assert_eq!(
            interaction.attribute("responseIdentifier"),
            declared.attribute("identifier")
        );
        let offered: Vec<&str> = all("simpleChoice")
            .filter_map(|n| n.attribute("identifier"))
            .collect();
        let unique: HashSet<&str> = offered.iter().copied().collect();
        assert_eq!(unique.len(), offered.len());
        for id in &offered {
            assert!(
                id.starts_with('i')
                    && id
                        .bytes()
                        .all(|b| b.is_ascii_alphanumeric() || b"-_.".contains(&b)),
                "{id}"
            );
        }
        let right: Vec<&str> = all("correctResponse")
            .flat_map(|n| n.descendants())
            .filter(|n| n.has_tag_name((space, "value")))
            .filter_map(|n| n.text())
            .collect();
        assert!(right.iter().all(|id| unique.contains(id)), "{right:?}");
        let (tag, cardinality, bound) = match question.answer {
            Expected::One(_) => ("choiceInteraction", "single", Some("1")),
            Expected::All(_) => ("choiceInteraction", "multiple", Some("0")),
            Expected::Order(_) => ("orderInteraction", "ordered", None),
            Expected::Between { .. } => continue,
        };
        assert_eq!(interaction.tag_name().name(), tag);
        assert_eq!(declared.attribute("cardinality"), Some(cardinality));
        assert_eq!(interaction.attribute("maxChoices"), bound);
        let labels: Vec<&str> = all("simpleChoice").filter_map(|n| n.text()).collect();
        let sent: Vec<&str> = question.options.iter().map(|(_, l)| l.as_str()).collect();
        assert_eq!(labels, sent);
    }
}

#[test]
fn statements_say_who_did_what() {
    let set = assignment(4);
    let key = Key::new("AAAA", true);
    let table = table(&set, &key, &["AAAB", "A..D"]);
    let text = xapi::statements(&set, &table, "https://practice.example.org/");
    let all: Vec<serde_json::Value> = serde_json::from_str(&text).expect("JSON");
    assert_eq!(all.len(), 10);
    for statement in &all {
        assert_eq!(
            statement["actor"]["account"]["homePage"],
            "https://practice.example.org/"
        );
        assert!(
            statement["verb"]["id"]
                .as_str()
                .unwrap()
                .starts_with("http")
        );
        assert!(
            statement["object"]["id"]
                .as_str()
                .unwrap()
                .starts_with("https://practice")
        );
        let scaled = statement["result"]["score"]["scaled"].as_f64().unwrap();
        assert!((0.0..=1.0).contains(&scaled));
        assert!(
            statement["result"]["duration"]
                .as_str()
                .unwrap()
                .starts_with("PT")
        );
    }
    assert_eq!(all[3]["result"]["response"], "B");
    assert!(all[4]["verb"]["id"].as_str().unwrap().ends_with("/passed"));
    assert!(all[9]["verb"]["id"].as_str().unwrap().ends_with("/failed"));
}
