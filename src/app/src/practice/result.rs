//! What a form came to: by competency, with what to study.

use super::{run::Run, time};
use crate::{
    browser::clock,
    parts::{
        assigned::{BackToAssignment, belongs_to},
        icon::{Icon, icon},
        page::Page,
    },
    place::{Place, View},
    taught::catalogue,
};
use leptos::prelude::*;
use record::{Verdict, folds::Form};
use study::form::{Given, Outcome, Part, Pauses};

/// The result.
#[component]
pub fn Result(
    /// The form.
    run: Run,
) -> impl IntoView {
    let Some(form) = run.now() else {
        return ().into_any();
    };
    let bank = run.questions().items();
    let given: Vec<Given> = form
        .begun
        .questions
        .iter()
        .filter_map(|id| {
            let answer = form.answers.get(id);
            Some(Given {
                place: bank.place(id)?,
                right: answer.map(|answer| answer.verdict == Verdict::Right),
                flagged: form.flagged.contains(id),
            })
        })
        .collect();
    let gone = form.begun.questions.len() - given.len();
    let pauses = Pauses {
        count: u32::try_from(form.pauses.len()).unwrap_or(u32::MAX),
        seconds: form.seconds_paused(clock::now()),
    };
    let outcome = Outcome::of(bank, &given, u32::from(form.begun.pass.get()), pauses);
    let words = outcome.words.iter();
    let words = words
        .map(|words| view! { <p>{words.clone()}</p> })
        .collect_view();
    let gone = (gone > 0).then(|| {
        view! {
            <p data-test="gone">
                {gone} " of its questions are no longer taught in that form. They are left out of this result and kept in your record."
            </p>
        }
    });
    let to_study: Vec<_> = outcome
        .study
        .iter()
        .map(|&at| part(&outcome.parts[at]))
        .collect();
    let rows = outcome.parts.iter().map(row).collect_view();
    let list: Vec<_> = (0..form.begun.questions.len())
        .map(|at| question(run, &form, at))
        .collect();
    let (over, up) = belongs_to(Some(run.id), "Practice forms", &Place::Forms(String::new()));
    view! {
        <Page title="The result" over up>
            <div class="prose" data-test="result">{words}</div>
            {time::closed(&form).map(|words| view! { <p data-test="ran-out">{words}</p> })}
            <BackToAssignment sitting=Some(run.id) />
            <p class="q-note">{time_taken(&form)}</p>
            {gone}
            <section class="group">
                <h2 class="stage-label">"By competency"</h2>
                <div class="table-frame" tabindex="0" role="region" aria-label="By competency">
                    <table class="numbers" data-test="by-competency">
                        <thead><tr>
                            <th scope="col">"Competency"</th>
                            <th scope="col">"Right"</th>
                            <th scope="col">"Of"</th>
                            <th scope="col">"Blank"</th>
                            <th scope="col">"80 % interval"</th>
                        </tr></thead>
                        <tbody>{rows}</tbody>
                    </table>
                </div>
            </section>
            {(!to_study.is_empty()).then(|| view! {
                <section class="group" data-test="study-next">
                    <h2 class="stage-label">"Study next"</h2>
                    {to_study}
                </section>
            })}
            <section class="group">
                <h2 class="stage-label">"The questions"</h2>
                <ul class="rows">{list}</ul>
            </section>
        </Page>
    }
    .into_any()
}

fn time_taken(form: &Form) -> String {
    let worked = form.seconds_worked(clock::now());
    if let Some(limit) = form.begun.minutes {
        let minutes = worked.div_ceil(60).min(u32::from(limit));
        format!("{minutes} of {limit} minutes used.")
    } else {
        let minutes = match worked.div_ceil(60) {
            1 => "1 minute".to_owned(),
            many => format!("{many} minutes"),
        };
        format!("Untimed; {minutes} from beginning to end, pauses apart.")
    }
}

fn row(part: &Part) -> impl IntoView + use<> {
    view! {
        <tr>
            <th scope="row">{part.name.clone()}</th>
            <td>{part.right}</td>
            <td>{part.asked}</td>
            <td>{part.blank}</td>
            <td>{format!("{:.0}–{:.0} %", part.interval.low * 100.0, part.interval.high * 100.0)}</td>
        </tr>
    }
}

/// What to study for one competency: the procedures that its missed questions teach.
fn part(part: &Part) -> impl IntoView + use<> {
    const MOST: usize = 3;
    let link = |id: &String| {
        let procedure = catalogue().procedure(&id.as_str().into())?;
        let place = Place::Procedure(procedure.id.clone(), View::Lesson, Vec::new());
        Some(view! {
            <li>
                <a class="row" href=place.fragment()>
                    <span class="row-name">{procedure.name.as_str()}</span>
                    {icon(Icon::Onwards)}
                </a>
            </li>
        })
    };
    let links = part.procedures.iter().filter_map(link).take(MOST);
    view! {
        <h3>{part.words.clone()}</h3>
        <ul class="rows">{links.collect_view()}</ul>
    }
}

/// One question of the form, by what it asks.
fn question(run: Run, form: &Form, at: usize) -> impl IntoView + use<> {
    let id = &form.begun.questions[at];
    let stem = run.write(at).map_or_else(
        || "No longer taught in this form".to_owned(),
        |question| question.stem.clone(),
    );
    let says = match form.answers.get(id).map(|answer| answer.verdict) {
        None => "Blank",
        Some(Verdict::Right) => "Right",
        Some(Verdict::Unsafe) => "Unsafe",
        Some(_) => "Not right",
    };
    let flagged = form.flagged.contains(id).then_some(" · flagged");
    view! {
        <li>
            <a class="row" href=run.place(at).fragment() data-test=format!("look-{}", at + 1)>
                <span class="row-name">{at + 1} ". " {stem}</span>
                <span class="row-note">{says} {flagged}</span>
                {icon(Icon::Onwards)}
            </a>
        </li>
    }
}
