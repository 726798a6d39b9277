//! What makes something sayable: who may say it, whether a closed day takes it, what follows. Each saying has it all in its own
//! file; the list in [`crate::asked`] makes the command of it, and leaving any of it out does not compile.

use crate::asked::{By, Role};
use crate::entry::Body;
use crate::refusal::Refusal;
use crate::state::State;
use crate::time::When;

/// Something that a person or the hub can say.
pub(crate) trait Saying {
    /// The roles that may say it; any one of them is enough.
    const BY: &'static [Role];
    /// What becomes of it on a day that is closed.
    const CLOSED: Closed;

    /// What follows from it; nothing when there was nothing left to do.
    ///
    /// # Errors
    /// A [`Refusal`] that says what to do instead; then nothing is entered.
    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal>;
}

/// What becomes of a saying on a day that is closed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Closed {
    /// It is taken: it belongs to the record, keeps people from harm, or is of phones and codes.
    Taken,
    /// It is taken when it was made before the close; none of it becomes a call.
    TakenLate,
    /// It is refused.
    Refused,
}

/// What a rule may look at.
#[derive(Clone, Copy)]
pub(crate) struct Asking<'a> {
    /// What is current.
    pub(crate) state: &'a State,
    /// Who asks.
    pub(crate) by: &'a By,
    /// Now, and when it was made.
    pub(crate) when: When,
    /// The hash of the last entry.
    pub(crate) head: &'a str,
}

/// Makes the command, and its dispatch without a wildcard, of a list of sayings.
macro_rules! sayings {
    ($($(#[$doc:meta])* $name:ident($saying:ty),)*) => {
        /// Everything that can be asked, one line each; the files under `said/` hold the rest.
        #[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
        #[serde(tag = "kind", rename_all = "snake_case", remote = "Self")]
        #[expect(
            clippy::large_enum_variant,
            reason = "a site is read once a day, and nothing keeps commands in numbers"
        )]
        pub enum Command {
            $($(#[$doc])* $name($saying),)*
        }

        impl Serialize for Command {
            fn serialize<S: serde::Serializer>(&self, json: S) -> Result<S::Ok, S::Error> {
                Command::serialize(self, json)
            }
        }

        /// From JSON alone, and by one reader: what each command holds is compiled once.
        impl<'de> Deserialize<'de> for Command {
            fn deserialize<D: serde::Deserializer<'de>>(json: D) -> Result<Self, D::Error> {
                let json = Box::<serde_json::value::RawValue>::deserialize(json)?;
                let mut json = serde_json::Deserializer::from_str(json.get());
                Command::deserialize(&mut json).map_err(serde::de::Error::custom)
            }
        }

        impl Command {
            /// The roles that may give it; any one of them is enough.
            pub fn roles(&self) -> &'static [Role] {
                match self {
                    $(Self::$name(_) => <$saying as crate::saying::Saying>::BY,)*
                }
            }

            /// What becomes of it on a day that is closed.
            pub(crate) fn closed(&self) -> crate::saying::Closed {
                match self {
                    $(Self::$name(_) => <$saying as crate::saying::Saying>::CLOSED,)*
                }
            }

            /// What follows from it.
            pub(crate) fn decide(
                &self,
                at: &crate::saying::Asking<'_>,
            ) -> Result<Vec<crate::entry::Body>, crate::refusal::Refusal> {
                match self {
                    $(Self::$name(saying) => crate::saying::Saying::decide(saying, at),)*
                }
            }
        }
    };
}
pub(crate) use sayings;
