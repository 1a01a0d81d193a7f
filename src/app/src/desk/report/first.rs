//! What to do first: what to teach again, and who needs a talk.

use super::{Worked, competency, titled};
use leptos::prelude::*;
use std::rc::Rc;

/// How many topics are shown at once.
const TOPICS: usize = 5;

/// What to do first.
#[component]
pub fn First(
    /// What was worked out.
    worked: Rc<Worked>,
) -> impl IntoView {
    let report = &worked.report;
    let topics: Vec<_> = report
        .topics
        .iter()
        .take(TOPICS)
        .map(|topic| {
            let items: Vec<_> = topic
                .items
                .iter()
                .filter_map(|again| {
                    let item = report.items.get(again.item)?;
                    let fault = again
                        .fault
                        .as_ref()
                        .map(|fault| view! { <p class="dk-fault">{fault.words()}</p> });
                    Some(view! {
                        <li>
                            {titled(item)} ": " {item.right} " of " {item.asked} " right"
                            {fault}
                        </li>
                    })
                })
                .collect();
            let harm = match topic.harmful {
                0 => String::new(),
                1 => ", 1 could have hurt somebody".into(),
                many => format!(", {many} could have hurt somebody"),
            };
            view! {
                <li class="dk-topic">
                    <h3>{competency(&topic.competency)}</h3>
                    <p>{topic.right} " of " {topic.asked} " right" {harm} "."</p>
                    <ul>{items}</ul>
                </li>
            }
        })
        .collect();
    let talks: Vec<_> = report
        .talks
        .iter()
        .map(|talk| {
            view! {
                <li data-test="talk">
                    <strong>{worked.roster.label(talk.seat)}</strong> ": " {talk.why.to_string()}
                </li>
            }
        })
        .collect();
    let (no_topics, no_talks) = (topics.is_empty(), talks.is_empty());
    let nobody = report.seats.is_empty();
    view! {
        <div class="dk-two">
            <section data-test="topics">
                <h2>"Teach again first"</h2>
                <ol class="dk-topics">{topics}</ol>
                {no_topics.then(|| view! { <p>{if nobody { "Nothing is known yet." } else { "Nothing was wrong." }}</p> })}
            </section>
            <section data-test="talks">
                <h2>"Who needs a talk"</h2>
                <ul>{talks}</ul>
                {no_talks
                    .then(|| {
                        view! { <p>"Nobody, by what was handed in. Label the seats under “Who sits where” to see who has not handed in."</p> }
                    })}
            </section>
        </div>
    }
}
