//! Conditions over findings, in words for a reader.

use catalogue::{
    Catalogue,
    condition::{Expr, Order, When},
    findings::Scale,
    ids::FindingId,
};

/// For whom a condition holds: `Cavity: class II, down between the teeth`.
pub fn words(catalogue: &Catalogue, when: &When) -> String {
    say(catalogue, when.expr(), false)
}

fn say(catalogue: &Catalogue, expr: &Expr, negated: bool) -> String {
    let name = |id| name(catalogue, id);
    // A negated group says its parts negated, joined the other way.
    let join = |parts: &[Expr], with: &str| {
        let said: Vec<String> = parts
            .iter()
            .map(|part| say(catalogue, part, negated))
            .collect();
        said.join(with)
    };
    match expr {
        Expr::All(parts) => join(parts, if negated { " or " } else { " and " }),
        Expr::Any(parts) => join(parts, if negated { " and " } else { " or " }),
        Expr::Not(part) => say(catalogue, part, !negated),
        Expr::Flag(finding) => flag(catalogue, finding, !negated),
        Expr::Is(finding, values) => {
            let says: Vec<&str> = values
                .iter()
                .map(|value| word(catalogue, finding, value))
                .collect();
            let not = if negated { "not " } else { "" };
            format!("{}: {not}{}", name(finding), says.join(", or "))
        }
        Expr::Compare(finding, order, bound, unit) => {
            let order = order_word(*order, negated);
            format!("{}: {order} {bound} {unit}", name(finding))
        }
    }
}

fn order_word(order: Order, negated: bool) -> &'static str {
    match (order, negated) {
        (Order::Less, false) | (Order::AtLeast, true) => "less than",
        (Order::AtMost, false) | (Order::More, true) => "at most",
        (Order::More, false) | (Order::AtMost, true) => "more than",
        (Order::AtLeast, false) | (Order::Less, true) => "at least",
    }
}

fn name<'c>(catalogue: &'c Catalogue, id: &'c FindingId) -> &'c str {
    catalogue
        .finding(id)
        .map_or(id.as_str(), |finding| finding.name.as_str())
}

/// What a chart says of a flag that is set or not.
fn flag(catalogue: &Catalogue, id: &FindingId, set: bool) -> String {
    match catalogue.finding(id).map(|finding| &finding.scale) {
        Some(Scale::Flag { yes, .. }) if set => yes.clone(),
        Some(Scale::Flag { no, .. }) => no.clone(),
        _ => id.to_string(),
    }
}

/// What a chart says of a word of a scale.
fn word<'c>(catalogue: &'c Catalogue, id: &FindingId, value: &'c str) -> &'c str {
    match catalogue.finding(id).map(|finding| &finding.scale) {
        Some(Scale::Words(words)) => words
            .iter()
            .find(|word| word.id == value)
            .map_or(value, |word| word.says.as_str()),
        _ => value,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use catalogue::findings::Finding;

    fn catalogue() -> Catalogue {
        #[derive(serde::Deserialize)]
        struct File {
            finding: Vec<Finding>,
        }
        let file: File = toml::from_str(
            r#"
            [[finding]]
            id = "cold"
            name = "Cold test"
            known = "chart"
            about = ""
            [[finding.scale.words]]
            id = "brief"
            says = "gone at once"
            [[finding.scale.words]]
            id = "lingers"
            says = "lingers"

            [[finding]]
            id = "latex"
            name = "Latex"
            known = "chart"
            about = ""
            scale = { flag = { yes = "allergic to latex", no = "no latex allergy" } }

            [[finding]]
            id = "age"
            name = "Age"
            known = "chart"
            about = ""
            scale = { number = { unit = "years", least = 0, most = 100, step = 1, usual = 30 } }
            "#,
        )
        .unwrap();
        Catalogue {
            findings: file.finding,
            ..Catalogue::default()
        }
    }

    #[test]
    fn a_condition_is_said_as_a_chart_would() {
        for (text, said) in [
            ("latex", "allergic to latex"),
            ("not latex", "no latex allergy"),
            ("cold = lingers", "Cold test: lingers"),
            ("cold != lingers", "Cold test: not lingers"),
            (
                "cold in (brief, lingers)",
                "Cold test: gone at once, or lingers",
            ),
            ("age < 12 years", "Age: less than 12 years"),
            ("not age < 12 years", "Age: at least 12 years"),
            (
                "not (latex or age >= 18 years)",
                "no latex allergy and Age: less than 18 years",
            ),
            ("unheard-of", "unheard-of"),
        ] {
            let when = When::parse(text).unwrap();
            assert_eq!(words(&catalogue(), &when), said, "{text}");
        }
    }
}
