//! The refusals in Spanish.

use earthwork::words::Language;

use crate::asked::Role;
use crate::read_as;
use crate::record::missing::CloseMissing;
use crate::refusal::{Refusal, Thing};
use crate::time::ago;

fn thing(what: Thing) -> &'static str {
    match what {
        Thing::Mark => "marca",
        Thing::Target => "rasante",
        Thing::Machine => "máquina",
        Thing::Benchmark => "banco de nivel",
        Thing::Rod => "estadal",
        Thing::Laser => "láser",
        Thing::SetUp => "puesta del láser",
        Thing::Phone => "teléfono",
        Thing::TurningPoint => "punto de liga",
        Thing::MarkOrTarget => "marca o rasante",
        Thing::Line => "línea que no se cruza",
        Thing::Load => "carga",
        Thing::Patch => "parche, marca o rasante",
        Thing::Test => "prueba de suelo",
        Thing::Undercut => "sobreexcavación propuesta",
        Thing::Face => "talud",
        Thing::Pins => "par de clavos",
        Thing::Utility => "línea enterrada",
        Thing::Overhead => "línea aérea",
        Thing::Pile => "montón",
        Thing::Ticket => "boleto",
        Thing::NearMiss => "casi accidente abierto",
        Thing::Visitor => "visita",
        Thing::Inspection => "inspección en espera",
        Thing::Query => "consulta",
        Thing::Photo => "foto",
    }
}

fn who(roles: &[Role], machine: Option<&str>) -> String {
    if let Some(machine) = machine {
        return format!("al operador de {machine}");
    }
    let names: Vec<&str> = roles
        .iter()
        .map(|role| match role {
            Role::Ground => "a quien lleva el estadal",
            Role::Operator => "al operador",
            Role::Supervisor => "al supervisor",
            Role::Visitor => "a una visita",
            Role::Hub => "al servidor",
        })
        .collect();
    names.join(" o ")
}

/// The same as the English text, as a crew would say it.
#[expect(
    clippy::too_many_lines,
    reason = "one line for each thing that can be said"
)]
pub(crate) fn spanish(refusal: &Refusal) -> String {
    match refusal {
        Refusal::NoDay => {
            "No hay día abierto. Arranque el servidor otra vez o pida al supervisor que abra uno."
                .into()
        }
        Refusal::NoSite => {
            "No hay obra cargada. Arranque el servidor con un archivo de obra.".into()
        }
        Refusal::NotAllowed { roles, machine } => format!(
            "Este teléfono no puede hacer eso. Pídalo {}.",
            who(roles, machine.as_deref())
        ),
        Refusal::Unknown { what, name } => format!(
            "No existe «{}» ({}) en esta obra. Escoja de la lista.",
            what.read(name, Language::Spanish),
            thing(*what)
        ),
        Refusal::RodValue { spanish, .. }
        | Refusal::SlopedLaser { spanish, .. }
        | Refusal::SecondLevelling { spanish, .. }
        | Refusal::Levels { spanish, .. }
        | Refusal::NoGrade { spanish, .. }
        | Refusal::BadTarget { spanish, .. }
        | Refusal::BadSite { spanish, .. }
        | Refusal::Account { spanish, .. }
        | Refusal::BadJoin { spanish, .. }
        | Refusal::BadMark { spanish, .. }
        | Refusal::BadFace { spanish, .. }
        | Refusal::OfTheRecord { spanish, .. }
        | Refusal::Overtaken { spanish, .. }
        | Refusal::HeldBack { spanish, .. } => spanish.clone(),
        Refusal::DayIsClosed { signed } => format!(
            "El día está cerrado. Todavía acepta notas, pruebas, consultas y fotos{}; para seguir excavando, el supervisor abre el día siguiente.",
            if *signed { ", y enmiendas firmadas" } else { "" }
        ),
        Refusal::NotReadyToClose { missing } => format!(
            "Aún no se puede cerrar el día. Falta: {}.",
            missing
                .iter()
                .map(CloseMissing::spanish)
                .collect::<Vec<_>>()
                .join("; ")
        ),
        Refusal::NotCompetent { named } if named.is_empty() => {
            "Solo la persona competente puede hacer eso: el archivo de obra no nombra a nadie; agregue competent = [\"…\"].".into()
        }
        Refusal::NotCompetent { named } => format!(
            "Solo la persona competente puede hacer eso: {}.",
            named.join(", ")
        ),
        Refusal::TicketLapsed { ticket, days } => format!(
            "El boleto {ticket} vale {days}, hoy no. Pida otro."
        ),
        Refusal::SetUpNotProven { set_up } => {
            format!(
                "{} todavía no está comprobada. Lea primero un segundo banco de nivel.",
                read_as::set_up(set_up, Language::Spanish)
            )
        }
        Refusal::SetUpIsClosed { set_up } => {
            format!(
                "{} ya se quitó. Escoja la puesta actual o ponga el láser otra vez.",
                read_as::set_up(set_up, Language::Spanish)
            )
        }
        Refusal::SetUpsAlike { set_up } => format!(
            "{} está casi a la misma altura. Quítela primero o mueva esta medio pie: una lectura no podría decir de cuál láser es.",
            read_as::set_up(set_up, Language::Spanish)
        ),
        Refusal::SecondBenchmarkThere { other } => format!(
            "Esta obra tiene más de un banco de nivel. Lea {other} para comprobar la puesta."
        ),
        Refusal::CallNotLive => {
            "Esa orden ya no vale. Mire la pantalla: puede haber una nueva.".into()
        }
        Refusal::SayWhy { spanish, .. } => format!("Diga {spanish}: queda en el registro."),
        Refusal::SiteChangedAgain => {
            "La obra cambió otra vez desde que se mostró. Mire la diferencia de nuevo y confirme.".into()
        }
        Refusal::NoSiteChange => {
            "No hay archivo de obra cambiado en espera. No hay nada que confirmar.".into()
        }
        Refusal::NotThatQuestion => {
            "Esa pregunta era de otra marca. Mande la lectura otra vez.".into()
        }
        Refusal::WhichSide { .. }
        | Refusal::MarkScraped { .. }
        | Refusal::SameEyes { .. }
        | Refusal::NoLine
        | Refusal::WhichLine
        | Refusal::NothingToRule { .. }
        | Refusal::NothingToTrim { .. }
        | Refusal::AimOutside { .. }
        | Refusal::NoMarkToTapeFrom => of_marks(refusal),
        Refusal::BadVisit
        | Refusal::AlreadyIn { .. }
        | Refusal::SayOutInstead
        | Refusal::NotAsked
        | Refusal::NotIn { .. }
        | Refusal::NotYourVisit { .. }
        | Refusal::NoWitness
        | Refusal::AnswerFirst { .. }
        | Refusal::PressedTooLate
        | Refusal::SaidTooLate { .. }
        | Refusal::WitnessUnknown { .. }
        | Refusal::NotAllOut { .. }
        | Refusal::PeopleIn { .. } => of_the_way_in(refusal),
        Refusal::SameName { .. }
        | Refusal::CabTaken { .. }
        | Refusal::CabHeld { .. }
        | Refusal::SayWho { .. }
        | Refusal::NotConfirmed { .. } => of_people(refusal),
        Refusal::NoSuchReading => {
            "La lectura que quiere corregir no está en el registro de hoy. Tome una nueva.".into()
        }
    }
}

fn of_marks(refusal: &Refusal) -> String {
    match refusal {
        Refusal::WhichSide { mark } => format!(
            "{mark} está a menos de medio pie de un escalón. Diga de qué lado está el estadal."
        ),
        Refusal::MarkScraped { mark } => format!(
            "{mark} ya no está en el terreno. Póngala otra vez desde una estaca, un hilo o el control."
        ),
        Refusal::SameEyes { mark } => {
            format!("{mark} la puso la misma persona. Otra la mide por segunda vez.")
        }
        Refusal::NoLine => {
            "Esta obra no tiene línea que no se cruce. Agregue una al archivo de obra con no_cross = true.".into()
        }
        Refusal::WhichLine => {
            "Esta obra tiene varias líneas que no se cruzan. Diga a cuál se midió.".into()
        }
        Refusal::NothingToRule { mark } => format!(
            "{mark} no espera decisión. Decida sobre marcas que dos lecturas dejaron en duda."
        ),
        Refusal::NothingToTrim { mark } => format!(
            "{mark} está muy justa del lado HONDO: no hay qué recortar. Déjela o póngale un parche de grava."
        ),
        Refusal::AimOutside { low, high } => format!(
            "Esa puntería queda fuera de la tolerancia ({low} a {high}). Apunte dentro o revise la rasante."
        ),
        _ => "Diga desde cuál marca va la cinta.".into(),
    }
}

fn of_people(refusal: &Refusal) -> String {
    match refusal {
        Refusal::SameName {
            person,
            inside,
            another,
            ..
        } => {
            let inside = inside.as_ref().map_or_else(String::new, |machine| {
                format!(", y puede estar ADENTRO en {machine}")
            });
            format!(
                "{person} ya está aquí, en otro teléfono{inside}. Si es usted, dígalo; si no, use otro nombre: {another}."
            )
        }
        Refusal::CabTaken { machine, person } => format!(
            "El teléfono de {person} es la pantalla de {machine}. Primero la entrega quien está en la cabina (PANTALLA, ENTREGAR LA CABINA) o un supervisor (AHORA, teléfonos unidos); después apriete ENTRAR otra vez."
        ),
        Refusal::CabHeld { machine, person } => format!(
            "El teléfono de {person} es la pantalla de {machine}, y mantiene CUCHARÓN ABAJO, o alguien pide entrar o está adentro. Ningún otro teléfono la toma ahora. Si ese teléfono no sirve, un supervisor lo retira; después apriete ENTRAR otra vez."
        ),
        Refusal::SayWho { person } => format!("Diga primero si usted es {person}."),
        Refusal::NotConfirmed { person } => format!(
            "El archivo de obra nombra a {person}, pero nadie ha confirmado todavía que este teléfono es de {person}. Lo hace un supervisor en otro teléfono o en la computadora: AHORA, teléfonos unidos."
        ),
        _ => String::new(),
    }
}

fn of_the_way_in(refusal: &Refusal) -> String {
    match refusal {
        Refusal::AlreadyIn { person, machine } => {
            format!("{person} ya está adentro en {machine}. Primero apriete YA SALÍ.")
        }
        Refusal::SayOutInstead => "Usted está adentro. Apriete YA SALÍ cuando haya salido.".into(),
        Refusal::NotAsked => "Nadie espera ya esa respuesta. Mire la lista.".into(),
        Refusal::NotIn { machine } => {
            format!("Nadie está adentro en {machine} con esa entrada. Mire la lista.")
        }
        Refusal::NotYourVisit { person } => {
            format!("Esa entrada es de {person}. Quien vio salir a {person} lo dice como testigo.")
        }
        Refusal::NoWitness => {
            "Testigo es otra persona, y no el operador de esta máquina. Pida a otro que mire."
                .into()
        }
        Refusal::AnswerFirst { person } => {
            format!("{person} pide entrar. Conteste primero: CUCHARÓN ABAJO, ESPERE o NO.")
        }
        Refusal::WitnessUnknown { person } => format!(
            "El teléfono de un testigo entró antes que {person}, o un supervisor confirmó de quién es. Pida a otro que mire, o que un supervisor confirme este teléfono: AHORA, teléfonos unidos."
        ),
        Refusal::NotAllOut {
            person,
            inside,
            said,
        } => format!(
            "{person} guía a {inside} adentro. Diga YA SALÍ cuando todos hayan salido, y cuántos; dijo {said}."
        ),
        Refusal::PressedTooLate => "Llegó demasiado tarde y no cuenta. Mantenga otra vez.".into(),
        Refusal::SaidTooLate { ms } => format!(
            "Usted lo dijo hace {} y apenas llegó. Mire, y dígalo otra vez si sigue siendo así.",
            ago(*ms)
        ),
        Refusal::PeopleIn { machine, people } => format!(
            "Adentro en {machine}: {}. Primero salen todos; después se levanta el PARE.",
            people.join(", ")
        ),
        _ => "Esa entrada no tiene nombre válido. Abra la página otra vez y pida de nuevo.".into(),
    }
}
