//! What else a wish needs: a way, a role, days, or the procedures it is for.

use super::{
    draft::{Draft, Kind},
    says::word,
    things::handed_over,
};
use crate::{
    cards::text::{LONGEST_RECALL, LONGEST_TEXT},
    parts::{
        choice::{Choice, Choosable},
        fold::Fold,
    },
    taught::catalogue,
};
use catalogue::{ids::ProcedureId, items::Role, plans::Plan, procedures::ProcedureKind};
use leptos::prelude::*;

/// The fields of the kind that is chosen.
#[component]
pub fn Fields(
    /// The wish.
    draft: RwSignal<Draft>,
) -> impl IntoView {
    let kind = Memo::new(move |_| draft.with(|draft| draft.kind));
    move || match kind.get()? {
        Kind::HandOver => Some(view! { <How draft /> }.into_any()),
        Kind::Dam => Some(view! { <Dam draft /> }.into_any()),
        Kind::Prefer => Some(view! { <InRole draft /> }.into_any()),
        Kind::PreferPlan => Some(view! { <PlanFirst draft /> }.into_any()),
        Kind::Recall => Some(view! { <Back draft /> }.into_any()),
        kind if kind.has_procedures() => Some(view! { <Only draft /> }.into_any()),
        _ => None,
    }
}

/// How it is handed over, beside how the standard has it.
#[component]
fn How(draft: RwSignal<Draft>) -> impl IntoView {
    let standard = move || {
        let id = draft.with(|draft| draft.things.first().cloned())?;
        let how = handed_over(&id)?;
        Some(view! { <p class="hint">"By the standard: " {how}</p> })
    };
    view! {
        {standard}
        <label class="field">
            <span>"How is it handed over?"</span>
            <textarea
                rows="3"
                maxlength=LONGEST_TEXT.to_string()
                data-test="wish-how"
                on:input=move |event| draft.update(|draft| draft.how = event_target_value(&event))
            ></textarea>
        </label>
    }
}

/// Always or never.
#[component]
fn Dam(draft: RwSignal<Draft>) -> impl IntoView {
    let chosen = Signal::derive(move || {
        let always = draft.with(|draft| draft.always);
        always.map_or_else(String::new, |always| always.to_string())
    });
    let options = vec![
        Choosable::new("true", "Always"),
        Choosable::new("false", "Never"),
    ];
    view! {
        <Choice
            legend="A rubber dam"
            options
            chosen
            choose=move |value: String| draft.update(|draft| draft.always = Some(value == "true"))
            test="wish-dam"
        />
    }
}

/// The roles that the chosen material can have.
#[component]
fn InRole(draft: RwSignal<Draft>) -> impl IntoView {
    let first = Memo::new(move |_| draft.with(|draft| draft.things.first().cloned()));
    move || {
        let roles: &'static [Role] = &catalogue().material(&first.get()?)?.roles;
        let at = |role: Option<Role>| roles.iter().position(|it| Some(*it) == role);
        let chosen = Signal::derive(move || {
            let at = at(draft.with(|draft| draft.role));
            at.map_or_else(String::new, |at| at.to_string())
        });
        let options = roles.iter().enumerate();
        let options = options.map(|(at, role)| Choosable::new(at.to_string(), word(*role)));
        let choose = move |value: String| {
            let role = value.parse().ok().and_then(|at: usize| roles.get(at));
            draft.update(|draft| draft.role = role.copied());
        };
        Some(
            view! { <Choice legend="First as" options=options.collect() chosen choose test="wish-role" /> },
        )
    }
}

/// A plan of the catalogue.
#[component]
fn PlanChoice(
    /// The wish.
    draft: RwSignal<Draft>,
    /// What is asked.
    label: &'static str,
    /// Which plans there are to choose from.
    fits: fn(&Plan) -> bool,
) -> impl IntoView {
    let plans = catalogue().plans.iter().filter(|it| fits(it));
    let plans =
        plans.map(|it| view! { <option value=it.id.to_string()>{it.name.as_str()}</option> });
    let choose = move |event| {
        let id = event_target_value(&event);
        draft.update(|draft| draft.plan = (!id.is_empty()).then(|| id.as_str().into()));
    };
    view! {
        <label class="field">
            <span>{label}</span>
            <select data-test="wish-plan" on:change=choose>
                <option value="">"Choose a plan"</option>
                {plans.collect_view()}
            </select>
        </label>
    }
}

/// Which plan comes first, and what that cannot do.
#[component]
fn PlanFirst(draft: RwSignal<Draft>) -> impl IntoView {
    view! {
        <PlanChoice draft label="Which plan?" fits=|_| true />
        <p class="hint">
            "It comes first where the findings leave it open. Where a rule speaks against it, the wish is refused and the rule is named."
        </p>
    }
}

/// After which plan, and between which days.
#[component]
fn Back(draft: RwSignal<Draft>) -> impl IntoView {
    let published = move || {
        let plan = draft.with(|draft| draft.plan.clone())?;
        let spans = catalogue().plan(&plan)?.recalls.iter();
        let spans: Vec<String> = spans
            .map(|it| format!("{} to {} days", it.days.from, it.days.to))
            .collect();
        Some(view! { <p class="hint">"Published: " {spans.join("; ")} "."</p> })
    };
    let day = |event: web_sys::Event| event_target_value(&event).parse().ok();
    let from = move |event| draft.update(|draft| draft.days.0 = day(event));
    let to = move |event| draft.update(|draft| draft.days.1 = day(event));
    view! {
        <PlanChoice draft label="After which plan?" fits=|plan| !plan.recalls.is_empty() />
        {published}
        <div class="fields">
            <label class="field">
                <span>"From day"</span>
                <input type="number" inputmode="numeric" min="1" max=LONGEST_RECALL.to_string() data-test="wish-from" on:input=from />
            </label>
            <label class="field">
                <span>"To day"</span>
                <input type="number" inputmode="numeric" min="1" max=LONGEST_RECALL.to_string() data-test="wish-to" on:input=to />
            </label>
        </div>
    }
}

/// For some procedures only.
#[component]
fn Only(draft: RwSignal<Draft>) -> impl IntoView {
    let treatments = catalogue().procedures.iter();
    let treatments = treatments.filter(|it| it.kind == ProcedureKind::Treatment);
    let one = move |(id, name): (&'static ProcedureId, &'static str)| {
        let turn = move |event| {
            let on = event_target_checked(&event);
            draft.update(|draft| {
                draft.procedures.retain(|each| each != id);
                if on {
                    draft.procedures.push(id.clone());
                }
            });
        };
        view! {
            <label class="chip">
                <input
                    type="checkbox"
                    data-test=format!("only-{id}")
                    prop:checked=move || draft.with(|draft| draft.procedures.contains(id))
                    on:change=turn
                />
                <span>{name}</span>
            </label>
        }
    };
    let chips = treatments.map(|it| one((&it.id, &it.short))).collect_view();
    view! {
        <Fold title="Only for some procedures" test="wish-only">
            <fieldset class="patient-controls">
                <legend class="unseen">"Only for these procedures"</legend>
                {chips}
            </fieldset>
        </Fold>
    }
}
