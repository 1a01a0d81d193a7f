//! Which form: its length, with or without a time limit, one's own or shared by
//! a code; and the forms that were begun.

use super::{
    code::{self, BLUEPRINT},
    time,
};
use crate::{
    browser::{
        address::Address,
        breath::{self, Sliced},
        chance, clock,
    },
    log::log,
    parts::{
        choice::{Choice, Choosable},
        icon::{Icon, icon},
        notice::{Notice, Tone},
        page::Page,
    },
    place::{FormSide, Place},
    questions::{Questions, Ready, days, plan, prepare, studied},
};
use class::forms;
use leptos::{prelude::*, task::spawn_local};
use record::{FormBegun, PerCent, SettingChanged, What, folds};
use study::form::{Mode, Request, SharedForm, assemble_in_slices};

/// The lengths of a form, in questions.
const SIZES: [u8; 4] = [20, 40, 60, 100];

/// The screen.
#[component]
pub fn FormsScreen(
    /// The code that was followed here; empty where none was.
    code: String,
) -> impl IntoView {
    prepare();
    view! {
        <Page title="Practice form" over="Today" up=Place::Today.fragment()>
            <p class="lead">
                "Questions over the whole blueprint, one after the other, with the answers at the end."
            </p>
            <Begun />
            <Ready show=move |questions| view! { <Setting questions code=code.clone() /> } />
        </Page>
    }
}

/// A form that is asked for.
#[derive(Clone, Copy, Debug)]
enum Sought {
    Own(u8),
    Shared(SharedForm),
}

#[component]
fn Setting(questions: Questions, code: String) -> impl IntoView {
    let size = RwSignal::new(SIZES[0].to_string());
    let timed = RwSignal::new("untimed".to_owned());
    let typed = RwSignal::new(code);
    let refused = RwSignal::new(None::<String>);
    let working = RwSignal::new(false);
    let (log, address) = (log(), expect_context::<Address>());
    let pass = log.memo(|events| plan::Plan::of(events).pass);
    let begin = move |sought: Sought| {
        refused.set(None);
        working.set(true);
        let timed = timed.get_untracked() == "timed";
        let ask = log;
        let studied = studied(questions);
        spawn_local(async move {
            breath::take().await;
            let mut work = Sliced::begun();
            let mut rest = async || work.rest().await;
            let (bank, version) = (questions.items(), questions.version());
            let built = match sought {
                Sought::Own(size) => {
                    let request = own(questions, &studied, &ask, size);
                    let built = assemble_in_slices(bank, &request, &mut rest).await;
                    built.map_err(|unfit| unfit.to_string())
                }
                Sought::Shared(shared) => {
                    let built = shared.build_in_slices(bank, version, BLUEPRINT, &mut rest);
                    built.await.map_err(|stale| stale.to_string())
                }
            };
            working.try_set(false);
            match built {
                Ok(form) => {
                    let id = log.new_sitting();
                    let items = questions.items().items();
                    log.append(What::FormBegun(FormBegun {
                        form: id,
                        questions: form.places.iter().map(|&at| items[at].id.clone()).collect(),
                        code: match sought {
                            Sought::Own(_) => None,
                            Sought::Shared(shared) => Some(code::write(shared)),
                        },
                        minutes: timed
                            .then(|| u16::try_from(form.seconds.div_ceil(60)).unwrap_or(60)),
                        pass: PerCent::of(pass.get_untracked()),
                    }));
                    address.go(Place::Form(id, FormSide::Question(1)));
                }
                Err(sentence) => {
                    refused.try_set(Some(sentence));
                }
            }
        });
    };
    let sizes = SIZES.map(|size| Choosable::new(size.to_string(), size.to_string()));
    let times = [
        Choosable::new("untimed", "No limit"),
        Choosable::new("timed", "Timed"),
    ];
    let made = RwSignal::new(None::<SharedForm>);
    let number = move || size.get_untracked().parse().unwrap_or(SIZES[0]);
    let by_code = move |_| match code::read(&typed.get_untracked()) {
        Ok(shared) => begin(Sought::Shared(shared)),
        Err(sentence) => refused.set(Some(sentence)),
    };
    let make = move |_| {
        made.set(Some(SharedForm {
            bank: questions.version(),
            blueprint: BLUEPRINT,
            size: number(),
            seed: u32::try_from(chance::bits() >> 32).unwrap_or(0),
        }));
    };
    view! {
        <section class="group q-set">
            <h2 class="stage-label">"A form of your own"</h2>
            <Choice
                legend="Questions"
                options=sizes.to_vec()
                chosen=size
                choose=move |value: String| size.set(value)
                test="size"
            />
            <Choice
                legend="Time"
                options=times.to_vec()
                chosen=timed
                choose=move |value: String| timed.set(value)
                test="time"
            />
            {move || {
                (timed.get() == "timed")
                    .then(|| {
                        view! {
                            <p class="q-note" data-test="timed-note">
                                "The time goes by the clock, also while the page is closed. Pause stops it, and the result tells of every pause. When the time is up, the form is handed in as it stands."
                            </p>
                        }
                    })
            }}
            <PassMark pass />
            <div class="actions">
                <button
                    type="button"
                    class="button"
                    data-test="begin-form"
                    disabled=working
                    on:click=move |_| begin(Sought::Own(number()))
                >
                    {move || if working.get() { "Putting it together…" } else { "Begin" }}
                </button>
            </div>
            {move || refused.get().map(|sentence| view! {
                <Notice tone=Tone::Attention><p data-test="refused" role="alert">{sentence}</p></Notice>
            })}
        </section>
        <section class="group q-set">
            <h2 class="stage-label">"A form by code"</h2>
            <p>"Everyone who has the code gets the same questions in the same order."</p>
            <label class="q-field">
                <span>"Code"</span>
                <input
                    type="text"
                    autocomplete="off"
                    autocapitalize="characters"
                    spellcheck="false"
                    data-test="code"
                    prop:value=typed
                    on:input=move |event| typed.set(event_target_value(&event))
                />
            </label>
            <div class="actions">
                <button type="button" class="button button-quiet" data-test="begin-code" disabled=working on:click=by_code>
                    "Begin by code"
                </button>
                <button type="button" class="button button-quiet" data-test="make-code" on:click=make>
                    "Make a code"
                </button>
            </div>
            {move || made.get().map(shared)}
        </section>
    }
}

/// A code that was made, with a link that carries it.
fn shared(form: SharedForm) -> impl IntoView {
    let code = code::write(form);
    let to = Place::Forms(code.clone()).fragment();
    view! {
        <p data-test="made-code">
            "A form of " {form.size} " questions: " <a href=to class="q-code">{code}</a>
            ". Hand on the code, or the address of this link."
        </p>
    }
}

/// The per cent that passes, as the programme states it.
#[component]
fn PassMark(pass: Memo<u8>) -> impl IntoView {
    let log = log();
    let change = move |event| {
        let typed = event_target_value(&event);
        if let Some(pass) = plan::pass(&typed) {
            log.append(What::SettingChanged(SettingChanged {
                key: plan::PASS.into(),
                value: pass.to_string(),
            }));
        }
    };
    view! {
        <label class="q-field">
            <span>"Per cent that passes in your programme"</span>
            <input
                type="number"
                min="1"
                max="100"
                data-test="pass-mark"
                prop:value=move || pass.get().to_string()
                on:change=change
            />
        </label>
    }
}

/// What a form of one's own is asked to be: what was shown least, without the last two forms and
/// what is set aside, where there are enough others.
fn own(
    questions: Questions,
    studied: &crate::questions::Studied,
    log: &crate::log::OpenLog,
    size: u8,
) -> Request {
    let bank = questions.items();
    let mut showings = vec![0_u32; bank.items().len()];
    for (place, trace) in studied.shown.memory.known() {
        showings[place] = trace.answers;
    }
    let left_out: Vec<String> = log.look(|events| {
        let forms = folds::forms(events);
        let last = forms.iter().rev().take(2);
        let asked = last.flat_map(|form| form.begun.questions.clone());
        asked.chain(folds::aside(events).into_keys()).collect()
    });
    Request {
        size: usize::from(size),
        seconds: None,
        cut: 0.0,
        seed: chance::bits(),
        mode: Mode::Personal {
            showings,
            recent: left_out.iter().filter_map(|id| bank.place(id)).collect(),
        },
    }
}

/// The forms that were begun, the latest first.
#[component]
fn Begun() -> impl IntoView {
    let forms = log().memo(folds::forms);
    let row = |form: folds::Form| {
        let (asked, answered) = (form.begun.questions.len(), form.answers.len());
        let kind = match form.begun.code.as_deref() {
            Some(code) if forms::is_task(code) => "Assigned form",
            Some(_) => "Shared form",
            None => "Form",
        };
        let (state, day) = match form.finished {
            Some(at) => ("handed in", at),
            None if form.is_paused() => ("paused", form.at),
            None => ("under way", form.at),
        };
        let left = match form.finished {
            None => time::left(&form, clock::now()).map(time::words),
            Some(_) => None,
        };
        let note = [
            Some(format!("{answered} of {asked} answered, {state}")),
            left,
            Some(days::words(days::day(day))),
        ];
        let note: Vec<String> = note.into_iter().flatten().collect();
        view! {
            <li>
                <a class="row" href=Place::Form(form.begun.form, FormSide::Whole).fragment() data-test="form-row">
                    <span class="row-name">{kind} " of " {asked} " questions"</span>
                    <span class="row-note">{note.join(" · ")}</span>
                    {icon(Icon::Onwards)}
                </a>
            </li>
        }
    };
    move || {
        let mut all = forms.get();
        all.reverse();
        (!all.is_empty()).then(|| {
            view! {
                <section class="group" data-test="forms">
                    <h2 class="stage-label">"Your forms"</h2>
                    <ul class="rows">{all.into_iter().map(row).collect_view()}</ul>
                </section>
            }
        })
    }
}
