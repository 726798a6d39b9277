//! What makes something an entry: what it changes, and what screens show otherwise because of it. Each kind has it in the file of
//! its saying; the list in [`crate::entry`] makes the body of it, and leaving any of it out does not compile.

use crate::entry::Entry;
use crate::state::State;

/// Something that happened.
pub(crate) trait Happening {
    /// What of the views it touches.
    const TOUCHES: Touches;

    /// The mark that it is about, when it touches no other one's parts ([`Touches::Mark`]).
    fn mark(&self) -> Option<&str> {
        None
    }

    /// Takes it into the state. Total: no rule, no error.
    fn apply(&self, state: &mut State, entry: &Entry);
}

/// What of the views an entry touches: parts that it does not touch are not worked out anew.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Touches {
    /// The life of a call and of its screen: the machines' cards and the cab.
    Call,
    /// What is measured, too: set-ups, cuts, and of what goes mark by mark the one that it is about, or all when it names none.
    Mark,
    /// Anything.
    All,
}

/// Makes the body of an entry, and its dispatch without a wildcard, of a list of happenings.
macro_rules! happenings {
    ($($(#[$doc:meta])* $name:ident($happening:ty),)*) => {
        /// What happened, in the past tense. Old kinds are lifted, never changed.
        #[derive(Clone, Debug, PartialEq, Serialize, ToSchema, strum::IntoStaticStr)]
        #[serde(tag = "kind", rename_all = "snake_case")]
        #[strum(serialize_all = "snake_case")]
        pub enum Body {
            $($(#[$doc])* $name($happening),)*
        }

        #[derive(Deserialize)]
        #[serde(rename_all = "snake_case")]
        enum BodyKind {
            $($name,)*
        }

        /// From JSON alone: by its kind first, then as what it is. So what each kind holds is compiled for one reader.
        impl<'de> Deserialize<'de> for Body {
            fn deserialize<D: serde::Deserializer<'de>>(json: D) -> Result<Self, D::Error> {
                let json = Box::<serde_json::value::RawValue>::deserialize(json)?;
                Body::read(json.get()).map_err(serde::de::Error::custom)
            }
        }

        impl Body {
            fn read(json: &str) -> Result<Self, serde_json::Error> {
                #[derive(Deserialize)]
                struct Kind {
                    kind: BodyKind,
                }
                let Kind { kind } = serde_json::from_str(json)?;
                match kind {
                    $(BodyKind::$name => serde_json::from_str(json).map(Self::$name),)*
                }
            }

            /// Its kind, as its JSON names it.
            pub fn kind(&self) -> &'static str {
                self.into()
            }

            /// What of the views it touches.
            pub fn touches(&self) -> crate::happening::Touches {
                match self {
                    $(Self::$name(_) => <$happening as crate::happening::Happening>::TOUCHES,)*
                }
            }

            /// The mark that it is about, when it touches no other one's parts.
            pub fn touched_mark(&self) -> Option<&str> {
                match self {
                    $(Self::$name(happening) => crate::happening::Happening::mark(happening),)*
                }
            }

            /// Takes it into the state.
            pub(crate) fn apply(&self, state: &mut crate::state::State, entry: &Entry) {
                match self {
                    $(Self::$name(happening) => crate::happening::Happening::apply(happening, state, entry),)*
                }
            }
        }
    };
}
pub(crate) use happenings;
