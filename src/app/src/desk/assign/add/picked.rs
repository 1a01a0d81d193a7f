//! What was chosen of each kind of task, kept while another kind is looked at.

use super::super::kind::Kind;
use class::{
    forms::WHOLE,
    task::{Order, Task},
};
use clinic::numbers::exercises::Family;
use leptos::prelude::*;

/// What was chosen. Cheap to copy; every copy is the same.
#[derive(Clone, Copy)]
pub struct Picked {
    /// What a case has to be.
    pub order: RwSignal<Order, LocalStorage>,
    /// The id of the material; empty where none is chosen.
    pub material: RwSignal<String>,
    /// The key of what it is mixed for; empty for its usual use.
    pub usage: RwSignal<String>,
    /// The id of the family of numbers.
    pub number: RwSignal<String>,
    /// The id of the family of questions; empty where none is chosen.
    pub family: RwSignal<String>,
    /// How many questions a form has.
    pub questions: RwSignal<u16>,
    /// The id of the blueprint of a form.
    pub blueprint: RwSignal<String>,
}

/// The lengths of a form, in questions.
pub const LENGTHS: [u16; 5] = [10, 20, 40, 60, 100];

impl Picked {
    /// Nothing yet.
    pub fn new() -> Self {
        Self {
            order: RwSignal::new_local(Order::default()),
            material: RwSignal::new(String::new()),
            usage: RwSignal::new(String::new()),
            number: RwSignal::new(Family::ALL[0].id().to_owned()),
            family: RwSignal::new(String::new()),
            questions: RwSignal::new(LENGTHS[1]),
            blueprint: RwSignal::new(WHOLE.to_owned()),
        }
    }

    /// The task of a kind with what was chosen.
    pub fn task(self, kind: Kind) -> Result<Task, String> {
        Ok(match kind {
            Kind::Case => Task::Case(self.order.get_untracked()),
            Kind::Reading => Task::Reading,
            Kind::Mix => Task::Mix {
                material: chosen(self.material, "First choose a material.")?,
                usage: Some(self.usage.get_untracked()).filter(|it| !it.is_empty()),
            },
            Kind::Number => Task::Number(self.number.get_untracked()),
            Kind::Question => {
                Task::Question(chosen(self.family, "First choose what is to be asked.")?)
            }
            Kind::Form => Task::Form {
                blueprint: self.blueprint.get_untracked(),
                questions: self.questions.get_untracked(),
            },
        })
    }
}

fn chosen(text: RwSignal<String>, lacking: &str) -> Result<String, String> {
    let text = text.get_untracked();
    if text.is_empty() {
        Err(lacking.to_owned())
    } else {
        Ok(text)
    }
}
