//! The packed catalogue: one binary file that the page fetches beside the
//! program. It opens with a mark and a version, so that a page and a catalogue
//! of different builds never read one another wrongly.

use crate::{Catalogue, procedures::Procedure};

const MARK: &[u8; 4] = b"TWc1";

/// Packs the catalogue.
pub fn pack(catalogue: &Catalogue) -> Vec<u8> {
    // Writing to memory cannot fail: every type of the schema has a known length.
    postcard::to_extend(catalogue, MARK.to_vec()).unwrap_or_default()
}

/// Unpacks what [`pack`] wrote.
///
/// # Errors
/// A sentence for the reader of the page, if the bytes are not a packed
/// catalogue of this version or are damaged.
pub fn unpack(bytes: &[u8]) -> Result<Catalogue, String> {
    let body = bytes
        .strip_prefix(MARK)
        .ok_or("The catalogue file is not the one this page was built with. Reload the page.")?;
    postcard::from_bytes(body)
        .map_err(|_| "The catalogue file is damaged. Reload the page to fetch it again.".into())
}

/// The part of a catalogue that the first screen needs: what there is, by name.
/// It is fetched first, so that the page is usable before the rest arrives.
#[must_use]
pub fn head(catalogue: &Catalogue) -> Catalogue {
    let mut head = Catalogue {
        sources: catalogue.sources.clone(),
        competencies: catalogue.competencies.clone(),
        cases: catalogue.cases.clone(),
        lessons: catalogue.lessons.clone(),
        procedures: catalogue.procedures.clone(),
        ..Catalogue::default()
    };
    for lesson in &mut head.lessons {
        lesson.blocks.clear();
    }
    for procedure in &mut head.procedures {
        *procedure = Procedure {
            id: procedure.id.clone(),
            name: procedure.name.clone(),
            short: procedure.short.clone(),
            kind: procedure.kind,
            purpose: procedure.purpose.clone(),
            competency: procedure.competency.clone(),
            sources: procedure.sources.clone(),
            indications: Vec::new(),
            steps: Vec::new(),
            variations: Vec::new(),
            not_for: Vec::new(),
            must_before: Vec::new(),
            advice: Vec::new(),
            wrong_advice: Vec::new(),
            hazards: Vec::new(),
            records: Vec::new(),
        };
    }
    head
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn foreign_and_cut_files_are_refused_in_words() {
        let packed = pack(&Catalogue::default());
        assert_eq!(unpack(&packed), Ok(Catalogue::default()));
        assert!(unpack(b"").is_err());
        assert!(unpack(b"TWc0").is_err());
        assert!(unpack(&packed[..packed.len() - 1]).is_err());
    }
}
