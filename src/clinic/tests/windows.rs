//! When mixes are started: every window is open, and reads like a visit.

mod common;

use catalogue::procedures::Actor;
use clinic::timing::Timeline;
use common::clinic;

#[test]
fn every_mix_can_be_started_in_time_for_every_patient() {
    let closed = clinic().closed_windows();
    assert!(closed.is_empty(), "{}", closed.join("\n"));
}

/// Every window of the standard visits, as printed with `--nocapture`.
#[test]
fn windows_make_sense() {
    let clinic = clinic();
    let usual = clinic.reason(&clinic.usual_patient()).patient;
    for procedure in &clinic.catalogue().procedures {
        let line = clinic.timeline(&procedure.id, &usual);
        for window in &line.windows {
            println!(
                "{}: {} from {} to {} s before the dentist is ready; {} s to its place",
                procedure.id,
                window.material,
                i64::from(window.ready) - window.earliest,
                i64::from(window.ready) - window.latest,
                window.placing
            );
            assert!(window.placing > 0, "{} is placed at once", window.material);
            assert!(
                window.earliest + i64::from(window.work.from)
                    == i64::from(window.ready + window.placing),
                "the earliest start leaves just the working time"
            );
            assert!(
                window.latest >= 0,
                "{}: {} would start before the visit",
                procedure.id,
                window.material
            );
            assert!(
                placed_after(&line, window.ready) >= window.placing,
                "{}: {} is placed within the visit",
                procedure.id,
                window.material
            );
        }
    }
}

/// How long the visit goes on after a second.
fn placed_after(line: &Timeline, second: u32) -> u32 {
    line.flow
        .last()
        .map_or(0, |slot| slot.to.saturating_sub(second))
}

/// A step that mixes is the assistant's, runs beside the flow, and ends before
/// another step places what was mixed.
#[test]
fn mixing_and_placing_are_steps_of_their_own() {
    let clinic = clinic();
    for procedure in &clinic.catalogue().procedures {
        for step in &procedure.steps {
            assert!(
                step.mixes.is_none() || step.places.is_none(),
                "{} of {} mixes and places",
                step.id,
                procedure.id
            );
            let Some(material) = &step.mixes else {
                continue;
            };
            assert_eq!(
                step.who,
                Actor::Assistant,
                "{} of {}",
                step.id,
                procedure.id
            );
            let mixing = clinic
                .catalogue()
                .material(material)
                .and_then(|m| m.mixing.as_ref())
                .expect("mixing data");
            assert_eq!(
                step.seconds,
                Some(mixing.mix_seconds),
                "{} of {} lasts as long as its material is mixed",
                step.id,
                procedure.id
            );
        }
    }
}
