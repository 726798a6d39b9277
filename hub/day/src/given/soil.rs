//! A soil test that is passed.

use crate::asked::Command;
use crate::said::soil_test::{SoilTest, TestSoil};

/// A soil test at a mark, passed.
pub fn soil_test(mark: &str) -> Command {
    Command::TestSoil(TestSoil {
        mark: mark.into(),
        tester: "HF".into(),
        test: Box::new(SoilTest::Bearing {
            stated_psf: 3_100.0,
            asked_psf: Some(2_500.0),
        }),
        lift: None,
        patch: None,
        undercut: None,
        note: String::new(),
    })
}
