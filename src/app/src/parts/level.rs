//! How hard something is, in words.

use catalogue::cases::Level;

/// What a level is called.
pub fn level(level: Level) -> &'static str {
    match level {
        Level::Basic => "One thing to see",
        Level::Core => "A working day",
        Level::Demanding => "Several things at once",
    }
}
