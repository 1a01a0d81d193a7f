//! Mastery by competency, from first answers, with a prior from the student's
//! other competencies.

use super::{
    ability::{Normal, Posterior, Responses, chance},
    difficulty::slope,
    gate::{Decision, Sequential},
};
use crate::{
    answer::Answer,
    day::Day,
    item::{Bank, Difficulty, Spread},
    numeric::{real, whole},
};

/// With fewer first answers than this a competency has not enough evidence.
pub const THIN: usize = 5;

/// How far a student's competencies differ from the student's whole, in logits.
const BETWEEN: f64 = 0.5;

/// Days after which an answer weighs half, where answers are weighed by age. A
/// rule of thumb, not a finding.
const HALF_LIFE: f64 = 90.0;

/// The first answers of a student: a fold over answers.
#[derive(Clone, Debug, Default)]
pub struct FirstTries {
    seen: Vec<bool>,
    lanes: Vec<Lane>,
    last: Option<Day>,
    weighed_on: Option<Day>,
}

#[derive(Clone, Debug, Default)]
struct Lane {
    responses: Responses,
    answers: Vec<bool>,
}

impl FirstTries {
    /// The first answers among these, in the order of the record.
    pub fn of<'a>(bank: &Bank, answers: impl IntoIterator<Item = &'a Answer>) -> Self {
        let mut tries = Self::default();
        for answer in answers {
            tries.take(bank, answer);
        }
        tries
    }

    /// Nothing yet, weighing answers by their age on `today`: half after 90 days.
    pub fn weighed(today: Day) -> Self {
        Self {
            weighed_on: Some(today),
            ..Self::default()
        }
    }

    /// Takes in one more answer. Only the first to a question counts, given
    /// without hint at the first attempt; the rest measure memory. A question
    /// that has left the catalogue is passed over.
    pub fn take(&mut self, bank: &Bank, answer: &Answer) {
        let Some(place) = bank.place(&answer.question) else {
            return;
        };
        if self.seen.len() <= place {
            self.seen.resize(bank.items().len().max(place + 1), false);
            self.lanes.resize(bank.blueprint().0.len(), Lane::default());
        }
        let seen = std::mem::replace(&mut self.seen[place], true);
        if seen || answer.hint || !answer.first_try {
            return;
        }
        let difficulty = bank.items()[place].difficulty;
        let weight = self.weighed_on.map_or(1.0, |today| {
            0.5_f64.powf(f64::from(today.since(answer.day)) / HALF_LIFE)
        });
        let lane = &mut self.lanes[bank.competency(place)];
        lane.responses
            .add(slope(difficulty), difficulty.mean, answer.right, weight);
        lane.answers.push(answer.right);
        self.last = self.last.max(Some(answer.day));
    }

    /// How many there are.
    pub fn count(&self) -> usize {
        self.lanes.iter().map(|lane| lane.answers.len()).sum()
    }
}

/// An expected per cent with where it may lie.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Percent {
    /// Expected.
    pub expected: u32,
    /// The lower end of the 80 % interval.
    pub low: u32,
    /// Its upper end.
    pub high: u32,
}

/// How a student stands in one competency.
#[derive(Clone, Debug, PartialEq)]
pub struct Standing {
    /// The id of the competency.
    pub id: String,
    /// Its name.
    pub name: String,
    /// How many first answers it rests on.
    pub count: usize,
    /// How many of them were right.
    pub right: usize,
    /// What is known of the ability.
    pub ability: Posterior,
    /// The per cent expected on the questions of this competency; nothing where
    /// evidence is thin or the bank has no such question.
    pub percent: Option<Percent>,
    /// Whether the last first answers show that practice has been enough.
    pub practice: Decision,
    /// All this in a sentence.
    pub words: String,
}

/// How a student stands, as a whole and by competency.
#[derive(Clone, Debug, PartialEq)]
pub struct Mastery {
    /// By competency, in the order of the blueprint.
    pub standings: Vec<Standing>,
    /// What is known of ability over the whole blueprint.
    pub overall: Posterior,
    /// How many first answers there are.
    pub count: usize,
    /// The per cent expected over the whole blueprint by its weights.
    pub percent: Option<Percent>,
    /// The day of the last first answer.
    pub last: Option<Day>,
    /// What the numbers rest on, in a sentence.
    pub words: String,
}

impl Mastery {
    /// How a student with these first answers stands.
    pub fn of(bank: &Bank, tries: &FirstTries) -> Self {
        let empty = Lane::default();
        let lane = |at: usize| tries.lanes.get(at).unwrap_or(&empty);
        let shares = &bank.blueprint().0;
        let mut all = Responses::default();
        for at in 0..shares.len() {
            all.extend(&lane(at).responses);
        }
        let questions: Vec<Questions> = bank.spreads().iter().map(Questions::of).collect();
        let standing = |at: usize| {
            let mut others = Responses::default();
            for other in (0..shares.len()).filter(|&other| other != at) {
                others.extend(&lane(other).responses);
            }
            let from = others.posterior(Normal::STANDARD);
            let prior = Normal {
                mean: from.mean,
                sd: (from.sd * from.sd + BETWEEN * BETWEEN).sqrt(),
            };
            let ability = lane(at).responses.posterior(prior);
            stand(
                &shares[at].id,
                &shares[at].name,
                lane(at),
                ability,
                &questions[at],
            )
        };
        let standings: Vec<Standing> = (0..shares.len()).map(standing).collect();
        let overall = all.posterior(Normal::STANDARD);
        let count = tries.count();
        let weighted = |theta: f64| {
            let parts = shares
                .iter()
                .zip(&questions)
                .filter_map(|(share, all)| Some((share.weight, all.expected(theta)?)));
            let (weights, sum) = parts.fold((0.0, 0.0), |(w, s), (weight, p)| {
                (w + weight, s + weight * p)
            });
            (weights > 0.0).then(|| sum / weights)
        };
        Self {
            percent: (count >= THIN)
                .then(|| percent(&overall, weighted))
                .flatten(),
            standings,
            overall,
            count,
            last: tries.last,
            words: rests_on(count, tries.weighed_on.is_some()),
        }
    }
}

fn rests_on(count: usize, weighed: bool) -> String {
    let mut words = match count {
        0 => "There is no first answer yet.".to_string(),
        1 => "This rests on 1 first answer.".to_string(),
        n => format!("This rests on {n} first answers."),
    };
    if weighed {
        words.push_str(" Older answers weigh less, half after 90 days; that is a rule of thumb.");
    }
    words
}

fn stand(id: &str, name: &str, lane: &Lane, ability: Posterior, questions: &Questions) -> Standing {
    let count = lane.answers.len();
    let shown = (count >= THIN)
        .then(|| percent(&ability, |theta| questions.expected(theta)))
        .flatten();
    let subject = name.to_lowercase();
    let words = match (count, shown) {
        (_, Some(p)) => format!(
            "On items like these, first try, you would be expected to score {} % (80 % interval \
             {}-{}), from {count} answers.",
            p.expected, p.low, p.high
        ),
        (0, None) => format!("There is no evidence in {subject} yet."),
        (1, None) => format!("Your evidence in {subject} is thin: 1 answer."),
        (n, None) => format!("Your evidence in {subject} is thin: {n} answers."),
    };
    let test = Sequential::default();
    let from = count.saturating_sub(test.longest);
    Standing {
        id: id.into(),
        name: name.into(),
        count,
        right: lane.answers.iter().filter(|&&right| right).count(),
        ability,
        percent: shown,
        practice: test.decide(&lane.answers[from..]).0,
        words,
    }
}

/// A competency's questions: how steep and how hard, each once, with how many are alike.
struct Questions(Vec<(f64, f64, usize)>);

impl Questions {
    fn of(spread: &Spread) -> Self {
        let one = |(it, count): (Difficulty, usize)| (slope(it), it.mean, count);
        Self(spread.difficulties().map(one).collect())
    }

    /// The mean chance of a right answer over the questions.
    fn expected(&self, theta: f64) -> Option<f64> {
        let (sum, count) = self.0.iter().fold((0.0, 0), |(sum, count), &(a, b, n)| {
            (sum + real(n) * chance(a * (theta - b)), count + n)
        });
        (count > 0).then(|| sum / real(count))
    }
}

fn percent(ability: &Posterior, expected: impl Fn(f64) -> Option<f64>) -> Option<Percent> {
    let whole_percent = |theta: f64| Some(whole(100.0 * expected(theta)?));
    Some(Percent {
        expected: whole_percent(ability.mean)?,
        low: whole_percent(ability.quantile(0.1))?,
        high: whole_percent(ability.quantile(0.9))?,
    })
}
