//! The command line: one verb for each thing that a person asks of the binary.

use std::fs::File;
use std::io::{BufReader, ErrorKind, Write};
use std::net::{SocketAddr, TcpListener};
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use actix_web::rt::System;
use clap::{Args, Parser, Subcommand};

use crate::config::{Config, Pace};
use crate::error::StartError;
use crate::hub::Wifi;
use crate::report::Kind;
use crate::store::{self, DataFolder};
use crate::terminal::{say, welcome};
use crate::{Started, compute, demo, examples, export, http, site_file};

mod check;
mod look_back;
mod site_out;

/// How long a killed hub's port may linger before it counts as taken.
const PORT_PATIENCE: Duration = Duration::from_secs(3);
/// Between two tries at a port.
const PORT_PAUSE: Duration = Duration::from_millis(100);

/// The crew's shared board, on the laptop in the truck.
#[derive(Debug, Parser)]
#[command(name = "rodcall", version, about, arg_required_else_help = true)]
pub struct Cli {
    #[command(subcommand)]
    verb: Verb,
}

#[derive(Debug, Subcommand)]
enum Verb {
    /// Run the hub for a site.
    Serve {
        /// The site file.
        #[arg(long)]
        site: PathBuf,
        /// The folder that keeps the log.
        #[arg(long, env = "RODCALL_DATA")]
        data: PathBuf,
        #[command(flatten)]
        network: Network,
    },
    /// Run the hub on an invented site, with a simulated crew at work.
    Demo {
        /// Hub seconds in a second, or `step` to play the day as fast as it goes.
        #[arg(long, default_value = "60")]
        speed: String,
        /// The folder that keeps the log.
        #[arg(long, default_value = "rodcall-demo")]
        data: PathBuf,
        #[command(flatten)]
        network: Network,
    },
    /// Name every fault of a site file, with its line.
    Check {
        /// The site file.
        file: PathBuf,
        /// Print what each mark is dug to.
        #[arg(long)]
        list: bool,
        /// A data folder: what the file would change of the site in force there, and what it would undo.
        #[arg(long)]
        data: Option<PathBuf>,
    },
    /// Prove that a data folder or an export is untouched, with its photos.
    Verify {
        /// The data folder, or the exported file.
        path: PathBuf,
    },
    /// Write the whole log into one file that proves itself.
    Export {
        /// The data folder.
        #[arg(long, env = "RODCALL_DATA")]
        data: PathBuf,
        /// The file to write; the terminal when left out.
        out: Option<PathBuf>,
    },
    /// Take an exported log into a new data folder.
    Import {
        /// The exported file.
        file: PathBuf,
        /// The new data folder.
        #[arg(long, env = "RODCALL_DATA")]
        data: PathBuf,
    },
    /// Write the log as a table.
    Csv {
        /// The data folder.
        #[arg(long, env = "RODCALL_DATA")]
        data: PathBuf,
        /// The file to write; the terminal when left out.
        out: Option<PathBuf>,
    },
    /// Write a sheet that prints and opens without the hub; it carries the head of the chain.
    Report {
        /// The data folder; a hub may be running on it.
        #[arg(long, env = "RODCALL_DATA")]
        data: PathBuf,
        /// The day; the newest when left out.
        #[arg(long)]
        day: Option<String>,
        /// Which sheet.
        #[arg(long, value_enum, default_value = "day")]
        kind: Kind,
        /// `en` or `es`.
        #[arg(long, default_value = "en")]
        language: String,
        /// The file to write; the terminal when left out.
        out: Option<PathBuf>,
    },
    /// Write a day as tables for a spreadsheet, and its as-built points as `LandXML`.
    Tables {
        /// The data folder; a hub may be running on it.
        #[arg(long, env = "RODCALL_DATA")]
        data: PathBuf,
        /// The day; the newest when left out.
        #[arg(long)]
        day: Option<String>,
        /// The folder to write them into; nothing in it is overwritten.
        out: PathBuf,
    },
    /// Put a day by: a folder of sheets, tables and the log with its photos, that opens without the hub.
    Archive {
        /// The data folder; a hub may be running on it.
        #[arg(long, env = "RODCALL_DATA")]
        data: PathBuf,
        /// The day; the newest when left out.
        #[arg(long)]
        day: Option<String>,
        /// The folder to write; it must not be there yet.
        out: PathBuf,
    },
    /// Try whether everything would come back: export, import into a scratch folder, prove, compare every sheet.
    TryRestore {
        /// The data folder; a hub may be running on it.
        #[arg(long, env = "RODCALL_DATA")]
        data: PathBuf,
    },
    /// Write the site in force as files: the site file, its surfaces as `LandXML`, its marks as a table.
    ExportSite {
        /// The data folder.
        #[arg(long, env = "RODCALL_DATA")]
        data: PathBuf,
        /// The folder to write them into; nothing in it is overwritten.
        out: PathBuf,
    },
    /// Work out cases and compare them with what they expect.
    Examples {
        /// Files of cases.
        #[arg(required = true)]
        files: Vec<PathBuf>,
    },
    /// Work out one computation for each line of JSON, and answer each with a line of JSON.
    Compute {
        /// The lines; the terminal's input when left out.
        file: Option<PathBuf>,
    },
    /// Print the contract of the wire, an `OpenAPI` 3.1 document.
    Openapi,
    /// Make the index anew from the log.
    Rebuild {
        /// The data folder.
        #[arg(long, env = "RODCALL_DATA")]
        data: PathBuf,
    },
}

#[derive(Debug, Args)]
struct Network {
    /// Where to listen; 0.0.0.0 is every address of this laptop, port 0 a free one.
    #[arg(long, default_value = "0.0.0.0:8080", env = "RODCALL_LISTEN")]
    listen: SocketAddr,
    /// The name of the truck's Wi-Fi, for a code that joins it.
    #[arg(long, env = "RODCALL_WIFI_NAME")]
    wifi_name: Option<String>,
    /// Its password; better in the environment than on the command line.
    #[arg(
        long,
        env = "RODCALL_WIFI_PASSWORD",
        hide_env_values = true,
        requires = "wifi_name"
    )]
    wifi_password: Option<String>,
}

impl Network {
    fn wifi(&self) -> Option<Wifi> {
        Some(Wifi {
            ssid: self.wifi_name.clone()?,
            password: self.wifi_password.clone().unwrap_or_default(),
        })
    }
}

impl Cli {
    /// Does what was asked.
    ///
    /// # Errors
    /// [`StartError`], for the person at the terminal.
    pub fn run(self) -> Result<(), StartError> {
        match self.verb {
            Verb::Serve {
                site,
                data,
                network,
            } => serve(&site, data, &network),
            Verb::Demo {
                speed,
                data,
                network,
            } => play(&speed, data, &network),
            Verb::Check { file, list, data } => check::check(&file, list, data.as_deref()),
            Verb::Verify { path } => verify(&path),
            Verb::Export { data, out } => write(out.as_deref(), |out| export::export(&data, out)),
            Verb::Csv { data, out } => write(out.as_deref(), |out| export::table(&data, out)),
            Verb::Report {
                data,
                day,
                kind,
                language,
                out,
            } => look_back::report(&data, day.as_deref(), kind, &language, out.as_deref()),
            Verb::Tables { data, day, out } => look_back::tables(&data, day.as_deref(), &out),
            Verb::Archive { data, day, out } => look_back::put_by(&data, day.as_deref(), &out),
            Verb::TryRestore { data } => look_back::try_restore(&data),
            Verb::ExportSite { data, out } => site_out::write(&data, &out),
            Verb::Import { file, data } => import(&file, &data),
            Verb::Examples { files } => work_out(&files),
            Verb::Compute { file } => work_out_lines(file.as_deref()),
            Verb::Openapi => {
                say(http::openapi::TEXT.trim_end());
                Ok(())
            }
            Verb::Rebuild { data } => rebuild(&data),
        }
    }
}

fn serve(site: &Path, data: PathBuf, network: &Network) -> Result<(), StartError> {
    let config = Config {
        site: site_file::read(site)?,
        data,
        listen: network.listen,
        pace: Pace::Real,
        day: None,
        wifi: network.wifi(),
    };
    up(config, |_| {})
}

fn play(speed: &str, data: PathBuf, network: &Network) -> Result<(), StartError> {
    let start = demo::start();
    let pace = if speed == "step" {
        Pace::Stepped { start }
    } else {
        let faster = speed
            .parse::<f64>()
            .ok()
            .filter(|speed| (0.1..=1_000.0).contains(speed));
        let speed = faster.ok_or_else(|| {
            StartError::Asked(format!(
                "--speed {speed}: give a number from 0.1 to 1000, or the word step."
            ))
        })?;
        let skips = demo::skips().map_err(|error| StartError::Asked(error.to_string()))?;
        Pace::Fast {
            start,
            speed,
            skips,
        }
    };
    let config = Config {
        site: site_file::read_text("the demo's site.toml", demo::SITE_FILE, &demo::beside)?,
        data,
        listen: network.listen,
        pace,
        day: Some("2030-05-14".to_owned()),
        wifi: network.wifi(),
    };
    up(config, |up| {
        actix_web::rt::spawn(async move {
            if let Err(error) = demo::play(&up.base, &up.own, up.clock).await {
                say(&format!("The demo's crew stops: {error}"));
            }
        });
    })
}

fn up(config: Config, play: impl FnOnce(Started)) -> Result<(), StartError> {
    let listen = config.listen;
    let listener = bind(listen)?;
    System::new().block_on(async move {
        let stop = stop_signal()?;
        let stop = async {
            stop.await;
            say("Closing. Phones keep what they have not sent, and send it when the hub is back.");
        };
        crate::run(config, listener, stop, |hub, up| {
            welcome(hub, &up);
            play(up);
        })
        .await
    })
}

/// Listens; tries again for a while, because a killed hub's port lingers for a moment.
fn bind(listen: SocketAddr) -> Result<TcpListener, StartError> {
    let began = Instant::now();
    loop {
        match TcpListener::bind(listen) {
            Ok(listener) => return Ok(listener),
            Err(error) if error.kind() != ErrorKind::AddrInUse => {
                return Err(StartError::Listen {
                    listen,
                    source: error,
                });
            }
            Err(_) if began.elapsed() < PORT_PATIENCE => std::thread::sleep(PORT_PAUSE),
            Err(_) => return Err(StartError::PortTaken { listen }),
        }
    }
}

/// Done when the person or the system wants the hub to stop.
#[cfg(unix)]
fn stop_signal() -> Result<impl Future<Output = ()>, std::io::Error> {
    use tokio::signal::unix::{SignalKind, signal};
    let mut terminate = signal(SignalKind::terminate())?;
    let mut interrupt = signal(SignalKind::interrupt())?;
    Ok(async move {
        tokio::select! {
            _ = terminate.recv() => {}
            _ = interrupt.recv() => {}
        }
    })
}

/// Done when the person wants the hub to stop.
#[cfg(not(unix))]
#[expect(
    clippy::unnecessary_wraps,
    reason = "elsewhere a signal may be refused"
)]
fn stop_signal() -> Result<impl Future<Output = ()>, std::io::Error> {
    Ok(async {
        // Without the signal the hub can still be ended by the system.
        let _ = tokio::signal::ctrl_c().await;
    })
}

fn verify(path: &Path) -> Result<(), StartError> {
    let proof = export::verify(path)?;
    if proof.first > 1 {
        say(&format!(
            "This file begins with entry {}: what came before is not in it and not proven by it.",
            proof.first
        ));
    }
    say(&format!(
        "{}: untouched. Entries {} to {}, head {}.{}",
        path.display(),
        proof.first,
        proof.head.seq,
        proof.head.hash,
        photos(proof.photos)
    ));
    Ok(())
}

/// A word about photos, where there are any.
fn photos(many: usize) -> String {
    match many {
        0 => String::new(),
        1 => " 1 photo.".to_owned(),
        many => format!(" {many} photos."),
    }
}

fn import(file: &Path, data: &Path) -> Result<(), StartError> {
    let folder = DataFolder::take(data)?;
    let imported = export::import(file, &folder)?;
    store::rebuild(&folder)?;
    say(&format!(
        "Imported {} entries into {}, head {}.{}",
        imported.head.seq,
        data.display(),
        imported.head.hash,
        photos(imported.photos)
    ));
    if let Some(missing) = imported.missing {
        say(&format!("Not every photo came with it. {missing}."));
    }
    Ok(())
}

fn rebuild(data: &Path) -> Result<(), StartError> {
    let folder = DataFolder::take(data)?;
    let head = store::rebuild(&folder)?;
    say(&format!(
        "The index is made anew from {} entries.",
        head.seq
    ));
    Ok(())
}

fn write(
    out: Option<&Path>,
    write: impl FnOnce(&mut dyn Write) -> Result<(), export::ExportError>,
) -> Result<(), StartError> {
    let Some(path) = out else {
        return Ok(write(&mut std::io::stdout().lock())?);
    };
    let mut file = File::create_new(path).map_err(|source| StartError::Write {
        path: path.to_owned(),
        source,
    })?;
    write(&mut file)?;
    file.sync_all().map_err(|source| StartError::Write {
        path: path.to_owned(),
        source,
    })
}

/// Every file is worked out, and every case that does not hold is shown, before the first of them counts.
fn work_out(files: &[PathBuf]) -> Result<(), StartError> {
    let (mut bad, mut all) = (0, 0);
    let mut counts = examples::Counts::default();
    for file in files {
        let report = examples::run_file(file)?;
        say(report.to_string().trim_end());
        bad += report.failed() + report.malformed.len();
        all += report.ran.len() + report.malformed.len();
        counts.add_all(report.counts());
    }
    say(&format!("{all} cases: {counts}."));
    if bad > 0 {
        return Err(StartError::Examples { bad, all });
    }
    Ok(())
}

/// Every line is answered before the first that could not be counts.
fn work_out_lines(file: Option<&Path>) -> Result<(), StartError> {
    let out = std::io::stdout().lock();
    let tally = match file {
        None => compute::run(std::io::stdin().lock(), out)?,
        Some(path) => {
            let file = File::open(path).map_err(|error| {
                StartError::Asked(format!(
                    "{} can't be read ({error}). Check the path and who may read it.",
                    path.display()
                ))
            })?;
            compute::run(BufReader::new(file), out)?
        }
    };
    if tally.bad > 0 {
        return Err(StartError::Asked(format!(
            "{} of {} lines could not be worked out; each says why.",
            tally.bad, tally.all
        )));
    }
    Ok(())
}
