//! The tray of every procedure of the handbooks: what is needed, what lies ready
//! in case it is called for, what must never lie there, and what comes before
//! what.

use crate::bedside::{clinic, patient};
use clinic::tray::{Need, Tray};

/// Contents and order of a set-up.
const HANDBOOKS: &str = "Bird and Robinson, Phinney and Halstead, Boyd, Sturdevant, chapters of the same names; value from memory";
const CUSTOM: &str = "common practice, no source";
const STURDEVANT: &str = "Sturdevant's Art and Science of Operative Dentistry; value from memory";
const BONDING: &str = "Garcia et al., Appl Sci 2020;10(3):1070: eugenol lowers bond strength";
const COVER: &str = "Arandi, Clin Cosmet Investig Dent 2017;9:67-72: calcium hydroxide is covered";
const FLUORIDE: &str = "Weyant et al., J Am Dent Assoc 2013;144:1279-1291";
const SOCKET: &str = "Cochrane CD006968.pub3, 2022; no curettage: value from memory";
const WATER: &str = "CDC 2003: sterile water or saline for surgery";

struct SetUp {
    procedure: &'static str,
    /// Findings out of the ordinary.
    of: &'static str,
    needed: &'static str,
    called: &'static str,
    never: &'static str,
    source: &'static str,
    /// Why what must never lie there must not, and who says so.
    against: &'static str,
}

#[rustfmt::skip]
const SET_UPS: [SetUp; 32] = [
    SetUp { procedure: "deep-caries-temporary", of: "cavity-class=class-ii",
        needed: "mouth-mirror explorer cotton-pliers aspirating-syringe dam-sheet-latex high-speed-handpiece bur-330 bur-round-2 low-speed-handpiece bur-round-4-latch bur-round-6-latch spoon-excavator-small spoon-excavator-large chlorhexidine-rinse cotton-pellets matrix-band wooden-wedge mixing-pad powder-scoop cement-spatula reinforced-zoe plastic-filling-instrument amalgam-condenser-large discoid-cleoid-carver articulating-paper articulating-paper-holder dental-floss patient-mirror",
        called: "calcium-hydroxide-liner ball-applicator petroleum-jelly hollenback-carver",
        never: "composite-compule bonding-agent etchant-gel curing-light", source: HANDBOOKS,
        against: "no resin the same day, and no light cures zinc oxide-eugenol; common practice, no source" },
    SetUp { procedure: "amalgam-restoration", of: "cavity-class=class-ii",
        needed: "mouth-mirror explorer cotton-pliers aspirating-syringe dam-sheet-latex high-speed-handpiece bur-330 bur-245 low-speed-handpiece bur-round-4-latch spoon-excavator-small enamel-hatchet gingival-margin-trimmer-distal gingival-margin-trimmer-mesial matrix-retainer matrix-band wooden-wedge amalgam-well amalgam-carrier amalgam-condenser-small amalgam-condenser-large ball-burnisher discoid-cleoid-carver hollenback-carver amalgam-capsule triturator articulating-paper dental-floss amalgam-scrap-jar",
        called: "rmgi-liner calcium-hydroxide-liner ball-applicator bur-round-6-latch",
        never: "etchant-gel composite-compule bonding-agent sectional-matrix shade-guide", source: HANDBOOKS,
        against: "a metal is neither bonded nor matched in shade; common practice, no source" },
    SetUp { procedure: "anterior-composite", of: "",
        needed: "shade-guide mouth-mirror explorer cotton-pliers aspirating-syringe dam-sheet-latex high-speed-handpiece bur-round-half low-speed-handpiece spoon-excavator-small etchant-gel bonding-agent microbrush clear-matrix-strip clear-wedge curing-light light-shield composite-placement-instrument composite-compule scalpel-handle-3 blade-12 finishing-diamond-fine finishing-disc finishing-strip polishing-point articulating-paper patient-mirror",
        called: "cervical-matrix",
        never: "reinforced-zoe temporary-cement-zoe copal-varnish matrix-retainer amalgam-carrier", source: HANDBOOKS, against: BONDING },
    SetUp { procedure: "posterior-composite", of: "cavity-class=class-ii",
        needed: "shade-guide mouth-mirror explorer cotton-pliers aspirating-syringe dam-sheet-latex high-speed-handpiece bur-330 low-speed-handpiece spoon-excavator-small sectional-matrix matrix-ring contoured-wedge ring-forceps etchant-gel bonding-agent microbrush flowable-composite composite-compule composite-placement-instrument curing-light light-shield finishing-bur-flame finishing-disc polishing-point articulating-paper dental-floss",
        called: "rmgi-liner calcium-hydroxide-liner",
        never: "copal-varnish reinforced-zoe temporary-cement-zoe amalgam-carrier", source: HANDBOOKS, against: BONDING },
    SetUp { procedure: "glass-ionomer-restoration", of: "isolation=cotton-rolls",
        needed: "mouth-mirror explorer cotton-pliers enamel-hatchet spoon-excavator-small dentine-conditioner microbrush glass-ionomer-restorative-capsule capsule-applicator plastic-filling-instrument petroleum-jelly glass-ionomer-coat articulating-paper discoid-cleoid-carver",
        called: "glass-ionomer-powder-liquid mixing-pad plastic-spatula",
        never: "etchant-gel copal-varnish cement-spatula", source: HANDBOOKS,
        against: "varnish blocks the bond to dentine, steel greys the mix; Sturdevant, Hatrick, value from memory" },
    SetUp { procedure: "indirect-pulp-cap", of: "remaining-dentine=0.4",
        needed: "mouth-mirror explorer cotton-pliers aspirating-syringe dam-sheet-latex high-speed-handpiece low-speed-handpiece spoon-excavator-small spoon-excavator-large chlorhexidine-disinfectant sterile-saline calcium-hydroxide-liner ball-applicator rmgi-capsule capsule-applicator curing-light articulating-paper",
        called: "calcium-silicate-cement reinforced-zoe",
        never: "copal-varnish zinc-phosphate-cement", source: HANDBOOKS, against: COVER },
    SetUp { procedure: "direct-pulp-cap", of: "remaining-dentine=0; exposure=pin-point; bleeding=stops",
        needed: "dam-sheet-latex timer sodium-hypochlorite sterile-saline cotton-pellets calcium-silicate-cement glass-slab mta-carrier rmgi-capsule bonding-agent composite-compule radiograph-holder",
        called: "calcium-hydroxide-liner",
        never: "reinforced-zoe non-eugenol-zinc-oxide temporary-cement-zoe", source: HANDBOOKS,
        against: "zinc oxide-eugenol is safe on dentine and no cap: review of 1994, PMID 7965358" },
    SetUp { procedure: "rubber-dam", of: "",
        needed: "dental-floss dam-punch dam-template dam-sheet-latex dam-frame dam-clamp-molar clamp-forceps dam-lubricant scissors dam-napkin",
        called: "plastic-filling-instrument dam-clamp-premolar",
        never: "petroleum-jelly dam-sheet-non-latex", source: HANDBOOKS,
        against: "the lubricant is soluble in water; value from memory" },
    SetUp { procedure: "local-anaesthesia", of: "",
        needed: "gauze topical-gel topical-applicator mouth-mirror aspirating-syringe anaesthetic-cartridge needle-long-27 needle-cap-holder sharps-container",
        called: "needle-short-30",
        never: "anaesthetic-cartridge-plain scalpel-handle-3", source: HANDBOOKS, against: CUSTOM },
    SetUp { procedure: "crown-preparation", of: "",
        needed: "mouth-mirror explorer aspirating-syringe shade-guide high-speed-handpiece diamond-flat-end-taper diamond-round-end-taper diamond-football retraction-cord-small retraction-cord-large cord-packer haemostatic-agent pvs-light-body pvs-heavy-body tray-adhesive bite-registration alginate vacuum-matrix bis-acryl-resin bur-acrylic spoon-excavator-small temporary-cement-non-eugenol articulating-paper dental-floss impression-disinfectant",
        called: "pvs-putty crown-form-polycarbonate temporary-cement-zoe",
        never: "resin-cement amalgam-carrier", source: HANDBOOKS, against: "the final cement belongs to the next visit; common practice, no source" },
    SetUp { procedure: "crown-cementation", of: "",
        needed: "crown-remover mouth-mirror explorer pumice dental-floss articulating-paper cotton-rolls glass-ionomer-luting mixing-pad plastic-spatula orangewood-stick bite-stick scaler-sickle-anterior",
        called: "rmgi-luting zinc-phosphate-cement polycarboxylate-cement resin-cement curing-light haemostat-straight spoon-excavator-large",
        never: "temporary-cement-zoe temporary-cement-non-eugenol retraction-cord-small", source: HANDBOOKS, against: "a final seat takes no temporary cement; common practice, no source" },
    SetUp { procedure: "simple-extraction", of: "not-restorable=yes",
        needed: "mouth-mirror explorer aspirating-syringe periosteal-elevator-molt-9 elevator-34s elevator-301 forceps-150 forceps-151 surgical-curette gauze",
        called: "forceps-23 forceps-53r forceps-53l forceps-210s rongeur bone-file needle-holder suture-silk-3-0",
        never: "high-speed-handpiece scalpel-handle-3 dam-sheet-latex", source: HANDBOOKS, against: "air and spray from a turbine are not brought to an open wound; common practice, no source" },
    SetUp { procedure: "surgical-extraction", of: "not-restorable=yes",
        needed: "aspirating-syringe scalpel-handle-3 blade-15 periosteal-elevator-molt-9 periosteal-elevator-24g retractor-minnesota surgical-handpiece bur-surgical-round bur-surgical-fissure-703 sterile-saline root-tip-elevator surgical-curette rongeur bone-file irrigation-syringe needle-holder suture-silk-3-0 dean-scissors surgical-suction-tip bite-block sterile-drape sterile-gloves",
        called: "retractor-seldin surgical-chisel surgical-mallet haemostat-curved",
        never: "high-speed-handpiece chlorhexidine-disinfectant dam-sheet-latex", source: HANDBOOKS, against: WATER },
    SetUp { procedure: "suture-removal", of: "",
        needed: "mouth-mirror cotton-pliers suture-scissors gauze chlorhexidine-rinse",
        called: "haemostat-curved",
        never: "scalpel-handle-3 aspirating-syringe needle-holder", source: HANDBOOKS, against: CUSTOM },
    SetUp { procedure: "dry-socket-dressing", of: "",
        needed: "mouth-mirror explorer sterile-saline irrigation-syringe cotton-pliers dry-socket-paste",
        called: "iodoform-gauze scissors",
        never: "surgical-curette scalpel-handle-3 bone-file", source: HANDBOOKS, against: SOCKET },
    SetUp { procedure: "root-canal-access", of: "cold=silent; remaining-dentine=0.5",
        needed: "mouth-mirror endodontic-explorer aspirating-syringe dam-sheet-latex high-speed-handpiece bur-round-2 bur-safe-end bur-round-long-latch endodontic-spoon k-file file-stand niti-rotary-file endo-ruler apex-locator lip-clip endo-irrigation-syringe needle-side-vented sodium-hypochlorite edta paper-points calcium-hydroxide-paste cotton-pellets premixed-temporary",
        called: "barbed-broach gates-glidden-2 gates-glidden-3 h-file",
        never: "gutta-percha-points root-canal-sealer endo-spreader", source: HANDBOOKS, against: "the canals are filled at a visit of its own; common practice, no source" },
    SetUp { procedure: "root-canal-filling", of: "cold=silent; remaining-dentine=0.5",
        needed: "dam-sheet-latex sodium-hypochlorite paper-points gutta-percha-points root-canal-sealer glass-slab cement-spatula endo-spreader heat-carrier glick-1 radiograph-holder premixed-temporary",
        called: "endo-plugger",
        never: "barbed-broach gates-glidden-2 apex-locator", source: HANDBOOKS, against: CUSTOM },
    SetUp { procedure: "incision-and-drainage", of: "cold=silent; swelling=yes",
        needed: "mouth-mirror aspirating-syringe blade-11 scalpel-handle-3 haemostat-curved culture-swab rubber-drain suture-silk-3-0 gauze sterile-saline irrigation-syringe",
        called: "antiseptic-iodine blade-15 surgical-curette",
        never: "dam-sheet-latex high-speed-handpiece", source: HANDBOOKS, against: CUSTOM },
    SetUp { procedure: "oral-prophylaxis", of: "",
        needed: "mouth-mirror explorer periodontal-probe disclosing-solution scaler-sickle-anterior scaler-sickle-posterior curette-universal ultrasonic-scaler low-speed-handpiece prophy-angle prophy-paste dental-floss fluoride-varnish",
        called: "sharpening-stone prophy-brush",
        never: "gracey-11-12 aspirating-syringe", source: HANDBOOKS, against: CUSTOM },
    SetUp { procedure: "scaling-and-root-planing", of: "",
        needed: "periodontal-probe aspirating-syringe gracey-1-2 gracey-3-4 gracey-5-6 gracey-7-8 gracey-9-10 gracey-11-12 gracey-13-14 ultrasonic-scaler ultrasonic-insert chlorhexidine-rinse irrigation-syringe explorer-11-12",
        called: "sharpening-stone curette-universal",
        never: "prophy-paste plastic-scaler", source: HANDBOOKS, against: CUSTOM },
    SetUp { procedure: "fissure-sealant", of: "",
        needed: "mouth-mirror explorer pumice prophy-brush etchant-gel microbrush fissure-sealant curing-light light-shield articulating-paper dam-sheet-latex",
        called: "",
        never: "prophy-paste fluoride-varnish aspirating-syringe", source: HANDBOOKS,
        against: "oily or fluoride paste keeps the acid off; Bird and Robinson, value from memory" },
    SetUp { procedure: "fluoride-application", of: "",
        needed: "gauze fluoride-varnish varnish-brush saliva-ejector",
        called: "apf-gel fluoride-tray",
        never: "etchant-gel curing-light", source: FLUORIDE, against: CUSTOM },
    SetUp { procedure: "alginate-impression", of: "",
        needed: "mouth-mirror impression-tray-stock impression-tray-perforated utility-wax mixing-bowl alginate-spatula alginate-scoop water-measure alginate bite-wax impression-disinfectant dental-stone vibrator base-former model-trimmer",
        called: "dental-plaster",
        never: "aspirating-syringe cement-spatula tray-adhesive", source: HANDBOOKS, against: "a tray with holes holds alginate without adhesive; common practice, no source" },
    SetUp { procedure: "in-office-whitening", of: "",
        needed: "shade-guide cheek-retractor cotton-rolls gingival-barrier curing-light whitening-gel timer desensitiser eye-shield",
        called: "",
        never: "aspirating-syringe etchant-gel", source: HANDBOOKS, against: CUSTOM },
    SetUp { procedure: "orthodontic-separators", of: "",
        needed: "separating-pliers elastic-separator dental-floss mouth-mirror",
        called: "",
        never: "ligature-wire curing-light", source: HANDBOOKS, against: "a wire end is sharp; common practice, no source" },
    SetUp { procedure: "orthodontic-bonding", of: "",
        needed: "cheek-retractor pumice etchant-gel orthodontic-primer bracket-tweezers orthodontic-bracket orthodontic-adhesive bracket-height-gauge curing-light archwire ligature-elastic distal-end-cutter orthodontic-wax",
        called: "ligature-wire",
        never: "prophy-paste fluoride-varnish", source: HANDBOOKS, against: "the pumice is free of oil; value from memory" },
    SetUp { procedure: "orthodontic-debonding", of: "",
        needed: "bracket-removing-pliers adhesive-removing-pliers band-removing-pliers low-speed-handpiece bur-debonding prophy-cup fluoride-varnish alginate gauze",
        called: "finishing-disc scaler-sickle-posterior",
        never: "orthodontic-adhesive etchant-gel bracket-height-gauge", source: HANDBOOKS, against: CUSTOM },
    SetUp { procedure: "denture-try-in", of: "",
        needed: "mouth-mirror wax-try-in articulating-paper patient-mirror shade-guide",
        called: "wax-spatula alcohol-torch",
        never: "bur-acrylic acrylic-polishing-point aspirating-syringe", source: HANDBOOKS,
        against: "what is still wax is not ground; common practice, no source" },
    SetUp { procedure: "denture-delivery", of: "",
        needed: "mouth-mirror pressure-indicating-paste bur-acrylic articulating-paper acrylic-polishing-point patient-mirror",
        called: "disclosing-wax",
        never: "aspirating-syringe temporary-cement-zoe", source: HANDBOOKS, against: CUSTOM },
    SetUp { procedure: "periodontal-dressing", of: "",
        needed: "mouth-mirror periodontal-dressing mixing-pad cement-spatula sterile-saline cotton-pliers",
        called: "petroleum-jelly",
        never: "reinforced-zoe curing-light", source: HANDBOOKS, against: "the two-paste kind has no eugenol; value from memory" },
    SetUp { procedure: "implant-uncovering", of: "",
        needed: "mouth-mirror aspirating-syringe tissue-punch implant-driver surgical-curette healing-abutment sterile-saline gauze dental-floss radiograph-holder chlorhexidine-rinse",
        called: "blade-15 torque-wrench suture-resorbable-4-0 impression-coping plastic-scaler",
        never: "scaler-sickle-anterior ultrasonic-insert", source: HANDBOOKS, against: "plastic, not steel, cleans an implant; value from memory" },
    SetUp { procedure: "pulpotomy-and-crown", of: "dentition=primary; remaining-dentine=0; exposure=pin-point; bleeding=stops",
        needed: "aspirating-syringe dam-sheet-latex high-speed-handpiece bur-330 low-speed-handpiece bur-round-6-latch bur-round-8-latch spoon-excavator-large cotton-pellets calcium-silicate-cement reinforced-zoe bur-169l crown-form-steel contouring-pliers-114 crimping-pliers-137 glass-ionomer-luting articulating-paper dental-floss gauze",
        called: "ferric-sulfate formocresol crown-scissors",
        never: "calcium-hydroxide-liner gutta-percha-points", source: HANDBOOKS,
        against: "calcium hydroxide is not advised for pulpotomy: Coll et al., Pediatr Dent 2017;39:16-27; value from memory" },
];

/// The tray for a patient, with what follows from the findings known.
fn tray(procedure: &str, of: &str) -> Tray {
    let known = clinic().reason(&patient(of)).patient;
    clinic().tray(&procedure.into(), &known)
}

fn need(tray: &Tray, item: &str) -> Option<Need> {
    tray.items()
        .find(|(_, i)| i.item.as_str() == item)
        .map(|(_, i)| i.need)
}

#[test]
fn set_ups_hold_what_the_handbooks_list_and_nothing_that_harms() {
    let mut wrong = Vec::new();
    for set_up in &SET_UPS {
        let tray = tray(set_up.procedure, set_up.of);
        let SetUp {
            procedure,
            source,
            against,
            ..
        } = set_up;
        let known = |item: &str| clinic().catalogue().item(&item.into()).is_some();
        for item in set_up.needed.split_whitespace() {
            if need(&tray, item) != Some(Need::Needed) {
                wrong.push(format!("{procedure} needs {item} ({source})"));
            }
        }
        for item in set_up.called.split_whitespace() {
            if need(&tray, item) != Some(Need::IfCalled) {
                wrong.push(format!("{procedure} has {item} at hand ({source})"));
            }
        }
        for item in set_up.never.split_whitespace() {
            assert!(known(item), "{item} is no item");
            if need(&tray, item).is_some() {
                wrong.push(format!("{procedure} never has {item} ({against})"));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// Every treatment of the catalogue has a row above.
#[test]
fn no_treatment_is_left_out_of_the_table() {
    let rows: Vec<&str> = SET_UPS.iter().map(|s| s.procedure).collect();
    for procedure in &clinic().catalogue().procedures {
        let set_up = procedure.kind == catalogue::procedures::ProcedureKind::SetUp;
        assert!(
            set_up || rows.contains(&procedure.id.as_str()),
            "{} has no row",
            procedure.id
        );
    }
}

/// Procedure, findings, what comes first, what comes after it, why and who says so.
#[rustfmt::skip]
const ORDER: [(&str, &str, &str, &str, &str); 52] = [
    ("deep-caries-temporary", "", "aspirating-syringe", "dam-clamp-molar", HANDBOOKS),
    ("deep-caries-temporary", "", "dam-sheet-latex", "bur-330", HANDBOOKS),
    ("deep-caries-temporary", "", "spoon-excavator-small", "reinforced-zoe", HANDBOOKS),
    ("deep-caries-temporary", "remaining-dentine=0.4", "calcium-hydroxide-liner", "reinforced-zoe", "deepest first; common practice, no source"),
    ("deep-caries-temporary", "", "reinforced-zoe", "articulating-paper", HANDBOOKS),
    ("amalgam-restoration", "cavity-class=class-ii; remaining-dentine=0.4", "calcium-hydroxide-liner", "rmgi-liner", COVER),
    ("amalgam-restoration", "cavity-class=class-ii", "matrix-band", "amalgam-capsule", HANDBOOKS),
    ("amalgam-restoration", "", "amalgam-capsule", "amalgam-condenser-small", HANDBOOKS),
    ("amalgam-restoration", "", "amalgam-condenser-small", "amalgam-condenser-large", HANDBOOKS),
    ("amalgam-restoration", "", "amalgam-condenser-large", "ball-burnisher", HANDBOOKS),
    ("amalgam-restoration", "", "ball-burnisher", "discoid-cleoid-carver", HANDBOOKS),
    ("amalgam-restoration", "", "hollenback-carver", "articulating-paper", HANDBOOKS),
    ("anterior-composite", "", "shade-guide", "dam-sheet-latex", HANDBOOKS),
    ("anterior-composite", "", "clear-matrix-strip", "etchant-gel", STURDEVANT),
    ("anterior-composite", "", "etchant-gel", "bonding-agent", STURDEVANT),
    ("anterior-composite", "", "bonding-agent", "composite-compule", STURDEVANT),
    ("anterior-composite", "", "composite-compule", "finishing-disc", STURDEVANT),
    ("posterior-composite", "cavity-class=class-ii", "sectional-matrix", "bonding-agent", STURDEVANT),
    ("posterior-composite", "remaining-dentine=1", "rmgi-liner", "etchant-gel", STURDEVANT),
    ("posterior-composite", "", "flowable-composite", "composite-compule", STURDEVANT),
    ("glass-ionomer-restoration", "isolation=cotton-rolls", "dentine-conditioner", "glass-ionomer-restorative-capsule", HANDBOOKS),
    ("glass-ionomer-restoration", "isolation=cotton-rolls", "glass-ionomer-restorative-capsule", "glass-ionomer-coat", HANDBOOKS),
    ("indirect-pulp-cap", "remaining-dentine=0.4", "calcium-hydroxide-liner", "rmgi-capsule", COVER),
    ("direct-pulp-cap", "remaining-dentine=0; exposure=pin-point; bleeding=stops", "sodium-hypochlorite", "calcium-silicate-cement", "ESE position statement 2019; value from memory"),
    ("direct-pulp-cap", "remaining-dentine=0; exposure=pin-point; bleeding=stops", "calcium-silicate-cement", "rmgi-capsule", "ESE position statement 2019; value from memory"),
    ("rubber-dam", "", "dental-floss", "dam-sheet-latex", HANDBOOKS),
    ("rubber-dam", "", "dam-punch", "clamp-forceps", HANDBOOKS),
    ("local-anaesthesia", "", "topical-gel", "aspirating-syringe", HANDBOOKS),
    ("local-anaesthesia", "", "aspirating-syringe", "needle-long-27", "cartridge and harpoon first, then the needle; value from memory"),
    ("crown-preparation", "", "vacuum-matrix", "diamond-flat-end-taper", HANDBOOKS),
    ("crown-preparation", "", "retraction-cord-small", "pvs-light-body", HANDBOOKS),
    ("crown-preparation", "", "tray-adhesive", "pvs-heavy-body", HANDBOOKS),
    ("crown-preparation", "", "bis-acryl-resin", "temporary-cement-non-eugenol", HANDBOOKS),
    ("crown-cementation", "", "crown-remover", "glass-ionomer-luting", HANDBOOKS),
    ("crown-cementation", "", "glass-ionomer-luting", "bite-stick", HANDBOOKS),
    ("simple-extraction", "not-restorable=yes", "aspirating-syringe", "periosteal-elevator-molt-9", HANDBOOKS),
    ("simple-extraction", "not-restorable=yes", "periosteal-elevator-molt-9", "elevator-34s", HANDBOOKS),
    ("simple-extraction", "not-restorable=yes", "elevator-34s", "forceps-150", HANDBOOKS),
    ("surgical-extraction", "not-restorable=yes", "blade-15", "bur-surgical-round", HANDBOOKS),
    ("surgical-extraction", "not-restorable=yes", "surgical-curette", "needle-holder", HANDBOOKS),
    ("suture-removal", "", "chlorhexidine-rinse", "suture-scissors", HANDBOOKS),
    ("dry-socket-dressing", "", "sterile-saline", "dry-socket-paste", HANDBOOKS),
    ("root-canal-access", "cold=silent; remaining-dentine=0.5", "clamp-forceps", "sodium-hypochlorite", HANDBOOKS),
    ("root-canal-filling", "cold=silent; remaining-dentine=0.5", "radiograph-holder", "root-canal-sealer", HANDBOOKS),
    ("incision-and-drainage", "cold=silent; swelling=yes", "blade-11", "rubber-drain", HANDBOOKS),
    ("fissure-sealant", "", "pumice", "etchant-gel", HANDBOOKS),
    ("fissure-sealant", "", "etchant-gel", "fissure-sealant", HANDBOOKS),
    ("alginate-impression", "", "impression-disinfectant", "dental-stone", HANDBOOKS),
    ("in-office-whitening", "", "gingival-barrier", "whitening-gel", HANDBOOKS),
    ("orthodontic-debonding", "", "bracket-removing-pliers", "adhesive-removing-pliers", HANDBOOKS),
    ("implant-uncovering", "", "healing-abutment", "radiograph-holder", HANDBOOKS),
    ("pulpotomy-and-crown", "dentition=primary; remaining-dentine=0; exposure=pin-point; bleeding=stops", "bur-169l", "glass-ionomer-luting", HANDBOOKS),
];

#[test]
fn what_comes_first_lies_first() {
    for (procedure, of, first, then, source) in ORDER {
        let tray = tray(procedure, of);
        let order: Vec<&str> = tray.items().map(|(_, i)| i.item.as_str()).collect();
        let place = |id: &str| {
            let found = order.iter().position(|i| *i == id);
            found.unwrap_or_else(|| panic!("{procedure} lacks {id} ({source})"))
        };
        assert!(
            place(first) < place(then),
            "{procedure}: {first} comes before {then} ({source})"
        );
    }
}
