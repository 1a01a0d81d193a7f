//! Links to what a question teaches.

use crate::{
    parts::icon::{Icon, icon},
    place::{Place, View},
    taught::catalogue,
};
use leptos::prelude::*;
use study::question::Study;

/// A row that leads to a lesson, a procedure or an item; nothing where the
/// catalogue has no such thing.
pub fn study_link(study: &Study) -> Option<impl IntoView + use<>> {
    let catalogue = catalogue();
    let (place, name, what) = match study {
        Study::Lesson(id) => {
            let lesson = catalogue.lesson(id)?;
            let of_procedure = catalogue.procedure(&id.as_str().into()).is_some();
            let place = Place::of_lesson(id, of_procedure);
            (place, lesson.title.clone(), "Lesson")
        }
        Study::Procedure(id) => {
            let procedure = catalogue.procedure(id)?;
            let place = Place::Procedure(id.clone(), View::SetUp, Vec::new());
            (place, procedure.name.clone(), "Procedure and set-up")
        }
        Study::Item(id) => {
            let item = catalogue.item(id)?;
            let place = Place::Item(id.clone());
            (place, item.name().to_owned(), "Instrument or material")
        }
    };
    Some(view! {
        <li>
            <a class="row" href=place.fragment()>
                <span class="row-name">{name}</span>
                <span class="row-note">{what}</span>
                {icon(Icon::Onwards)}
            </a>
        </li>
    })
}
