//! The ids that exist, by kind.

use crate::{Catalogue, findings::Finding, ids::FindingId, lookup::Item};
use std::collections::{BTreeMap, BTreeSet};

/// The ids that exist.
pub(super) struct Known {
    pub sources: BTreeSet<String>,
    pub competencies: BTreeSet<String>,
    pub items: BTreeSet<String>,
    pub materials: BTreeSet<String>,
    pub procedures: BTreeSet<String>,
    pub lessons: BTreeSet<String>,
    pub terms: BTreeSet<String>,
    pub plans: BTreeSet<String>,
    pub checks: BTreeSet<String>,
    pub classes: BTreeSet<String>,
    pub substances: BTreeSet<String>,
    pub finding_ids: BTreeSet<String>,
    pub findings: BTreeMap<FindingId, Finding>,
}

impl Known {
    pub fn of(catalogue: &Catalogue) -> Self {
        fn ids<T>(list: &[T], id: fn(&T) -> &str) -> BTreeSet<String> {
            list.iter().map(|each| id(each).to_owned()).collect()
        }
        Self {
            sources: ids(&catalogue.sources, |s| s.id.as_str()),
            competencies: ids(&catalogue.competencies, |c| c.id.as_str()),
            items: catalogue.items().map(|i| i.id().to_string()).collect(),
            materials: ids(&catalogue.materials, |m| m.id.as_str()),
            procedures: ids(&catalogue.procedures, |p| p.id.as_str()),
            lessons: ids(&catalogue.lessons, |l| l.id.as_str()),
            terms: ids(&catalogue.glossary, |t| t.id.as_str()),
            plans: ids(&catalogue.plans, |p| p.id.as_str()),
            checks: ids(&catalogue.checks, |c| c.id.as_str()),
            classes: ids(&catalogue.materials, |m| m.class.as_str()),
            substances: catalogue
                .items()
                .flat_map(Item::contains)
                .map(ToString::to_string)
                .collect(),
            finding_ids: ids(&catalogue.findings, |f| f.id.as_str()),
            findings: catalogue
                .findings
                .iter()
                .map(|f| (f.id.clone(), f.clone()))
                .collect(),
        }
    }
}
