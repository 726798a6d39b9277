//! Who may say what: each saying names its roles ([`crate::saying::Saying`]).

use crate::asked::{By, Command};
use crate::refusal::Refusal;

/// Refuses what none of the asker's roles allows.
///
/// # Errors
/// [`Refusal::NotAllowed`], naming who may.
pub fn check(by: &By, command: &Command) -> Result<(), Refusal> {
    let allowed = command.roles();
    if allowed.iter().any(|role| by.is(*role)) {
        return Ok(());
    }
    Err(Refusal::NotAllowed {
        roles: allowed.to_vec(),
        machine: None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Role;
    use crate::said::stop::StopAll;

    #[test]
    fn everybody_on_site_can_stop_everything_and_only_a_supervisor_lifts() {
        let stop = Command::StopAll(StopAll { why: String::new() });
        let lift = Command::LiftStop(crate::said::stop::LiftStop {
            machine: None,
            press: u64::MAX,
            why: String::new(),
        });
        for role in [
            Role::Ground,
            Role::Operator,
            Role::Supervisor,
            Role::Visitor,
        ] {
            assert!(stop.roles().contains(&role), "{role:?}");
            assert_eq!(lift.roles().contains(&role), role == Role::Supervisor);
        }
    }

    #[test]
    fn a_refusal_names_who_may() {
        let by = By {
            roles: vec![Role::Visitor],
            ..By::hub()
        };
        let check_me = Command::CheckMe(crate::said::call::CheckMe {});
        assert_eq!(
            check(&by, &check_me),
            Err(Refusal::NotAllowed {
                roles: vec![Role::Operator],
                machine: None
            })
        );
    }
}
