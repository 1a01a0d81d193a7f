//! Trays of the handbooks: what each holds, and the order that matters.
//! Contents: Bird and Robinson, Phinney and Halstead, Boyd, Sturdevant, chapters
//! of the same names; value from memory.

use crate::bedside::clinic;
use catalogue::{ids::ItemId, quantity::Milli};
use clinic::{patient::Patient, tray::Tray};

fn tray(procedure: &str, patient: &Patient) -> Tray {
    clinic().tray(&procedure.into(), patient)
}

fn holds(tray: &Tray, item: &str) -> bool {
    tray.items().any(|(_, i)| i.item.as_str() == item)
}

#[test]
fn trays_hold_what_the_handbooks_list() {
    let class_two = clinic().with(&clinic().usual_patient(), "cavity-class", "class-ii");
    let rows: [(&str, &[&str]); 5] = [
        (
            "deep-caries-temporary",
            &[
                "mouth-mirror",
                "explorer",
                "cotton-pliers",
                "aspirating-syringe",
                "dam-sheet-latex",
                "high-speed-handpiece",
                "bur-330",
                "low-speed-handpiece",
                "spoon-excavator-small",
                "spoon-excavator-large",
                "cotton-pellets",
                "ball-applicator",
                "matrix-band",
                "wooden-wedge",
                "mixing-pad",
                "powder-scoop",
                "cement-spatula",
                "reinforced-zoe",
                "plastic-filling-instrument",
                "amalgam-condenser-large",
                "discoid-cleoid-carver",
                "articulating-paper",
                "articulating-paper-holder",
                "dental-floss",
                "patient-mirror",
            ],
        ),
        (
            "amalgam-restoration",
            &[
                "mouth-mirror",
                "explorer",
                "cotton-pliers",
                "high-speed-handpiece",
                "bur-330",
                "low-speed-handpiece",
                "spoon-excavator-small",
                "gingival-margin-trimmer-distal",
                "gingival-margin-trimmer-mesial",
                "matrix-retainer",
                "matrix-band",
                "wooden-wedge",
                "amalgam-well",
                "amalgam-carrier",
                "amalgam-condenser-small",
                "amalgam-condenser-large",
                "ball-burnisher",
                "discoid-cleoid-carver",
                "hollenback-carver",
                "amalgam-capsule",
                "articulating-paper",
                "dental-floss",
                "amalgam-scrap-jar",
            ],
        ),
        (
            "posterior-composite",
            &[
                "mouth-mirror",
                "explorer",
                "cotton-pliers",
                "shade-guide",
                "sectional-matrix",
                "matrix-ring",
                "contoured-wedge",
                "etchant-gel",
                "bonding-agent",
                "microbrush",
                "flowable-composite",
                "composite-compule",
                "composite-placement-instrument",
                "curing-light",
                "articulating-paper",
                "finishing-bur-flame",
                "finishing-disc",
                "polishing-point",
            ],
        ),
        (
            "rubber-dam",
            &[
                "dental-floss",
                "dam-punch",
                "dam-template",
                "dam-sheet-latex",
                "dam-frame",
                "dam-clamp-molar",
                "clamp-forceps",
                "dam-lubricant",
                "scissors",
                "dam-napkin",
                "plastic-filling-instrument",
            ],
        ),
        (
            "local-anaesthesia",
            &[
                "gauze",
                "topical-gel",
                "topical-applicator",
                "mouth-mirror",
                "aspirating-syringe",
                "anaesthetic-cartridge",
                "needle-long-27",
                "needle-short-30",
                "needle-cap-holder",
                "sharps-container",
            ],
        ),
    ];
    for (procedure, wanted) in rows {
        let tray = tray(procedure, &class_two);
        for item in wanted {
            assert!(holds(&tray, item), "{procedure} lacks {item}");
        }
    }
}

#[test]
fn the_order_of_the_handbooks_is_kept() {
    let class_two = clinic().with(&clinic().usual_patient(), "cavity-class", "class-ii");
    let rows: [(&str, &str, &str, &str); 10] = [
        (
            "posterior-composite",
            "shade-guide",
            "dam-sheet-latex",
            "shade first, tooth wet, before the dam",
        ),
        (
            "posterior-composite",
            "etchant-gel",
            "bonding-agent",
            "etch before bond",
        ),
        (
            "posterior-composite",
            "sectional-matrix",
            "etchant-gel",
            "the matrix is set before the bond",
        ),
        (
            "posterior-composite",
            "composite-compule",
            "polishing-point",
            "finishing last",
        ),
        (
            "amalgam-restoration",
            "matrix-band",
            "amalgam-carrier",
            "the band before packing",
        ),
        (
            "amalgam-restoration",
            "amalgam-condenser-small",
            "hollenback-carver",
            "condense before carving",
        ),
        (
            "amalgam-restoration",
            "hollenback-carver",
            "articulating-paper",
            "carve before the bite",
        ),
        (
            "deep-caries-temporary",
            "aspirating-syringe",
            "dam-clamp-molar",
            "numb before the clamp",
        ),
        (
            "deep-caries-temporary",
            "spoon-excavator-small",
            "reinforced-zoe",
            "excavate before closing",
        ),
        (
            "deep-caries-temporary",
            "reinforced-zoe",
            "articulating-paper",
            "close before the bite",
        ),
    ];
    for (procedure, first, then, why) in rows {
        let tray = tray(procedure, &class_two);
        let order: Vec<&ItemId> = tray.items().map(|(_, i)| &i.item).collect();
        let place = |id: &str| {
            order
                .iter()
                .position(|i| i.as_str() == id)
                .unwrap_or_else(|| panic!("{procedure} lacks {id}"))
        };
        assert!(place(first) < place(then), "{procedure}: {why}");
    }
}

/// Procedure, finding, value, item that goes, item that comes.
#[test]
fn trays_follow_the_patient() {
    let rows = [
        (
            "deep-caries-temporary",
            "allergy-latex",
            "yes",
            "dam-sheet-latex",
            "dam-sheet-non-latex",
        ),
        (
            "deep-caries-temporary",
            "allergy-eugenol",
            "yes",
            "reinforced-zoe",
            "non-eugenol-zinc-oxide",
        ),
        (
            "posterior-composite",
            "sulfite-sensitivity",
            "yes",
            "anaesthetic-cartridge",
            "anaesthetic-cartridge-plain",
        ),
        (
            "amalgam-restoration",
            "isolation",
            "cotton-rolls",
            "dam-sheet-latex",
            "cotton-rolls",
        ),
    ];
    for (procedure, finding, value, goes, comes) in rows {
        let usual = clinic().usual_patient();
        let before = tray(procedure, &usual);
        let after = tray(procedure, &clinic().with(&usual, finding, value));
        assert!(
            holds(&before, goes) && !holds(&before, comes),
            "{procedure} as standard"
        );
        assert!(
            !holds(&after, goes) && holds(&after, comes),
            "{procedure} with {finding} {value}"
        );
    }
    let usual = clinic().usual_patient();
    let class_two = clinic().with(&usual, "cavity-class", "class-ii");
    let band = |p: &Patient| {
        tray("amalgam-restoration", p)
            .target()
            .stages
            .concat()
            .iter()
            .any(|i| i.as_str() == "matrix-band")
    };
    assert!(
        band(&class_two) && !band(&usual),
        "a class II needs a band, a class I does not (value from memory)"
    );
}

/// Conventional glass ionomer has no resin and hardens by itself (`hatrick-materials`),
/// so nothing on the tray of an amalgam is cured where methacrylate is avoided.
#[test]
fn an_amalgam_without_methacrylate_needs_no_curing_light() {
    let amalgam = |allergic: &str| {
        let patient = clinic().with(&clinic().usual_patient(), "planned-permanent", "amalgam");
        let patient = clinic().with(&patient, "exposure", "none");
        let patient = clinic().with(&patient, "bleeding", "none");
        let patient = clinic().with_number(&patient, "remaining-dentine", Milli(1000));
        let patient = clinic().with(&patient, "allergy-methacrylate", allergic);
        let catalogue = clinic().catalogue().clone();
        let plan = catalogue.plan(&"permanent-today".into());
        let settled = clinic().settled(&patient, plan.expect("a plan"));
        tray("amalgam-restoration", &clinic().reason(&settled).patient)
    };
    let (usual, allergic) = (amalgam("no"), amalgam("yes"));
    assert!(holds(&usual, "rmgi-liner") && holds(&usual, "curing-light"));
    assert!(holds(&allergic, "glass-ionomer-restorative-capsule"));
    for item in ["rmgi-liner", "curing-light", "light-shield"] {
        assert!(!holds(&allergic, item), "{item}");
    }
}
