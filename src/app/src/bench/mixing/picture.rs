//! The mass as it is drawn: from what is seen of it to outlines in units of
//! the drawing. The same look, worked as far, always gives the same picture.

use clinic::mixing::{Look, Offer};
use std::f64::consts::{PI, TAU};

/// The middle of the surface.
pub const MIDDLE: (f64, f64) = (60.0, 40.0);
/// The line on which the side view stands.
pub const GROUND: f64 = 96.0;
/// How much of the drawing a mass that has run all over takes.
const WIDEST: f64 = 62.0;
/// How high the side view may be.
const HIGHEST: f64 = 13.0;

/// How many units of the drawing a millimetre takes, so that the usual amount
/// has room when it runs.
pub fn scale(offer: &Offer) -> f64 {
    let part = |measure: &clinic::mixing::offer::Measure| measure.grams.get() * measure.usual.get();
    let cubic_mm = (part(&offer.powder) + part(&offer.liquid)) * 500.0;
    // As wide as a thin mass lies: a twenty-fifth as high as it is wide.
    WIDEST / (cubic_mm / (PI / 4.0 * 0.04)).cbrt().max(1.0)
}

/// A number between 0 and 1 that looks drawn by chance and never changes.
fn chance(index: u32) -> f64 {
    let x = (f64::from(index) * 12.9898).sin() * 43758.547;
    x - x.floor()
}

/// The mass from above.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Mass {
    /// Half its width; 0 where there is none.
    pub radius: f64,
    /// Its outline.
    pub outline: String,
    /// What is not mixed in: specks, or streaks.
    pub unmixed: String,
    /// Cracks in it, and crumbs beside it.
    pub cracks: String,
}

/// The mass from above. `worked` is how far the spatula went through it in all,
/// and `pull` is where the spatula is, if it is in it.
pub fn mass(look: &Look, scale: f64, worked: f64, pull: Option<(f64, f64)>) -> Mass {
    let radius = (look.spread.get() * scale / 2.0).clamp(0.0, 34.0);
    if look.consistency.is_none() || radius <= 0.0 {
        return Mass::default();
    }
    let ring = ring(look, radius, worked, pull);
    Mass {
        radius,
        outline: smooth(&ring),
        unmixed: if look.streaks {
            streaks(look.graininess, radius, worked)
        } else {
            specks(look.graininess, radius, worked)
        },
        cracks: cracks(look.cracks, radius),
    }
}

/// How many points an outline has.
const POINTS: u32 = 40;

fn ring(look: &Look, radius: f64, worked: f64, pull: Option<(f64, f64)>) -> Vec<(f64, f64)> {
    let turn = worked / 40.0;
    let towards = pull.map(|at| {
        let (x, y) = (at.0 - MIDDLE.0, at.1 - MIDDLE.1);
        (y.atan2(x), x.hypot(y))
    });
    let point = |index: u32| {
        let angle = TAU * f64::from(index) / f64::from(POINTS);
        let waves = 0.05 * (2.0 * angle + turn).sin() + 0.035 * (3.0 * angle - 1.7 * turn).sin();
        let broken = look.cracks * 0.16 * (chance(index) - 0.5);
        let drawn = towards.map_or(0.0, |(to, far)| {
            let along = (angle - to).cos().max(0.0).powi(6);
            let reach = ((far - radius * 0.6) / radius.max(1.0)).clamp(0.0, 0.5);
            (0.15 + 0.55 * look.stickiness) * reach * along
        });
        let r = radius * (1.0 + waves + broken + drawn);
        (
            MIDDLE.0 + r * angle.cos(),
            MIDDLE.1 + 0.86 * r * angle.sin(),
        )
    };
    (0..POINTS).map(point).collect()
}

/// A closed outline through the middles between points, which bends at each.
fn smooth(ring: &[(f64, f64)]) -> String {
    use std::fmt::Write;
    let middle = |a: (f64, f64), b: (f64, f64)| (f64::midpoint(a.0, b.0), f64::midpoint(a.1, b.1));
    let (Some(first), Some(last)) = (ring.first(), ring.last()) else {
        return String::new();
    };
    let start = middle(*last, *first);
    let mut path = format!("M{:.1} {:.1}", start.0, start.1);
    for (at, point) in ring.iter().enumerate() {
        let next = ring[(at + 1) % ring.len()];
        let to = middle(*point, next);
        // Writing into a text cannot fail.
        let _ = write!(
            path,
            "Q{:.1} {:.1} {:.1} {:.1}",
            point.0, point.1, to.0, to.1
        );
    }
    path + "Z"
}

/// Where the unmixed part with this number lies: spread evenly, and carried
/// round by the spatula.
fn carried(index: u32, radius: f64, worked: f64) -> (f64, f64, f64) {
    let far = (chance(index) * 0.82).sqrt() * radius * 0.92;
    let angle = f64::from(index) * 2.399_963 + worked / (18.0 + far);
    (
        MIDDLE.0 + far * angle.cos(),
        MIDDLE.1 + 0.86 * far * angle.sin(),
        angle,
    )
}

fn count(share: f64, all: f64) -> u32 {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a share of a few dozen"
    )]
    let count = (share.clamp(0.0, 1.0) * all).ceil() as u32;
    count
}

fn specks(share: f64, radius: f64, worked: f64) -> String {
    use std::fmt::Write;
    let mut path = String::new();
    for index in 0..count(share, 70.0) {
        let (x, y, _) = carried(index, radius, worked);
        let size = 0.7 + 1.5 * chance(index + 200) * share.sqrt();
        let _ = write!(
            path,
            "M{x:.1} {y:.1}l{size:.1} {:.1} {:.1} {size:.1}-{size:.1} {:.1}Z",
            size * 0.4,
            -size * 0.6,
            -size * 0.5
        );
    }
    path
}

fn streaks(share: f64, radius: f64, worked: f64) -> String {
    use std::fmt::Write;
    let mut path = String::new();
    for index in 0..count(share, 26.0) {
        let (x, y, angle) = carried(index, radius * 0.86, worked);
        let long = radius * (0.14 + 0.3 * chance(index + 90)) * share.sqrt();
        let wide = 0.6 + 1.6 * share * chance(index + 150);
        let (dx, dy) = (-angle.sin() * long, angle.cos() * long);
        let (nx, ny) = (angle.cos() * wide, angle.sin() * wide);
        let _ = write!(
            path,
            "M{x:.1} {y:.1}q{:.1} {:.1} {dx:.1} {dy:.1}q{:.1} {:.1} {:.1} {:.1}Z",
            dx / 2.0 + nx,
            dy / 2.0 + ny,
            -dx / 2.0 - nx,
            -dy / 2.0 - ny,
            -dx,
            -dy
        );
    }
    path
}

fn cracks(share: f64, radius: f64) -> String {
    use std::fmt::Write;
    let mut path = String::new();
    for index in 0..count(share, 9.0) {
        let angle = TAU * (f64::from(index) / 9.0 + 0.05 * chance(index));
        let at = |far: f64, off: f64| {
            let a = angle + off;
            (
                MIDDLE.0 + far * radius * a.cos(),
                MIDDLE.1 + 0.86 * far * radius * a.sin(),
            )
        };
        let depth = 1.0 - share * (0.4 + 0.4 * chance(index + 7));
        let (a, b, c) = (
            at(1.0, 0.0),
            at(f64::midpoint(depth, 1.0), 0.12),
            at(depth, -0.05),
        );
        let _ = write!(
            path,
            "M{:.1} {:.1}L{:.1} {:.1} {:.1} {:.1}",
            a.0, a.1, b.0, b.1, c.0, c.1
        );
    }
    for index in 0..count((share - 0.4) * 1.6, 12.0) {
        let angle = TAU * chance(index + 40);
        let far = radius * (1.12 + 0.4 * chance(index + 60));
        let (x, y) = (
            MIDDLE.0 + far * angle.cos(),
            MIDDLE.1 + 0.86 * far * angle.sin(),
        );
        let _ = write!(path, "M{x:.1} {y:.1}l1.4-.6 .5 1.3-1.5 .5Z");
    }
    path
}

/// The mass from the side: a flat film, or a lump that stands.
pub fn side(look: &Look, scale: f64) -> String {
    if look.consistency.is_none() {
        return String::new();
    }
    let half = (look.spread.get() * scale / 2.0).clamp(0.5, 34.0);
    let height = (look.height.get() * scale).clamp(0.6, HIGHEST);
    let shoulder = half * (0.35 + 0.5 * (height / half).min(1.0));
    format!(
        "M{:.1} {GROUND}C{:.1} {:.1} {:.1} {:.1} {} {:.1}S{:.1} {:.1} {:.1} {GROUND}Z",
        MIDDLE.0 - half,
        MIDDLE.0 - half,
        GROUND - height * 0.7,
        MIDDLE.0 - shoulder,
        GROUND - height,
        MIDDLE.0,
        GROUND - height,
        MIDDLE.0 + half,
        GROUND - height * 0.7,
        MIDDLE.0 + half,
    )
}

/// How high the top of the side view is, and how long the string on it, when
/// the spatula is lifted.
pub fn string(look: &Look, scale: f64) -> (f64, f64) {
    let height = (look.height.get() * scale).clamp(0.6, HIGHEST);
    // Strings are drawn smaller than life: the longest would leave the drawing.
    let long = (look.string.get() * 0.35)
        .min(GROUND - height - 78.0)
        .max(0.0);
    (GROUND - height, long)
}

/// A heap of what lies beside the mass, or drops of it; `share` of what was put out.
pub fn heap(share: f64, at: (f64, f64), drops: bool) -> String {
    use std::fmt::Write;
    if share <= 0.0 {
        return String::new();
    }
    if drops {
        let mut path = String::new();
        for index in 0..count(share, 3.0) {
            let x = at.0 + 6.5 * f64::from(index) - 6.5;
            let y = at.1 + 2.0 * chance(index);
            let _ = write!(
                path,
                "M{:.1} {y:.1}a3 2.5 0 1 0 6 0a3 2.5 0 1 0-6 0Z",
                x - 3.0
            );
        }
        return path;
    }
    let r = 11.0 * share.sqrt();
    let ring: Vec<(f64, f64)> = (0..18)
        .map(|index| {
            let angle = TAU * f64::from(index) / 18.0;
            let r = r * (0.86 + 0.28 * chance(index + 300));
            (at.0 + r * angle.cos(), at.1 + 0.8 * r * angle.sin())
        })
        .collect();
    smooth(&ring)
}

/// Drops of water that stand on a slab below the dew point.
pub fn dew(share: f64) -> String {
    use std::fmt::Write;
    let mut path = String::new();
    for index in 0..count(share, 40.0) {
        let (x, y) = (
            8.0 + 104.0 * chance(index + 400),
            8.0 + 64.0 * chance(index + 500),
        );
        let _ = write!(path, "M{x:.1} {y:.1}a.8 .8 0 1 0 1.6 0a.8 .8 0 1 0-1.6 0Z");
    }
    path
}
