//! What a mass looks like: numbers to draw it by, and a sentence for those who
//! do not see the drawing.

use super::{
    causes::capital,
    feel::{self, Firmness},
    mix::Mix,
    units::Millimetres,
};
use catalogue::kinetics::{Consistency, Surface, Tint};

/// What can be seen.
#[derive(Clone, Debug, PartialEq)]
pub struct Look {
    /// The word for its consistency; none where there is no mass.
    pub consistency: Option<Consistency>,
    /// How wide it lies.
    pub spread: Millimetres,
    /// How high it stands.
    pub height: Millimetres,
    /// From dull, 0, to shining, 1.
    pub gloss: f64,
    /// Specks, lumps or streaks, from none, 0, to all, 1.
    pub graininess: f64,
    /// Whether the unmixed parts show as streaks of two pastes, not as specks.
    pub streaks: bool,
    /// How long a string it draws.
    pub string: Millimetres,
    /// How it clings, from 0 to 1.
    pub stickiness: f64,
    /// How far it is cracked, from 0 to 1.
    pub cracks: f64,
    /// The colour of what is mixed.
    pub tint: Tint,
    /// The colour of what is not.
    pub unmixed: Tint,
    /// What part of the powder that was dispensed lies beside it, from 0 to 1.
    pub powder_beside: f64,
    /// What part of the liquid that was dispensed lies beside it, from 0 to 1.
    pub liquid_beside: f64,
    /// Drops of water on the slab, from none, 0, to many, 1.
    pub dew: f64,
    /// All of it in a sentence or two.
    pub sentence: String,
}

pub(super) fn look(mix: &Mix) -> Look {
    let (recipe, mass, bench) = (&mix.recipe, &mix.mass, &mix.bench);
    let firm = mix.firmness();
    let (spread, height) = shape(mass.powder + mass.liquid, firm);
    let part = |beside: f64, out: f64| if out > 0.0 { beside / out } else { 0.0 };
    let below = mix.setting(false).below_dew;
    Look {
        consistency: firm.map(Firmness::consistency),
        spread: Millimetres::of(spread),
        height: Millimetres::of(height),
        gloss: feel::gloss(recipe, mass),
        graininess: if firm.is_some() {
            1.0 - mix.homogeneity()
        } else {
            0.0
        },
        streaks: recipe.is_pastes(),
        string: Millimetres::of(firm.map_or(0.0, Firmness::string_mm)),
        stickiness: firm.map_or(0.0, Firmness::stickiness),
        cracks: firm.map_or(0.0, Firmness::cracks),
        tint: recipe.kinetics.tint,
        unmixed: recipe.kinetics.powder.tint,
        powder_beside: part(bench.powder, bench.powder_out),
        liquid_beside: part(bench.liquid, bench.liquid_out),
        dew: below / (below + 2.0),
        sentence: sentence(mix, firm),
    }
}

/// How wide and how high so many grams lie, in mm: a thin mass runs, a putty stands.
/// For the drawing alone; taken as two grams to the millilitre.
fn shape(grams: f64, firm: Option<Firmness>) -> (f64, f64) {
    let Some(Firmness(firm)) = firm else {
        return (0.0, 0.0);
    };
    let cubic_mm = grams / 2.0 * 1000.0;
    let stands =
        super::arithmetic::along(&[(0.0, 0.04), (2.0, 0.12), (4.5, 0.7), (6.0, 0.8)], firm);
    let spread = (cubic_mm / (std::f64::consts::FRAC_PI_4 * stands)).cbrt();
    (spread, spread * stands)
}

fn sentence(mix: &Mix, firm: Option<Firmness>) -> String {
    let recipe = &mix.recipe;
    let (powder, liquid) = (&recipe.kinetics.powder.name, &recipe.kinetics.liquid.name);
    let wet = if mix.setting(false).below_dew > 0.0 && mix.bench.surface == Surface::Slab {
        " Drops of water stand on the slab."
    } else {
        ""
    };
    let Some(firm) = firm else {
        let on = match (mix.bench.powder > 0.0, mix.bench.liquid > 0.0) {
            (false, false) => "The surface is clean.".to_owned(),
            (true, false) => format!("The {powder} lies ready."),
            (false, true) => format!("The {liquid} lies ready."),
            (true, true) => format!("The {powder} and the {liquid} lie ready, apart."),
        };
        return on + wet;
    };
    let gloss = match feel::gloss(recipe, &mix.mass) {
        g if g > 0.6 => "glossy",
        g if g > 0.25 => "with a faint shine",
        _ => "dull",
    };
    let through = match (mix.homogeneity(), recipe.is_pastes()) {
        (h, _) if h >= 0.95 => "mixed through",
        (h, true) if h >= 0.5 => "with streaks of two colours",
        (_, true) => "in two colours",
        (h, false) if h >= 0.5 => "with dry specks",
        (_, false) => "with much dry powder in it",
    };
    let beside = mix.bench.powder / mix.bench.powder_out.max(1e-9);
    let left = if beside > 0.01 {
        format!(
            " {} of the {powder} lies beside it.",
            capital(&super::causes::fraction(beside))
        )
    } else {
        String::new()
    };
    format!(
        "{}, {gloss}, {through}.{left}{wet}",
        capital(feel::word(firm.consistency()))
    )
}
