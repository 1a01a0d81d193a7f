//! The argument behind an answer, as a short chain to read from top to bottom.

use super::reasons::reasons;
use crate::cases::tooth::capital;
use clinic::engine::{Ground, Proof};
use leptos::prelude::*;

/// The argument.
#[component]
pub fn ProofChain(
    /// What the rules lead to.
    proof: Proof,
) -> impl IntoView {
    let mut links = Vec::new();
    collect(&proof, &mut links);
    let one = |link: Link| {
        view! {
            <li class="link">
                {rests_on(link.from)}
                <p class="link-to">{link.to}</p>
            </li>
        }
    };
    view! {
        <section class="chain" data-test="proof">
            <h3 class="stage-label">"How it follows"</h3>
            <ol>
                {links.into_iter().map(one).collect_view()}
                <li class="link link-end">
                    {rests_on(proof.grounds.iter().map(said).collect())}
                    <div class="link-to">{reasons(&[proof.reason])}</div>
                </li>
            </ol>
        </section>
    }
}

/// What a step rests on. An argument names only what is out of the ordinary.
fn rests_on(grounds: Vec<String>) -> impl IntoView {
    let grounds = if grounds.is_empty() {
        vec!["All signs as usual".to_string()]
    } else {
        grounds
    };
    let one = |ground: String| view! { <li>{ground}</li> };
    view! { <ul class="link-from">{grounds.into_iter().map(one).collect_view()}</ul> }
}

/// One step: from what, to what.
struct Link {
    from: Vec<String>,
    to: String,
}

/// The steps that lead to the grounds of a proof, the first ones first.
fn collect(proof: &Proof, links: &mut Vec<Link>) {
    for ground in &proof.grounds {
        let Some(inner) = &ground.proof else { continue };
        collect(inner, links);
        let to = said(ground);
        if !links.iter().any(|link| link.to == to) {
            let from = inner.grounds.iter().map(said).collect();
            links.push(Link { from, to });
        }
    }
}

/// What follows says it all by itself; what was found needs its name.
fn said(ground: &Ground) -> String {
    if ground.proof.is_some() {
        capital(&ground.says)
    } else {
        format!("{}: {}", ground.name, ground.says)
    }
}
