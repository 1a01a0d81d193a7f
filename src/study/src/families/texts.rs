//! Facts of procedures that several families read.

use super::Desk;
use catalogue::procedures::{Procedure, Step, Use};
use clinic::case::Seed;

/// What the own steps of a procedure use, each item once, at its first use.
pub(super) fn own_uses(procedure: &Procedure) -> Vec<&Use> {
    let mut uses: Vec<&Use> = Vec::new();
    for each in procedure.steps.iter().flat_map(|s| &s.uses.0) {
        if !uses.iter().any(|u| u.item == each.item) {
            uses.push(each);
        }
    }
    uses
}

/// The own steps of a procedure that say what is done.
pub(super) fn acts(procedure: &Procedure) -> impl Iterator<Item = &Step> {
    procedure.steps.iter().filter(|s| !s.does.is_empty())
}

/// Facts named by their place in a list, counted from 1.
pub(super) fn places(owner: &str, count: usize) -> impl Iterator<Item = String> + use<'_> {
    (1..=count).map(move |n| format!("{owner}.{n}"))
}

/// What stands at a place counted from 1.
pub(super) fn at<'l, T>(list: &'l [T], place: &str) -> Option<&'l T> {
    list.get(place.parse::<usize>().ok()?.checked_sub(1)?)
}

/// What some other procedures use, for where one's own uses are too few or too alike.
pub(super) fn elsewhere<'d>(desk: &'d Desk, own: &Procedure, chance: &mut Seed) -> Vec<&'d Use> {
    let all = &desk.catalogue().procedures;
    let start = chance.below(all.len());
    let others = all.iter().cycle().skip(start).take(all.len().min(6));
    others
        .filter(|p| p.id != own.id)
        .flat_map(own_uses)
        .collect()
}
