//! Mixing: proportion, order, time, the right consistency, and mends. All from
//! the mixing data of the material; wrong options are those of other materials.

use super::{
    by_hand::ByHand,
    cavity::{capital, plain},
    choice::{Choice, Decision, Form},
    draw::Visit,
    seed::Seed,
};
use crate::{Reason, standing::Standing};
use catalogue::{
    ids::ItemId,
    items::{Material, MixFault, Mixing},
    quantity::Span,
};

/// How many wrong options a question takes from other materials.
const OTHERS: usize = 3;

impl Visit<'_> {
    /// The material that is mixed by hand in this visit: the first that a step mixes.
    pub(super) fn mixed(&self) -> Option<(&Material, &Mixing)> {
        let steps = self
            .clinic
            .steps(self.procedure.as_ref()?, &self.after.patient);
        let id: ItemId = steps.iter().rev().find_map(|s| s.step.mixes.clone())?;
        let material = self.clinic.catalogue().material(&id)?;
        Some((material, material.mixing.as_ref()?))
    }

    /// The decisions of mixing; none where nothing is mixed.
    pub fn mixing(&self, chance: &mut Seed) -> Vec<Decision> {
        let Some((material, mixing)) = self.mixed() else {
            return Vec::new();
        };
        let mut decisions = vec![
            self.proportion(material, mixing, chance),
            self.duration(material, mixing, chance),
            self.ready(material, mixing, chance),
        ];
        if mixing.order.len() > 1 {
            decisions.insert(1, order(material, mixing));
        }
        decisions.extend(
            chance
                .pick(&mixing.faults)
                .cloned()
                .map(|f| self.mend(material, mixing, &f, chance)),
        );
        decisions
    }

    fn others<'a>(
        &'a self,
        material: &'a Material,
    ) -> impl Iterator<Item = (&'a Material, &'a Mixing)> {
        self.clinic
            .catalogue()
            .materials
            .iter()
            .filter(|m| m.id != material.id)
            .filter_map(|m| Some((m, m.mixing.as_ref()?)))
    }

    fn proportion(&self, material: &Material, mixing: &Mixing, chance: &mut Seed) -> Decision {
        let right =
            Choice::new("own", capital(&mixing.proportion), Standing::Right).because(sourced(
                mixing,
                "That is its usual proportion; the scoop and the words on its label come first.",
            ));
        let mut wrong: Vec<Choice> = self
            .others(material)
            .filter(|(_, m)| m.proportion != mixing.proportion)
            .map(|(other, m)| {
                Choice::new(other.id.as_str(), capital(&m.proportion), Standing::Wrong)
                    .because(belongs_to(other, "proportion"))
            })
            .collect();
        unique(&mut wrong);
        chance.shuffle(&mut wrong);
        wrong.truncate(OTHERS);
        wrong.push(right);
        let question = format!(
            "In what proportion do you dispense the {}?",
            named(material)
        );
        one("proportion", "Dispense", question, wrong)
    }

    fn duration(&self, material: &Material, mixing: &Mixing, chance: &mut Seed) -> Decision {
        let own = mixing.mix_seconds;
        let right = Choice::new("own", seconds(own), Standing::Right).because(sourced(
            mixing,
            &format!(
                "It can be worked for {} from the start of the mix.",
                seconds(mixing.work_seconds)
            ),
        ));
        let mut wrong: Vec<Choice> = self
            .others(material)
            .filter(|(_, m)| m.mix_seconds.to < own.from || m.mix_seconds.from > own.to)
            .map(|(other, m)| {
                Choice::new(other.id.as_str(), seconds(m.mix_seconds), Standing::Wrong)
                    .because(belongs_to(other, "mixing time"))
            })
            .collect();
        // Mixing on for as long as it takes to set is a slip of its own.
        if let Some(set) = mixing.set_seconds {
            wrong.push(
                Choice::new("until-set", seconds(set), Standing::Wrong).because(plain(
                    "That is its setting time: it would be hard before it is placed.".into(),
                )),
            );
        }
        unique(&mut wrong);
        chance.shuffle(&mut wrong);
        wrong.truncate(OTHERS);
        wrong.push(right);
        let question = format!("How long do you mix the {}?", named(material));
        one("mix-time", "Mix long enough", question, wrong)
    }

    fn ready(&self, material: &Material, mixing: &Mixing, chance: &mut Seed) -> Decision {
        let right = Choice::new("own", mixing.ready.clone(), Standing::Right).because(sourced(
            mixing,
            &format!("How it hardens. {}", mixing.hardens),
        ));
        let mut wrong: Vec<Choice> = mixing
            .faults
            .iter()
            .enumerate()
            .map(|(i, fault)| {
                let because = format!("That is a mix gone wrong. {}", sentence(&fault.cause));
                Choice::new(format!("fault-{i}"), fault.sign.clone(), Standing::Wrong)
                    .because(plain(because))
            })
            .collect();
        wrong.extend(self.others(material).map(|(other, m)| {
            Choice::new(other.id.as_str(), m.ready.clone(), Standing::Wrong)
                .because(belongs_to(other, "consistency"))
        }));
        wrong.retain(|c| c.label != mixing.ready);
        unique(&mut wrong);
        let keep = mixing.faults.len().min(2);
        if wrong.len() > keep {
            chance.shuffle(&mut wrong[keep..]);
        }
        wrong.truncate(OTHERS);
        wrong.push(right);
        let question = format!("When is the {} right for the dentist?", named(material));
        let faults = mixing.faults.iter().enumerate();
        let faults = faults.map(|(i, fault)| (format!("fault-{i}"), fault.clone()));
        Decision {
            by_hand: ByHand::new(self.clinic.catalogue(), &material.id, faults.collect()),
            ..one("ready", "Judge the mix", question, wrong)
        }
    }

    fn mend(
        &self,
        material: &Material,
        mixing: &Mixing,
        fault: &MixFault,
        chance: &mut Seed,
    ) -> Decision {
        let because = |text: &str| {
            vec![Reason {
                because: text.into(),
                sources: mixing.sources.clone(),
                rule: None,
            }]
        };
        let mut choices = vec![
            Choice::new("mend", fault.mend.clone(), Standing::Right).because(because(&fault.cause)),
            Choice::new("never", fault.never.clone(), Standing::Wrong)
                .because(because(&format!("It makes the mix worse. {}", fault.cause))),
        ];
        let mut others: Vec<Choice> = mixing
            .faults
            .iter()
            .chain(self.others(material).flat_map(|(_, m)| &m.faults))
            .filter(|f| f.mend != fault.mend && f.sign != fault.sign)
            .enumerate()
            .map(|(i, f)| {
                let because = format!("That mends another fault: {}", lower(&f.sign));
                Choice::new(format!("other-{i}"), f.mend.clone(), Standing::Wrong)
                    .because(plain(because))
            })
            .collect();
        unique(&mut others);
        let own = mixing.faults.len().saturating_sub(1).min(others.len());
        chance.shuffle(&mut others[own..]);
        others.truncate(2);
        choices.extend(others);
        unique(&mut choices);
        Decision {
            lead: format!(
                "You look at the {}. {}",
                named(material),
                sentence(&fault.sign)
            ),
            ..one("mend", "Mend the mix", "What do you do?".into(), choices)
        }
    }
}

fn order(material: &Material, mixing: &Mixing) -> Decision {
    let id = |i: usize| format!("move-{i}");
    let choices = mixing
        .order
        .iter()
        .enumerate()
        .map(|(i, step)| Choice::new(id(i), step.clone(), Standing::Right))
        .collect();
    Decision {
        form: Form::Order((0..mixing.order.len()).map(id).collect()),
        reasons: sourced(mixing, "In this order every part of the mix is worked."),
        ..one(
            "mix-order",
            "Mix in order",
            format!("Put the moves of mixing the {} in order.", named(material)),
            choices,
        )
    }
}

/// A question of mixing with one answer.
fn one(id: &str, name: &str, question: String, choices: Vec<Choice>) -> Decision {
    Decision::new(id, name, question, Form::One, choices, "mixing")
}

fn sourced(mixing: &Mixing, because: &str) -> Vec<Reason> {
    vec![Reason {
        because: because.into(),
        sources: mixing.sources.clone(),
        rule: None,
    }]
}

fn belongs_to(other: &Material, what: &str) -> Vec<Reason> {
    plain(format!(
        "That {what} belongs to another material: {}.",
        named(other)
    ))
}

/// Leaves out options that say what another says already.
fn unique(choices: &mut Vec<Choice>) {
    let mut seen: Vec<String> = Vec::new();
    choices.retain(|c| {
        let new = !seen.contains(&c.label);
        seen.push(c.label.clone());
        new
    });
}

fn named(material: &Material) -> String {
    super::cavity::lower_first(&material.name)
}

fn lower(text: &str) -> String {
    super::cavity::lower_first(text)
}

/// The text with a full stop.
fn sentence(text: &str) -> String {
    let text = text.trim_end();
    if text.ends_with(['.', '!', '?']) {
        text.into()
    } else {
        format!("{text}.")
    }
}

/// A span of seconds as people say it.
pub(super) fn seconds(span: Span) -> String {
    let say = |s: u32| match (s / 60, s % 60) {
        (0, s) => format!("{s} seconds"),
        (1, 0) => "1 minute".into(),
        (m, 0) => format!("{m} minutes"),
        (1, s) => format!("1 minute {s} seconds"),
        (m, s) => format!("{m} minutes {s} seconds"),
    };
    match (span.from, span.to) {
        (a, b) if a == b => say(a),
        (a, b) if b <= 90 => format!("{a} to {b} seconds"),
        (a, b) if a % 60 == 0 && b % 60 == 0 => format!("{} to {} minutes", a / 60, b / 60),
        (a, b) => format!("{} to {}", say(a), say(b)),
    }
}
