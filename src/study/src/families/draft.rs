//! Putting a question together: choosing wrong options and laying them out.

use super::text::capital;
use crate::question::{Choice, Form, Shown, Study};
use catalogue::ids::{CompetencyId, ItemId};
use clinic::{Reason, case::Seed, standing::Standing};

/// A question before its difficulty is estimated.
pub struct Draft {
    pub(crate) competency: CompetencyId,
    pub(crate) stem: String,
    pub(crate) shown: Shown,
    pub(crate) form: Form,
    pub(crate) closeness: f32,
    pub(crate) reasons: Vec<Reason>,
    pub(crate) study: Vec<Study>,
}

/// Something that could be an option, with how close it is to the right one.
#[derive(Clone)]
pub(crate) struct Offer {
    pub key: String,
    pub text: String,
    pub item: Option<ItemId>,
    pub close: f32,
    pub because: String,
    pub harm: bool,
}

impl Offer {
    pub fn new(key: impl Into<String>, text: impl Into<String>) -> Self {
        Self {
            key: key.into(),
            text: capital(&text.into()),
            item: None,
            close: 0.5,
            because: String::new(),
            harm: false,
        }
    }

    pub fn of(item: &ItemId, name: &str) -> Self {
        Self {
            item: Some(item.clone()),
            ..Self::new(item.as_str(), name)
        }
    }

    pub fn close(mut self, close: f32) -> Self {
        self.close = close;
        self
    }

    pub fn because(mut self, because: impl Into<String>) -> Self {
        self.because = because.into();
        self
    }

    pub fn harm(mut self, harm: bool) -> Self {
        self.harm = harm;
        self
    }

    fn choice(self, right: bool) -> Choice {
        Choice {
            key: self.key,
            text: self.text,
            item: self.item,
            standing: match (right, self.harm) {
                (true, _) => Standing::Right,
                (false, true) => Standing::Unsafe,
                (false, false) => Standing::Wrong,
            },
            because: self.because,
        }
    }
}

/// The wrong options that stand beside the right ones: close to them in
/// meaning, like them in length, none twice.
pub(crate) fn wrong(
    right: &[&Offer],
    pool: Vec<Offer>,
    want: usize,
    chance: &mut Seed,
) -> Vec<Offer> {
    let length = right.iter().map(|r| r.text.len()).sum::<usize>() / right.len().max(1);
    let mut kept: Vec<(f32, Offer)> = Vec::with_capacity(pool.len());
    for each in pool {
        let told =
            |other: &Offer| other.key == each.key || other.text.eq_ignore_ascii_case(&each.text);
        if !right.iter().any(|r| told(r)) && !kept.iter().any(|(_, k)| told(k)) {
            kept.push((each.close - 0.6 * unlike(each.text.len(), length), each));
        }
    }
    kept.sort_by(|a, b| b.0.total_cmp(&a.0));
    kept.truncate(want * 2);
    let mut kept: Vec<Offer> = kept.into_iter().map(|(_, option)| option).collect();
    chance.shuffle(&mut kept);
    let longer = |o: &Offer| o.text.len() >= length;
    // A right answer that is the longest, or the shortest, gives itself away.
    for (place, fits) in [(0, true), (1, false)] {
        if kept.len() > want
            && want > 1
            && !kept[..want].iter().any(|o| longer(o) == fits)
            && let Some(other) = kept[want..].iter().position(|o| longer(o) == fits)
        {
            kept.swap(place, want + other);
        }
    }
    kept.truncate(want);
    kept
}

/// How far two lengths are from one another: 0 for equal, 1 for one twice the other.
// Lengths of texts are far below the range where f32 is exact.
#[expect(clippy::cast_precision_loss)]
fn unlike(a: usize, b: usize) -> f32 {
    let (a, b) = (a.max(4) as f32, b.max(4) as f32);
    (a / b).max(b / a).log2().min(2.0)
}

/// Mixes one right option with wrong ones; nothing where fewer than two wrong
/// ones are left. Gives the closeness as well.
pub(crate) fn one(right: Offer, pool: Vec<Offer>, chance: &mut Seed) -> Option<(Vec<Choice>, f32)> {
    several(vec![right], pool, 3, chance)
}

/// Mixes right options with up to `want` wrong ones.
pub(crate) fn several(
    right: Vec<Offer>,
    pool: Vec<Offer>,
    want: usize,
    chance: &mut Seed,
) -> Option<(Vec<Choice>, f32)> {
    let wrong = wrong(&right.iter().collect::<Vec<_>>(), pool, want, chance);
    if wrong.len() < 2 || right.is_empty() {
        return None;
    }
    // A handful of options.
    #[expect(clippy::cast_precision_loss)]
    let closeness = wrong.iter().map(|w| w.close).sum::<f32>() / wrong.len() as f32;
    let mut all: Vec<Choice> = right.into_iter().map(|r| r.choice(true)).collect();
    all.extend(wrong.into_iter().map(|w| w.choice(false)));
    chance.shuffle(&mut all);
    Some((all, closeness))
}

/// One of several wordings, with `{}` filled in order by `with`.
pub(crate) fn wording(chance: &mut Seed, wordings: &[&str], with: &[&str]) -> String {
    let pattern = chance.pick(wordings).copied().unwrap_or_default();
    let mut out = String::with_capacity(pattern.len() + 60);
    let mut rest = pattern;
    for each in with {
        let Some((before, after)) = rest.split_once("{}") else {
            break;
        };
        out.push_str(before);
        out.push_str(each);
        rest = after;
    }
    out.push_str(rest);
    capital(&out)
}
