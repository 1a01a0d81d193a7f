//! Things were put in order: the own order, with what stands elsewhere marked,
//! beside the right one where the two differ.

use super::super::play::Asked;
use leptos::prelude::*;

/// The right order, and the own one where it differs.
pub fn compared(asked: &Asked, order: &[String], answer: &[String]) -> impl IntoView + use<> {
    let grade = asked.grade(answer);
    let moved = grade.comparison.map_or_else(Vec::new, |it| it.moved);
    let list = |title: &'static str, ids: &[String], marked: bool| {
        let entry = |id: &String| {
            let off = marked && moved.contains(id);
            view! {
                <li class=off.then_some("order-off")>
                    {asked.choice(id).map(|c| c.label.clone())}
                    {off.then(|| view! { <span class="order-note">" (out of place)"</span> })}
                </li>
            }
        };
        view! {
            <section class="beside-column">
                <h3 class="stage-label">{title}</h3>
                <ol class="order-read">{ids.iter().map(entry).collect_view()}</ol>
            </section>
        }
    };
    let own = (answer != order).then(|| list("Your order", answer, true));
    view! {
        <div class="beside" data-test="compared">
            {own} {list("In order", order, false)}
        </div>
    }
}
