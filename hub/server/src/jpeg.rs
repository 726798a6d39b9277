//! What the bytes of a photo must be: one whole JPEG picture of a bounded size, and nothing about who, where or with what.
//!
//! The parts of the file are those of ITU-T T.81, annex B. Beside the picture itself only the plain JFIF head and the colour
//! transform of APP14 are let in: Exif with its place and hour, XMP, thumbnails and comments are refused, wherever in the file
//! they stand. They are refused and not cut out, because the phone has already promised the hash of these very bytes.

use words::{Fixed, Text};
use zune_jpeg::JpegDecoder;
use zune_jpeg::zune_core::bytestream::ZCursor;
use zune_jpeg::zune_core::options::DecoderOptions;

/// No photo is larger, in bytes. A phone makes them of at most half of it.
pub const LARGEST: usize = 3 * 1024 * 1024;
/// No side is longer, in dots.
pub const LONGEST_SIDE: usize = 1_600;

const START: [u8; 3] = [0xff, 0xd8, 0xff];
const END: u8 = 0xd9;
const SCAN: u8 = 0xda;
const COMMENT: u8 = 0xfe;
const APP0: u8 = 0xe0;
/// An APP0 of this length is the JFIF head without a thumbnail.
const PLAIN_HEAD: usize = 16;

/// Why bytes are not taken for a photo.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NotAPhoto {
    /// Too many bytes.
    TooLarge,
    /// Another kind of file.
    NotJpeg,
    /// It ends early, goes on behind its end, or can't be decoded.
    Broken(String),
    /// It says more than the picture.
    TellsMore(Fixed),
    /// Too many dots.
    TooWide {
        /// Dots from left to right.
        width: usize,
        /// Dots from top to bottom.
        height: usize,
    },
}

impl NotAPhoto {
    /// Why, and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::TooLarge => words::jpeg::too_large(&(LARGEST / 1024 / 1024)),
            Self::NotJpeg => words::jpeg::not_jpeg().into(),
            Self::Broken(why) => words::jpeg::broken(why),
            Self::TellsMore(what) => words::jpeg::tells_more(what),
            Self::TooWide { width, height } => words::jpeg::too_wide(width, height, &LONGEST_SIDE),
        }
    }
}

words::error!(NotAPhoto);

/// Refuses what is not one whole, plain JPEG picture of a bounded size.
///
/// # Errors
/// [`NotAPhoto`].
pub fn check(bytes: &[u8]) -> Result<(), NotAPhoto> {
    if bytes.len() > LARGEST {
        return Err(NotAPhoto::TooLarge);
    }
    if !bytes.starts_with(&START) {
        return Err(NotAPhoto::NotJpeg);
    }
    parts(bytes)?;
    decodes(bytes)
}

/// Walks from marker to marker, up to the end of the image, which must be the end of the file.
fn parts(bytes: &[u8]) -> Result<(), NotAPhoto> {
    let mut at = 2;
    loop {
        let (marker, behind) = marker(bytes, at)?;
        match marker {
            END if behind == bytes.len() => return Ok(()),
            END => {
                return Err(NotAPhoto::TellsMore(words::jpeg::bytes_behind_end_picture()));
            }
            _ => {}
        }
        let length = bytes.get(behind..behind + 2).ok_or_else(early)?;
        let length = usize::from(u16::from_be_bytes([length[0], length[1]]));
        plain(marker, length)?;
        at = behind + length.max(2);
        if marker == SCAN {
            at = scan_end(bytes, at)?;
        }
    }
}

/// The marker at a place, and the place behind it; any number of 0xff may stand before it.
fn marker(bytes: &[u8], mut at: usize) -> Result<(u8, usize), NotAPhoto> {
    if *bytes.get(at).ok_or_else(early)? != 0xff {
        return Err(NotAPhoto::Broken(format!("no marker at byte {at}")));
    }
    while bytes.get(at) == Some(&0xff) {
        at += 1;
    }
    Ok((*bytes.get(at).ok_or_else(early)?, at + 1))
}

/// Refuses a part that tells more than the picture.
fn plain(marker: u8, length: usize) -> Result<(), NotAPhoto> {
    let what = match marker {
        APP0 if length > PLAIN_HEAD => words::jpeg::a_thumbnail(),
        0xe1 => words::jpeg::exif_or_xmp_data(),
        0xe2 => words::jpeg::a_colour_profile(),
        0xed => words::jpeg::iptc_data(),
        0xe3..=0xec | 0xef => words::jpeg::data_of_a_program(),
        COMMENT => words::jpeg::a_comment(),
        _ => return Ok(()),
    };
    Err(NotAPhoto::TellsMore(what))
}

/// The first marker behind a scan's data; a stuffed zero and a restart belong to the data.
fn scan_end(bytes: &[u8], from: usize) -> Result<usize, NotAPhoto> {
    let data = bytes.get(from..).ok_or_else(early)?;
    let ends = |pair: &[u8]| pair[0] == 0xff && !matches!(pair[1], 0x00 | 0xff | 0xd0..=0xd7);
    let end = data.windows(2).position(ends).ok_or_else(early)?;
    Ok(from + end)
}

fn early() -> NotAPhoto {
    NotAPhoto::Broken("it ends early".to_owned())
}

/// Decodes it: what no program can show is found here, before the log says that there is a picture.
fn decodes(bytes: &[u8]) -> Result<(), NotAPhoto> {
    let broken = |error: &dyn std::fmt::Display| NotAPhoto::Broken(error.to_string());
    // Larger than what is let in, so that its own size can be named.
    let most = usize::from(u16::MAX);
    let options = DecoderOptions::new_safe()
        .set_strict_mode(true)
        .set_max_width(most)
        .set_max_height(most);
    let mut decoder = JpegDecoder::new_with_options(ZCursor::new(bytes), options);
    decoder.decode_headers().map_err(|error| broken(&error))?;
    let info = decoder.info().ok_or_else(early)?;
    let (width, height) = (usize::from(info.width), usize::from(info.height));
    if width.max(height) > LONGEST_SIDE {
        return Err(NotAPhoto::TooWide { width, height });
    }
    decoder.decode().map_err(|error| broken(&error))?;
    Ok(())
}

#[cfg(test)]
mod tests;
