//! Drawing a patient and a story from a frame.

use super::{
    choice::Decision,
    reckon::Measures,
    seed::Seed,
    story::{Told, words},
};
use crate::{
    Clinic,
    engine::Conclusions,
    patient::{Patient, Value},
};
use catalogue::{
    cases::CaseFrame,
    findings::{Finding, Known, Scale},
    given::Given,
    ids::{CaseId, FindingId, PlanId, ProcedureId},
    plans::Plan,
    quantity::Milli,
};

/// How often a draw is tried before a frame counts as impossible. Frames are
/// checked when the catalogue is built, so the page never gets near it.
const TRIES: usize = 200;

/// A line of the chart, or of what the dentist finds.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fact {
    /// The finding.
    pub finding: FindingId,
    /// Its name.
    pub name: String,
    /// What it is for this patient.
    pub says: String,
    /// Whether it is the usual, unremarkable value.
    pub usual: bool,
}

/// A case: one patient, one visit.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Case {
    /// The frame it was drawn from.
    pub frame: CaseId,
    /// The seed it was drawn by.
    pub seed: u64,
    /// The flag that was asked for beyond the frame, if one was.
    pub with: Option<FindingId>,
    /// Its title.
    pub title: String,
    /// The tooth, in the two-digit FDI notation, where the visit is about one.
    pub tooth: Option<u8>,
    /// The patient's age in years.
    pub age: u8,
    /// Why the patient comes.
    pub reason: String,
    /// What the patient says.
    pub words: String,
    /// The findings that the patient's words state.
    pub told: Vec<Told>,
    /// What the dentist says on opening the tooth.
    pub opening: String,
    /// The procedure whose tray is laid: the one that was booked, unless the
    /// chart speaks against it.
    pub booked: ProcedureId,
    /// What was booked, where the chart speaks against it.
    pub instead_of: Option<ProcedureId>,
    /// The patient as the chart has it, before the tooth is opened.
    pub chart: Patient,
    /// The patient once the tooth is open.
    pub opened: Patient,
    /// The plan that the dentist settles on once the tooth is open; none where
    /// the visit opens no tooth and goes as it was booked.
    pub plan: Option<PlanId>,
    /// What the visit reckons with, where it does.
    pub measures: Option<Measures>,
    /// The decisions, in order.
    pub decisions: Vec<Decision>,
}

/// What the parts of a case are built from.
pub(super) struct Visit<'c> {
    pub clinic: &'c Clinic,
    pub case: &'c Case,
    /// What follows from the chart alone.
    pub before: Conclusions,
    /// What follows once the tooth is open and the plan settled.
    pub after: Conclusions,
    /// The procedure of the plan, if it has one.
    pub procedure: Option<ProcedureId>,
}

impl Clinic {
    /// Draws the case of a frame and a seed; none where the frame admits no possible patient.
    pub fn case(&self, frame: &CaseFrame, seed: u64) -> Option<Case> {
        self.case_with(frame, seed, None)
    }

    /// The same, with a flag that the patient has to have.
    pub fn case_with(
        &self,
        frame: &CaseFrame,
        seed: u64,
        flag: Option<&FindingId>,
    ) -> Option<Case> {
        let mut chance = Seed::new(seed);
        let years = usize::from(frame.age.1 - frame.age.0) + 1;
        let age = frame
            .age
            .0
            .saturating_add(u8::try_from(chance.below(years)).unwrap_or(0));
        let opened = (0..TRIES)
            .map(|_| {
                let drawn = self.draw(frame, &mut chance);
                let aged = self.with_number(&drawn, "age", Milli(i32::from(age) * 1000));
                flag.map_or(aged.clone(), |flag| self.with(&aged, flag.as_str(), "yes"))
            })
            .find(|patient| self.impossible(patient).is_none())?;
        let opened = self.isolated(&opened, &frame.booked);
        let chart = self.before_opening(&opened);
        let booked = self.as_the_chart_allows(&frame.booked, &chart);
        let plan = if frame.opening.is_empty() {
            None
        } else {
            let plans = self.open_plans(&self.reason(&opened));
            let plans = self.leaning(&opened, plans);
            Some(chance.pick(&plans)?.clone())
        };
        let tooth = chance.pick(&frame.teeth).copied();
        let pick =
            |chance: &mut Seed, from: &[String]| chance.pick(from).cloned().unwrap_or_default();
        let named = tooth
            .map(|t| format!("tooth {t} (FDI)"))
            .unwrap_or_default();
        let reason = pick(&mut chance, &frame.reasons).replace("{tooth}", &named);
        let told = self.told(frame, &chart, &mut chance);
        let mut case = Case {
            frame: frame.id.clone(),
            seed,
            with: flag.cloned(),
            title: frame.title.clone(),
            tooth,
            age,
            reason,
            words: words(frame, &told, &mut chance),
            told,
            opening: pick(&mut chance, &frame.opening),
            instead_of: (booked != frame.booked).then(|| frame.booked.clone()),
            booked,
            chart,
            opened,
            plan,
            measures: Measures::drawn(frame, seed),
            decisions: Vec::new(),
        };
        case.decisions = self.decisions(&case, chance)?;
        Some(case)
    }

    fn draw(&self, frame: &CaseFrame, chance: &mut Seed) -> Patient {
        let opening = |f: &Finding| f.known == Known::Opening;
        let mut patient = self.usual_patient();
        for (place, finding) in self
            .catalogue
            .findings
            .iter()
            .enumerate()
            .filter(|(_, f)| opening(f))
        {
            patient.values[place] = Some(Value::usual(finding));
        }
        for (id, given) in &frame.findings {
            let Some(place) = self.position(id.as_str()) else {
                continue;
            };
            let finding = &self.catalogue.findings[place];
            let value = match given {
                Given::Words(words) => chance
                    .pick(words)
                    .and_then(|word| Value::worded(finding, word)),
                Given::Number { from, to, .. } => {
                    Some(Value::Number(number(finding, *from, *to, chance)))
                }
            };
            if value.is_some() {
                patient.values[place] = value;
            }
        }
        patient
    }

    /// The procedure that the plan behind a booking means for this patient: an
    /// allergy or a wet field can make it another one than was booked.
    fn as_the_chart_allows(&self, booked: &ProcedureId, chart: &Patient) -> ProcedureId {
        let behind = |plan: &&Plan| plan.procedures.iter().any(|p| p.procedure == *booked);
        let planned = self
            .catalogue
            .plans
            .iter()
            .find(behind)
            .and_then(|plan| self.procedure_of(plan, chart));
        let instead = || {
            let procedure = self.catalogue.procedure(booked)?;
            self.not_for(procedure, chart)?.instead.as_ref()
        };
        instead().or(planned).unwrap_or(booked).clone()
    }

    /// The patient as known before the tooth is opened.
    fn before_opening(&self, opened: &Patient) -> Patient {
        let mut chart = opened.clone();
        for (place, finding) in self.catalogue.findings.iter().enumerate() {
            if finding.known != Known::Chart {
                chart.values[place] = None;
            }
        }
        chart
    }

    fn decisions(&self, case: &Case, mut chance: Seed) -> Option<Vec<Decision>> {
        let plan = match &case.plan {
            Some(id) => Some(self.catalogue.plan(id)?),
            None => None,
        };
        let known = if plan.is_some() {
            &case.opened
        } else {
            &case.chart
        };
        let settled = plan.map_or_else(|| known.clone(), |plan| self.settled(known, plan));
        let after = self.reason(&settled);
        let procedure = match plan {
            Some(plan) => self.procedure_of(plan, &after.patient).cloned(),
            None => Some(case.booked.clone()),
        };
        let visit = Visit {
            clinic: self,
            case,
            before: self.reason(&case.chart),
            procedure,
            after,
        };
        let mut decisions = vec![visit.flag()];
        decisions.extend(visit.tooth_named());
        decisions.push(visit.lay(&mut chance));
        decisions.extend(visit.speak_up(&mut chance));
        decisions.extend(visit.cartridges());
        decisions.extend(visit.plan());
        decisions.extend(visit.cavity(&mut chance));
        decisions.extend(visit.fetch(&mut chance));
        decisions.extend(visit.start());
        decisions.extend(visit.water());
        decisions.extend(visit.mixing(&mut chance));
        decisions.extend(visit.hand_over());
        decisions.extend(visit.next_step(&mut chance));
        decisions.extend(visit.tell(&mut chance));
        decisions.extend(visit.recall());
        decisions.extend(visit.return_date());
        for decision in &mut decisions {
            decision.arrange(&mut chance);
        }
        Some(decisions)
    }

    /// The lines of a chart: what is known of a patient at a moment, in the order of the vocabulary.
    pub fn facts(&self, patient: &Patient, known: Known) -> Vec<Fact> {
        self.catalogue
            .findings
            .iter()
            .enumerate()
            .filter(|(_, f)| f.known == known)
            .filter_map(|(place, finding)| {
                let value = patient.at(place)?;
                Some(Fact {
                    finding: finding.id.clone(),
                    name: finding.name.clone(),
                    says: value.says(finding),
                    usual: finding.ordinary && self.is_usual(patient, place),
                })
            })
            .collect()
    }
}

/// A number of the range, on the finding's step.
fn number(finding: &Finding, from: Milli, to: Milli, chance: &mut Seed) -> Milli {
    let step = match &finding.scale {
        Scale::Number { step, .. } => step.0.max(1),
        _ => 1,
    };
    let steps = usize::try_from((to.0 - from.0) / step).unwrap_or(0);
    let taken = i32::try_from(chance.below(steps + 1)).unwrap_or(0);
    Milli(from.0 + taken * step)
}
