//! Codes as drawings: SVG for the page and paper, half blocks for the terminal; the standard text that joins a Wi-Fi.

use qrcode::render::{svg, unicode};
use qrcode::{EcLevel, QrCode};
use thiserror::Error;

/// Printed at 6 cm this is read at arm's length.
const SVG_SIZE: u32 = 300;

/// A text that no code can hold.
#[derive(Debug, Error)]
#[error("“{text}” can't be drawn as a code ({source}). Make it shorter.")]
pub struct QrError {
    text: String,
    source: qrcode::types::QrError,
}

/// A code as SVG, with its quiet zone.
///
/// # Errors
/// [`QrError`] when the text is too long.
pub fn svg(text: &str) -> Result<String, QrError> {
    let code = draw(text)?;
    let svg = code
        .render::<svg::Color>()
        .min_dimensions(SVG_SIZE, SVG_SIZE)
        .quiet_zone(true)
        .build();
    // The declaration in front has no place inside a page.
    Ok(match svg.find("<svg") {
        Some(at) => svg[at..].to_owned(),
        None => svg,
    })
}

/// A code for a terminal with light letters on a dark ground.
///
/// # Errors
/// [`QrError`] when the text is too long.
pub fn terminal(text: &str) -> Result<String, QrError> {
    let code = draw(text)?;
    Ok(code
        .render::<unicode::Dense1x2>()
        .dark_color(unicode::Dense1x2::Light)
        .light_color(unicode::Dense1x2::Dark)
        .quiet_zone(true)
        .build())
}

fn draw(text: &str) -> Result<QrCode, QrError> {
    QrCode::with_error_correction_level(text, EcLevel::M).map_err(|source| QrError {
        text: text.to_owned(),
        source,
    })
}

/// The standard text that joins a Wi-Fi. An open network has an empty password.
pub fn wifi(ssid: &str, password: &str) -> String {
    if password.is_empty() {
        format!("WIFI:T:nopass;S:{};;", escaped(ssid))
    } else {
        format!("WIFI:T:WPA;S:{};P:{};;", escaped(ssid), escaped(password))
    }
}

fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        if matches!(c, '\\' | ';' | ',' | '"' | ':') {
            out.push('\\');
        }
        out.push(c);
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_wifi_code_escapes_what_would_end_it() {
        // The escaping rule of the usual barcode contents description: backslash before \ ; , " and :.
        assert_eq!(
            wifi(r#"Crew;"7":a\b,c"#, "p:1;2"),
            r#"WIFI:T:WPA;S:Crew\;\"7\"\:a\\b\,c;P:p\:1\;2;;"#
        );
        assert_eq!(wifi("Crew", ""), "WIFI:T:nopass;S:Crew;;");
    }

    #[test]
    fn a_code_is_drawn_for_page_and_terminal() {
        let text = "http://192.168.8.2:8080/j/BCDFGHJKMN";
        let svg = svg(text).unwrap();
        assert!(svg.starts_with("<svg") && svg.ends_with("</svg>"));
        assert!(terminal(text).unwrap().lines().count() > 10);
        assert!(draw(&"x".repeat(5_000)).is_err());
    }
}
