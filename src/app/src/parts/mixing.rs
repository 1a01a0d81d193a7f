//! How a material is mixed: the numbers, the moves, the right feel, the faults.

use super::{item_link::ItemLink, sources::SourceNotes};
use crate::taught::catalogue;
use catalogue::{
    items::{MixFault, Mixing},
    quantity::Span,
};
use leptos::prelude::*;

/// A span of seconds in words: `1 to 1½ min`, `20 s`.
pub fn duration(span: Span) -> String {
    let minutes = span.from >= 60 && [span.from, span.to].iter().all(|s| s.is_multiple_of(30));
    let (unit, show): (_, fn(u32) -> String) = if minutes {
        ("min", |seconds| {
            let half = if seconds % 60 == 30 { "½" } else { "" };
            format!("{}{half}", seconds / 60)
        })
    } else {
        ("s", |seconds| seconds.to_string())
    };
    if span.from == span.to {
        format!("{} {unit}", show(span.from))
    } else {
        format!("{} to {} {unit}", show(span.from), show(span.to))
    }
}

/// The mixing data of a material.
#[component]
pub fn MixingCard(
    /// The data.
    mixing: &'static Mixing,
) -> impl IntoView {
    let with = catalogue().item(&mixing.with);
    let set = mixing.set_seconds.map(duration);
    view! {
        <div class="mixing">
            <dl class="facts">
                <dt>"Proportion"</dt>
                <dd>{mixing.proportion.as_str()}</dd>
                <dt>"On"</dt>
                <dd>{mixing.surface.as_str()}</dd>
                {with
                    .map(|item| view! { <dt>"With"</dt><dd><ItemLink item /></dd> })}
                <dt>"Mix for"</dt>
                <dd>{duration(mixing.mix_seconds)}</dd>
                <dt>"Work within"</dt>
                <dd>{duration(mixing.work_seconds)} " from the start of the mix"</dd>
                {set.map(|set| view! { <dt>"Sets in"</dt><dd>{set} " from the start of the mix"</dd> })}
            </dl>
            <h3>"In this order"</h3>
            <ol class="mix-order">
                {mixing.order.iter().map(|it| view! { <li>{it.as_str()}</li> }).collect_view()}
            </ol>
            <p class="ready"><strong>"Ready when: "</strong>{mixing.ready.as_str()}</p>
            <p>{mixing.hardens.as_str()}</p>
            {faults(&mixing.faults)}
            <SourceNotes ids=mixing.sources.clone() />
        </div>
    }
}

fn faults(faults: &'static [MixFault]) -> impl IntoView {
    let one = |fault: &'static MixFault| {
        view! {
            <div class="slip">
                <dt>{fault.sign.as_str()}</dt>
                <dd>{fault.cause.as_str()} " " {fault.mend.as_str()}</dd>
                <dd class="never"><strong>"Not: "</strong>{fault.never.as_str()}</dd>
            </div>
        }
    };
    (!faults.is_empty()).then(|| {
        view! {
            <h3>"When it goes wrong"</h3>
            <dl class="slips">{faults.iter().map(one).collect_view()}</dl>
        }
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn durations_are_said_in_the_unit_that_fits() {
        for (from, to, said) in [
            (20, 20, "20 s"),
            (15, 20, "15 to 20 s"),
            (60, 90, "1 to 1½ min"),
            (240, 600, "4 to 10 min"),
            (30, 60, "30 to 60 s"),
            (60, 75, "60 to 75 s"),
        ] {
            assert_eq!(duration(Span { from, to }), said);
        }
    }
}
