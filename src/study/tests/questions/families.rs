//! What single families say is so.

use super::*;

#[test]
fn what_is_missing_is_used_and_what_is_offered_beside_it_never_is() {
    // By another route: the tray as `clinic` lays it, and its reader's profiles.
    with_bank(|clinic, _| {
        let reader = clinic.tray_reader();
        let usual = clinic.reason(&clinic.usual_patient()).patient;
        for family in ["missing", "stray", "lay"] {
            of_family(family, |_, question| {
                let procedure = question.id.fact()[0].into();
                let wanted: Vec<_> = clinic.tray(&procedure, &usual).target().stages.concat();
                let item = |c: &Choice| c.item.clone().expect("an item");
                let (belongs, strays) = match family {
                    "stray" => (wrong(question), right(question)),
                    _ => (right(question), wrong(question)),
                };
                assert!(
                    belongs.iter().all(|c| wanted.contains(&item(c))),
                    "{}",
                    question.id
                );
                assert!(
                    strays.iter().all(|c| !reader.uses(&procedure, &item(c))),
                    "{}",
                    question.id
                );
            });
        }
    });
}

#[test]
fn a_tray_reads_as_the_treatment_it_is_laid_for() {
    with_bank(|clinic, _| {
        let reader = clinic.tray_reader();
        of_family("reading", |_, question| {
            let Shown::Items(items) = &question.shown else {
                panic!("{}", question.id)
            };
            let read = reader.read_so_far(items);
            let place = |key: &str| read.iter().position(|r| r.procedure.as_str() == key);
            let own = place(&right(question)[0].key);
            assert!(
                wrong(question).iter().all(|c| place(&c.key) > own),
                "{}",
                question.id
            );
        });
    });
}

#[test]
fn stages_are_those_of_the_laid_tray() {
    with_bank(|clinic, _| {
        let usual = clinic.reason(&clinic.usual_patient()).patient;
        of_family("stage", |_, question| {
            let fact = question.id.fact();
            let tray = clinic.tray(&fact[0].into(), &usual);
            let stage = tray
                .items()
                .find(|(_, i)| i.item.as_str() == fact[1])
                .map(|(s, _)| s.to_lowercase());
            assert_eq!(
                stage,
                Some(right(question)[0].text.to_lowercase()),
                "{}",
                question.id
            );
        });
    });
}

#[test]
fn what_comes_next_comes_next_for_patients_of_every_kind() {
    with_bank(|clinic, _| {
        let usual = clinic.usual_patient();
        let mut patients = vec![usual.clone()];
        for (finding, word) in [
            ("isolation", "cotton-rolls"),
            ("cavity-class", "class-ii"),
            ("dentition", "primary"),
            ("allergy-methacrylate", "yes"),
            ("planned-permanent", "amalgam"),
        ] {
            patients.push(clinic.with(&usual, finding, word));
        }
        let patients: Vec<_> = patients.iter().map(|p| clinic.reason(p).patient).collect();
        of_family("next", |_, question| {
            let fact = question.id.fact();
            for patient in &patients {
                let steps = clinic.steps(&fact[0].into(), patient);
                let at = steps
                    .iter()
                    .position(|s| s.procedure.as_str() == fact[0] && s.step.id.as_str() == fact[1]);
                let next = &steps[at.expect("the step is there for everybody") + 1]
                    .step
                    .id;
                assert_eq!(next.as_str(), right(question)[0].key, "{}", question.id);
                assert!(
                    wrong(question).iter().all(|c| c.key != next.as_str()),
                    "{}",
                    question.id
                );
            }
        });
    });
}

#[test]
fn what_leaves_the_tray_leaves_it() {
    of_family("patient", |clinic, question| {
        let fact = question.id.fact();
        let procedure = fact[0].into();
        let usual = clinic.reason(&clinic.usual_patient()).patient;
        let standard: BTreeSet<_> = clinic
            .tray(&procedure, &usual)
            .items()
            .map(|(_, i)| i.item.clone())
            .collect();
        // Some flag must change exactly so; which one is not asked of the question.
        let flags = [
            "allergy-eugenol",
            "allergy-latex",
            "allergy-methacrylate",
            "sulfite-sensitivity",
        ];
        let proved = flags.iter().any(|flag| {
            let patient = clinic.reason(&clinic.with(&usual, flag, "yes")).patient;
            let own: BTreeSet<_> = clinic
                .tray(&procedure, &patient)
                .items()
                .map(|(_, i)| i.item.clone())
                .collect();
            let changed = |c: &&Choice| {
                let item = c.item.as_ref().expect("an item");
                if fact[2] == "goes" {
                    standard.contains(item) && !own.contains(item)
                } else {
                    own.contains(item)
                }
            };
            right(question).iter().all(changed) && !wrong(question).iter().any(changed)
        });
        assert!(proved, "{}", question.id);
    });
}

#[test]
fn a_tooth_is_called_alike_in_every_system() {
    // By arithmetic of its own: quadrant and place against the Universal count.
    let universal = |fdi: u8| {
        let (quadrant, place) = (fdi / 10, fdi % 10);
        let count = match quadrant {
            1 => 9 - place,
            2 => 8 + place,
            3 => 25 - place,
            4 => 24 + place,
            5 => 6 - place,
            6 => 5 + place,
            7 => 16 - place,
            _ => 15 + place,
        };
        if quadrant > 4 {
            char::from(b'@' + count).to_string()
        } else {
            count.to_string()
        }
    };
    of_family("tooth", |_, question| {
        let fact = question.id.fact();
        let fdi: u8 = fact[0].parse().expect("a number");
        if let Form::Number { from, to, .. } = question.form {
            let wanted = if fact[2] == "fdi" {
                fdi.to_string()
            } else {
                universal(fdi)
            };
            assert_eq!((from, from.to_string()), (to, wanted), "{}", question.id);
        } else {
            for choice in question.form.choices() {
                let tooth: u8 = choice.key.parse().expect("a number");
                assert_eq!(
                    tooth == fdi,
                    choice.standing == Standing::Right,
                    "{}",
                    question.id
                );
                assert!(Tooth::from_fdi(tooth).is_some());
                if fact[2] == "universal" {
                    assert_eq!(choice.text, universal(tooth), "{}", question.id);
                }
            }
        }
    });
}

#[test]
fn dates_and_signs_are_those_of_the_plans() {
    of_family("interval", |clinic, question| {
        let plan = clinic
            .catalogue()
            .plan(&question.id.fact()[0].into())
            .expect("a plan");
        let days = |c: &Choice| {
            c.key
                .trim_start_matches("days-")
                .parse::<u32>()
                .expect("days")
        };
        let some = |d: u32| plan.recalls.iter().any(|r| r.days.contains(d));
        assert!(
            right(question).iter().all(|c| some(days(c))),
            "{}",
            question.id
        );
        // Where no date hangs on the patient, every date of the plan is acceptable.
        if plan.recalls.iter().all(|r| r.when.is_none()) {
            assert!(
                wrong(question).iter().all(|c| !some(days(c))),
                "{}",
                question.id
            );
        }
    });
    of_family("sooner", |clinic, question| {
        let kind = |c: &Choice| {
            clinic
                .catalogue()
                .check(&c.key.as_str().into())
                .map(|c| c.kind)
        };
        assert!(
            right(question)
                .iter()
                .all(|c| kind(c) == Some(CheckKind::Sign)),
            "{}",
            question.id
        );
        assert!(
            wrong(question)
                .iter()
                .all(|c| kind(c) == Some(CheckKind::Expected)),
            "{}",
            question.id
        );
    });
}

#[test]
fn no_wrong_option_is_stated_of_the_thing_anywhere_in_the_procedure() {
    let procedure_of = |clinic: &Clinic, question: &Question| -> Procedure {
        clinic
            .catalogue()
            .procedure(&question.id.fact()[0].into())
            .expect("a procedure")
            .clone()
    };
    of_family("why", |clinic, question| {
        let procedure = procedure_of(clinic, question);
        let item = question.id.fact()[1];
        let said: Vec<String> = procedure
            .steps
            .iter()
            .flat_map(|s| s.uses.0.iter().chain(&s.at_hand.0))
            .filter(|u| u.item.as_str() == item)
            .map(|u| u.reason.to_lowercase())
            .collect();
        let says = |c: &Choice| said.contains(&c.text.trim_end_matches('.').to_lowercase());
        assert!(right(question).into_iter().all(says), "{}", question.id);
        assert!(!wrong(question).into_iter().any(says), "{}", question.id);
    });
    of_family("law", |clinic, question| {
        let procedure = procedure_of(clinic, question);
        for choice in question.form.choices() {
            let step = procedure
                .steps
                .iter()
                .find(|s| s.id.as_str() == choice.key)
                .expect("a step");
            assert_eq!(
                step.local_law,
                choice.standing == Standing::Right,
                "{}",
                question.id
            );
        }
    });
    of_family("contains", |clinic, question| {
        for choice in question.form.choices() {
            let item = clinic
                .catalogue()
                .item(choice.item.as_ref().expect("an item"))
                .expect("known");
            let has = item
                .contains()
                .iter()
                .any(|s| s.as_str() == question.id.fact()[0]);
            assert_eq!(has, choice.standing == Standing::Right, "{}", question.id);
        }
    });
}
