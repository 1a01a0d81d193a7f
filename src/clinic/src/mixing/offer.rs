//! What a mixing screen has to offer for a material: surfaces, spatula, units,
//! portions and times, all from content.

use super::{
    feel,
    recipe::Recipe,
    room::Room,
    units::{Celsius, Grams, Share, Units},
};
use catalogue::{
    Catalogue,
    ids::{ItemId, SourceId},
    kinetics::{Area, Consistency, IfThick, IfThin, Over, Surface, Tint},
    quantity::Span,
};

/// One of the two parts, to be measured out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Measure {
    /// What it is: `powder`.
    pub name: String,
    /// In what it is measured: `level scoop`.
    pub unit: String,
    /// What one weighs.
    pub grams: Grams,
    /// How many the published way takes.
    pub usual: Units,
    /// That in words: `2 drops`.
    pub said: String,
    /// Its colour.
    pub tint: Tint,
}

/// What a mixing screen has to offer.
#[expect(
    clippy::struct_excessive_bools,
    reason = "each is a fact of its own that a screen shows or not"
)]
#[derive(Clone, Debug, PartialEq)]
pub struct Offer {
    /// The material.
    pub material: ItemId,
    /// What it is called.
    pub name: String,
    /// Every use it can be mixed for: key and name; the usual first.
    pub uses: Vec<(String, String)>,
    /// The key of the use that the rest is for.
    pub usage: String,
    /// On what it can be mixed, with the item that is drawn; the usual first.
    pub surfaces: Vec<(Surface, ItemId)>,
    /// How cold or warm the slab is in the published way, in the usual room.
    pub slab: Celsius,
    /// Over how much of the surface.
    pub area: Area,
    /// With what.
    pub spatula: ItemId,
    /// Powder, or base.
    pub powder: Measure,
    /// Liquid, or accelerator.
    pub liquid: Measure,
    /// Whether the liquid's temperature can be chosen: water for a bowl.
    pub water: bool,
    /// Whether the liquid is put out last.
    pub liquid_last: bool,
    /// The shares of the powder in order.
    pub portions: Vec<Share>,
    /// The moves in words.
    pub order: Vec<String>,
    /// How long mixing takes, in seconds.
    pub mix: Span,
    /// How long it can be worked from the start of the mix, in seconds.
    pub work: Span,
    /// The setting time that is reckoned with, in seconds from the start of the mix; none where only light sets it.
    pub sets: Option<u32>,
    /// Whether it needs the curing light.
    pub light: bool,
    /// How thick it has to be.
    pub target: Consistency,
    /// What the right consistency looks and feels like.
    pub ready: String,
    /// What may be done with a thin mix.
    pub if_thin: IfThin,
    /// What may be done with a thick one.
    pub if_thick: IfThick,
    /// What is published and what is an illustration.
    pub label: String,
    /// Whether the course in time is an illustration.
    pub illustration: bool,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// What there is to offer for a material and a use; its usual one where none is named.
///
/// # Errors
/// A sentence, where the catalogue does not say how it is mixed.
pub fn steps_of(
    catalogue: &Catalogue,
    material: &ItemId,
    usage: Option<&str>,
) -> Result<Offer, String> {
    let recipe = Recipe::new(catalogue, material, usage)?;
    let (k, target, mixing) = (&recipe.kinetics, &recipe.target, &recipe.mixing);
    let measure = |part: &catalogue::kinetics::Part, usual: &catalogue::kinetics::Stated| Measure {
        name: part.name.clone(),
        unit: part.unit.clone(),
        grams: Grams::of(part.grams.number()),
        usual: Units::of(usual.number()),
        said: super::causes::counted(usual.number(), &part.unit),
        tint: part.tint,
    };
    let mut sources = target.sources.clone();
    for source in k.sources.iter().chain(&mixing.sources) {
        if !sources.contains(source) {
            sources.push(source.clone());
        }
    }
    let sets = recipe.line_seconds(23.0, 23.0).or_else(|| {
        target
            .sets
            .as_ref()
            .map(catalogue::kinetics::Stated::number)
    });
    Ok(Offer {
        material: material.clone(),
        name: recipe.name.clone(),
        uses: k
            .uses
            .iter()
            .map(|u| (u.id.clone(), u.name.clone()))
            .collect(),
        usage: target.id.clone(),
        surfaces: k.surfaces.iter().map(|s| (*s, item(*s))).collect(),
        slab: Celsius::of(recipe.usual_degrees(Room::usual())),
        area: k.area,
        spatula: mixing.with.clone(),
        powder: measure(&k.powder, &target.powder_units),
        liquid: measure(&k.liquid, &target.liquid_units),
        water: k.surfaces.contains(&Surface::Bowl),
        liquid_last: k.liquid_last,
        portions: target
            .portions
            .iter()
            .map(|p| Share::of(f64::from(p.0) / 1000.0))
            .collect(),
        order: mixing.order.clone(),
        mix: recipe.mix_seconds(),
        work: recipe.work_seconds(),
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a setting time is above 0 and below a day"
        )]
        sets: sets.map(|s| s.round() as u32),
        light: mixing.light,
        target: target.consistency,
        ready: ready(&recipe),
        if_thin: k.if_thin,
        if_thick: k.if_thick,
        label: label(&recipe, None),
        illustration: k.illustration,
        sources,
    })
}

/// The sentence of the material for its usual use; of another use, the word of the scale.
pub(super) fn ready(recipe: &Recipe) -> String {
    let usual = recipe
        .kinetics
        .uses
        .first()
        .is_none_or(|u| u.consistency == recipe.target.consistency);
    if usual {
        recipe.mixing.ready.clone()
    } else {
        format!(
            "For {} it is {}.",
            recipe.target.name,
            feel::word(recipe.target.consistency)
        )
    }
}

/// The item that is drawn for a surface.
fn item(surface: Surface) -> ItemId {
    match surface {
        Surface::Pad => "mixing-pad",
        Surface::Slab => "glass-slab",
        Surface::Bowl => "mixing-bowl",
    }
    .into()
}

/// What of a mix is published and what is an illustration.
pub(super) fn label(recipe: &Recipe, at: Option<(Room, Celsius)>) -> String {
    if recipe.kinetics.illustration {
        return "An illustration: no kinetics are published for this material. It keeps the times of the handbooks and the published directions; below the dew point it claims nothing. The label of the material comes first.".into();
    }
    let base =
        "The setting time follows published lines; how it feels on the way is an illustration.";
    let outside = at.and_then(|(room, water)| {
        recipe.target.lines.iter().find(|line| {
            let t = match line.over {
                Over::Room => room.temperature,
                Over::Water => water,
            };
            !(f64::from(line.range.from)..=f64::from(line.range.to)).contains(&t.get())
        })
    });
    match outside {
        Some(line) => format!(
            "{base} It was measured from {} to {} °C; outside, the line is only drawn on.",
            line.range.from, line.range.to
        ),
        None => base.into(),
    }
}
