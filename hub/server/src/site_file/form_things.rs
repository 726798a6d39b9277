//! The forms of everything but targets: marks, lines, benchmarks, machines, rods, lasers, rules, the frame.

use super::form::{Field, FormOf, Takes, may, needed, sides, units, words};

fn id() -> Field {
    needed("id", "Name", "Nombre", Takes::Text)
}

fn note() -> Field {
    may("note", "Note", "Nota", Takes::Text)
}

pub(super) fn mark() -> Vec<Field> {
    vec![
        id(),
        may(
            "target",
            "Target",
            "Rasante",
            Takes::One { of: FormOf::Target },
        ),
        may(
            "at",
            "Place (or station below)",
            "Lugar (o estación abajo)",
            Takes::Point,
        ),
        may(
            "station",
            "Station along its target",
            "Estación en su rasante",
            Takes::Length,
        ),
        may(
            "offset",
            "Offset, right + left −",
            "Desplazamiento, derecha + izquierda −",
            Takes::Length,
        ),
        may(
            "surface",
            "Ground under the rod",
            "Suelo bajo el estadal",
            words(&[
                ("trimmed", "trimmed or compacted", "recortado o compactado"),
                ("tooth_marked", "marked by teeth", "marcado por dientes"),
                ("hard_or_rock", "rock or cobbles", "roca o piedra"),
            ]),
        ),
        note(),
    ]
}

pub(super) fn line() -> Vec<Field> {
    let kinds = words(&[
        ("property", "property", "lindero"),
        ("easement", "easement", "servidumbre"),
        ("setback", "setback", "retiro"),
        ("limit_of_work", "limit of work", "límite de obra"),
    ]);
    vec![
        id(),
        needed("kind", "Kind", "Clase", kinds),
        needed(
            "points",
            "Corners in order",
            "Esquinas en orden",
            Takes::Points,
        ),
        needed(
            "keep",
            "Work stays on this side, looking along it",
            "El trabajo queda de este lado, mirando a lo largo",
            sides(),
        ),
        may(
            "no_cross",
            "Must not be crossed",
            "No se cruza",
            Takes::Flag,
        ),
        needed(
            "doubt",
            "Doubt of its place",
            "Duda de su lugar",
            Takes::Length,
        ),
        note(),
    ]
}

pub(super) fn benchmark() -> Vec<Field> {
    vec![
        id(),
        needed("elevation", "Elevation", "Cota", Takes::Length),
        may("at", "Place", "Lugar", Takes::Point),
        may(
            "doubt",
            "Doubt of its elevation",
            "Duda de su cota",
            Takes::Length,
        ),
        note(),
    ]
}

pub(super) fn machine() -> Vec<Field> {
    let shapes = words(&[
        ("square", "square", "cuadrado"),
        ("triangle", "triangle", "triángulo"),
        ("ring", "ring", "aro"),
        ("bars", "two bars", "dos barras"),
    ]);
    vec![
        id(),
        needed(
            "shape",
            "Shape on the screens",
            "Figura en las pantallas",
            shapes,
        ),
        needed(
            "reach_at_ground",
            "Reach at ground",
            "Alcance a nivel del suelo",
            Takes::Length,
        ),
        needed("tail_radius", "Tail radius", "Radio de cola", Takes::Length),
        needed(
            "track_width",
            "Width over the tracks",
            "Ancho de orugas",
            Takes::Length,
        ),
        may(
            "class",
            "Class, such as 14 t",
            "Clase, como 14 t",
            Takes::Text,
        ),
        may("dig_depth", "Digs so deep", "Cava hasta", Takes::Length),
        may(
            "dump_height",
            "Empties its bucket so high",
            "Vacía el cucharón a",
            Takes::Length,
        ),
        may(
            "boom_height",
            "Its boom comes so high",
            "Su pluma llega a",
            Takes::Length,
        ),
        may(
            "buckets",
            "Widths of its buckets",
            "Anchos de sus cucharones",
            Takes::Lengths,
        ),
        may(
            "works_on",
            "Works on",
            "Trabaja en",
            Takes::Several { of: FormOf::Target },
        ),
        may(
            "direction",
            "Direction of work",
            "Sentido del trabajo",
            Takes::Text,
        ),
    ]
}

pub(super) fn overhead() -> Vec<Field> {
    vec![
        id(),
        needed(
            "points",
            "What it hangs over, pole by pole",
            "Sobre qué cuelga, poste por poste",
            Takes::Points,
        ),
        needed(
            "height",
            "Its lowest over the ground",
            "Lo más bajo sobre el suelo",
            Takes::Length,
        ),
        may(
            "kilovolts",
            "Kilovolts, as its owner says; empty when nobody knows",
            "Kilovoltios, según la compañía; vacío si nadie sabe",
            Takes::Number,
        ),
        may(
            "kilovolts_at_most",
            "No more than so many kilovolts, when its owner says only that",
            "No más de tantos kilovoltios, si la compañía dice solo eso",
            Takes::Number,
        ),
        may(
            "clearance",
            "Stay off by, as its owner says, when that is more than the table",
            "No acercarse a menos de, según la compañía, si es más que la tabla",
            Takes::Length,
        ),
        may("call", "Whom to call", "A quién llamar", Takes::Text),
    ]
}

pub(super) fn pile() -> Vec<Field> {
    vec![
        id(),
        needed("at", "Its middle", "Su centro", Takes::Point),
        needed(
            "across",
            "Across its foot",
            "De lado a lado, al pie",
            Takes::Length,
        ),
        note(),
    ]
}

pub(super) fn rod() -> Vec<Field> {
    let units = words(&[
        (
            "feet_hundredths",
            "feet and hundredths",
            "pies y centésimas",
        ),
        (
            "feet_inches_eighths",
            "feet, inches, eighths",
            "pies, pulgadas, octavos",
        ),
        ("metres", "metres", "metros"),
    ]);
    vec![
        id(),
        needed("unit", "Marked in", "Marcado en", units),
        needed("length", "Length", "Largo", Takes::Length),
        may(
            "joints",
            "Joints, from the foot up",
            "Juntas, desde el pie",
            Takes::Lengths,
        ),
        may(
            "bracket",
            "Bracket, added to readings",
            "Soporte, se suma a lo leído",
            Takes::Length,
        ),
    ]
}

pub(super) fn rules() -> Vec<Field> {
    let unsettled = words(&[
        (
            "trim",
            "counts as high: trim it",
            "cuenta como alto: se recorta",
        ),
        (
            "ask_supervisor",
            "the supervisor rules",
            "decide el supervisor",
        ),
    ]);
    let forms = vec![
        needed(
            "height",
            "Height of one form",
            "Altura de una cimbra",
            Takes::Size,
        ),
        may(
            "widths",
            "Widths there are",
            "Anchos que hay",
            Takes::Lengths,
        ),
        may(
            "filler",
            "A filler makes up, either way",
            "Un relleno compone, a cada lado",
            Takes::Size,
        ),
    ];
    vec![
        may(
            "check_good",
            "A check is good up to",
            "Una revisión es buena hasta",
            Takes::Length,
        ),
        may(
            "check_warn",
            "and shot again up to",
            "y se lee otra vez hasta",
            Takes::Length,
        ),
        may(
            "unsettled_high",
            "Two shots, unsettled on the high side",
            "Dos lecturas, en duda del lado alto",
            unsettled,
        ),
        may(
            "level_closure",
            "Levels may miss by this × √set-ups",
            "Una nivelación puede errar esto × √puestas",
            Takes::Length,
        ),
        may(
            "truck_side",
            "A truck's side is so high",
            "El lado de un camión mide",
            Takes::Length,
        ),
        may(
            "check_cost",
            "One check costs",
            "Una revisión cuesta",
            Takes::Number,
        ),
        may(
            "undetected_hour_cost",
            "An hour on a moved laser costs",
            "Una hora con el láser movido cuesta",
            Takes::Number,
        ),
        may(
            "hours_between_bumps",
            "Hours between bumps",
            "Horas entre golpes",
            Takes::Number,
        ),
        may(
            "forms",
            "Forms at hand",
            "Cimbra que hay",
            Takes::Table { fields: forms },
        ),
    ]
}

pub(super) fn frame() -> Vec<Field> {
    let pins = vec![
        id(),
        needed("east", "Plan east", "Este del plano", Takes::Number),
        needed("north", "Plan north", "Norte del plano", Takes::Number),
        needed("at", "Measured at", "Medido en", Takes::Point),
    ];
    vec![
        needed("unit", "The plan counts in", "El plano cuenta en", units()),
        needed(
            "east",
            "Plan east of the site's corner",
            "Este del plano en la esquina",
            Takes::Number,
        ),
        needed(
            "north",
            "Plan north of the site's corner",
            "Norte del plano en la esquina",
            Takes::Number,
        ),
        may(
            "turn",
            "Turn to the left, degrees",
            "Giro a la izquierda, grados",
            Takes::Number,
        ),
        may(
            "pin",
            "Pins that were found",
            "Mojoneras encontradas",
            Takes::Rows { fields: pins },
        ),
    ]
}

pub(super) fn laser() -> Vec<Field> {
    vec![
        id(),
        may(
            "doubt_per_100_ft",
            "Doubt over 100 ft",
            "Duda en 100 ft",
            Takes::Length,
        ),
    ]
}
