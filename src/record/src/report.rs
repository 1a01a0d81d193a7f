//! What was found wrong with stored segments, in sentences for the student.

use core::fmt;

use crate::store::StoreError;

/// A segment that was set aside, wholly or in part. It stays where it is,
/// untouched.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Report {
    /// The key of the segment in the store.
    pub key: String,
    /// What is wrong with it; never empty.
    pub faults: Vec<Fault>,
    /// How many good events of it were kept.
    pub kept: usize,
}

/// One thing that is wrong with a stored segment.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Fault {
    /// Its text is not a segment at all.
    Foreign,
    /// The key stands among the segments but names none.
    StrangeKey,
    /// It was written by a later version, with this number.
    Newer(u32),
    /// The header does not match its checksum.
    Header,
    /// The header belongs to another segment.
    Misplaced,
    /// The line with this number (the header is line 1) is not a good event.
    Line(usize),
    /// The number of lines is not what the header says.
    Count {
        /// Events that the header speaks of.
        said: usize,
        /// Lines that are there.
        found: usize,
    },
    /// The text breaks off in a line.
    Torn,
    /// The store did not give the text.
    Unreadable(StoreError),
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Foreign => f.write_str("it is not a part of a Trayward record"),
            Self::StrangeKey => f.write_str("its name is not one that Trayward gives"),
            Self::Newer(version) => write!(
                f,
                "it was written by a newer Trayward (form {version}), which can still read it"
            ),
            Self::Header => f.write_str("its first line is damaged"),
            Self::Misplaced => f.write_str("it stands in the place of another part"),
            Self::Line(number) => write!(f, "line {number} is damaged"),
            Self::Count { said, found } => {
                write!(f, "it should hold {said} events but has {found} lines")
            }
            Self::Torn => f.write_str("its last line breaks off"),
            Self::Unreadable(error) => write!(f, "it could not be read ({error})"),
        }
    }
}

/// More faults than this are counted, not listed.
const LISTED: usize = 4;

impl fmt::Display for Report {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(
            f,
            "A stored part of the record, {}, was set aside: ",
            self.key
        )?;
        for (index, fault) in self.faults.iter().take(LISTED).enumerate() {
            let comma = if index == 0 { "" } else { ", " };
            write!(f, "{comma}{fault}")?;
        }
        if self.faults.len() > LISTED {
            write!(f, ", and {} more faults", self.faults.len() - LISTED)?;
        }
        match self.kept {
            0 => f.write_str(". Nothing of it could be used;")?,
            1 => f.write_str(". 1 good event of it is used;")?,
            many => write!(f, ". {many} good events of it are used;")?,
        }
        f.write_str(" it was neither changed nor deleted, and everything else goes on.")
    }
}
