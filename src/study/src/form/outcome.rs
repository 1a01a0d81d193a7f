//! The result of a form: by competency, with what to study.

use crate::{
    item::Bank,
    mastery::{Interval, wilson},
    numeric::{real, whole},
};

/// What was answered to one question of a form.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Given {
    /// The question, by place in the bank.
    pub place: usize,
    /// Whether it was right; nothing where it was left blank.
    pub right: Option<bool>,
    /// Whether it was flagged to return to.
    pub flagged: bool,
}

/// Whether the form was worked through at one go.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Pauses {
    /// How often it was paused.
    pub count: u32,
    /// For how many seconds in all.
    pub seconds: u32,
}

/// One competency's part of a result.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// The id of the competency.
    pub id: String,
    /// Its name.
    pub name: String,
    /// How many questions.
    pub asked: usize,
    /// How many right.
    pub right: usize,
    /// How many blank; they count as not right.
    pub blank: usize,
    /// Where the share of right ones may lie (80 %, Wilson).
    pub interval: Interval,
    /// The questions to study, by place: wrong ones first, then blank ones.
    pub study: Vec<usize>,
    /// The procedures that these teach, each once.
    pub procedures: Vec<String>,
    /// All this in a sentence.
    pub words: String,
}

/// The result of a form.
#[derive(Clone, Debug, PartialEq)]
pub struct Outcome {
    /// By competency, in the order of the blueprint; only those asked.
    pub parts: Vec<Part>,
    /// The competencies to study, as places in `parts`: what costs most of the
    /// whole first. Empty where nothing was missed.
    pub study: Vec<usize>,
    /// How many right.
    pub right: usize,
    /// How many questions.
    pub asked: usize,
    /// Right in per cent.
    pub percent: u32,
    /// Whether that reaches the programme's stated per cent.
    pub reached: bool,
    /// What may be said, in sentences.
    pub words: Vec<String>,
}

impl Outcome {
    /// The result of these answers, against the programme's stated per cent.
    pub fn of(bank: &Bank, given: &[Given], percent: u32, pauses: Pauses) -> Self {
        let given: Vec<Given> = given
            .iter()
            .copied()
            .filter(|g| g.place < bank.items().len())
            .collect();
        let parts: Vec<Part> = (0..bank.blueprint().0.len())
            .filter_map(|at| part(bank, &given, at))
            .collect();
        let right = parts.iter().map(|part| part.right).sum();
        let asked = given.len();
        // Compared in whole numbers, so that 75 % of 20 is 15 and nothing else.
        let reached = asked > 0 && 100 * right >= percent as usize * asked;
        let mut study: Vec<usize> = (0..parts.len())
            .filter(|&at| parts[at].right < parts[at].asked)
            .collect();
        let lost = |at: usize| parts[at].asked - parts[at].right;
        study.sort_by(|&x, &y| {
            let share = |at: usize| real(lost(at)) / real(parts[at].asked);
            lost(y).cmp(&lost(x)).then(share(y).total_cmp(&share(x)))
        });
        let words = words(&parts, &study, right, asked, percent, reached, pauses);
        Self {
            percent: if asked == 0 {
                0
            } else {
                whole(100.0 * real(right) / real(asked))
            },
            parts,
            study,
            right,
            asked,
            reached,
            words,
        }
    }
}

fn part(bank: &Bank, given: &[Given], at: usize) -> Option<Part> {
    let here: Vec<&Given> = given
        .iter()
        .filter(|g| bank.competency(g.place) == at)
        .collect();
    if here.is_empty() {
        return None;
    }
    let share = &bank.blueprint().0[at];
    let count = |right: Option<bool>| here.iter().filter(|g| g.right == right).count();
    let (asked, right, blank) = (here.len(), count(Some(true)), count(None));
    let places = |right: Option<bool>| {
        here.iter()
            .filter(move |g| g.right == right)
            .map(|g| g.place)
    };
    let study: Vec<usize> = places(Some(false)).chain(places(None)).collect();
    let mut procedures: Vec<String> = Vec::new();
    for procedure in study
        .iter()
        .flat_map(|&place| &bank.items()[place].procedures)
    {
        if !procedures.contains(procedure) {
            procedures.push(procedure.clone());
        }
    }
    let left = match blank {
        0 => String::new(),
        n => format!(", {n} left blank"),
    };
    let words = format!("{}: {right} of {asked} right{left}.", share.name);
    Some(Part {
        id: share.id.clone(),
        name: share.name.clone(),
        asked,
        right,
        blank,
        interval: wilson(right, asked, 0.8),
        study,
        procedures,
        words,
    })
}

fn words(
    parts: &[Part],
    study: &[usize],
    right: usize,
    asked: usize,
    percent: u32,
    reached: bool,
    pauses: Pauses,
) -> Vec<String> {
    let mut words = vec![format!(
        "{right} of {asked} right. That {} the {percent} % stated by the programme; it says nothing \
         of another examination's scale.",
        if reached { "reaches" } else { "does not reach" },
    )];
    if let Some(&first) = study.first() {
        let names: Vec<String> = study
            .iter()
            .take(3)
            .map(|&at| parts[at].name.to_lowercase())
            .collect();
        let most = parts[first].asked - parts[first].right;
        words.push(format!(
            "Study next: {}. Most was missed in the first of these: {most}.",
            names.join(", ")
        ));
    }
    if pauses.count > 0 {
        words.push(format!(
            "Paused {} {}, {} minutes in all: not worked through at one go.",
            pauses.count,
            if pauses.count == 1 { "time" } else { "times" },
            pauses.seconds.div_ceil(60)
        ));
    }
    words
}
