//! Sentences about who is in: phones, names, codes, cabs.

use super::Told;
use day::entry::Body;
use day::said::codes::Lasts;
use day::said::receipt::{CabPage, ScreenNotice};

#[expect(
    clippy::too_many_lines,
    reason = "one line for each thing that can be said"
)]
pub(super) fn tell(body: &Body) -> Told {
    match body {
        Body::Joined(b) => {
            let told = match &b.same_as {
                Some(other) => Told::new(
                    format!(
                        "{} joined, and says to be the one of phone {other}.",
                        b.person
                    ),
                    format!(
                        "Entró {}; dice ser quien tiene el teléfono {other}.",
                        b.person
                    ),
                ),
                None => Told::new(
                    format!("{} joined.", b.person),
                    format!("Entró {}.", b.person),
                ),
            };
            match &b.machine {
                Some(machine) => told.machine(machine),
                None => told,
            }
        }
        Body::ScreenChanged(_) => Told::new("Screen settings changed.", "Pantalla ajustada."),
        Body::PhoneRemoved(b) => Told::new(
            format!("Phone {} removed.", b.device),
            format!("Teléfono {} retirado.", b.device),
        ),
        Body::CodesRenewed(_) => Told::new(
            "Codes renewed: the old ones open nothing.",
            "Códigos nuevos: los viejos ya no abren.",
        ),
        Body::CodesLast(b) => match b.lasts {
            Lasts::Today => Told::new(
                "Codes last until the next day is opened.",
                "Los códigos valen hasta que se abra el día siguiente.",
            ),
            Lasts::ThisWeek => Told::new(
                "Codes last for this week.",
                "Los códigos valen toda esta semana.",
            ),
            Lasts::UntilRenewed => Told::new(
                "Codes last until somebody makes new ones.",
                "Los códigos valen hasta que alguien haga nuevos.",
            ),
        },
        Body::CabGiven(b) => Told::new(
            format!(
                "The cab of {} takes the phone that scans its code next.",
                b.machine
            ),
            format!(
                "La cabina de {} pasa al teléfono que escanee su código.",
                b.machine
            ),
        )
        .machine(&b.machine),
        Body::PersonConfirmed(b) => Told::new(
            format!("Confirmed: phone {} is {}'s.", b.device, b.person),
            format!("Confirmado: el teléfono {} es de {}.", b.device, b.person),
        ),
        Body::PhoneStays(b) if b.stays => Told::new(
            format!("{}'s phone stays joined over the night.", b.person),
            format!("El teléfono de {} sigue registrado de noche.", b.person),
        ),
        Body::PhoneStays(b) => Told::new(
            format!("{}'s phone does not stay joined over the night.", b.person),
            format!("El teléfono de {} no sigue registrado de noche.", b.person),
        ),
        Body::WhoSaid(b) if b.same => {
            let told = Told::new(
                format!("{} has the same phone as yesterday.", b.person),
                format!("{} tiene el mismo teléfono que ayer.", b.person),
            );
            match &b.machine {
                Some(machine) => told.machine(machine),
                None => told,
            }
        }
        Body::WhoSaid(b) => Told::new(
            format!(
                "Somebody else has {}'s phone now: it is joined no more.",
                b.person
            ),
            format!(
                "Otra persona tiene el teléfono de {}: ya no está registrado.",
                b.person
            ),
        ),
        Body::ScreenNoticed(b) => {
            let (en, es) = match b.screen {
                ScreenNotice::Showing => ("screen shows", "pantalla a la vista"),
                ScreenNotice::Hidden => ("SCREEN IS NOT SHOWING", "LA PANTALLA NO SE VE"),
                ScreenNotice::Lost => (
                    "SCREEN LOST: use hand signals",
                    "PANTALLA PERDIDA: use señas",
                ),
            };
            let (own_en, own_es) = b.page.map_or(("", ""), page_words);
            Told::new(
                format!("{} {en}{own_en}.", b.machine),
                format!("{}: {es}{own_es}.", b.machine),
            )
            .machine(&b.machine)
        }
        _ => Told::default(),
    }
}

/// What a cab's page said of itself, behind whether it shows.
fn page_words(page: CabPage) -> (&'static str, &'static str) {
    match (page.covered, page.mute) {
        (true, true) => (
            "; a panel over the number; no sound yet",
            "; un panel sobre el número; aún sin sonido",
        ),
        (true, false) => ("; a panel over the number", "; un panel sobre el número"),
        (false, true) => ("; no sound yet", "; aún sin sonido"),
        (false, false) => (
            "; nothing over the number; sound on",
            "; nada sobre el número; con sonido",
        ),
    }
}
