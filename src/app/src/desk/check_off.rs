//! The sheet by which a procedure is checked off: its steps as they follow for
//! a patient without anything special, the critical ones marked, with room to
//! write on paper and a place to record the result on this device.

use crate::{
    browser::printer,
    log::log,
    parts::{
        announce::announcer,
        choice::{Choice, Choosable},
        notice::{Notice, Tone},
        page::Page,
    },
    place::{Place, View},
    procedures::supposed_patient,
    shell::NotHere,
    taught::{catalogue, standard},
};
use catalogue::{
    ids::ProcedureId,
    procedures::{Actor, Procedure},
};
use clinic::tray::PlacedStep;
use leptos::prelude::*;
use record::{SkillChecked, What};

/// A line of the sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Line {
    stage: String,
    key: String,
    does: String,
    who: &'static str,
    critical: bool,
    law: bool,
}

impl Line {
    fn of(placed: PlacedStep) -> Option<Self> {
        let step = placed.step;
        // The dentist's own steps are not the assistant's to show.
        let who = match step.who {
            Actor::Dentist => return None,
            Actor::Assistant => "Assistant",
            Actor::Team => "With the dentist",
        };
        (!step.does.is_empty()).then(|| Self {
            stage: placed.stage,
            key: format!("{}/{}", placed.procedure, step.id),
            does: step.does,
            who,
            critical: step.critical,
            law: step.local_law,
        })
    }
}

/// The screen.
#[component]
pub fn CheckOffScreen(
    /// The procedure.
    id: ProcedureId,
) -> impl IntoView {
    let Some(procedure) = catalogue().procedure(&id) else {
        return view! { <NotHere what="procedure" /> }.into_any();
    };
    let clinic = standard();
    let patient = supposed_patient(&clinic, &Vec::new());
    let steps = clinic.steps(&id, &patient).into_iter();
    let lines: Vec<Line> = steps.filter_map(Line::of).collect();
    let up = Place::Procedure(id, View::Steps, Vec::new()).fragment();
    view! {
        <Page title=format!("Check-off: {}", procedure.name) over=procedure.short.clone() up>
            <p class="lead prose dk-noprint">
                "For hands-on assessment: watch the steps, mark each, and keep the result. Print it to write on paper, or mark it here."
            </p>
            <Sheet procedure lines />
        </Page>
    }
    .into_any()
}

/// The sheet, and keeping its result.
#[component]
fn Sheet(procedure: &'static Procedure, lines: Vec<Line>) -> impl IntoView {
    let (log, announcer) = (log(), announcer());
    let count = lines.len();
    let critical_count = lines.iter().filter(|line| line.critical).count();
    let marks = RwSignal::new(vec![None::<bool>; count]);
    let lines = StoredValue::new(lines);
    let kept = RwSignal::new(None::<String>);
    let left = move || marks.with(|marks| marks.iter().filter(|mark| mark.is_none()).count());
    let keep = move |_| {
        let marks = marks.get_untracked();
        if marks.iter().any(Option::is_none) {
            let sentence = "Mark every step first.".to_owned();
            announcer.say(sentence.clone());
            return kept.set(Some(sentence));
        }
        let sorted = lines.with_value(|lines| {
            let of = |wanted: bool| {
                let marked = lines
                    .iter()
                    .zip(&marks)
                    .filter(move |(_, mark)| **mark == Some(wanted));
                marked.map(|(line, _)| line.clone()).collect::<Vec<_>>()
            };
            (of(true), of(false))
        });
        let (done, missed) = sorted;
        let critical = missed.iter().any(|line| line.critical);
        let keys = |lines: &[Line]| lines.iter().map(|line| line.key.clone()).collect();
        // A critical step that was missed fails the skill; anything else missed
        // has to be shown again too.
        let shown = missed.is_empty();
        log.append(What::SkillChecked(SkillChecked {
            procedure: procedure.id.to_string(),
            done: keys(&done),
            missed: keys(&missed),
            critical,
            shown,
        }));
        let sentence = match (shown, critical) {
            (true, _) => format!("Kept: all {count} steps shown."),
            (_, true) => format!(
                "Kept: {} of {count} steps shown, a critical one missed. The skill is not shown yet.",
                done.len()
            ),
            _ => format!(
                "Kept: {} of {count} steps shown, no critical one missed. The rest is to be shown again.",
                done.len()
            ),
        };
        announcer.say(sentence.clone());
        kept.set(Some(sentence));
    };
    let mut stage = String::new();
    let rows: Vec<_> = lines.with_value(|lines| {
        lines
            .iter()
            .cloned()
            .enumerate()
            .map(|(at, line)| {
                let head = (line.stage != stage).then(|| line.stage.clone());
                stage.clone_from(&line.stage);
                row(at, line, head, marks)
            })
            .collect()
    });
    view! {
        <div class="dk-check-sheet" data-test="check-sheet">
            <div class="dk-paper-fields" aria-hidden="true">
                <p>"Seat: ____________"</p>
                <p>"Date: ____________"</p>
                <p>"Watched by: ________________________"</p>
            </div>
            <p class="hint">
                {count} " steps, " {critical_count}
                " of them critical, marked ◆: whoever misses a critical step has not shown the skill. The dentist's own steps are left out."
            </p>
            <ol class="dk-steps">{rows}</ol>
            <p class="dk-paper-fields" aria-hidden="true">"Shown: ☐ yes  ☐ not yet    Signature: ________________________"</p>
        </div>
        <section class="dk-noprint">
            <h2>"The result"</h2>
            <p data-test="steps-left">
                {move || match left() {
                    0 => "Every step is marked.".to_owned(),
                    1 => "1 step is not marked yet.".into(),
                    many => format!("{many} steps are not marked yet."),
                }}
            </p>
            {move || {
                kept.get()
                    .map(|says| {
                        view! {
                            <Notice tone=Tone::Plain>
                                <p data-test="check-kept">{says}</p>
                            </Notice>
                        }
                    })
            }}
            <div class="actions">
                <button type="button" class="button" data-test="keep-check" on:click=keep>
                    "Keep the result on this device"
                </button>
                <button
                    type="button"
                    class="button button-quiet"
                    data-test="print-check"
                    on:click=move |_| printer::print()
                >
                    "Print the sheet"
                </button>
            </div>
            <p class="hint">"It goes into the record of this device, and shows under Record."</p>
        </section>
    }
}

fn row(
    at: usize,
    line: Line,
    head: Option<String>,
    marks: RwSignal<Vec<Option<bool>>>,
) -> impl IntoView {
    let chosen = move || {
        marks.with(|marks| {
            match marks.get(at).copied().flatten() {
                Some(true) => "done",
                Some(false) => "missed",
                None => "",
            }
            .to_owned()
        })
    };
    let choose = move |value: String| {
        marks.update(|marks| {
            if let Some(mark) = marks.get_mut(at) {
                *mark = Some(value == "done");
            }
        });
    };
    let class = if line.critical {
        "dk-step dk-critical"
    } else {
        "dk-step"
    };
    let mark = line
        .critical
        .then(|| view! { <strong class="dk-critical-mark">"◆ Critical. "</strong> });
    let law = line
        .law
        .then(|| view! { <span class="dk-who">" Only where local law allows."</span> });
    view! {
        <li class=class data-test=format!("step-{at}")>
            {head.map(|stage| view! { <h2 class="stage-label">{stage}</h2> })}
            <div class="dk-step-line">
                <p>
                    {mark} {line.does} <span class="dk-who">" " {line.who} "."</span> {law}
                </p>
                <span class="dk-boxes" aria-hidden="true">"☐ Shown  ☐ Not yet"</span>
                <Choice
                    legend=format!("Step {}", at + 1)
                    options=vec![Choosable::new("done", "Shown"), Choosable::new("missed", "Not yet")]
                    chosen=Signal::derive(chosen)
                    choose
                    test="mark"
                />
            </div>
        </li>
    }
}
