//! The published way comes out right, and what was made is told.

use super::*;

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
fn what_was_made_stands_beside_what_is_wanted() {
    for which in all() {
        let mut mix = mixed(&which, Room::usual());
        assert!(mix.made().is_empty(), "nothing was handed over yet");
        hand_over_now(&mut mix);
        let made = mix.made();
        let line = |what: &str| made.iter().find(|it| it.what == what);
        for it in &made[..2] {
            assert_eq!(it.done, it.wanted, "{which:?}: {}", it.what);
        }
        assert!(line("Worked for").is_some_and(|it| it.done.ends_with(" s")));
        assert!(line("Thrown away").is_none());
        assert!(line("Working time left").is_some_and(|it| !it.done.starts_with("over")));
        // What was made is read from the replay alone.
        let again = mix.replay().run(&taught()).expect("it can be done again");
        assert_eq!(again.made(), made);
    }
}

#[test]
fn what_was_made_tells_a_third_left_out_and_a_mix_thrown_away() {
    let which = of("reinforced-zoe");
    let mut mix = with_powder(&which, 2.0 / 3.0);
    hand_over_now(&mut mix);
    let made = mix.made();
    assert_ne!(made[0].done, made[0].wanted, "{made:?}");
    assert_eq!(made[1].done, made[1].wanted, "{made:?}");
    let mut mix = mixed(&which, Room::usual());
    mix.discard().expect("it can be thrown away");
    for action in way::published(&recipe(&which), Room::usual(), Seconds::of(0.0)) {
        if !matches!(action, Action::HandOver { .. }) {
            mix.act(action).expect("a move of the published way");
        }
    }
    hand_over_now(&mut mix);
    let thrown = mix.made().into_iter().find(|it| it.what == "Thrown away");
    assert_eq!(thrown.map(|it| it.done).as_deref(), Some("once before"));
}
