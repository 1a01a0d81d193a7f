//! Small parts that several screens share.

pub mod advice;
pub mod announce;
pub mod assigned;
pub mod capital;
pub mod choice;
pub mod condition;
pub mod drawing;
pub mod fold;
pub mod icon;
pub mod item_link;
pub mod item_picker;
pub mod lesson;
pub mod level;
pub mod mixing;
pub mod more;
pub mod notice;
pub mod order;
pub mod page;
pub mod search;
pub mod slips;
pub mod sources;
pub mod steps;
pub mod tray;
pub mod verdict;
pub mod wanted;
pub mod within;
