//! The reading of trays, and drawn trays to be read: their answers are computed,
//! and they can be read in one way.

mod common;

use catalogue::ids::ItemId;
use clinic::{case::TrayReading, standing::Standing};
use common::clinic;
use std::collections::BTreeSet;

fn drawn() -> impl Iterator<Item = TrayReading> {
    let clinic = clinic();
    (0..40).map(move |seed| clinic.tray_reading(seed).expect("an exercise"))
}

#[test]
fn the_tray_alone_gives_the_answers() {
    let clinic = clinic();
    for exercise in drawn() {
        let best = clinic.read_tray(&exercise.laid).remove(0);
        assert_eq!(best.procedure, exercise.procedure);
        assert_eq!(best.strange, std::slice::from_ref(&exercise.stray));
        assert_eq!(best.missing, std::slice::from_ref(&exercise.missing));
        let right = [
            exercise.procedure.as_str(),
            exercise.stray.as_str(),
            exercise.missing.as_str(),
        ];
        for (decision, right) in exercise.decisions.iter().zip(right) {
            assert_eq!(decision.best_answer(), [right], "{}", exercise.seed);
        }
    }
}

#[test]
fn each_question_has_one_right_answer_and_wrong_ones_beside_it_with_reasons() {
    for exercise in drawn() {
        for decision in &exercise.decisions {
            let right = |c: &&clinic::case::Choice| c.standing == Standing::Right;
            assert_eq!(decision.choices.iter().filter(right).count(), 1);
            assert!(decision.choices.len() >= 3, "{}", decision.id);
            let ids: BTreeSet<&str> = decision.choices.iter().map(|c| c.id.as_str()).collect();
            assert_eq!(ids.len(), decision.choices.len(), "{}", decision.id);
            for choice in &decision.choices {
                let reason = choice.reasons.first().expect("a reason");
                assert!(reason.because.len() > 10, "{}: {}", decision.id, choice.id);
            }
        }
    }
}

#[test]
fn what_is_offered_as_missing_is_of_no_use_in_the_treatment() {
    let clinic = clinic();
    let reader = clinic.tray_reader();
    for exercise in drawn() {
        for choice in &exercise.decisions[2].choices {
            let used = reader.uses(&exercise.procedure, &choice.id.as_str().into());
            assert_eq!(used, choice.id == exercise.missing.as_str());
            assert!(!exercise.laid.contains(&choice.id.as_str().into()));
        }
    }
}

#[test]
fn a_seed_draws_one_tray_for_ever_and_seeds_differ() {
    let clinic = clinic();
    let all: Vec<TrayReading> = drawn().collect();
    for exercise in &all {
        assert_eq!(clinic.tray_reading(exercise.seed).as_ref(), Some(exercise));
    }
    let treatments: BTreeSet<&str> = all.iter().map(|e| e.procedure.as_str()).collect();
    assert!(treatments.len() >= 4, "{treatments:?}");
    assert_ne!(all[0].laid, all[1].laid);
}

/// The stream behind a draw is frozen, so a tray is pinned by its seed as long
/// as what is taught stays as it is; a catalogue of its own keeps it so here.
#[test]
fn a_tray_is_pinned_over_a_catalogue_that_stays() {
    let clinic = small::clinic();
    let exercise = clinic.tray_reading(5).expect("an exercise");
    let laid: Vec<&str> = exercise.laid.iter().map(ItemId::as_str).collect();
    assert_eq!(exercise.procedure.as_str(), "filling");
    assert_eq!(exercise.stray.as_str(), "extraction-2");
    assert_eq!(exercise.missing.as_str(), "mirror");
    assert_eq!(
        laid.join(" "),
        "probe filling-4 filling-3 filling-2 extraction-2 filling-1"
    );
}

#[test]
fn a_catalogue_with_nothing_to_tell_apart_yields_no_exercise() {
    let empty = clinic::Clinic::new(std::rc::Rc::default());
    assert_eq!(empty.tray_reading(1), None);
}

/// Three treatments of six things each, two of them shared.
mod small {
    use catalogue::{Catalogue, items::Instrument, procedures::Procedure};
    use clinic::Clinic;
    use std::{fmt::Write, rc::Rc};

    #[derive(serde::Deserialize)]
    struct File {
        instrument: Vec<Instrument>,
        procedure: Vec<Procedure>,
    }

    pub fn clinic() -> Clinic {
        let mut text = String::new();
        thing(&mut text, "mirror");
        thing(&mut text, "probe");
        for name in ["extraction", "filling", "scaling"] {
            (1..=4).for_each(|n| thing(&mut text, &format!("{name}-{n}")));
            treatment(&mut text, name);
        }
        let file: File = toml::from_str(&text).expect("well-formed");
        Clinic::new(Rc::new(Catalogue {
            instruments: file.instrument,
            procedures: file.procedure,
            ..Catalogue::default()
        }))
    }

    fn thing(text: &mut String, id: &str) {
        let fields = r#"family = "all"
            purpose = "For the work it is named after."
            look = ""
            reprocessing = "critical"
            sources = []"#;
        writeln!(
            text,
            "[[instrument]]\nid = \"{id}\"\nname = \"{id}\"\n{fields}"
        )
        .expect("text grows");
    }

    fn treatment(text: &mut String, id: &str) {
        let own = (1..=4).map(|n| format!("{id}-{n} = \"to do its work\""));
        let own: Vec<String> = own.collect();
        writeln!(
            text,
            r#"[[procedure]]
            id = "{id}"
            name = "{id}"
            short = "{id}"
            kind = "treatment"
            purpose = ""
            competency = "tray-set-ups"
            sources = []
            [[procedure.step]]
            id = "only"
            phase = "All"
            who = "team"
            does = "All is done."
            uses = {{ mirror = "to see", probe = "to feel", {} }}"#,
            own.join(", ")
        )
        .expect("text grows");
    }
}

#[test]
fn every_treatment_is_read_from_its_own_tray() {
    let clinic = clinic();
    let patient = clinic.reason(&clinic.usual_patient()).patient;
    for procedure in &clinic.catalogue().procedures {
        if procedure.kind != catalogue::procedures::ProcedureKind::Treatment {
            continue;
        }
        let laid: Vec<ItemId> = clinic
            .tray(&procedure.id, &patient)
            .target()
            .stages
            .concat();
        let readings = clinic.read_tray(&laid);
        assert_eq!(readings[0].procedure, procedure.id);
        assert!(readings[0].missing.is_empty() && readings[0].strange.is_empty());
        let sum: f64 = readings.iter().map(|r| r.likelihood).sum();
        assert!((sum - 1.0).abs() < 1e-9);
    }
}

#[test]
fn a_stray_item_is_found_and_a_missing_one_named() {
    let clinic = clinic();
    let patient = clinic.reason(&clinic.usual_patient()).patient;
    let mut laid: Vec<ItemId> = clinic
        .tray(&"deep-caries-temporary".into(), &patient)
        .target()
        .stages
        .concat();
    laid.retain(|i| i.as_str() != "cement-spatula");
    laid.push("amalgam-carrier".into());
    let best = &clinic.read_tray(&laid)[0];
    assert_eq!(best.procedure.as_str(), "deep-caries-temporary");
    assert_eq!(best.missing, ["cement-spatula".into()]);
    assert_eq!(best.strange, ["amalgam-carrier".into()]);
    let evidence = clinic.tray_evidence(&laid, &best.procedure);
    let of = |id: &str| {
        evidence
            .iter()
            .find(|e| e.item.as_str() == id)
            .expect("evidence")
    };
    assert!(of("reinforced-zoe").weight > 10.0);
    assert!(of("amalgam-carrier").weight < 1.0);
}

#[test]
fn a_few_things_are_read_by_what_is_there_alone() {
    let clinic = clinic();
    let reader = clinic.tray_reader();
    let laid = ["reinforced-zoe", "cement-spatula", "spoon-excavator-small"].map(ItemId::from);
    let uses_all = |reading: &clinic::reading::Reading| {
        laid.iter().all(|id| reader.uses(&reading.procedure, id))
    };
    let so_far = reader.read_so_far(&laid);
    assert!(uses_all(&so_far[0]), "{:?}", so_far[0].procedure);
    // As a whole tray the same three are read otherwise: too much is missing.
    let whole = reader.read(&laid);
    assert!(whole[0].missing.len() < so_far[0].missing.len());
}
