//! The minutes round one mix: when it can be started so that the dentist never
//! waits and nothing sets early.

use super::{
    Line,
    lanes::{GAP, LANE, Lanes},
    minutes::{at, lasting},
};
use crate::{
    parts::{item_link::name, mixing::duration, sources::SourceNotes},
    taught::catalogue,
};
use clinic::timing::{Slot, Window};
use leptos::prelude::*;

/// The width of the lanes, on a narrow phone.
const WIDTH: i64 = 280;
/// The width of the names beside them.
const NAMES: i64 = 74;
/// The row of moments under the lanes.
const MOMENTS: i64 = 22;

/// One mix.
#[component]
pub fn CloseUp(
    /// The time line.
    line: Line,
    /// Which of its mixes.
    at: usize,
) -> impl IntoView {
    let window = line.time.windows[at].clone();
    let material = name(&window.material);
    let mixing = catalogue()
        .material(&window.material)
        .and_then(|it| it.mixing.as_ref());
    let hook = format!("mix-{}", window.material);
    view! {
        <section class="mix" data-test=hook>
            <h2 class="stage-label">"Start the mix"</h2>
            <p class="mix-says" data-test="mix-says">
                <strong>{material}</strong> ": " {says(&line, &window)}
            </p>
            {drawing(&line, &window)}
            <p>
                {if window.is_open() {
                    "Earlier, and it stiffens before it is placed. Later, and the dentist waits."
                } else {
                    "By these durations one mix would stiffen before all of it is placed: mix it in portions, or be ready to mix again."
                }}
            </p>
            <dl class="facts">
                <dt>"Mixing takes"</dt>
                <dd>{duration(window.mix)}</dd>
                <dt>"Can be worked for"</dt>
                <dd>{duration(window.work)} " from the start of the mix"</dd>
                <dt>"Is placed in"</dt>
                <dd>{lasting(window.placing)}</dd>
            </dl>
            {mixing.map(|it| view! { <SourceNotes ids=it.sources.clone() /> })}
        </section>
    }
}

/// When to start, in a sentence: before what, and while what is done.
fn says(line: &Line, window: &Window) -> String {
    let before = |moment: i64| {
        let seconds = i64::from(window.ready) - moment;
        lasting(u32::try_from(seconds).unwrap_or(0))
    };
    let (first, last) = (window.earliest, window.latest);
    let when = match (window.is_open(), before(first) == before(last)) {
        (true, false) => format!("between {} and {}", before(first), before(last)),
        (true, true) => before(last),
        (false, _) => format!("at the latest {}", before(last)),
    };
    let during = line.time.flow.iter().enumerate();
    let during = during
        .filter(|(_, it)| i64::from(it.from) <= last && last < i64::from(it.to))
        .map(|(number, _)| format!(", while step {} is done", number + 1));
    let during: String = during.collect();
    format!("start {when} before the dentist is ready for it{during}.")
}

/// From a little before the first start to the end of the working time.
fn drawing(line: &Line, window: &Window) -> impl IntoView + use<> {
    let (ready, latest) = (i64::from(window.ready), window.latest);
    let earliest = window.earliest.min(latest);
    let work = latest + i64::from(window.work.from);
    let placed = ready + i64::from(window.placing);
    let from = (earliest - 60).max(0);
    let to = work.max(placed).min(ready + 900) + 30;
    let lanes = Lanes {
        from,
        to,
        a_minute: WIDTH * 60 / (to - from).max(60),
        top: 4,
    };
    let width = lanes.width().max(1);
    let mix_top = lanes.bottom() + GAP;
    let height = mix_top + LANE + 2 * MOMENTS;
    let shown = line.time.flow.iter().enumerate();
    let shown = shown.filter(|(_, it)| i64::from(it.to) > from && i64::from(it.from) < to);
    let blocks = shown.map(|(number, it)| lanes.block(it, number + 1, line.critical(it.place)));
    let (start, bar, end, stiff) = (
        lanes.x(earliest),
        lanes.x(latest),
        lanes.x(ready),
        lanes.x(work),
    );
    let moment = |x: i64, says: String, row: i64| {
        let (anchor, x_text) = if x > width - 70 {
            ("end", x - 3)
        } else {
            ("start", x + 3)
        };
        view! {
            <line class="lane-tick" x1=x x2=x y1=mix_top y2=height />
            <text class="lane-text" x=x_text y=mix_top + LANE + 16 + row * MOMENTS text-anchor=anchor>{says}</text>
        }
    };
    let label = format!(
        "The mix can be started from {} to {}; it is ready at {}, and can be worked until {}.",
        at(earliest),
        at(latest),
        at(ready),
        at(work)
    );
    let key = |it: &Slot, number: usize| format!("{}. {}", number + 1, first_sentence(&it.does));
    let shown = line.time.flow.iter().enumerate();
    let near = shown
        .filter(|(_, it)| i64::from(it.to) > from && i64::from(it.from) < to)
        .map(|(number, it)| view! { <li>{key(it, number)}</li> })
        .collect_view();
    view! {
        <figure class="close-up">
            <svg
                class="close-up-drawing"
                role="img"
                aria-label=label
                viewBox=format!("{} 0 {} {height}", -NAMES, width + NAMES)
            >
                {lane_name("Dentist", lanes.top)}
                {lane_name("Assistant", lanes.assistant())}
                {lane_name("Mix", mix_top)}
                {blocks.collect_view()}
                <rect class="mix-window" x=start y=mix_top width=(bar - start).max(3) height=LANE />
                <rect class="mix-work" x=end y=mix_top + 10 width=(stiff - end).max(0) height=LANE - 20 />
                <rect class="mix-bar" x=bar y=mix_top + 10 width=(end - bar).max(4) height=LANE - 20 rx="3" />
                <line class="mix-ready" x1=end x2=end y1=4 y2=mix_top + LANE />
                {moment(start, format!("start {}", at(earliest)), 0)}
                {moment(end, format!("ready {}", at(ready)), 1)}
                {moment(stiff, format!("stiff {}", at(work)), 0)}
            </svg>
            <figcaption>
                <ol class="close-up-steps">{near}</ol>
            </figcaption>
        </figure>
    }
}

fn lane_name(name: &'static str, top: i64) -> impl IntoView {
    view! { <text class="lane-text" x=-NAMES y=top + LANE / 2 + 5>{name}</text> }
}

/// The first sentence of a step, to know it by.
fn first_sentence(does: &str) -> &str {
    does.find(". ").map_or(does, |end| &does[..=end])
}
