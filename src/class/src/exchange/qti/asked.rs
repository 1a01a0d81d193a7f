//! Questions and numbers to be worked out as items. What is matched, a tooth, a
//! time and a date have no item of their own kind here.

use super::item::{Expected, Question};
use catalogue::quantity::Milli;
use clinic::numbers::exact::Exact;
use clinic::numbers::exercises::{Answer as Wanted, Exercise};
use study::question::{Answer, Form, Question as Asked, Shown};

impl Question {
    /// A question as an item; none where its form has none, or where it shows
    /// a drawing, which would be lost.
    pub fn of_question(id: &str, title: &str, asked: &Asked) -> Option<Self> {
        let lead = match &asked.shown {
            Shown::Nothing => String::new(),
            Shown::Lines(lines) => lines.join(" "),
            Shown::Items(_) | Shown::Drawing(_) => return None,
        };
        let answer = match (&asked.form, asked.best()) {
            (Form::One(_) | Form::Slip(_), Answer::One(key)) => Expected::One(key),
            (Form::All(_) | Form::Place(_), Answer::Many(keys)) => Expected::All(keys),
            (Form::Order { .. }, Answer::Order(keys)) => Expected::Order(keys),
            (Form::Number { unit, from, to }, _) => between(*from, *to, unit),
            _ => return None,
        };
        let options: Vec<(String, String)> = match &asked.form {
            Form::Order { pieces, .. } => pieces
                .iter()
                .map(|it| (it.key.clone(), it.text.clone()))
                .collect(),
            form => form
                .choices()
                .iter()
                .map(|it| (it.key.clone(), it.text.clone()))
                .collect(),
        };
        Some(Self {
            id: id.into(),
            title: title.into(),
            lead,
            prompt: asked.stem.clone(),
            options,
            answer,
        })
    }

    /// A number to be worked out as an item; none where it is no plain number
    /// and no choice.
    pub fn of_exercise(id: &str, exercise: &Exercise) -> Option<Self> {
        let key = |place: usize| format!("option-{}", place + 1);
        let (options, answer) = match &exercise.answer {
            Wanted::Choice { options, right } => {
                let options = options.iter().enumerate();
                let options = options.map(|(place, it)| (key(place), it.clone()));
                (options.collect(), Expected::One(key(*right)))
            }
            Wanted::Number {
                value,
                unit,
                tolerance,
            } => (
                Vec::new(),
                range(*value - *tolerance, *value + *tolerance, unit.sign()),
            ),
            Wanted::Between {
                from,
                to,
                unit,
                tolerance,
            } => (
                Vec::new(),
                range(*from - *tolerance, *to + *tolerance, unit.sign()),
            ),
            _ => return None,
        };
        Some(Self {
            id: id.into(),
            title: exercise.family.name().into(),
            lead: String::new(),
            prompt: exercise.stem.clone(),
            options,
            answer,
        })
    }
}

fn between(from: Milli, to: Milli, unit: &str) -> Expected {
    Expected::Between {
        from: from.to_string(),
        to: to.to_string(),
        unit: unit.into(),
    }
}

fn range(from: Exact, to: Exact, unit: &str) -> Expected {
    // Six places are more than any figure of the trade has.
    Expected::Between {
        from: from.text(6),
        to: to.text(6),
        unit: unit.into(),
    }
}
