//! What a soil test stated beside what is asked, in words: one wording for the log, the pages and the sheets.

use earthwork::soil::density::{Judged, Moisture, Wanted};

use crate::said::soil_test::SoilTest;

/// In English and in Spanish.
pub fn stated(test: &SoilTest, judged: Option<&Judged>) -> (String, String) {
    match test {
        SoilTest::Bearing {
            stated_psf,
            asked_psf,
        } => {
            let asked = asked_psf.unwrap_or_default();
            (
                format!("{stated_psf:.0} lb/ft² stated, {asked:.0} asked"),
                format!("{stated_psf:.0} lb/ft² declaradas, {asked:.0} pedidas"),
            )
        }
        SoilTest::Density {
            wet_pcf,
            water_percent,
            wanted,
        } => {
            let (percent_en, percent_es) = percent(judged, wanted.as_ref());
            let (water_en, water_es) = water(judged, wanted.as_ref());
            let dry = judged.map_or(0.0, |judged| judged.dry_pcf);
            (
                format!(
                    "wet {wet_pcf:.1} lb/ft³, dry {dry:.1}: {percent_en}; water {water_percent:.1} %{water_en}"
                ),
                format!(
                    "húmeda {wet_pcf:.1} lb/ft³, seca {dry:.1}: {percent_es}; agua {water_percent:.1} %{water_es}"
                ),
            )
        }
    }
}

fn percent(judged: Option<&Judged>, wanted: Option<&Wanted>) -> (String, String) {
    let percent = judged.map_or(0.0, Judged::shown_percent);
    match wanted {
        Some(wanted) => (
            format!(
                "{percent:.1} % of {:.1}, {} % asked",
                wanted.maximum_pcf, wanted.least_percent
            ),
            format!(
                "{percent:.1} % de {:.1}, {} % pedido",
                wanted.maximum_pcf, wanted.least_percent
            ),
        ),
        None => (
            format!("{percent:.1} % of the greatest density"),
            format!("{percent:.1} % de la densidad máxima"),
        ),
    }
}

/// Where the moisture lies in its window, when somebody asks.
fn water(judged: Option<&Judged>, wanted: Option<&Wanted>) -> (String, String) {
    let window = wanted.and_then(|wanted| Some((wanted.optimum_percent?, wanted.window_points)));
    let (Some(judged), Some((best, points))) = (judged, window) else {
        return Default::default();
    };
    let (en, es) = match judged.moisture {
        Moisture::TooDry => ("TOO DRY for ", "MUY SECA para "),
        Moisture::TooWet => ("TOO WET for ", "MUY HÚMEDA para "),
        Moisture::Within => ("within ", "dentro de "),
        Moisture::NotAsked => return Default::default(),
    };
    let window = format!("{:.1}–{:.1} %", best - points, best + points);
    (format!(", {en}{window}"), format!(", {es}{window}"))
}
