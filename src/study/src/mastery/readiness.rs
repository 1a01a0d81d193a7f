//! Readiness: how likely a form like ours would be passed, shown only past a
//! gate, as a band, in words that claim no more than is known.

use super::{
    ability::Posterior,
    competency::{Mastery, THIN},
    difficulty::slope,
    score::pass_chance,
};
use crate::{
    day::Day,
    form::quotas,
    item::{Bank, Level},
    numeric::{real, whole},
};

/// How far our questions may be harder or easier than an examination's, in
/// logits: they are not equated with it.
pub const LINKING: f64 = 0.4;

/// The form that readiness is about.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Target {
    /// How many questions.
    pub items: usize,
    /// The programme's stated per cent at which it is passed.
    pub percent: u32,
}

impl Target {
    /// The least number of right answers that passes.
    pub fn need(self) -> usize {
        (self.items * self.percent as usize).div_ceil(100)
    }
}

/// One thing that must hold before a number is shown.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Gate {
    /// Whether it holds.
    pub met: bool,
    /// What is needed and how far it is, in a sentence.
    pub words: String,
}

/// How ready.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Band {
    /// Below 0.2.
    NotYet,
    /// From 0.2.
    Behind,
    /// From 0.5.
    Close,
    /// From 0.8.
    OnCourse,
}

impl Band {
    /// The band of a probability.
    pub fn of(chance: f64) -> Self {
        match chance {
            c if c < 0.2 => Self::NotYet,
            c if c < 0.5 => Self::Behind,
            c if c < 0.8 => Self::Close,
            _ => Self::OnCourse,
        }
    }

    /// The band in words.
    pub fn words(self) -> &'static str {
        match self {
            Self::NotYet => "not yet",
            Self::Behind => "behind",
            Self::Close => "close",
            Self::OnCourse => "on course",
        }
    }
}

/// Readiness as a screen shows it.
#[derive(Clone, Debug, PartialEq)]
pub struct Readiness {
    /// What must hold first; all of it, or no band is shown.
    pub gates: Vec<Gate>,
    /// The band, past the gate.
    pub band: Option<Band>,
    /// The probability in per cent, rounded to 5, for the detail view; past the gate.
    pub rounded: Option<u32>,
    /// What may be said, in sentences, in the order in which to show them.
    pub words: Vec<String>,
}

impl Readiness {
    /// Readiness on `today` of a student who stands like this.
    pub fn of(bank: &Bank, mastery: &Mastery, target: Target, today: Day) -> Self {
        let gates = gates(mastery, today);
        if gates.iter().any(|gate| !gate.met) {
            let mut words: Vec<String> = gates
                .iter()
                .filter(|gate| !gate.met)
                .map(|gate| gate.words.clone())
                .collect();
            words.insert(0, "There is too little to go on for a forecast.".into());
            return Self {
                gates,
                band: None,
                rounded: None,
                words,
            };
        }
        let form = expected_form(bank, target.items);
        let ability = &mastery.overall;
        let table = PassTable::around(ability, LINKING, &form, target.need());
        let chance = table.chance(ability, LINKING);
        Self {
            gates,
            band: Some(Band::of(chance)),
            rounded: Some(5 * whole(chance * 20.0)),
            words: words(mastery, chance, target),
        }
    }
}

/// The probability of passing one form at every ability.
#[derive(Clone, Debug, PartialEq)]
pub struct PassTable {
    /// The place of the first entry in the table over all abilities.
    first: usize,
    entries: Vec<f64>,
}

impl PassTable {
    /// The table for at least `need` right on a form, given by slope and
    /// difficulty of each question.
    pub fn new(form: &[(f64, f64)], need: usize) -> Self {
        Self::between(0, TABLE, form, need)
    }

    /// The part of the table that [`PassTable::chance`] looks at for this ability.
    fn around(ability: &Posterior, linking: f64, form: &[(f64, f64)], need: usize) -> Self {
        let mut thetas = likely(ability).map(|(theta, _)| theta);
        let low = thetas.next().unwrap_or(ability.mean);
        let high = thetas.last().unwrap_or(low);
        let place = |theta: f64| whole(place(theta).floor()) as usize;
        let (low, high) = (low - FURTHEST * linking, high + FURTHEST * linking);
        Self::between(place(low), (place(high) + 1).min(TABLE), form, need)
    }

    fn between(first: usize, last: usize, form: &[(f64, f64)], need: usize) -> Self {
        let entry = |at| pass_chance(real(at) * STEP - REACH, form, need);
        Self {
            first,
            entries: (first..=last).map(entry).collect(),
        }
    }

    /// The probability of passing over what is known of the ability, with a
    /// linking error of `linking` logits; 0 takes our questions to be exactly as
    /// hard as those of the form.
    pub fn chance(&self, ability: &Posterior, linking: f64) -> f64 {
        // Thirteen points over three standard deviations either way.
        let shifts: Vec<(f64, f64)> = (0..13)
            .map(|k| f64::from(k) * 0.5 - FURTHEST)
            .map(|z| (z * linking, (-0.5 * z * z).exp()))
            .collect();
        let all: f64 = shifts.iter().map(|(_, weight)| weight).sum();
        likely(ability)
            .map(|(theta, mass)| {
                let around = shifts
                    .iter()
                    .map(|(shift, weight)| weight * self.at(theta + shift));
                mass * around.sum::<f64>() / all
            })
            .sum()
    }

    /// Between two entries, by proportion.
    fn at(&self, theta: f64) -> f64 {
        let at = place(theta);
        let before = whole(at.floor()) as usize;
        let part = at - at.floor();
        let entry =
            |at: usize| self.entries[at.saturating_sub(self.first).min(self.entries.len() - 1)];
        entry(before) * (1.0 - part) + entry(before + 1) * part
    }
}

/// Where an ability lies in the table over all abilities.
fn place(theta: f64) -> f64 {
    ((theta + REACH) / STEP).clamp(0.0, real(TABLE))
}

/// The abilities that are not next to impossible.
fn likely(ability: &Posterior) -> impl Iterator<Item = (f64, f64)> {
    ability.nodes().filter(|(_, mass)| *mass > 1e-12)
}

/// The table of pass chances: 20 logits in steps of a twentieth.
const TABLE: usize = 400;
const STEP: f64 = 0.05;
const REACH: f64 = 10.0;

/// How many standard deviations of the linking error are looked at either way.
const FURTHEST: f64 = 3.0;

fn gates(mastery: &Mastery, today: Day) -> Vec<Gate> {
    let count = mastery.count;
    let mut gates = vec![Gate {
        met: count >= 40,
        words: format!("40 first answers are needed; there are {count}."),
    }];
    for standing in &mastery.standings {
        let n = standing.count;
        let plural = if n == 1 { "answer" } else { "answers" };
        gates.push(Gate {
            met: n >= THIN,
            words: format!(
                "Your evidence in {} is thin: {n} {plural}; {THIN} are needed.",
                standing.name.to_lowercase()
            ),
        });
    }
    gates.push(Gate {
        met: mastery.overall.sd <= 0.40,
        words: "Your answers do not yet agree closely enough to forecast from; a few more will do."
            .into(),
    });
    let age = mastery.last.map(|last| today.since(last));
    gates.push(Gate {
        met: age.is_some_and(|days| days <= 30),
        words: match age {
            Some(days) => format!(
                "Your last first answer is {days} days old; one from the last 30 days is needed."
            ),
            None => "One first answer from the last 30 days is needed.".into(),
        },
    });
    gates
}

fn words(mastery: &Mastery, chance: f64, target: Target) -> Vec<String> {
    let mut words = Vec::new();
    if let Some(p) = mastery.percent {
        words.push(format!(
            "On items like these, first try, you would be expected to score {} % (80 % interval {}-{}).",
            p.expected, p.low, p.high
        ));
    }
    let of_ten = match whole(chance * 10.0) {
        0 => "fewer than 1 in 10".to_string(),
        10 => "more than 9 in 10".to_string(),
        tenths => format!("about {tenths} in 10"),
    };
    words.push(format!(
        "Of students at your level on THIS bank, {of_ten} would pass a form of this length ({} \
         questions) at {} %, the per cent stated by the programme.",
        target.items, target.percent
    ));
    words.push(
        "This estimate assumes our items are as hard as the examination's; we have not checked that."
            .into(),
    );
    words.push("Not validated against examination results.".into());
    words
}

/// The blueprint's expected form: from each competency its quota, spread evenly
/// over the difficulties of its questions.
fn expected_form(bank: &Bank, items: usize) -> Vec<(f64, f64)> {
    let shares = bank.blueprint().0.len();
    let mut lanes: Vec<Vec<(f64, f64)>> = vec![Vec::new(); shares];
    for (place, item) in bank.items().iter().enumerate() {
        lanes[bank.competency(place)].push((slope(item.difficulty), item.difficulty.mean));
    }
    let core = Level::Core.difficulty();
    let mut form = Vec::with_capacity(items);
    for (lane, quota) in lanes
        .iter_mut()
        .zip(quotas(&bank.blueprint().weights(), items))
    {
        lane.sort_by(|x, y| x.1.total_cmp(&y.1));
        for k in 0..quota {
            let at = (2 * k + 1) * lane.len() / (2 * quota);
            form.push(*lane.get(at).unwrap_or(&(slope(core), core.mean)));
        }
    }
    form
}
