//! Every form of a site. A phone draws them; the reader of drafts reads by them; a test holds the two together.

use super::form::{Field, Form, FormOf, Name, Takes, name};
use super::{form_target, form_things as things};

/// Every form, in the order in which a site is set up.
pub fn form() -> Vec<Form> {
    let form = |of: FormOf, english, spanish, fields| Form {
        of,
        name: name(english, spanish),
        once: of.once(),
        fields,
    };
    vec![
        form(FormOf::Target, "Targets", "Rasantes", form_target::fields()),
        form(FormOf::Mark, "Marks", "Marcas", things::mark()),
        form(FormOf::Line, "Lines", "Líneas", things::line()),
        form(
            FormOf::Benchmark,
            "Benchmarks",
            "Bancos de nivel",
            things::benchmark(),
        ),
        form(FormOf::Machine, "Machines", "Máquinas", things::machine()),
        form(
            FormOf::Overhead,
            "Lines overhead",
            "Líneas aéreas",
            things::overhead(),
        ),
        form(FormOf::Pile, "Piles", "Montones", things::pile()),
        form(FormOf::Rod, "Rods", "Estadales", things::rod()),
        form(FormOf::Laser, "Lasers", "Láseres", things::laser()),
        form(
            FormOf::Rules,
            "Rules and forms",
            "Reglas y cimbra",
            things::rules(),
        ),
        form(
            FormOf::Frame,
            "The plan's frame",
            "Marco del plano",
            things::frame(),
        ),
    ]
}

/// What the field at that path of a thing is called, as `run.steps.1.elevation`; none when no form has it.
pub(super) fn called(of: FormOf, path: &str) -> Option<Name> {
    let form = form().into_iter().find(|form| form.of == of)?;
    let keys: Vec<&str> = path
        .split('.')
        .filter(|key| key.parse::<usize>().is_err())
        .collect();
    named(&form.fields, &keys)
}

fn named(fields: &[Field], keys: &[&str]) -> Option<Name> {
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
            Some(field.name)
        } else {
            named(inner, rest)
        }
    })
}
