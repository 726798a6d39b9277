//! Damage to good bytes: what an editor, a bad copy or a malicious hand does to a file.

use proptest::prelude::*;

/// One thing that is done to bytes; places are shares of their length, so that each fits any file.
#[derive(Clone, Debug)]
pub(crate) enum Damage {
    /// A byte becomes another.
    Set(f64, u8),
    /// A bit is turned.
    Flip(f64, u8),
    /// Some bytes are cut out.
    Cut(f64, usize),
    /// Some bytes are put in.
    Put(f64, Vec<u8>),
    /// A stretch stands twice.
    Twice(f64, usize),
    /// Everything behind is lost.
    End(f64),
    /// Two lines change places.
    Swap(f64, f64),
}

/// A few damages.
pub(crate) fn damages() -> impl Strategy<Value = Vec<Damage>> {
    let at = || 0.0..1.0_f64;
    let words: Vec<Vec<u8>> = [
        "\"",
        "'",
        "[",
        "]",
        "{",
        "}",
        "=",
        ",",
        "\n",
        "[[",
        "\u{feff}",
        "\0",
        "-",
        "1e999",
        "nan",
        "99999999999999999999",
        "𝟙",
        "ft",
        "\u{202e}",
        "#",
        "\\u0000",
    ]
    .iter()
    .map(|word| word.as_bytes().to_vec())
    .collect();
    let one = prop_oneof![
        (at(), any::<u8>()).prop_map(|(at, byte)| Damage::Set(at, byte)),
        (at(), 0..8_u8).prop_map(|(at, bit)| Damage::Flip(at, bit)),
        (at(), 1..60_usize).prop_map(|(at, many)| Damage::Cut(at, many)),
        (at(), prop::sample::select(words)).prop_map(|(at, word)| Damage::Put(at, word)),
        (at(), prop::collection::vec(any::<u8>(), 1..20))
            .prop_map(|(at, word)| Damage::Put(at, word)),
        (at(), 1..400_usize).prop_map(|(at, many)| Damage::Twice(at, many)),
        at().prop_map(Damage::End),
        (at(), at()).prop_map(|(one, other)| Damage::Swap(one, other)),
    ];
    prop::collection::vec(one, 1..4)
}

/// The bytes after the damage.
pub(crate) fn damaged(good: &[u8], damages: &[Damage]) -> Vec<u8> {
    let mut bytes = good.to_vec();
    for damage in damages {
        bytes = hurt(bytes, damage);
    }
    bytes
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a share of a length is a place in it"
)]
fn place(share: f64, length: usize) -> usize {
    (share * length as f64) as usize
}

fn hurt(mut bytes: Vec<u8>, damage: &Damage) -> Vec<u8> {
    let length = bytes.len();
    if length == 0 {
        return bytes;
    }
    match damage {
        Damage::Set(at, byte) => bytes[place(*at, length)] = *byte,
        Damage::Flip(at, bit) => bytes[place(*at, length)] ^= 1 << bit,
        Damage::Cut(at, many) => {
            let from = place(*at, length);
            bytes.drain(from..(from + many).min(length));
        }
        Damage::Put(at, word) => {
            let at = place(*at, length);
            bytes.splice(at..at, word.iter().copied());
        }
        Damage::Twice(at, many) => {
            let from = place(*at, length);
            let again = bytes[from..(from + many).min(length)].to_vec();
            bytes.splice(from..from, again);
        }
        Damage::End(at) => bytes.truncate(place(*at, length)),
        Damage::Swap(one, other) => {
            let mut lines: Vec<&[u8]> = bytes.split_inclusive(|byte| *byte == b'\n').collect();
            let many = lines.len();
            lines.swap(place(*one, many), place(*other, many));
            bytes = lines.concat();
        }
    }
    bytes
}
