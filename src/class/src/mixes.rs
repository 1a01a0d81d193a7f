//! Mixes by hand: how a seat has to make one, and grading it by making it
//! again from what the hand did.

use crate::task::{
    Answer, Draw, Graded, Grader, Item, Made, Offered, Places, Response, Task, TaskId, Way,
};
use clinic::{
    Clinic,
    case::Seed,
    mixing::{
        Action, Celsius, Offer, PerCent, Recipe, Room, Seconds, Verdict, Wanted, steps_of,
        wanted::{COMPETENCY, DAMPS, WARMTHS},
    },
    standing::Standing,
};
use std::cell::RefCell;
use std::rc::Rc;

/// By how much later the dentist can be ready, in seconds.
const LATER: [f64; 5] = [0.0, 15.0, 30.0, 45.0, 60.0];

/// How long it takes to lay out and to tidy up, in seconds: our own estimate
/// (common practice, no source).
const AROUND: u32 = 60;

/// A mix as a seat has to make it.
#[derive(Clone, Debug, PartialEq)]
pub struct Drawn {
    /// What there is to mix with.
    pub offer: Offer,
    /// When the dentist asks for it.
    pub wanted: Wanted,
    /// The room.
    pub room: Room,
}

/// The mix that a seed means: the room differs where it matters to the
/// material, and so does the moment at which the dentist is ready. None where
/// the material is not mixed step by step, or has no such use.
pub fn drawn(clinic: &Clinic, material: &str, usage: Option<&str>, seed: u64) -> Option<Drawn> {
    let offer = steps_of(clinic.catalogue(), &material.into(), usage).ok()?;
    let wanted = clinic.wanted(&offer);
    Some(Drawn::of(offer, wanted, seed))
}

impl Drawn {
    fn of(offer: Offer, wanted: Wanted, seed: u64) -> Self {
        let mut chance = Seed::new(seed);
        let mut one = |all: &[f64]| chance.pick(all).copied().unwrap_or_default();
        let (warm, damp, later) = (one(&WARMTHS), one(&DAMPS), one(&LATER));
        let mut room = Room::usual();
        if wanted.warmth {
            room.temperature = Celsius::of(warm);
        }
        if wanted.damp {
            room.humidity = PerCent::of(damp);
        }
        let ready = Seconds::of(wanted.ready.get() + later);
        Self {
            offer,
            wanted: Wanted { ready, ..wanted },
            room,
        }
    }

    /// The verdict on a mix; none where it is not this one, or was not handed over.
    pub fn verdict(&self, clinic: &Clinic, made: &Made) -> Option<Verdict> {
        let (material, usage) = (&self.offer.material, self.offer.usage.as_str());
        let recipe = Recipe::new(clinic.catalogue(), material, Some(usage)).ok()?;
        let Some(Action::HandOver { ready, placing }) = made.actions.last() else {
            return None;
        };
        let mix = made
            .replay(material.as_str(), usage)
            .run_with(recipe)
            .ok()?;
        // Where no clock runs the dentist waits until it is ready.
        let waited = *ready == mix.clock();
        let fits = made.room == self.room
            && *placing == self.wanted.placing
            && (*ready == self.wanted.ready || waited);
        mix.verdict().filter(|_| fits).cloned()
    }

    fn seconds(&self) -> u32 {
        self.wanted.ready.millis().0 / 1000 + AROUND
    }

    /// The item, with the outcome of one mix among its kinds of outcome; blank
    /// where there is none.
    fn item(&self, verdict: Option<&Verdict>) -> (Item, Vec<u16>) {
        let uses = self.offer.uses.iter();
        let mut uses = uses.filter(|(id, _)| *id == self.offer.usage);
        let name = uses.next().map_or("", |(_, name)| name.as_str());
        let (right, ready) = ("Right, and in time", self.offer.ready.as_str());
        let mut offered = vec![Offered::outcome("right", right, Standing::Right, ready)];
        for (fault, standing, because) in verdict.into_iter().flat_map(found) {
            if offered.iter().all(|it| *it.id != *fault.id()) {
                offered.push(Offered::outcome(
                    fault.id(),
                    fault.name(),
                    standing,
                    because,
                ));
            }
        }
        let taken = match (verdict, u16::try_from(offered.len()).unwrap_or(1)) {
            (None, _) => Vec::new(),
            (Some(_), 1) => vec![0],
            (Some(_), all) => (1..all).collect(),
        };
        let item = Item {
            id: format!("mix.{}.{}", self.offer.material, self.offer.usage).into(),
            name: format!("Mix: {}, {name}", self.offer.name).into(),
            competency: COMPETENCY.into(),
            one: false,
            way: Way::Outcome,
            places: Places::Chosen,
            offered,
        };
        (item, taken)
    }
}

/// What was found in a mix, the worst first.
fn found(verdict: &Verdict) -> impl Iterator<Item = (clinic::mixing::Fault, Standing, &str)> {
    let worst = verdict.fault;
    let worst = worst.map(|fault| (fault, verdict.standing, verdict.cause.as_str()));
    let also = verdict.also.iter();
    worst
        .into_iter()
        .chain(also.map(|it| (it.fault, it.standing, it.sentence.as_str())))
}

/// Grades mixes. What a material is wanted like is kept from one mix to the next.
#[derive(Debug)]
pub struct MixGrader {
    clinic: Clinic,
    last: RefCell<Option<(Rc<Task>, Offer, Wanted)>>,
}

impl MixGrader {
    /// A grader over the catalogue behind `clinic`, with its preference card,
    /// which has to be the one that the assignment names.
    pub fn new(clinic: Clinic) -> Self {
        Self {
            clinic,
            last: RefCell::new(None),
        }
    }

    fn drawn(&self, task: &Rc<Task>, draw: Draw) -> Option<Drawn> {
        let Task::Mix { material, usage } = &**task else {
            return None;
        };
        let mut last = self.last.borrow_mut();
        if let Some((known, offer, wanted)) = &*last
            && known == task
        {
            return Some(Drawn::of(offer.clone(), wanted.clone(), draw.seed));
        }
        let catalogue = self.clinic.catalogue();
        let offer = steps_of(catalogue, &material.as_str().into(), usage.as_deref()).ok()?;
        let wanted = self.clinic.wanted(&offer);
        *last = Some((task.clone(), offer.clone(), wanted.clone()));
        Some(Drawn::of(offer, wanted, draw.seed))
    }
}

impl Grader for MixGrader {
    fn parts(&self, task: &Rc<Task>, draw: Draw) -> Option<u16> {
        self.drawn(task, draw).map(|_| 1)
    }

    fn seconds(&self, task: &Rc<Task>, draw: Draw) -> Option<u32> {
        Some(self.drawn(task, draw)?.seconds())
    }

    fn grade(&self, task: &TaskId, draw: Draw, response: &Response) -> Option<Graded> {
        let drawn = self.drawn(&task.task, draw).filter(|_| task.part == 0)?;
        let verdict = match &response.answer {
            Answer::Blank => None,
            Answer::Mixed(made) => Some(drawn.verdict(&self.clinic, made)?),
            _ => return None,
        };
        let (item, taken) = drawn.item(verdict.as_ref());
        Some(Graded {
            item: Rc::new(item),
            standing: verdict.as_ref().map_or(Standing::Wrong, |it| it.standing),
            per_cent: verdict.as_ref().map_or(0, |it| it.marks),
            taken: taken.into(),
            said: verdict.map(|it| it.cause.into()),
        })
    }
}
