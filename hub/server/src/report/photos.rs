//! Photos on paper: each stands in the sheet itself, no larger than a print needs, over the hash of the photo as it came.

use base64::Engine as _;
use base64::prelude::BASE64_STANDARD;
use maud::{Markup, html};
use show::views::papers::PhotoCard;

use super::paper::Paper;
use super::print;
use crate::store::photos::PhotoError;
use crate::when::{date, to_the_second};

/// By what a part of a sheet is known to show photos.
pub(super) const PHOTOS: &str = r#"<div class="photos">"#;

/// The photos as figures, two to a row; nothing when there are none.
pub(super) fn figures<'a>(
    paper: &Paper,
    photos: impl IntoIterator<Item = &'a PhotoCard>,
) -> Markup {
    let mut photos = photos.into_iter().peekable();
    html! {
        @if photos.peek().is_some() {
            div.photos { @for photo in photos { (figure(paper, photo)) } }
        }
    }
}

fn figure(paper: &Paper, photo: &PhotoCard) -> Markup {
    html! {
        figure {
            @match &photo.sha256 {
                None if photo.given_up.is_some() => p.owed {
                    (paper.t(words::sheet_photos::promised_by())) (photo.by)
                    (paper.t(words::sheet_photos::not_waited_for_any_more())) (photo.given_up.as_deref().unwrap_or_default())
                }
                None => p.owed { (paper.t(words::sheet_photos::promised_and_not_delivered())) (photo.by) "." }
                Some(sha256) => (picture(paper, photo, sha256))
            }
            figcaption {
                strong { (of(paper, photo)) } " "
                @if !photo.words.is_empty() { "“" (photo.words) "” " }
                (photo.by) ", " (date(photo.at)) " " (to_the_second(photo.at)) "; "
                (paper.t(words::sheet_photos::entry())) (photo.seq)
                @if let Some(entry) = photo.entry { (paper.t(words::sheet_photos::with_entry())) (entry) }
                "."
                @if let Some(sha256) = &photo.sha256 { " SHA-256:" br; span.head { (sha256) } }
            }
        }
    }
}

fn picture(paper: &Paper, photo: &PhotoCard, sha256: &str) -> Markup {
    html! {
        @match paper.photo(sha256) {
            Ok(bytes) => img src=(format!("data:image/jpeg;base64,{}", BASE64_STANDARD.encode(print::of(sha256, &bytes)))) alt=(of(paper, photo));
            Err(PhotoError::Touched { .. }) => p.owed { (paper.t(words::sheet_photos::not_shown())) }
            Err(_) => p.owed { (paper.t(words::sheet_photos::not_shown_2())) }
        }
    }
}

/// What a photo is of.
fn of(paper: &Paper, photo: &PhotoCard) -> String {
    match (&photo.mark, &photo.face) {
        (Some(mark), _) => mark.clone(),
        (None, Some(face)) => format!("{} {face}", paper.t(words::sheet_photos::face())),
        (None, None) => paper.t(words::sheet_photos::photo()).to_owned(),
    }
}
