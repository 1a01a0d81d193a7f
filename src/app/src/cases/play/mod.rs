//! A sitting at a case, as the page holds it: what can be read of it in a view
//! and what can be done with it in a handler. Nothing here judges an answer;
//! the decision does.

mod sought;
mod typed;

pub use sought::Sought;

use super::{draft::Draft, scene::Scene};
use crate::{
    browser::{clock, storage::BrowserStore},
    cards,
    log::{OpenLog, log},
    taught::clinic,
};
use clinic::{
    case::{Case, Decision, Form, overall},
    standing::Standing,
};
use leptos::{ev, prelude::*};
use record::{
    CaseAnswered, CaseFinished, CaseStarted, MixHandedOver, PerCent, SittingId, Store, Verdict,
    What, folds::Sitting,
};
use std::{ops::Deref, sync::Arc};

/// A sitting. Cheap to copy; every copy is the same sitting.
#[derive(Clone, Copy)]
pub struct Play {
    case: StoredValue<Arc<Case>>,
    /// The stored form of the preference card it is played with.
    card: StoredValue<Option<String>>,
    log: OpenLog,
    sitting: Memo<Option<Sitting>>,
    draft: RwSignal<Draft>,
    /// When the decision on screen was put there, in milliseconds.
    since: StoredValue<i64>,
}

/// A decision of a case, in any handler.
#[derive(Clone)]
pub struct Asked {
    case: Arc<Case>,
    /// Its place in the case.
    pub at: usize,
}

impl Deref for Asked {
    type Target = Decision;

    fn deref(&self) -> &Decision {
        &self.case.decisions[self.at]
    }
}

impl Play {
    /// Takes up the sitting at a case where the record has it, and follows
    /// what other tabs do with it.
    pub fn open(case: Case) -> Self {
        let log = log();
        let sought = Sought::new(case.frame.as_str(), case.seed, case.with.as_ref());
        let sitting = log.memo(move |events| sought.latest(events));
        let kept = sitting.with_untracked(|it| it.as_ref().and_then(|it| kept_draft(it.id)));
        let play = Self {
            case: StoredValue::new(Arc::new(case)),
            card: StoredValue::new(clinic().card().map(cards::write)),
            log,
            sitting,
            draft: RwSignal::new(kept.unwrap_or_default()),
            since: StoredValue::new(clock::now().utc_ms),
        };
        let follow = window_event_listener(ev::storage, move |event| {
            play.follow(event.key().as_deref(), event.new_value().as_deref());
        });
        on_cleanup(move || follow.remove());
        play
    }

    /// The case.
    pub fn case(self) -> Arc<Case> {
        self.case.get_value()
    }

    /// A decision of the case.
    pub fn asked(self, at: usize) -> Asked {
        let case = self.case();
        Asked { case, at }
    }

    /// What is on screen.
    pub fn scene(self) -> Memo<Scene> {
        Memo::new(move |_| {
            let case = self.case();
            self.sitting.with(|sitting| {
                self.draft
                    .with(|draft| Scene::of(&case.decisions, sitting.as_ref(), draft))
            })
        })
    }

    /// The answer that was given to a decision; empty where none was.
    pub fn answer(self, at: usize) -> Vec<String> {
        let asked = self.asked(at);
        self.sitting.with_untracked(|sitting| {
            let given = sitting.as_ref().and_then(|it| it.answer_to(&asked.id));
            given.map_or_else(Vec::new, |it| known(&asked, &it.answer))
        })
    }

    /// The options taken so far for a decision that waits for its answer.
    pub fn taken(self, at: usize) -> Memo<Vec<String>> {
        let asked = self.asked(at);
        Memo::new(move |_| self.draft.with(|draft| begun(&asked, draft)))
    }

    /// Takes these options for now.
    pub fn take(self, at: usize, taken: Vec<String>) {
        let decision = self.asked(at).id.clone();
        self.draft.update(|draft| {
            if draft.decision != decision {
                *draft = Draft::of(&decision);
            }
            draft.taken = taken;
        });
        self.keep();
    }

    /// Begins a sitting.
    pub fn start(self) {
        let case = self.case();
        let first = case.decisions.first().map_or("", |d| d.id.as_str());
        self.look_at(first);
        self.log.append(What::CaseStarted(CaseStarted {
            sitting: self.log.new_sitting(),
            case: case.frame.to_string(),
            seed: case.seed,
            with: case.with.as_ref().map(ToString::to_string),
            card: self.card.get_value(),
        }));
        self.keep();
    }

    /// Gives the answer as it is taken now, and records how it was judged.
    pub fn give(self, at: usize) {
        let asked = self.asked(at);
        let answer = self.draft.with_untracked(|draft| begun(&asked, draft));
        self.give_this(at, answer);
    }

    /// The latest mix that was handed over at the bench since the case was
    /// begun and that answers a decision.
    pub fn mixed(self, at: usize) -> Option<MixHandedOver> {
        let asked = self.asked(at);
        let by_hand = asked.by_hand.as_ref()?;
        let id = self.id()?;
        self.log.look(|events| {
            let mut since = events.iter().rev().take_while(
                |event| !matches!(&event.what, What::CaseStarted(it) if it.sitting == id),
            );
            since.find_map(|event| match &event.what {
                What::MixHandedOver(mix)
                    if mix.material == by_hand.material().as_str()
                        && mix.usage == by_hand.usage() =>
                {
                    Some(mix.clone())
                }
                _ => None,
            })
        })
    }

    /// Answers with a mix.
    pub fn give_mixed(self, at: usize, mix: &MixHandedOver) {
        let asked = self.asked(at);
        let by_hand = asked.by_hand.as_ref();
        let answer = by_hand.map(|it| it.answer(&mix.replay, &asked.choices));
        if let Some(answer) = answer.filter(|answer| !answer.is_empty()) {
            self.give_this(at, answer);
        }
    }

    fn give_this(self, at: usize, answer: Vec<String>) {
        let Some(sitting) = self.id() else { return };
        let seconds = self.seconds();
        // Looked at from now on even where the draft was never touched.
        self.take(at, answer.clone());
        let answered = answered(sitting, &self.asked(at), answer, seconds);
        self.log.append(What::CaseAnswered(answered));
    }

    /// Goes on from an explained decision: to the next one, or to the end.
    pub fn go_on(self, at: usize) {
        let case = self.case();
        if let Some(next) = case.decisions.get(at + 1) {
            self.look_at(&next.id);
            self.keep();
        } else {
            self.finish();
        }
    }

    fn finish(self) {
        let Some(sitting) = self.id() else { return };
        let marks: Vec<u8> = (0..self.case().decisions.len())
            .map(|at| self.asked(at).grade(&self.answer(at)).per_cent)
            .collect();
        self.log.append(What::CaseFinished(CaseFinished {
            sitting,
            per_cent: PerCent::of(overall(&marks)),
        }));
        // A draft that cannot be removed is never read again.
        let _ = BrowserStore.remove(&Draft::key(sitting));
    }

    /// What the finished sitting came to, in per cent.
    pub fn overall(self) -> u8 {
        self.sitting.with_untracked(|sitting| {
            let finish = sitting.as_ref().and_then(|it| it.finish);
            finish.map_or(0, |it| it.per_cent.get())
        })
    }

    /// The sitting, once it has begun.
    pub fn id(self) -> Option<SittingId> {
        self.sitting
            .with_untracked(|it| it.as_ref().map(|it| it.id))
    }

    fn look_at(self, decision: &str) {
        self.since.set_value(clock::now().utc_ms);
        self.draft.set(Draft::of(decision));
    }

    /// Seconds since the decision was first on screen, in all visits.
    fn seconds(self) -> u32 {
        let here = (clock::now().utc_ms - self.since.get_value()) / 1000;
        let before = self.draft.with_untracked(|draft| draft.seconds);
        before.saturating_add(u32::try_from(here).unwrap_or(0))
    }

    /// Keeps the draft. Where the storage is full or forbidden the page has
    /// said so already, and goes on in memory.
    fn keep(self) {
        if let Some(sitting) = self.id() {
            let mut draft = self.draft.get_untracked();
            draft.seconds = self.seconds();
            let _ = BrowserStore.put(&Draft::key(sitting), &draft.write());
        }
    }

    /// Takes over what another tab has kept.
    fn follow(self, key: Option<&str>, text: Option<&str>) {
        let mine = self.id().map(Draft::key);
        if key.is_none() || key != mine.as_deref() {
            return;
        }
        if let Some(draft) = text.and_then(Draft::read) {
            self.draft.set(draft);
        }
    }
}

/// An answer to a decision as the record has it, with its grade.
pub fn answered(
    sitting: SittingId,
    decision: &Decision,
    answer: Vec<String>,
    seconds: u32,
) -> CaseAnswered {
    let grade = decision.grade(&answer);
    CaseAnswered {
        sitting,
        decision: decision.id.clone(),
        answer,
        verdict: verdict(grade.standing),
        per_cent: PerCent::of(grade.per_cent),
        competency: decision.competency.to_string(),
        seconds,
    }
}

/// The verdict as the record has it.
pub fn verdict(standing: Standing) -> Verdict {
    match standing {
        Standing::Right => Verdict::Right,
        Standing::Acceptable => Verdict::Acceptable,
        Standing::Wrong => Verdict::Wrong,
        Standing::Unsafe => Verdict::Unsafe,
    }
}

fn kept_draft(sitting: SittingId) -> Option<Draft> {
    let text = BrowserStore.get(&Draft::key(sitting)).ok().flatten()?;
    Draft::read(&text)
}

/// What a draft holds of a decision. Things to be ordered are all there from
/// the start, in the order in which they were arranged.
fn begun(asked: &Decision, draft: &Draft) -> Vec<String> {
    let taken = if draft.decision == asked.id {
        known(asked, &draft.taken)
    } else {
        Vec::new()
    };
    match asked.form {
        Form::Order(_) if taken.len() != asked.choices.len() => {
            asked.choices.iter().map(|c| c.id.clone()).collect()
        }
        _ => taken,
    }
}

/// The ids that are options of a decision, each once.
fn known(asked: &Decision, ids: &[String]) -> Vec<String> {
    let mut known: Vec<String> = Vec::new();
    for id in ids {
        let typed = matches!(&asked.form, Form::Number(sum) if sum.is_typed(id));
        let mixed = asked.by_hand.as_ref().is_some_and(|it| it.is_mix(id));
        let fits = typed || mixed || asked.choice(id).is_some();
        if fits && !known.contains(id) {
            known.push(id.clone());
        }
    }
    known
}
