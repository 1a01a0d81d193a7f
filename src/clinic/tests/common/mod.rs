//! The catalogue as it is taught, read once a test thread.

use catalogue::Catalogue;
use clinic::Clinic;
use std::{cell::OnceCell, path::Path, rc::Rc};

pub fn clinic() -> Rc<Clinic> {
    thread_local! {
        static CLINIC: OnceCell<Rc<Clinic>> = const { OnceCell::new() };
    }
    CLINIC.with(|cell| {
        let read = || -> Catalogue {
            let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../content");
            catalogue::source::read(&content).expect("content without faults")
        };
        cell.get_or_init(|| Rc::new(Clinic::new(Rc::new(read()))))
            .clone()
    })
}
