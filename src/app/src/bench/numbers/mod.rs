//! The tools for numbers: each asks for what it needs with its unit, and shows
//! the working step by step.
//!
//! - `tool`, `boxes`: one tool, its entries in the address
//! - `pictures`, `arch`: what the numbers look like
//!
//! Nothing here reckons: it asks [`clinic::numbers`].

mod arch;
mod boxes;
mod pictures;
mod tool;

pub use tool::ToolScreen;

use crate::{
    parts::{
        icon::{Icon, icon},
        page::Page,
    },
    place::Place,
};
use clinic::numbers::tools::Tool;
use leptos::prelude::*;

/// All tools.
#[component]
pub fn ToolsScreen() -> impl IntoView {
    view! {
        <Page title="Numbers, worked" over="Bench" up=Place::Bench.fragment()>
            <p class="lead">"Type what you know; the working is shown step by step, with whose rule it is."</p>
            <ToolRows />
        </Page>
    }
}

/// The tools as rows.
#[component]
pub fn ToolRows() -> impl IntoView {
    let row = |tool: Tool| {
        let to = Place::Tool(tool.id().into(), Vec::new());
        view! {
            <li>
                <a class="row" href=to.fragment() data-test=format!("tool-{}", tool.id())>
                    <span class="row-name">{tool.name()}</span>
                    <span class="row-note">{tool.purpose()}</span>
                    {icon(Icon::Onwards)}
                </a>
            </li>
        }
    };
    view! { <ul class="rows" data-test="tools">{Tool::ALL.map(row).collect_view()}</ul> }
}
