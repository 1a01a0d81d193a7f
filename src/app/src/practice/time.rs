//! How much of a form's time is left, in words.

use record::{Moment, folds::Form};

/// Seconds left; none where the form is untimed.
pub fn left(form: &Form, now: Moment) -> Option<u32> {
    let minutes = form.begun.minutes?;
    Some((u32::from(minutes) * 60).saturating_sub(form.seconds_worked(now)))
}

/// Whether the time ran out before a form was handed in.
pub fn ran_out(form: &Form) -> bool {
    let limit = form.begun.minutes.map(|minutes| u32::from(minutes) * 60);
    let worked = form.finished.map(|at| form.seconds_worked(at));
    worked
        .zip(limit)
        .is_some_and(|(worked, limit)| worked >= limit)
}

/// That a form was closed because its time ran out, and how long after; nothing
/// where it was handed in in time or has no limit.
pub fn closed(form: &Form) -> Option<String> {
    if !ran_out(form) {
        return None;
    }
    let limit = u32::from(form.begun.minutes?) * 60;
    let late = form.seconds_worked(form.finished?).saturating_sub(limit);
    let when = match late {
        0..120 => "It was handed in as it stood.".to_owned(),
        120..7200 => format!(
            "The page was closed then; it was handed in as it stood when you came back, {} minutes later.",
            late / 60
        ),
        _ => format!(
            "The page was closed then; it was handed in as it stood when you came back, {} hours later.",
            late / 3600
        ),
    };
    Some(format!("The time ran out. {when}"))
}

/// That time ran on while a form lay closed: said when it is taken up again
/// after at least a minute.
pub fn away(form: &Form, now: Moment) -> Option<String> {
    let left = left(form, now)?;
    let since = form.last.utc_ms;
    let minutes = now.utc_ms.saturating_sub(since) / 60_000;
    (minutes >= 1 && !form.is_paused() && form.finished.is_none()).then(|| {
        let s = if minutes == 1 { "" } else { "s" };
        format!(
            "Your last answer was {minutes} minute{s} ago. The time goes by the clock, also while the page is closed; only a pause stops it. {}.",
            words(left).trim_end_matches('.')
        )
    })
}

/// The time left in words, coarse enough not to hurry anybody.
pub fn words(seconds: u32) -> String {
    match seconds {
        0 => "The time is up.".into(),
        1..=60 => "Less than a minute left".into(),
        _ => format!("{} min left", seconds.div_ceil(60)),
    }
}

/// The moments at which the time left is said aloud, in seconds.
pub fn is_said(seconds: u32) -> bool {
    [600, 300, 60].contains(&seconds)
}

#[cfg(test)]
mod tests {
    use super::*;
    use record::{FormBegun, PerCent, SittingId};

    fn at(seconds: i64) -> Moment {
        Moment {
            utc_ms: seconds * 1000,
            offset_min: 0,
        }
    }

    #[test]
    fn a_pause_and_a_clock_moved_back_take_no_time() {
        let mut form = timed(None, 1000);
        assert_eq!(left(&form, at(1100)), Some(500));
        assert_eq!(left(&form, at(500)), Some(600));
        form.pauses = vec![(at(1100), Some(at(1200))), (at(1250), None)];
        assert_eq!(left(&form, at(2000)), Some(450));
        assert_eq!(left(&form, at(999_999)), Some(450));
        form.pauses.clear();
        assert_eq!(left(&form, at(9999)), Some(0));
        form.begun.minutes = None;
        assert_eq!(left(&form, at(1100)), None);
    }

    /// Ten minutes, begun at 1000 s.
    fn timed(finished: Option<i64>, last: i64) -> Form {
        Form {
            begun: FormBegun {
                form: SittingId(1),
                questions: Vec::new(),
                code: None,
                minutes: Some(10),
                pass: PerCent::of(75),
            },
            at: at(1000),
            answers: std::collections::BTreeMap::new(),
            flagged: std::collections::BTreeSet::new(),
            pauses: Vec::new(),
            finished: finished.map(at),
            last: at(last),
        }
    }

    #[test]
    fn a_form_that_closed_itself_says_so_and_how_late() {
        assert_eq!(closed(&timed(None, 1000)), None);
        assert_eq!(closed(&timed(Some(1599), 1590)), None);
        let said = |finished| closed(&timed(Some(finished), 1500)).unwrap_or_default();
        assert!(said(1600).contains("handed in as it stood."));
        assert!(said(1600 + 45 * 60).contains("45 minutes later"));
        assert!(said(1600 + 9 * 3600).contains("9 hours later"));
        let mut paused = timed(Some(5000), 1200);
        paused.pauses = vec![(at(1200), Some(at(4900)))];
        assert_eq!(closed(&paused), None, "a pause takes no time");
        let mut untimed = timed(Some(99_999), 1200);
        untimed.begun.minutes = None;
        assert_eq!(closed(&untimed), None);
    }

    #[test]
    fn time_away_is_told_and_a_pause_or_a_clock_moved_back_is_none() {
        let said = away(&timed(None, 1100), at(1100 + 4 * 60)).unwrap_or_default();
        assert!(
            said.contains("4 minutes ago") && said.contains("5 min left"),
            "{said}"
        );
        assert_eq!(away(&timed(None, 1100), at(1130)), None, "half a minute");
        assert_eq!(
            away(&timed(None, 1100), at(900)),
            None,
            "a clock moved back"
        );
        let mut paused = timed(None, 1100);
        paused.pauses = vec![(at(1100), None)];
        assert_eq!(away(&paused, at(1400)), None);
        let mut untimed = timed(None, 1100);
        untimed.begun.minutes = None;
        assert_eq!(away(&untimed, at(1400)), None);
    }
}
