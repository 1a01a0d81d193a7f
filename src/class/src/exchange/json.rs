//! The class report as JSON. Its schema (JSON Schema 2020-12) is published
//! beside it; numbers that would mean nothing are null, with the words that
//! stand in their place.

use crate::handin::SELF_REPORTED;
use crate::report::{Gate, ItemReport, OptionReport, Report, SeatReport, Told, Topic, Tries};
use serde_json::{Value, json};

/// The version of the form.
pub const VERSION: u32 = 1;

/// The schema.
pub const SCHEMA: &str = include_str!("../../schema/class-report.schema.json");

/// A report as JSON. Seats are numbers; labels never leave with it.
pub fn report(report: &Report) -> String {
    document(report).to_string()
}

fn document(report: &Report) -> Value {
    let told = |value: Told<Value>| {
        value.unwrap_or_else(|missing| json!({ "words": missing.to_string() }))
    };
    json!({
        "format": "trayward-class-report",
        "version": VERSION,
        "note": SELF_REPORTED,
        "name": report.name,
        "tries": match report.tries { Tries::First => "first", Tries::Last => "last" },
        "passMark": report.pass_mark,
        "competencies": report.competencies.iter().map(ToString::to_string).collect::<Vec<_>>(),
        "scores": {
            "items": report.scores.items,
            "seats": report.scores.totals.len(),
            "mean": report.scores.mean,
            "sd": report.scores.sd(),
            "cut": report.cut,
        },
        "reliability": told(report.reliability.map(|r| json!({
            "method": "Cronbach's alpha (KR-20), interval after Feldt",
            "alpha": r.alpha,
            "interval95": [r.interval.0, r.interval.1],
            "errorOfMeasurement": r.error,
            "kr21": r.kr21,
        }))),
        "consistency": told(report.consistency.map(|c| json!({
            "method": "Hanson and Brennan, two-parameter beta",
            "cut": c.cut,
            "agreement": c.agreement,
            "kappa": c.kappa,
            "accuracy": c.accuracy,
        }))),
        "crossChecks": report.cross_checks.map(|c| json!({
            "subkoviak": { "agreement": c.subkoviak.0, "kappa": c.subkoviak.1 },
            "huynh": c.huynh.map(|h| json!({ "agreement": h.0, "kappa": h.1 })),
        })),
        "dependability": told(report.dependability.map(|phi| json!({
            "method": "Phi(lambda) after Brennan and Kane",
            "phi": phi,
        }))),
        "seats": report.seats.iter().map(seat).collect::<Vec<_>>(),
        "items": report.items.iter().map(item).collect::<Vec<_>>(),
        "teachAgain": report.topics.iter().map(topic).collect::<Vec<_>>(),
        "talks": report.talks.iter().map(|talk| json!({
            "seat": talk.seat.0,
            "why": talk.why.to_string(),
        })).collect::<Vec<_>>(),
    })
}

fn seat(seat: &SeatReport) -> Value {
    json!({
        "seat": seat.seat.0,
        "try": seat.attempt,
        "late": seat.late,
        "seconds": seat.seconds,
        "asked": seat.all.asked,
        "right": seat.all.right,
        "harmful": seat.all.harmful,
        "blank": seat.all.blank,
        "marks": seat.marks,
        "errorOfMeasurement": seat.error,
        "passed": seat.passed,
        "byCompetency": seat.parts.iter().map(|part| json!({
            "asked": part.asked,
            "right": part.right,
            "harmful": part.harmful,
            "blank": part.blank,
        })).collect::<Vec<_>>(),
    })
}

fn item(item: &ItemReport) -> Value {
    let shown = item.gate != Gate::Counts;
    let told = |value: Option<f64>| value.filter(|_| shown);
    json!({
        "task": item.place,
        "id": &*item.id,
        "name": &*item.name,
        "competency": &*item.competency,
        "common": item.common,
        "gate": match item.gate {
            Gate::Counts => "counts",
            Gate::Provisional => "provisional",
            Gate::Full => "full",
        },
        "asked": item.asked,
        "right": item.right,
        "harmful": item.harmful,
        "blank": item.blank,
        "p": told(Some(item.p)),
        "r": told(item.r),
        "rInterval95": item.r_interval.filter(|_| shown).map(|(low, high)| [low, high]),
        "d27": told(item.d27),
        "alphaWithout": told(item.alpha_without),
        "meanSeconds": item.mean_seconds,
        "flags": item.flags.iter().map(ToString::to_string).collect::<Vec<_>>(),
        "options": item.options.iter().map(|o| option(o, shown)).collect::<Vec<_>>(),
    })
}

fn option(option: &OptionReport, shown: bool) -> Value {
    json!({
        "id": &*option.id,
        "label": &*option.label,
        "fits": option.fits,
        "count": option.count,
        "share": shown.then_some(option.share),
        "r": option.r.filter(|_| shown),
        "meanScore": option.mean_score.filter(|_| shown),
        "thirds": option.thirds,
    })
}

fn topic(topic: &Topic) -> Value {
    json!({
        "competency": &*topic.competency,
        "asked": topic.asked,
        "right": topic.right,
        "harmful": topic.harmful,
        "need": topic.need,
        "items": topic.items.iter().map(|again| json!({
            "item": again.item,
            "need": again.need,
            "fault": again.fault.as_ref().map(crate::report::CommonFault::words),
        })).collect::<Vec<_>>(),
    })
}
