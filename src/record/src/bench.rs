//! What can happen at the bench: mixes made by hand.

use serde::{Deserialize, Serialize};

use crate::study::is_not;
use crate::values::{PerCent, SittingId, Verdict};

/// A mix was handed over and judged.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MixHandedOver {
    /// The run of work at the bench that it ends.
    pub sitting: SittingId,
    /// The id of the material.
    pub material: String,
    /// The key of what it was mixed for.
    pub usage: String,
    /// All that was done, as the text from which it can be judged again.
    pub replay: String,
    /// How it was judged.
    pub verdict: Verdict,
    /// Marks for it.
    pub per_cent: PerCent,
    /// The id of the competency that it speaks for.
    pub competency: String,
    /// Whether it was looked up first how the material is mixed.
    #[serde(default, skip_serializing_if = "is_not")]
    pub hint: bool,
    /// Seconds on the clock of the mix, from the open bench to the hand-over.
    pub seconds: u32,
}

#[cfg(test)]
mod tests {
    use crate::what::What;

    /// The stored form of the first version, which is read for ever.
    const FIRST: &str = r#"{"sitting":"1d2c3b4a59687786","material":"reinforced-zoe","usage":"temporary","replay":"{\"version\":1}","verdict":"acceptable","per_cent":80,"competency":"mixing","seconds":131}"#;

    #[test]
    fn the_first_form_is_read_and_written_as_it_was() {
        let read = What::from_parts("mix-handed-over", FIRST);
        assert!(matches!(read, Some(What::MixHandedOver(_))), "{read:?}");
        assert_eq!(read.map(|what| what.body()).as_deref(), Some(FIRST));
    }
}
