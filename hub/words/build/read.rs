//! One file of words, read by `fluent-syntax`; what Fluent has and this house does not use is a fault.

use fluent_syntax::ast::{
    Comment, Entry, Expression, InlineExpression, Pattern, PatternElement, VariantKey,
};
use fluent_syntax::parser::parse;
use fluent_syntax::unicode::unescape_unicode_to_string;

use super::message::{Message, Parameter, Piece};
use super::source::File;

/// The messages of a file in order, and what is wrong with it.
pub(crate) fn read(file: &File) -> (Vec<Message>, Vec<String>) {
    let mut faults = Vec::new();
    let resource = parse(file.text.as_str()).unwrap_or_else(|(resource, errors)| {
        for error in errors {
            let line = file.text[..error.pos.start.min(file.text.len())]
                .lines()
                .count()
                .max(1);
            faults.push(format!(
                "{}:{line}: {}. Write it as Fluent has it.",
                file.path, error.kind
            ));
        }
        resource
    });
    let mut messages = Vec::new();
    for entry in &resource.body {
        let (id, value, attributes, comment) = match entry {
            Entry::Message(message) => (
                message.id.name.to_owned(),
                message.value.as_ref(),
                !message.attributes.is_empty(),
                message.comment.as_ref(),
            ),
            Entry::Term(term) => (
                format!("-{}", term.id.name),
                Some(&term.value),
                !term.attributes.is_empty(),
                term.comment.as_ref(),
            ),
            Entry::Comment(_)
            | Entry::GroupComment(_)
            | Entry::ResourceComment(_)
            | Entry::Junk { .. } => continue,
        };
        let line = line_of(&file.text, &id);
        let place = format!("{}:{line}: {id}", file.path);
        if attributes {
            faults.push(format!(
                "{place}: attributes are not used here. Give each text a message of its own."
            ));
        }
        if !is_path(id.trim_start_matches('-')) {
            faults.push(format!("{place}: a level of a name is lower case letters, digits and `_`, and begins with a letter."));
        }
        let Some(value) = value else {
            faults.push(format!(
                "{place}: it says nothing. Write its text after `=`."
            ));
            continue;
        };
        let mut reader = Reader {
            place: &place,
            faults: &mut faults,
        };
        let pieces = reader.pattern(value);
        let parameters = reader.parameters(comment);
        messages.push(Message {
            id,
            line,
            parameters,
            pieces,
        });
    }
    (messages, faults)
}

/// The line on which a message begins, counted from 1.
fn line_of(text: &str, id: &str) -> usize {
    let begins = |line: &&str| {
        let rest = line.strip_prefix(id);
        rest.is_some_and(|rest| rest.trim_start().starts_with('='))
    };
    text.lines()
        .position(|line| begins(&line))
        .map_or(1, |at| at + 1)
}

/// Levels in snake case with `-` between them.
fn is_path(id: &str) -> bool {
    id.split('-').all(|level| {
        level.starts_with(|c: char| c.is_ascii_lowercase())
            && level
                .chars()
                .all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '_')
    })
}

struct Reader<'a> {
    place: &'a str,
    faults: &'a mut Vec<String>,
}

impl Reader<'_> {
    fn fault(&mut self, what: &str) {
        self.faults.push(format!("{}: {what}", self.place));
    }

    /// `$name (text) what it is`, one line for each variable; other lines are remarks.
    fn parameters(&mut self, comment: Option<&Comment<&str>>) -> Vec<Parameter> {
        let mut found: Vec<Parameter> = Vec::new();
        for line in comment
            .map(|comment| comment.content.as_slice())
            .unwrap_or_default()
        {
            let Some(rest) = line.trim().strip_prefix('$') else {
                continue;
            };
            let parts = rest.split_once(" (").and_then(|(name, rest)| {
                let (kind, about) = rest.split_once(')')?;
                Some((name, kind, about.trim()))
            });
            match parts {
                Some((name, kind @ ("text" | "number"), about)) if !about.is_empty() => {
                    if found.iter().any(|one| one.name == name) {
                        self.fault(&format!("its comment names ${name} twice. Leave one out."));
                    }
                    found.push(Parameter { name: name.to_owned(), number: kind == "number", about: about.to_owned() });
                }
                _ => self.fault(&format!("“{line}”: write `# $name (text) what it is` or `# $name (number) what it counts`.")),
            }
        }
        found
    }

    fn pattern(&mut self, pattern: &Pattern<&str>) -> Vec<Piece> {
        let mut pieces = Vec::new();
        for element in &pattern.elements {
            match element {
                PatternElement::TextElement { value } => {
                    pieces.push(Piece::Text((*value).to_owned()));
                }
                PatternElement::Placeable { expression } => {
                    pieces.extend(self.expression(expression));
                }
            }
        }
        pieces
    }

    fn expression(&mut self, expression: &Expression<&str>) -> Option<Piece> {
        let (selector, variants) = match expression {
            Expression::Inline(inline) => return self.inline(inline),
            Expression::Select { selector, variants } => (selector, variants),
        };
        let InlineExpression::VariableReference { id } = selector else {
            self.fault("a selector is a variable here. Write `{ $name -> … }`.");
            return None;
        };
        let default = variants
            .iter()
            .position(|variant| variant.default)
            .unwrap_or_default();
        let mut branches: Vec<(String, Vec<Piece>)> = Vec::new();
        for variant in variants {
            let key = match &variant.key {
                VariantKey::Identifier { name } => *name,
                VariantKey::NumberLiteral { value } => *value,
            };
            if branches.iter().any(|(known, _)| known == key) {
                self.fault(&format!("two branches are called [{key}]. Leave one out."));
            }
            branches.push((key.to_owned(), self.pattern(&variant.value)));
        }
        Some(Piece::Select {
            on: id.name.to_owned(),
            branches,
            default,
        })
    }

    fn inline(&mut self, inline: &InlineExpression<&str>) -> Option<Piece> {
        Some(match inline {
            InlineExpression::StringLiteral { value } => {
                Piece::Text(unescape_unicode_to_string(value).into_owned())
            }
            InlineExpression::NumberLiteral { value } => Piece::Text((*value).to_owned()),
            InlineExpression::VariableReference { id } => Piece::Variable(id.name.to_owned()),
            InlineExpression::MessageReference {
                id,
                attribute: None,
            } => Piece::Other(id.name.to_owned()),
            InlineExpression::TermReference {
                id,
                attribute: None,
                arguments: None,
            } => Piece::Other(format!("-{}", id.name)),
            InlineExpression::Placeable { expression } => return self.expression(expression),
            InlineExpression::MessageReference { .. } | InlineExpression::TermReference { .. } => {
                self.fault("attributes and terms with arguments are not used here. Write a message of its own.");
                return None;
            }
            InlineExpression::FunctionReference { id, .. } => {
                self.fault(&format!(
                    "functions such as {} are not used here. Hand in the text as it is to be read.",
                    id.name
                ));
                return None;
            }
        })
    }
}
