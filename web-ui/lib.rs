//! The phone pages, built from the folder beside this file and carried inside the one binary.
//!
//! A page path that is no file is the index: the page itself chooses what to show.

use std::borrow::Cow;

use rust_embed::RustEmbed;

#[derive(RustEmbed)]
#[folder = "$OUT_DIR/web"]
struct Web;

/// One built file, as it goes over the wire.
#[derive(Clone, Debug)]
pub struct Asset {
    /// Its path, without a leading stroke: `index.html`, `assets/index-5Zr0.js`.
    pub path: String,
    /// Its bytes.
    pub bytes: Cow<'static, [u8]>,
    /// Its bytes compressed with gzip, where that was worth doing.
    pub gzip: Option<Cow<'static, [u8]>>,
    /// What it is.
    pub content_type: &'static str,
    /// A quoted name for these very bytes.
    pub etag: String,
    /// True when the name changes with the bytes, so that a phone may keep it for good.
    pub immutable: bool,
}

/// The file of that path, with or without a leading stroke; none when there is none.
pub fn asset(path: &str) -> Option<Asset> {
    let path = path.trim_start_matches('/');
    if content_type(path) == GZIP {
        return None;
    }
    let file = Web::get(path)?;
    let hash = file.metadata.sha256_hash();
    let etag = hash[..8]
        .iter()
        .fold(String::from("\""), |name, byte| format!("{name}{byte:02x}"));
    Some(Asset {
        path: path.to_owned(),
        bytes: file.data,
        gzip: Web::get(&format!("{path}.gz")).map(|gzip| gzip.data),
        content_type: content_type(path),
        etag: etag + "\"",
        immutable: path.starts_with("assets/"),
    })
}

/// Compressed copies are handed out beside what they are copies of, never by themselves.
const GZIP: &str = "application/gzip";

/// The one page.
pub fn index() -> Option<Asset> {
    asset("index.html")
}

/// A name for this build of the pages; another build has another.
pub fn build_id() -> &'static str {
    env!("RODCALL_WEB_BUILD")
}

fn content_type(path: &str) -> &'static str {
    match path.rsplit('.').next() {
        Some("html") => "text/html; charset=utf-8",
        Some("js") => "text/javascript; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("svg") => "image/svg+xml",
        Some("gz") => GZIP,
        _ => "application/octet-stream",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_page_and_all_that_it_names_are_inside() {
        let index = index().unwrap();
        let html = String::from_utf8(index.bytes.to_vec()).unwrap();
        let named: Vec<&str> = html
            .split('"')
            .filter(|part| part.starts_with("/assets/"))
            .collect();
        assert_eq!(named.len(), 2, "one script, one stylesheet: {named:?}");
        for path in named {
            let asset = asset(path).unwrap();
            assert!(asset.gzip.is_some() && asset.immutable, "{path}");
        }
    }

    /// Bytes on the air for what the page names, for what comes late, and for the chart library.
    fn fetched() -> (usize, usize, usize) {
        let html = String::from_utf8(index().unwrap().bytes.to_vec()).unwrap();
        let (mut first, mut rest, mut charts) = (0, 0, 0);
        for path in Web::iter().filter(|path| path.ends_with(".gz")) {
            let size = Web::get(&path).unwrap().data.len();
            let name = path.trim_end_matches(".gz");
            if name == "index.html" || html.contains(name) {
                first += size;
            } else if name.starts_with("assets/plot-") {
                charts += size;
            } else {
                rest += size;
            }
        }
        (first, rest, charts)
    }

    #[test]
    fn a_field_phone_fetches_less_than_weak_wifi_carries_in_half_a_second() {
        // Usable within a second of scanning: half of it on the air, at 1.2 Mbit/s.
        let (first, _, _) = fetched();
        assert!(first > 0 && first < 75_000, "{first} bytes");
    }

    #[test]
    fn the_supervisors_script_is_not_fetched_by_a_field_phone() {
        let (_, rest, charts) = fetched();
        assert!(rest > 10_000 && rest < 65_000, "{rest} bytes");
        // The chart library comes when a page with charts is opened, on a laptop as a rule.
        assert!(charts > 10_000 && charts < 100_000, "{charts} bytes");
    }

    #[test]
    fn a_compressed_copy_is_no_page_of_its_own() {
        assert!(asset("index.html.gz").is_none());
        assert!(asset("../Cargo.toml").is_none());
    }
}
