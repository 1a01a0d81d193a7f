//! At the chair: handing over, and what comes next.

use super::{
    cavity::plain,
    choice::{Choice, Decision, Form},
    draw::Visit,
    seed::Seed,
};
use crate::{Reason, standing::Standing, tray::PlacedStep};

impl Visit<'_> {
    fn steps(&self) -> Vec<PlacedStep> {
        self.procedure
            .as_ref()
            .map(|p| self.clinic.steps(p, &self.after.patient))
            .unwrap_or_default()
    }

    /// How the last thing handed over in this visit is handed over.
    pub fn hand_over(&self) -> Option<Decision> {
        let steps = self.steps();
        let mixed = self.mixed().map(|(m, _)| m.id.clone());
        let hand_overs: Vec<_> = steps
            .iter()
            .filter_map(|s| s.step.hand_over.as_ref())
            .collect();
        let hand_over = hand_overs
            .iter()
            .find(|h| Some(&h.item) == mixed.as_ref())
            .or(hand_overs.last())?;
        let reason = Reason {
            because: "That keeps it in reach, out of the patient's sight, and ready at the moment it is wanted.".into(),
            sources: hand_over.sources.clone(),
            rule: None,
        };
        let mut choices = vec![
            Choice::new("right-way", hand_over.how.clone(), Standing::Right).because(vec![reason]),
        ];
        choices.extend(hand_over.not.iter().enumerate().map(|(i, wrong)| {
            let standing = if wrong.harm {
                Standing::Unsafe
            } else {
                Standing::Wrong
            };
            Choice::new(format!("wrong-{i}"), wrong.way.clone(), standing)
                .because(plain(wrong.because.clone()))
        }));
        let item = super::cavity::lower_first(self.clinic.catalogue().item_name(&hand_over.item));
        Some(Decision::new(
            "hand-over",
            "Hand over",
            format!("The dentist is ready. How do you hand over the {item}?"),
            Form::One,
            choices,
            "chairside",
        ))
    }

    /// What comes after the tooth is closed: the step that follows the last hand-over.
    pub fn next_step(&self, chance: &mut Seed) -> Option<Decision> {
        let steps = self.steps();
        let handed = steps.iter().rposition(|s| s.step.hand_over.is_some())?;
        let now = &steps[handed];
        let next = steps.get(handed + 1)?;
        // Steps before are done; steps well after come too early. Both tempt.
        let mut wrong: Vec<Choice> = steps[handed + 2..]
            .iter()
            .map(|s| (s, "That comes later."))
            .chain(steps[..handed].iter().map(|s| (s, "That was done before.")))
            .filter(|(s, _)| s.step.does != next.step.does)
            .map(|(s, why)| {
                let id = format!("{}-{}", s.procedure, s.step.id);
                Choice::new(id, s.step.does.clone(), Standing::Wrong).because(plain(why.into()))
            })
            .collect();
        if wrong.len() > 3 {
            chance.shuffle(&mut wrong);
        }
        wrong.truncate(3);
        let id = format!("{}-{}", next.procedure, next.step.id);
        let because = format!("It follows at once, under “{}”.", next.stage);
        wrong
            .push(Choice::new(id, next.step.does.clone(), Standing::Right).because(plain(because)));
        Some(Decision {
            lead: format!(
                "Done just now: {}",
                super::cavity::lower_first(&now.step.does)
            ),
            ..Decision::new(
                "next-step",
                "Know the next step",
                "What comes next?",
                Form::One,
                wrong,
                "chairside",
            )
        })
    }
}
