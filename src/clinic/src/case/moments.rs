//! Moments within the visit: when to start the mix, and when to speak up.

use super::{
    cavity::{lower_first, plain},
    choice::{Choice, Decision, Form},
    draw::Visit,
    hands::seconds,
    seed::Seed,
};
use crate::{
    Reason,
    standing::Standing,
    timing::{Slot, Start, Timeline, Window},
};
use catalogue::{quantity::Span, stops::Stop};

/// How many steps before the dentist is ready are offered as a start.
const BEFORE: usize = 4;

impl Visit<'_> {
    /// At which step the mix is started.
    pub fn start(&self) -> Option<Decision> {
        let (material, mixing) = self.mixed()?;
        let line = self
            .clinic
            .timeline(self.procedure.as_ref()?, &self.after.patient);
        let window = line.windows.iter().find(|w| w.material == material.id)?;
        let choices = starts(&line, window);
        if !choices.iter().any(|c| c.standing == Standing::Right) {
            return None;
        }
        let name = lower_first(&material.name);
        let because = format!(
            "Mixing takes {}, and from its start the mix can be worked for {}; placing takes about {}. Durations of steps are custom of the trade.",
            seconds(window.mix),
            seconds(window.work),
            seconds(Span {
                from: window.placing,
                to: window.placing
            }),
        );
        let question = format!(
            "When do you start on the {name}, so that the dentist neither waits nor gets it too late?"
        );
        Some(Decision {
            reasons: vec![Reason {
                because,
                sources: mixing.sources.clone(),
                rule: None,
            }],
            ..Decision::new(
                "start",
                "Start in time",
                question,
                Form::One,
                choices,
                "mixing",
            )
        })
    }

    /// A moment at which the assistant has to speak up, drawn from those that can come up.
    pub fn speak_up(&self, chance: &mut Seed) -> Option<Decision> {
        let tray = self.clinic.tray(&self.case.booked, &self.before.patient);
        let can_be = |stop: &&Stop| {
            self.clinic.applies(stop.when.as_ref(), &self.after.patient)
                && (self.case.tooth.is_some() || !stop.sees.contains("{tooth}"))
                && stop
                    .item
                    .as_ref()
                    .is_none_or(|item| tray.items().any(|(_, i)| i.item == *item))
        };
        let stops: Vec<&Stop> = self
            .clinic
            .catalogue()
            .stops
            .iter()
            .filter(can_be)
            .collect();
        // What turns on this patient's own findings goes before what can happen to anybody.
        let own: Vec<&Stop> = stops.iter().copied().filter(|s| s.when.is_some()).collect();
        let from = if own.is_empty() || chance.below(3) == 0 {
            &stops
        } else {
            &own
        };
        let stop = *chance.pick(from)?;
        let number = self
            .case
            .tooth
            .map(|t| format!("{t} (FDI)"))
            .unwrap_or_default();
        let tooth = |text: &str| text.replace("{tooth}", &number);
        let reason = Reason {
            because: stop.because.clone(),
            sources: stop.sources.clone(),
            rule: None,
        };
        let mut choices =
            vec![Choice::new("speak", tooth(&stop.speak), Standing::Right).because(vec![reason])];
        choices.extend(stop.not.iter().enumerate().map(|(i, way)| {
            let standing = if way.harm {
                Standing::Unsafe
            } else {
                Standing::Wrong
            };
            Choice::new(format!("wrong-{i}"), tooth(&way.way), standing)
                .because(plain(way.because.clone()))
        }));
        Some(Decision {
            lead: tooth(&stop.sees),
            ..Decision::new(
                "speak-up",
                "Something happens",
                "What do you do?",
                Form::One,
                choices,
                stop.competency.as_str(),
            )
        })
    }
}

/// The last steps before the dentist is ready, each as a start, and waiting to be asked.
fn starts(line: &Timeline, window: &Window) -> Vec<Choice> {
    let before: Vec<&Slot> = line
        .flow
        .iter()
        .filter(|s| s.place < window.place)
        .collect();
    let from = before.len().saturating_sub(BEFORE);
    let mut choices: Vec<Choice> = before[from..]
        .iter()
        .map(|slot| {
            let label = format!("As this begins: {}", first_sentence(&slot.does));
            choice(
                format!("{}-{}", slot.procedure, slot.step),
                label,
                window,
                i64::from(slot.from),
            )
        })
        .collect();
    let ready = i64::from(window.ready);
    choices.push(choice(
        "half-a-mix-before".into(),
        format!(
            "About {} before the dentist is ready",
            seconds(Span {
                from: window.mix.middle(),
                to: window.mix.middle()
            })
        ),
        window,
        ready - i64::from(window.mix.middle()),
    ));
    choices.push(choice(
        "when-asked".into(),
        "Once the dentist holds out a hand for it".into(),
        window,
        ready,
    ));
    choices
}

fn choice(id: String, label: String, window: &Window, second: i64) -> Choice {
    let (standing, because) = match window.judge(second) {
        Start::InTime => (
            Standing::Right,
            "It is ready as the dentist is, and soft for as long as placing takes.".into(),
        ),
        Start::TooEarly(s) => (
            Standing::Wrong,
            format!(
                "It would begin to stiffen about {} before it is placed.",
                say(s)
            ),
        ),
        Start::TooLate(s) => (
            Standing::Wrong,
            format!(
                "The dentist would wait about {}, with the cavity open.",
                say(s)
            ),
        ),
    };
    Choice::new(id, label, standing).because(plain(because))
}

fn say(s: u32) -> String {
    seconds(Span { from: s, to: s })
}

fn first_sentence(text: &str) -> &str {
    let end = text.find(". ").map_or(text.len(), |i| i + 1);
    &text[..end]
}
