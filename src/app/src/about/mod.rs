//! About: the job, the frame of safety, the sources.

use crate::{
    parts::{
        gradually::in_turn,
        notice::{Notice, Tone},
        page::Page,
        sources::SourceLine,
    },
    taught::catalogue,
};
use catalogue::sources::{Reading, Source, SourceKind};
use leptos::prelude::*;

/// The screen.
#[component]
pub fn AboutScreen() -> impl IntoView {
    view! {
        <Page title="About Trayward">
            <div class="prose">
                <p>
                    "Trayward is for people who learn to assist a dentist at the chair, and for those who teach them. It asks for what lists leave out: which tray for this patient, why each thing is on it, how a material is brought to the dentist at the right moment, what will be called for when the cavity proves deeper, and when the patient comes back."
                </p>
                <p>
                    "Trays, answers and their reasons are worked out from the steps, the materials and the findings. Each fact names its source."
                </p>
            </div>
            <Notice tone=Tone::Attention>
                <h2>"For study"</h2>
                <p>
                    "The dentist diagnoses and chooses. Local law, your practice's protocol and the material's instructions for use come first. Doses are here to check a student's arithmetic, never for a patient's care."
                </p>
            </Notice>
            <section class="prose">
                <h2>"What stays where"</h2>
                <p>
                    "Everything works on this device, also without a connection. Your record stays in this browser until you export it. No name is asked for and nothing is sent anywhere."
                </p>
            </section>
            <Sources />
            <p class="version">"Version " {env!("CARGO_PKG_VERSION")}</p>
        </Page>
    }
}

/// All sources, by kind, each with how well it is known.
#[component]
fn Sources() -> impl IntoView {
    let groups = in_turn(KINDS, 0, |(kind, title)| group(kind, title));
    let count = |reading| {
        let all = catalogue().sources.iter();
        all.filter(|source| source.reading == reading).count()
    };
    view! {
        <section data-test="sources">
            <h2>"Sources"</h2>
            <p>
                {count(Reading::Read)} " texts or passages were read; "
                {count(Reading::FromMemory)} " stand for values from memory, the text not read; "
                {count(Reading::Custom)} " mark what is custom or our own, with no published text."
            </p>
            {groups}
        </section>
    }
}

/// The sources of one kind; nothing where there are none.
fn group(kind: SourceKind, title: &'static str) -> impl IntoView {
    let all = catalogue().sources.iter();
    let sources: Vec<&'static Source> = all.filter(|source| source.kind == kind).collect();
    let line = |source| view! { <li><SourceLine source /></li> };
    (!sources.is_empty()).then(|| {
        view! {
            <h3 class="stage-label">{title}</h3>
            <ul class="source-list">{sources.into_iter().map(line).collect_view()}</ul>
        }
    })
}

const KINDS: [(SourceKind, &str); 8] = [
    (SourceKind::Standard, "Standards"),
    (SourceKind::Guideline, "Guidelines and position statements"),
    (SourceKind::Regulation, "Law and regulation"),
    (SourceKind::Review, "Reviews"),
    (SourceKind::Study, "Trials and laboratory studies"),
    (SourceKind::Label, "Labels and instructions for use"),
    (SourceKind::Handbook, "Handbooks"),
    (SourceKind::CommonPractice, "No published text"),
];
