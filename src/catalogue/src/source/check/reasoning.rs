//! Rules, plans, recall and case frames.

use super::{At, Checker};
use crate::{
    Catalogue,
    cases::CaseFrame,
    findings::{Known, Scale},
    given::Given,
    ids::FindingId,
    plans::Plan,
    preference::{Card, Wish},
    procedures::ProcedureKind,
    rules::{Conclusion, Rule},
    stops::Stop,
};

impl Checker<'_, '_> {
    pub(super) fn reasoning(&mut self, catalogue: &Catalogue) {
        for (i, rule) in catalogue.rules.iter().enumerate() {
            self.rule(&At::new("rule", i), rule);
        }
        for (i, plan) in catalogue.plans.iter().enumerate() {
            self.plan(&At::new("plan", i), plan);
        }
        for (i, stop) in catalogue.stops.iter().enumerate() {
            self.stop(&At::new("stop", i), stop);
        }
        for (i, card) in catalogue.cards.iter().enumerate() {
            self.card(&At::new("card", i), card);
        }
        for (i, frame) in catalogue.cases.iter().enumerate() {
            self.case(&At::new("case", i), frame, catalogue);
        }
    }

    fn rule(&mut self, at: &At, rule: &Rule) {
        self.condition(&at.field("when"), &rule.when);
        self.text(at, "because", &rule.because);
        self.wants(
            &at.field("competency"),
            "competency",
            rule.competency.as_str(),
            |k| &k.competencies,
        );
        self.sources(at, &rule.sources);
        if rule.then.is_empty() {
            self.report(
                &at.field("then"),
                "the rule concludes nothing; say what follows".into(),
            );
        }
        for (i, conclusion) in rule.then.iter().enumerate() {
            self.conclusion(&at.field("then").entry(i), conclusion);
        }
    }

    fn conclusion(&mut self, at: &At, conclusion: &Conclusion) {
        match conclusion {
            Conclusion::Find { finding, is } => {
                self.wants(at, "finding", finding.as_str(), |k| &k.finding_ids);
                self.value(at, finding, is, &[Known::Derived]);
            }
            Conclusion::Plan { plan, .. } => self.wants(at, "plan", plan.as_str(), |k| &k.plans),
            Conclusion::Material { item, .. } => {
                self.wants(at, "material", item.as_str(), |k| &k.materials);
            }
            Conclusion::Avoid { substance } => {
                self.wants(
                    at,
                    "substance that any item contains,",
                    substance.as_str(),
                    |k| &k.substances,
                );
            }
            Conclusion::NotOnFloor { class } => {
                self.wants(at, "class of materials", class.as_str(), |k| &k.classes);
            }
            Conclusion::Layer { .. } => {}
            Conclusion::Tell { what } => self.text(at, "what", what),
        }
    }

    /// Checks that `value` is on the finding's scale and that it may be given here.
    fn value(&mut self, at: &At, finding: &FindingId, value: &str, known: &[Known]) {
        let Some(finding) = self.known.findings.get(finding).cloned() else {
            return;
        };
        let id = &finding.id;
        if !known.contains(&finding.known) {
            self.report(
                at,
                format!("'{id}' does not become known here; see its 'known'"),
            );
        }
        match &finding.scale {
            Scale::Words(words) if !words.iter().any(|w| w.id == value) => {
                let all: Vec<&str> = words.iter().map(|w| w.id.as_str()).collect();
                self.report(
                    at,
                    format!("'{id}' is never '{value}'; it is one of {}", all.join(", ")),
                );
            }
            Scale::Flag { .. } if !matches!(value, "yes" | "no") => {
                self.report(at, format!("'{id}' is 'yes' or 'no', not '{value}'"));
            }
            Scale::Number { unit, .. } => {
                self.report(at, format!("'{id}' is a number in {unit}, not '{value}'"));
            }
            _ => {}
        }
    }

    fn plan(&mut self, at: &At, plan: &Plan) {
        self.text(at, "about", &plan.about);
        for (i, each) in plan.procedures.iter().enumerate() {
            let at = at.field("procedures").entry(i);
            self.wants(
                &at.field("procedure"),
                "procedure",
                each.procedure.as_str(),
                |k| &k.procedures,
            );
            self.maybe_condition(&at, each.when.as_ref());
        }
        for (i, recall) in plan.recalls.iter().enumerate() {
            let at = at.field("recalls").entry(i);
            self.maybe_condition(&at, recall.when.as_ref());
            self.within_years(&at.field("days"), recall.days);
            self.sources(&at, &recall.sources);
            for (field, checks) in [("checks", &recall.checks), ("sooner", &recall.sooner)] {
                for (j, check) in checks.iter().enumerate() {
                    self.wants(
                        &at.field(field).entry(j),
                        "recall check",
                        check.as_str(),
                        |k| &k.checks,
                    );
                }
            }
        }
    }

    fn card(&mut self, at: &At, card: &Card) {
        self.text(at, "about", &card.about);
        for (i, wish) in card.wishes.iter().enumerate() {
            let at = at.field("wishes").entry(i);
            match wish {
                Wish::PreferPlan { plan } => {
                    self.wants(&at, "plan", plan.as_str(), |k| &k.plans);
                }
                Wish::Recall { plan, days } => {
                    self.wants(&at, "plan", plan.as_str(), |k| &k.plans);
                    self.within_years(&at, *days);
                }
                _ => {}
            }
            let (items, procedures) = wish.names();
            for item in items {
                self.wants(&at, "item", item.as_str(), |k| &k.items);
            }
            for procedure in procedures {
                self.wants(&at, "procedure", procedure.as_str(), |k| &k.procedures);
            }
        }
    }

    fn stop(&mut self, at: &At, stop: &Stop) {
        self.maybe_condition(at, stop.when.as_ref());
        if let Some(item) = &stop.item {
            self.wants(&at.field("item"), "item", item.as_str(), |k| &k.items);
        }
        self.wants(
            &at.field("competency"),
            "competency",
            stop.competency.as_str(),
            |k| &k.competencies,
        );
        self.text(at, "sees", &stop.sees);
        self.text(at, "because", &stop.because);
        self.sources(at, &stop.sources);
        if !stop.not.iter().any(|way| way.harm) {
            let message = "at least one wrong way has to do harm; silence does";
            self.report(&at.field("not"), message.into());
        }
    }

    fn case(&mut self, at: &At, frame: &CaseFrame, catalogue: &Catalogue) {
        self.wants(
            &at.field("booked"),
            "procedure",
            frame.booked.as_str(),
            |k| &k.procedures,
        );
        if catalogue
            .procedure(&frame.booked)
            .is_some_and(|p| p.kind == ProcedureKind::SetUp)
        {
            self.report(
                &at.field("booked"),
                "a set-up cannot be booked; name a treatment".into(),
            );
        }
        self.wants(
            &at.field("competency"),
            "competency",
            frame.competency.as_str(),
            |k| &k.competencies,
        );
        // Where a tooth is opened the patient says at least whether it hurts.
        let mute = frame.words.is_empty() && frame.opening.is_empty();
        for (field, empty) in [("reasons", frame.reasons.is_empty()), ("words", mute)] {
            if empty {
                self.report(
                    &at.field(field),
                    format!("'{field}' is empty; give at least one wording"),
                );
            }
        }
        for (i, tooth) in frame.teeth.iter().enumerate() {
            let (quadrant, position) = (tooth / 10, tooth % 10);
            let real = matches!((quadrant, position), (1..=4, 1..=8) | (5..=8, 1..=5));
            if !real {
                let message =
                    format!("{tooth} is no tooth in the two-digit FDI notation, such as 36 or 85");
                self.report(&at.field("teeth").entry(i), message);
            }
        }
        let toothless = frame.teeth.is_empty() && !frame.opening.is_empty();
        if toothless || frame.age.0 > frame.age.1 {
            self.report(
                at,
                "a frame whose tooth is opened needs at least one tooth, and an age runs from the least to the most".into(),
            );
        }
        let odd = |(least, most): (u16, u16)| least > most || least < 3 || most > 250;
        if frame.weight.is_some_and(odd) {
            let message = "a weight runs from the least to the most, within 3 and 250 kg";
            self.report(&at.field("weight"), message.into());
        }
        if !frame.heart.is_empty() && frame.weight.is_none() {
            let message = "a heart is reckoned with together with a weight; name one";
            self.report(&at.field("heart"), message.into());
        }
        // A visit that opens no tooth finds nothing in one.
        let known: &[Known] = if frame.opening.is_empty() {
            &[Known::Chart]
        } else {
            &[Known::Chart, Known::Opening]
        };
        for (finding, given) in &frame.findings {
            let at = at.field("findings").field(finding.as_str());
            self.wants(&at, "finding", finding.as_str(), |k| &k.finding_ids);
            self.given(&at, finding, given, known);
        }
    }

    fn given(&mut self, at: &At, id: &FindingId, given: &Given, known: &[Known]) {
        match given {
            Given::Words(words) => {
                for word in words {
                    self.value(at, id, word, known);
                }
            }
            Given::Number { from, to, unit } => {
                let Some(finding) = self.known.findings.get(id).cloned() else {
                    return;
                };
                match &finding.scale {
                    Scale::Number {
                        unit: own,
                        least,
                        most,
                        ..
                    } => {
                        if unit != own || from < least || to > most {
                            self.report(at, format!("'{id}' runs from {least} to {most} {own}"));
                        }
                    }
                    _ => self.report(at, format!("'{id}' is not a number; give one of its words")),
                }
            }
        }
    }
}
