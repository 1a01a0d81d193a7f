//! One lesson read by itself, as while it is being written.

use super::{
    fault::{Fault, line_and_column},
    files::shown,
    markdown,
};
use crate::{
    ids::{LessonId, ProcedureId},
    lesson::Lesson,
};

/// Reads one lesson by itself, as it would stand at a path, without looking up
/// what it points to.
///
/// # Errors
/// Every fault found, with its place.
pub fn lesson(path: &str, text: &str) -> Result<Lesson, Vec<Fault>> {
    let parts: Vec<&str> = path.split('/').collect();
    let (id, procedure) = match parts.as_slice() {
        ["procedures", id, _] => (*id, Some(ProcedureId((*id).into()))),
        [.., name] => (name.strip_suffix(".md").unwrap_or(name), None),
        [] => ("", None),
    };
    markdown::lesson(LessonId(id.into()), procedure.as_ref(), text).map_err(|faults| {
        let place = |(at, message)| {
            let (line, column) = line_and_column(text, at);
            Fault {
                file: shown(path),
                line,
                column,
                message,
            }
        };
        faults.into_iter().map(place).collect()
    })
}
