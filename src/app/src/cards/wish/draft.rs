//! A wish that is being put together.

use catalogue::{
    ids::{ItemId, PlanId, ProcedureId},
    items::Role,
    preference::Wish,
    quantity::Span,
};

/// What kind of wish.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Kind {
    /// One thing instead of another.
    #[default]
    Exchange,
    /// One thing more.
    Add,
    /// One thing less.
    LeaveOut,
    /// One thing before another.
    Before,
    /// Another way of handing over.
    HandOver,
    /// A rubber dam always or never.
    Dam,
    /// A material first in its role.
    Prefer,
    /// A plan first of those that are open.
    PreferPlan,
    /// The return visit.
    Recall,
}

impl Kind {
    /// All of them.
    pub const ALL: [Self; 9] = [
        Self::Exchange,
        Self::Add,
        Self::LeaveOut,
        Self::Before,
        Self::HandOver,
        Self::Dam,
        Self::Prefer,
        Self::PreferPlan,
        Self::Recall,
    ];

    /// What it says.
    pub fn label(self) -> &'static str {
        match self {
            Self::Exchange => "One thing instead of another",
            Self::Add => "One thing more",
            Self::LeaveOut => "One thing less",
            Self::Before => "One thing laid before another",
            Self::HandOver => "Something handed over in another way",
            Self::Dam => "A rubber dam always, or never",
            Self::Prefer => "One material before others in its role",
            Self::PreferPlan => "One plan before others that are open",
            Self::Recall => "The return visit after a plan",
        }
    }

    /// Its word for tests and forms.
    pub fn word(self) -> &'static str {
        match self {
            Self::Exchange => "exchange",
            Self::Add => "add",
            Self::LeaveOut => "leave-out",
            Self::Before => "before",
            Self::HandOver => "hand-over",
            Self::Dam => "dam",
            Self::Prefer => "prefer",
            Self::PreferPlan => "prefer-plan",
            Self::Recall => "recall",
        }
    }

    /// What the things are in it, in the order in which they are asked for.
    pub fn things(self) -> &'static [&'static str] {
        match self {
            Self::Exchange => &["What goes", "What comes for it"],
            Self::Add => &["What is added", "What it is laid beside"],
            Self::LeaveOut => &["What is left out"],
            Self::Before => &["What comes first", "What comes after it"],
            Self::HandOver => &["What is handed over"],
            Self::Prefer => &["Which material"],
            Self::Dam | Self::PreferPlan | Self::Recall => &[],
        }
    }

    /// Whether it can be for some procedures only.
    pub fn has_procedures(self) -> bool {
        matches!(self, Self::Exchange | Self::Add | Self::LeaveOut)
    }
}

/// What is filled in so far. What another kind would need may stand there too;
/// it is not used.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Draft {
    /// The kind.
    pub kind: Option<Kind>,
    /// The things, in the order of [`Kind::things`].
    pub things: Vec<ItemId>,
    /// The only procedures it is for; all if empty.
    pub procedures: Vec<ProcedureId>,
    /// How something is handed over.
    pub how: String,
    /// Whether a dam is placed always or never.
    pub always: Option<bool>,
    /// The role of a material.
    pub role: Option<Role>,
    /// The plan that comes first, or that of a return visit.
    pub plan: Option<PlanId>,
    /// The first and the last day of a return visit.
    pub days: (Option<u32>, Option<u32>),
}

impl Draft {
    /// A draft of a kind with nothing filled in.
    pub fn of(kind: Kind) -> Self {
        Self {
            kind: Some(kind),
            ..Self::default()
        }
    }

    /// The wish; none while something is missing.
    pub fn wish(&self) -> Option<Wish> {
        let thing = |at: usize| self.things.get(at).cloned();
        let procedures = self.procedures.clone();
        Some(match self.kind? {
            Kind::Exchange => Wish::Exchange {
                instead_of: thing(0)?,
                take: thing(1)?,
                procedures,
            },
            Kind::Add => Wish::Add {
                item: thing(0)?,
                beside: thing(1)?,
                procedures,
            },
            Kind::LeaveOut => Wish::LeaveOut {
                item: thing(0)?,
                procedures,
            },
            Kind::Before => Wish::Before {
                first: thing(0)?,
                then: thing(1)?,
            },
            Kind::HandOver => Wish::HandOver {
                item: thing(0)?,
                how: Some(self.how.trim())
                    .filter(|how| !how.is_empty())?
                    .to_owned(),
            },
            Kind::Dam => Wish::Dam {
                always: self.always?,
            },
            Kind::Prefer => Wish::Prefer {
                item: thing(0)?,
                role: self.role?,
            },
            Kind::PreferPlan => Wish::PreferPlan {
                plan: self.plan.clone()?,
            },
            Kind::Recall => Wish::Recall {
                plan: self.plan.clone()?,
                days: Span::try_from((self.days.0?, self.days.1?)).ok()?,
            },
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn full(kind: Kind) -> Draft {
        Draft {
            kind: Some(kind),
            things: vec!["a".into(), "b".into()],
            procedures: vec!["p".into()],
            how: " By the handle. ".into(),
            always: Some(true),
            role: Some(Role::Liner),
            plan: Some("stepwise".into()),
            days: (Some(63), Some(77)),
        }
    }

    #[test]
    fn a_full_draft_of_each_kind_is_a_wish_of_that_kind() {
        for kind in Kind::ALL {
            let wish = full(kind).wish().expect("a wish");
            let written = serde_json::to_value(&wish).expect("text");
            let own = written.as_object().and_then(|it| it.keys().next());
            assert_eq!(own.map(String::as_str), Some(kind.word()));
            assert_eq!(Draft::of(kind).wish(), None, "{kind:?}");
        }
    }

    #[test]
    fn what_is_missing_or_runs_backwards_is_no_wish() {
        for spoilt in [
            Draft {
                things: vec!["a".into()],
                ..full(Kind::Exchange)
            },
            Draft {
                how: "  ".into(),
                ..full(Kind::HandOver)
            },
            Draft {
                days: (Some(77), Some(63)),
                ..full(Kind::Recall)
            },
            Draft {
                role: None,
                ..full(Kind::Prefer)
            },
        ] {
            assert_eq!(spoilt.wish(), None);
        }
    }
}
