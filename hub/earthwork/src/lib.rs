//! The trade's arithmetic: pure, exact, without clock or I/O.
//!
//! | the question | the file |
//! |---|---|
//! | How long is it, exactly, and how do people write it? | [`length`] |
//! | Where is it? | [`point`] |
//! | Where along the line? | [`alignment`] |
//! | How do the plan's big numbers come on to the site? | [`site_frame`] |
//! | What does the rod say? | [`rod`] |
//! | How high is it? Does the set-up hold? | [`level`] |
//! | Does a line of levels close? | [`level_line`] |
//! | Is the level itself true? | [`two_peg`] |
//! | Does the laser still hold, and what is in doubt if not? | [`laser`] |
//! | What do earth, air and a leaning rod add? | [`earth_and_air`] |
//! | Which slip would explain it? Does the reading fit? | [`slip`] |
//! | What should the ground be here? | [`target`] |
//! | What should a profile, trench, face or fold be here? | [`grade`] |
//! | What should a surface of triangles be here? | [`surface`] |
//! | How steep may a cut stand, and where does it come out? | [`face`] |
//! | What is buried, and how near is it? | [`buried`] |
//! | How sure are we? | [`uncertainty`] |
//! | Is it in? | [`tolerance`] |
//! | What is the operator told? | [`correction`], in words: [`words`] |
//! | How does the drawing get on to the ground? | [`layout`] |
//! | How near the machine? | [`keep_out`] |
//! | What can the machine do, and where must it not stand? | [`machine`] |
//! | How far from a line overhead, by which law? | [`overhead`] |
//! | How long does a call last? | [`pace`] |
//! | Where do passes land, and where should they be aimed? | [`landing`] |
//! | When is it at grade, and who is needed next? | [`arrival`] |
//! | How much is to be dug or filled? | [`volume`] |
//! | How much rock stands above the dig? | [`rock_line`] |
//! | How many loads, how many trucks? | [`haul`] |
//! | How much gravel? | [`gravel`] |
//! | Is it compacted, does it carry? | [`soil`] |
//! | What does it cost? | [`cost`] |
//! | How much, in which unit? Can that figure be? | [`amount`], [`figure`] |
//! | Do published examples come out? | [`worked`] |
//!
//! Signs: a difference is measured − target, positive is HIGH (cut), negative is LOW (fill). Offsets are
//! positive to the right looking up-station. East and north are positive.
//!
//! A rod reading, from the benchmark to what the cab is told (invented figures):
//!
//! ```
//! use earthwork::correction::{Ground, correction};
//! use earthwork::length::{Length, parse};
//! use earthwork::level::{elevation, grade_rod, height_of_instrument};
//! use earthwork::tolerance::{Tolerance, verdict};
//! use earthwork::words::{ScreenUnit, call_text};
//! use words::Language;
//!
//! # fn main() -> Result<(), Box<dyn std::error::Error>> {
//! let hi = height_of_instrument(parse("106.35 ft")?, parse("4.65 ft")?);
//! let target = parse("106.00 ft")?;
//! assert_eq!(grade_rod(hi, target), parse("5.00 ft")?);
//!
//! let dev = elevation(hi, parse("4.70 ft")?) - target;
//! assert_eq!(dev, parse("0.30 ft")?, "measured − target: HIGH");
//!
//! let tolerance = Tolerance::new(parse("0.10 ft")?, parse("0.20 ft")?)?;
//! let found = verdict(&[dev], tolerance, Length::ZERO);
//! let ground = Ground { dev, aim: Length::ZERO, tolerance: Some(tolerance) };
//! let told = correction(&ground, found, false);
//! let text = call_text(&told, &ground, Language::English, ScreenUnit::Tenths);
//! assert_eq!(text.line, "DOWN 3");
//! # Ok(())
//! # }
//! ```
//!
//! Units: every length and elevation is a [`length::Length`], a whole number of tenth-micrometres; the foot is
//! the international foot. Uncertainties are one standard deviation, in feet, as `f64`.

pub mod alignment;
pub mod amount;
pub mod arrival;
pub mod buried;
pub mod correction;
pub mod cost;
pub mod earth_and_air;
pub mod face;
pub mod figure;
pub mod grade;
pub mod gravel;
pub mod haul;
pub mod keep_out;
pub mod landing;
pub mod laser;
pub mod layout;
pub mod length;
pub mod level;
pub mod level_line;
pub mod machine;
pub mod overhead;
pub mod pace;
pub mod point;
pub mod rock_line;
pub mod rod;
pub mod site_frame;
pub mod slip;
pub mod soil;
pub mod surface;
pub mod target;
pub mod tolerance;
pub mod two_peg;
pub mod uncertainty;
mod vector;
pub mod volume;
pub mod words;
pub mod worked;
