//! The surface with the mass on it, seen from above and from the side, and the
//! spatula that works it: by a pointer that is held and moved, or by a button
//! that is held, with a finger or a key.

use super::{
    picture::{self, GROUND, MIDDLE},
    session::{Session, Stage},
};
use crate::parts::choice::{Choice, Choosable};
use catalogue::kinetics::{Area, Surface, Tint};
use clinic::mixing::{Look, Vigour};
use leptos::{ev, html::Div, prelude::*};

/// The drawing is this wide and this high, in its own units.
const SIZE: (f64, f64) = (120.0, 100.0);

fn tint(tint: Tint) -> &'static str {
    match tint {
        Tint::Clear => "mb-clear",
        Tint::White => "mb-white",
        Tint::Ivory => "mb-ivory",
        Tint::Cream => "mb-cream",
        Tint::Yellow => "mb-yellow",
        Tint::Amber => "mb-amber",
        Tint::Brown => "mb-brown",
        Tint::Grey => "mb-grey",
        Tint::Pink => "mb-pink",
    }
}

/// The pad, and the button that works it without a gesture.
#[component]
pub fn Pad(
    /// The mix.
    session: Session,
) -> impl IntoView {
    let frame = NodeRef::<Div>::new();
    let place = move |event: &ev::PointerEvent| {
        let found = frame.get_untracked()?;
        let room = found.get_bounding_client_rect();
        let x = (f64::from(event.client_x()) - room.left()) / room.width().max(1.0);
        let y = (f64::from(event.client_y()) - room.top()) / room.height().max(1.0);
        Some((x * SIZE.0, y * SIZE.1))
    };
    let down = move |event: ev::PointerEvent| {
        if let (Some(found), Some(at)) = (frame.get_untracked(), place(&event)) {
            // A pointer that was lifted meanwhile cannot be held, and need not be.
            let _ = found.set_pointer_capture(event.pointer_id());
            session.put_down(at);
        }
    };
    let moved = move |event: ev::PointerEvent| {
        if let Some(at) = place(&event) {
            session.draw_on(at);
        }
    };
    let by_hand = move || session.stage.get() == Stage::Open && session.way.get().by_hand();
    view! {
        <div
            class="mb-pad"
            class:mb-works=by_hand
            data-test="pad"
            node_ref=frame
            on:pointerdown=down
            on:pointermove=moved
            on:pointerup=move |_| session.lift()
            on:pointercancel=move |_| session.lift()
        >
            <Drawing session />
        </div>
        {move || by_hand().then(|| view! { <HoldButton session /> })}
    }
}

#[component]
fn Drawing(session: Session) -> impl IntoView {
    let (look, scale) = (session.look, session.scale());
    let offer = session.offer();
    let mass = Memo::new(move |_| {
        look.with(|look| picture::mass(look, scale, session.worked.get(), session.spatula.get()))
    });
    let is_mass = move || mass.with(|mass| mass.radius > 0.0);
    let (own, other) = look.with_untracked(|look| (tint(look.tint), tint(look.unmixed)));
    let liquid = tint(offer.liquid.tint);
    let pastes = look.with_untracked(|look| look.streaks);
    let of = move |part: fn(&Look) -> f64| Memo::new(move |_| look.with(part));
    let (gloss, cracked, dew) = (of(|it| it.gloss), of(|it| it.cracks), of(|it| it.dew));
    let (powder, drops) = (of(|it| it.powder_beside), of(|it| it.liquid_beside));
    let side = Memo::new(move |_| look.with(|look| picture::side(look, scale)));
    let spatula = move || match session.spatula.get() {
        Some((x, y)) => format!("translate({x:.1} {y:.1})"),
        None => "translate(104 64)".into(),
    };
    let lifted = move || {
        (session.tested.get() && is_mass()).then(|| {
            let (top, long) = look.with(|look| picture::string(look, scale));
            let end = top - long;
            view! {
                <path
                    class=format!("mb-mass {own}")
                    d=format!(
                        "M{:.1} {top:.1}Q{x} {:.1} {:.1} {end:.1}L{:.1} {end:.1}Q{x} {:.1} {:.1} {top:.1}Z",
                        MIDDLE.0 - 3.0,
                        top - long * 0.3,
                        MIDDLE.0 - 0.7,
                        MIDDLE.0 + 0.7,
                        top - long * 0.3,
                        MIDDLE.0 + 3.0,
                        x = MIDDLE.0,
                    )
                />
                <path class="mb-blade" d=format!("M{:.1} {end:.1}h16l3-1.4h26v-1.6h-26l-3-1.4h-14q-4 1-2 4.4Z", MIDDLE.0 - 6.0) />
            }
        })
    };
    let surface = surface(offer.surfaces.first().map(|(surface, _)| *surface));
    view! {
        <svg class="mb-drawing" viewBox=format!("0 0 {} {}", SIZE.0, SIZE.1) role="img" aria-label=move || look.with(|look| look.sentence.clone())>
            {surface}
            <path class="mb-dew" d=move || picture::dew(dew.get()) />
            <path class=format!("mb-part {other}") d=move || picture::heap(powder.get(), (19.0, 40.0), false) />
            <path class=format!("mb-part {liquid}") d=move || picture::heap(drops.get(), (101.0, 26.0), !pastes) />
            <path class=format!("mb-mass {own}") d=move || mass.with(|mass| mass.outline.clone()) />
            <path class=format!("mb-unmixed {other}") d=move || mass.with(|mass| mass.unmixed.clone()) />
            <path class="mb-cracks" opacity=move || format!("{:.2}", 0.3 + 0.7 * cracked.get()) d=move || mass.with(|mass| mass.cracks.clone()) />
            <ellipse
                class="mb-gloss"
                cx=move || format!("{:.1}", MIDDLE.0 - mass.with(|mass| mass.radius) * 0.3)
                cy=move || format!("{:.1}", MIDDLE.1 - mass.with(|mass| mass.radius) * 0.34)
                rx=move || format!("{:.1}", mass.with(|mass| mass.radius) * 0.36)
                ry=move || format!("{:.1}", mass.with(|mass| mass.radius) * 0.15)
                opacity=move || format!("{:.2}", gloss.get() * 0.85)
            />
            <g class="mb-spatula" transform=spatula>
                <path class="mb-blade" d="M-3-1.6q-5 1.6 0 4.4l15 8 6 6.5 24 24 2.6-2.6-24-24-6.5-6Z" />
            </g>
            <line class="mb-ground" x1="8" x2="112" y1=GROUND y2=GROUND />
            <path class=format!("mb-mass {own}") d=side />
            {lifted}
        </svg>
    }
}

/// The surface itself.
fn surface(kind: Option<Surface>) -> impl IntoView {
    match kind {
        Some(Surface::Bowl) => view! {
            <ellipse class="mb-bowl" cx="60" cy="40" rx="54" ry="35.5" />
            <ellipse class="mb-bowl-in" cx="60" cy="40" rx="47" ry="30" />
        }
        .into_any(),
        Some(Surface::Slab) => view! {
            <rect class="mb-slab" x="4" y="3" width="112" height="73" rx="3" />
            <rect class="mb-slab-edge" x="6.5" y="5.5" width="107" height="68" rx="2" />
        }
        .into_any(),
        _ => view! {
            <rect class="mb-sheet" x="4" y="3" width="112" height="73" rx="1.5" />
            <path class="mb-sheet-glue" d="M4 9h112" />
        }
        .into_any(),
    }
}

/// Works the mass while it is held, for a key and for a hand that cannot draw.
#[component]
fn HoldButton(session: Session) -> impl IntoView {
    let vigour = RwSignal::new("60".to_string());
    let usual = session.usual_area();
    let wide = RwSignal::new(if usual == Area::Wide { "wide" } else { "small" }.to_string());
    let hold = move || {
        let vigour = vigour.get_untracked().parse().unwrap_or(60);
        let area = if wide.with_untracked(|it| it == "wide") {
            Area::Wide
        } else {
            Area::Small
        };
        session.hold(Vigour::per_cent(vigour), area);
    };
    let is_key = |event: &ev::KeyboardEvent| matches!(event.key().as_str(), " " | "Enter");
    let strokes = [("30", "Lightly"), ("60", "Firmly"), ("90", "Hard")];
    let areas = [("small", "Small area"), ("wide", "Wide area")];
    let in_bowl = session
        .offer()
        .surfaces
        .iter()
        .any(|(surface, _)| *surface == Surface::Bowl);
    let options = |all: &[(&str, &str)]| {
        let option = |(value, label): &(&str, &str)| Choosable::new(*value, *label);
        all.iter().map(option).collect::<Vec<_>>()
    };
    let areas = (!in_bowl).then(|| {
        view! {
            <Choice legend="Over" options=options(&areas) chosen=wide choose=move |it| wide.set(it) test="area" />
        }
    });
    view! {
        <div class="mb-hold">
            <button
                type="button"
                class="button mb-hold-button"
                data-test="hold"
                on:pointerdown=move |_| hold()
                on:pointerup=move |_| session.lift()
                on:pointercancel=move |_| session.lift()
                on:pointerleave=move |_| session.lift()
                on:keydown=move |event| {
                    if is_key(&event) {
                        // Space would scroll, Enter would click.
                        event.prevent_default();
                        hold();
                    }
                }
                on:keyup=move |event| {
                    if is_key(&event) {
                        event.prevent_default();
                        session.lift();
                    }
                }
                on:blur=move |_| session.lift()
                on:contextmenu=|event| event.prevent_default()
            >
                "Hold to work it"
            </button>
            <details class="fold mb-strokes" data-test="strokes">
                <summary>"How it is worked"</summary>
                <div class="fold-body">
                    <p class="hint">
                        "On the pad your hand says how: hold the spatula and move it, faster for harder, further for a wider area. For the button, or the space key on it, choose here."
                    </p>
                    <Choice legend="How hard" options=options(&strokes) chosen=vigour choose=move |it| vigour.set(it) test="vigour" />
                    {areas}
                </div>
            </details>
        </div>
    }
}
