//! Reading a time of day.

use super::{Refusal, refuse};

/// A time of day in minutes from midnight.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Clock(u32);

impl Clock {
    /// A time of day; whole days above it fall away.
    pub fn at(minutes: u32) -> Self {
        Self(minutes % (24 * 60))
    }

    /// Minutes from midnight.
    pub fn minutes(self) -> u32 {
        self.0
    }

    /// `09:05`.
    pub fn text(self) -> String {
        format!("{:02}:{:02}", self.0 / 60, self.0 % 60)
    }
}

/// Reads a time such as `14:05`, `14.05`, `2:05 pm`.
///
/// # Errors
/// A sentence, if it is no time of day.
pub fn clock(text: &str) -> Result<Clock, Refusal> {
    let lower = text
        .trim()
        .to_lowercase()
        .replace("p.m.", "pm")
        .replace("a.m.", "am");
    let (body, half) = match (lower.strip_suffix("pm"), lower.strip_suffix("am")) {
        (Some(rest), _) => (rest.trim().to_owned(), Some(12)),
        (_, Some(rest)) => (rest.trim().to_owned(), Some(0)),
        _ => (lower.trim_end_matches('h').trim().to_owned(), None),
    };
    let wrong = || {
        Refusal(format!(
            "'{}' is no time of day. Write it as 14:05.",
            text.trim()
        ))
    };
    let (hours, minutes) = body.split_once([':', '.', 'h']).ok_or_else(wrong)?;
    let plain = |s: &str| (1..=2).contains(&s.len()) && s.bytes().all(|b| b.is_ascii_digit());
    if !plain(hours) || minutes.len() != 2 || !plain(minutes) {
        return Err(wrong());
    }
    let (hours, minutes): (u32, u32) = (
        hours.parse().map_err(|_| wrong())?,
        minutes.parse().map_err(|_| wrong())?,
    );
    if minutes > 59 || hours > 23 {
        return refuse(format!(
            "'{}' is past the end of the hour or the day.",
            text.trim()
        ));
    }
    match half {
        Some(_) if hours == 0 || hours > 12 => Err(wrong()),
        Some(half) => Ok(Clock(hours % 12 * 60 + half * 60 + minutes)),
        None => Ok(Clock(hours * 60 + minutes)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn times_of_day() {
        for (text, minutes) in [
            ("14:05", Some(845)),
            ("9:05", Some(545)),
            ("14.05", Some(845)),
            ("2:05 pm", Some(845)),
            ("12:00 am", Some(0)),
            ("12:30 pm", Some(750)),
            ("24:00", None),
            ("14:60", None),
            ("13:00 pm", None),
            ("14", None),
            ("14:5", None),
            ("", None),
        ] {
            assert_eq!(clock(text).ok().map(Clock::minutes), minutes, "{text}");
        }
    }
}
