//! Figures: sources that are there, values above nothing, rules that speak of
//! a drug that is bought, tables without gaps.

use super::{At, Checker};
use crate::{
    Catalogue,
    ids::SourceId,
    numbers::{Dentition, DrugLimit, FIGURES, Heart, Numbers, Solution},
    quantity::Milli,
};
use std::collections::BTreeSet;

impl Checker<'_, '_> {
    pub(super) fn numbers(&mut self, catalogue: &Catalogue) {
        let numbers = &catalogue.numbers;
        self.figures_named(numbers);
        for (i, solution) in numbers.solutions.iter().enumerate() {
            self.solution(&At::new("solution", i), solution, numbers);
        }
        for (i, rules) in numbers.dose_rules.iter().enumerate() {
            let at = At::new("dose-rules", i);
            self.text(&at, "note", &rules.note);
            for (j, limit) in rules.limits.iter().enumerate() {
                self.drug_limit(&at.field("limits").entry(j), limit, numbers);
            }
        }
        for (i, limit) in numbers.vasoconstrictor_limits.iter().enumerate() {
            self.positive(&At::new("vasoconstrictor-limit", i), "most", limit.most);
        }
        self.teeth(numbers);
        for (i, series) in numbers.burs.iter().enumerate() {
            for (j, (_, diameter)) in series.sizes.iter().enumerate() {
                let at = At::new("bur", i).field("sizes").entry(j);
                self.positive(&at, "diameter", *diameter);
            }
        }
        for (i, code) in numbers.bur_codes.iter().enumerate() {
            if code.code.len() != 3 || !code.code.bytes().all(|b| b.is_ascii_digit()) {
                let at = At::new("bur-code", i).field("code");
                self.report(&at, format!("'{}' is not three digits", code.code));
            }
        }
        for (i, example) in numbers.formulas.iter().enumerate() {
            if let Some(item) = &example.item {
                let at = At::new("formula", i).field("item");
                self.wants(&at, "item", item.as_str(), |k| &k.items);
            }
        }
        for (i, proportion) in numbers.proportions.iter().enumerate() {
            if proportion.powder == 0 || proportion.liquid.from == 0 {
                let at = At::new("proportion", i).field("powder");
                self.report(&at, "a proportion is between two amounts above 0".into());
            }
        }
        for (i, figure) in numbers.figures.iter().enumerate() {
            self.positive(&At::new("figure", i), "value", figure.value);
        }
        self.number_sources(numbers);
    }

    fn positive(&mut self, at: &At, field: &str, value: Milli) {
        if value.0 <= 0 {
            let message = format!("'{field}' is {value}; it has to be above 0");
            self.report(&at.field(field), message);
        }
    }

    fn figures_named(&mut self, numbers: &Numbers) {
        for id in FIGURES {
            if numbers.figure(id).is_none() {
                let message = format!("the figure '{id}' is missing; add it to this file");
                self.report(&At::new("figure", 0), message);
            }
        }
        let lists: [(&'static str, Vec<&String>); 6] = [
            (
                "solution",
                numbers.solutions.iter().map(|x| &x.id).collect(),
            ),
            (
                "dose-rules",
                numbers.dose_rules.iter().map(|x| &x.id).collect(),
            ),
            ("cycle", numbers.cycles.iter().map(|x| &x.id).collect()),
            ("limit", numbers.limits.iter().map(|x| &x.id).collect()),
            (
                "proportion",
                numbers.proportions.iter().map(|x| &x.id).collect(),
            ),
            ("figure", numbers.figures.iter().map(|x| &x.id).collect()),
        ];
        for (list, ids) in lists {
            let mut seen = BTreeSet::new();
            for (i, id) in ids.into_iter().enumerate() {
                if !seen.insert(id) {
                    let message = format!("the id '{id}' stands twice; every {list} needs its own");
                    self.report(&At::new(list, i).field("id"), message);
                }
            }
        }
    }

    fn solution(&mut self, at: &At, solution: &Solution, numbers: &Numbers) {
        self.positive(at, "percent", solution.percent);
        if solution.volumes.is_empty() {
            self.report(&at.field("volumes"), "no cartridge is named".into());
        }
        for (i, volume) in solution.volumes.iter().enumerate() {
            self.positive(&at.field("volumes").entry(i), "volume", *volume);
        }
        let ruled = |limit: &DrugLimit| limit.drug == solution.drug;
        if !numbers
            .dose_rules
            .iter()
            .any(|r| r.limits.iter().any(ruled))
        {
            let message = format!("no set of rules has a limit for '{}'", solution.drug);
            self.report(&at.field("drug"), message);
        }
        let Some(vasoconstrictor) = &solution.vasoconstrictor else {
            return;
        };
        if vasoconstrictor.ratio < 1000 {
            let message = format!("1:{} is far too strong", vasoconstrictor.ratio);
            self.report(&at.field("vasoconstrictor"), message);
        }
        for heart in [Heart::Healthy, Heart::Diseased] {
            let limited = numbers
                .vasoconstrictor_limits
                .iter()
                .any(|l| l.name == vasoconstrictor.name && l.heart == heart);
            if !limited {
                let message = format!(
                    "'{}' has no limit for one of the two hearts",
                    vasoconstrictor.name
                );
                self.report(&at.field("vasoconstrictor"), message);
            }
        }
    }

    fn drug_limit(&mut self, at: &At, limit: &DrugLimit, numbers: &Numbers) {
        self.sources(at, &limit.sources);
        if !numbers.solutions.iter().any(|s| s.drug == limit.drug) {
            let message = format!("no solution contains '{}'", limit.drug);
            self.report(&at.field("drug"), message);
        }
        for (field, value) in [
            ("per-kg", limit.per_kg),
            ("per-lb", limit.per_lb),
            ("ceiling", limit.ceiling),
        ] {
            if let Some(value) = value {
                self.positive(at, field, value);
            }
        }
        let limits = limit.per_kg.is_some()
            || limit.per_lb.is_some()
            || limit.ceiling.is_some()
            || limit.share.is_some_and(|s| s.adult_lb > 0);
        if !limits {
            let message = "this limits nothing; give per-kg, per-lb, share or ceiling";
            self.report(at, message.into());
        }
    }

    fn teeth(&mut self, numbers: &Numbers) {
        let mut seen = Vec::new();
        for (i, tooth) in numbers.teeth.iter().enumerate() {
            let at = At::new("tooth", i);
            self.positive(&at, "width", tooth.width);
            self.positive(&at, "depth", tooth.depth);
            self.sources(&at, &tooth.sources);
            let last = match tooth.dentition {
                Dentition::Primary => 5,
                Dentition::Permanent => 8,
            };
            if !(1..=last).contains(&tooth.place) {
                let message = format!("such teeth stand at places 1 to {last}");
                self.report(&at.field("place"), message);
            }
            if tooth.sheds.is_some() != (tooth.dentition == Dentition::Primary) {
                let message = "primary teeth are shed and permanent ones are not";
                self.report(&at, message.into());
            }
            let key = (tooth.jaw, tooth.dentition, tooth.place);
            if seen.contains(&key) {
                self.report(&at.field("place"), "this tooth stands twice".into());
            }
            seen.push(key);
        }
        if seen.len() != 26 {
            let message = format!(
                "{} of the 26 teeth of one side are here; all of them are needed",
                seen.len()
            );
            self.report(&At::new("tooth", 0), message);
        }
    }

    /// The lists whose entries carry one field `sources`.
    fn number_sources(&mut self, numbers: &Numbers) {
        fn of<T>(list: &[T], sources: fn(&T) -> &Vec<SourceId>) -> Vec<&Vec<SourceId>> {
            list.iter().map(sources).collect()
        }
        let lists: [(&'static str, Vec<&Vec<SourceId>>); 11] = [
            ("solution", of(&numbers.solutions, |x| &x.sources)),
            (
                "vasoconstrictor-limit",
                of(&numbers.vasoconstrictor_limits, |x| &x.sources),
            ),
            ("tooth", of(&numbers.teeth, |x| &x.size_sources)),
            ("formula", of(&numbers.formulas, |x| &x.sources)),
            ("bur", of(&numbers.burs, |x| &x.sources)),
            ("bur-code", of(&numbers.bur_codes, |x| &x.sources)),
            ("file-size", of(&numbers.file_sizes, |x| &x.sources)),
            ("needle", of(&numbers.needles, |x| &x.sources)),
            ("cycle", of(&numbers.cycles, |x| &x.sources)),
            ("limit", of(&numbers.limits, |x| &x.sources)),
            ("proportion", of(&numbers.proportions, |x| &x.sources)),
        ];
        for (list, all) in lists {
            for (i, sources) in all.into_iter().enumerate() {
                self.sources(&At::new(list, i), sources);
            }
        }
        for (i, figure) in numbers.figures.iter().enumerate() {
            self.sources(&At::new("figure", i), &figure.sources);
        }
    }
}
