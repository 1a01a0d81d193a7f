//! A card as text: how it is kept in the record and passed on as a file.
//!
//! A card from outside is taken whole or not at all: everything it names has to
//! be in the catalogue, and everything it says has to be of a kind that this
//! page knows.

use catalogue::{
    Catalogue,
    ids::{ItemId, ProcedureId},
    preference::{Card, Wish},
};
use serde_json::{Map, Value, json};

/// The field that says what the text is; its value is the version of the form.
const HEAD: &str = "trayward-card";
/// The version of the form that is written, and the last that is read.
const VERSION: u64 = 1;
/// The most bytes a card takes; a full one takes a tenth of it.
const LARGEST: usize = 64 * 1024;
/// The most wishes a card holds.
pub const MOST_WISHES: usize = 60;
/// The most letters of a name.
pub const LONGEST_NAME: usize = 80;
/// The most letters of any other text.
pub const LONGEST_TEXT: usize = 400;
/// The most days after which a patient comes back: ten years.
pub const LONGEST_RECALL: u32 = 3650;

/// The stored form of a card.
pub fn write(card: &Card) -> String {
    json!({ HEAD: VERSION, "card": card }).to_string()
}

/// Reads a card.
///
/// # Errors
/// Everything that is wrong with it, in sentences.
pub fn read(text: &str, catalogue: &Catalogue) -> Result<Card, Vec<String>> {
    let card = parse(text)?;
    let faults = faults(&card, catalogue);
    if faults.is_empty() {
        Ok(card)
    } else {
        Err(faults)
    }
}

fn parse(text: &str) -> Result<Card, Vec<String>> {
    let one = |sentence: &str| vec![sentence.to_owned()];
    if text.len() > LARGEST {
        return Err(one("It is too large to be a preference card."));
    }
    let none = "It is no preference card of this page, or it is damaged.";
    let value: Value = serde_json::from_str(text).map_err(|_| one(none))?;
    match value.get(HEAD).and_then(Value::as_u64) {
        Some(1..=VERSION) => {}
        Some(0) | None => return Err(one(none)),
        Some(_) => {
            return Err(one(
                "It was written by a newer version of this page. Reload the page to get that version, then try again.",
            ));
        }
    }
    let Some(Value::Object(fields)) = value.get("card") else {
        return Err(one(none));
    };
    card(fields)
}

fn card(fields: &Map<String, Value>) -> Result<Card, Vec<String>> {
    let mut faults = Vec::new();
    for field in fields.keys() {
        if !["id", "name", "about", "wishes"].contains(&field.as_str()) {
            faults.push(format!(
                "It has a part that this page does not know: “{field}”."
            ));
        }
    }
    let mut text = |field: &str| {
        let found = fields.get(field).and_then(Value::as_str);
        if found.is_none() {
            faults.push(format!("Its “{field}” is missing."));
        }
        found.unwrap_or_default().to_owned()
    };
    let (id, name, about) = (text("id"), text("name"), text("about"));
    let wishes = match fields.get("wishes") {
        Some(Value::Array(wishes)) => wishes.as_slice(),
        None => &[],
        Some(_) => {
            faults.push("Its wishes are no list.".into());
            &[]
        }
    };
    let mut granted = Vec::new();
    for (index, wish) in wishes.iter().enumerate() {
        match read_wish(wish) {
            Ok(wish) => granted.push(wish),
            Err(sentence) => faults.push(format!("Wish {}: {sentence}", index + 1)),
        }
    }
    if !faults.is_empty() {
        return Err(faults);
    }
    Ok(Card {
        id: id.as_str().into(),
        name,
        about,
        wishes: granted,
    })
}

fn read_wish(value: &Value) -> Result<Wish, String> {
    let kind = match value {
        Value::Object(one) if one.len() == 1 => one.keys().next().map_or("", String::as_str),
        _ => return Err("it is not written as a wish.".into()),
    };
    serde_json::from_value(value.clone()).map_err(|error| {
        let error = error.to_string();
        if error.starts_with("unknown variant") {
            format!("this page does not know its kind, “{kind}”.")
        } else {
            format!("“{kind}” is not written as this page writes it: {error}.")
        }
    })
}

/// What is wrong with a card, in sentences: what the catalogue does not have,
/// and what is empty, too long or without sense.
pub fn faults(card: &Card, catalogue: &Catalogue) -> Vec<String> {
    let mut faults = Vec::new();
    let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
    let id = card.id.as_str();
    if id.is_empty() || id.len() > LONGEST_NAME || !id.chars().all(plain) {
        faults.push("Its id is not of small letters, digits and hyphens.".into());
    }
    if card.name.trim().is_empty() {
        faults.push("It has no name.".into());
    }
    if card.name.chars().count() > LONGEST_NAME || card.about.chars().count() > LONGEST_TEXT {
        faults.push("Its name or what it is about is too long.".into());
    }
    if card.wishes.len() > MOST_WISHES {
        faults.push(format!("It has more than {MOST_WISHES} wishes."));
    }
    for (index, wish) in card.wishes.iter().enumerate() {
        let own = wish_faults(wish, catalogue);
        faults.extend(
            own.into_iter()
                .map(|it| format!("Wish {}: {it}", index + 1)),
        );
    }
    faults
}

/// What is wrong with one wish, in the ends of sentences.
pub fn wish_faults(wish: &Wish, catalogue: &Catalogue) -> Vec<String> {
    let (items, procedures) = named(wish);
    let mut faults: Vec<String> = Vec::new();
    for item in &items {
        if catalogue.item(item).is_none() {
            faults.push(format!("the catalogue has no thing “{item}”."));
        }
    }
    for procedure in procedures {
        if catalogue.procedure(procedure).is_none() {
            faults.push(format!("the catalogue has no procedure “{procedure}”."));
        }
    }
    if items.len() == 2 && items[0] == items[1] {
        faults.push("it names one thing twice.".into());
    }
    match wish {
        Wish::HandOver { how, .. }
            if how.trim().is_empty() || how.chars().count() > LONGEST_TEXT =>
        {
            faults.push("how it is handed over is missing or too long.".into());
        }
        Wish::Prefer { item, role } => {
            let material = catalogue.material(item);
            if catalogue.item(item).is_some() && !material.is_some_and(|m| m.roles.contains(role)) {
                let name = catalogue.item_name(item);
                faults.push(format!("{name} does not serve in that role."));
            }
        }
        Wish::Recall { plan, days } => {
            if catalogue.plan(plan).is_none() {
                faults.push(format!("the catalogue has no plan “{plan}”."));
            }
            if days.from == 0 || days.to > LONGEST_RECALL {
                faults.push(format!("days run from 1 to {LONGEST_RECALL}."));
            }
        }
        _ => {}
    }
    faults
}

/// The things and procedures that a wish names.
fn named(wish: &Wish) -> (Vec<&ItemId>, &[ProcedureId]) {
    match wish {
        Wish::Exchange {
            instead_of,
            take,
            procedures,
        } => (vec![instead_of, take], procedures),
        Wish::Add {
            item,
            beside,
            procedures,
        } => (vec![item, beside], procedures),
        Wish::LeaveOut { item, procedures } => (vec![item], procedures),
        Wish::Before { first, then } => (vec![first, then], &[]),
        Wish::HandOver { item, .. } | Wish::Prefer { item, .. } => (vec![item], &[]),
        Wish::Dam { .. } | Wish::Recall { .. } => (Vec::new(), &[]),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use catalogue::{items::Role, quantity::Span};

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
                text(r#"{"hand-over":{"item":"explorer","how":" "}}"#),
                "handed over",
            ),
            (" ".repeat(LARGEST + 1), "too large"),
        ] {
            let faults = read(&text, &catalogue()).unwrap_err().join(" ");
            assert!(faults.contains(said), "{text}: {faults}");
        }
    }
}
