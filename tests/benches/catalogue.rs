//! How long content takes to be read and checked when the page is built, and
//! the packed catalogue to be unpacked when it is opened.

use std::hint::black_box;
use std::path::Path;
use std::time::Instant;

/// How often the catalogue is unpacked; the mean is shown.
const TIMES: u32 = 100;

fn main() {
    let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("../content");
    let begun = Instant::now();
    match catalogue::source::read(&content) {
        Err(faults) => println!(
            "The content has {} faults: run `cargo site check`.",
            faults.len()
        ),
        Ok(read) => {
            row("content: read and check", begun.elapsed().as_secs_f64());
            let packed = catalogue::pack(&read);
            let begun = Instant::now();
            for _ in 0..TIMES {
                let _ = black_box(catalogue::unpack(black_box(&packed)));
            }
            let one = begun.elapsed().as_secs_f64() / f64::from(TIMES);
            row(&format!("catalogue of {} bytes: unpack", packed.len()), one);
        }
    }
}

fn row(what: &str, seconds: f64) {
    println!("{what:<44} {:>9.3} ms", seconds * 1000.0);
}
