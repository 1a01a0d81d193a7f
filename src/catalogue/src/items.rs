//! Instruments and materials: everything that can lie on a tray.

use crate::{
    ids::{ClassId, ItemId, SourceId, SubstanceId},
    quantity::Span,
};
use serde::{Deserialize, Serialize};

/// Where a thing waits until it is used.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Place {
    /// On the tray: the student lays it.
    Tray,
    /// At the unit or on a nearby surface, in every procedure alike.
    Unit,
    /// Worn by the team or the patient.
    Worn,
}

/// What has to be done to it before it serves another patient (Spaulding's classes).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Reprocessing {
    /// Enters tissue or bone: sterilise.
    Critical,
    /// Touches mucosa: sterilise if it bears heat.
    SemiCritical,
    /// Touches intact skin or nothing: clean and disinfect, or cover.
    NonCritical,
    /// Used once and thrown away.
    SingleUse,
}

/// An instrument, a device or a disposable.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Instrument {
    /// Its id; its drawing has the same.
    pub id: ItemId,
    /// Its name, as it is asked for.
    pub name: String,
    /// What the family is called: `excavators`.
    pub family: String,
    /// What it is for, in one sentence.
    pub purpose: String,
    /// How to know it: shape, ends, marks.
    pub look: String,
    /// Where it waits.
    #[serde(default = "tray")]
    pub place: Place,
    /// What it needs between patients.
    pub reprocessing: Reprocessing,
    /// What is easily taken for it, and how the two are told apart.
    #[serde(default)]
    pub lookalikes: Vec<Lookalike>,
    /// What it contains that somebody may be allergic to.
    #[serde(default)]
    pub contains: Vec<SubstanceId>,
    /// Other names it goes by; for the search.
    #[serde(default)]
    pub also: Vec<String>,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

fn tray() -> Place {
    Place::Tray
}

/// A thing easily taken for another.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Lookalike {
    /// The other thing.
    pub item: ItemId,
    /// How this one differs from it.
    pub tell: String,
}

/// What a material does in a tooth, from the pulp outwards.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Role {
    /// A thin film on the deepest dentine, or on an exposed pulp.
    Liner,
    /// A thicker layer that replaces dentine or covers a liner.
    Base,
    /// A film that seals the walls under the filling: varnish or sealer.
    Sealer,
    /// Closes the cavity for days to months.
    Temporary,
    /// Closes the cavity for years.
    Permanent,
}

/// A material.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Material {
    /// Its id; its drawing has the same.
    pub id: ItemId,
    /// Its name, as it is asked for.
    pub name: String,
    /// What the family is called: `zinc oxide materials`.
    pub family: String,
    /// The class that compatibility facts speak of.
    pub class: ClassId,
    /// What it is for, in one sentence.
    pub purpose: String,
    /// The form it comes in: `powder and liquid`.
    pub form: String,
    /// Where it waits.
    #[serde(default = "tray")]
    pub place: Place,
    /// What it can do in a tooth; empty for consumables such as etchant.
    #[serde(default)]
    pub roles: Vec<Role>,
    /// The substances that rules and allergies care about.
    #[serde(default)]
    pub contains: Vec<SubstanceId>,
    /// How it is mixed and hardens; none where it is used as it comes.
    pub mixing: Option<Mixing>,
    /// What it must not lie under.
    #[serde(default)]
    pub not_under: Vec<Conflict>,
    /// What has to cover it before the cavity is closed, if anything.
    pub cover: Option<Cover>,
    /// How it is kept.
    pub storage: String,
    /// What is easily taken for it.
    #[serde(default)]
    pub lookalikes: Vec<Lookalike>,
    /// Other names it goes by; for the search.
    #[serde(default)]
    pub also: Vec<String>,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// A class of materials that this one must not lie under.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Conflict {
    /// The class above.
    pub class: ClassId,
    /// Why not.
    pub because: String,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// The cover that a material needs.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Cover {
    /// Classes that serve, the preferred first.
    pub by: Vec<ClassId>,
    /// Why it must be covered.
    pub because: String,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// How a material is brought to use.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Mixing {
    /// The proportion: `1 level scoop of powder to 1 drop of liquid`.
    pub proportion: String,
    /// Where it is mixed: `an oil-resistant paper pad`.
    pub surface: String,
    /// With what: an item of the catalogue.
    pub with: ItemId,
    /// In what order and portions, one move a line.
    pub order: Vec<String>,
    /// How long mixing takes, in seconds.
    pub mix_seconds: Span,
    /// Working time from the start of the mix, in seconds.
    pub work_seconds: Span,
    /// Setting time from the start of the mix in the mouth, in seconds; none where only light sets it.
    pub set_seconds: Option<Span>,
    /// How it hardens, in a sentence.
    pub hardens: String,
    /// Whether it needs the curing light.
    pub light: bool,
    /// What the right consistency looks and feels like.
    pub ready: String,
    /// What goes wrong by hand, and the mend.
    pub faults: Vec<MixFault>,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// A mix gone wrong.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct MixFault {
    /// What is seen or felt: `It sticks to the gloves and strings`.
    pub sign: String,
    /// What caused it.
    pub cause: String,
    /// What to do.
    pub mend: String,
    /// A tempting mend that does harm, and must not be done.
    pub never: String,
    /// What of a mix shows this fault, where it can be told from the mix itself.
    pub shows: Option<Shows>,
}

/// What of a mix shows a fault.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Shows {
    /// It is thinner than it should be.
    Thin,
    /// It is thicker than it should be though its working time is not over.
    Thick,
    /// Its working time is over.
    Past,
    /// It is not mixed through: specks, lumps or streaks.
    Unmixed,
    /// It was mixed where water had condensed.
    Wet,
}
