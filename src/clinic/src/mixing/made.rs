//! What was really made: what went into a mix, on what, for how long, and how it
//! stood at its hand-over, each beside what is wanted.

use super::{
    causes::{capital, counted},
    feel,
    mix::Mix,
    units::{Celsius, Seconds},
};
use catalogue::kinetics::Surface;

/// One line of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Line {
    /// What it is about: `Powder`.
    pub what: String,
    /// What was done: `2 level scoops`.
    pub done: String,
    /// What is wanted; empty where nothing is.
    pub wanted: String,
}

impl Mix {
    /// What was made, for a mix that was handed over; empty before.
    pub fn made(&self) -> Vec<Line> {
        let Some(handed) = self.handed else {
            return Vec::new();
        };
        let mut lines = self.parts();
        lines.push(self.surface());
        let span = self.recipe.mix_seconds();
        lines.push(line(
            "Worked for",
            Seconds::of(self.mass.worked).whole(),
            format!("{} to {} s", span.from, span.to),
        ));
        if let Some(consistency) = self.consistency() {
            let wanted = feel::word(self.recipe.target.consistency);
            lines.push(line(
                "Consistency",
                feel::word(consistency).into(),
                wanted.into(),
            ));
        }
        let through = (self.homogeneity() * 100.0).floor();
        lines.push(line(
            "Mixed through",
            format!("{through} %"),
            "95 % or more".into(),
        ));
        if let Some(begun) = self.course.begun {
            let age = Seconds::of(handed.at - begun).whole();
            lines.push(line(
                "Handed over at",
                format!("{age} of its age"),
                String::new(),
            ));
        }
        if let Some(left) = self.working_time_left() {
            let placing = Seconds::of(handed.placing).whole();
            let done = if left.get() < 0.0 {
                format!("over for {}", Seconds::of(-left.get()).whole())
            } else {
                left.whole()
            };
            lines.push(line(
                "Working time left",
                done,
                format!("{placing} to place it"),
            ));
        }
        match self.course.discards {
            0 => {}
            1 => lines.push(line("Thrown away", "once before".into(), String::new())),
            more => lines.push(line(
                "Thrown away",
                format!("{more} times before"),
                String::new(),
            )),
        }
        lines
    }

    /// How much of each part is in the mass.
    fn parts(&self) -> Vec<Line> {
        let (k, target) = (&self.recipe.kinetics, &self.recipe.target);
        let all = [
            (&k.powder, self.mass.powder, &target.powder_units),
            (
                &k.liquid,
                self.mass.liquid + self.mass.lost,
                &target.liquid_units,
            ),
        ];
        all.map(|(part, grams, usual)| {
            let units = grams / part.grams.number();
            line(
                &capital(&part.name),
                counted(units, &part.unit),
                counted(usual.number(), &part.unit),
            )
        })
        .into()
    }

    fn surface(&self) -> Line {
        let said = match self.bench.surface {
            Surface::Pad => "the pad".to_owned(),
            Surface::Slab => format!("the slab at {}", Celsius::of(self.bench.degrees)),
            Surface::Bowl => format!("the bowl, water of {}", Celsius::of(self.bench.water)),
        };
        let room = self.room();
        line(
            "Mixed on",
            format!(
                "{said}, in a room of {} and {}",
                room.temperature, room.humidity
            ),
            String::new(),
        )
    }
}

fn line(what: &str, done: String, wanted: String) -> Line {
    Line {
        what: what.into(),
        done,
        wanted,
    }
}
