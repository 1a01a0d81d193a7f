//! Kinetics: known materials and sources, values in their ranges, and an
//! illustration called by its name.

use super::{At, Checker};
use crate::{
    Catalogue,
    ids::SourceId,
    items::Mixing,
    kinetics::{Kinetics, Stated, Use},
};
use std::collections::HashSet;

impl Checker<'_, '_> {
    pub(super) fn kinetics(&mut self, catalogue: &Catalogue) {
        let mut seen = HashSet::new();
        for (i, kinetics) in catalogue.kinetics.iter().enumerate() {
            let at = At::new("kinetics", i);
            let id = kinetics.material.as_str();
            self.wants(&at.field("material"), "material", id, |k| &k.materials);
            if !seen.insert(id) {
                let message = format!("the kinetics of '{id}' stand twice; keep one");
                self.report(&at.field("material"), message);
            }
            let material = catalogue.material(&kinetics.material);
            match material.map(|m| m.mixing.as_ref()) {
                Some(Some(mixing)) => self.kinetics_of(&at, kinetics, mixing),
                Some(None) => self.report(
                    &at.field("material"),
                    format!("'{id}' has no mixing data; give it [material.mixing] first"),
                ),
                None => {}
            }
        }
    }

    fn kinetics_of(&mut self, at: &At, kinetics: &Kinetics, mixing: &Mixing) {
        self.sources(at, &kinetics.sources);
        for (name, part) in [("powder", &kinetics.powder), ("liquid", &kinetics.liquid)] {
            let at = at.field(name);
            self.text(&at, "name", &part.name);
            self.text(&at, "unit", &part.unit);
            self.above_zero(&at, "grams", &part.grams);
        }
        if kinetics.surfaces.is_empty() {
            self.report(&at.field("surfaces"), "name at least one surface".into());
        }
        self.stated(at, "gloss", Some(&kinetics.gloss));
        if !(0..=1000).contains(&kinetics.gloss.is.0) {
            self.report(&at.field("gloss"), "a gloss runs from 0 to 1".into());
        }
        self.above_zero(at, "thickens", &kinetics.thickens);
        self.stated(at, "surface-degrees", kinetics.surface_degrees.as_ref());
        self.stated(at, "heat", kinetics.heat.as_ref());
        for (name, rate) in kinetics.rates() {
            self.stated(at, name, rate);
            if rate.is_some_and(|r| r.is.0 < 0) {
                let message = format!("'{name}' is below 0; leave it out where it does nothing");
                self.report(&at.field(name), message);
            }
        }
        self.illustration(at, kinetics);
        if let Some(harm) = &kinetics.thin_harm {
            let at = at.field("thin-harm");
            self.text(&at, "because", &harm.because);
            self.sources(&at, &harm.sources);
        }
        if kinetics.uses.is_empty() {
            self.report(&at.field("uses"), "say at least one use".into());
        }
        let mut keys = HashSet::new();
        for (i, each) in kinetics.uses.iter().enumerate() {
            let at = at.field("uses").entry(i);
            if !keys.insert(&each.id) {
                let message = format!("the use '{}' stands twice; keep one", each.id);
                self.report(&at.field("id"), message);
            }
            self.use_of(&at, each, mixing);
        }
    }

    /// A course in time that nobody published is called an illustration, and only then.
    fn illustration(&mut self, at: &At, kinetics: &Kinetics) {
        let own = kinetics
            .rates()
            .into_iter()
            .find(|(_, rate)| rate.is_some_and(Stated::is_own_inference));
        match own {
            Some((name, _)) if !kinetics.illustration => {
                let message = format!(
                    "'{name}' is our own inference; say illustration = true, or name a source"
                );
                self.report(&at.field("illustration"), message);
            }
            None if kinetics.illustration => {
                let message =
                    "every rate is published; an illustration has one of our own inference";
                self.report(&at.field("illustration"), message.into());
            }
            _ => {}
        }
    }

    fn use_of(&mut self, at: &At, each: &Use, mixing: &Mixing) {
        self.sources(at, &each.sources);
        self.text(at, "name", &each.name);
        self.above_zero(at, "powder-units", &each.powder_units);
        self.above_zero(at, "liquid-units", &each.liquid_units);
        let sum: i64 = each.portions.iter().map(|p| i64::from(p.0)).sum();
        if sum != 1000 || each.portions.iter().any(|p| p.0 <= 0) {
            let message = "the portions are shares above 0 that add up to 1";
            self.report(&at.field("portions"), message.into());
        }
        self.above_zero(at, "works", &each.works);
        let work = each.work_seconds.unwrap_or(mixing.work_seconds);
        let within = |v: i32| {
            i64::from(work.from) * 1000 <= v.into() && i64::from(v) <= i64::from(work.to) * 1000
        };
        if !within(each.works.is.0) {
            let message = format!(
                "the working time lies outside its span of {} to {} s",
                work.from, work.to
            );
            self.report(&at.field("works"), message);
        }
        match &each.sets {
            Some(sets) => {
                self.stated(at, "sets", Some(sets));
                if sets.is.0 < each.works.is.0 {
                    let message = "it sets before its working time is over; both count from the start of the mix";
                    self.report(&at.field("sets"), message.into());
                }
            }
            None if each.lines.is_empty() && !mixing.light => {
                let message = "without a setting time or a line the material has to need the light";
                self.report(at, message.into());
            }
            None => {}
        }
        for (i, line) in each.lines.iter().enumerate() {
            let at = at.field("lines").entry(i);
            self.stated(&at, "at-zero", Some(&line.at_zero));
            self.stated(&at, "per-degree", Some(&line.per_degree));
            for (i, measured) in line.measured.iter().enumerate() {
                let at = at.field("measured").entry(i);
                self.above_zero(&at, "seconds", &measured.seconds);
            }
        }
    }

    fn above_zero(&mut self, at: &At, name: &str, value: &Stated) {
        self.stated(at, name, Some(value));
        if value.is.0 <= 0 {
            self.report(&at.field(name), format!("'{name}' has to be above 0"));
        }
    }

    fn stated(&mut self, at: &At, name: &str, value: Option<&Stated>) {
        if let Some(Stated { source, .. }) = value {
            let at = at.field(name).field("source");
            self.wants(&at, "source", SourceId::as_str(source), |k| &k.sources);
        }
    }
}
