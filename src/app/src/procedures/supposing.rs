//! The patient a reader supposes: which findings a procedure asks about, and
//! how an answer becomes a patient.

use crate::{
    parts::{order::in_order, within::within},
    place::Supposed,
};
use catalogue::{
    Catalogue,
    condition::{Expr, When},
    findings::{Finding, Known, Scale},
    ids::{FindingId, ProcedureId},
    quantity::Milli,
    rules::Conclusion,
};
use clinic::{Clinic, patient::Patient};
use std::collections::BTreeSet;

/// The findings that change the tray or the steps of a procedure, in the order
/// of a chart. A finding that follows from others is replaced by those.
pub fn asked<'c>(catalogue: &'c Catalogue, procedure: &ProcedureId) -> Vec<&'c Finding> {
    let mut search = Search::new(catalogue);
    search.procedure(procedure);
    search.findings()
}

/// A number for each of the ranges into which the conditions of a procedure
/// part a finding, the least first.
pub fn telling_values(
    catalogue: &Catalogue,
    procedure: &ProcedureId,
    finding: &Finding,
) -> Vec<Milli> {
    let Scale::Number {
        least, most, step, ..
    } = &finding.scale
    else {
        return Vec::new();
    };
    let mut search = Search::new(catalogue);
    search.procedure(procedure);
    let mut bounds: Vec<i32> = search
        .bounds
        .iter()
        .filter(|(id, _)| *id == finding.id)
        .map(|(_, bound)| bound.0)
        .collect();
    bounds.push(least.0);
    bounds.push(most.0);
    in_order(&mut bounds, |a, b| a < b);
    bounds.dedup();
    let mut values: Vec<i32> = bounds
        .windows(2)
        .map(|pair| on_step(i32::midpoint(pair[0], pair[1]), least.0, step.0))
        .collect();
    values.dedup();
    values.into_iter().map(Milli).collect()
}

/// The nearest value that can be recorded, at or below `value`.
fn on_step(value: i32, least: i32, step: i32) -> i32 {
    if step <= 0 {
        return value;
    }
    least + (value - least) / step * step
}

/// The usual patient with what the reader supposes, and all that follows. What
/// the catalogue does not know is left out: an old link still shows a tray.
pub fn patient(clinic: &Clinic, supposed: &Supposed) -> Patient {
    let mut patient = clinic.usual_patient();
    for (finding, value) in supposed {
        patient = match Milli::parse(value) {
            Ok(number) => clinic.with_number(&patient, finding.as_str(), number),
            Err(_) => clinic.with(&patient, finding.as_str(), value),
        };
    }
    clinic.reason(&patient).patient
}

/// What is supposed, as a chart would say it.
pub fn words(catalogue: &Catalogue, supposed: &Supposed) -> Vec<String> {
    let one = |(id, value): &(FindingId, String)| {
        let finding = catalogue.finding(id)?;
        Some(match &finding.scale {
            Scale::Flag { yes, no, .. } => if value == "yes" { yes } else { no }.clone(),
            Scale::Words(words) => {
                let word = words.iter().find(|word| word.id == *value)?;
                format!("{}: {}", finding.name, word.says)
            }
            Scale::Number { unit, .. } => format!("{}: {value} {unit}", finding.name),
        })
    };
    supposed.iter().filter_map(one).collect()
}

/// The walk through a procedure's conditions.
struct Search<'c> {
    catalogue: &'c Catalogue,
    found: BTreeSet<&'c FindingId>,
    bounds: BTreeSet<(FindingId, Milli)>,
}

impl<'c> Search<'c> {
    fn new(catalogue: &'c Catalogue) -> Self {
        Self {
            catalogue,
            found: BTreeSet::new(),
            bounds: BTreeSet::new(),
        }
    }

    fn procedure(&mut self, id: &ProcedureId) {
        for procedure in within(self.catalogue, id) {
            for step in &procedure.steps {
                self.condition(step.when.as_ref());
            }
            for variation in &procedure.variations {
                self.condition(Some(&variation.when));
            }
        }
    }

    fn condition(&mut self, when: Option<&'c When>) {
        for atom in when.into_iter().flat_map(|when| when.expr().atoms()) {
            if let Expr::Compare(finding, _, bound, _) = atom {
                self.bounds.insert((finding.clone(), *bound));
            }
            if let Some(finding) = atom.finding()
                && self.found.insert(finding)
            {
                self.behind(finding);
            }
        }
    }

    /// What a derived finding follows from.
    fn behind(&mut self, finding: &FindingId) {
        let catalogue = self.catalogue;
        for rule in &catalogue.rules {
            let finds = |then: &Conclusion| matches!(then, Conclusion::Find { finding: found, .. } if found == finding);
            if rule.then.iter().any(finds) {
                self.condition(Some(&rule.when));
            }
        }
    }

    fn findings(&self) -> Vec<&'c Finding> {
        let findings = self.catalogue.findings.iter();
        findings
            .filter(|finding| finding.known != Known::Derived && self.found.contains(&finding.id))
            .collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use catalogue::{procedures::Procedure, rules::Rule};

    #[derive(serde::Deserialize)]
    struct File {
        finding: Vec<Finding>,
        rule: Vec<Rule>,
        procedure: Vec<Procedure>,
    }

    fn catalogue() -> Catalogue {
        let finding = |id: &str, known: &str| {
            format!(
                r#"
                [[finding]]
                id = "{id}"
                name = "{id}"
                known = "{known}"
                about = ""
                scale = {{ number = {{ unit = "mm", least = 0, most = 4, step = 0.1, usual = 2.5 }} }}
                "#
            )
        };
        let procedure = |id: &str, when: &str, include: &str| {
            format!(
                r#"
                [[procedure]]
                id = "{id}"
                name = "{id}"
                short = "{id}"
                kind = "treatment"
                purpose = ""
                competency = "c"
                sources = []
                step = [{{ id = "a", phase = "A", who = "team", when = "{when}", include = "{include}" }}]
                "#
            )
        };
        let text = [
            finding("width", "chart"),
            finding("depth", "opening"),
            finding("band", "derived"),
            finding("other", "chart"),
            procedure("outer", "width > 1 mm", "inner"),
            procedure("inner", "band = thin", "outer"),
            r#"
            [[rule]]
            id = "r"
            when = "depth <= 0.5 mm"
            then = [{ find = { finding = "band", is = "thin" } }]
            because = ""
            competency = "c"
            sources = []
            "#
            .into(),
        ];
        let file: File = toml::from_str(&text.concat()).unwrap();
        Catalogue {
            findings: file.finding,
            rules: file.rule,
            procedures: file.procedure,
            ..Catalogue::default()
        }
    }

    #[test]
    fn set_ups_are_asked_too_and_derived_findings_give_way_to_what_they_follow_from() {
        let catalogue = catalogue();
        let asked: Vec<&str> = asked(&catalogue, &"outer".into())
            .iter()
            .map(|finding| finding.id.as_str())
            .collect();
        assert_eq!(asked, ["width", "depth"]);
    }

    #[test]
    fn a_number_is_offered_once_for_each_range() {
        let catalogue = catalogue();
        let depth = catalogue.finding(&"depth".into()).unwrap();
        let values = telling_values(&catalogue, &"outer".into(), depth);
        // Below the bound of 0.5 mm, and above it.
        assert_eq!(values, [Milli(200), Milli(2200)]);
    }
}
