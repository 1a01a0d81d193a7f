//! A hand over the pad: from the way of a pointer to how hard and how wide the
//! mass is worked. Lengths are in units of the drawing.

use catalogue::kinetics::Area;
use clinic::mixing::{Stroke, Vigour};

/// How long a hand is watched before its stroke is judged, in milliseconds.
/// Shorter, and every turn of the hand would be another stroke.
const WATCHED: f64 = 300.0;

/// Below this speed a hand rests, in units a second.
const RESTS: f64 = 8.0;
/// Up to this speed it works lightly.
const LIGHTLY: f64 = 70.0;
/// Up to this speed it works firmly.
const FIRMLY: f64 = 240.0;
/// How far its strokes reach at least when it works over a wide area.
const WIDE: f64 = 40.0;

/// A hand that holds the spatula on the pad.
#[derive(Clone, Copy, Debug)]
pub struct Hand {
    /// Where the spatula is.
    pub at: (f64, f64),
    /// How it works just now; none while it rests.
    pub stroke: Option<Stroke>,
    since: f64,
    way: f64,
    least: (f64, f64),
    most: (f64, f64),
}

impl Hand {
    /// A hand that was put down. Until more is seen of it, it is taken to work
    /// firmly, over the area that is usual.
    pub fn down(at: (f64, f64), now: f64, usual: Area) -> Self {
        Self {
            at,
            stroke: Some(Stroke {
                vigour: Vigour::FIRM,
                area: usual,
            }),
            since: now,
            way: 0.0,
            least: at,
            most: at,
        }
    }

    /// It went on to here.
    pub fn moved(&mut self, to: (f64, f64)) {
        self.way += (to.0 - self.at.0).hypot(to.1 - self.at.1);
        self.at = to;
        self.least = (self.least.0.min(to.0), self.least.1.min(to.1));
        self.most = (self.most.0.max(to.0), self.most.1.max(to.1));
    }

    /// Judges how it works, when it was watched for long enough.
    pub fn judge(&mut self, now: f64) {
        let watched = now - self.since;
        if watched < WATCHED {
            return;
        }
        let speed = self.way * 1000.0 / watched;
        let reach = (self.most.0 - self.least.0).max(self.most.1 - self.least.1);
        self.stroke = stroke(speed, reach);
        self.since = now;
        self.way = 0.0;
        self.least = self.at;
        self.most = self.at;
    }
}

fn stroke(speed: f64, reach: f64) -> Option<Stroke> {
    let vigour = match speed {
        speed if speed < RESTS => return None,
        speed if speed < LIGHTLY => Vigour::GENTLE,
        speed if speed < FIRMLY => Vigour::FIRM,
        _ => Vigour::HARD,
    };
    let area = if reach < WIDE {
        Area::Small
    } else {
        Area::Wide
    };
    Some(Stroke { vigour, area })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_stroke_follows_from_speed_and_reach() {
        for (speed, reach, works) in [
            (0.0, 0.0, None),
            (40.0, 10.0, Some((Vigour::GENTLE, Area::Small))),
            (120.0, 20.0, Some((Vigour::FIRM, Area::Small))),
            (200.0, 60.0, Some((Vigour::FIRM, Area::Wide))),
            (400.0, 60.0, Some((Vigour::HARD, Area::Wide))),
        ] {
            let seen = stroke(speed, reach).map(|it| (it.vigour, it.area));
            assert_eq!(seen, works, "{speed} {reach}");
        }
    }

    #[test]
    fn a_hand_is_judged_by_its_last_third_of_a_second() {
        let mut hand = Hand::down((10.0, 10.0), 0.0, Area::Small);
        hand.moved((70.0, 10.0));
        hand.judge(299.0);
        assert_eq!(hand.stroke.map(|it| it.area), Some(Area::Small));
        hand.judge(300.0);
        assert_eq!(hand.stroke.map(|it| it.area), Some(Area::Wide));
        hand.judge(600.0);
        assert_eq!(hand.stroke, None);
    }
}
