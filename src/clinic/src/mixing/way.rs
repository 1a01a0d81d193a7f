//! The published way to mix a material, and how ripe the mix then is when its
//! working time is over and when it has set. The model is tuned by it: done
//! this way in the usual room, every material keeps its published times.

use super::{
    action::{Action, Stroke, Vigour},
    mass::{Hand, Mass, Setting},
    recipe::Recipe,
    room::Room,
    units::{Celsius, Millis, Seconds, Share, Units},
};
use catalogue::kinetics::{SetsAt, Surface};

/// The seconds given to each portion: the middle of the mixing time, shared evenly.
fn seconds_a_portion(recipe: &Recipe) -> f64 {
    let portions = f64::from(u32::try_from(recipe.target.portions.len()).unwrap_or(1));
    f64::from(recipe.mix_seconds().middle()) / portions
}

/// The surface of the published way in a room.
pub(super) fn surface(recipe: &Recipe) -> Surface {
    recipe
        .kinetics
        .surfaces
        .first()
        .copied()
        .unwrap_or(Surface::Pad)
}

/// Mixing done as published, up to the hand-over the moment it is mixed.
pub fn published(recipe: &Recipe, room: Room, placing: Seconds) -> Vec<Action> {
    let target = &recipe.target;
    let mut actions = vec![
        Action::LayOut {
            surface: surface(recipe),
            temperature: Celsius::of(recipe.usual_degrees(room)),
        },
        Action::DispensePowder(Units::of(target.powder_units.number())),
        Action::DispenseLiquid(Units::of(target.liquid_units.number())),
    ];
    let stroke = Stroke {
        vigour: Vigour::FIRM,
        area: recipe.kinetics.area,
    };
    let whole = recipe.mix_seconds().middle().saturating_mul(1000);
    let count = u32::try_from(target.portions.len()).unwrap_or(1).max(1);
    for portion in &target.portions {
        actions.push(Action::BringIn(Share::of(f64::from(portion.0) / 1000.0)));
        actions.push(Action::Spatulate {
            stroke,
            lasts: Millis(whole / count),
        });
    }
    actions.push(Action::Test);
    actions.push(Action::HandOver {
        ready: Seconds::of(f64::from(whole / count * count) / 1000.0),
        placing,
    });
    actions
}

/// How ripe a mix of the published way is at the end of its working time, and when it has set.
pub(super) fn ripeness(recipe: &Recipe) -> (f64, Option<f64>) {
    const TICK: f64 = 0.02;
    let room = Room::usual();
    let mut setting = Setting {
        surface: surface(recipe),
        degrees: recipe.usual_degrees(room),
        humidity: room.humidity.get(),
        below_dew: 0.0,
        line_rate: recipe.line_seconds(23.0, 23.0).map(|_| 1.0),
        in_mouth: false,
    };
    let mut mass = Mass {
        liquid: recipe.liquid_grams(),
        temperature: room.temperature.get(),
        ..Mass::default()
    };
    let stroke = Some(Hand {
        vigour: Vigour::FIRM.get(),
        area: recipe.kinetics.area,
    });
    let mut until = 0.0;
    for portion in &recipe.target.portions {
        let grams = recipe.powder_grams() * f64::from(portion.0) / 1000.0;
        mass.powder += grams;
        mass.dry += grams;
        until += seconds_a_portion(recipe);
        while mass.age < until {
            mass.step(recipe, &setting, stroke, TICK);
        }
    }
    let mixed = mass;
    while mass.age < recipe.target.works.number() {
        mass.step(recipe, &setting, None, TICK);
    }
    let works = mass.ripe;
    if let Some(line) = recipe.line_seconds(23.0, 23.0) {
        return (works, Some(line));
    }
    let sets = recipe.target.sets.as_ref().map(|sets| {
        let mut mass = mixed;
        if recipe.target.sets_at == SetsAt::Mouth {
            setting.in_mouth = true;
            setting.humidity = 100.0;
        }
        while mass.age < sets.number() {
            // Long after mixing nothing changes quickly.
            let tick = if mass.age < 600.0 { TICK } else { 0.5 };
            mass.step(recipe, &setting, None, tick);
        }
        mass.ripe
    });
    (works, sets)
}
