//! A card for each cab: the machine's own measures and where nobody stands, how a call reads, what each screen means, the way in.

use day::site::Machine;
use day::state::State;
use earthwork::correction::{Amount, Correction, Ground};
use earthwork::keep_out::{keep_out_radius, shown_radius, tail_swing_radius};
use earthwork::length::Length;
use earthwork::words::{ScreenUnit, call_text};
use maud::{Markup, html};

use super::hand_signals::agreed_words;
use super::paper::{Paper, feet, or_dash};

/// None while there is no site.
pub(super) fn sheet(paper: &Paper, state: &State) -> Option<String> {
    let site = state.site()?;
    let signals = agreed_words(paper, state);
    let body = html! {
        @if site.machines.is_empty() { p { (paper.t("The site names no machine.", "La obra no nombra ninguna máquina.")) } }
        @for machine in &site.machines {
            section.sheet.cab { (card(paper, machine, signals.as_deref())) }
        }
    };
    Some(paper.sheet(paper.t("Cab card", "Tarjeta de cabina"), &body))
}

fn card(paper: &Paper, machine: &Machine, signals: Option<&str>) -> Markup {
    html! {
        h2 { (machine.id) @if !machine.geometry.class.is_empty() { " · " (machine.geometry.class) } }
        div.beside {
            div { (around(paper, machine)) (measures(paper, machine)) }
            div {
                (way_in(paper))
                h3 { (paper.t("How a call reads", "Cómo se lee una orden")) }
                (calls(paper))
            }
        }
        h3 { (paper.t("What the screen means", "Qué significa la pantalla")) }
        (screens(paper))
        h3 { (paper.t("Hands", "Manos")) }
        p {
            @if let Some(signals) = signals {
                (paper.t("Agreed today: ", "Acordadas hoy: ")) strong { (signals) } ". "
            } @else {
                strong { (paper.t("NOT AGREED TODAY: show each other the signals first. ", "SIN ACORDAR HOY: muéstrense las señas primero. ")) }
            }
            (paper.t("They are drawn on the sheet of hand signals. You do not see the signaller: stand still.", "Están dibujadas en la hoja de señas. No ve a quien da las señas: quieto."))
        }
    }
}

fn measures(paper: &Paper, machine: &Machine) -> Markup {
    let (reach, geometry) = (&machine.reach, &machine.geometry);
    let buckets: Vec<String> = geometry.buckets.iter().map(|width| feet(*width)).collect();
    let rows = [
        (
            paper.t("Reach on the ground", "Alcance en el suelo"),
            feet(reach.reach_at_ground),
        ),
        (
            paper.t("Tail, from the middle", "Cola, desde el centro"),
            feet(reach.tail_radius),
        ),
        (
            paper.t("Over the tracks", "Ancho de orugas"),
            feet(reach.track_width),
        ),
        (
            paper.t("Digs to", "Cava hasta"),
            or_dash(geometry.dig_depth, feet),
        ),
        (
            paper.t("Dumps at", "Descarga a"),
            or_dash(geometry.dump_height, feet),
        ),
        (
            paper.t("Boom up to", "Pluma hasta"),
            or_dash(geometry.boom_height, feet),
        ),
        (
            paper.t("Buckets", "Cucharones"),
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
        &[paper.t("measure", "medida"), paper.t("#ft", "#ft")],
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
        svg.around viewBox="-165 -165 330 330" role="img" aria-label=(paper.t("The ground round the machine", "El suelo alrededor de la máquina")) {
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
            text x=(outer * 0.48) y=(outer * 0.5) text-anchor="middle" font-size="12" font-weight="700" { (paper.t("BLIND", "CIEGO")) }
            text y=(r(tail_swing_radius(reach)) + 13.0) x="0" font-size="12" text-anchor="middle" { (paper.t("tail ", "cola ")) (feet(tail_swing_radius(reach))) " ft" }
        }
    }
}

/// The steps of the way in, and what stays hot; the blind side is common practice.
fn way_in(paper: &Paper) -> Markup {
    html! {
        ul {
            li { (paper.t("Nobody on the screen is not nobody there: LOOK before every move.", "Que no haya nadie en la pantalla no quiere decir que no haya nadie ahí: MIRE antes de cada movimiento.")) }
            li { (paper.t("The blind side is right and behind the cab and turns with the house: anywhere in the circle may be on it.", "El lado ciego es la derecha y detrás de la cabina y gira con la caseta: cualquier punto del círculo puede quedar ahí.")) }
            li { (paper.t("Somebody asks: bucket on the ground, lever locked, hands off, then hold BUCKET DOWN.", "Alguien pide entrar: cucharón al suelo, palanca trabada, manos fuera; entonces mantenga CUCHARÓN ABAJO.")) }
            li { (paper.t("Hold RELEASE only when everybody named is out and you have looked.", "Mantenga REANUDAR solo cuando todos los nombrados salieron y usted miró.")) }
            li { (paper.t("Tail swing and the gap between house and tracks stay out of bounds with the bucket down too.", "El giro de la cola y el hueco entre caseta y orugas quedan prohibidos también con el cucharón abajo.")) }
        }
    }
}

/// Calls as the cab shows them, written by the same function, and what to do.
fn calls(paper: &Paper) -> Markup {
    let examples = [
        (
            Correction::Down(Amount::HalfTenths(6)),
            30,
            paper.t("dig three tenths of a foot", "cave tres décimas de pie"),
        ),
        (
            Correction::Down(Amount::TenthsOfFeet(12)),
            120,
            paper.t(
                "the number is in FEET: one foot two tenths",
                "el número es en PIES: un pie dos décimas",
            ),
        ),
        (
            Correction::Shave(Amount::HalfTenths(1)),
            5,
            paper.t("take a thin slice", "quite una capa delgada"),
        ),
        (
            Correction::Grade,
            0,
            paper.t("on grade: dig no more here", "a nivel: no cave más aquí"),
        ),
        (
            Correction::Up(Amount::HalfTenths(4)),
            -20,
            paper.t(
                "too deep: stop here, put nothing back",
                "muy hondo: pare aquí, no devuelva tierra",
            ),
        ),
        (
            Correction::Wait,
            0,
            paper.t(
                "too close to call: another shot comes",
                "muy justo: viene otra lectura",
            ),
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
            paper.t("*on the screen", "*en la pantalla"),
            paper.t("do", "haga"),
        ],
        &rows,
    )
}

/// What the cab's page says, in both languages and in its very words, and what each asks for.
const SCREENS: [[&str; 4]; 11] = [
    [
        "STOP",
        "PARE",
        "stand still, bucket down; only a supervisor lifts it",
        "quieto, cucharón al suelo; solo lo levanta un supervisor",
    ],
    [
        "PAUSE – LASER CHECK",
        "PAUSA – LÁSER EN REVISIÓN",
        "no number counts; wait for the next call",
        "ningún número vale; espere la próxima orden",
    ],
    [
        "OLD – ASK",
        "VIEJA – PREGUNTE",
        "the last number is too old; ask",
        "el último número es muy viejo; pregunte",
    ],
    [
        "NEW TARGET",
        "RASANTE NUEVA",
        "old numbers are dead; press SEEN",
        "los números de antes ya no valen; apriete VISTO",
    ],
    [
        "NO LINK",
        "SIN ENLACE",
        "no number counts; watch the ground person: hands",
        "ningún número vale; mire al de piso: manos",
    ],
    [
        "LOOK",
        "MIRE",
        "somebody works inside your circle: eyes before you move",
        "alguien trabaja dentro de su círculo: mirada antes de moverse",
    ],
    [
        "HAND DIG",
        "CAVE A MANO",
        "a buried line is near: no bucket",
        "hay una línea enterrada cerca: sin cucharón",
    ],
    [
        "LINE STRUCK:",
        "LÍNEA GOLPEADA:",
        "gas or not known: get out of the machine and away from it, everybody away upwind, 911 from far off, then its owner; power: stay in, touch nothing",
        "gas o no se sabe: salga y aléjese de la máquina, todos lejos contra el viento, de lejos al 911, luego al dueño; corriente: quédese adentro, no toque nada",
    ],
    [
        "GET AWAY FROM THE FACE",
        "ALÉJENSE DEL TALUD",
        "track back out of its reach; the competent person inspects",
        "retroceda fuera de su alcance; inspecciona la persona competente",
    ],
    [
        "SPOTTER NEEDED",
        "FALTA SEÑALERO",
        "a line overhead is within reach; wait until somebody spots",
        "hay una línea aérea al alcance; espere a que haya señalero",
    ],
    [
        "NOBODY HAS ASKED TO COME IN – LOOK ANYWAY",
        "NADIE HA PEDIDO ENTRAR – MIRE DE TODOS MODOS",
        "it senses nobody: look before every move",
        "no detecta a nadie: mire antes de cada movimiento",
    ],
];

fn screens(paper: &Paper) -> Markup {
    let mut rows: Vec<Vec<String>> = SCREENS
        .iter()
        .map(|[english, spanish, does, haga]| {
            vec![
                paper.t(english, spanish).to_owned(),
                paper.t(does, haga).to_owned(),
            ]
        })
        .collect();
    rows.push(vec![
        paper
            .t(
                "the block in the top corner neither fills nor empties",
                "el cuadro de la esquina de arriba no se llena ni se vacía",
            )
            .to_owned(),
        paper
            .t(
                "the screen is dead, whatever it shows: look at hands",
                "la pantalla está muerta, muestre lo que muestre: mire las manos",
            )
            .to_owned(),
    ]);
    let columns = [
        paper.t("*on the screen", "*en la pantalla"),
        paper.t("do", "haga"),
    ];
    paper.table(&columns, &rows)
}

#[cfg(test)]
mod tests {
    use super::SCREENS;
    use std::fs;
    use std::path::Path;

    /// The card is of no use when the page says it otherwise.
    #[test]
    fn the_card_says_what_the_cabs_page_says_in_its_very_words() {
        let pages = |folder: &str| -> String {
            let words = Path::new(env!("CARGO_MANIFEST_DIR")).join("../words");
            fs::read_dir(words.join(folder).join("pages"))
                .unwrap()
                .map(|file| fs::read_to_string(file.unwrap().path()).unwrap())
                .collect()
        };
        let (in_english, in_spanish) = (pages("en"), pages("es"));
        for [english, spanish, ..] in SCREENS {
            for (words, word) in [(&in_english, english), (&in_spanish, spanish)] {
                assert!(
                    words.contains(&format!(" = {word}\n")),
                    "no page says {word}"
                );
            }
        }
    }
}
