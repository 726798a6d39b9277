//! Pictures that are let in, and every way in which one is not. Markers are those of ITU-T T.81, annex B.

use jpeg_encoder::{ColorType, Encoder};
use proptest::prelude::*;

use super::*;

/// A picture with some grain, so that its data is not all alike.
fn picture(width: u16, height: u16, progressive: bool) -> Vec<u8> {
    let dots = usize::from(width) * usize::from(height);
    let grain = (0..dots).map(|at| u8::try_from(at * at % 251).unwrap_or(0));
    let grain: Vec<u8> = grain.collect();
    let mut bytes = Vec::new();
    let mut encoder = Encoder::new(&mut bytes, 80);
    encoder.set_progressive(progressive);
    encoder
        .encode(&grain, width, height, ColorType::Luma)
        .unwrap();
    bytes
}

/// A part put in behind the start of the image.
fn with_part(bytes: &[u8], marker: u8, content: &[u8]) -> Vec<u8> {
    let length = u16::try_from(content.len() + 2).unwrap();
    let part = [&[0xff, marker], &length.to_be_bytes()[..], content].concat();
    [&bytes[..2], &part, &bytes[2..]].concat()
}

#[test]
fn plain_pictures_are_let_in() {
    for progressive in [false, true] {
        assert_eq!(check(&picture(160, 120, progressive)), Ok(()));
    }
    assert_eq!(check(&picture(1_600, 9, false)), Ok(()));
}

#[test]
fn what_tells_more_than_the_picture_is_refused_by_name() {
    let plain = picture(32, 24, true);
    let parts: [(u8, &[u8], &str, &str); 6] = [
        // Exif 2.3, 4.5.4: APP1 begins with these six bytes.
        (0xe1, b"Exif\0\0MM\0*", "Exif", "Exif"),
        (0xe1, b"http://ns.adobe.com/xap/1.0/\0<x/>", "XMP", "XMP"),
        (0xed, b"Photoshop 3.0\0", "IPTC", "IPTC"),
        (0xfe, b"by hand", "comment", "un comentario"),
        (
            0xe0,
            b"JFXX\0\x10thumbnail and more",
            "thumbnail",
            "una miniatura",
        ),
        (0xe5, b"anything", "program", "un programa"),
    ];
    for (marker, content, named, nombrado) in parts {
        let refused = check(&with_part(&plain, marker, content)).unwrap_err();
        assert!(refused.to_string().contains(named), "{refused}");
        assert!(
            refused.text().spanish.contains(nombrado),
            "{}",
            refused.text().spanish
        );
    }
    // Behind the first scan, where a reader of heads alone does not look.
    let second = plain.windows(2).rposition(|pair| pair == [0xff, 0xda]);
    let at = second.unwrap();
    let part = with_part(&[0, 0], 0xe1, b"Exif\0\0");
    let hidden = [&plain[..at], &part[2..], &plain[at..]].concat();
    assert!(matches!(check(&hidden), Err(NotAPhoto::TellsMore(..))));
    let behind = [&plain[..], b"a film"].concat();
    assert!(matches!(check(&behind), Err(NotAPhoto::TellsMore(..))));
}

#[test]
fn other_files_and_other_sizes_are_refused() {
    assert_eq!(check(b""), Err(NotAPhoto::NotJpeg));
    assert_eq!(check(b"\x89PNG\r\n\x1a\n"), Err(NotAPhoto::NotJpeg));
    assert_eq!(check(&vec![0xff; LARGEST + 1]), Err(NotAPhoto::TooLarge));
    assert_eq!(
        check(&picture(8, 1_601, false)),
        Err(NotAPhoto::TooWide {
            width: 8,
            height: 1_601
        })
    );
}

#[test]
fn a_picture_that_ends_early_is_refused_wherever_it_ends() {
    for progressive in [false, true] {
        let whole = picture(40, 30, progressive);
        for end in 3..whole.len() {
            let refused = check(&whole[..end]);
            assert!(
                matches!(refused, Err(NotAPhoto::Broken(_))),
                "{end}: {refused:?}"
            );
        }
    }
}

proptest! {
    /// Whatever bytes come, there is an answer and no panic.
    #[test]
    fn any_bytes_get_an_answer(bytes in proptest::collection::vec(any::<u8>(), 0..600), at in 0_usize..400, to in any::<u8>()) {
        let _ = check(&[&START[..], &bytes].concat());
        let mut changed = picture(16, 16, true);
        let at = at % changed.len();
        changed[at] = to;
        let _ = check(&changed);
    }
}
