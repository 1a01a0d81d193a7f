//! The browser: the only folder that knows there is one, apart from the views.

pub mod address;
pub mod beside;
pub mod breath;
pub mod build;
pub mod camera;
pub mod chance;
pub mod clock;
pub mod colours;
pub mod files;
pub mod focus;
pub mod handing;
pub mod lms;
pub mod network;
pub mod persistence;
pub mod printer;
pub mod scroll;
pub mod storage;
pub mod symbols;
pub mod unfinished;
pub mod update;
