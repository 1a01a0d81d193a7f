//! How much of a form's time is left, in words.

use record::{Moment, folds::Form};

/// Seconds left; none where the form is untimed.
pub fn left(form: &Form, now: Moment) -> Option<u32> {
    let minutes = form.begun.minutes?;
    Some((u32::from(minutes) * 60).saturating_sub(form.seconds_worked(now)))
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
        let mut form = Form {
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
            finished: None,
        };
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
}
