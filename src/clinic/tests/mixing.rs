//! Laws of mixing that hold for every material, room and hand.

mod common;

use catalogue::{
    Catalogue,
    ids::ItemId,
    kinetics::{Area, Consistency, IfThick, IfThin, Surface},
};
use clinic::{
    mixing::{
        Action, Celsius, Ledger, Millis, Mix, PerCent, Recipe, Replay, Room, Seconds, Share,
        Stroke, Units, Vigour, steps_of, way,
    },
    standing::Standing,
};
use common::clinic;
use proptest::prelude::*;
use std::{cell::RefCell, collections::HashMap, rc::Rc};

fn taught() -> Rc<Catalogue> {
    clinic().catalogue().clone()
}

/// Every material and use that is mixed here.
fn all() -> Vec<(ItemId, String)> {
    taught()
        .kinetics
        .iter()
        .flat_map(|k| k.uses.iter().map(|u| (k.material.clone(), u.id.clone())))
        .collect()
}

/// Recipes are tuned when they are made, which is worth doing once.
fn recipe(which: &(ItemId, String)) -> Recipe {
    thread_local! {
        static MADE: RefCell<HashMap<(ItemId, String), Recipe>> = RefCell::default();
    }
    let make = || Recipe::new(&taught(), &which.0, Some(&which.1)).expect("a recipe");
    MADE.with_borrow_mut(|made| made.entry(which.clone()).or_insert_with(make).clone())
}

fn bench(which: &(ItemId, String), room: Room) -> Mix {
    Mix::of(recipe(which), room.checked().expect("a room"))
}

fn of(material: &str) -> (ItemId, String) {
    let usage = &taught()
        .kinetics
        .iter()
        .find(|k| k.material.as_str() == material)
        .expect("kinetics")
        .uses[0]
        .id
        .clone();
    (material.into(), usage.clone())
}

fn room(temperature: f64, humidity: f64) -> Room {
    Room {
        temperature: Celsius::of(temperature),
        humidity: PerCent::of(humidity),
    }
}

fn firm(which: &(ItemId, String)) -> Stroke {
    Stroke {
        vigour: Vigour::FIRM,
        area: recipe(which).kinetics.area,
    }
}

/// The published way without its hand-over.
fn mixed(which: &(ItemId, String), room: Room) -> Mix {
    let mut mix = bench(which, room);
    for action in way::published(&recipe(which), room, Seconds::of(0.0)) {
        if !matches!(action, Action::HandOver { .. }) {
            mix.act(action).expect("a move of the published way");
        }
    }
    mix
}

fn hand_over_now(mix: &mut Mix) -> clinic::mixing::Verdict {
    let now = mix.clock();
    mix.hand_over(now, Seconds::of(20.0)).expect("a verdict")
}

/// A mix of the published way, with this part of the powder dispensed.
fn with_powder(which: &(ItemId, String), part: f64) -> Mix {
    let mut mix = bench(which, Room::usual());
    for action in way::published(&recipe(which), Room::usual(), Seconds::of(0.0)) {
        let action = match action {
            Action::DispensePowder(units) => Action::DispensePowder(Units::of(units.get() * part)),
            Action::HandOver { .. } => continue,
            other => other,
        };
        mix.act(action).expect("a move");
    }
    mix
}

fn conserved(l: Ledger) -> bool {
    let out = l.powder_dispensed.get() + l.liquid_dispensed.get();
    let kept = [
        l.powder_beside,
        l.liquid_beside,
        l.powder_in,
        l.liquid_in,
        l.lost,
        l.drawn_off,
        l.discarded,
    ];
    (out - kept.iter().map(|g| g.get()).sum::<f64>()).abs() < 0.005
}

#[test]
fn what_the_bench_needs_is_mixed_here() {
    for material in [
        "reinforced-zoe",
        "temporary-cement-zoe",
        "calcium-hydroxide-liner",
        "glass-ionomer-luting",
        "glass-ionomer-powder-liquid",
        "rmgi-liner",
        "zinc-phosphate-cement",
        "polycarboxylate-cement",
        "calcium-silicate-cement",
        "alginate",
        "dental-stone",
        "dental-plaster",
    ] {
        let offer = steps_of(&taught(), &material.into(), None).expect("an offer");
        assert!(taught().item(&offer.spatula).is_some());
        for (_, item) in &offer.surfaces {
            assert!(taught().item(item).is_some(), "{item}");
        }
        assert!(!offer.portions.is_empty() && !offer.label.is_empty() && !offer.sources.is_empty());
    }
    assert!(steps_of(&taught(), &"copal-varnish".into(), None).is_err());
    assert!(steps_of(&taught(), &"alginate".into(), Some("soup")).is_err());
}

#[test]
fn every_material_comes_out_right_by_its_published_way() {
    for which in all() {
        let mut mix = mixed(&which, Room::usual());
        let verdict = hand_over_now(&mut mix);
        assert_eq!(
            (verdict.standing, verdict.marks),
            (Standing::Right, 100),
            "{which:?}: {}",
            verdict.cause
        );
        assert_eq!(
            mix.consistency(),
            Some(recipe(&which).target.consistency),
            "{which:?}"
        );
        let fault = clinic()
            .catalogue()
            .material(&which.0)
            .expect("it")
            .mixing
            .clone();
        assert!(fault.is_some_and(|m| m.ready.len() > 5));
    }
}

#[test]
fn every_material_comes_out_right_in_words() {
    for which in all() {
        let recipe = recipe(&which);
        let mut mix = bench(&which, Room::usual());
        let ready = Seconds::of(0.0);
        let placing = Seconds::of(10.0);
        let target = &recipe.target;
        for wanted in [
            Action::DispensePowder(Units::of(target.powder_units.number())),
            Action::DispenseLiquid(Units::of(target.liquid_units.number())),
        ] {
            let moves = mix.options(ready, placing);
            assert!(
                moves.iter().any(|m| m.action == wanted),
                "{which:?} {moves:?}"
            );
            mix.act(wanted).expect("a move on offer");
        }
        let count = u32::try_from(target.portions.len()).expect("few");
        let each = Millis(recipe.mix_seconds().middle() * 1000 / count);
        for (i, portion) in target.portions.iter().enumerate() {
            let wanted = f64::from(portion.0) / 1000.0;
            let last = i + 1 == target.portions.len();
            let nearest = mix
                .options(ready, placing)
                .into_iter()
                .filter_map(|m| match m.action {
                    Action::BringIn(s) if !last || s.get() >= 1.0 => {
                        Some((m.action, (s.get() - wanted).abs()))
                    }
                    _ => None,
                })
                .min_by(|a, b| a.1.total_cmp(&b.1));
            let Some((action, _)) = nearest else { continue };
            mix.act(action).expect("a move on offer");
            let mut worked = Millis(0);
            while worked < each {
                let stroke = mix
                    .options(ready, placing)
                    .into_iter()
                    .map(|m| m.action)
                    .find(|a| matches!(a, Action::Spatulate { stroke, .. } if *stroke == firm(&which)))
                    .expect("firm strokes");
                mix.act(stroke).expect("a move on offer");
                worked.0 += 5000;
            }
        }
        let verdict = hand_over_now(&mut mix);
        assert!(
            verdict.standing <= Standing::Acceptable,
            "{which:?}: {}",
            verdict.cause
        );
    }
}

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

#[test]
fn what_cannot_be_done_is_refused_in_words_and_changes_nothing() {
    let which = of("alginate");
    let mut mix = bench(&which, Room::usual());
    let before = mix.ledger();
    for action in [
        Action::BringIn(Share::of(1.0)),
        Action::Test,
        Action::DispensePowder(Units::of(0.0)),
        Action::DispensePowder(Units::of(-1.0)),
        Action::DispensePowder(Units::of(100_000.0)),
        Action::WaterAt(Celsius::of(99.0)),
        Action::LayOut {
            surface: Surface::Slab,
            temperature: Celsius::of(20.0),
        },
        Action::Wait(Millis(u32::MAX)),
        Action::Cure(Millis(1)),
        Action::HandOver {
            ready: Seconds::of(0.0),
            placing: Seconds::of(0.0),
        },
    ] {
        let why = mix.act(action).expect_err("refused");
        assert!(why.ends_with('.') && why.len() > 15, "{why}");
    }
    assert_eq!(mix.ledger(), before);
    assert!(mix.replay().actions.is_empty());
    for bad in [
        room(-5.0, 50.0),
        room(60.0, 50.0),
        room(20.0, 0.0),
        room(20.0, 101.0),
    ] {
        assert!(Mix::new(&taught(), &which.0, None, bad).is_err());
    }
}

#[test]
fn a_replay_of_another_version_or_material_is_refused() {
    let replay = mixed(&of("alginate"), Room::usual()).replay();
    let mut other = replay.clone();
    other.version = 99;
    assert!(other.run(&taught()).is_err());
    let mut other = replay.clone();
    other.material = "nothing".into();
    assert!(other.run(&taught()).is_err());
    let mut other = replay;
    other.actions.insert(0, Action::Test);
    assert!(
        other
            .run(&taught())
            .is_err_and(|why| why.starts_with("Action 1"))
    );
}

/// Anything a hand can do.
fn any_action() -> impl Strategy<Value = Action> {
    let stroke = (0_u8..=10, any::<bool>()).prop_map(|(v, wide)| Stroke {
        vigour: Vigour::per_cent(v * 10),
        area: if wide { Area::Wide } else { Area::Small },
    });
    prop_oneof![
        (1_u32..4).prop_map(|u| Action::DispensePowder(Units::of(f64::from(u) / 2.0))),
        (1_u32..4).prop_map(|u| Action::DispenseLiquid(Units::of(f64::from(u) / 2.0))),
        (1_u32..=4).prop_map(|s| Action::BringIn(Share::of(f64::from(s) / 4.0))),
        (stroke, 1_u32..20_000).prop_map(|(stroke, ms)| Action::Spatulate {
            stroke,
            lasts: Millis(ms),
        }),
        (1_u32..30_000).prop_map(|ms| Action::Wait(Millis(ms))),
        Just(Action::Test),
        Just(Action::AddPowder(Units::of(0.25))),
        Just(Action::AddLiquid(Units::of(0.25))),
        Just(Action::DrawOff(Share::of(0.1))),
        Just(Action::Cure(Millis(700))),
        Just(Action::Discard),
    ]
}

fn any_room() -> impl Strategy<Value = Room> {
    (15_u32..33, 20_u32..95).prop_map(|(t, h)| room(f64::from(t), f64::from(h)))
}

/// Everything that can be told of a mix, to compare two to the last digit.
fn told(mix: &Mix) -> String {
    format!("{mix:?} {:?} {:?}", mix.look(), mix.seen())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 24, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn mass_is_conserved_and_a_replay_is_exact(
        pick in any::<prop::sample::Index>(),
        room in any_room(),
        actions in prop::collection::vec(any_action(), 1..40),
    ) {
        let which = all()[pick.index(all().len())].clone();
        let mut mix = bench(&which, room);
        for action in actions {
            let before = mix.ledger();
            if mix.act(action).is_err() {
                prop_assert_eq!(mix.ledger(), before);
            }
            prop_assert!(conserved(mix.ledger()), "{:?}", mix.ledger());
            let look = mix.look();
            for part in [look.gloss, look.graininess, look.cracks, look.stickiness, look.dew, mix.set_fraction(), mix.homogeneity()] {
                prop_assert!((0.0..=1.0).contains(&part), "{look:?}");
            }
        }
        let now = mix.clock();
        let _ = mix.hand_over(now, Seconds::of(30.0));
        let json = toml::to_string(&mix.replay()).expect("written");
        let replay: Replay = toml::from_str(&json).expect("read");
        let again = replay.run(&taught()).expect("done again");
        prop_assert_eq!(told(&mix), told(&again));
        prop_assert_eq!(mix.verdict(), again.verdict());
    }

    #[test]
    fn frames_of_any_length_add_up_to_the_same_mix(
        pick in any::<prop::sample::Index>(),
        frames in prop::collection::vec(5_u32..60, 20..200),
    ) {
        let which = all()[pick.index(all().len())].clone();
        let begun = || {
            let mut mix = bench(&which, Room::usual());
            let r = recipe(&which);
            mix.dispense_powder(Units::of(r.target.powder_units.number())).expect("powder");
            mix.dispense_liquid(Units::of(r.target.liquid_units.number())).expect("liquid");
            mix.bring_in(Share::of(1.0)).expect("bringing in");
            mix
        };
        let (mut framed, mut whole) = (begun(), begun());
        for ms in &frames {
            framed.spatulate(firm(&which), Millis(*ms)).expect("strokes");
        }
        whole.spatulate(firm(&which), Millis(frames.iter().sum())).expect("strokes");
        framed.test().expect("a test");
        whole.test().expect("a test");
        prop_assert_eq!(told(&framed), told(&whole));
        prop_assert_eq!(framed.replay(), whole.replay());
    }

    #[test]
    fn half_the_time_step_changes_nothing(
        pick in any::<prop::sample::Index>(),
        room in any_room(),
        waits in 0_u32..200,
    ) {
        let which = all()[pick.index(all().len())].clone();
        let run = |tick: u32| {
            let mut mix = bench(&which, room).with_tick(Millis(tick));
            for action in way::published(&recipe(&which), room, Seconds::of(0.0)) {
                if !matches!(action, Action::HandOver { .. }) {
                    mix.act(action).expect("a move");
                }
            }
            mix.wait(Millis::seconds(waits)).expect("waiting");
            mix
        };
        let (coarse, fine) = (run(20), run(10));
        let near = |a: f64, b: f64| (a - b).abs() <= 0.01 * a.abs().max(b.abs()).max(1.0);
        let firmness = |m: &Mix| m.firmness().expect("a mass").0;
        prop_assert!(near(firmness(&coarse), firmness(&fine)));
        prop_assert!(near(coarse.homogeneity(), fine.homogeneity()));
        prop_assert!(near(coarse.set_fraction(), fine.set_fraction()));
        prop_assert!(near(coarse.temperature().get(), fine.temperature().get()));
        let left = |m: &Mix| m.working_time_left().expect("a mass").get();
        prop_assert!(near(left(&coarse), left(&fine)));
    }

    #[test]
    fn a_mix_that_is_too_old_can_only_be_discarded(
        pick in any::<prop::sample::Index>(),
        late in 15_u32..300,
        tricks in prop::collection::vec(any_action(), 0..12),
    ) {
        let which = all()[pick.index(all().len())].clone();
        let mut mix = mixed(&which, Room::usual());
        let left = mix.working_time_left().expect("a mass");
        mix.wait(Millis(left.millis().0 + late * 1000)).expect("waiting");
        for action in tricks {
            if action != Action::Discard {
                let _ = mix.act(action);
            }
        }
        let mut old = mix.clone();
        prop_assert!(hand_over_now(&mut old).standing >= Standing::Wrong);
        mix.discard().expect("throwing away");
        for action in way::published(&recipe(&which), Room::usual(), Seconds::of(0.0)) {
            if !matches!(action, Action::HandOver { .. }) {
                mix.act(action).expect("a move");
            }
        }
        prop_assert_eq!(hand_over_now(&mut mix).standing, Standing::Right);
    }
}
