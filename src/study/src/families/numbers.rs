//! Numbers to be worked out: doses, sizes, cycles, dates. The exercises are
//! those of the bench; a fixed few of each kind stand among the questions.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one},
};
use crate::question::{Choice, Form, Shown, Study};
use catalogue::quantity::Milli;
use clinic::{
    case::Seed,
    numbers::{
        exact::Exact,
        exercises::{Answer, Exercise, Family as Kind, exercise_at},
    },
    standing::Standing,
};

pub(super) const FAMILY: Family = Family {
    id: "numbers",
    name: "Numbers to be worked out",
    facts,
    write,
};

/// How many exercises of each kind stand among the questions; the bench has all.
const EACH: u64 = 8;

/// A fact is the kind of an exercise and its index, spread over all there are.
fn facts(desk: &Desk) -> Vec<String> {
    let spread = |kind: Kind| {
        let count = kind.count(&desk.clinic);
        let indices = (0..EACH.min(count)).map(move |place| place * count / EACH.min(count));
        indices.map(move |index| (kind, index))
    };
    let all = Kind::ALL.into_iter().flat_map(spread);
    all.filter(|(kind, index)| {
        let drawn = exercise_at(&desk.clinic, *kind, *index);
        drawn.is_some_and(|drawn| form(desk, &drawn, &mut Seed::new(0)).is_some())
    })
    .map(|(kind, index)| format!("{}.{index}", kind.id()))
    .collect()
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[kind, index] = fact else { return None };
    let drawn = exercise_at(&desk.clinic, Kind::with_id(kind)?, index.parse().ok()?)?;
    let (form, closeness) = form(desk, &drawn, chance)?;
    let steps = drawn.working.lines.iter();
    let steps = steps.map(|line| format!("{}: {}.", line.what, line.numbers));
    let frame = drawn.working.frame.map(ToString::to_string);
    let said: Vec<String> = steps.chain(frame).collect();
    Some(Draft {
        competency: drawn.competency.clone(),
        stem: drawn.stem,
        shown: Shown::Nothing,
        form,
        closeness,
        reasons: Desk::reason(said.join(" "), &drawn.working.sources),
        study: study(desk, drawn.family),
    })
}

/// Where the arithmetic of a kind is taught.
fn study(desk: &Desk, kind: Kind) -> Vec<Study> {
    let lesson = match kind {
        Kind::Milligrams
        | Kind::Vasoconstrictor
        | Kind::Pounds
        | Kind::DrugMaximum
        | Kind::Cartridges
        | Kind::HeartDisease
        | Kind::Child
        | Kind::SecondSolution => "anaesthetic-arithmetic",
        Kind::Notation => "tooth-notation",
        Kind::Eruption => "eruption",
        Kind::Formula => "black-formulas",
        Kind::ShortBur | Kind::LongBur => "reading-a-bur-number",
        Kind::File => return Desk::study(desk.procedure("root-canal-access"), None),
        Kind::Proportion => return Desk::study(desk.procedure("alginate-impression"), None),
        Kind::Recall => return Desk::study(desk.procedure("deep-caries-temporary"), None),
        Kind::Temperature | Kind::Cycle | Kind::Spores | Kind::Reading => {
            "sterilisation-monitoring"
        }
    };
    desk.lesson(lesson)
}

/// The form of an exercise as a question, with how close its wrong options are.
fn form(desk: &Desk, drawn: &Exercise, chance: &mut Seed) -> Option<(Form, f32)> {
    match &drawn.answer {
        Answer::Number {
            value,
            unit,
            tolerance,
        } => number(*value - *tolerance, *value + *tolerance, unit.sign()),
        Answer::Between {
            from,
            to,
            unit,
            tolerance,
        } => number(*from - *tolerance, *to + *tolerance, unit.sign()),
        // With two options, half of all guesses would be right.
        Answer::Choice { options, right } if options.len() > 2 => {
            let mut choices = choices(options, *right);
            chance.shuffle(&mut choices);
            Some((Form::One(choices), 0.6))
        }
        Answer::Choice { .. } => None,
        answer => {
            let right = Offer::new("right", answer.words());
            let (choices, closeness) = one(right, others(desk, drawn), chance)?;
            Some((Form::One(choices), closeness))
        }
    }
}

/// A number to be typed; none where nothing of three places lies in the range,
/// or where it may be below zero, which no key of a number pad writes.
fn number(from: Exact, to: Exact, unit: &str) -> Option<(Form, f32)> {
    let thousand = Exact::whole(1000);
    let milli = |value: i128| i32::try_from(value).ok().map(Milli);
    let from = milli(-((Exact::ZERO - from * thousand).floor()))?;
    let to = milli((to * thousand).floor())?;
    (from <= to && from.0 >= 0).then(|| {
        let unit = unit.into();
        (Form::Number { unit, from, to }, 0.5)
    })
}

fn choices(options: &[String], right: usize) -> Vec<Choice> {
    let choice = |(at, text): (usize, &String)| Choice {
        key: format!("option-{}", at + 1),
        text: text.clone(),
        item: None,
        standing: if at == right {
            Standing::Right
        } else {
            Standing::Wrong
        },
        because: String::new(),
    };
    options.iter().enumerate().map(choice).collect()
}

/// What other exercises of the kind come to: answers of the same sort that are
/// another tooth, time, date or number.
fn others(desk: &Desk, drawn: &Exercise) -> Vec<Offer> {
    let near = (1..40)
        .filter_map(|step| exercise_at(&desk.clinic, drawn.family, drawn.index.wrapping_add(step)));
    let mut offers: Vec<Offer> = Vec::new();
    for other in near {
        let words = other.answer.words();
        let known = offers.iter().any(|it| it.text == words) || words == drawn.answer.words();
        if !known && offers.len() < 8 {
            let key = format!("other-{}", offers.len() + 1);
            offers.push(
                Offer::new(key, words)
                    .close(0.7)
                    .because("Work it step by step."),
            );
        }
    }
    offers
}
