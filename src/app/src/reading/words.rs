//! Likelihood and evidence in words.

use clinic::reading::Evidence;

/// How likely a reading is.
pub fn likelihood(likelihood: f64) -> &'static str {
    match likelihood {
        0.95.. => "almost certainly",
        0.7.. => "probably",
        0.3.. => "perhaps",
        0.05.. => "hardly",
        _ => "not this",
    }
}

/// How much one thing says, and for what.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Says {
    /// It points to the reading and to little else.
    StronglyFor,
    /// It points to the reading.
    For,
    /// It would lie there in many treatments.
    Little,
    /// It points elsewhere.
    Against,
}

impl Says {
    /// What a thing says by how many times likelier it makes the reading.
    pub fn of(evidence: &Evidence) -> Self {
        match evidence.weight {
            5.0.. => Self::StronglyFor,
            1.5.. => Self::For,
            0.7.. => Self::Little,
            _ => Self::Against,
        }
    }

    /// In words.
    pub fn word(self) -> &'static str {
        match self {
            Self::StronglyFor => "strongly for it",
            Self::For => "for it",
            Self::Little => "says little",
            Self::Against => "against it",
        }
    }
}

/// Why a thing says what it says, in a sentence. `best` is the treatment that is
/// read, `others` the names of the other treatments that use the thing, and
/// `all` counts the treatments there are.
pub fn because(used_by_best: bool, best: &str, others: &[&str], all: usize) -> String {
    let some = |most: usize| {
        let named = others.iter().take(most).copied().collect::<Vec<_>>();
        let more = others.len().saturating_sub(most);
        match more {
            0 => named.join("; "),
            1 => format!("{}; and 1 more", named.join("; ")),
            more => format!("{}; and {more} more", named.join("; ")),
        }
    };
    match (used_by_best, others.len()) {
        (true, 0) => format!("Only this treatment uses it: {best}."),
        (true, count) if count + 1 == all => "Every treatment uses it.".into(),
        (true, count) if 2 * (count + 1) >= all => {
            format!("{} of {all} treatments use it.", count + 1)
        }
        (true, _) => format!("This treatment uses it, and so do: {}.", some(3)),
        (false, 0) => "No treatment that is taught here uses it.".into(),
        (false, _) => format!(
            "This one belongs to: {}. Nothing else on the tray needs it.",
            some(3)
        ),
    }
}

/// What the presence of a thing suggests that the dentist has in mind. A reason
/// is the end of a sentence, such as `to seal the floor`, or a sentence of its own.
pub fn suggestion(reason: &str) -> String {
    if reason.starts_with(char::is_uppercase) {
        format!("Not every patient needs it. {reason}")
    } else {
        format!(
            "Not every patient needs it; the dentist may have this in mind: it is there {reason}."
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_reason_names_whom_else_a_thing_serves() {
        for (own, others, says) in [
            (true, &[][..], "Only this treatment uses it: Filling."),
            (true, &["A", "B", "C", "D"], "Every treatment uses it."),
            (true, &["A", "B"], "3 of 5 treatments use it."),
            (true, &["A"], "This treatment uses it, and so do: A."),
            (false, &[], "No treatment that is taught here uses it."),
            (
                false,
                &["A", "B", "C", "D"],
                "This one belongs to: A; B; C; and 1 more. Nothing else on the tray needs it.",
            ),
        ] {
            assert_eq!(because(own, "Filling", others, 5), says);
        }
    }

    #[test]
    fn likelihood_is_said_without_false_precision() {
        for (number, word) in [
            (1.0, "almost certainly"),
            (0.7, "probably"),
            (0.5, "perhaps"),
            (0.1, "hardly"),
            (0.0, "not this"),
        ] {
            assert_eq!(likelihood(number), word);
        }
    }

    #[test]
    fn a_suggestion_is_a_sentence_of_either_kind_of_reason() {
        for (reason, says) in [
            (
                "if a pulp is exposed",
                "Not every patient needs it; the dentist may have this in mind: it is there if a pulp is exposed.",
            ),
            ("Latex harms.", "Not every patient needs it. Latex harms."),
        ] {
            assert_eq!(suggestion(reason), says);
        }
    }
}
