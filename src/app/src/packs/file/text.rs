//! A file as a text, with the line that the cursor stands in.

use super::super::writing::Writing;
use crate::parts::notice::Fault;
use class::pack::PackFile;
use leptos::{html::Textarea, prelude::*};

/// How many lines stand above the one that is jumped to.
const ABOVE: i32 = 4;

/// The text of a file.
#[component]
pub fn TextView(
    /// The pack.
    writing: Writing,
    /// The path of the file.
    path: String,
    /// Line and column to jump to, counted from 1.
    jump: RwSignal<Option<(usize, usize)>>,
) -> impl IntoView {
    let fault = RwSignal::new(None::<String>);
    let place = RwSignal::new((1, 1));
    let field: NodeRef<Textarea> = NodeRef::new();
    let text = writing
        .pack
        .with_untracked(|pack| pack.file(&path).map(|file| file.text.clone()));
    let text = text.unwrap_or_default();
    let write = move |event: web_sys::Event| {
        let text = event_target_value(&event);
        let done = writing.change(|pack| {
            let replaces = pack.file(&path).is_some_and(|file| file.replaces);
            pack.put(&path, PackFile { text, replaces })
        });
        fault.set(done.err());
    };
    let follow = move || {
        if let Some(field) = field.get_untracked() {
            let at = field.selection_start().ok().flatten().unwrap_or(0);
            place.set(line_and_column(&field.value(), at));
        }
    };
    Effect::new(move |_| {
        if let (Some(field), Some(to)) = (field.get(), jump.get()) {
            place.set(to);
            jump.set(None);
            // The heading takes focus in the next frame when a screen is new.
            request_animation_frame(move || {
                request_animation_frame(move || go(&field, to));
            });
        }
    });
    view! {
        <label class="field pk-text-field">
            <span>"Text"</span>
            <textarea
                class="pk-text"
                data-test="pack-text"
                spellcheck="false"
                autocapitalize="none"
                wrap="off"
                node_ref=field
                on:input=write
                on:keyup=move |_| follow()
                on:click=move |_| follow()
            >
                {text}
            </textarea>
        </label>
        <p class="hint pk-place" data-test="pack-place">
            {move || {
                let (line, column) = place.get();
                format!("Line {line}, column {column}")
            }}
        </p>
        <Fault says=fault test="text-fault" />
    }
}

/// Puts the cursor at a line and a column, and shows it.
fn go(field: &web_sys::HtmlTextAreaElement, (line, column): (usize, usize)) {
    let text = field.value();
    let at = offset(&text, line, column);
    // Focus first: setting a selection shows only what has focus.
    let _ = field.focus();
    let _ = field.set_selection_range(at, at);
    let lines = i32::try_from(text.split('\n').count()).unwrap_or(1).max(1);
    let above = i32::try_from(line).unwrap_or(1) - 1 - ABOVE;
    field.set_scroll_top((field.scroll_height() / lines * above).max(0));
}

/// The offset, in units of the browser, of a line and a column.
fn offset(text: &str, line: usize, column: usize) -> u32 {
    let before: usize = text
        .split('\n')
        .take(line.saturating_sub(1))
        .map(|line| line.encode_utf16().count() + 1)
        .sum();
    let own = text
        .split('\n')
        .nth(line.saturating_sub(1))
        .unwrap_or_default();
    let within: usize = own
        .chars()
        .take(column.saturating_sub(1))
        .map(char::len_utf16)
        .sum();
    u32::try_from(before + within).unwrap_or(u32::MAX)
}

/// Line and column, counted from 1, of an offset in units of the browser.
fn line_and_column(text: &str, at: u32) -> (usize, usize) {
    let (mut line, mut column, mut seen) = (1, 1, 0);
    for c in text.chars() {
        if seen >= at {
            break;
        }
        // A character has one unit or two.
        seen += if c.len_utf16() == 2 { 2 } else { 1 };
        if c == '\n' {
            (line, column) = (line + 1, 1);
        } else {
            column += 1;
        }
    }
    (line, column)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_place_goes_to_an_offset_and_back() {
        let text = "one\nzwei 𝄞 x\n\nend";
        for (line, column) in [(1, 1), (2, 6), (2, 7), (2, 8), (3, 1), (4, 3)] {
            assert_eq!(
                line_and_column(text, offset(text, line, column)),
                (line, column)
            );
        }
    }
}
