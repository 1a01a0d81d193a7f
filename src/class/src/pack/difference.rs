//! What a pack changes: thing by thing, and line by line.

use catalogue::Catalogue;
use std::collections::BTreeMap;

/// What became of a thing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Change {
    /// It is new.
    Added,
    /// It is another than before.
    Changed,
    /// It is there no more.
    Gone,
}

/// A thing that a pack changes.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Thing {
    /// Its kind: what its table in content/ is called.
    pub kind: &'static str,
    /// What became of it.
    pub change: Change,
    /// Its id.
    pub id: String,
}

/// What differs between two catalogues, by kind.
pub fn things(before: &Catalogue, after: &Catalogue) -> Vec<Thing> {
    let mut all = Vec::new();
    macro_rules! compare {
        ($($kind:literal $list:ident;)*) => {$(
            compare($kind, &before.$list, &after.$list, |each| each.id.as_str(), &mut all);
        )*};
    }
    compare! {
        "procedure" procedures;
        "lesson" lessons;
        "instrument" instruments;
        "material" materials;
        "case" cases;
        "rule" rules;
        "plan" plans;
        "card" cards;
        "source" sources;
    }
    compare(
        "drawing",
        &before.drawings,
        &after.drawings,
        |each| each.0.as_str(),
        &mut all,
    );
    all
}

fn compare<T: PartialEq>(
    kind: &'static str,
    before: &[T],
    after: &[T],
    id: fn(&T) -> &str,
    into: &mut Vec<Thing>,
) {
    let old: BTreeMap<&str, &T> = before.iter().map(|each| (id(each), each)).collect();
    let new: BTreeMap<&str, &T> = after.iter().map(|each| (id(each), each)).collect();
    let mut found: Vec<Thing> = new
        .iter()
        .filter_map(|(id, each)| match old.get(id) {
            None => Some((Change::Added, id)),
            Some(was) if was != each => Some((Change::Changed, id)),
            Some(_) => None,
        })
        .chain(
            old.keys()
                .filter(|id| !new.contains_key(**id))
                .map(|id| (Change::Gone, id)),
        )
        .map(|(change, id)| Thing {
            kind,
            change,
            id: (*id).to_owned(),
        })
        .collect();
    found.sort();
    into.extend(found);
}

/// A line of a file beside what was there before.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Line<'t> {
    /// It stands in both.
    Same(&'t str),
    /// It stood there before.
    Gone(&'t str),
    /// It is new.
    New(&'t str),
}

/// The most changed lines that are matched one with another. Beyond that the old
/// lines go and the new ones come, which is as true and takes no time.
const MOST_CHANGED: usize = 1500;

/// A text line by line beside what it was before. As few lines as can be come and go.
pub fn lines<'t>(before: &'t str, after: &'t str) -> Vec<Line<'t>> {
    let (old, new): (Vec<&str>, Vec<&str>) = (before.lines().collect(), after.lines().collect());
    let alike = |(a, b): &(&&str, &&str)| a == b;
    let head = old.iter().zip(&new).take_while(alike).count();
    let tail = old[head..].iter().rev().zip(new[head..].iter().rev());
    let tail = tail.take_while(alike).count();
    let (inner_old, inner_new) = (&old[head..old.len() - tail], &new[head..new.len() - tail]);
    let mut all: Vec<Line<'t>> = old[..head].iter().map(|line| Line::Same(line)).collect();
    if inner_old.len().max(inner_new.len()) > MOST_CHANGED {
        all.extend(inner_old.iter().map(|line| Line::Gone(line)));
        all.extend(inner_new.iter().map(|line| Line::New(line)));
    } else {
        matched(inner_old, inner_new, &mut all);
    }
    all.extend(old[old.len() - tail..].iter().map(|line| Line::Same(line)));
    all
}

/// The longest lines in common, by the table of all beginnings.
fn matched<'t>(old: &[&'t str], new: &[&'t str], into: &mut Vec<Line<'t>>) {
    let width = new.len() + 1;
    // How many lines the rests from here on have in common.
    let mut common = vec![0_u16; (old.len() + 1) * width];
    for i in (0..old.len()).rev() {
        for j in (0..new.len()).rev() {
            common[i * width + j] = if old[i] == new[j] {
                common[(i + 1) * width + j + 1] + 1
            } else {
                common[(i + 1) * width + j].max(common[i * width + j + 1])
            };
        }
    }
    let (mut i, mut j) = (0, 0);
    while i < old.len() || j < new.len() {
        if i < old.len() && j < new.len() && old[i] == new[j] {
            into.push(Line::Same(old[i]));
            (i, j) = (i + 1, j + 1);
        } else if j == new.len()
            || (i < old.len() && common[(i + 1) * width + j] >= common[i * width + j + 1])
        {
            into.push(Line::Gone(old[i]));
            i += 1;
        } else {
            into.push(Line::New(new[j]));
            j += 1;
        }
    }
}
