//! The steps on the card: who, and the first sentence of what.

use crate::parts::steps::actor;
use catalogue::procedures::Actor;
use clinic::tray::PlacedStep;
use leptos::prelude::*;

/// The steps, short, by stage.
#[component]
pub fn Steps(
    /// The steps, in order.
    steps: Vec<PlacedStep>,
) -> impl IntoView {
    let mut stages: Vec<(String, Vec<PlacedStep>)> = Vec::new();
    for step in steps
        .into_iter()
        .filter(|placed| !placed.step.does.is_empty())
    {
        match stages.last_mut() {
            Some((title, members)) if *title == step.stage => members.push(step),
            _ => stages.push((step.stage.clone(), vec![step])),
        }
    }
    let stage = |(title, members): (String, Vec<PlacedStep>)| {
        let steps: Vec<_> = members.iter().map(one).collect();
        view! {
            <li class="tc-steps-stage">
                <h4>{title}</h4>
                <ul>{steps}</ul>
            </li>
        }
    };
    view! {
        <section class="tc-steps">
            <h3>"Steps"</h3>
            <p class="tc-key">
                "A assistant, D dentist, B both. " <b>"!"</b>
                " marks a step that must not fail, " <b>"§"</b>
                " one that an assistant does only where local law allows."
            </p>
            <ol>{stages.into_iter().map(stage).collect_view()}</ol>
        </section>
    }
}

fn one(placed: &PlacedStep) -> impl IntoView + use<> {
    let step = &placed.step;
    let does = step
        .does
        .find(". ")
        .map_or(step.does.as_str(), |end| &step.does[..=end]);
    let marks = match (step.critical, step.local_law) {
        (true, true) => " ! §",
        (true, false) => " !",
        (false, true) => " §",
        (false, false) => "",
    };
    view! {
        <li class="tc-step">
            <abbr class=class(step.who) title=actor(step.who)>{letter(step.who)}</abbr>
            <span>{does.to_string()} <b>{marks}</b></span>
        </li>
    }
}

fn letter(who: Actor) -> &'static str {
    match who {
        Actor::Assistant => "A",
        Actor::Dentist => "D",
        Actor::Team => "B",
    }
}

fn class(who: Actor) -> &'static str {
    match who {
        Actor::Assistant => "tc-who tc-assistant",
        Actor::Dentist | Actor::Team => "tc-who",
    }
}
