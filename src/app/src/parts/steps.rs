//! The steps of a procedure as two voices: what the dentist does on one side,
//! what the assistant does on the other.

use super::{
    fold::Fold,
    gradually::in_turn,
    icon::{Icon, icon},
    item_link::{self, ItemLink},
    mixing::duration,
    slips::SlipList,
};
use crate::taught::catalogue;
use catalogue::{
    ids::ItemId,
    procedures::{Actor, HandOver, Step, WrongWay},
};
use clinic::tray::PlacedStep;
use leptos::prelude::*;

/// The name of an actor.
pub fn actor(who: Actor) -> &'static str {
    match who {
        Actor::Dentist => "Dentist",
        Actor::Assistant => "Assistant",
        Actor::Team => "Both",
    }
}

/// How many stages are drawn at once: the first one fills a phone's screen.
const AT_ONCE: usize = 1;

/// Steps under the titles of their stages.
#[component]
pub fn StepList(
    /// The steps, in order.
    steps: Vec<PlacedStep>,
) -> impl IntoView {
    let mut stages: Vec<(String, Vec<PlacedStep>)> = Vec::new();
    for step in steps {
        match stages.last_mut() {
            Some((title, members)) if *title == step.stage => members.push(step),
            _ => stages.push((step.stage.clone(), vec![step])),
        }
    }
    let stage = |(title, members): (String, Vec<PlacedStep>)| {
        view! {
            <section class="steps-stage">
                <h3 class="stage-label">{title}</h3>
                <ol class="voices">
                    {members.into_iter().map(|placed| one(placed.step)).collect_view()}
                </ol>
            </section>
        }
    };
    view! { <div class="steps" data-test="steps">{in_turn(stages, AT_ONCE, stage)}</div> }
}

fn one(step: Step) -> impl IntoView {
    let marks = marks(&step);
    let class = match step.who {
        Actor::Dentist => "voice voice-dentist",
        Actor::Assistant => "voice voice-assistant",
        Actor::Team => "voice voice-team",
    };
    let says = (!step.says.is_empty()).then(|| {
        view! { <p class="says">{icon(Icon::Says)} <q>{step.says}</q></p> }
    });
    let slips = (!step.slips.is_empty()).then(|| {
        view! { <Fold title="What can slip"><SlipList slips=step.slips /></Fold> }
    });
    view! {
        <li class=class>
            <p class="voice-who">{actor(step.who)} {marks}</p>
            <p>{step.does}</p>
            {says}
            {uses(step.uses.0.into_iter().chain(step.at_hand.0).map(|it| it.item).collect())}
            {step.hand_over.map(hand_over)}
            {slips}
        </li>
    }
}

/// How long, how grave, and whether the law has a say.
fn marks(step: &Step) -> impl IntoView + use<> {
    let time = step.seconds.map(|span| {
        view! { <span class="mark">{icon(Icon::Time)} {duration(span)}</span> }
    });
    let critical = step
        .critical
        .then(|| view! { <span class="mark mark-critical">"critical"</span> });
    let law = step
        .local_law
        .then(|| view! { <span class="mark">"where local law allows"</span> });
    view! { {time} {critical} {law} }
}

fn uses(items: Vec<ItemId>) -> impl IntoView {
    let links: Vec<_> = items
        .iter()
        .filter_map(|id| catalogue().item(id))
        .map(|item| view! { <li><ItemLink item /></li> })
        .collect();
    (!links.is_empty()).then(|| view! { <ul class="uses" aria-label="Used here">{links}</ul> })
}

fn hand_over(hand_over: HandOver) -> impl IntoView {
    let wrong = |way: WrongWay| {
        view! {
            <div class="slip">
                <dt>{way.way} {way.harm.then(|| view! { " " <strong class="harm">"Unsafe."</strong> })}</dt>
                <dd>{way.because}</dd>
            </div>
        }
    };
    let not = (!hand_over.not.is_empty()).then(|| {
        view! {
            <Fold title="Not like this">
                <dl class="slips">{hand_over.not.into_iter().map(wrong).collect_view()}</dl>
            </Fold>
        }
    });
    view! {
        <div class="hand-over">
            <p class="hand-over-title">
                {icon(Icon::Pass)} "Hand over: " {item_link::name(&hand_over.item)}
            </p>
            <p>{hand_over.how}</p>
            {not}
        </div>
    }
}
