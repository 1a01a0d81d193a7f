//! Reading the chart: what matters for this visit.
//!
//! A finding matters if the visit would go otherwise were it as usual: another
//! tray, another plan, another material. That is computed by trying.

use super::{
    choice::{Choice, Decision, Form},
    draw::Visit,
};
use crate::{
    Reason,
    engine::Conclusions,
    patient::{Patient, Value},
    standing::Standing,
};
use catalogue::{findings::Known, items::Role};

/// What a visit comes to, as far as a finding could change it.
#[derive(PartialEq)]
struct Outcome {
    tray: Vec<catalogue::ids::ItemId>,
    plans: Vec<(catalogue::ids::PlanId, Standing)>,
    avoided: Vec<catalogue::ids::SubstanceId>,
    closing: Vec<(Option<catalogue::ids::ItemId>, Standing)>,
    pulp: Option<Value>,
    apex: Option<Value>,
}

impl Visit<'_> {
    /// Which lines of the chart matter for this visit.
    pub fn flag(&self) -> Decision {
        let facts = self.clinic.facts(&self.case.chart, Known::Chart);
        let choices = facts
            .into_iter()
            .filter(|fact| {
                self.clinic
                    .catalogue()
                    .finding(&fact.finding)
                    .is_some_and(|f| f.ordinary)
            })
            .filter_map(|fact| {
                let place = self.clinic.position(fact.finding.as_str())?;
                let matters = !fact.usual && self.matters(place);
                let standing = match (matters, fact.usual) {
                    (true, _) => Standing::Right,
                    // Out of the ordinary without changing this visit: worth a look, and no fault to flag.
                    (false, false) => Standing::Acceptable,
                    (false, true) => Standing::Wrong,
                };
                let label = format!("{}: {}", fact.name, fact.says);
                let mut choice = Choice::new(fact.finding.as_str(), label, standing);
                choice.reasons = self.why_it_matters(place, matters);
                if matters && self.is_allergen(place) {
                    choice.left_out = Standing::Unsafe;
                }
                Some(choice)
            })
            .collect();
        let question =
            "Which lines of this chart change what you ready, or what the dentist may do?";
        Decision::new(
            "chart",
            "Read the chart",
            question,
            Form::All,
            choices,
            "pulp-and-depth",
        )
    }

    /// Whether the visit would go otherwise were this finding as usual. Two
    /// findings may each be reason enough for the same thing, so it is tried
    /// with each other remarkable finding put back to usual as well.
    fn matters(&self, place: usize) -> bool {
        let remarkable = (0..self.clinic.catalogue().findings.len())
            .filter(|&p| p != place && !self.clinic.is_usual(&self.case.chart, p))
            .filter(|&p| self.clinic.catalogue().findings[p].ordinary);
        let without = |places: &[usize]| {
            let as_usual = |patient: &Patient| {
                let mut patient = patient.clone();
                for &p in places {
                    patient.values[p] = Some(Value::usual(&self.clinic.catalogue().findings[p]));
                }
                patient
            };
            self.outcome(&as_usual(&self.case.chart), &as_usual(&self.case.opened))
        };
        without(&[]) != without(&[place])
            || remarkable
                .into_iter()
                .any(|other| without(&[other]) != without(&[other, place]))
    }

    fn outcome(&self, chart: &Patient, opened: &Patient) -> Outcome {
        let all = self.clinic.reason(opened);
        let before = self.clinic.reason(chart);
        Outcome {
            tray: self
                .clinic
                .tray(&self.case.booked, &before.patient)
                .items()
                .map(|(_, i)| i.item.clone())
                .collect(),
            plans: self
                .clinic
                .plan_verdicts(&all)
                .into_iter()
                .map(|v| (v.plan, v.standing))
                .collect(),
            avoided: self
                .clinic
                .avoided(&all)
                .into_iter()
                .map(|(s, _)| s)
                .collect(),
            closing: self.closing_options(&all),
            pulp: self.value(&all, "pulp"),
            apex: self.value(&all, "apex"),
        }
    }

    fn closing_options(
        &self,
        all: &Conclusions,
    ) -> Vec<(Option<catalogue::ids::ItemId>, Standing)> {
        [Role::Temporary, Role::Permanent]
            .into_iter()
            .flat_map(|role| {
                self.clinic
                    .layer_verdicts(all, role, &crate::layers::Stack::default())
            })
            .map(|v| (v.item, v.standing))
            .collect()
    }

    fn value(&self, all: &Conclusions, finding: &str) -> Option<Value> {
        all.patient.at(self.clinic.position(finding)?)
    }

    fn is_allergen(&self, place: usize) -> bool {
        let finding = &self.clinic.catalogue().findings[place].id;
        self.clinic.held(&self.before).any(|(rule, conclusion)| {
            matches!(conclusion, catalogue::rules::Conclusion::Avoid { .. })
                && rule
                    .when
                    .expr()
                    .atoms()
                    .iter()
                    .any(|a| a.finding() == Some(finding))
        })
    }

    /// The rules that hold for this patient and ask for this finding.
    fn why_it_matters(&self, place: usize, matters: bool) -> Vec<Reason> {
        let finding = &self.clinic.catalogue().findings[place];
        let speaks = |rule: &catalogue::rules::Rule| {
            rule.when
                .expr()
                .atoms()
                .iter()
                .any(|a| a.finding() == Some(&finding.id))
        };
        let mut rules: Vec<Reason> = self
            .after
            .fired
            .iter()
            .map(|&r| self.clinic.rule(r))
            .filter(|rule| speaks(rule))
            .map(Reason::of)
            .collect();
        rules.truncate(2);
        if !matters || rules.is_empty() {
            rules = vec![Reason {
                because: finding.about.clone(),
                sources: Vec::new(),
                rule: None,
            }];
        }
        rules
    }
}
