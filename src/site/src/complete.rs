//! Whether the catalogue is whole: enough of each kind, every instrument drawn
//! and every item in use, and no lesson that retypes what is derived.

use std::collections::BTreeSet;

use catalogue::{
    Catalogue, Item,
    ids::{ItemId, ProcedureId},
    lesson::{Block, Inline},
    procedures::ProcedureKind,
};

/// How many items of its tray a list in a lesson may name before it counts as
/// the tray typed once more.
const RETYPED: usize = 4;

/// What is missing, orphaned or retyped, one a line.
pub fn faults(catalogue: &Catalogue) -> Vec<String> {
    let mut faults = too_few(catalogue);
    faults.extend(undrawn(catalogue));
    faults.extend(orphans(catalogue));
    faults.extend(retyped(catalogue));
    faults
}

fn too_few(catalogue: &Catalogue) -> Vec<String> {
    let treatment = |p: &&catalogue::procedures::Procedure| p.kind == ProcedureKind::Treatment;
    let treatments = catalogue.procedures.iter().filter(treatment).count();
    [
        ("procedures", treatments, 30),
        ("instruments", catalogue.instruments.len(), 130),
        ("materials", catalogue.materials.len(), 45),
        ("lessons", catalogue.lessons.len(), 36),
    ]
    .into_iter()
    .filter(|(_, count, least)| count < least)
    .map(|(kind, count, least)| {
        format!("there are {count} {kind}; a whole catalogue has at least {least}")
    })
    .collect()
}

fn undrawn(catalogue: &Catalogue) -> Vec<String> {
    catalogue
        .instruments
        .iter()
        .filter(|i| catalogue.drawing(&i.id).is_none())
        .map(|i| format!("the instrument '{}' has no drawing", i.id))
        .collect()
}

/// Items that no step uses or keeps at hand.
fn orphans(catalogue: &Catalogue) -> Vec<String> {
    let mut used: BTreeSet<&ItemId> = BTreeSet::new();
    for procedure in &catalogue.procedures {
        for step in &procedure.steps {
            used.extend(step.uses.0.iter().chain(&step.at_hand.0).map(|u| &u.item));
        }
        used.extend(procedure.variations.iter().filter_map(|v| v.take.as_ref()));
    }
    let instruments = catalogue.instruments.iter().map(|i| &i.id);
    instruments
        .chain(catalogue.materials.iter().map(|m| &m.id))
        .filter(|id| !used.contains(id))
        .map(|id| format!("no step of any procedure uses '{id}'"))
        .collect()
}

/// Lists of lessons that name several items of the tray that is derived beside them.
fn retyped(catalogue: &Catalogue) -> Vec<String> {
    let mut faults = Vec::new();
    for lesson in &catalogue.lessons {
        let mut tray = BTreeSet::new();
        collect(catalogue, &lesson.id.as_str().into(), &mut tray);
        for block in &lesson.blocks {
            let Block::List(_, entries) = block else {
                continue;
            };
            let mut text = String::new();
            entries.iter().flatten().for_each(|b| words(b, &mut text));
            let text = text.to_lowercase();
            let named = tray.iter().filter(|id| {
                let name = catalogue.item(id).map(Item::name);
                text.contains(&format!("item:{id} "))
                    || name.is_some_and(|n| text.contains(&n.to_lowercase()))
            });
            let named: Vec<&str> = named.map(|id| id.as_str()).collect();
            if named.len() >= RETYPED {
                faults.push(format!(
                    "a list in the lesson '{}' retypes the tray ({}); write '::tray' instead",
                    lesson.id,
                    named.join(", ")
                ));
            }
        }
    }
    faults
}

fn collect<'c>(catalogue: &'c Catalogue, id: &ProcedureId, into: &mut BTreeSet<&'c ItemId>) {
    let Some(procedure) = catalogue.procedure(id) else {
        return;
    };
    for step in &procedure.steps {
        into.extend(step.uses.0.iter().chain(&step.at_hand.0).map(|u| &u.item));
        if let Some(included) = &step.include {
            collect(catalogue, included, into);
        }
    }
}

/// The text of a block; links to items as `item:` and the id.
fn words(block: &Block, into: &mut String) {
    match block {
        Block::Heading(_, text) | Block::Paragraph(text) => inlines(text, into),
        Block::List(_, entries) => entries.iter().flatten().for_each(|b| words(b, into)),
        Block::Aside(inner) => inner.iter().for_each(|b| words(b, into)),
        _ => {}
    }
    into.push('\n');
}

fn inlines(all: &[Inline], into: &mut String) {
    for inline in all {
        match inline {
            Inline::Text(text) => into.push_str(text),
            Inline::Item(id, inner) => {
                into.push_str(" item:");
                into.push_str(id.as_str());
                into.push(' ');
                inlines(inner, into);
            }
            Inline::Emphasis(inner)
            | Inline::Strong(inner)
            | Inline::Link(_, inner)
            | Inline::Procedure(_, inner) => inlines(inner, into),
            Inline::Source(_) => {}
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{faults, orphans, retyped};
    use catalogue::{
        Catalogue,
        lesson::{Block, Inline},
    };
    use std::path::Path;

    fn taught() -> Catalogue {
        let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../content");
        catalogue::source::read(&content).expect("content without faults")
    }

    #[test]
    fn what_is_taught_is_whole() {
        assert_eq!(faults(&taught()), Vec::<String>::new());
    }

    #[test]
    fn an_item_out_of_use_and_a_tray_typed_once_more_are_found() {
        let mut catalogue = taught();
        let entry = |text: &str| vec![Block::Paragraph(vec![Inline::Text(text.into())])];
        let list = ["Mouth mirror", "Explorer", "Cotton pliers", "Clamp forceps"].map(entry);
        let lesson = catalogue
            .lessons
            .iter_mut()
            .find(|l| l.id.as_str() == "amalgam-restoration")
            .expect("a lesson");
        lesson.blocks.push(Block::List(false, list[..3].to_vec()));
        assert!(retyped(&catalogue).is_empty(), "three are no tray");
        let lesson = catalogue
            .lessons
            .iter_mut()
            .find(|l| l.id.as_str() == "amalgam-restoration")
            .expect("a lesson");
        lesson.blocks.push(Block::List(false, list.to_vec()));
        assert_eq!(retyped(&catalogue).len(), 1);
        for procedure in &mut catalogue.procedures {
            for step in &mut procedure.steps {
                step.uses.0.retain(|u| u.item.as_str() != "amalgam-carrier");
            }
        }
        assert!(orphans(&catalogue)[0].contains("amalgam-carrier"));
    }

    #[test]
    fn an_empty_catalogue_is_not_whole() {
        assert_eq!(faults(&Catalogue::default()).len(), 4);
    }
}
