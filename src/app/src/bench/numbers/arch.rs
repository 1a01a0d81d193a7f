//! The teeth on two drawn arches, as one looks at the patient. A tooth can be
//! tapped; the box beside it takes the same by keyboard.

use crate::taught::catalogue;
use clinic::{
    numbers::teeth::{Placed, System, arch, written},
    tooth::Tooth,
};
use leptos::prelude::*;

fn path(outline: &[(f32, f32)]) -> String {
    let points: Vec<String> = outline
        .iter()
        .map(|(x, y)| format!("{x:.1} {:.1}", -y))
        .collect();
    format!("M{}Z", points.join("L"))
}

/// Both arches, permanent or primary.
#[component]
pub fn Arches(
    /// Whether the primary teeth are drawn.
    #[prop(into)]
    primary: Signal<bool>,
    /// The system in which teeth are written.
    #[prop(into)]
    system: Signal<System>,
    /// The tooth that is meant.
    #[prop(into)]
    meant: Signal<Option<Tooth>>,
    /// Told which tooth was tapped.
    #[prop(into)]
    tapped: Callback<Tooth>,
) -> impl IntoView {
    let numbers = &catalogue().numbers;
    let tooth = move |placed: &Placed| {
        let (tooth, (x, y)) = (placed.tooth, placed.middle);
        let chosen = move || meant.get() == Some(tooth);
        view! {
            <g class="num-tooth" class:num-meant=chosen on:click=move |_| tapped.run(tooth)>
                <path d=path(&placed.outline()) />
                <text x=format!("{x:.1}") y=format!("{:.1}", 1.4 - y) text-anchor="middle">
                    {move || written(tooth, system.get())}
                </text>
            </g>
        }
    };
    let drawing = move || {
        let all = arch(numbers, primary.get());
        let (mut wide, mut high) = (0.0_f32, 0.0_f32);
        for (x, y) in all.iter().flat_map(Placed::outline) {
            wide = wide.max(x.abs());
            high = high.max(y.abs());
        }
        let view_box = format!(
            "{:.1} {:.1} {:.1} {:.1}",
            -wide - 3.0,
            -high - 3.0,
            2.0 * wide + 6.0,
            2.0 * high + 6.0
        );
        let name = meant.get_untracked().map(Tooth::name);
        let label = format!(
            "The teeth of both jaws, as one looks at the patient{}",
            name.map_or_else(String::new, |name| format!("; marked: {name}"))
        );
        view! {
            <svg class="num-arch" viewBox=view_box role="img" aria-label=label data-test="arch">
                {all.iter().map(tooth).collect_view()}
                <text class="num-side" x=format!("{:.1}", 4.0 - wide) y="0.8">"Right"</text>
                <text class="num-side" x=format!("{:.1}", wide - 4.0) y="0.8" text-anchor="end">"Left"</text>
            </svg>
        }
    };
    view! {
        <figure class="num-picture">
            {drawing}
            <figcaption class="hint">
                "Seen as you look at the patient: the patient's right is on your left. Tap a tooth to write it."
            </figcaption>
        </figure>
    }
}
