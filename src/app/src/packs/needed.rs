//! An assignment that belongs to other lessons than the page was opened with:
//! which packs it was set with, and how to come to them.

use super::{
    in_use::in_use, kept, offered::FetchFromSite, puts::reopen, taking::OpenFromFile, used,
};
use crate::{
    assignments::bank,
    parts::{
        announce::announcer,
        notice::{Fault, Notice, Tone},
    },
    place::SET,
};
use class::{
    assignment::Assignment,
    bank::Bank,
    pack::{self, Pack},
    refusal::Refusal,
};
use leptos::prelude::*;

/// How many packs of a device are tried together. Each doubles the combinations.
const TRIED: usize = 10;

/// What the letters of an assignment that is set now stand after: with packs in
/// use their names, `#/a/our-practice.3+other.1/`.
pub fn set_prefix() -> String {
    format!("{SET}{}", needed())
}

/// An assignment of this page in letters, with the packs that it needs: what its
/// link stands for.
pub fn code(assignment: &Assignment) -> String {
    format!("{}{}", needed(), assignment.letters())
}

/// The packs in use, as a code names them.
fn needed() -> String {
    let used = in_use().used();
    let each: Vec<String> = used
        .iter()
        .map(|used| format!("{}.{}", used.origin.id, used.origin.version))
        .collect();
    match each.join("+") {
        none if none.is_empty() => none,
        named => format!("{named}/"),
    }
}

/// The packs that a link names before its code.
fn needs(code: &str) -> Vec<(String, u32)> {
    let Some((named, _)) = code.rsplit_once('/') else {
        return Vec::new();
    };
    let each = named.split('+').filter_map(|one| {
        let (id, version) = one.rsplit_once('.')?;
        let version = version.parse().ok()?;
        pack::limits::is_slug(id).then(|| (id.to_owned(), version))
    });
    each.take(TRIED).collect()
}

/// The packs of this device with which the page could read an assignment, as
/// they are kept or as they are in use; none where no combination does.
fn combination(code: &str) -> Option<Vec<Pack>> {
    let mut packs: Vec<Pack> = Vec::new();
    let used = used::texts();
    let used = used
        .iter()
        .filter_map(|text| pack::read(text.as_bytes()).ok());
    let kept = kept::all().unwrap_or_default().into_iter();
    for pack in used.chain(kept.filter_map(|kept| kept.pack.ok())) {
        if !packs.contains(&pack) {
            packs.push(pack);
        }
    }
    packs.truncate(TRIED);
    let (built_in, bank) = (in_use().built_in(), bank());
    let chosen = |choice: u32| {
        let each = packs.iter().zip(0..);
        each.filter(move |(_, at)| choice & (1 << at) != 0)
            .map(|(pack, _)| pack)
    };
    let fits = |choice: &u32| {
        let version = pack::bank(built_in, chosen(*choice).map(Pack::checksum));
        let bank = Bank {
            version,
            ..bank.clone()
        };
        Assignment::read_any(code, &bank).err() != Some(Refusal::OtherBank)
    };
    let found = (0..1_u32 << packs.len()).find(fits)?;
    Some(chosen(found).cloned().collect())
}

/// What an assignment of another bank needs, and the way there.
#[component]
pub fn PackNeeded(
    /// The code of the assignment as it came, with the packs it names.
    code: String,
    /// What is said of packs that are not here, before they are listed.
    missing: &'static str,
) -> impl IntoView {
    let found = combination(&code);
    let needs = needs(&code);
    let body = match found {
        Some(packs) => view! { <UseThese packs /> }.into_any(),
        None if needs.is_empty() => ().into_any(),
        None => view! { <Missing needs says=missing /> }.into_any(),
    };
    view! { <div data-test="pack-needed">{body}</div> }
}

/// The packs are here; the page opens with exactly these.
#[component]
fn UseThese(packs: Vec<Pack>) -> impl IntoView {
    let announcer = announcer();
    let fault = RwSignal::new(None::<String>);
    let titles: Vec<String> = packs
        .iter()
        .map(|pack| format!("“{}”, version {}", pack.title(), pack.version))
        .collect();
    let (says, does) = if titles.is_empty() {
        (
            "It was set with the built-in lessons alone, and packs are in use on this device."
                .to_owned(),
            "Put the packs out of use and go on",
        )
    } else {
        (
            format!(
                "It was set with the pack {}, which is on this device.",
                titles.join(" and ")
            ),
            "Use exactly this and go on",
        )
    };
    let turn = move |_| {
        let done = use_exactly(&packs);
        match done {
            Ok(()) => reopen(),
            Err(sentence) => {
                announcer.say(sentence.clone());
                fault.set(Some(sentence));
            }
        }
    };
    view! {
        <Notice tone=Tone::Plain>
            <p data-test="needs">{says}</p>
            <Fault says=fault test="needs-fault" />
            <div class="actions">
                <button type="button" class="button" data-test="use-needed" on:click=turn>{does}</button>
            </div>
        </Notice>
    }
}

/// Puts these packs in use and all others out of use.
fn use_exactly(packs: &[Pack]) -> Result<(), String> {
    for pack in packs {
        kept::put_in_use(pack)?;
    }
    for text in used::texts() {
        if let Ok(other) = pack::read(text.as_bytes())
            && !packs.iter().any(|pack| pack.id() == other.id())
        {
            used::remove(other.id()).map_err(|error| kept::unkept(&error))?;
        }
    }
    Ok(())
}

/// Packs that are not on this device as they are needed.
#[component]
fn Missing(needs: Vec<(String, u32)>, says: &'static str) -> impl IntoView {
    let then = Callback::new(|_: Pack| reopen());
    let lines = needs.into_iter().map(move |(id, version)| {
        let here = kept::one(&id).and_then(|kept| kept.pack.ok());
        let state = match here {
            Some(pack) if pack.version == version => {
                "is on this device, though not as it was when this was set".to_owned()
            }
            Some(pack) => format!("is on this device in version {}", pack.version),
            None => "is not on this device".to_owned(),
        };
        view! {
            <li>
                <p><code>{id.clone()}</code> ", version " {version} ": it " {state} "."</p>
                <FetchFromSite id then />
            </li>
        }
    });
    view! {
        <Notice tone=Tone::Plain>
            <p data-test="needs">{says}</p>
            <ul>{lines.collect_view()}</ul>
            <p>"Where the site does not have it, open its file here, then go on with the assignment."</p>
            <OpenFromFile then />
        </Notice>
    }
}
