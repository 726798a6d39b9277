//! The phone pages, built from the folder beside this file and carried inside the one binary.
//!
//! A page path that is no file is the index: the page itself chooses what to show.

use std::borrow::Cow;
#[cfg(debug_assertions)]
use std::path::Component;
use std::path::Path;

use rust_embed::{EmbeddedFile, RustEmbed};

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
    let found = file(path)?;
    let hash = found.metadata.sha256_hash();
    let etag = hash[..8]
        .iter()
        .fold(String::from("\""), |name, byte| format!("{name}{byte:02x}"));
    Some(Asset {
        path: path.to_owned(),
        bytes: found.data,
        gzip: file(&format!("{path}.gz")).map(|gzip| gzip.data),
        content_type: content_type(path),
        etag: etag + "\"",
        immutable: path.starts_with("assets/"),
    })
}

/// The bytes of that path. A debug build takes them from the folder that `RODCALL_WEB_DIST` names when it runs, so that a page
/// is looked at, and tried by the browser tests, without building the hub anew.
fn file(path: &str) -> Option<EmbeddedFile> {
    #[cfg(debug_assertions)]
    if let Some(folder) = std::env::var_os("RODCALL_WEB_DIST") {
        let plain = Path::new(path)
            .components()
            .all(|part| matches!(part, Component::Normal(_)));
        let path = Path::new(&folder).join(path);
        return plain
            .then(|| rust_embed::utils::read_file_from_fs(&path).ok())
            .flatten();
    }
    Web::get(path)
}

/// Compressed copies are handed out beside what they are copies of, never by themselves.
const GZIP: &str = "application/gzip";

/// The one page.
pub fn index() -> Option<Asset> {
    asset("index.html")
}

/// The script that the one page names: it changes with any byte of the pages, and a page says it of itself.
pub fn entry() -> Option<String> {
    let html = String::from_utf8(index()?.bytes.into_owned()).ok()?;
    let named = html.split('"').find(|part| {
        part.starts_with("/assets/") && Path::new(part).extension().is_some_and(|kind| kind == "js")
    });
    named.map(str::to_owned)
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
        assert!(named.contains(&entry().unwrap().as_str()), "{named:?}");
        for path in named {
            let asset = asset(path).unwrap();
            assert!(asset.gzip.is_some() && asset.immutable, "{path}");
        }
    }

    /// Bytes on the air of the files that the test names, each compressed.
    fn on_the_air(named: impl Fn(&str) -> bool) -> usize {
        Web::iter()
            .filter_map(|path| Some((path.strip_suffix(".gz")?.to_owned(), Web::get(&path)?)))
            .filter(|(name, _)| named(name))
            .map(|(_, file)| file.data.len())
            .sum()
    }

    #[test]
    fn a_field_phone_fetches_less_than_sixty_thousand_bytes_before_its_keypad_works() {
        // Page, script, stylesheet, and the words of one language: 0.3 s on the air at 1.6 Mbit/s.
        let html = String::from_utf8(index().unwrap().bytes.to_vec()).unwrap();
        let page = on_the_air(|name| name == "index.html" || html.contains(name));
        for language in ["assets/en-", "assets/es-"] {
            let words = on_the_air(|name| name.starts_with(language));
            assert!(words > 5_000, "{language}: {words} bytes");
            assert!(page + words < 60_000, "{language}: {page} + {words} bytes");
        }
    }

    #[test]
    fn what_a_phone_in_the_cut_seldom_shows_comes_in_scripts_of_its_own() {
        for (script, most) in [
            ("assets/seldom-", 34_000),
            // The desk with its plan, LOG and REVIEW: nobody in the cut fetches it.
            ("assets/supervisor-", 85_000),
            // The chart library comes when a page with charts is opened, on a laptop as a rule.
            ("assets/plot-", 100_000),
        ] {
            let bytes = on_the_air(|name| name.starts_with(script));
            assert!(bytes > 10_000 && bytes < most, "{script}: {bytes} bytes");
        }
    }

    #[test]
    fn a_compressed_copy_is_no_page_of_its_own() {
        assert!(asset("index.html.gz").is_none());
        assert!(asset("../Cargo.toml").is_none());
    }
}
