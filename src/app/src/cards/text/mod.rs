//! A card as text: how it is kept in the record and passed on as a file.
//!
//! A card from outside is taken whole or not at all: everything it names has to
//! be in the catalogue, and everything it says has to be of a kind that this
//! page knows.

mod faults;

pub use faults::{faults, wish_faults};

use catalogue::{
    Catalogue,
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

#[cfg(test)]
mod tests;
