//! Every fault is told with its cause.

use super::*;

#[test]
fn a_third_of_the_powder_left_out_is_said_and_mended_by_powder() {
    for which in all() {
        let k = recipe(&which).kinetics;
        if k.if_thin != IfThin::AddPowder {
            continue;
        }
        let units = recipe(&which).target.powder_units.number();
        let mut thin = with_powder(&which, 2.0 / 3.0);
        let verdict = hand_over_now(&mut thin.clone());
        assert!(
            verdict.standing >= Standing::Wrong,
            "{which:?}: {}",
            verdict.cause
        );
        assert!(
            verdict
                .cause
                .contains("because a third of the powder was left out"),
            "{}",
            verdict.cause
        );
        assert!(!verdict.mend.is_empty() && !verdict.never.is_empty());
        thin.add_powder(Units::of(units / 3.0)).expect("powder");
        thin.spatulate(firm(&which), Millis::seconds(20))
            .expect("strokes");
        let mended = hand_over_now(&mut thin);
        assert!(
            mended.standing <= Standing::Acceptable,
            "{which:?}: {}",
            mended.cause
        );
        assert!(mended.marks > verdict.marks);
    }
    let sticky = with_powder(&of("reinforced-zoe"), 2.0 / 3.0);
    assert_eq!(sticky.consistency(), Some(Consistency::Sticky));
    assert!(sticky.seen().sentence.contains("sticks to the glove"));
}

#[test]
fn an_old_mix_says_by_how_long() {
    let mut mix = mixed(&of("reinforced-zoe"), Room::usual());
    let left = mix.working_time_left().expect("time left");
    mix.wait(Millis(left.millis().0 + 90_000)).expect("waiting");
    let verdict = hand_over_now(&mut mix);
    assert_eq!(verdict.standing, Standing::Wrong);
    assert!(
        verdict
            .cause
            .starts_with("Crumbly: handed over 90 s past its working time"),
        "{}",
        verdict.cause
    );
    assert!(verdict.cause.contains("do not thin it"));
    assert!(verdict.never.contains("liquid"));
    assert!(mix.act(Action::Test).is_err(), "it is out of the hand");
}

#[test]
fn thinning_a_setting_mix_is_unsafe() {
    let which = of("glass-ionomer-powder-liquid");
    let mut mix = mixed(&which, Room::usual());
    mix.wait(Millis::seconds(40)).expect("waiting");
    mix.act(Action::AddLiquid(Units::of(0.5))).expect("liquid");
    mix.spatulate(firm(&which), Millis::seconds(10))
        .expect("strokes");
    let verdict = hand_over_now(&mut mix);
    assert_eq!((verdict.standing, verdict.marks), (Standing::Unsafe, 0));
}

#[test]
fn too_early_and_too_late_are_told_apart() {
    let which = of("reinforced-zoe");
    let judged = |lead: f64, placing: f64| {
        let mut mix = mixed(&which, Room::usual());
        let ready = Seconds::of(mix.clock().get() + lead);
        mix.hand_over(ready, Seconds::of(placing))
            .expect("a verdict")
    };
    assert_eq!(judged(0.0, 60.0).standing, Standing::Right);
    let early = judged(200.0, 60.0);
    assert_eq!(early.standing, Standing::Wrong);
    assert!(early.cause.starts_with("Too early"), "{}", early.cause);
    assert_eq!(judged(60.0, 30.0).standing, Standing::Acceptable);
    let late = judged(-60.0, 60.0);
    assert_eq!(late.standing, Standing::Acceptable);
    assert!(late.cause.contains("waited 60 s"), "{}", late.cause);
    assert_eq!(judged(-200.0, 60.0).standing, Standing::Wrong);
    assert!(judged(0.0, 400.0).cause.contains("placing takes"));
}

#[test]
fn a_wet_slab_is_told() {
    for material in ["zinc-phosphate-cement", "reinforced-zoe"] {
        let which = of(material);
        let mut mix = bench(&which, Room::usual());
        for action in way::published(&recipe(&which), Room::usual(), Seconds::of(0.0)) {
            let action = match action {
                Action::LayOut { .. } => Action::LayOut {
                    surface: Surface::Slab,
                    temperature: Celsius::of(8.0),
                },
                Action::HandOver { .. } => continue,
                other => other,
            };
            mix.act(action).expect("a move");
        }
        assert!(mix.is_wet_slab() && mix.look().sentence.contains("Drops of water"));
        let verdict = hand_over_now(&mut mix);
        assert!(verdict.standing >= Standing::Wrong, "{}", verdict.cause);
        let told = std::iter::once(&verdict.cause)
            .chain(verdict.also.iter().map(|f| &f.sentence))
            .any(|s| s.contains("wet slab") && s.contains("12.0 °C") | s.contains("12 °C"));
        assert!(told, "{verdict:?}");
    }
}

#[test]
fn all_the_zinc_phosphate_powder_at_once_heats_and_stiffens_it() {
    let which = of("zinc-phosphate-cement");
    let recipe = recipe(&which);
    let mut mix = bench(&which, Room::usual());
    mix.dispense_powder(Units::of(recipe.target.powder_units.number()))
        .expect("powder");
    mix.dispense_liquid(Units::of(recipe.target.liquid_units.number()))
        .expect("liquid");
    mix.bring_in(Share::of(1.0)).expect("bringing in");
    let small = Stroke {
        vigour: Vigour::FIRM,
        area: Area::Small,
    };
    mix.spatulate(small, Millis::seconds(90)).expect("strokes");
    let usual = mixed(&which, Room::usual());
    assert!(mix.working_time_left() < usual.working_time_left());
    let verdict = hand_over_now(&mut mix);
    assert!(verdict.standing > Standing::Right);
    assert!(
        verdict
            .also
            .iter()
            .map(|f| &f.sentence)
            .chain([&verdict.cause])
            .any(|s| s.contains("heat")),
        "{verdict:?}"
    );
}

#[test]
fn without_light_the_resin_modified_liner_never_sets() {
    let which = of("rmgi-liner");
    let mut mix = mixed(&which, Room::usual());
    assert!(hand_over_now(&mut mix).sets_after.is_none());
    mix.wait(Millis::seconds(3600)).expect("waiting");
    assert!(mix.set_fraction() < 0.01 && mix.consistency() < Some(Consistency::Set));
    mix.act(Action::Cure(Millis::seconds(10))).expect("light");
    assert!(mix.set_fraction() < 0.9);
    mix.act(Action::Cure(Millis::seconds(10))).expect("light");
    assert!(mix.set_fraction() >= 0.9 && mix.consistency() == Some(Consistency::Set));
    // A material that sets by itself gains nothing from the light.
    let which = of("reinforced-zoe");
    let (mut lit, mut dark) = (mixed(&which, Room::usual()), mixed(&which, Room::usual()));
    lit.act(Action::Cure(Millis::seconds(20))).expect("light");
    dark.wait(Millis::seconds(20)).expect("waiting");
    assert!((lit.set_fraction() - dark.set_fraction()).abs() < 1e-12);
}

#[test]
fn calcium_silicate_dries_and_a_trace_of_water_mends_it() {
    let which = of("calcium-silicate-cement");
    assert_eq!(recipe(&which).kinetics.if_thick, IfThick::AddLiquid);
    let mut mix = mixed(&which, room(23.0, 20.0));
    mix.wait(Millis::seconds(200)).expect("waiting");
    let dry = hand_over_now(&mut mix.clone());
    assert!(
        dry.standing > Standing::Right && dry.cause.contains("dried"),
        "{}",
        dry.cause
    );
    let grams = mix.ledger().lost.get();
    mix.act(Action::AddLiquid(Units::of(grams / 0.05)))
        .expect("water");
    mix.spatulate(firm(&which), Millis::seconds(5))
        .expect("strokes");
    let wet = hand_over_now(&mut mix);
    assert!(wet.standing <= Standing::Acceptable, "{}", wet.cause);
    // Too wet: drawn off.
    let mut wet = with_powder(&which, 0.8);
    assert!(hand_over_now(&mut wet.clone()).standing > Standing::Right);
    wet.act(Action::DrawOff(Share::of(0.2)))
        .expect("drawing off");
    assert_eq!(hand_over_now(&mut wet).standing, Standing::Right);
}

#[test]
fn streaks_and_specks_are_told() {
    for which in all() {
        let mut mix = bench(&which, Room::usual());
        let r = recipe(&which);
        mix.dispense_powder(Units::of(r.target.powder_units.number()))
            .expect("powder");
        mix.dispense_liquid(Units::of(r.target.liquid_units.number()))
            .expect("liquid");
        mix.bring_in(Share::of(1.0)).expect("bringing in");
        mix.spatulate(firm(&which), Millis::seconds(3))
            .expect("strokes");
        let verdict = hand_over_now(&mut mix);
        assert!(verdict.standing >= Standing::Wrong, "{which:?}");
        let all = verdict
            .also
            .iter()
            .map(|f| &f.sentence)
            .chain([&verdict.cause]);
        assert!(
            all.clone()
                .any(|s| s.contains("specks") || s.contains("Streaks")),
            "{which:?} {verdict:?}"
        );
    }
}
