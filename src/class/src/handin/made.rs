//! A mix in a hand-in: what the hand did, as few bytes as it takes.
//!
//! Almost all that a hand does is to work the mass, now harder and now more
//! lightly: that takes one byte for how, and one or two for how long.
//!
//! ```text
//! 1 a vvvv 00   worked: over a wide area or not, how hard in tens; how long
//! 0 .......     another action, by its number; what belongs to it
//! ```
//!
//! Numbers are kept as they are, so that the mix can be made again exactly:
//! whole ones doubled, and others in their smallest unit, doubled and one more.

use crate::task::Made;
use crate::wire::bytes::{Reader, Writer};
use catalogue::kinetics::{Area, Surface};
use catalogue::quantity::Milli;
use clinic::mixing::{
    Action, Celsius, Millis, PerCent, Room, Seconds, Share, Stroke, Units, Vigour,
};

/// The most actions of a mix.
const MOST: usize = 5000;

/// Says that the byte tells of work.
const WORKED: u8 = 1 << 7;
const WIDE: u8 = 1 << 6;

/// The step in which screens let time pass, in milliseconds.
const STEP: u32 = 20;

/// Writes a mix.
pub fn write(made: &Made, to: &mut Writer) {
    to.number(u64::from(made.version));
    milli(made.room.temperature.into(), to);
    milli(made.room.humidity.into(), to);
    to.count(made.actions.len());
    for action in &made.actions {
        write_action(*action, to);
    }
}

/// Reads a mix.
pub fn read(reader: &mut Reader<'_>) -> Option<Made> {
    let version = reader.narrow()?;
    let room = Room {
        temperature: Celsius::from(read_milli(reader)?),
        humidity: PerCent::from(read_milli(reader)?),
    };
    let count = reader.count().filter(|&count| count <= MOST)?;
    let actions: Option<Vec<Action>> = (0..count).map(|_| read_action(reader)).collect();
    Some(Made {
        version,
        room,
        actions: actions?,
    })
}

fn write_action(action: Action, to: &mut Writer) {
    match action {
        Action::Spatulate { stroke, lasts } => {
            let wide = if stroke.area == Area::Wide { WIDE } else { 0 };
            let hard = u8::from(stroke.vigour) / 10;
            to.byte(WORKED | wide | hard << 2);
            millis(lasts, to);
        }
        Action::Wait(lasts) => millis(lasts, to.byte(0)),
        Action::BringIn(share) => milli(share.into(), to.byte(1)),
        Action::DispensePowder(units) => milli(units.into(), to.byte(2)),
        Action::DispenseLiquid(units) => milli(units.into(), to.byte(3)),
        Action::LayOut {
            surface,
            temperature,
        } => {
            to.byte(4).byte(match surface {
                Surface::Pad => 0,
                Surface::Slab => 1,
                Surface::Bowl => 2,
            });
            milli(temperature.into(), to);
        }
        Action::WaterAt(temperature) => milli(temperature.into(), to.byte(5)),
        Action::Test => {
            to.byte(6);
        }
        Action::AddPowder(units) => milli(units.into(), to.byte(7)),
        Action::AddLiquid(units) => milli(units.into(), to.byte(8)),
        Action::DrawOff(share) => milli(share.into(), to.byte(9)),
        Action::Cure(lasts) => millis(lasts, to.byte(10)),
        Action::Discard => {
            to.byte(11);
        }
        Action::HandOver { ready, placing } => {
            milli(ready.into(), to.byte(12));
            milli(placing.into(), to);
        }
    }
}

fn read_action(reader: &mut Reader<'_>) -> Option<Action> {
    let head = reader.byte()?;
    if head & WORKED != 0 {
        let hard = head >> 2 & 15;
        if head & 3 != 0 || hard > 10 {
            return None;
        }
        let area = if head & WIDE == 0 {
            Area::Small
        } else {
            Area::Wide
        };
        let vigour = Vigour::per_cent(hard * 10);
        return Some(Action::Spatulate {
            stroke: Stroke { vigour, area },
            lasts: read_millis(reader)?,
        });
    }
    let mut number = || read_milli(reader);
    Some(match head {
        0 => Action::Wait(read_millis(reader)?),
        1 => Action::BringIn(Share::from(number()?)),
        2 => Action::DispensePowder(Units::from(number()?)),
        3 => Action::DispenseLiquid(Units::from(number()?)),
        4 => Action::LayOut {
            surface: match reader.byte()? {
                0 => Surface::Pad,
                1 => Surface::Slab,
                2 => Surface::Bowl,
                _ => return None,
            },
            temperature: Celsius::from(read_milli(reader)?),
        },
        5 => Action::WaterAt(Celsius::from(number()?)),
        6 => Action::Test,
        7 => Action::AddPowder(Units::from(number()?)),
        8 => Action::AddLiquid(Units::from(number()?)),
        9 => Action::DrawOff(Share::from(number()?)),
        10 => Action::Cure(read_millis(reader)?),
        11 => Action::Discard,
        12 => Action::HandOver {
            ready: Seconds::from(number()?),
            placing: Seconds::from(number()?),
        },
        _ => return None,
    })
}

/// A time: in steps where it has whole ones, else in milliseconds.
fn millis(Millis(time): Millis, to: &mut Writer) {
    to.number(if time.is_multiple_of(STEP) {
        u64::from(time / STEP) * 2
    } else {
        u64::from(time) * 2 + 1
    });
}

fn read_millis(reader: &mut Reader<'_>) -> Option<Millis> {
    let number = reader.number()?;
    let size = u32::try_from(number / 2).ok()?;
    let step = if number.is_multiple_of(2) { STEP } else { 1 };
    size.checked_mul(step).map(Millis)
}

/// A quantity: in ones where it has whole ones, else in thousandths.
fn milli(Milli(thousandths): Milli, to: &mut Writer) {
    let thousandths = i64::from(thousandths);
    to.signed(if thousandths % 1000 == 0 {
        thousandths / 1000 * 2
    } else {
        thousandths * 2 + 1
    });
}

fn read_milli(reader: &mut Reader<'_>) -> Option<Milli> {
    let number = reader.signed()?;
    let thousandths = if number % 2 == 0 {
        (number / 2).checked_mul(1000)?
    } else {
        (number - 1) / 2
    };
    i32::try_from(thousandths).ok().map(Milli)
}

#[cfg(test)]
pub(super) mod tests {
    use super::*;
    use proptest::prelude::*;

    fn action() -> impl Strategy<Value = Action> {
        let time = prop_oneof![0..2000_u32, (0..2000_u32).prop_map(|it| it * STEP)];
        let time = time.prop_map(Millis);
        let number = prop_oneof![any::<i32>(), (-1000..1000).prop_map(|it| it * 1000)];
        let number = number.prop_map(Milli);
        (0..15_u8, 0..=100_u8, time, number.clone(), number).prop_map(
            |(kind, hard, lasts, one, other)| match kind {
                0 => Action::Wait(lasts),
                1 => Action::BringIn(one.into()),
                2 => Action::DispensePowder(one.into()),
                3 => Action::DispenseLiquid(one.into()),
                4 => Action::LayOut {
                    surface: [Surface::Pad, Surface::Slab, Surface::Bowl][usize::from(hard % 3)],
                    temperature: one.into(),
                },
                5 => Action::WaterAt(one.into()),
                6 => Action::Test,
                7 => Action::AddPowder(one.into()),
                8 => Action::AddLiquid(one.into()),
                9 => Action::DrawOff(one.into()),
                10 => Action::Cure(lasts),
                11 => Action::Discard,
                12 => Action::HandOver {
                    ready: one.into(),
                    placing: other.into(),
                },
                odd => Action::Spatulate {
                    stroke: Stroke {
                        vigour: Vigour::per_cent(hard),
                        area: if odd == 13 { Area::Small } else { Area::Wide },
                    },
                    lasts,
                },
            },
        )
    }

    pub fn made() -> impl Strategy<Value = Made> {
        let actions = prop::collection::vec(action(), 0..30);
        (any::<u16>(), any::<i32>(), any::<i32>(), actions).prop_map(
            |(version, warm, damp, actions)| Made {
                version,
                room: Room {
                    temperature: Milli(warm).into(),
                    humidity: Milli(damp).into(),
                },
                actions,
            },
        )
    }

    /// A minute of a hand that changes its stroke every half second.
    #[test]
    fn a_restless_minute_takes_few_bytes() {
        let worked = |vigour| Action::Spatulate {
            stroke: Stroke {
                vigour,
                area: Area::Wide,
            },
            lasts: Millis(500),
        };
        let made = Made {
            version: 1,
            room: Room::usual(),
            actions: [Vigour::FIRM, Vigour::GENTLE].map(worked).repeat(60),
        };
        let mut writer = Writer::default();
        write(&made, &mut writer);
        assert!(writer.0.len() <= 246, "{}", writer.0.len());
        assert_eq!(read(&mut Reader(&writer.0)), Some(made));
    }
}
