//! Who was there from when, and how long in a keep-out.

use show::review::Review;
use show::review::lanes::{LaneOf, LaneWhat};

use crate::report::paper::{Paper, or_dash};
use crate::when::to_the_minute;

/// The heads of its columns.
pub(super) fn columns(paper: &Paper) -> [&'static str; 5] {
    [
        paper.t(words::sheet_day::who()),
        paper.t(words::sheet_day::from()),
        paper.t(words::sheet_day::to_2()),
        paper.t(words::sheet_day::times_in_a_keep_out()),
        paper.t(words::sheet_day::minutes_in()),
    ]
}

/// A row for each person, by name.
pub(super) fn rows(review: &Review) -> Vec<Vec<String>> {
    review
        .lanes
        .iter()
        .filter_map(|lane| {
            let LaneOf::Person(name) = &lane.of else {
                return None;
            };
            let inside = lane
                .spans
                .iter()
                .filter(|span| matches!(span.what, LaneWhat::In { .. }));
            let ms: i64 = inside.clone().map(|span| span.to.ms_since(span.from)).sum();
            // A stay goes on while its link is lost: spans that follow one another are one time in.
            let times = inside
                .clone()
                .filter(|span| {
                    !lane.spans.iter().any(|before| {
                        before.to == span.from && matches!(before.what, LaneWhat::In { .. })
                    })
                })
                .count();
            Some(vec![
                name.clone(),
                or_dash(lane.spans.first(), |span| to_the_minute(span.from)),
                or_dash(lane.spans.last(), |span| to_the_minute(span.to)),
                times.to_string(),
                format!("{:.1}", ms as f64 / 60_000.0),
            ])
        })
        .collect()
}
