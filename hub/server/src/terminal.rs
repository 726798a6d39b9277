//! What the terminal says: the address, the codes, and one line that a program can read.

use std::io::{IsTerminal as _, Write as _};

use day::asked::Role;

use crate::Started;
use crate::http::codes;
use crate::hub::Hub;
use crate::join::code::Admits;
use crate::join::qr;

/// A line; a terminal that is gone is no reason to stop.
pub(crate) fn say(line: &str) {
    let mut out = std::io::stdout().lock();
    let _ = writeln!(out, "{line}").and_then(|()| out.flush());
}

/// Everything that a person needs to let the crew in.
pub(crate) fn welcome(hub: &Hub, up: &Started) {
    let board = hub.publish.known();
    say(&format!("Rodcall: {}, day {}.", board.site, board.day));
    let others: Vec<String> = hub
        .addresses
        .candidates()
        .into_iter()
        .map(|known| format!("{} ({})", known.host, known.interface))
        .skip(1)
        .collect();
    say(&format!("Phones reach it at {}.", hub.addresses.base()));
    if !others.is_empty() {
        say(&format!(
            "If they do not, choose another address on the supervisor's page: {}.",
            others.join(", ")
        ));
    }
    if hub.addresses.changed_since_yesterday() {
        say(
            "The address differs from yesterday's: what phones have not sent is still under the old one. Give the laptop its old address if you can.",
        );
    }
    let draws = std::io::stdout().is_terminal();
    if let Some(wifi) = &hub.wifi {
        say(&format!("Wi-Fi {}:", wifi.ssid));
        draw(draws, &qr::wifi(&wifi.ssid, &wifi.password));
    }
    for (admits, url) in codes::links(hub) {
        say(&format!("{:<24} {url}", who(&admits)));
        draw(draws, &url);
    }
    say(&format!(
        "This laptop supervises by {}/own/{}",
        up.base, up.own
    ));
    say(&format!(
        "rodcall ready {} own={}/own/{}",
        up.base, up.base, up.own
    ));
}

fn draw(draws: bool, text: &str) {
    if draws && let Ok(code) = qr::terminal(text) {
        say(&code);
    }
}

fn who(admits: &Admits) -> String {
    if let Some(machine) = &admits.machine {
        return format!("operator of {machine}");
    }
    let roles: Vec<&str> = admits
        .roles
        .iter()
        .map(|role| match role {
            Role::Ground => "ground person",
            Role::Supervisor => "supervisor",
            Role::Operator => "operator",
            Role::Visitor => "visitor",
            Role::Hub => "hub",
        })
        .collect();
    roles.join(" and ")
}
