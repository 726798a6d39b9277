//! The site file becomes entries: taken the first time, shown as a difference later, revised on a supervisor's word.

use crate::site::Site;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The hub has read the site file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ReadSite {
    /// What it says.
    pub site: Site,
}

/// A supervisor takes the changed file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ConfirmSite {
    /// The digest of the change as it was shown, so that nothing else is confirmed.
    pub digest: String,
}

/// The first site file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SiteTaken {
    /// The site.
    pub site: Site,
    /// SHA-256 of the site as canonical JSON, in hex.
    pub digest: String,
}

/// The file differs from the site in force; with no differences, it is the same again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SiteChangeFound {
    /// What the file says now.
    pub site: Site,
    /// Its digest.
    pub digest: String,
    /// What differs.
    pub differences: Vec<SiteDifference>,
}

/// A changed site file is in force.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SiteRevised {
    /// The site.
    pub site: Site,
    /// Its digest.
    pub digest: String,
    /// What changed.
    pub differences: Vec<SiteDifference>,
}

/// One thing that differs.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SiteDifference {
    /// Where: `marks N-04 place x`.
    pub what: String,
    /// What it was; none when it is new.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub was: Option<String>,
    /// What it is; none when it is gone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub now: Option<String>,
}
