//! The text of a lesson, with what is derived set into it.

use super::{
    advice::AdviceList, drawing::ItemDrawing, fold::Fold, gradually::in_turn, item_link::ItemLink,
    mixing::MixingCard, slips::SlipList, sources::SourceLine, steps::StepList, tray::TrayView,
};
use crate::{
    place::{Place, View},
    taught::{catalogue, clinic},
};
use catalogue::{
    ids::{ItemId, ProcedureId, SourceId},
    lesson::{Block, Inline, Lesson},
};
use clinic::patient::Patient;
use leptos::prelude::*;

/// How many blocks a screen shows of a lesson at first, and a few more.
const AT_ONCE: usize = 5;

/// A lesson: its blocks, then the sources it names.
#[component]
pub fn LessonText(
    /// The lesson.
    lesson: &'static Lesson,
) -> impl IntoView {
    let sources = Sources::of(&lesson.blocks);
    let named = sources.clone();
    let text = in_turn(&lesson.blocks, AT_ONCE, move |each| block(each, &sources));
    view! {
        <div class="prose" data-test="lesson">{text}</div>
        {named.list()}
    }
}

/// The sources of a lesson, numbered in the order they are first named.
#[derive(Clone)]
struct Sources(Vec<&'static SourceId>);

impl Sources {
    fn of(blocks: &'static [Block]) -> Self {
        let mut found = Self(Vec::new());
        found.in_blocks(blocks);
        found
    }

    fn in_blocks(&mut self, blocks: &'static [Block]) {
        for block in blocks {
            match block {
                Block::Heading(_, text) | Block::Paragraph(text) => self.in_text(text),
                Block::List(_, entries) => entries.iter().for_each(|entry| self.in_blocks(entry)),
                Block::Aside(inner) => self.in_blocks(inner),
                Block::Table(head, rows) => {
                    let cells = head.iter().chain(rows.iter().flatten());
                    cells.for_each(|cell| self.in_text(cell));
                }
                _ => {}
            }
        }
    }

    fn in_text(&mut self, text: &'static [Inline]) {
        for inline in text {
            match inline {
                Inline::Source(id) if !self.0.contains(&id) => self.0.push(id),
                Inline::Emphasis(inner) | Inline::Strong(inner) => self.in_text(inner),
                _ => {}
            }
        }
    }

    /// The mark that stands in the text for a source.
    fn mark(&self, id: &SourceId) -> AnyView {
        let number = self.0.iter().position(|each| *each == id).map(|at| at + 1);
        let title = catalogue().source(id).map(|source| source.title.as_str());
        view! {
            <sup class="source-mark">
                <span class="unseen">"Source: " {title}</span>
                <span aria-hidden="true">{number}</span>
            </sup>
        }
        .into_any()
    }

    fn list(self) -> impl IntoView {
        let lines: Vec<_> = self
            .0
            .iter()
            .filter_map(|id| catalogue().source(id))
            .map(|source| view! { <li><SourceLine source /></li> })
            .collect();
        (!lines.is_empty()).then(|| {
            view! {
                <section class="lesson-sources">
                    <h2>"Sources"</h2>
                    <ol>{lines}</ol>
                </section>
            }
        })
    }
}

fn blocks(list: &'static [Block], sources: &Sources) -> Vec<AnyView> {
    list.iter().map(|each| block(each, sources)).collect()
}

fn block(block: &'static Block, sources: &Sources) -> AnyView {
    match block {
        Block::Heading(2, text) => view! { <h2>{inlines(text, sources)}</h2> }.into_any(),
        Block::Heading(_, text) => view! { <h3>{inlines(text, sources)}</h3> }.into_any(),
        Block::Paragraph(text) => view! { <p>{inlines(text, sources)}</p> }.into_any(),
        Block::List(numbered, entries) => {
            let entries: Vec<_> = entries
                .iter()
                .map(|entry| view! { <li>{blocks(entry, sources)}</li> })
                .collect();
            if *numbered {
                view! { <ol>{entries}</ol> }.into_any()
            } else {
                view! { <ul>{entries}</ul> }.into_any()
            }
        }
        Block::Aside(inner) => {
            view! { <aside class="aside">{blocks(inner, sources)}</aside> }.into_any()
        }
        Block::Table(head, rows) => table(head, rows, sources),
        derived => self::derived(derived),
    }
}

fn table(
    head: &'static [Vec<Inline>],
    rows: &'static [Vec<Vec<Inline>>],
    sources: &Sources,
) -> AnyView {
    let head: Vec<_> = head
        .iter()
        .map(|cell| view! { <th scope="col">{inlines(cell, sources)}</th> })
        .collect();
    let rows: Vec<_> = rows
        .iter()
        .map(|row| {
            let cells: Vec<_> = row
                .iter()
                .map(|cell| view! { <td>{inlines(cell, sources)}</td> })
                .collect();
            view! { <tr>{cells}</tr> }
        })
        .collect();
    view! {
        <div class="table-frame" tabindex="0" role="region" aria-label="Table">
            <table><thead><tr>{head}</tr></thead><tbody>{rows}</tbody></table>
        </div>
    }
    .into_any()
}

fn inlines(text: &'static [Inline], sources: &Sources) -> Vec<AnyView> {
    text.iter().map(|each| inline(each, sources)).collect()
}

fn inline(inline: &'static Inline, sources: &Sources) -> AnyView {
    match inline {
        Inline::Text(text) => text.as_str().into_any(),
        Inline::Emphasis(inner) => view! { <em>{inlines(inner, sources)}</em> }.into_any(),
        Inline::Strong(inner) => view! { <strong>{inlines(inner, sources)}</strong> }.into_any(),
        Inline::Item(id, inner) => {
            link(Place::Item(id.clone()).fragment(), inlines(inner, sources))
        }
        Inline::Procedure(id, inner) => {
            let place = Place::Procedure(id.clone(), View::Lesson, Vec::new());
            link(place.fragment(), inlines(inner, sources))
        }
        Inline::Source(id) => sources.mark(id),
        Inline::Link(to, inner) => link(to.clone(), inlines(inner, sources)),
    }
}

fn link(to: String, text: Vec<AnyView>) -> AnyView {
    view! { <a href=to>{text}</a> }.into_any()
}

/// A block that is computed where it stands, for the usual patient.
fn derived(block: &'static Block) -> AnyView {
    match block {
        Block::Tray(id) => {
            let tray = clinic().tray(id, &usual());
            let place = Place::Procedure(id.clone(), View::SetUp, Vec::new());
            view! {
                <TrayView tray />
                <p class="actions"><a href=place.fragment()>"See it change with the patient"</a></p>
            }
            .into_any()
        }
        Block::Steps(id, phase) => {
            let mut steps = clinic().steps(id, &usual());
            if let Some(phase) = phase {
                steps.retain(|step| step.stage == *phase);
            }
            view! { <StepList steps /> }.into_any()
        }
        Block::Advice(id) => catalogue()
            .procedure(id)
            .map(|procedure| view! { <AdviceList procedure /> })
            .into_any(),
        Block::Slips(id) => slips(id),
        Block::Mixing(id) => catalogue()
            .material(id)
            .and_then(|material| material.mixing.as_ref())
            .map(|mixing| view! { <MixingCard mixing /> })
            .into_any(),
        Block::Drawings(ids) => drawings(ids),
        Block::Ask(question, answer) => view! {
            <div class="ask">
                <p class="stage-label">"Stop and answer"</p>
                <p>{question.as_str()}</p>
                <Fold title="The answer"><p>{answer.as_str()}</p></Fold>
            </div>
        }
        .into_any(),
        _ => ().into_any(),
    }
}

/// The usual patient, with what follows from the chart.
fn usual() -> Patient {
    let clinic = clinic();
    clinic.reason(&clinic.usual_patient()).patient
}

fn slips(id: &'static ProcedureId) -> AnyView {
    let steps = catalogue().procedure(id).map(|procedure| &procedure.steps);
    let slips = steps
        .into_iter()
        .flatten()
        .flat_map(|step| step.slips.iter().cloned())
        .collect();
    view! { <SlipList slips /> }.into_any()
}

/// Items side by side, each in the room it has.
fn drawings(ids: &'static [ItemId]) -> AnyView {
    let figures: Vec<_> = ids
        .iter()
        .filter_map(|id| catalogue().item(id))
        .map(|item| {
            view! {
                <li class="figure">
                    <ItemDrawing item />
                    <ItemLink item />
                </li>
            }
        })
        .collect();
    view! { <ul class="figures">{figures}</ul> }.into_any()
}
