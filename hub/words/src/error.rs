//! Errors that a person in the field reads.

/// Makes an error of a type that has `fn text(&self) -> Text`: at the terminal it reads as its English.
/// After a `;` come the errors that it passes on as they are.
#[macro_export]
macro_rules! error {
    ($name:ident; $($variant:ident($of:ty)),+) => {
        $crate::error!($name);

        $(impl From<$of> for $name {
            fn from(error: $of) -> Self {
                Self::$variant(error)
            }
        })+
    };
    ($name:ident) => {
        impl ::core::fmt::Display for $name {
            fn fmt(&self, f: &mut ::core::fmt::Formatter<'_>) -> ::core::fmt::Result {
                f.write_str(self.text().of($crate::Language::English))
            }
        }

        impl ::core::error::Error for $name {}
    };
}
