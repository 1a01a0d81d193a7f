//! Why a mix is as it is, in words.

use super::{mix::Mix, units::Celsius};

/// The first letter made a capital.
pub(super) fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars
        .next()
        .map(|first| first.to_uppercase().chain(chars).collect())
        .unwrap_or_default()
}

/// A part of a whole in words: `a third`.
pub(super) fn fraction(part: f64) -> String {
    const WORDS: [(f64, &str); 7] = [
        (0.1, "a tenth"),
        (0.2, "a fifth"),
        (0.25, "a quarter"),
        (1.0 / 3.0, "a third"),
        (0.5, "half"),
        (2.0 / 3.0, "two thirds"),
        (0.75, "three quarters"),
    ];
    for (value, word) in WORDS {
        if (part - value).abs() < 0.03 {
            return word.into();
        }
    }
    if part > 0.97 {
        return "all".into();
    }
    format!("{} % ", (part * 100.0).round()).trim_end().into()
}

/// `1 drop`, `2 drops`.
pub(super) fn counted(units: f64, unit: &str) -> String {
    let count = (units * 100.0).round() / 100.0;
    if (count - 1.0).abs() < 0.005 {
        return format!("1 {unit}");
    }
    match unit.split_once(" of ") {
        Some((head, rest)) => format!("{count} {head}s of {rest}"),
        None => format!("{count} {unit}s"),
    }
}

/// Why there is less powder in it than there should be for its liquid.
pub(super) fn why_thin(mix: &Mix) -> String {
    let k = &mix.recipe.kinetics;
    let (powder, liquid) = (&k.powder.name, &k.liquid.name);
    let short = 1.0 - mix.mass.powder / mix.mass.liquid / mix.recipe.ratio();
    let beside = mix.bench.powder / mix.bench.powder_out.max(1e-9);
    if beside > 0.03 {
        return format!("{} of the {powder} was left beside it", fraction(beside));
    }
    if short > 0.03 && mix.course.thinned.is_some() {
        return format!("{liquid} was added to the mix");
    }
    if short > 0.03 {
        let drops = mix.bench.liquid_out / k.liquid.grams.number();
        let usual = mix.recipe.target.liquid_units.number();
        if drops > usual * 1.03 {
            return format!(
                "there were {} to {}",
                counted(drops, &k.liquid.unit),
                counted(
                    mix.bench.powder_out / k.powder.grams.number(),
                    &k.powder.unit
                ),
            );
        }
        return format!("{} of the {powder} was left out", fraction(short));
    }
    format!("the {powder} was not worked in")
}

/// Why a fresh mix is thicker than it should be.
pub(super) fn why_thick(mix: &Mix) -> String {
    let k = &mix.recipe.kinetics;
    let much = mix.mass.powder / mix.mass.liquid / mix.recipe.ratio() - 1.0;
    if much > 0.03 && mix.mass.lost > 0.02 * mix.mass.liquid {
        return "it dried on the surface".into();
    }
    if much > 0.03 {
        return format!(
            "there was {} too much {} for the {}",
            fraction(much),
            k.powder.name,
            k.liquid.name
        );
    }
    match why_fast(mix) {
        Some(why) => format!("it has begun to set: {why}"),
        None => "it has begun to set".into(),
    }
}

/// What made it faster than in the usual room, the strongest first; none where nothing did.
pub(super) fn why_fast(mix: &Mix) -> Option<String> {
    let pace = mix.recipe.pace(&mix.mass, &mix.setting(false), 0.0);
    let heated = mix.mass.warmest - mix.bench.degrees.max(mix.room.temperature.get()) > 4.0;
    let warmth = match (heated, mix.setting(false).line_rate) {
        (true, _) => format!(
            "its own heat warmed it to {}, for too much powder came in at once or over too small an area",
            Celsius::of(mix.mass.warmest)
        ),
        (false, Some(_)) => format!(
            "the room had {} and the water {}",
            mix.room.temperature,
            Celsius::of(mix.bench.water)
        ),
        (false, None) => format!("it was mixed at {}", Celsius::of(mix.mass.warmest)),
    };
    let warm = if heated { 2.0 } else { pace.warmth };
    let mut why = [
        (warm, warmth),
        (
            pace.moisture,
            format!("the air was damp, {}", mix.room.humidity),
        ),
        (pace.water, "water had condensed on the slab".into()),
        (pace.powder, "it was rich in powder".into()),
    ];
    why.sort_by(|a, b| b.0.total_cmp(&a.0));
    let [(factor, first), ..] = why;
    (factor > 1.1).then_some(first)
}
