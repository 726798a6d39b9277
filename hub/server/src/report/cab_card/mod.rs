//! A card for each cab, to be read at an arm's length: first where nobody stands and what stop looks like, then the number and the
//! agreed hands, then what each screen means.

mod front;
mod number;
mod screens;

use day::site::{Machine, Site};
use day::state::State;
use maud::{Markup, html};

use super::paper::{Paper, feet};

/// Letters of 5 mm and more: what is read from the seat.
const STYLE: &str = "
.cab { font-size: 14.5pt; line-height: 1.2; }
.cab h2 { font-size: 28pt; margin: 0 0 .15em; }
.cab h2 small { font-size: 16pt; }
.cab h3 { font-size: 16pt; margin: .4em 0 .1em; }
.cab p { margin: .2em 0; }
.cab ul { margin: .1em 0; padding-left: 1.1em; }
.beside { display: grid; grid-template-columns: 80mm 1fr; gap: 5mm; align-items: start; break-inside: avoid; }
.large { font-size: 16pt; }
.large strong { font-size: 50pt; line-height: 1; }
.stop { display: grid; grid-template-columns: 70mm 22mm 1fr; gap: 4mm; align-items: center; margin: .35em 0; break-inside: avoid; }
.stop p { font-size: 13.5pt; }
.hatch { background: repeating-linear-gradient(45deg, #000 0 3mm, #fff 3mm 8mm); border: 1px solid #000; padding: 5mm; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
.plate { background: #fff; border: 1.6mm solid #000; text-align: center; font-size: 42pt; font-weight: 900; line-height: 1.15; }
.call p { border-bottom: 1px solid #000; min-height: 9mm; margin: 0; padding-top: 1.5mm; font-size: 13pt; }
.cab .rows { font-size: 14.5pt; line-height: 1.18; }
.cab .rows td:first-child { font-weight: 700; white-space: normal; }
.calls .rows td:first-child { font-size: 23pt; line-height: 1.1; }
.calls .rows th.w { width: 52%; }
.screens .rows { font-size: 13.5pt; line-height: 1.14; }
.screens .rows th.w { width: 36%; }
.small { font-size: 11pt; }
.hands { display: grid; grid-template-columns: repeat(4, 1fr); gap: 2mm; text-align: center; font-size: 14pt; }
.hands div { break-inside: avoid; border: 1px solid #000; padding: 1mm; }
.hands svg { height: 29mm; }
.shown { font-size: 12.5pt; }
.cab ~ .foot { margin-top: .6em; font-size: 8pt; line-height: 1.2; }
@media print { header { display: none; } }
@media screen and (max-width: 40rem) {
  .beside, .stop { grid-template-columns: 1fr; }
  .hands { grid-template-columns: 1fr 1fr; }
}
";

/// None while there is no site.
pub(super) fn sheet(paper: &Paper, state: &State) -> Option<String> {
    let site = state.site()?;
    let mut parts = Vec::new();
    for machine in &site.machines {
        parts.push(part(
            paper,
            machine,
            words::sheet_cab_card::front(),
            &front::page(paper, site, machine),
        ));
        parts.push(part(
            paper,
            machine,
            words::sheet_cab_card::number(),
            &numbers(paper, state),
        ));
        parts.push(part(
            paper,
            machine,
            words::sheet_cab_card::what_the_screen_means(),
            &meanings(paper, site, machine),
        ));
    }
    if parts.is_empty() {
        parts.push(html! { p { (paper.t(words::sheet_cab_card::the_site_names_no_machine())) } });
    }
    Some(paper.styled(paper.t(words::sheet_cab_card::cab_card()), &parts, STYLE))
}

/// A page of the card, under the machine's name.
fn part(paper: &Paper, machine: &Machine, what: words::Fixed, page: &Markup) -> Markup {
    html! {
        section.cab {
            h2 {
                (machine.id) @if !machine.geometry.class.is_empty() { " · " (machine.geometry.class) }
                " " small { (paper.t(what)) }
            }
            (page)
        }
    }
}

fn numbers(paper: &Paper, state: &State) -> Markup {
    html! {
        div.calls {
            h3 { (paper.t(words::sheet_cab_card::how_a_call_reads())) }
            (number::calls(paper))
        }
        h3 { (paper.t(words::sheet_cab_card::hands())) }
        (number::hands(paper, state))
    }
}

fn meanings(paper: &Paper, site: &Site, machine: &Machine) -> Markup {
    html! {
        div.screens { (screens::screens(paper)) }
        @let owners = owners(site);
        @if !owners.is_empty() { p.shown { (paper.t(words::sheet_cab_card::line_owners())) " " strong { (owners) } } }
        p.small { (paper.t(words::sheet_cab_card::measures_in_feet())) " " (measures(paper, machine)) }
    }
}

/// Whom the site names to call for each line, buried and overhead.
fn owners(site: &Site) -> String {
    let buried = site.cuts.utilities.iter().map(|one| (&one.id, &one.call));
    let overhead = site.cuts.overheads.iter().map(|one| (&one.id, &one.call));
    let named = buried.chain(overhead).filter(|(_, call)| !call.is_empty());
    let named = named.map(|(id, call)| format!("{id}: {call}"));
    named.collect::<Vec<_>>().join("; ")
}

/// What the machine reaches, in one sentence.
fn measures(paper: &Paper, machine: &Machine) -> String {
    let (reach, geometry) = (&machine.reach, &machine.geometry);
    let buckets: Vec<String> = geometry.buckets.iter().map(|width| feet(*width)).collect();
    let known = |length: Option<earthwork::length::Length>| length.map(feet);
    let all = [
        (
            words::sheet_cab_card::reach_on_the_ground(),
            Some(feet(reach.reach_at_ground)),
        ),
        (
            words::sheet_cab_card::tail_from_the_middle(),
            Some(feet(reach.tail_radius)),
        ),
        (
            words::sheet_cab_card::over_the_tracks(),
            Some(feet(reach.track_width)),
        ),
        (words::sheet_cab_card::digs_to(), known(geometry.dig_depth)),
        (
            words::sheet_cab_card::dumps_at(),
            known(geometry.dump_height),
        ),
        (
            words::sheet_cab_card::boom_up_to(),
            known(geometry.boom_height),
        ),
        (
            words::sheet_cab_card::buckets(),
            Some(buckets.join(", ")).filter(|all| !all.is_empty()),
        ),
    ];
    let said = all
        .into_iter()
        .filter_map(|(name, value)| Some(format!("{} {}", paper.t(name), value?)));
    said.collect::<Vec<_>>().join(" · ")
}
