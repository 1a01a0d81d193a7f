//! A question as measurement sees it.

use super::{Form, Question, Study};
use crate::item::{Difficulty, Item, Level};

/// What measurement has to know of a question.
pub fn measured(question: &Question) -> Item {
    let procedures = question.study.iter().filter_map(|study| match study {
        Study::Procedure(id) => Some(id.to_string()),
        _ => None,
    });
    Item {
        id: question.id.to_string(),
        competency: question.competency.to_string(),
        family: question.family.to_owned(),
        difficulty: Difficulty {
            mean: question.difficulty,
            // As surely as an author's level is known: nobody has been counted yet.
            sd: Level::Core.difficulty().sd,
        },
        seconds: question.seconds,
        guess: guess(&question.form),
        procedures: procedures.collect(),
        enemies: enemies(question),
    }
}

/// The chance of being right without knowing.
fn guess(form: &Form) -> f64 {
    match form {
        Form::One(all) | Form::Name(all) | Form::Slip(all) if !all.is_empty() => {
            1.0 / crate::numeric::real(all.len())
        }
        _ => 0.0,
    }
}

/// Questions of one family about one procedure or thing are of one mould, and
/// two families may ask about the very same fact: neither pair stands in one form.
fn enemies(question: &Question) -> Vec<String> {
    let fact = question.id.fact();
    let about = fact.first().copied().unwrap_or_default();
    vec![
        format!("{}.{about}", question.family),
        format!("fact.{}", fact.join(".")),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::question::{QuestionId, Shown as Beside};
    use catalogue::cases::Level as Shown;

    fn question(form: Form) -> Question {
        Question {
            id: QuestionId::of("missing", "amalgam.bur"),
            family: "missing",
            competency: "set-up".into(),
            level: Shown::Core,
            difficulty: 0.25,
            seconds: 20,
            stem: String::new(),
            shown: Beside::Nothing,
            form,
            reasons: Vec::new(),
            study: vec![
                Study::Item("bur".into()),
                Study::Procedure("amalgam".into()),
            ],
        }
    }

    #[test]
    fn an_item_carries_what_measurement_needs() {
        let number = Form::Number {
            unit: String::new(),
            from: catalogue::quantity::Milli(0),
            to: catalogue::quantity::Milli(0),
        };
        let item = measured(&question(number));
        assert_eq!(item.id, "missing.amalgam.bur");
        assert_eq!(item.procedures, ["amalgam"]);
        assert_eq!(item.enemies, ["missing.amalgam", "fact.amalgam.bur"]);
        assert!(item.guess.abs() < 1e-12, "a typed number is hardly guessed");
    }
}
