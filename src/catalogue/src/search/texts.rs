//! Which texts everything is found by, and how much each of them says.

use super::found::Found;
use crate::{
    Catalogue,
    ids::SubstanceId,
    lesson::{Block, Lesson, text},
    lookup::Item,
    procedures::{Procedure, Step},
};

/// The weight of a name, of another name, of what a thing belongs to, of what
/// it is for, and of any other text.
const NAME: u16 = 10;
const OTHER_NAME: u16 = 9;
const GROUP: u16 = 5;
const PURPOSE: u16 = 3;
const TEXT: u16 = 1;

/// Texts with their weights; the first is the name.
type Texts<'t> = [(u16, &'t str)];

/// Gives everything that can be found with its texts.
pub(super) fn each<'c>(catalogue: &'c Catalogue, take: &mut impl FnMut(Found<'c>, &Texts<'_>)) {
    for procedure in &catalogue.procedures {
        of_procedure(procedure, take);
    }
    for item in catalogue.items() {
        of_item(item, take);
    }
    for term in &catalogue.glossary {
        let mut texts = vec![(NAME, term.term.as_str()), (PURPOSE, &term.meaning)];
        texts.extend(term.also.iter().map(|also| (OTHER_NAME, also.as_str())));
        take(Found::Term(term), &texts);
    }
    for lesson in &catalogue.lessons {
        // The lesson of a procedure is found by the procedure's own name.
        if catalogue.procedure(&lesson.id.as_str().into()).is_none() {
            take(Found::Lesson(lesson), &[(NAME, &lesson.title)]);
        }
        sections(lesson, take);
    }
    for procedure in &catalogue.procedures {
        for step in procedure.steps.iter().filter(|step| !step.does.is_empty()) {
            of_step(procedure, step, take);
        }
    }
    for rule in &catalogue.rules {
        take(Found::Rule(rule), &[(PURPOSE, &rule.because)]);
    }
    for stop in &catalogue.stops {
        let texts = [
            (NAME, stop.name.as_str()),
            (PURPOSE, &stop.sees),
            (TEXT, &stop.speak),
            (TEXT, &stop.because),
        ];
        take(Found::Moment(stop), &texts);
    }
    for source in &catalogue.sources {
        let (id, year) = (source.id.as_str(), source.year.to_string());
        let texts = [
            (GROUP, source.title.as_str()),
            (TEXT, &source.part),
            (TEXT, id),
            (TEXT, &year),
        ];
        take(Found::Source(source), &texts);
    }
}

fn of_procedure<'c>(procedure: &'c Procedure, take: &mut impl FnMut(Found<'c>, &Texts<'_>)) {
    let mut texts = vec![
        (NAME, procedure.name.as_str()),
        (OTHER_NAME, &procedure.short),
        (PURPOSE, &procedure.purpose),
    ];
    let lines = procedure.indications.iter().chain(&procedure.hazards);
    texts.extend(lines.map(|line| (TEXT, line.as_str())));
    take(Found::Procedure(procedure), &texts);
}

fn of_item<'c>(item: Item<'c>, take: &mut impl FnMut(Found<'c>, &Texts<'_>)) {
    let mut texts = vec![
        (NAME, item.name()),
        (GROUP, item.family()),
        (PURPOSE, item.purpose()),
    ];
    texts.extend(item.also().iter().map(|also| (OTHER_NAME, also.as_str())));
    texts.extend(
        item.contains()
            .iter()
            .map(SubstanceId::as_str)
            .map(|it| (PURPOSE, it)),
    );
    match item {
        Item::Instrument(instrument) => texts.push((TEXT, &instrument.look)),
        Item::Material(material) => {
            texts.push((GROUP, material.class.as_str()));
            texts.push((TEXT, &material.form));
            texts.push((TEXT, &material.storage));
        }
    }
    take(Found::Item(item), &texts);
}

fn of_step<'c>(
    procedure: &'c Procedure,
    step: &'c Step,
    take: &mut impl FnMut(Found<'c>, &Texts<'_>),
) {
    let mut texts = vec![
        (PURPOSE, step.does.as_str()),
        (TEXT, &step.says),
        (TEXT, &step.phase),
        (TEXT, &procedure.short),
    ];
    for slip in &step.slips {
        texts.push((TEXT, &slip.slip));
        texts.push((TEXT, &slip.mend));
    }
    take(Found::Step(procedure, step), &texts);
}

/// The parts of a lesson, each from its heading to the next one.
fn sections<'c>(lesson: &'c Lesson, take: &mut impl FnMut(Found<'c>, &Texts<'_>)) {
    let is_heading = |block: &Block| matches!(block, Block::Heading(..));
    let starts = (0..lesson.blocks.len()).filter(|at| is_heading(&lesson.blocks[*at]));
    let starts: Vec<usize> = starts.collect();
    for (number, start) in starts.iter().enumerate() {
        let end = starts
            .get(number + 1)
            .copied()
            .unwrap_or(lesson.blocks.len());
        let found = Found::Section(lesson, *start);
        let body = text(&lesson.blocks[start + 1..end]);
        let heading = found.title();
        take(
            found,
            &[(GROUP, &heading), (TEXT, &body), (TEXT, &lesson.title)],
        );
    }
}
