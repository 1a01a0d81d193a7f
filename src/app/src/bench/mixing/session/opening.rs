//! Taking a mix up where it was left: at the bench, or in a task.

use super::{Session, Stage};
use crate::{
    bench::mixing::{
        kept::{Kept, Shelf},
        way::Way,
    },
    log::log,
    parts::announce::announcer,
    taught::catalogue,
};
use class::mixes::Drawn;
use clinic::mixing::{Mix, Offer, Replay, Room, Wanted};
use leptos::prelude::*;
use record::{SittingId, folds};
use std::sync::Arc;

impl Session {
    /// Takes up the mix where it was left, or lays a clean bench.
    pub fn open(offer: Offer, wanted: Wanted, clean: Mix) -> Self {
        let shelf = Shelf::Bench(offer.material.to_string(), offer.usage.clone());
        let kept = shelf.take();
        let kept = kept.and_then(|kept| Some((kept.sitting, kept.replay.run(catalogue()).ok()?)));
        let sitting = kept.as_ref().map(|(sitting, _)| *sitting);
        let sitting = sitting.unwrap_or_else(|| log().new_sitting());
        let mix = kept.map(|(_, mix)| mix);
        Self::of((offer, wanted), (clean, mix), sitting, None, shelf)
    }

    /// Takes up the mix of a task in the room that was set, or lays a clean bench.
    pub fn open_task(drawn: Drawn, clean: Mix, sitting: SittingId) -> Self {
        let shelf = Shelf::Task(sitting);
        // What was handed over is in the record, even where nothing else is kept.
        let handed = log().look(|events| {
            let mut mixes = folds::mixes(events).into_iter();
            let mix = mixes.find(|it| it.mix.sitting == sitting)?.mix;
            serde_json::from_str::<Replay>(&mix.replay).ok()
        });
        let replay = handed.or_else(|| shelf.take().map(|kept: Kept| kept.replay));
        let mix = replay.and_then(|replay| replay.run(catalogue()).ok());
        let Drawn {
            offer,
            wanted,
            room,
        } = drawn;
        Self::of((offer, wanted), (clean, mix), sitting, Some(room), shelf)
    }

    fn of(
        (offer, wanted): (Offer, Wanted),
        (clean, kept): (Mix, Option<Mix>),
        sitting: SittingId,
        set: Option<Room>,
        shelf: Shelf,
    ) -> Self {
        let log = log();
        let (mix, stage) = match kept {
            Some(mix) if mix.verdict().is_some() => (mix, Stage::Handed),
            Some(mix) => (mix, Stage::Open),
            None => (clean, Stage::Before),
        };
        let said = if stage == Stage::Open {
            "Taken up where you left it. The clock stands until you go on.".into()
        } else {
            String::new()
        };
        let session = Self {
            look: RwSignal::new(mix.look()),
            seconds: RwSignal::new(mix.clock().get()),
            offer: StoredValue::new(Arc::new(offer)),
            wanted: StoredValue::new(Arc::new(wanted)),
            mix: StoredValue::new(mix),
            sitting: StoredValue::new(sitting),
            set,
            hinted: RwSignal::new(shelf.is_hinted()),
            shelf: StoredValue::new(shelf),
            log,
            aloud: announcer(),
            way: Way::chosen(),
            stage: RwSignal::new(stage),
            worked: RwSignal::new(0.0),
            spatula: RwSignal::new(None),
            running: RwSignal::new(false),
            said: RwSignal::new(said),
            tested: RwSignal::new(false),
            turn: RwSignal::new(0),
            hand: StoredValue::new(None),
            held: StoredValue::new(None),
            last: StoredValue::new(0),
            rest: StoredValue::new(0),
            kept: StoredValue::new(0),
            frames: StoredValue::new(0),
        };
        on_cleanup(move || {
            session.keep();
            session.frames.try_update_value(|frames| *frames += 1);
        });
        session
    }
}
