//! An event: something the student did, when, and which one of all it is.

use core::fmt;

use crate::checksum::is_lower_hex;
use crate::moment::Moment;
use crate::what::What;

/// Who wrote an event or a segment: 64 random bits that the page draws each
/// time it opens, so that no two tabs and no two devices ever share one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Writer(pub u64);

impl Writer {
    /// Reads a writer as [`Display`](fmt::Display) shows it: sixteen
    /// lower-case hexadecimal digits. Anything else gives `None`.
    pub fn parse(text: &str) -> Option<Self> {
        if text.len() != 16 || !is_lower_hex(text) {
            return None;
        }
        u64::from_str_radix(text, 16).ok().map(Self)
    }
}

impl fmt::Display for Writer {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:016x}", self.0)
    }
}

/// Which event this is; ids give all events one total order.
///
/// The tick is the writer's counter. It never runs behind the clock (UTC
/// milliseconds) nor behind any event the writer had seen, so an event always
/// sorts after those it may have answered to, even when a clock was set back.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Id {
    /// The writer's counter: grows with each event, need not be gapless.
    pub tick: u64,
    /// Who wrote it; decides between two writers at the same tick.
    pub writer: Writer,
}

/// One entry of the record.
///
/// Events order by id. Should two different events ever carry one id (a writer
/// id copied with a tab), both are kept, ordered by their contents.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Event {
    /// Which event this is.
    pub id: Id,
    /// When the student's clock said it happened.
    pub at: Moment,
    /// What happened.
    pub what: What,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_writer_has_one_spelling() {
        let writer = Writer(0xab);
        assert_eq!(writer.to_string(), "00000000000000ab");
        assert_eq!(Writer::parse("00000000000000ab"), Some(writer));
        for wrong in ["00000000000000AB", "ab", "", "0000000000000000ab"] {
            assert_eq!(Writer::parse(wrong), None, "{wrong}");
        }
    }

    #[test]
    fn ids_order_by_tick_before_writer() {
        let id = |tick, writer| Id {
            tick,
            writer: Writer(writer),
        };
        assert!(id(1, 9) < id(2, 1));
        assert!(id(2, 1) < id(2, 9));
    }
}
