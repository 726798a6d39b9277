//! Stands for `utoipa`'s derives and its attribute where no contract is made: they take the same words and make nothing of them.
//!
//! The hub serves the document that is committed, so a program needs no code that could make it: it was a tenth of the program and
//! of its build.

use proc_macro::TokenStream;

/// Describes nothing.
#[proc_macro_derive(ToSchema, attributes(schema))]
pub fn to_schema(_item: TokenStream) -> TokenStream {
    TokenStream::new()
}

/// Describes nothing.
#[proc_macro_derive(IntoParams, attributes(into_params, param))]
pub fn into_params(_item: TokenStream) -> TokenStream {
    TokenStream::new()
}

/// Leaves the handler as it is.
#[proc_macro_attribute]
pub fn path(_described: TokenStream, handler: TokenStream) -> TokenStream {
    handler
}
