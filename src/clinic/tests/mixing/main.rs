//! Laws of mixing that hold for every material, room and hand.

mod causes;
#[path = "../common/mod.rs"]
mod common;
mod laws;
mod right;

use catalogue::{
    Catalogue,
    ids::ItemId,
    kinetics::{Area, Consistency, IfThick, IfThin, Surface},
};
use clinic::{
    mixing::{
        Action, Celsius, Ledger, Millis, Mix, PerCent, Recipe, Replay, Room, Seconds, Share,
        Stroke, Units, Vigour, steps_of, way,
    },
    standing::Standing,
};
use common::clinic;
use proptest::prelude::*;
use std::{cell::RefCell, collections::HashMap, rc::Rc};

fn taught() -> Rc<Catalogue> {
    clinic().catalogue().clone()
}

/// Every material and use that is mixed here.
fn all() -> Vec<(ItemId, String)> {
    taught()
        .kinetics
        .iter()
        .flat_map(|k| k.uses.iter().map(|u| (k.material.clone(), u.id.clone())))
        .collect()
}

/// Recipes are tuned when they are made, which is worth doing once.
fn recipe(which: &(ItemId, String)) -> Recipe {
    thread_local! {
        static MADE: RefCell<HashMap<(ItemId, String), Recipe>> = RefCell::default();
    }
    let make = || Recipe::new(&taught(), &which.0, Some(&which.1)).expect("a recipe");
    MADE.with_borrow_mut(|made| made.entry(which.clone()).or_insert_with(make).clone())
}

fn bench(which: &(ItemId, String), room: Room) -> Mix {
    Mix::of(recipe(which), room.checked().expect("a room"))
}

fn of(material: &str) -> (ItemId, String) {
    let usage = &taught()
        .kinetics
        .iter()
        .find(|k| k.material.as_str() == material)
        .expect("kinetics")
        .uses[0]
        .id
        .clone();
    (material.into(), usage.clone())
}

fn room(temperature: f64, humidity: f64) -> Room {
    Room {
        temperature: Celsius::of(temperature),
        humidity: PerCent::of(humidity),
    }
}

fn firm(which: &(ItemId, String)) -> Stroke {
    Stroke {
        vigour: Vigour::FIRM,
        area: recipe(which).kinetics.area,
    }
}

/// The published way without its hand-over.
fn mixed(which: &(ItemId, String), room: Room) -> Mix {
    let mut mix = bench(which, room);
    for action in way::published(&recipe(which), room, Seconds::of(0.0)) {
        if !matches!(action, Action::HandOver { .. }) {
            mix.act(action).expect("a move of the published way");
        }
    }
    mix
}

fn hand_over_now(mix: &mut Mix) -> clinic::mixing::Verdict {
    let now = mix.clock();
    mix.hand_over(now, Seconds::of(20.0)).expect("a verdict")
}

/// A mix of the published way, with this part of the powder dispensed.
fn with_powder(which: &(ItemId, String), part: f64) -> Mix {
    let mut mix = bench(which, Room::usual());
    for action in way::published(&recipe(which), Room::usual(), Seconds::of(0.0)) {
        let action = match action {
            Action::DispensePowder(units) => Action::DispensePowder(Units::of(units.get() * part)),
            Action::HandOver { .. } => continue,
            other => other,
        };
        mix.act(action).expect("a move");
    }
    mix
}

fn conserved(l: Ledger) -> bool {
    let out = l.powder_dispensed.get() + l.liquid_dispensed.get();
    let kept = [
        l.powder_beside,
        l.liquid_beside,
        l.powder_in,
        l.liquid_in,
        l.lost,
        l.drawn_off,
        l.discarded,
    ];
    (out - kept.iter().map(|g| g.get()).sum::<f64>()).abs() < 0.005
}
