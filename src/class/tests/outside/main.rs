//! Checks of codes, reports and exchange formats against the outside world:
//! public fixtures, and readers that other people wrote.

mod calendar;
mod cases;
mod codes;
mod converted;
mod hostile;
mod inbox;
mod made;
mod packages;
mod published;
mod report;
mod scale;
mod symbols;
mod tables;
mod tasks;
mod words;
