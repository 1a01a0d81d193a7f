//! Drawings compared by what can be seen when nothing is written on them.

use drawing::{Drawing, Piece};

/// The drawing without its labels and engraved numbers.
pub(super) fn bare(drawing: &Drawing) -> Drawing {
    let mut bare = drawing.clone();
    match &mut bare {
        Drawing::Hand(hand) => hand.handle.mark.clear(),
        Drawing::Bottle(bottle) => bottle.label.clear(),
        Drawing::Tube(tube) => tube.label.clear(),
        Drawing::PasteSyringe(syringe) => syringe.label.clear(),
        Drawing::Capsule(capsule) => capsule.label.clear(),
        Drawing::Figure(figure) => {
            for pieces in [&mut figure.pieces, &mut figure.close] {
                pieces.retain(|p| !matches!(p, Piece::Words { .. }));
            }
        }
        Drawing::Group(members) => members.iter_mut().for_each(|m| *m = self::bare(m)),
        Drawing::Hinged(_)
        | Drawing::Bur(_)
        | Drawing::Needle(_)
        | Drawing::Clamp(_)
        | Drawing::CanalFile(_) => {}
    }
    bare
}

/// By how much a size has to differ before it is seen without a ruler.
const SEEN: f32 = 1.3;

/// Whether two bare drawings can be told apart by eye.
pub(super) fn apart(a: &Drawing, b: &Drawing) -> bool {
    let sizes = |pairs: &[(f32, f32)]| pairs.iter().any(|(x, y)| x.max(*y) > SEEN * x.min(*y));
    match (a, b) {
        (Drawing::Bur(a), Drawing::Bur(b)) => {
            a.head != b.head
                || a.shank != b.shank
                || a.cutting != b.cutting
                || sizes(&[
                    (a.diameter, b.diameter),
                    (a.head_length, b.head_length),
                    (a.length, b.length),
                ])
        }
        (Drawing::CanalFile(a), Drawing::CanalFile(b)) => a.flutes != b.flutes,
        (Drawing::Needle(a), Drawing::Needle(b)) => sizes(&[(a.length, b.length)]),
        (Drawing::Bottle(a), Drawing::Bottle(b)) => {
            a.closure != b.closure
                || a.dark != b.dark
                || sizes(&[(a.width / a.height, b.width / b.height)])
        }
        (Drawing::Tube(a), Drawing::Tube(b)) => sizes(&[(a.width / a.length, b.width / b.length)]),
        (Drawing::PasteSyringe(a), Drawing::PasteSyringe(b)) => {
            a.dark != b.dark || sizes(&[(a.diameter / a.length, b.diameter / b.length)])
        }
        (Drawing::Capsule(a), Drawing::Capsule(b)) => {
            sizes(&[(a.diameter / a.length, b.diameter / b.length)])
        }
        _ => a != b,
    }
}
