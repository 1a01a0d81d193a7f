//! Which state of what is taught a code speaks of. The same seed draws the
//! same case only from the same facts; after any change of them a code made
//! before cannot be graded, and is refused rather than guessed at.

use crate::forms;
use crate::wire::check;
use clinic::numbers::exercises::Family;

/// The version of a bank: the CRC-32 of the packed catalogue, so that it
/// changes with every change of what is taught and needs nobody to count.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Version(pub u32);

impl Version {
    /// The version of a packed catalogue.
    pub fn of(packed: &[u8]) -> Self {
        Self(check::crc32(packed))
    }

    /// The half of it that a typed code has room for.
    pub fn short(self) -> u16 {
        // Masked to sixteen bits, it always fits.
        u16::try_from(self.0 & 0xffff).unwrap_or(0)
    }
}

/// A bank: its version, and the names that a typed code has no room for. A
/// typed code says the place of a name in its list; the version says that the
/// lists are the same on both devices.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Bank {
    /// The version.
    pub version: Version,
    /// The ids of the case frames.
    pub frames: Vec<String>,
    /// The ids of the materials that are mixed.
    pub materials: Vec<String>,
    /// The ids of the question families.
    pub families: Vec<String>,
    /// The ids of the families of numbers to be worked out.
    pub numbers: Vec<String>,
    /// The ids of the blueprints of practice forms.
    pub blueprints: Vec<String>,
}

impl Bank {
    /// The bank of a catalogue. The lists are in the order of the catalogue and
    /// of the families.
    pub fn new(version: Version, catalogue: &catalogue::Catalogue) -> Self {
        let frames = catalogue.cases.iter().map(|c| c.id.0.clone());
        let mixed = catalogue.materials.iter().filter(|m| m.mixing.is_some());
        let families = study::families::ALL.iter();
        Self {
            version,
            frames: frames.collect(),
            materials: mixed.map(|m| m.id.0.clone()).collect(),
            families: families.map(|family| family.id.to_owned()).collect(),
            numbers: Family::ALL.map(|family| family.id().to_owned()).into(),
            blueprints: forms::blueprints(catalogue),
        }
    }
}
