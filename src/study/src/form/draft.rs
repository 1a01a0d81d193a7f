//! A form being improved: its questions, what they add up to, and what a swap
//! would change.

use super::candidate::{Candidate, Sizes};

/// Prices in millionths of value: two questions of one enemy group.
const CLASH: i64 = 1_000_000;
/// One second over the limit.
const SECOND: i64 = 20_000;
/// A thousandth of a logit beyond what keeps forms parallel.
const UNEQUAL: i64 = 2_000;
/// Two questions of one family in one competency.
const FAMILY: i64 = 20_000;
/// Two questions of one difficulty in one competency.
const LEVEL: i64 = 10_000;

/// What a form should add up to so that forms are alike, with half of what may
/// lie between two of them.
#[derive(Clone, Copy, Debug)]
pub(super) struct Wanted {
    /// Difficulty of all questions together, in thousandths of a logit.
    pub difficulty: i64,
    /// How far it may be off.
    pub difficulty_off: i64,
    /// Information of all questions together, in millionths.
    pub information: i64,
    /// How far it may be off.
    pub information_off: i64,
}

/// What holds for a search.
#[derive(Clone, Copy, Debug)]
pub(super) struct Limits {
    /// Seconds in all.
    pub seconds: i64,
    /// What forms are made alike to; nothing where the best is wanted.
    pub wanted: Option<Wanted>,
    /// Whether families and difficulties are spread.
    pub spread: bool,
}

/// How good a form is: hard rules first, then likeness to other forms, then value.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Rank {
    /// Minus the price of broken hard rules; 0 where all hold.
    pub rules: i64,
    /// Minus the price of being unlike other forms; 0 where it is parallel.
    pub alike: i64,
    /// Value less the price of sameness.
    pub value: i64,
}

/// A form being improved.
pub(super) struct Draft<'a> {
    list: &'a [Candidate],
    limits: Limits,
    /// The chosen ones, as places in the list.
    pub chosen: Vec<usize>,
    taken: Vec<bool>,
    enemies: Vec<i64>,
    families: Vec<i64>,
    levels: Vec<i64>,
    seconds: i64,
    difficulty: i64,
    information: i64,
}

impl<'a> Draft<'a> {
    /// A form of these.
    pub fn new(list: &'a [Candidate], sizes: Sizes, limits: Limits, chosen: Vec<usize>) -> Self {
        let mut draft = Self {
            list,
            limits,
            chosen: Vec::new(),
            taken: vec![false; list.len()],
            enemies: vec![0; sizes.enemies],
            families: vec![0; sizes.families],
            levels: vec![0; sizes.levels],
            seconds: 0,
            difficulty: 0,
            information: 0,
        };
        for &at in &chosen {
            draft.count(at, 1);
        }
        draft.chosen = chosen;
        draft
    }

    fn count(&mut self, at: usize, sign: i64) {
        let c = &self.list[at];
        self.taken[at] = sign > 0;
        for &group in &c.enemies {
            self.enemies[group] += sign;
        }
        self.families[c.family] += sign;
        self.levels[c.level] += sign;
        self.seconds += sign * c.seconds;
        self.difficulty += sign * c.difficulty;
        self.information += sign * c.information;
    }

    /// Swaps inside a competency, the best first, until none helps. `short` lists
    /// what may come in, by competency.
    pub async fn improve(&mut self, short: &[Vec<usize>], pause: &mut impl AsyncFnMut()) {
        // Each swap raises a bounded whole number, so this ends; the bound keeps
        // a page from waiting on a strange bank.
        for _ in 0..20 * self.chosen.len() {
            let Some((at, into)) = self.best_swap(short) else {
                return;
            };
            let out = self.chosen[at];
            self.count(out, -1);
            self.count(into, 1);
            self.chosen[at] = into;
            pause().await;
        }
    }

    fn best_swap(&self, short: &[Vec<usize>]) -> Option<(usize, usize)> {
        let mut best = (0, None);
        for (at, &out) in self.chosen.iter().enumerate() {
            for &into in &short[self.list[out].domain] {
                if self.taken[into] {
                    continue;
                }
                let gain = self.gain(out, into);
                if gain > best.0 {
                    best = (gain, Some((at, into)));
                }
            }
        }
        best.1
    }

    /// What a swap gains.
    fn gain(&self, out: usize, into: usize) -> i64 {
        let (o, i) = (&self.list[out], &self.list[into]);
        let mut gain = i.value - o.value;
        let left: i64 = o.enemies.iter().map(|&g| self.enemies[g] - 1).sum();
        let met: i64 = i
            .enemies
            .iter()
            .map(|g| self.enemies[*g] - i64::from(o.enemies.contains(g)))
            .sum();
        gain -= CLASH * (met - left);
        let seconds = self.seconds - o.seconds + i.seconds;
        gain -= self.overtime(seconds) - self.overtime(self.seconds);
        let difficulty = self.difficulty - o.difficulty + i.difficulty;
        let information = self.information - o.information + i.information;
        gain -=
            self.unlike(difficulty, information) - self.unlike(self.difficulty, self.information);
        if self.limits.spread {
            if i.family != o.family {
                gain -= FAMILY * (self.families[i.family] - self.families[o.family] + 1);
            }
            if i.level != o.level {
                gain -= LEVEL * (self.levels[i.level] - self.levels[o.level] + 1);
            }
        }
        gain
    }

    fn overtime(&self, seconds: i64) -> i64 {
        SECOND * (seconds - self.limits.seconds).max(0)
    }

    fn unlike(&self, difficulty: i64, information: i64) -> i64 {
        self.limits.wanted.map_or(0, |wanted| {
            let over = |off: i64, allowed: i64| (off.abs() - allowed).max(0);
            let difficulty = over(difficulty - wanted.difficulty, wanted.difficulty_off);
            let information = over(information - wanted.information, wanted.information_off);
            // A millionth of information is worth about a hundredth of what a
            // thousandth of a logit is: 0.2 of information a question, 1 logit
            // between levels.
            UNEQUAL * difficulty + 20 * information
        })
    }

    fn clashes(&self) -> i64 {
        self.enemies.iter().map(|n| n * (n - 1) / 2).sum()
    }

    /// How good it is.
    pub fn rank(&self) -> Rank {
        let pairs = |counts: &[i64]| counts.iter().map(|n| n * (n - 1) / 2).sum::<i64>();
        let mut value: i64 = self.chosen.iter().map(|&at| self.list[at].value).sum();
        if self.limits.spread {
            value -= FAMILY * pairs(&self.families) + LEVEL * pairs(&self.levels);
        }
        Rank {
            rules: -(CLASH * self.clashes() + self.overtime(self.seconds)),
            alike: -self.unlike(self.difficulty, self.information),
            value,
        }
    }

    /// Whether two of one enemy group are in it.
    pub fn has_clash(&self) -> bool {
        self.clashes() > 0
    }

    /// Seconds in all.
    pub fn seconds(&self) -> i64 {
        self.seconds
    }
}
