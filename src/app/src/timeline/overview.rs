//! Both lanes of the whole visit. It scrolls sideways under its lane names.

use super::{
    Line,
    lanes::{GAP, LANE, Lanes},
    minutes::{at, lasting},
};
use crate::{browser::scroll, parts::item_link::name};
use clinic::timing::Window;
use leptos::{html, prelude::*};

/// Pixels a minute.
const A_MINUTE: i64 = 46;
/// Minutes between the marks on the axis.
const MARKS: i64 = 5;
/// The rows above the lanes: the minutes, and the stages.
const AXIS: i64 = 24;
const STAGES: i64 = 26;
/// A letter of a stage's title, in pixels.
const LETTER: i64 = 7;

/// The drawing.
#[component]
pub fn Overview(
    /// The time line.
    line: Line,
    /// What the procedure is called.
    name: &'static str,
) -> impl IntoView {
    let lanes = Lanes {
        from: 0,
        to: i64::from(line.length()) + 60,
        a_minute: A_MINUTE,
        top: AXIS + STAGES,
    };
    let (width, bottom) = (lanes.width(), lanes.bottom());
    let mixing = !line.time.windows.is_empty();
    let height = if mixing { bottom + GAP + LANE } else { bottom } + 2;
    let label = format!(
        "{name}: the visit as two lanes, {} in all. The table below says the same.",
        lasting(line.length())
    );
    let mixes = line
        .time
        .windows
        .iter()
        .map(|it| mix(lanes, it))
        .collect_view();
    let slots = line
        .time
        .flow
        .iter()
        .enumerate()
        .map(|(number, slot)| lanes.block(slot, number + 1, line.critical(slot.place)));
    // The mix is what one looks for, and it stands far to the right.
    let frame = NodeRef::<html::Div>::new();
    Effect::new(move |_| {
        if let Some(frame) = frame.get() {
            scroll::into_box((*frame).clone().into(), ".mix-bar".into());
        }
    });
    view! {
        <section class="group">
            <h2 class="stage-label">"The whole visit"</h2>
            <div class="lanes" data-test="overview">
                <ul class="lane-names" aria-hidden="true">
                    <li class="lane-minutes">"min"</li>
                    <li>"Dentist"</li>
                    <li>"Assistant"</li>
                    {mixing.then(|| view! { <li>"Mix"</li> })}
                </ul>
                <div class="lane-box" node_ref=frame tabindex="0" role="group" aria-label="The visit, to be scrolled sideways">
                    <svg
                        class="lane-drawing"
                        role="img"
                        aria-label=label
                        width=width
                        height=height
                        viewBox=format!("0 0 {width} {height}")
                    >
                        {stages(lanes, &line)}
                        {marks(lanes, height)}
                        {slots.collect_view()}
                        {mixes}
                    </svg>
                </div>
            </div>
            <ul class="lane-key">
                <li><span class="key-dentist"></span>"dentist"</li>
                <li><span class="key-assistant"></span>"assistant, or both over both lanes"</li>
                <li><span class="key-critical"></span>"critical: a notch at the top"</li>
            </ul>
        </section>
    }
}

/// The minutes along the top.
fn marks(lanes: Lanes, height: i64) -> impl IntoView {
    let minutes = (0..=lanes.to / 60).step_by(usize::try_from(MARKS).unwrap_or(1));
    let mark = |minute: i64| {
        let x = lanes.x(minute * 60);
        view! {
            <line class="lane-tick" x1=x x2=x y1=AXIS - 6 y2=height />
            <text class="lane-text" x=x + 4 y=AXIS - 8>{minute}</text>
        }
    };
    minutes.map(mark).collect_view()
}

/// The stages as bands, each with its title where there is room for it.
fn stages(lanes: Lanes, line: &Line) -> impl IntoView + use<> {
    let mut bands: Vec<(String, u32, u32)> = Vec::new();
    for slot in &line.time.flow {
        match bands.last_mut() {
            Some((title, _, to)) if *title == slot.stage => *to = slot.to,
            _ => bands.push((slot.stage.clone(), slot.from, slot.to)),
        }
    }
    let band = move |(index, (title, from, to)): (usize, (String, u32, u32))| {
        let (x, end) = (lanes.x(from.into()), lanes.x(to.into()));
        let letters = i64::try_from(title.chars().count()).unwrap_or(i64::MAX);
        let room = end - x > letters.saturating_mul(LETTER) + 8;
        let class = if index % 2 == 0 {
            "band"
        } else {
            "band band-other"
        };
        view! {
            <rect class=class x=x y=AXIS width=end - x height=lanes.bottom() - AXIS />
            {room.then(|| view! { <text class="lane-text" x=x + 4 y=AXIS + 18>{title}</text> })}
        }
    };
    bands.into_iter().enumerate().map(band).collect_view()
}

/// A mix in its own row: when it can be started, and the mixing itself.
fn mix(lanes: Lanes, window: &Window) -> impl IntoView + use<> {
    let y = lanes.bottom() + GAP;
    let (ready, latest) = (i64::from(window.ready), window.latest);
    let earliest = window.earliest.min(latest).max(0);
    let (start, end) = (lanes.x(earliest), lanes.x(ready));
    let bar = lanes.x(latest);
    let title = format!(
        "{}: start from {} to {}, ready at {}",
        name(&window.material),
        at(earliest),
        at(latest),
        at(ready)
    );
    view! {
        <g>
            <title>{title}</title>
            <rect class="mix-window" x=start y=y width=(bar - start).max(3) height=LANE />
            <rect class="mix-bar" x=bar y=y + 10 width=(end - bar).max(4) height=LANE - 20 rx="3" />
            <line class="mix-ready" x1=end x2=end y1=lanes.top y2=y + LANE />
        </g>
    }
}
