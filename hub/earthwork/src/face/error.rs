//! Why the rules of a cut give no answer, and what to do.

use words::{Fixed, Text};

use super::SoilClass;
use crate::length::Length;

/// Why there is no figure for a cut.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum FaceError {
    /// A size below zero.
    Negative {
        /// Which.
        what: Fixed,
        /// As given.
        value: Length,
    },
    /// A number that is none.
    NotANumber {
        /// Which.
        what: Fixed,
        /// As given.
        value: String,
    },
    /// Deeper than the tables go.
    Engineer {
        /// The depth.
        depth: Length,
        /// Where the tables end.
        limit: Length,
        /// The rule.
        section: String,
    },
    /// No benches in this soil.
    NoBench {
        /// The class.
        class: SoilClass,
    },
    /// Benches for cohesive soil alone.
    CohesiveAlone {
        /// The class.
        class: SoilClass,
        /// The rule.
        section: String,
    },
    /// A bench too high.
    BenchTooHigh {
        /// From the bottom, from 1.
        number: usize,
        /// As given.
        is: Length,
        /// The rule's.
        most: Length,
        /// The rule.
        section: String,
    },
    /// No vertical at the bottom.
    NoVertical {
        /// The class.
        class: SoilClass,
        /// The cut.
        depth: Length,
        /// The vertical.
        vertical: Length,
    },
    /// The face never comes out where the ground is known.
    NeverDaylights {
        /// How far was looked.
        within: Length,
    },
    /// The ground is not known there.
    NoGround {
        /// Why.
        why: String,
    },
    /// A toe without a direction.
    NoToe {
        /// How many.
        corners: usize,
    },
    /// A toe that crosses itself.
    ToeCrosses,
    /// More places on a toe than anybody digs by.
    TooManyPlaces {
        /// How far apart they are.
        every: Length,
        /// How many may be.
        most: usize,
    },
    /// Pieces of a face out of order.
    PieceOrder,
    /// A rules file that can't be read.
    Rules {
        /// What is wrong and what to do.
        why: String,
    },
}

impl FaceError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::Negative { what, value } => words::face::negative(what, value),
            Self::NotANumber { what, value } => words::face::not_a_number(what, value),
            Self::Engineer {
                depth,
                limit,
                section,
            } => words::face::engineer(depth, limit, section),
            Self::NoBench { class } => words::face::no_bench(&class.word()),
            Self::CohesiveAlone { class, section } => {
                words::face::cohesive_alone(&class.word(), section)
            }
            Self::BenchTooHigh {
                number,
                is,
                most,
                section,
            } => words::face::bench_too_high(number, is, most, section),
            Self::NoVertical {
                class,
                depth,
                vertical,
            } => words::face::no_vertical(vertical, &class.word(), depth),
            Self::NeverDaylights { within } => words::face::never_daylights(within),
            Self::NoGround { why } => words::face::no_ground(why),
            Self::NoToe { corners } => words::face::no_toe(corners),
            Self::ToeCrosses => words::face::toe_crosses().into(),
            Self::TooManyPlaces { every, most } => words::face::too_many_places(most, every),
            Self::PieceOrder => words::face::piece_order().into(),
            Self::Rules { why } => words::face::rules(why),
        }
    }
}

words::error!(FaceError);
