//! What came of an answer. Where all seats have the same question, its options
//! are those of the report. Where each has another of the family, an option of
//! one is none of another, and the report goes by kinds of outcome.

use crate::task::{Graded, Item, Offered, Places, Way};
use catalogue::quantity::Milli;
use clinic::standing::Standing;
use std::rc::Rc;
use study::question::{Answer, Choice, Form, Question, Verdict};

/// How many letters of a question are its name.
const NAMED: usize = 90;

/// What an item is called.
pub struct Named {
    id: String,
    name: String,
}

impl Named {
    /// One question, the same for all seats.
    pub fn question(question: &Question) -> Self {
        let mut name: String = question.stem.chars().take(NAMED).collect();
        if name.len() < question.stem.len() {
            let word = name.rfind(' ').unwrap_or(name.len());
            name.truncate(word);
            name.push('…');
        }
        Self {
            id: question.id.to_string(),
            name,
        }
    }

    /// A question of a family, of which so many stand before it in the task.
    pub fn family(id: &str, name: &str, before: usize) -> Self {
        match before {
            0 => Self {
                id: format!("question.{id}"),
                name: name.to_owned(),
            },
            before => Self {
                id: format!("question.{id}.{}", before + 1),
                name: format!("{name} ({})", before + 1),
            },
        }
    }
}

/// A question graded; without an answer it is blank.
pub fn graded(question: &Question, named: Named, alike: bool, answer: Option<&Answer>) -> Graded {
    let verdict = answer.map(|answer| question.grade(answer));
    let choices = question.form.choices();
    let (offered, taken) = if alike && !choices.is_empty() {
        (options(question), places(choices, answer))
    } else {
        let mut offered = vec![Offered::outcome("right", "Right", Standing::Right, "")];
        let mut taken = Vec::new();
        if let (Some(answer), Some(verdict)) = (answer, &verdict) {
            if verdict.right {
                taken.push(0);
            } else {
                offered.push(wrong(question, answer, verdict));
                taken.push(1);
            }
        }
        (offered, taken)
    };
    let (way, said) = match (&question.form, answer) {
        (Form::Number { .. }, Some(Answer::Number(number))) => {
            (Way::Number, Some(Rc::from(number.to_string())))
        }
        (Form::Number { .. }, _) => (Way::Number, None),
        _ if alike && !choices.is_empty() => (Way::Options, None),
        _ => (Way::Outcome, None),
    };
    let several = matches!(question.form, Form::All(_) | Form::Place(_));
    Graded {
        item: Rc::new(Item {
            id: named.id.into(),
            name: named.name.into(),
            competency: question.competency.as_str().into(),
            one: !(alike && several),
            way,
            places: match &question.form {
                Form::Order { .. } => Places::Ordered,
                Form::Match { right, .. } => Places::Paired { right: right.len() },
                _ => Places::Chosen,
            },
            offered,
        }),
        standing: standing(verdict.as_ref()),
        per_cent: verdict.map_or(0, |it| it.per_cent),
        taken: taken.into(),
        said,
    }
}

fn standing(verdict: Option<&Verdict>) -> Standing {
    match verdict {
        Some(it) if it.right => Standing::Right,
        Some(it) if it.harm => Standing::Unsafe,
        _ => Standing::Wrong,
    }
}

/// The options of a question as they are.
fn options(question: &Question) -> Vec<Offered> {
    let several = matches!(question.form, Form::All(_) | Form::Place(_));
    let why = question.reasons.first();
    let option = |choice: &Choice| {
        let fits = choice.standing <= Standing::Acceptable;
        let because = match (choice.because.as_str(), why) {
            ("", Some(why)) if fits => why.because.as_str(),
            (because, _) => because,
        };
        Offered {
            id: choice.key.as_str().into(),
            label: choice.text.as_str().into(),
            standing: choice.standing,
            left_out: if several && fits {
                Standing::Wrong
            } else {
                Standing::Right
            },
            because: because.into(),
        }
    };
    question.form.choices().iter().map(option).collect()
}

fn places(choices: &[Choice], answer: Option<&Answer>) -> Vec<u16> {
    let keys = match answer {
        Some(Answer::One(key)) => std::slice::from_ref(key),
        Some(Answer::Many(keys)) => &keys[..],
        _ => &[],
    };
    let place = |key: &String| {
        let place = choices.iter().position(|it| it.key == *key)?;
        u16::try_from(place).ok()
    };
    keys.iter().filter_map(place).collect()
}

/// Of what kind a wrong answer is: where one thing was to be taken, what was
/// taken for it.
fn wrong(question: &Question, answer: &Answer, verdict: &Verdict) -> Offered {
    if let Answer::One(key) = answer
        && let Some(choice) = question.form.choices().iter().find(|it| it.key == *key)
    {
        let id = format!("instead.{key}");
        return Offered::outcome(&id, &choice.text, choice.standing, &choice.because);
    }
    if verdict.harm {
        let hurt = "Something that could hurt somebody";
        return Offered::outcome("unsafe", hurt, Standing::Unsafe, "");
    }
    let off = verdict.wrong.len();
    let (id, label) = match (&question.form, answer) {
        (Form::All(_) | Form::Place(_), _) => match (off, verdict.missed.len()) {
            (0, _) => ("left-out", "Something left out"),
            (_, 0) => ("too-much", "Something too much"),
            _ => ("both", "Something too much, and something left out"),
        },
        (Form::Order { .. }, _) if off <= 1 => ("one-moved", "One thing out of place"),
        (Form::Order { .. }, _) => ("several-moved", "Several things out of place"),
        (Form::Match { .. }, _) if off <= 2 => ("pair-swapped", "Two of them taken for each other"),
        (Form::Match { .. }, _) => ("several-pairs", "Several matched wrongly"),
        (Form::Number { from, to, .. }, Answer::Number(number)) => number_off(*from, *to, *number),
        _ => ("wrong", "A wrong option"),
    };
    Offered::outcome(id, label, Standing::Wrong, "")
}

fn number_off(from: Milli, to: Milli, number: Milli) -> (&'static str, &'static str) {
    let (from, to, number) = (i64::from(from.0), i64::from(to.0), i64::from(number.0));
    let within = |number: i64, times: i64| (from * times..=to * times).contains(&number);
    if within(number, 10) || within(number * 10, 1) {
        ("ten", "Ten times too much or too little")
    } else if number > to {
        ("high", "Too high")
    } else {
        ("low", "Too low")
    }
}
