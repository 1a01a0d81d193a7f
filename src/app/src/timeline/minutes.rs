//! Seconds from the start of the visit, as they are said and drawn.

/// A moment as minutes and seconds: `27:05`. Before the start it is `0:00`.
pub fn at(seconds: i64) -> String {
    let seconds = seconds.max(0);
    format!("{}:{:02}", seconds / 60, seconds % 60)
}

/// A length in words, to the nearest half minute from two minutes on.
pub fn lasting(seconds: u32) -> String {
    if seconds < 120 {
        return format!("{seconds} s");
    }
    let halves = (seconds + 15) / 30;
    let half = if halves % 2 == 1 { "½" } else { "" };
    format!("{}{half} min", halves / 2)
}

/// A place on a drawing in pixels, for so many pixels a minute.
pub fn pixels(seconds: i64, a_minute: i64) -> i64 {
    seconds * a_minute / 60
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn moments_and_lengths_read_like_a_clock() {
        for (seconds, said) in [(0, "0:00"), (65, "1:05"), (1639, "27:19"), (-5, "0:00")] {
            assert_eq!(at(seconds), said);
        }
        for (seconds, said) in [
            (20, "20 s"),
            (90, "90 s"),
            (120, "2 min"),
            (150, "2½ min"),
            (170, "3 min"),
            (420, "7 min"),
        ] {
            assert_eq!(lasting(seconds), said);
        }
    }
}
