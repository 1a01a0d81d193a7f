//! The working ends of hand instruments.

use crate::blade::{Blade, Cut};
use crate::fault::{Fault, angle, length, length_or_none};
use serde::{Deserialize, Serialize};

/// How the end of a paddle looks on its flat.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum PaddleEnd {
    /// A half circle.
    #[default]
    Round,
    /// Square corners.
    Square,
    /// A point in the middle.
    Pointed,
    /// One corner longer than the other.
    Oblique,
    /// Square, with a row of fine teeth.
    Toothed,
}

/// The end of a scaler or curette.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Toe {
    /// A sharp point, as in a sickle scaler.
    #[default]
    Pointed,
    /// A rounded toe, as in a curette.
    Rounded,
}

/// A working end; all lengths in millimetres.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Tip {
    /// A round mirror.
    Mirror {
        /// Diameter over the rim.
        diameter: f32,
    },
    /// The shank itself, running out into a point: an explorer.
    Point,
    /// A measuring rod with dark bands.
    Probe {
        /// Length of the rod.
        length: f32,
        /// Thickness at its end.
        diameter: f32,
        /// Bands as `[from, to]`, from the end of the rod; a line where both are equal.
        bands: Vec<[f32; 2]>,
        /// Diameter of the ball at its end; 0 for none.
        ball: f32,
    },
    /// A cupped blade, sharp all round.
    Spoon {
        /// Width of the cup.
        width: f32,
        /// Length of the cup.
        length: f32,
    },
    /// A flat disc, sharp all round.
    Discoid {
        /// Diameter of the disc.
        diameter: f32,
    },
    /// A flat claw, sharp on both sides up to its point.
    Cleoid {
        /// Width at the widest.
        width: f32,
        /// Length to the point.
        length: f32,
    },
    /// A flat blade by Black's formula.
    Blade(Blade),
    /// A nib with a flat face.
    Condenser {
        /// Diameter of the face.
        diameter: f32,
        /// Length of the nib.
        length: f32,
        /// Whether the face is cut crosswise.
        serrated: bool,
    },
    /// A ball.
    Ball {
        /// Its diameter.
        diameter: f32,
    },
    /// A smooth egg or football.
    Egg {
        /// Largest diameter.
        diameter: f32,
        /// Length.
        length: f32,
        /// Whether it runs out into a blunt point, as an acorn does.
        pointed: bool,
    },
    /// A thin lance with two edges.
    Leaf {
        /// Width at the widest.
        width: f32,
        /// Length to the point.
        length: f32,
    },
    /// A thin flat blade.
    Paddle {
        /// Width.
        width: f32,
        /// Length.
        length: f32,
        /// Thickness.
        thickness: f32,
        /// How its end looks.
        end: PaddleEnd,
    },
    /// A curved blade with a cutting edge on the inside.
    Hook {
        /// Width at its beginning.
        width: f32,
        /// Length along the curve.
        length: f32,
        /// Curve in degrees.
        curve: f32,
        /// How it ends.
        toe: Toe,
        /// Angle between its face and the shank above it, in degrees: 90 where both edges cut; less
        /// where the face is tilted and its lower edge alone cuts.
        face: f32,
    },
    /// A strong blade, hollow on one side, as a straight elevator's is.
    Gouge {
        /// Width.
        width: f32,
        /// Length.
        length: f32,
    },
    /// A pointed flag that stands out to one side of the shank.
    Pennant {
        /// How far its point stands out from the axis of the shank.
        width: f32,
        /// Its length along the shank.
        length: f32,
        /// Whether it points to the right, seen from the hand.
        right: bool,
    },
}

impl Tip {
    /// Refuses measurements that no such tip can have; `handle` is the handle's diameter.
    pub(crate) fn check(&self, handle: f32) -> Result<(), Fault> {
        // What enters a tooth is never wider than what the hand holds.
        match self {
            Self::Point => Ok(()),
            Self::Mirror { diameter } => length("diameter", *diameter, 40.0),
            Self::Probe {
                length: long,
                diameter,
                bands,
                ball,
            } => {
                length("length", *long, 30.0)?;
                length("diameter", *diameter, 3.0)?;
                length_or_none("ball", *ball, 3.0)?;
                bands.iter().try_for_each(|band| check_band(*band, *long))
            }
            Self::Discoid { diameter } | Self::Ball { diameter } => {
                length("diameter", *diameter, handle)
            }
            Self::Spoon {
                width,
                length: long,
            }
            | Self::Cleoid {
                width,
                length: long,
            }
            | Self::Leaf {
                width,
                length: long,
            }
            | Self::Gouge {
                width,
                length: long,
            }
            | Self::Pennant {
                width,
                length: long,
                ..
            } => {
                length("width", *width, handle)?;
                length("length", *long, 60.0)?;
                if long < width {
                    return Err(Fault::new(
                        "length",
                        "is less than the width; this tip is longer than wide",
                    ));
                }
                Ok(())
            }
            Self::Blade(blade) => {
                blade.check()?;
                length("width-tenths / 10", blade.width_tenths / 10.0, handle)
            }
            Self::Condenser {
                diameter,
                length: long,
                ..
            }
            | Self::Egg {
                diameter,
                length: long,
                ..
            } => {
                length("diameter", *diameter, handle)?;
                length("length", *long, 30.0)
            }
            Self::Paddle {
                width,
                length: long,
                thickness,
                ..
            } => {
                length("width", *width, 60.0)?;
                length("length", *long, 160.0)?;
                length("thickness", *thickness, *width)?;
                if *long < width / 2.0 {
                    return Err(Fault::new(
                        "length",
                        "is less than half the width, which leaves no room for the end",
                    ));
                }
                Ok(())
            }
            Self::Hook {
                width,
                length: long,
                curve,
                face,
                ..
            } => {
                length("width", *width, handle)?;
                length("length", *long, 40.0)?;
                angle("curve", *curve, 200.0)?;
                check_face(*face)
            }
        }
    }

    /// Its length along the axis.
    pub(crate) fn reach(&self) -> f32 {
        match self {
            Self::Point => 14.0,
            Self::Mirror { diameter } | Self::Discoid { diameter } | Self::Ball { diameter } => {
                *diameter
            }
            Self::Probe { length, .. }
            | Self::Spoon { length, .. }
            | Self::Cleoid { length, .. }
            | Self::Condenser { length, .. }
            | Self::Egg { length, .. }
            | Self::Leaf { length, .. }
            | Self::Paddle { length, .. }
            | Self::Hook { length, .. }
            | Self::Gouge { length, .. }
            | Self::Pennant { length, .. } => *length,
            Self::Blade(blade) => blade.length,
        }
    }

    /// Whether its broad side lies in the plane of the shank's bends and so is seen from the side.
    pub(crate) fn lies_flat(&self) -> bool {
        match self {
            Self::Blade(blade) => blade.cut == Cut::Hatchet,
            Self::Mirror { .. } | Self::Pennant { .. } => true,
            _ => false,
        }
    }
}

fn check_band([from, to]: [f32; 2], rod: f32) -> Result<(), Fault> {
    length_or_none("bands", from, rod)?;
    length_or_none("bands", to, rod)?;
    if to < from {
        return Err(Fault::new(
            "bands",
            "run backwards: give each as [from, to] from the end of the probe",
        ));
    }
    Ok(())
}

fn check_face(degrees: f32) -> Result<(), Fault> {
    if (45.0..=90.0).contains(&degrees) {
        return Ok(());
    }
    Err(Fault::new(
        "face",
        "is not between 45 and 90 degrees: 90 for a universal curette, 70 for an area-specific one",
    ))
}
