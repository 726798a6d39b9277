//! Every form of a site. A phone draws them; the reader of drafts reads by them; a test holds the two together.

use ::words::{Fixed, Text};

use super::form::{Field, Form, FormOf, Takes};
use super::{form_cuts as cuts, form_target, form_things as things};

/// Every form, in the order in which a site is set up.
pub fn form() -> Vec<Form> {
    let form = |of: FormOf, name: Fixed, fields| Form {
        of,
        name: name.into(),
        once: of.once(),
        fields,
    };
    vec![
        form(
            FormOf::Target,
            words::form::targets(),
            form_target::fields(),
        ),
        form(FormOf::Mark, words::form::marks(), things::mark()),
        form(FormOf::Line, words::form::lines(), things::line()),
        form(
            FormOf::Benchmark,
            words::form::benchmarks(),
            things::benchmark(),
        ),
        form(FormOf::Machine, words::form::machines(), things::machine()),
        form(
            FormOf::Overhead,
            words::form::lines_overhead(),
            things::overhead(),
        ),
        form(FormOf::Pile, words::form::piles(), things::pile()),
        form(
            FormOf::Face,
            words::form::faces_and_trenches(),
            cuts::face(),
        ),
        form(
            FormOf::Structure,
            words::form::footings_and_walls(),
            cuts::structure(),
        ),
        form(
            FormOf::Utility,
            words::form::buried_lines(),
            cuts::utility(),
        ),
        form(
            FormOf::Ticket,
            words::form::locate_tickets(),
            cuts::ticket(),
        ),
        form(FormOf::Rod, words::form::rods(), things::rod()),
        form(FormOf::Laser, words::form::lasers(), things::laser()),
        form(
            FormOf::Rules,
            words::form::rules_and_forms(),
            things::rules(),
        ),
        form(
            FormOf::Frame,
            words::form::the_plan_frame(),
            things::frame(),
        ),
    ]
}

/// What the field at that path of a thing is called, as `run.steps.1.elevation`; none when no form has it.
pub(super) fn called(of: FormOf, path: &str) -> Option<Text> {
    let form = form().into_iter().find(|form| form.of == of)?;
    let keys: Vec<&str> = path
        .split('.')
        .filter(|key| key.parse::<usize>().is_err())
        .collect();
    named(&form.fields, &keys)
}

fn named(fields: &[Field], keys: &[&str]) -> Option<Text> {
    let (first, rest) = keys.split_first()?;
    fields.iter().find_map(|field| {
        let inner: &[Field] = match &field.takes {
            // The tables of a choice stand beside the other fields.
            Takes::OneOf { tables } if field.key != *first => return named(tables, keys),
            Takes::Rows { fields } | Takes::Table { fields } => fields,
            _ => &[],
        };
        if field.key != *first {
            return None;
        }
        if rest.is_empty() {
            Some(field.name.clone())
        } else {
            named(inner, rest)
        }
    })
}
