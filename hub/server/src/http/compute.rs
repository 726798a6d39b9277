//! A sum of the trade, worked out on the hub: layout and levelling that a person would do on the back of a stake.

use std::collections::BTreeMap;

use actix_web::post;
use actix_web::web::{Data, Json};
use contract::ToSchema;
use earthwork::length::{Form, shown_number};
use earthwork::worked::{self, Quantity};
use serde::{Deserialize, Serialize};

use super::auth::{Known, OwnPage};
use super::problem::Problem;
use crate::hub::Hub;

/// A sum to work out: the computations of the worked examples, and their inputs as texts with units.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Sum {
    /// Which.
    pub computation: String,
    /// What goes in, by name.
    pub inputs: BTreeMap<String, String>,
}

/// What a sum comes to, each as a text with its unit.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct SumDone {
    /// By name.
    pub outputs: BTreeMap<String, String>,
}

/// Works out a sum. Nothing is entered in the log: what is decided by it is said as a reading, a mark or an edge.
#[contract::path(
    context_path = "/api",
    request_body = Sum,
    responses(
        (status = 200, body = SumDone),
        (status = 400, body = Problem, description = "What is wrong with which input"),
        (status = 401, body = Problem, description = "Not in"),
        (status = 429, body = Problem, description = "Too many at once")
    )
)]
#[post("/compute")]
pub(crate) async fn compute(
    hub: Data<Hub>,
    known: Known,
    _: OwnPage,
    sum: Json<Sum>,
) -> Result<Json<SumDone>, Problem> {
    if !hub.limits.requests.take(&known.by().device) {
        return Err(Problem::too_many());
    }
    let done = worked::compute(&sum.computation, &sum.inputs)
        .map_err(|error| Problem::malformed(&error.to_string()))?;
    Ok(Json(SumDone {
        outputs: done
            .into_iter()
            .map(|(name, quantity)| (name, text(&quantity)))
            .collect(),
    }))
}

/// A quantity as a person reads it: hundredths of a foot, and fine numbers to three places.
fn text(quantity: &Quantity) -> String {
    let feet = |length: &earthwork::length::Length| length.show(Form::DecimalFeet { places: 2 });
    match quantity {
        Quantity::Length(length) => feet(length),
        Quantity::Lengths(lengths) => lengths.iter().map(feet).collect::<Vec<_>>().join("; "),
        Quantity::Number(number) => shown_number(*number, 3),
        Quantity::Word(word) => word.clone(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use earthwork::length::Length;

    #[test]
    fn a_person_reads_feet_to_the_hundredth() {
        let length = Length::from_thousandths_of_a_foot(49_840);
        assert_eq!(text(&Quantity::Length(length)), "49.84 ft");
        assert_eq!(
            text(&Quantity::Lengths(vec![length, length])),
            "49.84 ft; 49.84 ft"
        );
        assert_eq!(text(&Quantity::Number(0.0364)), "0.036");
    }
}
