//! A program of its own, as it looks at how much memory it has taken.

use class::{checksum, qr::Joiner};

/// The memory of this program in kilobytes, as Linux tells it.
fn resident() -> u64 {
    let text = std::fs::read_to_string("/proc/self/status").expect("Linux tells it");
    let line = text.lines().find(|line| line.starts_with("VmRSS:"));
    let number = line.and_then(|line| line.split_whitespace().nth(1));
    number.and_then(|it| it.parse().ok()).expect("a number")
}

/// Parts that each say that they are one of many, and never come to a whole:
/// what they say takes no room, only what they hold.
#[test]
fn parts_take_no_more_room_than_they_bring() {
    const PARTS: u32 = 200_000;
    let before = resident();
    let mut joiner = Joiner::default();
    for whole in 0..PARTS {
        let mut part = vec![0x13, 0, 0, 0, 0, 1, 64];
        part.extend(whole.to_be_bytes());
        let sum = checksum(&part);
        part.extend(sum.to_be_bytes());
        joiner.add(&part).expect("a part");
    }
    let taken = resident().saturating_sub(before) * 1024 / u64::from(PARTS);
    println!("{taken} bytes a part of 15");
    assert!(taken < 400, "{taken} bytes a part");
}
