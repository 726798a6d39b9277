//! The form of a target: its stack, its tolerance, and one shape of its kind.

use super::form::{Field, Takes, may, needed, sides, units, words};

pub(super) fn fields() -> Vec<Field> {
    let layers = vec![
        needed("name", "Name", "Nombre", Takes::Text),
        needed("thickness", "Thickness", "Espesor", Takes::Size),
    ];
    let tolerance = vec![
        needed("high", "Allowed high", "Alto permitido", Takes::Size),
        needed("low", "Allowed low", "Hondo permitido", Takes::Size),
    ];
    let undercuts = vec![
        needed("name", "Name", "Nombre", Takes::Text),
        needed(
            "within",
            "Corners in order",
            "Esquinas en orden",
            Takes::Points,
        ),
        needed("depth", "Deeper by", "Más hondo por", Takes::Size),
        needed(
            "material",
            "Filled again with",
            "Se rellena con",
            Takes::Text,
        ),
        may("lifts", "Lifts", "Capas de relleno", Takes::Number),
    ];
    vec![
        needed("id", "Short name", "Nombre corto", Takes::Text),
        needed(
            "name",
            "Name on the operator's screen",
            "Nombre en la pantalla del operador",
            Takes::Text,
        ),
        needed(
            "surface",
            "Its elevation is of",
            "Su cota es de",
            Takes::Text,
        ),
        needed("shape", "Shape", "Forma", Takes::OneOf { tables: shapes() }),
        may(
            "layers",
            "Layers under it, down to the dig",
            "Capas debajo, hasta la excavación",
            Takes::Rows { fields: layers },
        ),
        may(
            "tolerance",
            "Tolerance; the site's own when left out",
            "Tolerancia; si falta, la de la obra",
            Takes::Table { fields: tolerance },
        ),
        may(
            "within",
            "Its edge; everywhere when left out",
            "Su contorno; en todas partes si falta",
            Takes::Points,
        ),
        may(
            "guard_factor",
            "Guard factor, 1 is usual",
            "Factor de guarda, lo usual es 1",
            Takes::Number,
        ),
        may(
            "undercut",
            "Undercut zones",
            "Zonas sobreexcavadas",
            Takes::Rows { fields: undercuts },
        ),
    ]
}

fn shapes() -> Vec<Field> {
    let table =
        |key, english, spanish, fields| needed(key, english, spanish, Takes::Table { fields });
    let elevation = || needed("elevation", "Elevation", "Cota", Takes::Length);
    vec![
        table("flat", "level", "a nivel", vec![elevation()]),
        table("plane", "plane", "plano inclinado", plane()),
        table("run", "run in steps", "tramo con escalones", run()),
        table(
            "along",
            "profile along a line",
            "perfil a lo largo de una línea",
            along(),
        ),
        table("trench", "pipe trench", "zanja para tubo", trench()),
        table("face", "cut face", "talud", face()),
        table(
            "contour",
            "contour walked on the ground",
            "curva de nivel caminada",
            vec![
                elevation(),
                may(
                    "band",
                    "Off level by at most",
                    "Fuera de nivel a lo más",
                    Takes::Length,
                ),
            ],
        ),
        table("fold", "planes folded", "planos con quiebre", fold()),
        table(
            "triangles",
            "surface from a file",
            "superficie de un archivo",
            net(),
        ),
        table(
            "strip",
            "below the ground as it lies",
            "bajo el terreno existente",
            strip(),
        ),
    ]
}

fn plane() -> Vec<Field> {
    vec![
        needed("through", "A place on it", "Un lugar en él", Takes::Point),
        needed("elevation", "Elevation there", "Cota ahí", Takes::Length),
        needed(
            "rise_east",
            "Rise to the east",
            "Sube hacia el este",
            Takes::Rise,
        ),
        needed(
            "rise_north",
            "Rise to the north",
            "Sube hacia el norte",
            Takes::Rise,
        ),
    ]
}

fn fold() -> Vec<Field> {
    let kinds = words(&[
        (
            "crown",
            "crown: the lowest counts",
            "lomo: cuenta el más bajo",
        ),
        (
            "valley",
            "valley: the highest counts",
            "vaguada: cuenta el más alto",
        ),
    ]);
    vec![
        needed("kind", "Kind", "Clase", kinds),
        needed(
            "planes",
            "Planes",
            "Planos",
            Takes::Rows { fields: plane() },
        ),
    ]
}

fn widths() -> [Field; 2] {
    [
        needed(
            "left",
            "Width to the left",
            "Ancho a la izquierda",
            Takes::Length,
        ),
        needed(
            "right",
            "Width to the right",
            "Ancho a la derecha",
            Takes::Length,
        ),
    ]
}

fn window() -> Field {
    may(
        "window",
        "May fall off by, either way",
        "Puede correrse, a cada lado",
        Takes::Length,
    )
}

fn run() -> Vec<Field> {
    let steps = vec![
        needed("from", "From station", "Desde", Takes::Length),
        needed("elevation", "Elevation", "Cota", Takes::Length),
        window(),
    ];
    let mut fields = vec![
        needed("start", "Station 0", "Estación 0", Takes::Point),
        needed("toward", "Toward", "Hacia", Takes::Point),
        needed("length", "Length", "Largo", Takes::Length),
    ];
    fields.extend(widths());
    fields.push(needed(
        "steps",
        "Steps",
        "Escalones",
        Takes::Rows { fields: steps },
    ));
    fields
}

/// A line of straights and arcs.
fn axis() -> Vec<Field> {
    let pieces = vec![
        needed("to", "To", "Hasta", Takes::Point),
        may(
            "centre",
            "Centre of an arc",
            "Centro de un arco",
            Takes::Point,
        ),
        may("turn", "The arc turns", "El arco gira", sides()),
    ];
    vec![
        needed("start", "Starts at", "Empieza en", Takes::Point),
        may("first", "First station", "Primera estación", Takes::Length),
        needed(
            "pieces",
            "Straights and arcs",
            "Rectas y arcos",
            Takes::Rows { fields: pieces },
        ),
    ]
}

fn corners() -> Vec<Field> {
    vec![
        needed("station", "Station", "Estación", Takes::Length),
        needed("elevation", "Elevation", "Cota", Takes::Length),
        may(
            "curve",
            "Length of vertical curve",
            "Largo de curva vertical",
            Takes::Length,
        ),
    ]
}

fn along() -> Vec<Field> {
    let steps = vec![
        needed("station", "Station", "Estación", Takes::Length),
        needed("by", "Up + down −", "Sube + baja −", Takes::Length),
        window(),
    ];
    let mut fields = axis();
    fields.extend(widths());
    fields.push(needed(
        "profile",
        "Where grades meet",
        "Donde cambian las pendientes",
        Takes::Rows { fields: corners() },
    ));
    fields.push(may(
        "steps",
        "Steps",
        "Escalones",
        Takes::Rows { fields: steps },
    ));
    fields
}

fn trench() -> Vec<Field> {
    let inverts = vec![
        needed("station", "Station", "Estación", Takes::Length),
        needed("elevation", "Invert", "Plantilla del tubo", Takes::Length),
    ];
    let flows = words(&[
        (
            "up_station",
            "toward higher stations",
            "hacia estaciones mayores",
        ),
        ("down_station", "toward station 0", "hacia la estación 0"),
    ]);
    let mut fields = axis();
    fields.extend([
        needed(
            "inverts",
            "Inverts",
            "Plantillas",
            Takes::Rows { fields: inverts },
        ),
        needed("flow", "Flows", "Corre", flows),
        needed(
            "outside_diameter",
            "Outside diameter",
            "Diámetro exterior",
            Takes::Size,
        ),
        needed(
            "side",
            "Room on each side",
            "Espacio a cada lado",
            Takes::Size,
        ),
        may("wall", "Pipe wall", "Pared del tubo", Takes::Size),
        may("bedding", "Bedding", "Cama", Takes::Size),
        may("least_fall", "Least fall", "Caída mínima", Takes::Rise),
    ]);
    fields
}

fn face() -> Vec<Field> {
    let parts = vec![
        may("rise", "Rises", "Sube", Takes::Length),
        may("run", "Goes back", "Se retira", Takes::Length),
    ];
    let mut fields = axis();
    fields.extend([
        needed("rises", "Rises to the", "Sube a la", sides()),
        needed(
            "toe",
            "Toe",
            "Pie del talud",
            Takes::Rows { fields: corners() },
        ),
        needed(
            "faces",
            "From the toe outward",
            "Desde el pie hacia afuera",
            Takes::Rows { fields: parts },
        ),
    ]);
    fields
}

fn net() -> Vec<Field> {
    vec![
        may("kept", "Triangles of", "Triángulos de", Takes::Fixed),
        may(
            "file",
            "File, sent with IMPORT",
            "Archivo, mandado con IMPORTAR",
            Takes::Text,
        ),
        may(
            "name",
            "Which surface in it",
            "Cuál superficie",
            Takes::Text,
        ),
        may("unit", "It counts in", "Cuenta en", units()),
        may(
            "on_plan",
            "Its coordinates are the plan's",
            "Sus coordenadas son del plano",
            Takes::Flag,
        ),
        may("source", "Came from", "Vino de", Takes::Fixed),
    ]
}

fn strip() -> Vec<Field> {
    let mut fields = net();
    fields.push(needed(
        "thickness",
        "Stripped by",
        "Se despalma",
        Takes::Size,
    ));
    fields
}
