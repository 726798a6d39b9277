//! A photo as small as a print needs it: a sheet with sixty photos stays under five megabytes.
//!
//! It is made of bytes that were proven just now, whenever a sheet is made, and remembered in memory alone: a smaller copy on the disk
//! could not be held against the log, which names the photo as it came.

use std::borrow::Cow;
use std::collections::VecDeque;
use std::sync::{Arc, Mutex, PoisonError};

use image::codecs::jpeg::JpegEncoder;
use image::{DynamicImage, ImageFormat, ImageResult};

/// No photo takes more of a sheet, in bytes before they are written as text: sixty of them, as text, come to 4.3 MB.
pub(super) const LARGEST: usize = 54_000;
/// The longest sides that are tried, in dots: what a print is high and wide, at 240 dots an inch, and less.
const SIDES: [u32; 3] = [640, 480, 320];
/// The qualities that are tried at each size, of 100.
const QUALITIES: [u8; 3] = [75, 60, 45];
/// So many prints are remembered: those of a long day, for its other sheets and the other language.
const MOST: usize = 128;

/// Prints by the hash of the photo as it came.
static MADE: Mutex<VecDeque<(String, Arc<[u8]>)>> = Mutex::new(VecDeque::new());

/// The photo itself where it is small enough, else a smaller one. `sha256` is the hash of `bytes`. What can't be read as a picture stays
/// as it came.
pub(super) fn of<'a>(sha256: &str, bytes: &'a [u8]) -> Cow<'a, [u8]> {
    if bytes.len() <= LARGEST {
        return Cow::Borrowed(bytes);
    }
    if let Some(made) = made(sha256) {
        return Cow::Owned(made.to_vec());
    }
    match smaller(bytes) {
        Ok(print) => {
            remember(sha256, &print);
            Cow::Owned(print)
        }
        Err(_not_a_picture) => Cow::Borrowed(bytes),
    }
}

fn made(sha256: &str) -> Option<Arc<[u8]>> {
    let made = MADE.lock().unwrap_or_else(PoisonError::into_inner);
    let found = made.iter().find(|(name, _)| name == sha256);
    found.map(|(_, print)| print.clone())
}

fn remember(sha256: &str, print: &[u8]) {
    let mut made = MADE.lock().unwrap_or_else(PoisonError::into_inner);
    if made.len() >= MOST {
        made.pop_front();
    }
    made.push_back((sha256.to_owned(), print.into()));
}

/// The largest and finest of the tried ones that fits; the smallest where none does.
fn smaller(bytes: &[u8]) -> ImageResult<Vec<u8>> {
    let picture = image::load_from_memory_with_format(bytes, ImageFormat::Jpeg)?;
    let mut print = Vec::new();
    for side in SIDES {
        let small = fitted(&picture, side);
        for quality in QUALITIES {
            print.clear();
            JpegEncoder::new_with_quality(&mut print, quality).encode_image(&small)?;
            if print.len() <= LARGEST {
                return Ok(print);
            }
        }
    }
    Ok(print)
}

/// Never larger than it came.
fn fitted(picture: &DynamicImage, side: u32) -> DynamicImage {
    let side = side.min(picture.width().max(picture.height()));
    picture.thumbnail(side, side)
}

#[cfg(test)]
mod tests {
    use super::*;
    use day::chain::digest;
    use image::{GrayImage, Luma, Rgb, RgbImage};

    /// The worst for a JPEG: every dot its own, from a fixed seed.
    fn noise(width: u32, height: u32) -> Vec<u8> {
        let mut seed = 7_u32;
        let mut next = || {
            seed = seed.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            u8::try_from(seed >> 24).unwrap()
        };
        let picture = RgbImage::from_fn(width, height, |_, _| Rgb([next(), next(), next()]));
        encoded(&picture.into())
    }

    fn encoded(picture: &DynamicImage) -> Vec<u8> {
        let mut bytes = Vec::new();
        let encoder = JpegEncoder::new_with_quality(&mut bytes, 90);
        picture.write_with_encoder(encoder).unwrap();
        bytes
    }

    #[test]
    fn the_worst_picture_fits_and_keeps_its_shape() {
        for (width, height) in [(1_600, 1_200), (1_200, 1_600), (1_600, 100)] {
            let photo = noise(width, height);
            assert!(photo.len() > LARGEST, "{width} × {height}");
            let print = of(&digest(&photo), &photo);
            assert!(print.len() <= LARGEST, "{}", print.len());
            let small = image::load_from_memory(&print).unwrap();
            let (came, now) = (
                f64::from(width) / f64::from(height),
                f64::from(small.width()) / f64::from(small.height()),
            );
            assert!((came / now - 1.0).abs() < 0.05, "{came} {now}");
            assert!(small.width().max(small.height()) >= 320);
            // The other language's sheet has the very same bytes.
            assert_eq!(of(&digest(&photo), &photo), print);
        }
    }

    #[test]
    fn a_plain_picture_keeps_all_that_a_print_of_its_size_can_show() {
        // Ground in even light, with the grain of a small camera.
        let mut seed = 7_u32;
        let picture = GrayImage::from_fn(1_600, 1_200, |x, y| {
            seed = seed.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            Luma([u8::try_from(x / 16 + y / 12 + (seed >> 28)).unwrap_or(255)])
        });
        let photo = encoded(&picture.into());
        assert!(photo.len() > LARGEST);
        let small = image::load_from_memory(&of(&digest(&photo), &photo)).unwrap();
        assert_eq!((small.width(), small.height()), (640, 480));
    }

    #[test]
    fn a_small_photo_and_what_is_no_picture_stay_as_they_came() {
        let photo = noise(60, 40);
        assert_eq!(of(&digest(&photo), &photo), photo);
        let torn = &noise(1_600, 1_200)[..60_000];
        let broken = [&[0_u8; 4], torn].concat();
        assert_eq!(of(&digest(&broken), &broken), broken);
    }
}
