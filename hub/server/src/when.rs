//! Moments as people write them, in the laptop's own time zone.

use day::time::Time;
use jiff::tz::TimeZone;

fn shown(time: Time, form: &str) -> String {
    jiff::Timestamp::from_millisecond(time.0).map_or_else(
        |_| time.0.to_string(),
        |at| {
            at.to_zoned_datetime(TimeZone::system())
                .strftime(form)
                .to_string()
        },
    )
}

/// `2030-05-14 07:31:00.250`.
pub(crate) fn in_full(time: Time) -> String {
    shown(time, "%Y-%m-%d %H:%M:%S%.3f")
}

/// `2030-05-14`.
pub(crate) fn date(time: Time) -> String {
    shown(time, "%Y-%m-%d")
}

/// `07:31`.
pub(crate) fn to_the_minute(time: Time) -> String {
    shown(time, "%H:%M")
}

/// `07:31:00`.
pub(crate) fn to_the_second(time: Time) -> String {
    shown(time, "%H:%M:%S")
}
