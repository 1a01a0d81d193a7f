//! Changes leave everything else as it was.

use super::*;
use proptest::prelude::*;

const TEXT: &str = r#"# About the whole.
id = "a" # the id
names = ["x", "y"]

# The first step.
[[step]]
id = "one"
uses = { probe = "to feel", mirror = "to see" }
seconds = [1, 2]

# The second step.
[[step]]
id = "two"
slips = [
  { slip = "s", mend = "m" }, # a remark
  { slip = "t", mend = "n" },
]
[step.hand-over]
item = "probe"

[[variation]]
take = "mirror"
"#;

fn path(steps: &str) -> Vec<Step> {
    let step = |step: &str| match step.parse() {
        Ok(at) => Step::Entry(at),
        Err(_) => Step::Field(step.to_owned()),
    };
    steps
        .split('.')
        .filter(|step| !step.is_empty())
        .map(step)
        .collect()
}

fn text(says: &str) -> Value {
    Value::Text(says.to_owned())
}

#[test]
fn a_value_is_replaced_and_nothing_else() {
    for (at, value, from, to) in [
        ("id", text("b"), "id = \"a\"", "id = \"b\""),
        ("names.1", text("z"), "\"y\"", "\"z\""),
        (
            "step.0.uses.mirror",
            text("say \"so\"\n"),
            "\"to see\"",
            r#""say \"so\"\n""#,
        ),
        ("step.1.slips.0.mend", text("better"), "\"m\"", "\"better\""),
        (
            "step.1.hand-over.item",
            text("floss"),
            "item = \"probe\"",
            "item = \"floss\"",
        ),
        (
            "step.0.seconds.1",
            Value::Number("30".into()),
            "[1, 2]",
            "[1, 30]",
        ),
    ] {
        let changed = set(TEXT, &path(at), &value).unwrap();
        assert_eq!(changed, TEXT.replacen(from, to, 1), "{at}");
        let tree = Tree::read(&changed).unwrap();
        assert_eq!(tree.at(&path(at)).unwrap().value, value);
    }
    assert_eq!(set(TEXT, &path("nothing"), &text("x")), None);
    assert_eq!(set(TEXT, &path("id"), &Value::Number("[".into())), None);
}

#[test]
fn a_field_is_added_and_taken_out_again() {
    for (table, name) in [
        ("", "purpose"),
        ("step.0", "says"),
        ("step.0.uses", "dental-floss"),
        ("step.1", "says"),
        ("step.1.hand-over", "how"),
        ("step.1.slips.1", "harm"),
        ("variation.0", "because"),
    ] {
        let added = put_field(TEXT, &path(table), name, &text("new")).unwrap();
        let mut whole = path(table);
        whole.push(Step::Field(name.into()));
        let tree = Tree::read(&added).unwrap();
        assert_eq!(
            tree.at(&whole).unwrap().value,
            text("new"),
            "{table} {name}"
        );
        assert_eq!(remove(&added, &whole).unwrap(), TEXT, "{table} {name}");
        assert_eq!(put_field(&added, &path(table), name, &text("new")), None);
    }
}

#[test]
fn entries_are_taken_out() {
    let gone = remove(TEXT, &path("step.0")).unwrap();
    assert!(!gone.contains("The first step") && gone.contains("# The second step."));
    let gone = remove(TEXT, &path("step.1")).unwrap();
    assert!(!gone.contains("hand-over") && gone.contains("[[variation]]"));
    let gone = remove(TEXT, &path("names.0")).unwrap();
    assert!(gone.contains("names = [\"y\"]"));
    let gone = remove(&gone, &path("names.0")).unwrap();
    assert!(gone.contains("names = []"));
    let gone = remove(TEXT, &path("step.1.slips.1")).unwrap();
    assert!(gone.contains("# a remark") || gone.contains("mend = \"m\""));
}

#[test]
fn entries_change_places_with_their_remarks() {
    let moved = move_entry(TEXT, &path("step"), 0, false).unwrap();
    let tree = Tree::read(&moved).unwrap();
    let id = |at: &str| tree.at(&path(at)).unwrap().text("id").unwrap().to_owned();
    assert_eq!((id("step.0"), id("step.1")), ("two".into(), "one".into()));
    assert!(tree.at(&path("step.0.hand-over")).is_some());
    let (first, second) = (
        moved.find("# The first").unwrap(),
        moved.find("# The second").unwrap(),
    );
    assert!(second < first);
    assert_eq!(move_entry(&moved, &path("step"), 1, true).unwrap(), TEXT);
    let moved = move_entry(TEXT, &path("names"), 1, true).unwrap();
    assert!(moved.contains("[\"y\", \"x\"]"));
    assert_eq!(move_entry(TEXT, &path("step"), 0, true), None);
    assert_eq!(move_entry(TEXT, &path("step"), 1, false), None);
}

#[test]
fn a_copy_gets_an_id_of_its_own() {
    let copied = add_copy(TEXT, &path("step"), 1).unwrap();
    let tree = Tree::read(&copied).unwrap();
    assert_eq!(tree.at(&path("step.2")).unwrap().text("id"), Some("two-2"));
    assert_eq!(
        tree.at(&path("step.2.hand-over")).unwrap().text("item"),
        Some("probe")
    );
    let copied = add_copy(TEXT, &path("names"), 0).unwrap();
    assert!(copied.contains("[\"x\", \"x\", \"y\"]"));
}

/// A table that only the names of its fields make has no text of its own: what
/// is in it can be changed, and it stays where it is.
#[test]
fn a_table_of_names_is_left_to_the_text() {
    let names =
        "[[drawing]]\nid = \"b\"\nform.file = { size = 25 }\nend = { tip.spoon = { width = 1 } }\n";
    for at in ["drawing.0.form", "drawing.0.end.tip"] {
        let table = path(at);
        assert_eq!(set(names, &table, &text("x")), None, "{at}");
        assert_eq!(put_field(names, &table, "x", &text("x")), None, "{at}");
        assert_eq!(remove(names, &table), None, "{at}");
    }
    assert_eq!(remove(names, &path("drawing.0.form.file")), None);
    let wider = Value::Number("2".into());
    let changed = set(names, &path("drawing.0.end.tip.spoon.width"), &wider).unwrap();
    assert_eq!(changed, names.replacen("width = 1", "width = 2", 1));
    let copied = add_copy(names, &path("drawing"), 0).unwrap();
    assert_eq!(copied.matches("form.file = { size = 25 }").count(), 2);
}

/// Every way to something in a document.
fn ways(node: &Node, here: &[Step], into: &mut Vec<Vec<Step>>) {
    let mut visit = |step: Step, inner: &Node| {
        let mut way = here.to_vec();
        way.push(step);
        into.push(way.clone());
        ways(inner, &way, into);
    };
    match &node.value {
        Value::Table(fields, _) => {
            for (key, inner) in fields {
                visit(Step::Field(key.clone()), inner);
            }
        }
        Value::List(entries, _) => {
            for (at, inner) in entries.iter().enumerate() {
                visit(Step::Entry(at), inner);
            }
        }
        _ => {}
    }
}

proptest! {
    /// Whatever is done to a document of content/, it stays one that can be read.
    #[test]
    fn any_change_of_built_in_content_leaves_toml(
        file in prop::sample::select(vec![
            "procedures/suture-removal/procedure.toml",
            "cases/deep-caries.toml",
            "rules/materials.toml",
            "materials/zinc-oxide.toml",
            "preference-cards/examples.toml",
            "drawings/endodontics.toml",
        ]),
        picked in any::<prop::sample::Index>(),
        says in "\\PC{0,12}",
        back in any::<bool>(),
    ) {
        let content = concat!(env!("CARGO_MANIFEST_DIR"), "/../../content/");
        let before = std::fs::read_to_string(format!("{content}{file}")).unwrap();
        let tree = Tree::read(&before).unwrap();
        let mut all = Vec::new();
        ways(&tree.root, &[], &mut all);
        let way = picked.get(&all);
        if let Some(after) = set(&before, way, &text(&says)) {
            let tree = Tree::read(&after).unwrap();
            prop_assert_eq!(&tree.at(way).unwrap().value, &text(&says));
        }
        if let Some(after) = remove(&before, way) {
            prop_assert!(after.len() < before.len());
            let mut left = Vec::new();
            ways(&Tree::read(&after).unwrap().root, &[], &mut left);
            prop_assert!(left.len() < all.len());
        }
        let (last, list) = way.split_last().unwrap();
        if let Step::Entry(at) = last {
            if let Some(copied) = add_copy(&before, list, *at) {
                let mut more = Vec::new();
                ways(&Tree::read(&copied).unwrap().root, &[], &mut more);
                prop_assert!(more.len() > all.len());
            }
            if let Some(moved) = move_entry(&before, list, *at, back) {
                let mut same = Vec::new();
                ways(&Tree::read(&moved).unwrap().root, &[], &mut same);
                prop_assert_eq!(same.len(), all.len());
            }
        }
    }
}
