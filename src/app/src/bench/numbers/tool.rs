//! One tool. What was entered stands in the address once it is worked out, so
//! that it survives a reload and can be passed on.

use super::{
    boxes::{Box, at_first},
    pictures::Picture,
};
use crate::{
    browser::address::Address,
    parts::{announce::announcer, page::Page, worked::Worked},
    place::Place,
    shell::NotHere,
    taught::catalogue,
};
use clinic::numbers::{
    tools::{Entries, Fault, Tool},
    working::{DOSE_FRAME, Working},
};
use leptos::prelude::*;

/// What came of the entries in the address; none before there are any.
type Done = Option<Result<Working, Vec<Fault>>>;

/// The case that a tool was opened from; none where it was opened otherwise.
fn case_of(entries: &[(String, String)]) -> Option<Place> {
    let (_, fragment) = entries.iter().find(|(id, _)| id == Place::FROM_CASE)?;
    let place = Place::from_fragment(fragment);
    matches!(place, Place::Case(..)).then_some(place)
}

/// The screen of a tool.
#[component]
pub fn ToolScreen(
    /// Its id.
    tool: String,
    /// Where the reader is, with what was entered.
    place: Signal<Place>,
) -> impl IntoView {
    let Some(tool) = Tool::with_id(&tool) else {
        return view! { <NotHere what="tool" /> }.into_any();
    };
    let address: Address = expect_context();
    let numbers = &catalogue().numbers;
    let inputs = tool.inputs(numbers);
    let in_address = Memo::new(move |_| match place.get() {
        Place::Tool(_, entries) => entries,
        _ => Vec::new(),
    });
    let back = Memo::new(move |_| in_address.with(|entries| case_of(entries)));
    let given = in_address.get_untracked();
    let entered = RwSignal::new(if given.is_empty() {
        at_first(&inputs)
    } else {
        given
    });
    let done = Memo::new(move |_| -> Done {
        let entries = in_address.get();
        (!entries.is_empty()).then(|| tool.work(numbers, &Entries(entries)))
    });
    let aloud = announcer();
    let submit = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        address.amend(Place::Tool(tool.id().into(), entered.get_untracked()));
        aloud.say(match done.get_untracked() {
            Some(Ok(working)) => working.result,
            Some(Err(faults)) => faults
                .first()
                .map_or_else(String::new, |fault| fault.why.to_string()),
            None => String::new(),
        });
    };
    let faults = Signal::derive(move || match done.get() {
        Some(Err(faults)) => faults,
        _ => Vec::new(),
    });
    let together = move || {
        faults.with(|faults| {
            let mut all = faults.iter();
            all.find(|fault| fault.input.is_empty())
                .map(|fault| fault.why.to_string())
        })
    };
    let boxes = inputs
        .into_iter()
        .map(|input| view! { <Box input entered faults /> })
        .collect_view();
    let worked = move || match done.get() {
        Some(Ok(working)) => view! { <Worked working /> }.into_any(),
        _ => ().into_any(),
    };
    // Every dose carries the frame, before anything is worked out as well.
    let doses = matches!(tool, Tool::Maximum | Tool::Second | Tool::Contents);
    let frame =
        doses.then(|| view! { <p class="num-frame" data-test="dose-frame">{DOSE_FRAME}</p> });
    view! {
        <Page title=tool.name() over="Numbers, worked" up=Place::Tools.fragment()>
            <p class="lead">{tool.purpose()}</p>
            {frame}
            <div class="num">
                <form class="num-form" novalidate on:submit=submit>
                    {boxes}
                    <p class="num-why" data-test="why-all">{together}</p>
                    <button type="submit" class="button" data-test="work-it-out">"Work it out"</button>
                </form>
                <div class="num-out">
                    <Picture tool entered />
                    {worked}
                    {move || {
                        back.get()
                            .map(|case| {
                                view! {
                                    <div class="actions">
                                        <a class="button" href=case.fragment() data-test="to-case">
                                            "Back to the case"
                                        </a>
                                    </div>
                                }
                            })
                    }}
                </div>
            </div>
        </Page>
    }
    .into_any()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_tool_leads_back_to_a_case_and_nowhere_else() {
        let entries = |fragment: &str| vec![(Place::FROM_CASE.to_owned(), fragment.to_owned())];
        let case = Place::Case("crown-day".into(), 7, None);
        assert_eq!(case_of(&entries(&case.fragment())), Some(case));
        assert_eq!(case_of(&entries("#/record")), None);
        assert_eq!(case_of(&[]), None);
    }
}
