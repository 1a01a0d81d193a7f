//! An answer to a question, between the question and a hand-in: what was taken
//! by its place, and a number as it is.

use crate::task::Answer;
use catalogue::quantity::Milli;
use study::question::{Answer as Given, Form, Piece, Question};

/// An answer as a hand-in carries it. What the question does not offer is passed over.
pub fn answer(question: &Question, given: &Given) -> Answer {
    let keys: Vec<&str> = keys(&question.form);
    let place = |key: &String| {
        let place = keys.iter().position(|it| it == key)?;
        u16::try_from(place).ok()
    };
    match (given, &question.form) {
        (Given::One(key), _) => Answer::Options(place(key).into_iter().collect()),
        (Given::Many(keys) | Given::Order(keys), _) => {
            Answer::Options(keys.iter().filter_map(place).collect())
        }
        (Given::Pairs(pairs), Form::Match { left, right, .. }) => {
            let said = |piece: &Piece| {
                let said = pairs.iter().rev().find(|(left, _)| *left == piece.key);
                let said = said.map(|(_, key)| key);
                let place = right.iter().position(|it| Some(&it.key) == said);
                u16::try_from(place.unwrap_or(right.len())).unwrap_or(u16::MAX)
            };
            Answer::Options(left.iter().map(said).collect())
        }
        (Given::Pairs(_), _) => Answer::Blank,
        (Given::Number(Milli(number)), _) => Answer::Number(i64::from(*number)),
    }
}

/// An answer from what a hand-in carries: the other way round from [`answer`].
/// None where it cannot have been the answer.
pub fn given(question: &Question, answer: &Answer) -> Option<Given> {
    if let (Answer::Number(number), Form::Number { .. }) = (answer, &question.form) {
        return Some(Given::Number(Milli(i32::try_from(*number).ok()?)));
    }
    let Answer::Options(places) = answer else {
        return None;
    };
    if let Form::Match { left, right, .. } = &question.form {
        let pair = |(piece, place): (&Piece, &u16)| {
            let said = right.get(usize::from(*place))?;
            Some((piece.key.clone(), said.key.clone()))
        };
        let fits =
            places.len() == left.len() && places.iter().all(|it| usize::from(*it) <= right.len());
        return fits.then(|| Given::Pairs(left.iter().zip(places).filter_map(pair).collect()));
    }
    let twice = (1..places.len()).any(|at| places[..at].contains(&places[at]));
    let keys = keys(&question.form);
    let taken = places.iter().map(|place| {
        let key = keys.get(usize::from(*place))?;
        Some((*key).to_owned())
    });
    let taken: Vec<String> = taken.collect::<Option<_>>()?;
    match &question.form {
        _ if twice => None,
        Form::One(_) | Form::Name(_) | Form::Slip(_) => match &taken[..] {
            [one] => Some(Given::One(one.clone())),
            _ => None,
        },
        Form::All(_) | Form::Place(_) => Some(Given::Many(taken)),
        Form::Order { .. } => Some(Given::Order(taken)),
        Form::Match { .. } | Form::Number { .. } => None,
    }
}

/// The keys of what is taken, in the order in which it was offered.
fn keys(form: &Form) -> Vec<&str> {
    match form {
        Form::Order { pieces, .. } => pieces.iter().map(|it| it.key.as_str()).collect(),
        form => form.choices().iter().map(|it| it.key.as_str()).collect(),
    }
}
