//! Mixing: times and signs of the handbooks and of custom.

use crate::bedside::clinic;

const HATRICK: &str = "Hatrick, Eakle and Bird, chapter on cements; value from memory";

/// Material, mixing time in seconds, working time from the start, setting time from the start, source.
type Row = (
    &'static str,
    (u32, u32),
    Option<(u32, u32)>,
    Option<(u32, u32)>,
    &'static str,
);

#[test]
fn times_are_those_of_the_handbooks() {
    const ROWS: [Row; 4] = [
        (
            "reinforced-zoe",
            (60, 90),
            Some((180, 300)),
            Some((240, 600)),
            HATRICK,
        ),
        (
            "calcium-hydroxide-liner",
            (10, 15),
            Some((120, 180)),
            Some((120, 180)),
            HATRICK,
        ),
        ("rmgi-liner", (10, 15), Some((150, 150)), None, HATRICK),
        (
            "non-eugenol-zinc-oxide",
            (15, 30),
            Some((120, 120)),
            Some((240, 360)),
            HATRICK,
        ),
    ];
    for (id, mix, work, set, source) in ROWS {
        let clinic = clinic();
        let material = clinic.catalogue().material(&id.into()).expect("a material");
        let mixing = material.mixing.as_ref().expect("mixing data");
        assert_eq!(
            (mixing.mix_seconds.from, mixing.mix_seconds.to),
            mix,
            "{id} ({source})"
        );
        if let Some(work) = work {
            assert_eq!(
                (mixing.work_seconds.from, mixing.work_seconds.to),
                work,
                "{id} ({source})"
            );
        }
        assert_eq!(
            mixing.set_seconds.map(|s| (s.from, s.to)),
            set,
            "{id} ({source})"
        );
    }
}

#[test]
fn the_reinforced_temporary_is_mixed_and_mended_as_custom_has_it() {
    let clinic = clinic();
    let zoe = clinic
        .catalogue()
        .material(&"reinforced-zoe".into())
        .expect("the cement");
    let mixing = zoe.mixing.as_ref().expect("mixing data");
    // At least a minute: common practice, no source.
    assert!(mixing.mix_seconds.from >= 60);
    // No light cure: common practice, no source.
    assert!(!mixing.light);
    // One scoop to one drop: Hatrick, Eakle and Bird; value from memory.
    assert!(mixing.proportion.contains("1 level scoop") && mixing.proportion.contains("1 drop"));
    // Too little powder leaves it sticky: Hatrick, Eakle and Bird, chapter on cements, read.
    let sticky = mixing
        .faults
        .iter()
        .find(|f| f.sign.contains("sticks"))
        .expect("the sticky mix");
    assert!(sticky.cause.contains("too little powder") && sticky.mend.contains("more powder"));
    // Set too far: discard and remix, never thin with liquid: common practice, no source.
    let hard = mixing
        .faults
        .iter()
        .find(|f| f.sign.contains("crumbly"))
        .expect("the crumbly mix");
    assert!(hard.mend.contains("mix anew") && hard.never.contains("liquid"));
    // A proper base mix does not stick: Hatrick, Eakle and Bird, chapter on cements, read.
    assert!(mixing.ready.contains("without sticking"));
}

#[test]
fn the_resin_modified_liner_sets_on_light_alone() {
    let clinic = clinic();
    let liner = clinic
        .catalogue()
        .material(&"rmgi-liner".into())
        .expect("the liner");
    let mixing = liner.mixing.as_ref().expect("mixing data");
    assert!(mixing.light && mixing.set_seconds.is_none(), "{HATRICK}");
}
