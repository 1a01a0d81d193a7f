//! What happens in a class, in the form of version 1. The fixture was written
//! once, by another program with another library's CRC-32 (zlib in Python),
//! and is read for ever.

use record::{
    AssignmentTaken, CaseFinished, CaseStarted, Event, HandedIn, Id, Log, MemoryStore,
    MixHandedOver, Moment, PerCent, SittingId, SkillChecked, TaskBegun, Verdict, What, Writer,
    folds, read_export,
};

const EXPORT: &[u8] = include_bytes!("../fixtures/v1-class-export.txt");

const WRITER: Writer = Writer(0xc1);
const RUN: SittingId = SittingId(0xa1);
const SITTING: SittingId = SittingId(0xb1);

fn taken() -> AssignmentTaken {
    AssignmentTaken {
        run: RUN,
        assignment: "7d0c11f2".into(),
        code: "22Y9C0A5".into(),
        seat: u16::MAX,
        attempt: 1,
        title: "Assignment 7".into(),
        due: Some(20_500),
        tasks: 2,
        about: None,
        minutes: None,
    }
}

fn skill(done: &[&str], missed: &[&str], critical: bool) -> SkillChecked {
    let names = |all: &[&str]| all.iter().map(|&name| name.to_owned()).collect();
    SkillChecked {
        procedure: "amalgam".into(),
        done: names(done),
        missed: names(missed),
        critical,
        shown: !critical,
    }
}

/// What stands in the file, a minute apart.
fn events() -> Vec<Event> {
    let whats = [
        What::AssignmentTaken(taken()),
        What::CaseStarted(CaseStarted {
            sitting: SITTING,
            case: "deep-caries".into(),
            seed: 7,
            with: None,
            card: Some("name = \"Dam always\"\n".into()),
        }),
        What::TaskBegun(TaskBegun {
            run: RUN,
            place: 1,
            sitting: SITTING,
        }),
        What::CaseFinished(CaseFinished {
            sitting: SITTING,
            per_cent: PerCent::of(80),
        }),
        What::MixHandedOver(MixHandedOver {
            sitting: SittingId(0xb2),
            material: "reinforced-zoe".into(),
            usage: "temporary".into(),
            replay: r#"{"version":1}"#.into(),
            verdict: Verdict::Acceptable,
            per_cent: PerCent::of(80),
            competency: "mixing".into(),
            hint: false,
            seconds: 131,
        }),
        What::HandedIn(HandedIn {
            run: RUN,
            code: "24WS3".into(),
        }),
        What::AssignmentTaken(AssignmentTaken {
            run: SittingId(0xa2),
            assignment: "00000001".into(),
            code: "22Y9C".into(),
            seat: 0,
            attempt: u8::MAX,
            title: "Assignment".into(),
            due: None,
            tasks: 1,
            about: None,
            minutes: None,
        }),
        What::SkillChecked(skill(
            &["Lay the tray", "Odd \"\\\n\u{1f9b7} step"],
            &["Check the bite"],
            true,
        )),
        What::SkillChecked(skill(&[], &[], false)),
    ];
    let event = |(minute, what): (u64, What)| {
        let tick = 1_764_055_845_000 + minute * 60_000;
        Event {
            id: Id {
                tick,
                writer: WRITER,
            },
            at: Moment {
                utc_ms: tick.cast_signed(),
                offset_min: -300,
            },
            what,
        }
    };
    (0..).zip(whats).map(event).collect()
}

#[test]
fn events_of_a_class_of_version_1_are_read() {
    assert_eq!(read_export(EXPORT).unwrap(), events());
}

#[test]
fn they_are_still_written_letter_by_letter() {
    let mut log = Log::open(MemoryStore::new(), WRITER);
    for event in events() {
        log.append(event.at, event.what);
    }
    assert_eq!(log.export().as_bytes(), EXPORT);
}

#[test]
fn what_they_come_to_is_known() {
    let events = events();
    let all = folds::assignments(&events);
    assert_eq!(all.len(), 2);
    assert_eq!(all[0].taken, taken());
    assert_eq!((all[0].done(), all[0].complete()), (1, false));
    let code = all[0].handed_in.as_ref().map(|(_, code)| code.as_str());
    assert_eq!(code, Some("24WS3"));
    assert_eq!((all[1].done(), &all[1].handed_in), (0, &None));
    let of = folds::assigned(&events, SITTING);
    assert_eq!(of, Some(("7d0c11f2".into(), "Assignment 7".into())));
    let checked = folds::skills_checked(&events);
    let shown: Vec<bool> = checked.iter().map(|(_, skill)| skill.shown).collect();
    assert_eq!(shown, [false, true]);
}
