//! The card's third page: what the screen means, in the very words of the cab's page, and what each asks for.

use maud::Markup;
use words::Fixed;

use crate::report::paper::Paper;

/// What the cab's page says, in its very words, and what each asks for.
const SCREENS: [(Fixed, Fixed); 11] = [
    (
        words::sheet_cab_card::screen::stop(),
        words::sheet_cab_card::stand_still_bucket_down(),
    ),
    (
        words::sheet_cab_card::screen::pause_laser_check(),
        words::sheet_cab_card::no_number_counts(),
    ),
    (
        words::sheet_cab_card::screen::old_ask(),
        words::sheet_cab_card::last_number_too_old(),
    ),
    (
        words::sheet_cab_card::screen::new_target(),
        words::sheet_cab_card::old_numbers_are_dead(),
    ),
    (
        words::sheet_cab_card::screen::no_link(),
        words::sheet_cab_card::no_number_counts_2(),
    ),
    (
        words::sheet_cab_card::screen::look(),
        words::sheet_cab_card::somebody_works_inside_your_circle(),
    ),
    (
        words::sheet_cab_card::screen::hand_dig(),
        words::sheet_cab_card::a_buried_line_is_near(),
    ),
    (
        words::sheet_cab_card::screen::line_struck(),
        words::sheet_cab_card::gas_or_not_known(),
    ),
    (
        words::sheet_cab_card::screen::get_away_from_the_face(),
        words::sheet_cab_card::track_back_out_its_reach(),
    ),
    (
        words::sheet_cab_card::screen::spotter_needed(),
        words::sheet_cab_card::line_overhead_within_reach(),
    ),
    (
        words::sheet_cab_card::screen::nobody_has_asked_come_look(),
        words::sheet_cab_card::it_senses_nobody(),
    ),
];

/// Each word of the screen, and what to do.
pub(super) fn screens(paper: &Paper) -> Markup {
    let mut rows: Vec<Vec<String>> = SCREENS
        .iter()
        .map(|(said, ask)| vec![paper.t(*said).to_owned(), paper.t(*ask).to_owned()])
        .collect();
    rows.push(vec![
        paper
            .t(words::sheet_cab_card::block_top_corner_neither_fills())
            .to_owned(),
        paper
            .t(words::sheet_cab_card::screen_dead_whatever_shows())
            .to_owned(),
    ]);
    let columns = [
        paper.t(words::sheet_cab_card::on_the_screen()),
        paper.t(words::sheet_cab_card::what_to_do()),
    ];
    paper.table(&columns, &rows)
}

#[cfg(test)]
mod tests {
    use super::SCREENS;
    use std::fs;
    use std::path::Path;
    use words::Language;

    /// The card is of no use when the page says it otherwise.
    #[test]
    fn the_card_says_what_the_cabs_page_says_in_its_very_words() {
        let pages = |language: Language| -> String {
            let words = Path::new(env!("CARGO_MANIFEST_DIR")).join("../words");
            fs::read_dir(words.join(language.code()).join("pages"))
                .unwrap()
                .map(|file| fs::read_to_string(file.unwrap().path()).unwrap())
                .collect()
        };
        for (said, _) in SCREENS {
            for language in Language::ALL {
                let (words, word) = (pages(language), said.of(language));
                assert!(
                    words.contains(&format!(" = {word}\n")),
                    "no page says {word}"
                );
            }
        }
    }
}
