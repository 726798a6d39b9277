//! What a soil test stated beside what is asked, one wording for the log, the pages and the sheets.

use earthwork::soil::density::{Judged, Moisture, Wanted};
use words::Text;

use crate::said::soil_test::SoilTest;

/// The sentence.
pub fn stated(test: &SoilTest, judged: Option<&Judged>) -> Text {
    match test {
        SoilTest::Bearing {
            stated_psf,
            asked_psf,
        } => {
            let asked = asked_psf.unwrap_or_default();
            words::soil_test::lb_ft_stated_asked(
                &format!("{stated_psf:.0}"),
                &format!("{asked:.0}"),
            )
        }
        SoilTest::Density {
            wet_pcf,
            water_percent,
            wanted,
        } => {
            let dry = judged.map_or(0.0, |judged| judged.dry_pcf);
            words::soil_test::wet_lb_ft_dry(
                &format!("{wet_pcf:.1}"),
                &format!("{dry:.1}"),
                &percent(judged, wanted.as_ref()),
                &format!("{water_percent:.1}"),
                &water(judged, wanted.as_ref()),
            )
        }
    }
}

fn percent(judged: Option<&Judged>, wanted: Option<&Wanted>) -> Text {
    let percent = judged.map_or(0.0, Judged::shown_percent);
    match wanted {
        Some(wanted) => words::soil_test::of_asked(
            &format!("{percent:.1}"),
            &format!("{:.1}", wanted.maximum_pcf),
            &wanted.least_percent,
        ),
        None => words::soil_test::of_the_greatest_density(&format!("{percent:.1}")),
    }
}

/// Where the moisture lies in its window, when somebody asks.
fn water(judged: Option<&Judged>, wanted: Option<&Wanted>) -> Text {
    let window = wanted.and_then(|wanted| Some((wanted.optimum_percent?, wanted.window_points)));
    let (Some(judged), Some((best, points))) = (judged, window) else {
        return Text::default();
    };
    let window = format!("{:.1}–{:.1} %", best - points, best + points);
    match judged.moisture {
        Moisture::TooDry => words::soil_test::too_dry_for(&window),
        Moisture::TooWet => words::soil_test::too_wet_for(&window),
        Moisture::Within => words::soil_test::within(&window),
        Moisture::NotAsked => Text::default(),
    }
}
