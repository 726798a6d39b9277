//! Computations in bulk: one JSON object a line in, one a line out, in the same order.
//!
//! In: `{"computation":"rod_to_elevation","inputs":{"benchmark":"106.35 ft","backsight":"4.65 ft","foresight":"2.40 ft"}}`.
//! Out: `{"line":1,"outputs":{"elevation":{"ft":108.6,"m":33.10128},…}}`, or `{"line":1,"error":"…"}`. Lengths come in feet
//! and in metres, lists of lengths as lists, numbers and words as they are. A length's metres hold every digit.

use std::collections::BTreeMap;
use std::io::{BufRead, Read as _, Write};

use earthwork::length::Length;
use earthwork::worked::{Quantity, compute};
use serde::Deserialize;
use serde_json::{Map, Value, json};

/// The longest line that is read, in bytes; a longer one is refused and skipped.
const LONGEST_LINE: u64 = 4_000_000;

/// A computation that is asked for.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Asked {
    computation: String,
    inputs: BTreeMap<String, Value>,
}

/// How many lines were answered, and with what.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Tally {
    /// Lines that were not empty.
    pub all: usize,
    /// Those that were answered with an error.
    pub bad: usize,
}

/// Works out each line and answers it at once; memory is bounded by the longest line.
///
/// # Errors
/// When the lines can't be read or the answers can't be written.
pub fn run(mut lines: impl BufRead, mut answers: impl Write) -> std::io::Result<Tally> {
    let mut tally = Tally::default();
    let mut line = Vec::new();
    for number in 1_usize.. {
        line.clear();
        if lines
            .by_ref()
            .take(LONGEST_LINE)
            .read_until(b'\n', &mut line)?
            == 0
        {
            break;
        }
        let whole = line.ends_with(b"\n") || lines.fill_buf()?.is_empty();
        let answer = if whole {
            if line.trim_ascii().is_empty() {
                continue;
            }
            one(&line)
        } else {
            lines.skip_until(b'\n')?;
            Err(format!(
                "The line is longer than {LONGEST_LINE} bytes. Ask for less at once."
            ))
        };
        tally.all += 1;
        tally.bad += usize::from(answer.is_err());
        let answer = match answer {
            Ok(outputs) => json!({ "line": number, "outputs": outputs }),
            Err(why) => json!({ "line": number, "error": why }),
        };
        writeln!(answers, "{answer}")?;
    }
    answers.flush()?;
    Ok(tally)
}

fn one(line: &[u8]) -> Result<Value, String> {
    let asked: Asked = serde_json::from_slice(line).map_err(|error| {
        format!(
            "This is not a computation: {error}. Write {{\"computation\":\"…\",\"inputs\":{{…}}}} on one line."
        )
    })?;
    let mut inputs = BTreeMap::new();
    for (name, value) in asked.inputs {
        let text = match value {
            Value::String(text) => text,
            Value::Number(number) => number.to_string(),
            _ => {
                return Err(format!(
                    "Input “{name}” must be a text or a number, such as \"5.42 ft\"."
                ));
            }
        };
        inputs.insert(name, text);
    }
    let outputs = compute(&asked.computation, &inputs).map_err(|error| error.to_string())?;
    let shown: Map<String, Value> = outputs
        .into_iter()
        .map(|(name, quantity)| (name, shown(&quantity)))
        .collect();
    Ok(Value::Object(shown))
}

fn shown(quantity: &Quantity) -> Value {
    let in_units = |length: &Length| json!({ "ft": length.feet(), "m": length.metres() });
    match quantity {
        Quantity::Length(length) => in_units(length),
        Quantity::Lengths(lengths) => lengths.iter().map(in_units).collect(),
        Quantity::Number(number) => json!(number),
        Quantity::Word(word) => json!(word),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn answers(lines: &[u8]) -> (Tally, Vec<Value>) {
        let mut out = Vec::new();
        let tally = run(lines, &mut out).unwrap();
        let text = String::from_utf8(out).unwrap();
        let answers = text
            .lines()
            .map(|line| serde_json::from_str(line).unwrap())
            .collect();
        (tally, answers)
    }

    /// By hand: 106.35 + 4.65 − 2.40 = 108.60 ft, 33.10128 m.
    #[test]
    fn each_line_has_its_answer_in_order() {
        let lines = br#"{"computation":"rod_to_elevation","inputs":{"benchmark":"106.35 ft","backsight":"4.65 ft","foresight":"2.40 ft"}}

{"computation":"level_line","inputs":{"start":"1 ft","backsights":"2 ft; 1 ft","foresights":"1 ft; 3 ft"}}
{"computation":"leaning_rod","inputs":{"upright":"2 m","degrees":60}}"#;
        let (tally, answers) = answers(lines);
        assert_eq!(tally, Tally { all: 3, bad: 0 });
        assert_eq!(
            answers[0]["outputs"]["elevation"],
            json!({ "ft": 108.6, "m": 33.10128 })
        );
        assert_eq!(answers[1]["line"], 3, "the empty line counts");
        assert_eq!(answers[1]["outputs"]["elevations"][1]["ft"], 0.0);
        assert_eq!(answers[2]["outputs"]["reads"]["m"], 4.0, "2 m over cos 60°");
    }

    #[test]
    fn a_bad_line_says_why_and_the_others_go_on() {
        let good = r#"{"computation":"convert","inputs":{"length":"1 ft"}}"#;
        let long = format!(
            r#"{{"computation":"{}"}}"#,
            "x".repeat(usize::try_from(LONGEST_LINE).unwrap())
        );
        for (line, says) in [
            ("{", "not a computation"),
            (
                r#"{"computation":"convert","inputs":{},"hue":1}"#,
                "unknown field `hue`",
            ),
            (
                r#"{"computation":"convert","inputs":{"length":[1]}}"#,
                "must be a text or a number",
            ),
            (
                r#"{"computation":"convert","inputs":{"length":1}}"#,
                "has no unit",
            ),
            (
                r#"{"computation":"covert","inputs":{}}"#,
                "no computation “covert”",
            ),
            (long.as_str(), "longer than 4000000 bytes"),
        ] {
            let (tally, answers) = answers(format!("{line}\n{good}\n").as_bytes());
            assert_eq!(tally, Tally { all: 2, bad: 1 }, "{says}");
            let why = answers[0]["error"].as_str().unwrap();
            assert!(why.contains(says), "{why}");
            assert_eq!(answers[1]["outputs"]["length"]["m"], 0.3048);
        }
        assert_eq!(answers(b"\xff\xfe\n").0, Tally { all: 1, bad: 1 });
        assert_eq!(answers(b"").0, Tally::default());
    }
}
