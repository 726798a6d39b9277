//! A card for each cab: the machine's own measures and where nobody stands, how a call reads, what each screen means, the way in.

use day::site::Machine;
use day::state::State;
use earthwork::correction::{Amount, Correction, Ground};
use earthwork::keep_out::{keep_out_radius, shown_radius, tail_swing_radius};
use earthwork::length::Length;
use earthwork::words::{ScreenUnit, call_text};
use maud::{Markup, html};
use words::Fixed;

use super::hand_signals::agreed_words;
use super::paper::{Paper, feet, or_dash};

/// None while there is no site.
pub(super) fn sheet(paper: &Paper, state: &State) -> Option<String> {
    let site = state.site()?;
    let signals = agreed_words(paper, state);
    let body = html! {
        @if site.machines.is_empty() { p { (paper.t(words::sheet_cab_card::the_site_names_no_machine())) } }
        @for machine in &site.machines {
            section.sheet.cab { (card(paper, machine, signals.as_deref())) }
        }
    };
    Some(paper.sheet(paper.t(words::sheet_cab_card::cab_card()), &body))
}

fn card(paper: &Paper, machine: &Machine, signals: Option<&str>) -> Markup {
    html! {
        h2 { (machine.id) @if !machine.geometry.class.is_empty() { " · " (machine.geometry.class) } }
        div.beside {
            div { (around(paper, machine)) (measures(paper, machine)) }
            div {
                (way_in(paper))
                h3 { (paper.t(words::sheet_cab_card::how_a_call_reads())) }
                (calls(paper))
            }
        }
        h3 { (paper.t(words::sheet_cab_card::what_the_screen_means())) }
        (screens(paper))
        h3 { (paper.t(words::sheet_cab_card::hands())) }
        p {
            @if let Some(signals) = signals {
                (paper.t(words::sheet_cab_card::agreed_today())) strong { (signals) } ". "
            } @else {
                strong { (paper.t(words::sheet_cab_card::not_agreed_today())) }
            }
            (paper.t(words::sheet_cab_card::they_are_drawn_sheet_hand()))
        }
    }
}

fn measures(paper: &Paper, machine: &Machine) -> Markup {
    let (reach, geometry) = (&machine.reach, &machine.geometry);
    let buckets: Vec<String> = geometry.buckets.iter().map(|width| feet(*width)).collect();
    let rows = [
        (
            paper.t(words::sheet_cab_card::reach_on_the_ground()),
            feet(reach.reach_at_ground),
        ),
        (
            paper.t(words::sheet_cab_card::tail_from_the_middle()),
            feet(reach.tail_radius),
        ),
        (
            paper.t(words::sheet_cab_card::over_the_tracks()),
            feet(reach.track_width),
        ),
        (
            paper.t(words::sheet_cab_card::digs_to()),
            or_dash(geometry.dig_depth, feet),
        ),
        (
            paper.t(words::sheet_cab_card::dumps_at()),
            or_dash(geometry.dump_height, feet),
        ),
        (
            paper.t(words::sheet_cab_card::boom_up_to()),
            or_dash(geometry.boom_height, feet),
        ),
        (
            paper.t(words::sheet_cab_card::buckets()),
            if buckets.is_empty() {
                "–".into()
            } else {
                buckets.join(", ")
            },
        ),
    ];
    let rows: Vec<Vec<String>> = rows
        .into_iter()
        .map(|(name, value)| vec![name.to_owned(), value])
        .collect();
    paper.table(
        &[
            paper.t(words::sheet_cab_card::measure()),
            paper.t(words::sheet_cab_card::ft()),
        ],
        &rows,
    )
}

/// The ground round the machine, to scale, seen from above with the bucket to the top of the sheet.
fn around(paper: &Paper, machine: &Machine) -> Markup {
    let reach = &machine.reach;
    let keep_out = keep_out_radius(reach);
    let scale = 150.0 / keep_out.feet();
    let r = |length: Length| length.feet() * scale;
    let (tail, half_track) = (r(reach.tail_radius), r(reach.track_width) / 2.0);
    let outer = r(keep_out);
    html! {
        svg.around viewBox="-165 -165 330 330" role="img" aria-label=(paper.t(words::sheet_cab_card::the_ground_round_the_machine())) {
            // From straight right of the cab to straight behind it.
            path d=(format!("M0 0L{outer} 0A{outer} {outer} 0 0 1 0 {outer}Z")) fill="#ddd" stroke="none" {}
            circle r=(outer) fill="none" stroke="#000" stroke-width="2.5" {}
            circle r=(r(reach.reach_at_ground)) fill="none" stroke="#000" stroke-dasharray="7 5" {}
            circle r=(r(tail_swing_radius(reach))) fill="#fff" stroke="#000" stroke-width="2" {}
            rect x=(-half_track) y=(-half_track) width=(half_track * 2.0) height=(half_track * 2.0) fill="none" stroke="#000" {}
            circle r=(tail) fill="none" stroke="#000" stroke-dasharray="2 3" {}
            path d=(format!("M0 0V{}", -r(reach.reach_at_ground))) stroke="#000" stroke-width="5" {}
            path d="M-9 7L0 -9L9 7Z" {}
            text y=(-outer + 17.0) x="8" font-size="15" font-weight="700" { (shown_radius(keep_out)) " ft" }
            text x=(outer * 0.48) y=(outer * 0.5) text-anchor="middle" font-size="12" font-weight="700" { (paper.t(words::sheet_cab_card::blind())) }
            text y=(r(tail_swing_radius(reach)) + 13.0) x="0" font-size="12" text-anchor="middle" { (paper.t(words::sheet_cab_card::tail())) (feet(tail_swing_radius(reach))) " ft" }
        }
    }
}

/// The steps of the way in, and what stays hot; the blind side is common practice.
fn way_in(paper: &Paper) -> Markup {
    html! {
        ul {
            li { (paper.t(words::sheet_cab_card::nobody_screen_not_nobody_there())) }
            li { (paper.t(words::sheet_cab_card::blind_side_right_behind_cab())) }
            li { (paper.t(words::sheet_cab_card::somebody_asks())) }
            li { (paper.t(words::sheet_cab_card::hold_release_only_when_everybody())) }
            li { (paper.t(words::sheet_cab_card::tail_swing_gap_between_house())) }
        }
    }
}

/// Calls as the cab shows them, written by the same function, and what to do.
fn calls(paper: &Paper) -> Markup {
    let examples = [
        (
            Correction::Down(Amount::HalfTenths(6)),
            30,
            paper.t(words::sheet_cab_card::dig_three_tenths_foot()),
        ),
        (
            Correction::Down(Amount::TenthsOfFeet(12)),
            120,
            paper.t(words::sheet_cab_card::the_number_is_in_feet()),
        ),
        (
            Correction::Shave(Amount::HalfTenths(1)),
            5,
            paper.t(words::sheet_cab_card::take_a_thin_slice()),
        ),
        (
            Correction::Grade,
            0,
            paper.t(words::sheet_cab_card::on_grade()),
        ),
        (
            Correction::Up(Amount::HalfTenths(4)),
            -20,
            paper.t(words::sheet_cab_card::too_deep()),
        ),
        (
            Correction::Wait,
            0,
            paper.t(words::sheet_cab_card::too_close_to_call()),
        ),
    ];
    let rows: Vec<Vec<String>> = examples
        .into_iter()
        .map(|(correction, hundredths, does)| {
            let ground = Ground {
                dev: Length::from_hundredths_of_a_foot(hundredths),
                aim: Length::ZERO,
                tolerance: None,
            };
            let text = call_text(&correction, &ground, paper.language(), ScreenUnit::Tenths);
            let mut line = text.line;
            if !text.warning.is_empty() {
                line = format!("{line} · {}", text.warning);
            }
            vec![line, does.to_owned()]
        })
        .collect();
    paper.table(
        &[
            paper.t(words::sheet_cab_card::on_the_screen()),
            paper.t(words::sheet_cab_card::what_to_do()),
        ],
        &rows,
    )
}

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

fn screens(paper: &Paper) -> Markup {
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
