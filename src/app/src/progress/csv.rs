//! Answers as comma-separated values (RFC 4180).

use crate::questions::days;
use class::exchange::csv::{Field, table as written};
use record::{Given, Verdict, folds::Answered};

const HEAD: [&str; 10] = [
    "day",
    "sitting",
    "question",
    "competency",
    "answer",
    "verdict",
    "per_cent",
    "hint",
    "unsure",
    "seconds",
];

/// The table of these answers.
pub fn table(answers: &[Answered<'_>]) -> String {
    let head = HEAD.map(|name| Field::Text(name.into()));
    let lines: Vec<Vec<Field>> = answers.iter().map(line).collect();
    written(&head, &lines)
}

fn line(answered: &Answered<'_>) -> Vec<Field> {
    let it = answered.answer;
    let text = |text: &str| Field::Text(text.into());
    let verdict = match it.verdict {
        Verdict::Right => "right",
        Verdict::Acceptable => "acceptable",
        Verdict::Wrong => "wrong",
        Verdict::Unsafe => "unsafe",
    };
    let yes = |flag: bool| text(if flag { "yes" } else { "no" });
    vec![
        Field::Text(days::iso(days::day(answered.at))),
        Field::Text(it.sitting.to_string()),
        text(&it.question),
        text(&it.competency),
        Field::Text(said(&it.answer)),
        text(verdict),
        Field::Count(it.per_cent.get().into()),
        yes(it.hint),
        yes(it.unsure),
        Field::Count(it.seconds.into()),
    ]
}

fn said(given: &Given) -> String {
    match given {
        Given::One(key) | Given::Number(key) => key.clone(),
        Given::Many(keys) => keys.join("; "),
        Given::Order(keys) => keys.join(" > "),
        Given::Pairs(pairs) => {
            let pairs: Vec<String> = pairs.iter().map(|(l, r)| format!("{l} = {r}")).collect();
            pairs.join("; ")
        }
    }
}
