//! A code on its way to other people: a link to copy or share, symbols for a
//! camera, a file.

use crate::{
    browser::{files, handing},
    parts::announce::announcer,
};
use class::qr;
use leptos::{prelude::*, task::spawn_local};

/// A symbol for a camera, drawn dark on light in every colour scheme, as
/// readers expect it.
#[component]
pub fn Symbol(
    /// What stands before the letters.
    prefix: String,
    /// The letters.
    letters: String,
    /// What it is, for those who do not see it.
    #[prop(into)]
    label: String,
) -> impl IntoView {
    qr::Symbol::of(&prefix, &letters).map(|symbol| {
        let side = symbol.side();
        view! {
            <svg
                class="as-symbol"
                viewBox=format!("0 0 {side} {side}")
                role="img"
                aria-label=label
                shape-rendering="crispEdges"
                data-test="symbol"
            >
                <rect width=side height=side fill="#fff" />
                <path d=symbol.path() fill="#000" />
            </svg>
        }
    })
}

/// The ways out for a code that was sealed.
#[component]
pub fn Outward(
    /// What stands before the letters of the link, from the `#` on.
    #[prop(into)]
    prefix: String,
    /// The whole code, in letters.
    letters: String,
    /// The code as bytes.
    bytes: Vec<u8>,
    /// What it is called, as the title of what is shared.
    #[prop(into)]
    title: String,
    /// The name of the file.
    file: String,
) -> impl IntoView {
    let announcer = announcer();
    let before = format!("{}{prefix}", handing::base());
    let link = StoredValue::new(format!("{before}{letters}"));
    let said = RwSignal::new(None::<String>);
    let say = move |sentence: String| {
        announcer.say(sentence.clone());
        said.set(Some(sentence));
    };
    let copy = move |_| {
        spawn_local(async move {
            let copied = handing::copy(&link.get_value()).await;
            say(copied.map_or_else(|why| why, |()| "The link is copied.".into()));
        });
    };
    let title = StoredValue::new(title);
    let share = move |_| {
        spawn_local(async move { handing::share(&title.get_value(), &link.get_value()).await });
    };
    let save = move |_| {
        let text = format!("{}\r\n", link.get_value());
        if let Err(why) = files::download(&file, &text) {
            say(why);
        }
    };
    let symbols = qr::split(&before, &bytes).unwrap_or_default();
    let count = symbols.len();
    let drawn: Vec<_> = (1..)
        .zip(symbols)
        .map(|(number, letters)| {
            let label = if count == 1 {
                "The code as a symbol for a camera".to_owned()
            } else {
                format!("Symbol {number} of {count}")
            };
            let caption = (count > 1).then(|| label.clone());
            view! {
                <figure class="as-figure">
                    <Symbol prefix=before.clone() letters label />
                    {caption.map(|says| view! { <figcaption>{says}</figcaption> })}
                </figure>
            }
        })
        .collect();
    let share = handing::can_share().then(|| {
        view! {
            <button type="button" class="button button-quiet" data-test="share" on:click=share>
                "Share"
            </button>
        }
    });
    view! {
        <div class="as-outward">
            <label class="field as-link">
                <span>"The link"</span>
                <input type="text" readonly data-test="link" prop:value=link.get_value() />
            </label>
            <div class="actions">
                <button type="button" class="button" data-test="copy-link" on:click=copy>
                    "Copy the link"
                </button>
                {share}
                <button type="button" class="button button-quiet" data-test="save-code" on:click=save>
                    "Save as a file"
                </button>
            </div>
            {move || said.get().map(|says| view! { <p class="hint" data-test="outward-said">{says}</p> })}
            <div class="as-symbols" data-test="symbols">{drawn}</div>
            {(count == 0)
                .then(|| view! { <p class="hint">"This is too much for symbols. Use the link or the file."</p> })}
            {(count > 1)
                .then(|| view! { <p class="hint">"All of the symbols have to be read, in any order."</p> })}
        </div>
    }
}
