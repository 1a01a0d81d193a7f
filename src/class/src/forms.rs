//! Practice forms of an assignment: which questions a seat's form has, and in
//! which wording.

use catalogue::Catalogue;
use study::{
    form::{Mode, Request, assemble},
    item::{Bank, Blueprint, Share},
    numeric::hash,
    question::{self, Question, QuestionId},
};

/// The id of the blueprint that spreads questions over all competencies. Every
/// other blueprint is one competency, by its id.
pub const WHOLE: &str = "all";

/// The ids of all blueprints.
pub fn blueprints(catalogue: &Catalogue) -> Vec<String> {
    let own = catalogue.competencies.iter().map(|it| it.id.to_string());
    std::iter::once(WHOLE.to_owned()).chain(own).collect()
}

/// The questions that a blueprint is drawn from; none where there is no such blueprint.
pub fn bank(items: &Bank, blueprint: &str) -> Option<Bank> {
    if blueprint == WHOLE {
        return Some(items.clone());
    }
    let shares = &items.blueprint().0;
    let share: Share = shares.iter().find(|it| it.id == blueprint)?.clone();
    let own = items.items().iter().filter(|it| it.competency == blueprint);
    let (own, _) = Bank::new(Blueprint(vec![share]), own.cloned());
    Some(own)
}

/// The ids of the questions of a form, in order, from the questions of its blueprint.
///
/// # Errors
/// A sentence where there are too few questions for it.
pub fn drawn(bank: &Bank, questions: u16, seed: u64) -> Result<Vec<String>, String> {
    let request = Request {
        size: usize::from(questions),
        seconds: None,
        cut: 0.0,
        seed,
        mode: Mode::Shared,
    };
    let form = assemble(bank, &request).map_err(|unfit| unfit.to_string())?;
    let id = |place: &usize| Some(bank.items().get(*place)?.id.clone());
    Ok(form.places.iter().filter_map(id).collect())
}

/// What the wordings of a seat's form follow from, as its record keeps it.
pub fn code(seed: u64) -> String {
    format!("{CODE}{seed:016x}")
}

/// Whether a form of the record is a task of an assignment, by what its
/// wordings follow from.
pub fn is_task(code: &str) -> bool {
    code.starts_with(CODE)
}

/// No code that is typed has a slash.
const CODE: &str = "seat/";

/// The seed of the wording of a question in a form.
pub fn wording(code: &str, question: &str) -> u64 {
    hash(&format!("{code}/{question}"))
}

/// A question of a form in its wording, or in the first one where that cannot
/// be written; none where its fact is no longer taught.
pub fn write(written: &question::Bank, code: &str, question: &str) -> Option<Question> {
    let id = QuestionId(question.to_owned());
    let own = written.write(&id, wording(code, question));
    own.or_else(|| written.write(&id, 0))
}
