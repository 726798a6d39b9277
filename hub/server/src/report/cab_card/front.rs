//! The card's first page: where nobody stands, what stop looks like, the way in, whom to call.

use day::site::{Machine, Site};
use earthwork::keep_out::{keep_out_radius, shown_radius, tail_swing_radius};
use earthwork::length::Length;
use maud::{Markup, html};

use crate::report::hand_signals::stop_at_once;
use crate::report::paper::{Paper, feet};

/// The page of a machine.
pub(super) fn page(paper: &Paper, site: &Site, machine: &Machine) -> Markup {
    let reach = &machine.reach;
    let (keep_out, tail) = (keep_out_radius(reach), tail_swing_radius(reach));
    let (own, more) = (
        feet(reach.reach_at_ground),
        feet(keep_out - reach.reach_at_ground),
    );
    let (tail_own, tail_more) = (feet(reach.tail_radius), feet(tail - reach.tail_radius));
    html! {
        div.beside {
            (around(paper, machine))
            div {
                p.large { (paper.t(words::sheet_cab_card::keep_out())) br; strong { (shown_radius(keep_out)) " ft" } }
                p { (paper.of(&words::sheet_cab_card::reach_and_more(&own, &more))) }
                p { (paper.of(&words::sheet_cab_card::tail_swing(&feet(tail), &tail_own, &tail_more))) }
                p { (paper.t(words::sheet_cab_card::blind_side_right_behind_cab())) }
            }
        }
        div.stop {
            div.hatch { div.plate { (paper.t(words::sheet_cab_card::screen::stop())) } }
            (stop_at_once())
            p { strong { (paper.t(words::sheet_cab_card::stop_from_anybody())) } }
        }
        h3 { (paper.t(words::sheet_cab_card::the_way_in())) }
        (way_in(paper))
        h3 { (paper.t(words::sheet_cab_card::whom_to_call())) }
        (whom_to_call(paper, site))
    }
}

/// What the site knows, and room to write down what it does not.
fn whom_to_call(paper: &Paper, site: &Site) -> Markup {
    let rows = [
        (words::sheet_cab_card::emergency(), String::new()),
        (words::sheet_cab_card::in_charge(), String::new()),
        (
            words::sheet_cab_card::competent(),
            site.cuts.competent.join(", "),
        ),
    ];
    html! {
        div.call { @for (who, known) in &rows { p { (paper.t(*who)) " " strong { (known) } } } }
    }
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
            li { (paper.t(words::sheet_cab_card::somebody_asks())) }
            li { (paper.t(words::sheet_cab_card::hold_release_only_when_everybody())) }
            li { (paper.t(words::sheet_cab_card::tail_swing_gap_between_house())) }
        }
    }
}
