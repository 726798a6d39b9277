//! The inputs of a case: read by name, each once, and none left over.

use std::collections::{BTreeMap, BTreeSet};

use serde::de::DeserializeOwned;
use serde::de::IntoDeserializer;
use serde::de::value::{Error as NameError, StrDeserializer};

use super::WorkedError;
use crate::alignment::parse_along;
use crate::figure::{Figure, can_be};
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

    /// A length of zero or more.
    pub(super) fn size(&mut self, name: &str) -> Result<Length, WorkedError> {
        let length = self.length(name)?;
        if length < Length::ZERO {
            return Err(bad(name, self.text(name)?, BELOW_ZERO));
        }
        Ok(length)
    }

    pub(super) fn size_or(&mut self, name: &str, otherwise: Length) -> Result<Length, WorkedError> {
        if self.given.contains_key(name) {
            self.size(name)
        } else {
            Ok(otherwise)
        }
    }

    /// A place along a line: `12+50`, or a length with its unit.
    pub(super) fn station(&mut self, name: &str) -> Result<Length, WorkedError> {
        let text = self.text(name)?;
        parse_along(text).map_err(|error| bad(name, text, error))
    }

    /// Places along a line, parted by `;`.
    pub(super) fn stations(&mut self, name: &str) -> Result<Vec<Length>, WorkedError> {
        let text = self.text(name)?;
        text.split(';')
            .map(|one| parse_along(one).map_err(|error| bad(name, text, error)))
            .collect()
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
        self.together((one, first), (other, second))
    }

    /// Two lists one by one; as many of one as of the other.
    pub(super) fn together<A, B>(
        &mut self,
        (one, first): (&str, Vec<A>),
        (other, second): (&str, Vec<B>),
    ) -> Result<Vec<(A, B)>, WorkedError> {
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

    /// Lengths in groups, such as east and north of each place.
    pub(super) fn groups<const N: usize>(
        &mut self,
        name: &str,
    ) -> Result<Vec<[Length; N]>, WorkedError> {
        let lengths = self.lengths(name)?;
        let (groups, left_over) = lengths.as_chunks::<N>();
        if left_over.is_empty() {
            return Ok(groups.to_vec());
        }
        let why = format!("it has {} entries; give {N} for each place.", lengths.len());
        Err(bad(name, self.text(name)?, why))
    }

    /// Places, east and north of each.
    pub(super) fn places(&mut self, name: &str) -> Result<Vec<Point>, WorkedError> {
        let groups = self.groups(name)?.into_iter();
        Ok(groups.map(|[x, y]| Point { x, y }).collect())
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
        one_number(text).map_err(|why| bad(name, text, why))
    }

    /// A number of zero or more.
    pub(super) fn amount(&mut self, name: &str) -> Result<f64, WorkedError> {
        let number = self.number(name)?;
        if number < 0.0 {
            return Err(bad(name, self.text(name)?, BELOW_ZERO));
        }
        Ok(number)
    }

    /// A number above zero.
    pub(super) fn above_zero(&mut self, name: &str) -> Result<f64, WorkedError> {
        let number = self.number(name)?;
        if number <= 0.0 {
            return Err(bad(name, self.text(name)?, "it must be above zero."));
        }
        Ok(number)
    }

    /// A number that can be this figure.
    pub(super) fn figure(&mut self, name: &str, figure: Figure) -> Result<f64, WorkedError> {
        let number = self.number(name)?;
        let text = self.text(name)?;
        can_be(figure, number).map_err(|error| bad(name, text, error))
    }

    /// Plain numbers, parted by `;`.
    pub(super) fn numbers(&mut self, name: &str) -> Result<Vec<f64>, WorkedError> {
        let text = self.text(name)?;
        text.split(';')
            .map(|one| one_number(one).map_err(|why| bad(name, text, why)))
            .collect()
    }

    /// Numbers that can each be this figure.
    pub(super) fn figures(&mut self, name: &str, figure: Figure) -> Result<Vec<f64>, WorkedError> {
        let text = self.text(name)?;
        self.numbers(name)?
            .into_iter()
            .map(|number| can_be(figure, number).map_err(|error| bad(name, text, error)))
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

const BELOW_ZERO: &str = "it is below zero. Give zero or more.";

/// Nothing that is measured on a site comes to more, in any unit.
const MOST: f64 = 1e9;

fn one_number(text: &str) -> Result<f64, &'static str> {
    match text.trim().parse::<f64>() {
        Ok(number) if number.abs() <= MOST => Ok(number),
        Ok(_) => Err("no site has such a number: it must lie within 1,000,000,000 either way."),
        Err(_) => Err("write a plain number, such as 1.65; several are parted by “;”."),
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
