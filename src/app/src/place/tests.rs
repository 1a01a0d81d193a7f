//! Every place comes back from its fragment; what leads nowhere says so.

use super::*;

#[test]
fn a_place_comes_back_from_its_fragment() {
    let patient = vec![
        ("allergy-latex".into(), "yes".into()),
        ("remaining-dentine".into(), "0.5".into()),
    ];
    for place in [
        Place::Today,
        Place::Procedures,
        Place::Procedure("amalgam".into(), View::Lesson, Vec::new()),
        Place::Procedure("amalgam".into(), View::SetUp, patient.clone()),
        Place::Procedure("amalgam".into(), View::Time, patient.clone()),
        Place::Procedure("amalgam".into(), View::Steps, Vec::new()),
        Place::Items,
        Place::Item("explorer".into()),
        Place::Lesson("deep-caries".into()),
        Place::Cases,
        Place::Order,
        Place::Case("a-molar".into(), u64::MAX, None),
        Place::Case("a-molar".into(), 7, Some("allergy-latex".into())),
        Place::Reading(Vec::new()),
        Place::Reading(vec!["explorer".into(), "mouth-mirror".into()]),
        Place::ReadingExercise(u64::MAX),
        Place::Cards,
        Place::Card("own-1".into(), None, Vec::new()),
        Place::Card("own-1".into(), Some("amalgam".into()), patient.clone()),
        Place::TrayCard("amalgam".into(), Paper::A6, patient),
        Place::TrayCard("amalgam".into(), Paper::A4, Vec::new()),
        Place::AllPlates,
        Place::Plates("root-canal-instruments".into(), false),
        Place::Plates("burs".into(), true),
        Place::LifeSize(Drawn::Family("burs".into())),
        Place::LifeSize(Drawn::Item("explorer".into())),
        Place::Find(String::new()),
        Place::Find("spoon 0.5 % “größe” a/b?c#d+".into()),
        Place::Glossary,
        Place::Term("pulp".into()),
        Place::Wish("own-1".into()),
        Place::Sitting(SittingAt::New(5)),
        Place::Sitting(SittingAt::Kept(SittingId(u64::MAX))),
        Place::Sitting(SittingAt::Kept(SittingId(5))),
        Place::Plan,
        Place::Forms(String::new()),
        Place::Forms("0A1B2C".into()),
        Place::Form(SittingId(7), FormSide::Whole),
        Place::Form(SittingId(7), FormSide::Question(20)),
        Place::Questions,
        Place::QuestionFamily("why".into()),
        Place::Progress,
        Place::Bench,
        Place::Mix("zinc-phosphate".into(), None),
        Place::Mix("zinc-phosphate".into(), Some("base".into())),
        Place::Tools,
        Place::Tool("cartridges".into(), Vec::new()),
        Place::Tool(
            "cartridges".into(),
            vec![
                ("weight".into(), "70 kg".into()),
                ("ratio".into(), "1:100 000 & 2 %".into()),
            ],
        ),
        Place::Exercise("milligrams".into(), u64::MAX),
        Place::Record,
        Place::About,
        Place::Unknown("/elsewhere".into()),
    ] {
        assert_eq!(Place::from_fragment(&place.fragment()), place);
    }
}

#[test]
fn an_empty_fragment_is_today_and_a_strange_one_unknown() {
    for text in ["", "#", "#/"] {
        assert_eq!(Place::from_fragment(text), Place::Today);
    }
    for text in [
        "#/x",
        "#/cases/a",
        "#/cases/a/b",
        "#/cases/a/-1",
        "#/cases/a/18446744073709551616",
        "#/cases/a/b/allergy-latex",
        "#/reading/x",
        "#/cards/a/b",
        "#/procedures/a/b",
        "#/record/x",
        "#/sitting",
        "#/sitting/soon",
        "#/form/7",
        "#/form/0000000000000007/x",
    ] {
        assert!(
            matches!(Place::from_fragment(text), Place::Unknown(_)),
            "{text}"
        );
    }
}

#[test]
fn a_patient_is_no_other_ground() {
    let place = Place::from_fragment("#/procedures/a/set-up?swelling=yes");
    assert_eq!(place.ground().fragment(), "#/procedures/a/set-up");
}
