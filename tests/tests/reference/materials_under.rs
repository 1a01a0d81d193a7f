//! What may not lie under what.

use crate::bedside::clinic;

const CUSTOM: &str = "common practice, no source";
const ARANDI: &str = "Arandi, Clin Cosmet Investig Dent 2017;9:67-72";
const STURDEVANT: &str = "Sturdevant's Art and Science of Operative Dentistry; value from memory";
const GARCIA: &str =
    "Garcia et al., Appl Sci 2020;10(3):1070: eugenol takes 5.79 MPa of bond strength";

/// Material, class above, source.
#[test]
fn what_may_not_lie_under_what() {
    const ROWS: [(&str, &str, &str); 5] = [
        ("reinforced-zoe", "resin-composite", GARCIA),
        ("reinforced-zoe", "bonding-resin", GARCIA),
        ("copal-varnish", "resin-composite", STURDEVANT),
        ("copal-varnish", "glass-ionomer", STURDEVANT),
        ("copal-varnish", "resin-modified-glass-ionomer", STURDEVANT),
    ];
    let clinic = clinic();
    for (material, class, source) in ROWS {
        let material = clinic
            .catalogue()
            .material(&material.into())
            .expect("a material");
        assert!(
            material.not_under.iter().any(|c| c.class.as_str() == class),
            "{} under {class} ({source})",
            material.id
        );
    }
    let zoe = clinic
        .catalogue()
        .material(&"reinforced-zoe".into())
        .expect("the cement");
    assert!(
        !zoe.not_under.iter().any(|c| c.class.as_str() == "amalgam"),
        "zinc oxide-eugenol may stay under amalgam (common practice, no source)"
    );
    let liner = clinic
        .catalogue()
        .material(&"calcium-hydroxide-liner".into())
        .expect("the liner");
    let cover = liner.cover.as_ref().expect("needs a cover (Arandi 2017)");
    assert_eq!(
        cover.by[0].as_str(),
        "resin-modified-glass-ionomer",
        "{ARANDI}"
    );
    assert!(
        cover.by.iter().any(|c| c.as_str() == "zinc-oxide-eugenol"),
        "{CUSTOM}"
    );
}
