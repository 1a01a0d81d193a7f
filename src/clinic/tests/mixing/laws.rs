//! What cannot be done, replays, and laws that hold for every action.

use super::*;

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
        // How long it can be worked in all: what is left of it may be next to nothing.
        let worked = |m: &Mix| {
            let (age, left) = (m.age(), m.working_time_left());
            age.expect("a mass").get() + left.expect("a mass").get()
        };
        prop_assert!(near(worked(&coarse), worked(&fine)));
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
