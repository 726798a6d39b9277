//! How a day is opened: at a start, and by the key on the supervisor's page. Both say the same command; here is what the day
//! is called.

use day::asked::{Asked, By, Command};
use day::said::day::OpenDay;
use day::state::State;
use day::time::Time;

use crate::hub::Hub;
use crate::when::date;
use crate::writer::NotDone;

/// A start this soon after the last entry goes on with its day, whatever the date: a crew may work past midnight.
const SAME_SHIFT_MS: i64 = day::time::minutes(4 * 60);

/// Opens the day of that name, unless it is the one that is open.
///
/// # Errors
/// [`NotDone`].
pub(crate) async fn open(hub: &Hub, by: By, day: String) -> Result<(), NotDone> {
    let asked = Asked {
        key: String::new(),
        by,
        made_at: hub.clock.now(),
        command: Command::OpenDay(OpenDay { day: day.clone() }),
    };
    hub.writer.ask(asked).await?;
    hub.addresses.begin_day(&day);
    Ok(())
}

/// The name of the day that a start goes on with, or opens.
pub(crate) fn at_start(given: Option<&str>, state: &State, now: Time) -> String {
    if let Some(given) = given {
        return given.to_owned();
    }
    let today = date(now);
    match &state.day {
        Some(day) if now.ms_since(state.at) < SAME_SHIFT_MS => day.id.clone(),
        // The second day of a date goes on too.
        Some(day)
            if day
                .id
                .strip_prefix(&today)
                .is_some_and(|rest| rest.is_empty() || rest.starts_with('-')) =>
        {
            day.id.clone()
        }
        _ => today,
    }
}

/// The name of the day that comes next: the date, with a number when a day of that date has been.
pub(crate) fn next(state: &State, now: Time) -> String {
    let today = date(now);
    let been = |name: &String| {
        let open = state.day.iter().map(|day| &day.id);
        let past = state.record.days.iter().map(|day| &day.day);
        open.chain(past).any(|day| day == name)
    };
    let numbered = (2_u32..).map(|number| format!("{today}-{number}"));
    let mut names = std::iter::once(today.clone()).chain(numbered);
    names.find(|name| !been(name)).unwrap_or(today)
}

#[cfg(test)]
mod tests {
    use super::*;
    use day::record::PastDay;

    fn state(day: &str, at: Time) -> State {
        State {
            at,
            day: Some(day::state::OpenDay {
                id: day.into(),
                first: 1,
                at: Time(0),
            }),
            ..State::default()
        }
    }

    const AT: Time = Time(1_900_000_000_000);

    #[test]
    fn a_restart_within_the_shift_goes_on_with_its_day() {
        let state = state("the day", AT);
        let later = |ms| at_start(None, &state, AT.plus_ms(ms));
        assert_eq!(later(SAME_SHIFT_MS - 1), "the day");
        assert_eq!(later(SAME_SHIFT_MS), date(AT.plus_ms(SAME_SHIFT_MS)));
        assert_eq!(at_start(Some("given"), &state, AT), "given");
    }

    #[test]
    fn the_second_day_of_a_date_has_a_number_and_goes_on_after_a_pause() {
        let today = date(AT);
        assert_eq!(next(&State::default(), AT), today);
        let mut first = state(&today, AT);
        assert_eq!(next(&first, AT), format!("{today}-2"));
        let second = state(&format!("{today}-2"), Time(0));
        assert_eq!(at_start(None, &second, AT), format!("{today}-2"));
        first.record.days.push(PastDay {
            day: format!("{today}-2"),
            first: 1,
            last: 9,
            closed: None,
            signed: None,
        });
        assert_eq!(next(&first, AT), format!("{today}-3"));
    }
}
