//! A question that waits for its answer: what is asked, what is shown with it,
//! and the form in which it is answered.

mod choices;
mod number;
mod order;
mod pairs;
mod shown;
mod tray;

pub use shown::{piece, shown};

use super::Draft;
use leptos::prelude::*;
use std::sync::Arc;
use study::question::{Form, Question};

/// A question on screen, with the answer as it stands. Cheap to copy.
#[derive(Clone, Copy)]
pub struct Asked {
    question: StoredValue<Arc<Question>>,
    /// The answer as it stands.
    pub draft: RwSignal<Draft>,
}

impl Asked {
    /// A question with its draft.
    pub fn new(question: Arc<Question>, draft: RwSignal<Draft>) -> Self {
        Self {
            question: StoredValue::new(question),
            draft,
        }
    }

    /// The question.
    pub fn question(self) -> Arc<Question> {
        self.question.get_value()
    }

    /// Whether there is an answer to give.
    pub fn is_ready(self) -> bool {
        let question = self.question();
        self.draft
            .with(|draft| draft.answer(&question.form).is_some())
    }
}

/// The heading of a question: what is asked, under a small label.
pub fn stem(question: &Question, label: String) -> impl IntoView + use<> {
    view! {
        <h1 class="question" tabindex="-1" data-test="stem">
            <span class="stage-label">{label}<span class="unseen">": "</span></span>
            {question.stem.clone()}
        </h1>
    }
}

/// What is shown with a question, and the form in which it is answered.
#[component]
pub fn Ask(
    /// The question.
    asked: Asked,
    /// The key of a choice that a hint has ruled out.
    #[prop(into)]
    out: Signal<Option<String>>,
) -> impl IntoView {
    let question = asked.question();
    let asks = question.form.asks();
    let form = match &question.form {
        Form::One(_) | Form::Name(_) | Form::Slip(_) | Form::All(_) => {
            view! { <choices::Choices asked out /> }.into_any()
        }
        Form::Place(_) => view! { <tray::Tray asked /> }.into_any(),
        Form::Order { .. } => view! { <order::Order asked /> }.into_any(),
        Form::Match { .. } => view! { <pairs::Pairs asked /> }.into_any(),
        Form::Number { .. } => view! { <number::Number asked /> }.into_any(),
    };
    view! {
        <div data-question=question.id.to_string() data-test="question">
            {shown(&question.shown)}
            <p class="how-to">{asks}</p>
            {form}
        </div>
    }
}
