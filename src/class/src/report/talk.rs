//! Who needs a talk: seats with many answers that could hurt somebody, and
//! seats of which nothing is known. The bounds are ours (common practice, no source).

use super::seat::SeatReport;
use crate::assignment::Seat;
use core::fmt;
use std::collections::HashSet;

/// From so many harmful answers a talk is due, however many were asked.
const MANY: u32 = 3;

/// Why a talk is due.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// Answers that could hurt somebody.
    Harmful {
        /// How many.
        count: u32,
        /// Of how many.
        asked: u32,
    },
    /// More than half was left open.
    MostlyOpen {
        /// How many.
        blank: u32,
        /// Of how many.
        asked: u32,
    },
    /// Nothing was handed in.
    NothingHandedIn,
}

/// A talk that is due.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Talk {
    /// With whom.
    pub seat: Seat,
    /// Why.
    pub why: Why,
}

impl fmt::Display for Why {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Harmful { count, asked } => {
                write!(f, "{count} of {asked} answers could have hurt somebody.")
            }
            Self::MostlyOpen { blank, asked } => {
                write!(f, "{blank} of {asked} were left open: too little to go by.")
            }
            Self::NothingHandedIn => {
                f.write_str("Nothing was handed in: there is nothing to go by.")
            }
        }
    }
}

/// The talks that are due, the most pressing first. `expected` are the seats
/// that should have handed in.
pub(super) fn talks(seats: &[SeatReport], expected: &[Seat]) -> Vec<Talk> {
    let harmful = |seat: &SeatReport| {
        let (count, asked) = (seat.all.harmful, seat.all.asked);
        // Two are many where they are a fifth of what was asked.
        let many = count >= MANY || (count == 2 && 5 * count >= asked);
        many.then_some(Talk {
            seat: seat.seat,
            why: Why::Harmful { count, asked },
        })
    };
    let open = |seat: &SeatReport| {
        let (blank, asked) = (seat.all.blank, seat.all.asked);
        (2 * blank > asked).then_some(Talk {
            seat: seat.seat,
            why: Why::MostlyOpen { blank, asked },
        })
    };
    let mut talks: Vec<Talk> = seats.iter().filter_map(harmful).collect();
    talks.sort_by_key(|talk| match talk.why {
        Why::Harmful { count, .. } => u32::MAX - count,
        _ => u32::MAX,
    });
    talks.extend(seats.iter().filter_map(open));
    let there: HashSet<Seat> = seats.iter().map(|s| s.seat).collect();
    talks.extend(
        expected
            .iter()
            .filter(|seat| !there.contains(seat))
            .map(|&seat| Talk {
                seat,
                why: Why::NothingHandedIn,
            }),
    );
    talks
}
