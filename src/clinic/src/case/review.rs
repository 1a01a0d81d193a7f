//! Looking ahead: what becomes of a temporary at the review.

use super::{
    cavity::{lower_first, or_say, plain},
    choice::{Choice, Decision, Form},
    draw::Visit,
};
use crate::{
    Reason,
    layers::{LayerVerdict, Stack},
    standing::Standing,
};
use catalogue::{findings::Known, ids::ItemId, items::Role};

impl Visit<'_> {
    /// What becomes of the temporary when the planned filling goes in.
    pub(super) fn at_review(&self, stack: &Stack) -> Option<Decision> {
        let catalogue = self.clinic.catalogue();
        let temporary = catalogue.material(stack.closing.as_ref()?)?;
        let permanent = self.clinic.catalogue().plan(&"permanent-today".into())?;
        let later = self
            .clinic
            .reason(&self.clinic.settled(&self.case.opened, permanent));
        let filling = self
            .clinic
            .layer_verdicts(&later, Role::Permanent, &Stack::default())
            .into_iter()
            .filter(|v| v.standing == Standing::Right)
            .find_map(|v| v.item)?;
        let above = Stack {
            closing: Some(filling.clone()),
            ..Stack::default()
        };
        let as_base = self
            .clinic
            .layer_verdicts(&later, Role::Base, &above)
            .into_iter()
            .find(|v| v.item.as_ref() == Some(&temporary.id))
            .unwrap_or(LayerVerdict {
                item: None,
                standing: Standing::Wrong,
                reasons: Vec::new(),
            });
        let base_standing = as_base.standing.max(Standing::Acceptable);
        let conflict: Vec<Reason> = temporary
            .not_under
            .iter()
            .filter(|c| {
                catalogue
                    .material(&filling)
                    .is_some_and(|f| f.class == c.class)
            })
            .map(|c| Reason {
                because: c.because.clone(),
                sources: c.sources.clone(),
                rule: None,
            })
            .collect();
        let name = |id: &ItemId| lower_first(catalogue.item_name(id));
        let (what, over) = (
            name(&temporary.id),
            self.planned().unwrap_or_else(|| name(&filling)),
        );
        let choices = vec![
            Choice::new(
                "all-out",
                format!("All of the {what} comes out and the cavity is cleaned"),
                Standing::Right,
            )
            .because(or_say(
                conflict.clone(),
                "A clean cavity serves any filling.",
            )),
            Choice::new(
                "left-as-base",
                format!("A layer of the {what} stays as a base"),
                base_standing,
            )
            .because(or_say(as_base.reasons, "It is no base under this filling.")),
            Choice::new(
                "on-top",
                format!("The {over} is placed on top of all of it"),
                Standing::Wrong,
            )
            .because(plain(format!(
                "A temporary is too weak to carry the {over}, and leaves it no depth."
            ))),
            Choice::new(
                "left-alone",
                format!("The {what} stays for good, since the tooth is quiet"),
                Standing::Wrong,
            )
            .because(plain(
                "It wears and leaks with time: it closes a tooth for months, not for years.".into(),
            )),
        ];
        Some(Decision {
            lead: format!("Suppose that at the review all is well, and the {over} goes in."),
            ..Decision::new(
                "at-review",
                "Look ahead",
                "What becomes of the temporary then?",
                Form::One,
                choices,
                "materials",
            )
        })
    }

    /// The filling that is planned for later, as the chart has it.
    fn planned(&self) -> Option<String> {
        let chart = self.clinic.facts(&self.case.chart, Known::Chart);
        let line = chart
            .into_iter()
            .find(|fact| fact.finding.as_str() == "planned-permanent")?;
        Some(line.says)
    }
}
