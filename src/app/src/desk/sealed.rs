//! The stored form of what the desk keeps: a line that says what it is and
//! the version of its form, the lines kept, and a line with their number and
//! checksum.
//!
//! ```text
//! trayward-class 1
//! a line
//! end 1 7d0c11f2
//! ```

use class::checksum;

const HEAD: &str = "trayward-class 1\n";

/// Why stored lines cannot be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unread {
    /// A newer version wrote them.
    Newer,
    /// They are not as they were written.
    Damaged,
}

/// Seals lines. No line holds a line break.
pub fn seal<'l>(lines: impl IntoIterator<Item = &'l str>) -> String {
    let mut text = String::from(HEAD);
    let mut count = 0;
    for line in lines {
        text.push_str(line);
        text.push('\n');
        count += 1;
    }
    let end = end(count, &text);
    text + &end
}

/// Opens what [`seal`] sealed.
pub fn open(text: &str) -> Result<Vec<String>, Unread> {
    if !text.starts_with(HEAD) {
        let newer = text.starts_with("trayward-class ");
        return Err(if newer {
            Unread::Newer
        } else {
            Unread::Damaged
        });
    }
    let at = text.rfind("end ").ok_or(Unread::Damaged)?;
    let (before, last) = text.split_at(at);
    let lines: Vec<String> = before
        .strip_prefix(HEAD)
        .unwrap_or_default()
        .lines()
        .map(str::to_owned)
        .collect();
    if last == end(lines.len(), before) {
        Ok(lines)
    } else {
        Err(Unread::Damaged)
    }
}

fn end(count: usize, before: &str) -> String {
    format!("end {count} {:08x}\n", checksum(before.as_bytes()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        /// Whatever lies in the storage, also under a checksum that fits.
        #[test]
        fn anything_can_be_opened(text in any::<String>(), count in 0..9_usize) {
            let _ = open(&text);
            let head = format!("{HEAD}{text}");
            let _ = open(&head);
            let lines = open(&format!("{head}{}", end(count, &head)));
            prop_assert!(lines.is_err() || lines.is_ok_and(|it| it.len() == count));
        }
    }

    #[test]
    fn lines_come_back_as_they_were_sealed() {
        for lines in [&[][..], &["one"], &["one", "", "end 1"], &["9 per cent"]] {
            assert_eq!(open(&seal(lines.iter().copied())).unwrap(), lines);
        }
    }

    #[test]
    fn what_was_changed_is_told() {
        let sealed = seal(["one", "two"]);
        for (text, why) in [
            (sealed.replace("two", "three"), Unread::Damaged),
            (sealed.replace("two\n", ""), Unread::Damaged),
            (sealed.replace("class 1", "class 2"), Unread::Newer),
            (sealed[..sealed.len() - 4].to_owned(), Unread::Damaged),
            (String::new(), Unread::Damaged),
        ] {
            assert_eq!(open(&text), Err(why), "{text}");
        }
    }
}
