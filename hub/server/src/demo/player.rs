//! Plays the story, step after step, as the hub's clock reaches each one.

use std::collections::BTreeMap;
use std::time::Duration;

use day::asked::{Command, Role};
use day::said::call::GotIt;
use day::said::join::RemovePhone;
use day::said::person::{ConfirmPerson, GiveCab};
use day::said::photo::PromisePhoto;
use day::said::receipt::Shown;
use day::time::Time;
use earthwork::words::ScreenUnit;
use tracing::{info, warn};
use words::Language;

use super::cab::{Cab, Picture};
use super::hub::{Code, Hub, Phone, Said};
use super::kept::Kept;
use super::photos;
use super::story::{self, Act, Row, ScreenRow, Step};
use super::{DemoError, midnight};
use crate::clock::Clock;
use crate::terminal;

/// The longest wait before the clock is looked at again.
const BITE: Duration = Duration::from_millis(50);

/// A crew at work.
pub(super) struct Player {
    hub: Hub,
    laptop: Phone,
    clock: Clock,
    midnight: Time,
    codes: Vec<Code>,
    rows: Vec<Row>,
    /// Where the log takes the story up again: what was played, and the calls that came of it.
    kept: Kept,
    phones: BTreeMap<String, Phone>,
    seats: BTreeMap<String, Seat>,
    /// The links of the phones of those who walk.
    links: BTreeMap<String, Cab>,
}

/// Somebody in a cab.
struct Seat {
    phone: Phone,
    screen: Cab,
    language: Language,
}

impl Player {
    /// Lets the crew in by the laptop's own link and reads how far the story has come.
    pub(super) async fn begin(
        base: &str,
        own_secret: &str,
        clock: Clock,
    ) -> Result<Self, DemoError> {
        let rows = story::rows()?;
        let hub = Hub::at(base);
        let laptop = hub.own(own_secret).await?;
        let codes = hub.codes(&laptop).await?;
        let kept = Kept::read(&hub.export(&laptop).await?);
        Ok(Self {
            hub,
            laptop,
            clock,
            midnight: midnight(),
            codes,
            rows,
            kept,
            phones: BTreeMap::new(),
            seats: BTreeMap::new(),
            links: BTreeMap::new(),
        })
    }

    /// Plays what is left of the story, then keeps the screens in the cabs alive until the hub closes.
    pub(super) async fn play(mut self) -> Result<(), DemoError> {
        let rows = std::mem::take(&mut self.rows);
        let steps = story::steps(&rows);
        let played = steps
            .iter()
            .rposition(|step| self.kept.keys.contains(&step.key()))
            .map_or(0, |last| last + 1);
        let (before, left) = steps.split_at(played);
        if let Some(last) = before.last() {
            self.come_back(before, last, left).await?;
        }
        for step in left {
            self.reach(step.at).await;
            self.take(step).await?;
        }
        terminal::say("The demo's story is over. Its screens stay on until the hub is stopped.");
        for seat in self.seats.values() {
            seat.screen.sent_away().await;
        }
        Ok(())
    }

    /// A hub that was started again knows the day; whoever is still needed joins anew.
    async fn come_back(
        &mut self,
        before: &[Step<'_>],
        last: &Step<'_>,
        left: &[Step<'_>],
    ) -> Result<(), DemoError> {
        let moment = self.moment(last.at);
        self.clock
            .step_to(self.kept.last_at.map_or(moment, |kept| kept.max(moment)));
        info!("the demo's story goes on behind row {}", last.row.number);
        let mut joins: BTreeMap<&str, &Row> = BTreeMap::new();
        for step in before {
            match step.row.what.as_str() {
                "join" => joins.insert(&step.row.who, step.row),
                "lose_screen" | "lose_link" => joins.remove(step.row.who.as_str()),
                "find_link" => rows_join(before, &step.row.who)
                    .and_then(|row| joins.insert(&step.row.who, row)),
                _ => None,
            };
        }
        for row in joins.into_values() {
            let speaks = left.iter().any(|step| step.row.who == row.who);
            if speaks || row.machine.is_some() {
                self.forget_the_cab(row).await?;
                self.join(row).await?;
            }
        }
        // Its bytes may have been on their way; any of the crew may bring them, and the same again is no second photo.
        if let Some(Command::PromisePhoto(photo)) = &last.row.command {
            self.bring(&self.laptop, photo).await?;
        }
        Ok(())
    }

    /// The phones of an earlier start are gone with it: the laptop removes the one in the cab, whatever its bucket is held down for.
    async fn forget_the_cab(&self, row: &Row) -> Result<(), DemoError> {
        let machine = row.machine.as_ref();
        let Some(device) = machine.and_then(|machine| self.kept.cabs.get(machine)) else {
            return Ok(());
        };
        let removes = Command::RemovePhone(RemovePhone {
            device: device.clone(),
        });
        self.at_the_laptop(&format!("gone-{device}"), &removes)
            .await
    }

    /// Something that whoever sits at the laptop says of itself, outside of the story's rows.
    async fn at_the_laptop(&self, key: &str, command: &Command) -> Result<(), DemoError> {
        let key = format!("laptop-{key}");
        let now = self.clock.now();
        if let Said::Refused(why) = self.hub.say(&self.laptop, &key, now, command).await? {
            warn!("the laptop was refused {key}: {why}");
        }
        Ok(())
    }

    fn moment(&self, at: i64) -> Time {
        self.midnight.plus_ms(at)
    }

    /// Moves a stepped clock; waits for any other, in small bites, since it may jump ahead.
    async fn reach(&self, at: i64) {
        let moment = self.moment(at);
        self.clock.step_to(moment);
        while self.clock.now() < moment {
            let wait = self.clock.wait_for(moment).unwrap_or(BITE);
            tokio::time::sleep(wait.min(BITE)).await;
        }
    }

    async fn take(&mut self, step: &Step<'_>) -> Result<(), DemoError> {
        let row = step.row;
        match step.act {
            Act::Row => {}
            Act::Part(nth) => {
                let part = &row.parts[nth];
                return self
                    .say(step, &part.who, &part.command, part.made_at())
                    .await;
            }
            Act::Shown | Act::Got => return self.press(step).await,
        }
        match (&row.command, row.what.as_str()) {
            (Some(command), _) => self.say(step, &row.who, command, row.made_at()).await,
            (None, "join") => self.join(row).await,
            (None, "lose_screen") => self.lose_screen(row).await,
            (None, "lose_link") => self.lose_link(&row.who).await,
            (None, "find_link") => {
                self.link(&row.who);
                Ok(())
            }
            // Its presses are parts.
            _ => Ok(()),
        }
    }

    /// Whether somebody who tries the demo has taken a cab over.
    fn is_taken(&self, machine: &str) -> bool {
        self.seats
            .get(machine)
            .is_some_and(|seat| seat.screen.is_out())
    }

    /// Lets one person in; an operator's phone opens its screen.
    async fn join(&mut self, row: &Row) -> Result<(), DemoError> {
        if let Some(machine) = row
            .machine
            .as_ref()
            .filter(|machine| self.is_taken(machine))
        {
            info!("{machine} has another phone; {} leaves it there", row.who);
            return Ok(());
        }
        let anyone = ScreenRow::default();
        let screen = row.screen.as_ref().unwrap_or(&anyone);
        let language = screen.language.unwrap_or(Language::English);
        let code = self
            .codes
            .iter()
            .find(|code| code.admits(&screen.roles, row.machine.as_deref()))
            .ok_or_else(|| DemoError::NoCode {
                person: row.who.clone(),
                roles: format!("{:?}", screen.roles),
            })?;
        if let Some(machine) = row
            .machine
            .as_ref()
            .filter(|_| self.phones.contains_key(&row.who))
        {
            // A second phone takes a cab only when somebody gives it away.
            let gives = Command::GiveCab(GiveCab {
                machine: machine.clone(),
            });
            self.at_the_laptop(&format!("give-{}", row.number), &gives)
                .await?;
        }
        let hub = &self.hub;
        let phone = hub.join(code, &row.who, &screen.roles, language).await?;
        if screen.roles.contains(&Role::Supervisor) {
            let device = hub.device(&phone).await?;
            let key = format!("confirm-{device}");
            let confirms = Command::ConfirmPerson(ConfirmPerson {
                device,
                person: row.who.clone(),
            });
            self.at_the_laptop(&key, &confirms).await?;
        }
        if let Some(machine) = row
            .machine
            .as_ref()
            .filter(|_| screen.roles == [Role::Operator])
        {
            let seat = Seat {
                phone: phone.clone(),
                screen: Cab::open(hub.base(), &phone),
                language,
            };
            if !seat.screen.shows(Option::is_some).await {
                warn!("the screen of {machine} has not come up");
            }
            self.seats.insert(machine.clone(), seat);
        }
        self.phones.insert(row.who.clone(), phone);
        if row.machine.is_none() {
            self.link(&row.who);
        }
        Ok(())
    }

    /// Opens the link of somebody's phone, so that the hub knows it to be alive.
    fn link(&mut self, who: &str) {
        if let Some(phone) = self.phones.get(who) {
            let link = Cab::open(self.hub.base(), phone);
            self.links.insert(who.to_owned(), link);
        }
    }

    /// Somebody walks out of the Wi-Fi. A stepped clock waits here until the hub has noticed.
    async fn lose_link(&mut self, who: &str) -> Result<(), DemoError> {
        self.links.remove(who);
        if self.clock.is_stepped() {
            self.notices(|kept| kept.unlinked.contains(who)).await?;
        }
        Ok(())
    }

    /// Waits until the log has what is wanted.
    async fn notices(&self, wanted: impl Fn(&Kept) -> bool) -> Result<(), DemoError> {
        for _ in 0..80 {
            let kept = Kept::read(&self.hub.export(&self.laptop).await?);
            if wanted(&kept) {
                return Ok(());
            }
            tokio::time::sleep(Duration::from_millis(250)).await;
        }
        warn!("the hub has not noticed that a link is lost");
        Ok(())
    }

    /// A screen goes dark. A stepped clock waits here until the hub has noticed.
    async fn lose_screen(&mut self, row: &Row) -> Result<(), DemoError> {
        let Some(machine) = &row.machine else {
            return Ok(());
        };
        if self.is_taken(machine) {
            return Ok(());
        }
        self.seats.remove(machine);
        if !self.clock.is_stepped() {
            return Ok(());
        }
        self.notices(|kept| kept.lost.contains(machine)).await
    }

    async fn say(
        &mut self,
        step: &Step<'_>,
        who: &str,
        command: &Command,
        made_at: Option<i64>,
    ) -> Result<(), DemoError> {
        let row = step.row;
        let Some(phone) = self.phones.get(who) else {
            warn!("row {}: {who} has no phone", row.number);
            return Ok(());
        };
        let now = self.clock.now();
        let made_at = made_at.map_or(now, |at| self.moment(at));
        let key = step.key();
        let command = &self.answering(command).await?;
        let said = self.hub.say(phone, &key, made_at, command).await?;
        match (&said, command) {
            (Said::Refused(why), _) => warn!("row {}: {who} was refused: {why}", row.number),
            (Said::Answered(_), Command::PromisePhoto(photo)) => self.bring(phone, photo).await?,
            _ => {}
        }
        if let Some((call, machine)) = said.call() {
            self.kept.calls.insert(key, call);
            // A stepped clock stands until the call is in the cab.
            if self.clock.is_stepped() && !self.in_cab(machine, call).await {
                warn!("row {}: the call has not reached {machine}", row.number);
            }
        }
        Ok(())
    }

    /// A word that frees or brings back names what its page shows.
    async fn answering(&self, command: &Command) -> Result<Command, DemoError> {
        let mut command = command.clone();
        let newest = async || -> Result<Kept, DemoError> {
            Ok(Kept::read(&self.hub.export(&self.laptop).await?))
        };
        match &mut command {
            Command::LiftStop(lift) => lift.press = newest().await?.pressed,
            Command::InspectFace(inspect) if !inspect.release.is_empty() => {
                inspect.alarm = newest().await?.alarms.get(&inspect.zone).copied();
            }
            Command::LeaveFace(leave) => {
                let alarms = newest().await?.alarms;
                leave.alarm = alarms.get(&leave.zone).copied().unwrap_or_default();
            }
            _ => {}
        }
        Ok(command)
    }

    /// Sends the bytes of a photo behind its promise.
    async fn bring(&self, by: &Phone, photo: &PromisePhoto) -> Result<(), DemoError> {
        let Some(bytes) = photos::promised(photo) else {
            warn!("nobody has drawn the photo {}", photo.photo);
            return Ok(());
        };
        self.hub.bring(by, &photo.photo, bytes).await
    }

    /// Waits until a call, or one after it, is on a machine's screen.
    async fn in_cab(&self, machine: &str, call: u64) -> bool {
        let Some(seat) = self.seats.get(machine) else {
            return false;
        };
        let here = |picture: &Option<Picture>| {
            picture.is_some_and(|it| it.call > Some(call) || it.has(call))
        };
        seat.screen.shows(here).await
    }

    /// The operator's page has shown a call, or the operator presses GOT IT. A call that has ended needs neither.
    async fn press(&mut self, step: &Step<'_>) -> Result<(), DemoError> {
        let row_key = Step {
            act: Act::Row,
            ..step.clone()
        }
        .key();
        let (Some(&call), Some(machine)) = (self.kept.calls.get(&row_key), &step.row.machine)
        else {
            return Ok(());
        };
        let Some(seat) = self.seats.get(machine) else {
            return Ok(());
        };
        if step.act == Act::Shown && !self.in_cab(machine, call).await {
            // Something else fills the screen, such as a stop: then it was not shown.
            return Ok(());
        }
        let command = match step.act {
            Act::Shown => Command::Shown(Shown {
                call,
                language: seat.language,
                unit: ScreenUnit::Tenths,
            }),
            _ => Command::GotIt(GotIt { call }),
        };
        let now = self.clock.now();
        let said = self
            .hub
            .say(&seat.phone, &step.key(), now, &command)
            .await?;
        if let Said::Refused(why) = said {
            info!("row {}: {machine}: {why}", step.row.number);
        }
        Ok(())
    }
}

/// The row with which somebody has joined.
fn rows_join<'a>(steps: &[Step<'a>], who: &str) -> Option<&'a Row> {
    let joins = |step: &&Step<'a>| step.row.what == "join" && step.row.who == who;
    steps.iter().rfind(joins).map(|step| step.row)
}
