//! Statements of what was done (xAPI, in a form that 1.0.3 and 2.0 both read),
//! as a file for whoever keeps them. Nothing is sent. An actor is a seat number
//! at the page that it was done on; there are no names.

use crate::assignment::Assignment;
use crate::handin::{Cell, Column, Mark, Row, Table};
use crate::task::{Places, Way};
use serde_json::{Value, json};

/// What is done, by the names that the form's makers list (value from memory).
const VERBS: &str = "http://adlnet.gov/expapi/verbs/";

/// The kind of thing that an item is (value from memory).
const INTERACTION: &str = "http://adlnet.gov/expapi/activities/cmi.interaction";

/// The statements of the hand-ins of a table: one an item, and one a hand-in.
/// `home` is the address of the page, which the ids of things begin with.
pub fn statements(assignment: &Assignment, table: &Table, home: &str) -> String {
    let base = format!("{home}#assignment-{:08x}", assignment.id());
    let mut all = Vec::new();
    for row in &table.rows {
        let actor = json!({
            "objectType": "Agent",
            "account": { "homePage": home, "name": format!("seat-{}", row.seat.0) },
        });
        for cell in &row.cells {
            let column = usize::try_from(cell.column)
                .ok()
                .and_then(|c| table.columns.get(c));
            all.extend(column.map(|column| answered(&actor, &base, column, cell)));
        }
        all.push(finished(&actor, &base, assignment, row));
    }
    Value::Array(all).to_string()
}

fn answered(actor: &Value, base: &str, column: &Column, cell: &Cell) -> Value {
    let mut definition = json!({
        "name": { "en": &*column.name },
        "type": INTERACTION,
    });
    let mut result = json!({
        "success": cell.mark.right(),
        "completion": cell.mark != Mark::Blank,
        "duration": format!("PT{}S", cell.seconds),
        "score": { "scaled": f64::from(cell.per_cent.min(100)) / 100.0 },
    });
    let said = cell.said.as_deref();
    let taken = cell.taken.places().iter();
    let taken: Vec<&crate::handin::Choice> = taken
        .filter_map(|&place| column.options.get(usize::from(place)))
        .collect();
    let (kind, response) = match column.way {
        Way::Options => {
            let choice = |o: &crate::handin::Choice| json!({ "id": &*o.id, "description": { "en": &*o.label } });
            definition["choices"] = column.options.iter().map(choice).collect();
            let ids: Vec<&str> = taken.iter().map(|option| &*option.id).collect();
            let kind = match column.places {
                Places::Ordered => "sequencing",
                Places::Chosen | Places::Paired { .. } => "choice",
            };
            (kind, Some(ids.join("[,]")))
        }
        Way::Number => ("numeric", said.map(ToOwned::to_owned)),
        Way::Typed => ("fill-in", said.map(ToOwned::to_owned)),
        // What was done itself has no form here; what came of it is told.
        Way::Outcome => {
            let labels: Vec<&str> = taken.iter().map(|option| &*option.label).collect();
            ("other", Some(labels.join(", ")))
        }
    };
    definition["interactionType"] = kind.into();
    if let Some(response) = response {
        result["response"] = response.into();
    }
    json!({
        "actor": actor,
        "verb": verb("answered"),
        "object": {
            "objectType": "Activity",
            "id": format!("{base}/{}/{}", column.place, column.id),
            "definition": definition,
        },
        "result": result,
    })
}

fn finished(actor: &Value, base: &str, assignment: &Assignment, row: &Row) -> Value {
    let right = row.cells.iter().filter(|c| c.mark.right()).count();
    let asked = row.cells.len();
    let passed = asked > 0 && right >= assignment.cut(asked);
    let share = u32::try_from(right).map_or(0.0, f64::from)
        / u32::try_from(asked.max(1)).map_or(1.0, f64::from);
    json!({
        "actor": actor,
        "verb": verb(if passed { "passed" } else { "failed" }),
        "object": {
            "objectType": "Activity",
            "id": base,
            "definition": {
                "name": { "en": assignment.name() },
                "type": "http://adlnet.gov/expapi/activities/assessment",
            },
        },
        "result": {
            "success": passed,
            "completion": true,
            "duration": format!("PT{}S", row.seconds),
            "score": { "scaled": share, "raw": right, "min": 0, "max": asked },
        },
    })
}

fn verb(word: &str) -> Value {
    json!({ "id": format!("{VERBS}{word}"), "display": { "en": word } })
}
