//! Cards come back as they were written; what is wrong with one is said.

use super::*;
use catalogue::{ids::ItemId, items::Role, quantity::Span};

/// One thing, one material that serves as a liner, one plan, one procedure.
fn catalogue() -> Catalogue {
    #[derive(serde::Deserialize)]
    struct File {
        instrument: Vec<catalogue::items::Instrument>,
        material: Vec<catalogue::items::Material>,
        plan: Vec<catalogue::plans::Plan>,
        procedure: Vec<catalogue::procedures::Procedure>,
    }
    let text = r#"
        [[instrument]]
        id = "explorer"
        name = "Explorer"
        family = "f"
        purpose = ""
        look = ""
        reprocessing = "critical"
        sources = []
        [[material]]
        id = "silicate"
        name = "Calcium silicate"
        family = "f"
        class = "c"
        purpose = ""
        form = ""
        roles = ["liner"]
        storage = ""
        sources = []
        [[plan]]
        id = "stepwise"
        name = "Stepwise"
        about = ""
        [[procedure]]
        id = "filling"
        name = "Filling"
        short = "Filling"
        kind = "treatment"
        purpose = ""
        competency = "c"
        sources = []
        step = []
    "#;
    let file: File = toml::from_str(text).unwrap();
    Catalogue {
        instruments: file.instrument,
        materials: file.material,
        plans: file.plan,
        procedures: file.procedure,
        ..Catalogue::default()
    }
}

fn card(wishes: Vec<Wish>) -> Card {
    Card {
        id: "own-1".into(),
        name: "A card".into(),
        about: "For the test.".into(),
        wishes,
    }
}

fn every_kind() -> Card {
    let (explorer, silicate) = (ItemId::from("explorer"), ItemId::from("silicate"));
    card(vec![
        Wish::Exchange {
            instead_of: explorer.clone(),
            take: silicate.clone(),
            procedures: vec!["filling".into()],
        },
        Wish::Add {
            item: silicate.clone(),
            beside: explorer.clone(),
            procedures: Vec::new(),
        },
        Wish::LeaveOut {
            item: explorer.clone(),
            procedures: Vec::new(),
        },
        Wish::Before {
            first: silicate.clone(),
            then: explorer.clone(),
        },
        Wish::HandOver {
            item: explorer,
            how: "Over the chest, “handle” first.".into(),
        },
        Wish::Dam { always: false },
        Wish::Prefer {
            item: silicate,
            role: Role::Liner,
        },
        Wish::Recall {
            plan: "stepwise".into(),
            days: Span { from: 63, to: 77 },
        },
        Wish::PreferPlan {
            plan: "stepwise".into(),
        },
    ])
}

#[test]
fn a_card_of_every_kind_of_wish_comes_back() {
    assert_eq!(read(&write(&every_kind()), &catalogue()), Ok(every_kind()));
}

#[test]
fn the_first_form_is_read_for_ever() {
    let text = r#"{"trayward-card":1,"card":{"id":"own-1","name":"A card","about":"For the test.","wishes":[{"exchange":{"instead-of":"explorer","take":"silicate","procedures":["filling"]}},{"recall":{"plan":"stepwise","days":[63,77]}}]}}"#;
    let read = read(text, &catalogue()).unwrap();
    assert_eq!(read.wishes[0], every_kind().wishes[0]);
    assert_eq!(read.wishes[1], every_kind().wishes[7]);
}

#[test]
fn what_is_wrong_is_said_and_nothing_is_taken() {
    let text = |wishes: &str| {
        format!(
            r#"{{"trayward-card":1,"card":{{"id":"a","name":"n","about":"","wishes":[{wishes}]}}}}"#
        )
    };
    for (text, said) in [
        (String::new(), "no preference card"),
        ("[1]".into(), "no preference card"),
        (r#"{"trayward-card":2,"card":{}}"#.into(), "newer version"),
        (
            r#"{"trayward-card":1,"card":{"id":"a","about":""}}"#.into(),
            "“name” is missing",
        ),
        (
            r#"{"trayward-card":1,"card":{"id":"a","name":"n","about":"","since":1}}"#.into(),
            "“since”",
        ),
        (
            r#"{"trayward-card":1,"card":{"id":"A b","name":"n","about":""}}"#.into(),
            "id",
        ),
        (
            r#"{"trayward-card":1,"card":{"id":"a","name":" ","about":""}}"#.into(),
            "no name",
        ),
        (
            text(r#"{"sing":{"song":"x"}}"#),
            "Wish 1: this page does not know its kind, “sing”",
        ),
        (
            text(r#"{"dam":{"always":"yes"}}"#),
            "Wish 1: “dam” is not written",
        ),
        (
            text(r#"{"dam":{"always":true}},{"leave-out":{"item":"sword"}}"#),
            "Wish 2: the catalogue has no thing “sword”",
        ),
        (
            text(r#"{"leave-out":{"item":"explorer","procedures":["duel"]}}"#),
            "no procedure “duel”",
        ),
        (
            text(r#"{"before":{"first":"explorer","then":"explorer"}}"#),
            "twice",
        ),
        (
            text(r#"{"prefer":{"item":"explorer","role":"liner"}}"#),
            "does not serve",
        ),
        (
            text(r#"{"recall":{"plan":"stepwise","days":[9,3]}}"#),
            "from the least to the most",
        ),
        (
            text(r#"{"recall":{"plan":"stepwise","days":[0,3]}}"#),
            "days run",
        ),
        (
            text(r#"{"recall":{"plan":"later","days":[1,3]}}"#),
            "no plan “later”",
        ),
        (
            text(r#"{"prefer-plan":{"plan":"later"}}"#),
            "no plan “later”",
        ),
        (
            text(r#"{"hand-over":{"item":"explorer","how":" "}}"#),
            "handed over",
        ),
        (" ".repeat(LARGEST + 1), "too large"),
    ] {
        let faults = read(&text, &catalogue()).unwrap_err().join(" ");
        assert!(faults.contains(said), "{text}: {faults}");
    }
}
