//! The one binary: reads the command line, runs, prints what went wrong.

use std::io::Write as _;
use std::process::ExitCode;

use clap::Parser as _;
use rodcall::cli::Cli;
use tracing_subscriber::EnvFilter;

fn main() -> ExitCode {
    let filter = EnvFilter::try_from_env("RODCALL_LOG").unwrap_or_else(|_| EnvFilter::new("warn"));
    tracing_subscriber::fmt()
        .with_env_filter(filter)
        .with_writer(std::io::stderr)
        .with_target(false)
        .init();
    match Cli::parse().run() {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            // A terminal that is gone can't be told.
            let _ = writeln!(std::io::stderr(), "rodcall: {error}");
            ExitCode::FAILURE
        }
    }
}
