//! Comparing and joining texts of the catalogue.

/// The content words of a text as a set of 128 marks, quick to compare. Two
/// words may share a mark, so likeness can only be overstated: a wrong option is
/// then passed over, never let through.
pub(crate) fn marks(text: &str) -> u128 {
    let (mut all, mut hash, mut length) = (0, SEED, 0u8);
    // One pass over the bytes, and one more turn to end the last word.
    for byte in text.bytes().chain([b' ']) {
        if byte.is_ascii_alphanumeric() || !byte.is_ascii() {
            if length < STEM {
                hash = mixed(hash, byte);
            }
            length = length.saturating_add(1);
        } else {
            if length > 3 && !COMMON_HASHES.contains(&hash) {
                all |= 1 << (hash % 128);
            }
            (hash, length) = (SEED, 0);
        }
    }
    all
}

/// How many bytes the forms of a word share.
const STEM: u8 = 5;
const SEED: u32 = 0x811c_9dc5;

/// One step of FNV-1a, without regard to case.
const fn mixed(hash: u32, byte: u8) -> u32 {
    (hash ^ byte.to_ascii_lowercase() as u32).wrapping_mul(0x0100_0193)
}

const COMMON_HASHES: [u32; COMMON.len()] = {
    let mut hashes = [SEED; COMMON.len()];
    let mut word = 0;
    while word < COMMON.len() {
        let bytes = COMMON[word].as_bytes();
        let mut at = 0;
        while at < bytes.len() && at < STEM as usize {
            hashes[word] = mixed(hashes[word], bytes[at]);
            at += 1;
        }
        word += 1;
    }
    hashes
};

/// How alike two texts are, from 0 to 1: the share of the shorter one's words
/// that the other has too.
pub(crate) fn alike(a: u128, b: u128) -> f32 {
    let least = a.count_ones().min(b.count_ones());
    let both = (a & b).count_ones();
    // Counts up to 128 are exact.
    #[expect(clippy::cast_precision_loss)]
    let share = both as f32 / least.max(1) as f32;
    share
}

/// Whether a text uses a content word of another: the clue that gives an option away.
pub(crate) fn echoes(text: &str, of: &str) -> bool {
    words(text).any(|a| words(of).any(|b| stem(a).eq_ignore_ascii_case(stem(b))))
}

fn words(text: &str) -> impl Iterator<Item = &str> {
    text.split(|c: char| !c.is_alphanumeric())
        .filter(|w| w.len() > 3 && !COMMON.contains(w))
}

/// Words that say nothing about what a text is about.
const COMMON: [&str; 26] = [
    "that", "with", "this", "from", "into", "they", "then", "than", "when", "your", "over",
    "under", "before", "after", "each", "only", "once", "have", "will", "been", "does", "there",
    "which", "where", "while", "until",
];

/// The part of a word that its forms share.
fn stem(word: &str) -> &str {
    word.char_indices()
        .nth(5)
        .map_or(word, |(at, _)| &word[..at])
}

/// With a capital in front and a full stop behind, unless it ends otherwise.
pub(crate) fn sentence(text: &str) -> String {
    let mut text = capital(text.trim());
    if !text.ends_with(['.', '?', '!', '”']) {
        text.push('.');
    }
    text
}

/// With a capital in front.
pub(crate) fn capital(text: &str) -> String {
    let mut chars = text.chars();
    match chars.next() {
        Some(first) => first.to_uppercase().chain(chars).collect(),
        None => String::new(),
    }
}

/// The name of a procedure or plan inside a sentence: in quotation marks, since
/// names of one kind take an article and others do not.
pub(crate) fn within(name: &str) -> String {
    format!("“{name}”")
}

/// With a small letter in front.
pub(crate) fn lower(text: &str) -> String {
    let mut chars = text.chars();
    match chars.next() {
        Some(first) => first.to_lowercase().chain(chars).collect(),
        None => String::new(),
    }
}

/// The first sentence of a text, and the next ones where it is too short to say much.
pub(crate) fn opening(text: &str) -> &str {
    let mut from = 0;
    while let Some(at) = text[from..].find(". ") {
        from += at + 1;
        if from >= 45 {
            return &text[..from];
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn texts_with_the_same_words_are_alike() {
        let a = marks("to carry the pellets to the floor");
        assert!(alike(a, marks("to carry pellets to a floor")) > 0.99);
        assert!(alike(a, marks("to hold the tongue")) < 0.01);
    }

    #[test]
    fn forms_of_a_word_echo_it() {
        assert!(echoes("to mix the cements", "Stiff cement spatula"));
        assert!(!echoes("to press it home", "Stiff cement spatula"));
    }

    #[test]
    fn an_opening_is_a_whole_sentence() {
        let text = "Rinse. Then wipe the floor with a moist pellet and dry it. Cotton dries.";
        assert_eq!(
            opening(text),
            "Rinse. Then wipe the floor with a moist pellet and dry it."
        );
        assert_eq!(opening("Short."), "Short.");
    }
}
