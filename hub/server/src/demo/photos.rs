//! The photos of the story, drawn beside it: found by the hash that their promise names.

use day::chain::digest;
use day::said::photo::PromisePhoto;

/// Drawn by `fixtures/demo-day/photos/draw.py`.
const DRAWN: [&[u8]; 4] = [
    include_bytes!("../../../../fixtures/demo-day/photos/old-slab.jpg"),
    include_bytes!("../../../../fixtures/demo-day/photos/seep.jpg"),
    include_bytes!("../../../../fixtures/demo-day/photos/penetrometer.jpg"),
    include_bytes!("../../../../fixtures/demo-day/photos/buffer-string.jpg"),
];

/// The bytes that were promised.
pub(super) fn promised(photo: &PromisePhoto) -> Option<&'static [u8]> {
    DRAWN
        .into_iter()
        .find(|bytes| digest(bytes) == photo.sha256)
}
