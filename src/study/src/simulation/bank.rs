//! A made-up bank for simulations and properties.

use super::chance::Chance;
use crate::item::{Bank, Blueprint, Item, Level, Share};

/// The weights of the made-up blueprint, in whole per cent.
const WEIGHTS: [u32; 6] = [30, 20, 20, 15, 10, 5];

/// A bank of `size` made-up questions over six competencies: three levels, ten
/// families, some of them enemies of others.
pub fn bank(size: usize, seed: u64) -> Bank {
    let mut chance = Chance::new(seed);
    let share = |(at, &weight): (usize, &u32)| Share {
        id: format!("competency-{at}"),
        name: format!("Competency {at}"),
        weight: f64::from(weight),
    };
    let blueprint = Blueprint(WEIGHTS.iter().enumerate().map(share).collect());
    let items: Vec<Item> = (0..size).map(|n| item(n, size, &mut chance)).collect();
    Bank::new(blueprint, items).0
}

fn item(n: usize, size: usize, chance: &mut Chance) -> Item {
    let competency = chance.below(WEIGHTS.len());
    let level = [Level::Basic, Level::Core, Level::Demanding][chance.below(3)];
    let enemies = if chance.happens(0.2) {
        vec![format!("stem-{}", chance.below(size / 8 + 1))]
    } else {
        Vec::new()
    };
    Item {
        id: format!("question-{n:05}"),
        competency: format!("competency-{competency}"),
        family: format!("family-{}", chance.below(10)),
        difficulty: level.difficulty(),
        seconds: [15, 20, 30, 45][chance.below(4)],
        guess: [0.25, 0.25, 0.5, 0.0][chance.below(4)],
        procedures: vec![format!("procedure-{}", chance.below(8))],
        enemies,
    }
}
