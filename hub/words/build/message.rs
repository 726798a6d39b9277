//! A message as the generator knows it: what Fluent has of it, and no more than is used here.

/// A message of one language.
#[derive(Debug)]
pub(crate) struct Message {
    /// Its path: levels split at `-`.
    pub(crate) id: String,
    /// The line on which it begins, counted from 1.
    pub(crate) line: usize,
    /// What its comment names; English alone says it.
    pub(crate) parameters: Vec<Parameter>,
    /// What it says.
    pub(crate) pieces: Vec<Piece>,
}

/// A variable that is handed in.
#[derive(Clone, Debug)]
pub(crate) struct Parameter {
    /// Its name.
    pub(crate) name: String,
    /// A whole number, else a text.
    pub(crate) number: bool,
    /// What it is, in words.
    pub(crate) about: String,
}

/// A piece of what is said.
#[derive(Clone, Debug)]
pub(crate) enum Piece {
    /// As it stands.
    Text(String),
    /// A variable.
    Variable(String),
    /// Another message or a term of the same file, without variables.
    Other(String),
    /// One of several, by a variable.
    Select {
        /// The variable.
        on: String,
        /// The keys of the branches, each with what it says.
        branches: Vec<(String, Vec<Piece>)>,
        /// The branch of all other values.
        default: usize,
    },
}

/// Every variable that stands in the pieces, within branches too.
pub(crate) fn variables(pieces: &[Piece]) -> Vec<&str> {
    let mut found = Vec::new();
    for piece in pieces {
        match piece {
            Piece::Text(_) | Piece::Other(_) => {}
            Piece::Variable(name) => found.push(name.as_str()),
            Piece::Select { on, branches, .. } => {
                found.push(on.as_str());
                for (_, said) in branches {
                    found.extend(variables(said));
                }
            }
        }
    }
    found.sort_unstable();
    found.dedup();
    found
}

/// Every key by which the pieces select, with its variable.
pub(crate) fn branches(pieces: &[Piece]) -> Vec<(&str, &str)> {
    let mut found = Vec::new();
    for piece in pieces {
        if let Piece::Select {
            on, branches: all, ..
        } = piece
        {
            for (key, said) in all {
                found.push((on.as_str(), key.as_str()));
                found.extend(branches(said));
            }
        }
    }
    found.sort_unstable();
    found.dedup();
    found
}
