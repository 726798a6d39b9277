//! Sentences about who is in: phones, names, codes, cabs.

use super::Told;
use day::entry::Body;
use day::said::codes::Lasts;
use day::said::receipt::{CabPage, ScreenNotice};
use words::Fixed;

pub(super) fn tell(body: &Body) -> Told {
    match body {
        Body::Joined(b) => {
            let told = match &b.same_as {
                Some(other) => {
                    Told::new(words::tell_people::joined_says_one_phone(&b.person, &other))
                }
                None => Told::new(words::tell_people::joined(&b.person)),
            };
            match &b.machine {
                Some(machine) => told.machine(machine),
                None => told,
            }
        }
        Body::ScreenChanged(_) => Told::new(words::tell_people::screen_settings_changed()),
        Body::PhoneRemoved(b) => Told::new(words::tell_people::phone_removed(&b.device)),
        Body::CodesRenewed(_) => Told::new(words::tell_people::codes_renewed()),
        Body::CodesLast(b) => match b.lasts {
            Lasts::Today => Told::new(words::tell_people::codes_last_until_next_day()),
            Lasts::ThisWeek => Told::new(words::tell_people::codes_last_for_this_week()),
            Lasts::UntilRenewed => Told::new(words::tell_people::codes_last_until_somebody_makes()),
        },
        Body::CabGiven(b) => {
            Told::new(words::tell_people::cab_takes_phone_scans_its(&b.machine)).machine(&b.machine)
        }
        Body::PersonConfirmed(b) => Told::new(words::tell_people::confirmed(&b.device, &b.person)),
        Body::PhoneStays(b) if b.stays => {
            Told::new(words::tell_people::phone_stays_joined_over_night(&b.person))
        }
        Body::PhoneStays(b) => Told::new(words::tell_people::phone_does_not_stay_joined(&b.person)),
        Body::WhoSaid(b) if b.same => {
            let told = Told::new(words::tell_people::has_same_phone_as_yesterday(&b.person));
            match &b.machine {
                Some(machine) => told.machine(machine),
                None => told,
            }
        }
        Body::WhoSaid(b) => Told::new(words::tell_people::somebody_else_has_phone_now(&b.person)),
        Body::ScreenNoticed(b) => {
            let what = match b.screen {
                ScreenNotice::Showing => words::tell_people::screen_shows(),
                ScreenNotice::Hidden => words::tell_people::screen_is_not_showing(),
                ScreenNotice::Lost => words::tell_people::screen_lost(),
            };
            let told = match b.page.map(page_words) {
                Some(own) => words::tell_people::screen_and_page(&b.machine, &what, &own),
                None => words::tell_people::screen(&b.machine, &what),
            };
            Told::new(told).machine(&b.machine)
        }
        _ => Told::default(),
    }
}

/// What a cab's page said of itself, behind whether it shows.
fn page_words(page: CabPage) -> Fixed {
    match (page.covered, page.mute) {
        (true, true) => words::tell_people::a_panel_over_the_number(),
        (true, false) => words::tell_people::a_panel_over_the_number_2(),
        (false, true) => words::tell_people::no_sound_yet(),
        (false, false) => words::tell_people::nothing_over_the_number(),
    }
}
