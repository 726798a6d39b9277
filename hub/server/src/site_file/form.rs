//! The form for each thing of a site: its fields in order, with their names in both languages. A phone draws it; the
//! reader of drafts reads it; a test holds the two together.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::form_target;

/// What a form is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum FormOf {
    /// A grade to reach.
    Target,
    /// A layout mark.
    Mark,
    /// A line on the plan.
    Line,
    /// A point of known elevation.
    Benchmark,
    /// A machine.
    Machine,
    /// A rod.
    Rod,
    /// A laser.
    Laser,
    /// What the site has settled on.
    Rules,
    /// How the plan's coordinates come on to the site.
    Frame,
}

impl FormOf {
    /// Its key in the site file.
    pub fn key(self) -> &'static str {
        match self {
            Self::Target => "target",
            Self::Mark => "mark",
            Self::Line => "line",
            Self::Benchmark => "benchmark",
            Self::Machine => "machine",
            Self::Rod => "rod",
            Self::Laser => "laser",
            Self::Rules => "rules",
            Self::Frame => "frame",
        }
    }

    /// Whether a site has it once, without a name.
    pub fn once(self) -> bool {
        matches!(self, Self::Rules | Self::Frame)
    }
}

/// A name in both languages.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[schema(as = FormName)]
pub struct Name {
    /// In English.
    pub english: &'static str,
    /// In Spanish.
    pub spanish: &'static str,
}

/// One thing's form.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[schema(as = SiteForm)]
pub struct Form {
    /// What it is of.
    pub of: FormOf,
    /// What several of them are called.
    pub name: Name,
    /// Whether a site has it once.
    pub once: bool,
    /// Its fields, in order.
    pub fields: Vec<Field>,
}

/// One field.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[schema(as = FormField)]
pub struct Field {
    /// Its key in the draft.
    pub key: &'static str,
    /// What it is called.
    pub name: Name,
    /// Whether it may not be left out.
    pub needed: bool,
    /// What it takes.
    pub takes: Takes,
}

/// What a field takes.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
#[schema(as = FormTakes)]
pub enum Takes {
    /// A text.
    Text,
    /// A length with its unit.
    Length,
    /// A plain number.
    Number,
    /// A rise: `2 %`.
    Rise,
    /// Yes or no.
    Flag,
    /// Shown, not typed.
    Fixed,
    /// One word of a list.
    Word {
        /// The list.
        words: Vec<Word>,
    },
    /// East and north.
    Point,
    /// Points in order.
    Points,
    /// Lengths in order.
    Lengths,
    /// The name of one thing of the site.
    One {
        /// Of which kind.
        of: FormOf,
    },
    /// Names of things of the site.
    Several {
        /// Of which kind.
        of: FormOf,
    },
    /// Tables, one after another.
    Rows {
        /// The fields of each.
        #[schema(no_recursion)]
        fields: Vec<Field>,
    },
    /// A table.
    Table {
        /// Its fields.
        #[schema(no_recursion)]
        fields: Vec<Field>,
    },
    /// Exactly one of several tables, each under a key of its own beside the other fields.
    OneOf {
        /// The tables.
        #[schema(no_recursion)]
        tables: Vec<Field>,
    },
}

/// A word of a list.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[schema(as = FormWord)]
pub struct Word {
    /// As it is written.
    pub id: &'static str,
    /// What it is called.
    pub name: Name,
}

pub(super) fn name(english: &'static str, spanish: &'static str) -> Name {
    Name { english, spanish }
}

pub(super) fn needed(
    key: &'static str,
    english: &'static str,
    spanish: &'static str,
    takes: Takes,
) -> Field {
    Field {
        key,
        name: name(english, spanish),
        needed: true,
        takes,
    }
}

pub(super) fn may(
    key: &'static str,
    english: &'static str,
    spanish: &'static str,
    takes: Takes,
) -> Field {
    Field {
        needed: false,
        ..needed(key, english, spanish, takes)
    }
}

pub(super) fn words(list: &[(&'static str, &'static str, &'static str)]) -> Takes {
    let words = list.iter().map(|(id, english, spanish)| Word {
        id,
        name: name(english, spanish),
    });
    Takes::Word {
        words: words.collect(),
    }
}

pub(super) fn sides() -> Takes {
    words(&[("left", "left", "izquierda"), ("right", "right", "derecha")])
}

pub(super) fn units() -> Takes {
    words(&[
        ("foot", "feet", "pies"),
        (
            "survey_foot",
            "US survey feet",
            "pies de topografía (EE. UU.)",
        ),
        ("metre", "metres", "metros"),
    ])
}

fn id() -> Field {
    needed("id", "Name", "Nombre", Takes::Text)
}

fn note() -> Field {
    may("note", "Note", "Nota", Takes::Text)
}

/// Every form, in the order in which a site is set up.
pub fn form() -> Vec<Form> {
    let form = |of: FormOf, english, spanish, fields| Form {
        of,
        name: name(english, spanish),
        once: of.once(),
        fields,
    };
    vec![
        form(FormOf::Target, "Targets", "Rasantes", form_target::fields()),
        form(FormOf::Mark, "Marks", "Marcas", mark()),
        form(FormOf::Line, "Lines", "Líneas", line()),
        form(
            FormOf::Benchmark,
            "Benchmarks",
            "Bancos de nivel",
            benchmark(),
        ),
        form(FormOf::Machine, "Machines", "Máquinas", machine()),
        form(FormOf::Rod, "Rods", "Estadales", rod()),
        form(
            FormOf::Laser,
            "Lasers",
            "Láseres",
            vec![
                id(),
                may(
                    "doubt_per_100_ft",
                    "Doubt over 100 ft",
                    "Duda en 100 ft",
                    Takes::Length,
                ),
            ],
        ),
        form(FormOf::Rules, "Rules and forms", "Reglas y cimbra", rules()),
        form(
            FormOf::Frame,
            "The plan's frame",
            "Marco del plano",
            frame(),
        ),
    ]
}

fn mark() -> Vec<Field> {
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
            "Lugar (o cadenamiento abajo)",
            Takes::Point,
        ),
        may(
            "station",
            "Station along its target",
            "Cadenamiento en su rasante",
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

fn line() -> Vec<Field> {
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

fn benchmark() -> Vec<Field> {
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

fn machine() -> Vec<Field> {
    let shapes = words(&[
        ("square", "square", "cuadrado"),
        ("triangle", "triangle", "triángulo"),
        ("circle", "circle", "círculo"),
        ("diamond", "diamond", "rombo"),
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

fn rod() -> Vec<Field> {
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

fn rules() -> Vec<Field> {
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
            Takes::Length,
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
            Takes::Length,
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

fn frame() -> Vec<Field> {
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
