//! Mixing in words: what can be done next, as a list to choose from. The same
//! actions and the same model as with the hand; for those who cannot use the
//! gesture, and for those who would rather read.

use super::{
    action::{Action, Stroke, Vigour},
    causes::{counted, fraction},
    mix::Mix,
    units::{Celsius, Millis, Seconds, Share, Units},
};
use catalogue::kinetics::{Area, IfThin, Surface};

/// Something that can be done next.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Move {
    /// In words: `Bring in half of the powder`.
    pub label: String,
    /// What it does.
    pub action: Action,
}

fn a_move(label: impl Into<String>, action: Action) -> Move {
    Move {
        label: label.into(),
        action,
    }
}

impl Mix {
    /// What can be done next, in the order of the work. None of it is marked as
    /// right: what is offered has its slips among it. `ready` and `placing` are
    /// those of the hand-over.
    pub fn options(&self, ready: Seconds, placing: Seconds) -> Vec<Move> {
        let mut options = Vec::new();
        if self.handed.is_some() {
            if self.recipe.mixing.light {
                options.push(a_move(
                    "Hold the curing light over it for 20 s",
                    Action::Cure(Millis::seconds(20)),
                ));
            }
            options.push(a_move("Wait 30 s", Action::Wait(Millis::seconds(30))));
            return options;
        }
        if self.course.begun.is_none() {
            self.lay_out(&mut options);
        }
        self.portions(&mut options);
        if self.course.begun.is_some() {
            self.work(&mut options, ready, placing);
        }
        options.push(a_move("Wait 10 s", Action::Wait(Millis::seconds(10))));
        options
    }

    fn lay_out(&self, options: &mut Vec<Move>) {
        let k = &self.recipe.kinetics;
        if self.bench.powder + self.bench.liquid <= 0.0 {
            for surface in &k.surfaces {
                match surface {
                    Surface::Slab => {
                        for degrees in [5.0, 12.0, 21.0, 30.0] {
                            let temperature = Celsius::of(degrees);
                            options.push(a_move(
                                format!("Take a glass slab of {temperature}"),
                                Action::LayOut {
                                    surface: *surface,
                                    temperature,
                                },
                            ));
                        }
                    }
                    Surface::Pad | Surface::Bowl => options.push(a_move(
                        match surface {
                            Surface::Bowl => "Take a rubber bowl",
                            _ => "Take a coated paper pad",
                        },
                        Action::LayOut {
                            surface: *surface,
                            temperature: self.room.temperature,
                        },
                    )),
                }
            }
        }
        if k.surfaces.contains(&Surface::Bowl) {
            for degrees in [15.0, 22.0, 30.0] {
                let temperature = Celsius::of(degrees);
                options.push(a_move(
                    format!("Take water of {temperature}"),
                    Action::WaterAt(temperature),
                ));
            }
        }
        let (powder, liquid) = (
            &self.recipe.target.powder_units,
            &self.recipe.target.liquid_units,
        );
        // In lots of about a third of the mix, so that too little and too much can both be chosen.
        for (part, usual, action) in [
            (
                &k.powder,
                powder.number(),
                Action::DispensePowder as fn(Units) -> Action,
            ),
            (
                &k.liquid,
                liquid.number(),
                Action::DispenseLiquid as fn(Units) -> Action,
            ),
        ] {
            let lot = if usual > 3.0 {
                (usual / 5.0).max(1.0).round()
            } else {
                1.0
            };
            options.push(a_move(
                format!("Put out {} of {}", counted(lot, &part.unit), part.name),
                action(Units::of(lot)),
            ));
            if usual > lot {
                options.push(a_move(
                    format!("Put out {} of {}", counted(usual, &part.unit), part.name),
                    action(Units::of(usual)),
                ));
            }
        }
    }

    fn portions(&self, options: &mut Vec<Move>) {
        let name = &self.recipe.kinetics.powder.name;
        if self.bench.powder <= 0.0 || self.bench.liquid + self.mass.liquid <= 0.0 {
            return;
        }
        let mut shares: Vec<Share> = [0.0625, 0.125, 0.25, 0.5, 1.0].map(Share::of).to_vec();
        if self.recipe.is_pastes() {
            shares = vec![Share::of(1.0)];
        }
        for share in shares {
            let label = if share.get() >= 1.0 {
                format!("Bring in all of the {name} that is left")
            } else {
                format!(
                    "{} of the {name}",
                    match share.get() {
                        s if s < 0.1 => "Bring in a sixteenth".into(),
                        s if s < 0.2 => "Bring in an eighth".into(),
                        s => format!("Bring in {}", fraction(s)),
                    }
                )
            };
            options.push(a_move(label, Action::BringIn(share)));
        }
    }

    fn work(&self, options: &mut Vec<Move>, ready: Seconds, placing: Seconds) {
        let k = &self.recipe.kinetics;
        for (vigour, how) in [
            (Vigour::GENTLE, "lightly"),
            (Vigour::FIRM, "firmly"),
            (Vigour::HARD, "hard"),
        ] {
            for (area, over) in [
                (Area::Small, "over a small area"),
                (Area::Wide, "over a wide area"),
            ] {
                let stroke = Stroke { vigour, area };
                // A bowl has one area, and other strokes than the firm ones keep to the usual area.
                let one = vigour != Vigour::FIRM || k.surfaces.contains(&Surface::Bowl);
                if one && area != k.area {
                    continue;
                }
                options.push(a_move(
                    format!("Work it {how} {over} for 5 s"),
                    Action::Spatulate {
                        stroke,
                        lasts: Millis::seconds(5),
                    },
                ));
            }
        }
        options.push(a_move("Test it", Action::Test));
        let target = &self.recipe.target;
        options.push(a_move(
            format!("Work in a sixth of the usual {} more", k.powder.name),
            Action::AddPowder(Units::of(target.powder_units.number() / 6.0)),
        ));
        options.push(a_move(
            format!("Add a sixth of the usual {} more", k.liquid.name),
            Action::AddLiquid(Units::of(target.liquid_units.number() / 6.0)),
        ));
        if k.if_thin == IfThin::DrawOff {
            options.push(a_move(
                format!(
                    "Draw a tenth of the {} off with a dry pellet",
                    k.liquid.name
                ),
                Action::DrawOff(Share::of(0.1)),
            ));
        }
        options.push(a_move("Throw it away and wipe all clean", Action::Discard));
        options.push(a_move("Hand it over", Action::HandOver { ready, placing }));
    }
}
