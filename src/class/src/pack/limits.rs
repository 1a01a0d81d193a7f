//! How large and how deep a pack may be, and which characters it may hold.
//! What stands too deep within a file is refused by the reader of content.

/// The most bytes of the file that a pack travels as.
pub const MOST_BYTES: usize = 512 * 1024;

/// The most bytes of all texts: what stays within the file when quoted.
pub const MOST_TEXT: usize = 400_000;

/// The most files.
pub const MOST_FILES: usize = 200;

/// The most things (instruments, rules, cases …) of all kinds.
pub const MOST_THINGS: usize = 600;

/// The most rules: every patient that can be is run through each.
pub const MOST_RULES: usize = 60;

/// The most letters of an id, and of each part of a path.
pub const MOST_ID: usize = 60;

/// The most characters of a title.
pub const MOST_TITLE: usize = 80;

/// What is wrong with an id.
pub(super) fn id(id: &str) -> Result<(), String> {
    if is_slug(id) {
        return Ok(());
    }
    Err(format!(
        "“{}” is no id of a pack: it takes lower-case letters, digits and hyphens between them, at most {MOST_ID}.",
        shown(id)
    ))
}

/// Whether a text is lower-case words joined by hyphens.
pub fn is_slug(text: &str) -> bool {
    let plain = |b: u8| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'-';
    (1..=MOST_ID).contains(&text.len())
        && text.bytes().all(plain)
        && !text.starts_with('-')
        && !text.ends_with('-')
}

/// What is wrong with a title.
pub(super) fn title(title: &str) -> Result<(), String> {
    if title.is_empty() {
        return Err("The pack has no title; give it one that says what is in it.".into());
    }
    if title.chars().count() > MOST_TITLE {
        return Err(format!(
            "The title of the pack is longer than {MOST_TITLE} characters: “{}”.",
            shown(title)
        ));
    }
    if let Some(found) = title.chars().find(|c| *c == '\n' || is_hidden(*c)) {
        return Err(format!(
            "The title of the pack holds a character that cannot be shown (U+{:04X}).",
            u32::from(found)
        ));
    }
    Ok(())
}

/// What is wrong with the text of a file.
pub(super) fn text(path: &str, text: &str) -> Result<(), String> {
    for (line, number) in text.split('\n').zip(1..) {
        if let Some(found) = line.chars().find(|c| is_hidden(*c)) {
            return Err(format!(
                "content/{path}:{number}: the line holds a character that cannot be shown (U+{:04X}); take it out.",
                u32::from(found)
            ));
        }
    }
    Ok(())
}

/// Characters that no text needs: controls, and those that turn the direction of
/// writing, by which a text can look other than it is.
fn is_hidden(c: char) -> bool {
    (c.is_control() && c != '\n' && c != '\t')
        || matches!(c, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{feff}')
}

/// A text from elsewhere as it can stand in a sentence: short, and harmless to show.
pub(super) fn shown(text: &str) -> String {
    let mut shown: String = text
        .chars()
        .take(60)
        .map(|c| {
            if is_hidden(c) || c == '\n' {
                '\u{fffd}'
            } else {
                c
            }
        })
        .collect();
    if text.chars().nth(60).is_some() {
        shown.push('…');
    }
    shown
}
