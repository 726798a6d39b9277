//! Phones over the opening of a day, and phones that are out and may still stop everything.

use std::collections::{BTreeMap, BTreeSet};

use earthwork::words::ScreenUnit;
use words::Language;

use super::{Cab, Device, Screen, State};

/// Phones that stay in over the opening of the next day, each with the machines that it stays for: its person may be within
/// their keep-outs, or it is the screen of their cabs. Once nothing is held there any more, it is out like all the others.
pub(crate) type OverNight = BTreeMap<String, BTreeSet<String>>;

impl State {
    /// Phones that are not in and may still say STOP: removed or replaced on this day, or in on the day before. Nothing else is
    /// taken from them.
    pub fn may_still_stop(&self) -> impl Iterator<Item = (&String, &Device)> {
        let removed = self.devices.iter().filter(|(_, device)| device.removed);
        let before = self.before.iter();
        removed.chain(before.filter(|(id, _)| !self.devices.contains_key(*id)))
    }

    /// The languages and units of the screens that are in; English and tenths of a foot too, for whoever looks later.
    pub fn screens_speak(&self) -> BTreeSet<(Language, ScreenUnit)> {
        let known = self.devices.values().filter(|device| !device.removed);
        let known = known.map(|device| (device.language, device.unit));
        known.chain([<(Language, ScreenUnit)>::default()]).collect()
    }

    /// A day opens: phones are out, but for those whose person may be within a keep-out, and the cabs there; and those that a
    /// supervisor lets stay, which first say whose hands they are in. The gates have taken the new day already.
    pub(crate) fn phones_of_a_new_day(&mut self) {
        let mut stays = OverNight::new();
        for (machine, gate) in self.way_in.gates() {
            let cab = self.cabs.get(machine).and_then(|cab| cab.device.as_ref());
            let inside = gate.visits().map(|(_, visit)| &visit.device);
            for device in inside.chain(cab).filter(|id| self.device(id).is_some()) {
                stays
                    .entry(device.clone())
                    .or_default()
                    .insert(machine.clone());
            }
        }
        let (mut stay, go): (BTreeMap<String, Device>, _) = std::mem::take(&mut self.devices)
            .into_iter()
            .partition(|(id, device)| stays.contains_key(id) || device.stays && !device.removed);
        for (id, device) in &mut stay {
            device.confirmed_by = None;
            device.asks_who = !stays.contains_key(id);
        }
        (self.devices, self.before, self.over_night) = (stay, go, stays);
    }

    /// Somebody is out, or a machine was released: who stayed for that alone is out now.
    pub(crate) fn phones_after_the_way_in(&mut self) {
        let held: BTreeSet<&String> = self.way_in.gates().map(|(machine, _)| machine).collect();
        for machines in self.over_night.values_mut() {
            machines.retain(|machine| held.contains(machine));
        }
        let (over, still): (OverNight, OverNight) = std::mem::take(&mut self.over_night)
            .into_iter()
            .partition(|(_, machines)| machines.is_empty());
        self.over_night = still;
        for id in over.into_keys() {
            if let Some(device) = self.devices.get_mut(&id).filter(|device| device.stays) {
                device.asks_who = true;
            } else if let Some(device) = self.devices.remove(&id) {
                self.before.insert(id.clone(), device);
            }
            for cab in self.cabs.values_mut() {
                if cab.device.as_ref() == Some(&id) {
                    (cab.device, cab.screen) = (None, Screen::None);
                }
            }
        }
    }
}

impl Cab {
    /// What is left of a cab when a day opens: a stop outlives it, nothing but a supervisor's word lifts that; and the phone, when
    /// it stays in.
    pub(crate) fn on_a_new_day(&mut self, stays: bool) -> Self {
        Self {
            stop: self.stop.take(),
            device: self.device.take().filter(|_| stays),
            was: self.was.take(),
            screen: if stays { self.screen } else { Screen::None },
            ..Self::default()
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::asked::{By, Command, Role};
    use crate::given::{Crew, operator, supervisor};
    use crate::said::day::OpenDay;
    use crate::said::join::{Join, RemovePhone};
    use crate::said::way_in::answer::{BucketDown, Release};
    use crate::said::way_in::ask::AskIn;
    use crate::said::way_in::enter::{ComeOut, GoIn};
    use crate::time::minutes;
    use earthwork::words::ScreenUnit;
    use words::Language;

    const VISIT: &str = "visit-0001";

    fn rt() -> By {
        By {
            device: "g1".into(),
            person: "RT".into(),
            roles: vec![Role::Ground],
            machine: None,
        }
    }

    /// RT is in at EX-1, whose bucket is held down; JM has a phone and is nowhere.
    fn somebody_in() -> Crew {
        let mut crew = Crew::digging();
        for (device, person) in [("g1", "RT"), ("g2", "JM")] {
            let join = Join {
                device: device.into(),
                token_digest: format!("digest of {device}"),
                person: person.into(),
                roles: vec![Role::Ground],
                machine: None,
                language: Language::English,
                unit: ScreenUnit::Tenths,
                same_person: false,
                handset: None,
            };
            crew.says(&By::hub(), Command::Join(join)).unwrap();
        }
        let ask = AskIn {
            machine: "EX-1".into(),
            visit: VISIT.into(),
            mark: None,
            others: None,
        };
        crew.says(&rt(), Command::AskIn(ask)).unwrap();
        let down = BucketDown {
            answers: vec![VISIT.into()],
        };
        crew.says(&operator("EX-1"), Command::BucketDown(down))
            .unwrap();
        let go = GoIn {
            machine: "EX-1".into(),
            visit: VISIT.into(),
            mark: None,
            others: None,
        };
        crew.says(&rt(), Command::GoIn(go)).unwrap();
        crew
    }

    fn next_day(crew: &mut Crew) {
        crew.wait(minutes(60));
        let day = OpenDay {
            day: "2030-05-15".into(),
        };
        crew.says(&By::hub(), Command::OpenDay(day)).unwrap();
    }

    #[test]
    fn whoever_is_in_and_the_cab_there_stay_in_until_out_and_released() {
        let mut crew = somebody_in();
        next_day(&mut crew);
        let known: Vec<&String> = crew.state.devices.keys().collect();
        assert_eq!(known, ["g1", "m1"], "JM and the other cab are out");
        assert_eq!(crew.state.cabs["EX-1"].device.as_deref(), Some("m1"));
        assert_eq!(crew.state.cabs["EX-2"].device, None);
        let out = ComeOut {
            machine: "EX-1".into(),
            visit: VISIT.into(),
            all: None,
        };
        crew.says(&rt(), Command::ComeOut(out)).unwrap();
        assert!(crew.state.device("m1").is_some(), "the bucket is held down");
        crew.says(&operator("EX-1"), Command::Release(Release {}))
            .unwrap();
        assert!(crew.state.devices.is_empty(), "{:?}", crew.state.devices);
        assert_eq!(crew.state.cabs["EX-1"].device, None);
    }

    #[test]
    fn a_phone_that_was_removed_is_not_let_back_in_by_the_night() {
        let mut crew = somebody_in();
        let remove = RemovePhone {
            device: "g1".into(),
        };
        crew.says(&supervisor(), Command::RemovePhone(remove))
            .unwrap();
        next_day(&mut crew);
        assert!(crew.state.device("g1").is_none());
        assert!(crew.state.device("m1").is_some());
    }

    #[test]
    fn who_is_out_may_still_stop_on_this_day_and_the_next_and_then_no_more() {
        let mut crew = somebody_in();
        let stop = |crew: &Crew| -> Vec<String> {
            crew.state
                .may_still_stop()
                .map(|(id, _)| id.clone())
                .collect()
        };
        assert!(stop(&crew).is_empty(), "who is in needs no leave");
        let remove = RemovePhone {
            device: "g2".into(),
        };
        crew.says(&supervisor(), Command::RemovePhone(remove))
            .unwrap();
        assert_eq!(stop(&crew), ["g2"]);
        next_day(&mut crew);
        assert_eq!(stop(&crew), ["g2", "m2"]);
        crew.wait(minutes(60));
        let day = OpenDay {
            day: "2030-05-16".into(),
        };
        crew.says(&By::hub(), Command::OpenDay(day)).unwrap();
        assert!(stop(&crew).is_empty(), "g1 and m1 are still in");
    }
}
