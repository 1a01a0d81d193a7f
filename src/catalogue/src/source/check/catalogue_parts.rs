//! The simple kinds: ids that are unique and well formed, competencies that
//! add up, findings, instruments and materials.

use super::{At, Checker};
use crate::{
    Catalogue,
    findings::Scale,
    items::{Lookalike, Material, Mixing, Place},
};
use std::collections::HashSet;

impl Checker<'_, '_> {
    pub(super) fn parts(&mut self, catalogue: &Catalogue) {
        self.ids(catalogue);
        self.blueprint(catalogue);
        for (i, finding) in catalogue.findings.iter().enumerate() {
            self.scale(&At::new("finding", i), &finding.scale);
        }
        for (i, impossible) in catalogue.impossible.iter().enumerate() {
            self.condition(&At::new("impossible", i).field("when"), &impossible.when);
        }
        for (i, instrument) in catalogue.instruments.iter().enumerate() {
            let at = At::new("instrument", i);
            self.text(&at, "purpose", &instrument.purpose);
            self.text(&at, "look", &instrument.look);
            self.lookalikes(&at, &instrument.lookalikes);
            self.sources(&at, &instrument.sources);
        }
        for (i, material) in catalogue.materials.iter().enumerate() {
            self.material(&At::new("material", i), material);
        }
        self.drawings(catalogue);
    }

    fn ids(&mut self, catalogue: &Catalogue) {
        let mut items = HashSet::new();
        for (list, ids) in catalogue.kinds() {
            let mut own = HashSet::new();
            let seen = if matches!(list, "instrument" | "material") {
                &mut items
            } else {
                &mut own
            };
            for (i, id) in ids.into_iter().enumerate() {
                let at = At::new(list, i).field("id");
                if !seen.insert(id) {
                    self.report(
                        &at,
                        format!("the id '{id}' stands twice; every {list} needs its own"),
                    );
                }
                let plain = |b: u8| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'-';
                if id.is_empty() || !id.bytes().all(plain) {
                    self.report(
                        &at,
                        format!("the id '{id}' is not lower-case words joined by hyphens"),
                    );
                }
            }
        }
    }

    fn blueprint(&mut self, catalogue: &Catalogue) {
        let sum: u32 = catalogue
            .competencies
            .iter()
            .map(|c| u32::from(c.weight))
            .sum();
        if sum != 100 {
            let at = At::new("competency", 0).field("weight");
            self.report(
                &at,
                format!("the weights add up to {sum}; they have to add up to 100"),
            );
        }
    }

    fn scale(&mut self, at: &At, scale: &Scale) {
        match scale {
            Scale::Words(words) if words.len() < 2 => {
                self.report(
                    &at.field("scale"),
                    "a scale of words needs at least two".into(),
                );
            }
            Scale::Number {
                least,
                most,
                usual,
                step,
                ..
            } if least >= most || usual < least || usual > most || step.0 <= 0 => {
                let message = "the least, the usual and the most have to stand in this order, and the step above 0";
                self.report(&at.field("scale"), message.into());
            }
            _ => {}
        }
    }

    fn lookalikes(&mut self, at: &At, lookalikes: &[Lookalike]) {
        let at = at.field("lookalikes");
        for (i, lookalike) in lookalikes.iter().enumerate() {
            self.wants(
                &at.entry(i).field("item"),
                "item",
                lookalike.item.as_str(),
                |k| &k.items,
            );
        }
    }

    fn material(&mut self, at: &At, material: &Material) {
        self.text(at, "purpose", &material.purpose);
        self.text(at, "storage", &material.storage);
        self.lookalikes(at, &material.lookalikes);
        self.sources(at, &material.sources);
        for (i, conflict) in material.not_under.iter().enumerate() {
            let at = at.field("not-under").entry(i);
            self.wants(
                &at.field("class"),
                "class of materials",
                conflict.class.as_str(),
                |k| &k.classes,
            );
            self.text(&at, "because", &conflict.because);
            self.sources(&at, &conflict.sources);
        }
        if let Some(cover) = &material.cover {
            let at = at.field("cover");
            for (i, class) in cover.by.iter().enumerate() {
                self.wants(
                    &at.field("by").entry(i),
                    "class of materials",
                    class.as_str(),
                    |k| &k.classes,
                );
            }
            self.sources(&at, &cover.sources);
        }
        if let Some(mixing) = &material.mixing {
            self.mixing(&at.field("mixing"), mixing);
        }
    }

    fn mixing(&mut self, at: &At, mixing: &Mixing) {
        self.wants(&at.field("with"), "item", mixing.with.as_str(), |k| {
            &k.items
        });
        self.sources(at, &mixing.sources);
        self.text(at, "ready", &mixing.ready);
        self.lasts(&at.field("mix-seconds"), Some(mixing.mix_seconds));
        self.lasts(&at.field("work-seconds"), Some(mixing.work_seconds));
        self.lasts(&at.field("set-seconds"), mixing.set_seconds);
        if mixing.work_seconds.to < mixing.mix_seconds.from {
            let message =
                "the working time is over before the mix is; both count from the start of the mix";
            self.report(&at.field("work-seconds"), message.into());
        }
        if mixing.set_seconds.is_none() && !mixing.light {
            let message = "without a setting time the material has to need the light";
            self.report(&at.field("light"), message.into());
        }
    }

    fn drawings(&mut self, catalogue: &Catalogue) {
        let mut drawn = HashSet::new();
        for (i, (id, shows)) in catalogue.drawings.iter().enumerate() {
            let at = At::new("drawing", i);
            self.wants(&at.field("id"), "item", id.as_str(), |k| &k.items);
            if !drawn.insert(id) {
                self.report(
                    &at.field("id"),
                    format!("'{id}' is drawn twice; keep one drawing"),
                );
            }
            if let Err(fault) = shows.check() {
                self.report(&at, fault.to_string());
            }
        }
        for (list, ids) in [
            (
                "instrument",
                catalogue
                    .instruments
                    .iter()
                    .map(|x| (&x.id, x.place))
                    .collect::<Vec<_>>(),
            ),
            (
                "material",
                catalogue
                    .materials
                    .iter()
                    .map(|x| (&x.id, x.place))
                    .collect(),
            ),
        ] {
            for (i, (id, place)) in ids.into_iter().enumerate() {
                if place == Place::Tray && !drawn.contains(id) {
                    let message =
                        format!("'{id}' has no drawing; add one to content/drawings with this id");
                    self.report(&At::new(list, i).field("id"), message);
                }
            }
        }
    }
}
