//! A hint: less to choose from, or where to begin, never the answer.

use catalogue::quantity::Milli;
use clinic::standing::Standing;
use study::question::{Form, Question};

/// A hint to a question.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Hint {
    /// The choice with this key is not it.
    RuledOut(String),
    /// A sentence.
    Says(String),
}

/// The hint to a question; none where every hint would be the answer.
pub fn hint(question: &Question) -> Option<Hint> {
    match &question.form {
        Form::One(all) | Form::Name(all) | Form::Slip(all) => {
            let mut wrong = all.iter().filter(|c| c.standing > Standing::Acceptable);
            // With two choices nothing would be left to choose.
            let ruled_out = wrong.next_back().filter(|_| all.len() > 2)?;
            Some(Hint::RuledOut(ruled_out.key.clone()))
        }
        Form::All(all) | Form::Place(all) => {
            let fits = |standing: Standing| standing <= Standing::Acceptable;
            let fitting = all.iter().filter(|c| fits(c.standing)).count();
            let says = format!("{fitting} of these {} belong.", all.len());
            Some(Hint::Says(says))
        }
        Form::Order { pieces, target } => {
            let first = target.stages.iter().flatten().next()?;
            let piece = pieces.iter().find(|piece| piece.key == *first)?;
            Some(Hint::Says(format!("First comes: {}", piece.text)))
        }
        Form::Match { left, right, pairs } => {
            let (of, with) = pairs.first().filter(|_| pairs.len() > 2)?;
            let place = left.iter().position(|piece| piece.key == *of)? + 1;
            let with = right.iter().find(|piece| piece.key == *with)?;
            Some(Hint::Says(format!("Number {place}: {}", with.text)))
        }
        Form::Number { from, to, unit } => {
            // Half to double is room enough to be wrong in.
            let positive = from.0 > 1 && to.0 < i32::MAX / 2;
            positive.then(|| {
                let (low, high) = (Milli(from.0 / 2), Milli(to.0 * 2));
                Hint::Says(
                    format!("It lies between {low} and {high} {unit}")
                        .trim_end()
                        .to_owned()
                        + ".",
                )
            })
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use study::question::{Choice, QuestionId, Shown};

    fn question(form: Form) -> Question {
        Question {
            id: QuestionId("f.a".into()),
            family: "f",
            competency: "c".into(),
            level: catalogue::cases::Level::Core,
            difficulty: 0.0,
            seconds: 10,
            stem: String::new(),
            shown: Shown::Nothing,
            form,
            reasons: Vec::new(),
            study: Vec::new(),
        }
    }

    fn choices(standings: &[Standing]) -> Vec<Choice> {
        let choice = |(at, standing): (usize, &Standing)| Choice {
            key: at.to_string(),
            text: at.to_string(),
            item: None,
            standing: *standing,
            because: String::new(),
        };
        standings.iter().enumerate().map(choice).collect()
    }

    #[test]
    fn what_is_ruled_out_is_wrong_and_something_is_left_to_choose() {
        use Standing::{Right, Unsafe, Wrong};
        let of = |standings: &[Standing]| hint(&question(Form::One(choices(standings))));
        assert_eq!(
            of(&[Right, Wrong, Unsafe]),
            Some(Hint::RuledOut("2".into()))
        );
        assert_eq!(of(&[Wrong, Wrong, Right]), Some(Hint::RuledOut("1".into())));
        assert_eq!(of(&[Right, Wrong]), None);
    }

    #[test]
    fn a_number_is_hedged_and_a_set_is_counted() {
        let number = |from: i32, to: i32| {
            hint(&question(Form::Number {
                unit: "mm".into(),
                from: Milli(from),
                to: Milli(to),
            }))
        };
        let says = |text: &str| Some(Hint::Says(text.to_owned()));
        assert_eq!(number(2000, 3000), says("It lies between 1 and 6 mm."));
        assert_eq!(number(0, 0), None);
        let all = Form::All(choices(&[
            Standing::Right,
            Standing::Wrong,
            Standing::Right,
        ]));
        assert_eq!(hint(&question(all)), says("2 of these 3 belong."));
    }
}
