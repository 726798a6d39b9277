//! An entry as one sentence that a person reads, in both languages: for the live log, the table and the review.

use earthwork::length::{Form, Length};
use earthwork::level::Check;

use crate::entry::{Body, Entry};
use crate::said::call::CantReason;
use crate::said::reading::{LateReason, Question, Reading, SpotReason};
use crate::said::receipt::ScreenNotice;
use crate::said::rule::Ruling;
use crate::said::set_up::{DoubtReason, Proof};
use crate::views::call::Ending;

/// A sentence in both languages, and what it is about.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Told {
    /// In English.
    pub english: String,
    /// In Spanish.
    pub spanish: String,
    /// The machine that it is about.
    pub machine: Option<String>,
    /// The mark that it is about.
    pub mark: Option<String>,
}

impl Told {
    fn new(english: impl Into<String>, spanish: impl Into<String>) -> Self {
        Self {
            english: english.into(),
            spanish: spanish.into(),
            ..Self::default()
        }
    }

    fn machine(mut self, machine: &str) -> Self {
        self.machine = Some(machine.to_owned());
        self
    }

    fn mark(mut self, mark: Option<&str>) -> Self {
        self.mark = mark.map(str::to_owned);
        self
    }
}

/// The sentence for an entry.
pub fn tell(entry: &Entry) -> Told {
    match &entry.body {
        Body::DayOpened(b) => Told::new(
            format!("Day {} opened.", b.day),
            format!("Se abrió el día {}.", b.day),
        ),
        Body::SiteTaken(b) => Told::new(
            format!("Site “{}” taken from its file.", b.site.name),
            format!("Obra «{}» tomada de su archivo.", b.site.name),
        ),
        Body::SiteChangeFound(b) => Told::new(
            format!(
                "The site file differs in {} places; it waits for a supervisor.",
                b.differences.len()
            ),
            format!(
                "El archivo de obra difiere en {} puntos; espera al supervisor.",
                b.differences.len()
            ),
        ),
        Body::SiteRevised(b) => Told::new(
            format!(
                "The changed site file is in force ({} changes).",
                b.differences.len()
            ),
            format!(
                "El archivo de obra cambiado ya vale ({} cambios).",
                b.differences.len()
            ),
        ),
        Body::AimSet(b) => {
            let (on, aim) = (b.on.join(", "), feet(b.aim));
            Told::new(
                format!("Aim {aim} on {on}: {}", b.why),
                format!("Mira {aim} en {on}: {}", b.why),
            )
        }
        Body::TargetRevised(b) => Told::new(
            format!(
                "Target {} is now revision {}: {}",
                b.target, b.revision, b.why
            ),
            format!(
                "La rasante {} es ahora la revisión {}: {}",
                b.target, b.revision, b.why
            ),
        ),
        Body::TargetSeen(b) => Told::new(
            format!(
                "Revision {} of {} seen in {}.",
                b.revision, b.target, b.machine
            ),
            format!(
                "Revisión {} de {} vista en {}.",
                b.revision, b.target, b.machine
            ),
        )
        .machine(&b.machine),
        Body::Ruled(b) => ruled(&b.mark, b.ruling, &b.why),
        Body::MachinePlaced(b) => {
            let (x, y) = (feet(b.at.x), feet(b.at.y));
            Told::new(
                format!("{} stands at {x}, {y}.", b.machine),
                format!("{} está en {x}, {y}.", b.machine),
            )
            .machine(&b.machine)
        }
        Body::MachineMoved(b) => Told::new(
            format!("{} has moved; its place is unknown.", b.machine),
            format!("{} se movió; no se sabe dónde está.", b.machine),
        )
        .machine(&b.machine),
        people @ (Body::Joined(_)
        | Body::ScreenChanged(_)
        | Body::PhoneRemoved(_)
        | Body::CodesRenewed(_)
        | Body::ScreenNoticed(_)) => tell_people(people),
        laser @ (Body::LaserSetUp(_)
        | Body::SetUpRestated(_)
        | Body::SetUpProven(_)
        | Body::SetUpClosed(_)
        | Body::CheckShot(_)
        | Body::SetUpDoubted(_)) => tell_laser(laser),
        Body::ReadingTaken(b) => taken(&b.reading, b.spot),
        Body::ReadingAsked(b) => asked(&b.reading, &b.question),
        Body::ReadingLate(b) => late(&b.reading, &b.why),
        call => tell_call(call),
    }
}

fn feet(length: Length) -> String {
    length.show(Form::DecimalFeet { places: 2 })
}

fn signed(length: Length) -> String {
    if length > Length::ZERO {
        format!("+{}", feet(length))
    } else {
        feet(length)
    }
}

fn tell_people(body: &Body) -> Told {
    match body {
        Body::Joined(b) => {
            let told = Told::new(
                format!("{} joined.", b.person),
                format!("Entró {}.", b.person),
            );
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
        Body::ScreenNoticed(b) => {
            let (en, es) = match b.screen {
                ScreenNotice::Showing => ("screen shows", "pantalla a la vista"),
                ScreenNotice::Hidden => ("SCREEN IS NOT SHOWING", "LA PANTALLA NO SE VE"),
                ScreenNotice::Lost => (
                    "SCREEN LOST: use hand signals",
                    "PANTALLA PERDIDA: use señas",
                ),
            };
            Told::new(
                format!("{} {en}.", b.machine),
                format!("{}: {es}.", b.machine),
            )
            .machine(&b.machine)
        }
        _ => Told::default(),
    }
}

fn tell_laser(body: &Body) -> Told {
    match body {
        Body::LaserSetUp(b) => Told::new(
            format!(
                "{} set up on {}: HI {}.",
                b.set_up,
                b.basis.benchmark,
                feet(b.basis.height)
            ),
            format!(
                "{} puesta sobre {}: altura {}.",
                b.set_up,
                b.basis.benchmark,
                feet(b.basis.height)
            ),
        ),
        Body::SetUpRestated(b) => Told::new(
            format!(
                "{} restated on {}: HI {}.",
                b.set_up,
                b.basis.benchmark,
                feet(b.basis.height)
            ),
            format!(
                "{} corregida sobre {}: altura {}.",
                b.set_up,
                b.basis.benchmark,
                feet(b.basis.height)
            ),
        ),
        Body::SetUpProven(b) => proven(&b.set_up, &b.proof),
        Body::SetUpClosed(b) => Told::new(
            format!("{} taken down. {}", b.set_up, b.why),
            format!("{} levantada. {}", b.set_up, b.why),
        ),
        Body::CheckShot(b) => {
            let (en, es) = match b.check {
                Check::Good => ("good", "bien"),
                Check::Again => ("shoot again", "lea otra vez"),
                Check::Failed => ("FAILED", "FALLÓ"),
            };
            let off = signed(b.residual);
            Told::new(
                format!("Check of {} on {}: {off}, {en}.", b.set_up, b.benchmark),
                format!("Revisión de {} en {}: {off}, {es}.", b.set_up, b.benchmark),
            )
        }
        Body::SetUpDoubted(b) => {
            let (en, es) = match &b.why {
                DoubtReason::FailedCheck {
                    benchmark,
                    residual,
                } => (
                    format!("check on {benchmark} off by {}", signed(*residual)),
                    format!("revisión en {benchmark} con {}", signed(*residual)),
                ),
                DoubtReason::Bumped { by } => {
                    (format!("bumped, says {by}"), format!("golpeada, dice {by}"))
                }
            };
            Told::new(
                format!("{} IN DOUBT: {en}. Cabs paused.", b.set_up),
                format!("{} EN DUDA: {es}. Cabinas en pausa.", b.set_up),
            )
        }
        _ => Told::default(),
    }
}

fn proven(set_up: &str, proof: &Proof) -> Told {
    let (en, es) = match proof {
        Proof::SecondBenchmark { benchmark } => (
            format!("{benchmark} agrees"),
            format!("{benchmark} concuerda"),
        ),
        Proof::TwoBenchmarks { first, second } => (
            format!("{first} and {second} agree"),
            format!("{first} y {second} concuerdan"),
        ),
        Proof::LevelledAgain { disagreement } => (
            format!("levelled again, off by {}", signed(*disagreement)),
            format!("nivelada otra vez, con {}", signed(*disagreement)),
        ),
        Proof::OneBenchmark => (
            "ONE BENCHMARK, nothing else behind it".to_owned(),
            "UN SOLO BANCO, nada más detrás".to_owned(),
        ),
    };
    Told::new(
        format!("{set_up} may be used: {en}."),
        format!("{set_up} se puede usar: {es}."),
    )
}

fn measured(reading: &Reading) -> (String, String) {
    let at = feet(reading.elevation);
    match &reading.judged {
        Some(judged) => {
            let dev = signed(judged.dev);
            let mean = if judged.joined.is_empty() {
                String::new()
            } else {
                format!(" ({} × {})", judged.joined.len() + 1, signed(judged.mean))
            };
            (
                format!("{}: {at}, {dev}{mean}", reading.mark),
                format!("{}: {at}, {dev}{mean}", reading.mark),
            )
        }
        None => (
            format!("{}: {at}", reading.mark),
            format!("{}: {at}", reading.mark),
        ),
    }
}

fn about(told: Told, reading: &Reading) -> Told {
    let told = told.mark(Some(&reading.mark));
    match &reading.machine {
        Some(machine) => told.machine(machine),
        None => told,
    }
}

fn taken(reading: &Reading, spot: Option<SpotReason>) -> Told {
    let (en, es) = measured(reading);
    let (why_en, why_es) = match spot {
        None => (String::new(), String::new()),
        Some(reason) => {
            let (en, es) = match reason {
                SpotReason::NoTarget => ("no target there", "sin rasante"),
                SpotReason::NoMachine => ("no machine assigned", "sin máquina asignada"),
                SpotReason::SetUpInDoubt => ("laser in doubt", "láser en duda"),
                SpotReason::SetUpClosed => ("set-up taken down", "puesta levantada"),
            };
            (
                format!(" Spot elevation, no call: {en}."),
                format!(" Cota suelta, sin orden: {es}."),
            )
        }
    };
    about(
        Told::new(
            format!("Reading {} at {en}.{why_en}", reading.text),
            format!("Lectura {} en {es}.{why_es}", reading.text),
        ),
        reading,
    )
}

fn asked(reading: &Reading, question: &Question) -> Told {
    let (en, es) = match question {
        Question::DoesNotFit { .. } => (
            "it does not fit what is known of the mark",
            "no cuadra con lo que se sabe de la marca",
        ),
        Question::FarFromGrade { .. } => ("far from the target", "muy lejos de la rasante"),
        Question::OtherMachine { .. } => (
            "the mark is assigned to another machine",
            "la marca es de otra máquina",
        ),
        Question::WhichIsRight { .. } => ("two shots disagree", "dos lecturas no concuerdan"),
    };
    about(
        Told::new(
            format!(
                "ASKED before showing {} at {}: {en}.",
                reading.text, reading.mark
            ),
            format!(
                "SE PREGUNTÓ antes de mostrar {} en {}: {es}.",
                reading.text, reading.mark
            ),
        ),
        reading,
    )
}

fn late(reading: &Reading, why: &LateReason) -> Told {
    let (en, es) = match why {
        LateReason::NewerReading { by } => (
            format!("{by} has a newer one"),
            format!("{by} tiene una más nueva"),
        ),
        LateReason::TooOld { ms } => (
            format!("{} s old", ms / 1_000),
            format!("tiene {} s", ms / 1_000),
        ),
    };
    let (what_en, what_es) = measured(reading);
    about(
        Told::new(
            format!("LATE, not shown: {what_en}; {en}."),
            format!("TARDE, no se mostró: {what_es}; {es}."),
        ),
        reading,
    )
}

fn ruled(mark: &str, ruling: Ruling, why: &str) -> Told {
    let (en, es) = match ruling {
        Ruling::Leave => ("leave it", "déjela"),
        Ruling::Patch => ("leave it, patch with gravel", "déjela, parche de grava"),
        Ruling::Trim => ("trim it", "recórtela"),
    };
    Told::new(
        format!("Ruling on {mark}: {en}. {why}"),
        format!("Decisión en {mark}: {es}. {why}"),
    )
    .mark(Some(mark))
}

fn tell_call(body: &Body) -> Told {
    match body {
        Body::CallSent(b) => Told::new(
            format!("{} ← {}", b.machine, b.english),
            format!("{} ← {}", b.machine, b.spanish),
        )
        .machine(&b.machine)
        .mark(b.mark.as_deref()),
        Body::CallDelivered(b) => Told::new(
            format!("Call {} is on the phone.", b.call),
            format!("La orden {} está en el teléfono.", b.call),
        ),
        Body::CallShown(b) => Told::new(
            format!("Call {} shown: {}", b.call, b.text),
            format!("Orden {} mostrada: {}", b.call, b.text),
        ),
        Body::CallGot(b) => match &b.witness {
            None => Told::new(
                format!("Call {}: GOT IT pressed.", b.call),
                format!("Orden {}: apretó ENTENDIDO.", b.call),
            ),
            Some(who) => Told::new(
                format!("Call {}: {who} saw the nod.", b.call),
                format!("Orden {}: {who} vio la seña.", b.call),
            ),
        },
        Body::CallEnded(b) => {
            let (en, es) = ending(b.how);
            Told::new(
                format!("Call {} ended: {en}.", b.call),
                format!("Orden {} terminó: {es}.", b.call),
            )
        }
        Body::LookAsked(b) => Told::new(
            format!("{} asks for a look.", b.machine),
            format!("{} pide que vean.", b.machine),
        )
        .machine(&b.machine),
        Body::CantSaid(b) => {
            let (en, es) = cant(b.why);
            Told::new(
                format!("{} can't: {en}.", b.machine),
                format!("{} no puede: {es}.", b.machine),
            )
            .machine(&b.machine)
            .mark(b.mark.as_deref())
        }
        Body::Stopped(b) => {
            let all = if b.all { "ALL STOP" } else { "STOP" };
            let alto = if b.all { "PAREN TODOS" } else { "PARE" };
            let why = if b.why.is_empty() {
                String::new()
            } else {
                format!(": {}", b.why)
            };
            let machines = b.machines.join(", ");
            Told::new(
                format!("{all} ({machines}){why}"),
                format!("{alto} ({machines}){why}"),
            )
        }
        Body::StopLifted(b) => {
            let machines = b.machines.join(", ");
            Told::new(
                format!("Stop lifted for {machines}: {}", b.why),
                format!("Alto levantado para {machines}: {}", b.why),
            )
        }
        _ => Told::default(),
    }
}

fn ending(how: Ending) -> (&'static str, &'static str) {
    match how {
        Ending::Superseded => ("a newer call took its place", "la reemplazó una nueva"),
        Ending::Done => ("the mark is on grade", "la marca está a nivel"),
        Ending::StaleByAge => ("too old", "demasiado vieja"),
        Ending::GradeRanOut => ("said for long enough", "ya se dijo bastante"),
        Ending::StaleByLaser => ("the laser is in doubt", "el láser está en duda"),
        Ending::StaleByTarget => ("the target changed", "cambió la rasante"),
        Ending::Restated => ("its reading was corrected", "se corrigió su lectura"),
        Ending::Withdrawn => ("taken back", "se retiró"),
        Ending::Refused => ("the operator can't", "el operador no puede"),
        Ending::NewScreen => ("another phone took over", "otro teléfono tomó su lugar"),
        Ending::Ruled => ("a ruling took its place", "la reemplazó una decisión"),
    }
}

fn cant(why: CantReason) -> (&'static str, &'static str) {
    match why {
        CantReason::HardGround => ("hard ground", "terreno duro"),
        CantReason::Water => ("water", "agua"),
        CantReason::Pipe => ("pipe or cable", "tubo o cable"),
        CantReason::Line => ("line", "línea"),
        CantReason::Face => ("face", "talud"),
        CantReason::Other => ("come and look", "venga a ver"),
    }
}
