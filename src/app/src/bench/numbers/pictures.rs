//! What the numbers of a tool look like, drawn from the same numbers: teeth on
//! their arches, the blade of a formula, the head of a bur, a file, a needle.

use super::{
    arch::Arches,
    boxes::{Entered, entry},
};
use crate::{
    parts::{
        choice::{Choice, Choosable},
        drawing::{Scale, plate_svg},
    },
    taught::catalogue,
};
use clinic::{
    numbers::{
        black::{self, Point, Sketch},
        bur,
        teeth::{System, read, written},
        tools::Tool,
    },
    tooth::Tooth,
};
use drawing::{Bur, BurShank, CanalFile, Cutting, Drawing, Flutes, Head, Needle};
use leptos::prelude::*;

/// The picture of a tool, for what stands in its boxes; nothing where nothing
/// is to be drawn.
#[component]
pub fn Picture(
    /// The tool.
    tool: Tool,
    /// What stands in its boxes.
    entered: Entered,
) -> impl IntoView {
    let typed = move |id: &'static str| entered.with(|all| entry(all, id));
    match tool {
        Tool::Notation | Tool::Eruption => view! { <Teeth entered /> }.into_any(),
        Tool::Formula => (move || {
            let formula = black::formula(&typed("formula")).ok()?;
            Some(blade(&formula.sketch(&catalogue().numbers)))
        })
        .into_any(),
        Tool::ShortBur => (move || head(&typed("number"))).into_any(),
        Tool::File => (move || file(&typed("size"))).into_any(),
        Tool::Needle => (move || needle(&typed("gauge"))).into_any(),
        _ => ().into_any(),
    }
}

#[component]
fn Teeth(entered: Entered) -> impl IntoView {
    let system = Memo::new(move |_| {
        let name = entered.with(|all| entry(all, "system"));
        let mut all = System::ALL.into_iter();
        all.find(|it| it.name() == name).unwrap_or(System::ALL[0])
    });
    let meant = Memo::new(move |_| {
        let typed = entered.with(|all| entry(all, "tooth"));
        read(&typed, system.get()).ok()
    });
    let set = RwSignal::new("permanent".to_string());
    let primary = Memo::new(move |_| {
        let of_meant = meant.get().map(Tooth::is_primary);
        of_meant.unwrap_or_else(|| set.with(|set| set == "primary"))
    });
    let tapped = move |tooth: Tooth| {
        entered.update(|all| {
            all.retain(|(id, _)| id != "tooth");
            all.push(("tooth".into(), written(tooth, system.get_untracked())));
        });
    };
    let choose = move |value: String| {
        // Another set is asked for: the tooth that was meant is not in it.
        entered.update(|all| all.retain(|(id, _)| id != "tooth"));
        set.set(value);
    };
    let chosen: Signal<String> = Signal::derive(move || {
        if primary.get() {
            "primary"
        } else {
            "permanent"
        }
        .into()
    });
    let options = vec![
        Choosable::new("permanent", "Permanent"),
        Choosable::new("primary", "Primary"),
    ];
    view! {
        <Choice legend="Teeth" options chosen choose test="set" />
        <Arches primary system meant tapped />
    }
}

fn line(points: &[Point]) -> String {
    let points: Vec<String> = points
        .iter()
        .map(|(x, y)| format!("{x:.2} {:.2}", -y))
        .collect();
    format!("M{}", points.join("L"))
}

/// The blade of a formula with its angles.
fn blade(sketch: &Sketch) -> impl IntoView + use<> {
    let points = sketch.axis.iter().chain(&sketch.blade);
    let points = points.chain(&sketch.angle_arc).chain(&sketch.edge_arc);
    let (mut least, mut most) = ((0.0_f32, 0.0_f32), (0.0_f32, 0.0_f32));
    for (x, y) in points {
        least = (least.0.min(*x), least.1.min(-y));
        most = (most.0.max(*x), most.1.max(-y));
    }
    let room = 0.06 * (most.0 - least.0).max(most.1 - least.1);
    let view_box = format!(
        "{:.2} {:.2} {:.2} {:.2}",
        least.0 - room,
        least.1 - room,
        most.0 - least.0 + 2.0 * room,
        most.1 - least.1 + 2.0 * room
    );
    view! {
        <figure class="num-picture">
            <svg class="num-blade" viewBox=view_box role="img" aria-label="The blade with its angles to the axis of the handle" data-test="blade">
                <path class="num-axis" d=line(&sketch.axis) />
                <path class="num-steel" d=line(&sketch.blade) + "Z" />
                <path class="num-edge" d=line(&sketch.edge) />
                <path class="num-arc" d=line(&sketch.angle_arc) />
                <path class="num-arc num-arc-edge" d=line(&sketch.edge_arc) />
            </svg>
            <figcaption class="hint">
                "The handle comes from the left along the dashed axis. The inner arc, where there is one, goes round to the cutting edge."
            </figcaption>
        </figure>
    }
}

fn shown(drawing: &Drawing, says: &'static str) -> Option<impl IntoView + use<>> {
    let whole = drawing.plate().ok()?;
    let close = drawing.working_end().ok().flatten()?;
    Some(view! {
        <figure class="num-picture" data-test="picture">
            {plate_svg(&whole, Scale::Own, None)}
            {plate_svg(&close, Scale::Own, None)}
            <figcaption class="hint">{says}</figcaption>
        </figure>
    })
}

/// The bur of a short number. The number gives shape and width; how long the
/// head is stands in no number of this kind, so it is drawn as is usual.
fn head(number: &str) -> Option<impl IntoView + use<>> {
    let found = bur::short(&catalogue().numbers, number).ok()?;
    let diameter = found.diameter.for_drawing();
    let (head, length) = match found.series.shape.as_str() {
        "round" => (Head::Round, diameter * 0.95),
        "inverted cone" => (Head::InvertedCone, diameter),
        "pear" => (Head::Pear, diameter * 2.0),
        "end-cutting" => (Head::EndCutting, 1.5),
        "taper with a round end" => (Head::RoundedCone, 4.0),
        shape if shape.starts_with("taper") => (Head::Cone, 4.0),
        shape if shape.starts_with("straight") => (Head::Cylinder, 4.0),
        _ => return None,
    };
    let cutting = if found.series.shape.ends_with("cross-cut") {
        Cutting::CrossCut
    } else {
        Cutting::Blades
    };
    let drawing = Drawing::Bur(Bur {
        head,
        diameter,
        head_length: length,
        cutting,
        shank: BurShank::FrictionGrip,
        length: 19.0,
        neck: 0.0,
        rings: 0,
    });
    shown(
        &drawing,
        "The number gives shape and width; the length of the head is drawn as is usual. Below, the head enlarged.",
    )
}

fn file(size: &str) -> Option<impl IntoView + use<>> {
    let drawing = Drawing::CanalFile(CanalFile {
        flutes: Flutes::Twisted,
        size: size.parse().ok()?,
        taper: 2,
        length: 25.0,
    });
    shown(
        &drawing,
        "Drawn 25 mm long, with the usual taper of 0.02. Below, the working end enlarged.",
    )
}

fn needle(gauge: &str) -> Option<impl IntoView + use<>> {
    let drawing = Drawing::Needle(Needle {
        gauge: gauge.parse().ok()?,
        length: 21.0,
    });
    shown(&drawing, "Drawn 21 mm long. Below, the point enlarged.")
}
