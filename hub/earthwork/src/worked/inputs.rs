//! The inputs of a case: read by name, each once, and none left over.

use std::collections::{BTreeMap, BTreeSet};

use serde::de::DeserializeOwned;
use serde::de::IntoDeserializer;
use serde::de::value::{Error as NameError, StrDeserializer};

use super::WorkedError;
use crate::length::{Length, parse};
use crate::point::Point;

/// Inputs, and which of them were read.
pub(super) struct Inputs<'a> {
    given: &'a BTreeMap<String, String>,
    used: BTreeSet<&'a str>,
}

impl<'a> Inputs<'a> {
    pub(super) fn new(given: &'a BTreeMap<String, String>) -> Inputs<'a> {
        Inputs {
            given,
            used: BTreeSet::new(),
        }
    }

    /// Refuses a case with an input that nothing read.
    pub(super) fn all_used(&self) -> Result<(), WorkedError> {
        self.given
            .keys()
            .find(|name| !self.used.contains(name.as_str()))
            .map_or(Ok(()), |name| {
                Err(WorkedError::UnknownInput {
                    input: name.clone(),
                })
            })
    }

    pub(super) fn optional_text(&mut self, name: &str) -> Option<&'a str> {
        let (name, text) = self.given.get_key_value(name)?;
        self.used.insert(name);
        Some(text)
    }

    pub(super) fn text(&mut self, name: &str) -> Result<&'a str, WorkedError> {
        self.optional_text(name)
            .ok_or_else(|| WorkedError::MissingInput {
                input: name.to_owned(),
            })
    }

    pub(super) fn length(&mut self, name: &str) -> Result<Length, WorkedError> {
        let text = self.text(name)?;
        parse(text).map_err(|error| bad(name, text, error))
    }

    pub(super) fn length_or(
        &mut self,
        name: &str,
        otherwise: Length,
    ) -> Result<Length, WorkedError> {
        if self.given.contains_key(name) {
            self.length(name)
        } else {
            Ok(otherwise)
        }
    }

    pub(super) fn lengths(&mut self, name: &str) -> Result<Vec<Length>, WorkedError> {
        let text = self.text(name)?;
        text.split(';')
            .map(|one| parse(one).map_err(|error| bad(name, text, error)))
            .collect()
    }

    /// Two lists that go together, one by one.
    pub(super) fn pairs(
        &mut self,
        one: &str,
        other: &str,
    ) -> Result<Vec<(Length, Length)>, WorkedError> {
        let (first, second) = (self.lengths(one)?, self.lengths(other)?);
        if first.len() != second.len() {
            let why = format!(
                "it has {} entries, but “{one}” has {}. Give as many.",
                second.len(),
                first.len()
            );
            return Err(bad(other, self.text(other)?, why));
        }
        Ok(first.into_iter().zip(second).collect())
    }

    /// East and north, parted by `;`.
    pub(super) fn point(&mut self, name: &str) -> Result<Point, WorkedError> {
        let lengths = self.lengths(name)?;
        match lengths.as_slice() {
            [x, y] => Ok(Point { x: *x, y: *y }),
            _ => Err(bad(
                name,
                self.text(name)?,
                "a place is east and north, such as 12 ft; 40 ft.",
            )),
        }
    }

    pub(super) fn number(&mut self, name: &str) -> Result<f64, WorkedError> {
        let text = self.text(name)?;
        let number: f64 = text
            .trim()
            .parse()
            .map_err(|_parse: std::num::ParseFloatError| {
                bad(name, text, "write a plain number, such as 1.65.")
            })?;
        if number.is_finite() {
            Ok(number)
        } else {
            Err(bad(name, text, "the number must be finite."))
        }
    }

    /// Plain numbers, parted by `;`.
    pub(super) fn numbers(&mut self, name: &str) -> Result<Vec<f64>, WorkedError> {
        let text = self.text(name)?;
        text.split(';')
            .map(|one| match one.trim().parse::<f64>() {
                Ok(number) if number.is_finite() => Ok(number),
                _ => Err(bad(name, text, "write plain numbers, such as 1.2; 3.4.")),
            })
            .collect()
    }

    pub(super) fn optional_number(&mut self, name: &str) -> Result<Option<f64>, WorkedError> {
        if self.given.contains_key(name) {
            self.number(name).map(Some)
        } else {
            Ok(None)
        }
    }

    /// A whole number above zero.
    pub(super) fn count(&mut self, name: &str) -> Result<u32, WorkedError> {
        let text = self.text(name)?;
        match text.trim().parse() {
            Ok(count) if count > 0 => Ok(count),
            _ => Err(bad(
                name,
                text,
                "write a whole number above zero, such as 4.",
            )),
        }
    }

    pub(super) fn yes(&mut self, name: &str) -> Result<bool, WorkedError> {
        match self.optional_text(name) {
            None | Some("no") => Ok(false),
            Some("yes") => Ok(true),
            Some(text) => Err(bad(name, text, "write yes or no.")),
        }
    }

    /// A name of a plain enum, as files spell it.
    pub(super) fn name<T: DeserializeOwned>(&mut self, name: &str) -> Result<T, WorkedError> {
        let text = self.text(name)?;
        let names: StrDeserializer<'_, NameError> = text.trim().into_deserializer();
        T::deserialize(names).map_err(|error| bad(name, text, error))
    }
}

/// An input that can't be read.
#[expect(
    clippy::needless_pass_by_value,
    reason = "so that an error or a text fits"
)]
pub(super) fn bad(input: &str, text: &str, why: impl ToString) -> WorkedError {
    WorkedError::BadInput {
        input: input.to_owned(),
        text: text.to_owned(),
        why: why.to_string(),
    }
}
