//! For tests: a small site, and a day that is told as given – when – then.

#![allow(
    clippy::unwrap_used,
    clippy::missing_errors_doc,
    reason = "it serves tests alone, of this crate and of `show`"
)]

use earthwork::keep_out::Reach;
use earthwork::length::{Length, parse};
use earthwork::machine::Geometry;
use earthwork::point::Point;
use earthwork::rod::{Rod, RodUnit};
use earthwork::slip::Mode;
use earthwork::target::{Layer, Run, Shape, Stack, Step, Target as Grade};
use earthwork::tolerance::Tolerance;
use earthwork::uncertainty::{Care, Surface};
use earthwork::words::ScreenUnit;
use words::Language;

use crate::answer::{self, Answer};
use crate::asked::{Asked, By, Command, Role};
use crate::entry::{Body, Entry};
use crate::refusal::Refusal;
use crate::said::check_shot::ShootCheck;
use crate::said::day::OpenDay;
use crate::said::join::Join;
use crate::said::machine::PlaceMachine;
use crate::said::person::ConfirmPerson;
use crate::said::prices::SetPrices;
use crate::said::reading::TakeReading;
use crate::said::set_up::SetUpLaser;
use crate::said::site::ReadSite;
use crate::site::{Benchmark, Laser, Machine, MachineShape, Mark, Rules, Site, Target};
use crate::state::State;
use crate::time::{Time, seconds};
use crate::{Following, apply, decide, next_deadline, on_deadline};

mod cuts;
mod prices;
mod soil;

pub use cuts::flat_zone;
pub use prices::prices;
pub use soil::soil_test;

/// A length as a person writes it.
pub fn len(text: &str) -> Length {
    parse(text).unwrap()
}

/// A point in feet.
pub fn at(x: &str, y: &str) -> Point {
    Point {
        x: len(x),
        y: len(y),
    }
}

fn target(id: &str, shape: Shape, surface: &str) -> Target {
    Target {
        id: id.into(),
        name: format!("{id} target"),
        grade: Grade {
            shape,
            stack: Stack {
                surface: surface.into(),
                layers: vec![Layer {
                    name: "gravel".into(),
                    thickness: len("0.50 ft"),
                }],
            },
            within: None,
            undercuts: vec![],
        },
        tolerance: Tolerance::new(len("0.10 ft"), len("0.20 ft")).unwrap(),
        guard_factor: 1.0,
        revision: 1,
        typed_by: None,
        proved_by: Some("PN".into()),
    }
}

fn targets() -> Vec<Target> {
    let pad = Shape::Flat {
        elevation: len("100.50 ft"),
    };
    let step = |from: &str, elevation: &str| Step {
        from: len(from),
        elevation: len(elevation),
        window: len("0.25 ft"),
    };
    let run = Shape::Run(Run {
        start: at("0 ft", "50 ft"),
        toward: at("100 ft", "50 ft"),
        length: len("40 ft"),
        left: len("3 ft"),
        right: len("3 ft"),
        steps: vec![step("0 ft", "98.50 ft"), step("20 ft", "97.50 ft")],
    });
    vec![
        target("PAD", pad, "top of slab"),
        target("RUN", run, "top of gravel"),
    ]
}

fn mark(id: &str, x: &str, y: &str, target: Option<&str>) -> Mark {
    Mark {
        id: id.into(),
        place: at(x, y),
        target: target.map(Into::into),
        station: None,
        offset: None,
        surface: Surface::Trimmed,
        note: String::new(),
    }
}

fn machine(id: &str, shape: MachineShape, works_on: &str) -> Machine {
    Machine {
        id: id.into(),
        shape,
        reach: Reach {
            reach_at_ground: len("27.8 ft"),
            tail_radius: len("7 ft"),
            track_width: len("8.2 ft"),
        },
        geometry: Geometry::default(),
        works_on: vec![works_on.into()],
        direction: "north".into(),
    }
}

fn benchmark(id: &str, elevation: &str, x: &str) -> Benchmark {
    Benchmark {
        id: id.into(),
        elevation: len(elevation),
        place: Some(at(x, "0 ft")),
        doubt: len("0.005 ft"),
        note: String::new(),
    }
}

fn rod(id: &str, unit: RodUnit, length: &str) -> Rod {
    Rod {
        id: id.into(),
        unit,
        length: len(length),
        joints: vec![],
        bracket: Length::ZERO,
    }
}

/// Two benchmarks, a flat pad at 100.00, a stepped run at 98.00 and 97.00, two machines. Invented.
pub fn site() -> Site {
    Site {
        tolerance: None,
        name: "Test yard".into(),
        benchmarks: vec![
            benchmark("BM-1", "100.00 ft", "0 ft"),
            benchmark("BM-2", "101.52 ft", "80 ft"),
        ],
        lines: vec![],
        targets: targets(),
        marks: vec![
            mark("P-1", "30 ft", "20 ft", Some("PAD")),
            mark("P-2", "40 ft", "20 ft", Some("PAD")),
            mark("R-1", "10 ft", "50 ft", Some("RUN")),
            mark("R-2", "19 ft", "50 ft", Some("RUN")),
            mark("R-3", "21 ft", "50 ft", Some("RUN")),
            mark("R-4", "20.2 ft", "50 ft", Some("RUN")),
            mark("S-1", "90 ft", "90 ft", None),
        ],
        machines: vec![
            machine("EX-1", MachineShape::Square, "PAD"),
            machine("EX-2", MachineShape::Triangle, "RUN"),
        ],
        rods: vec![
            rod("A", RodUnit::FeetHundredths, "13 ft"),
            rod("B", RodUnit::FeetInchesEighths, "16 ft"),
        ],
        lasers: vec![Laser {
            id: "L1".into(),
            doubt_per_100_ft: len("0.005 ft"),
        }],
        rules: Rules::default(),
        frame: None,
        prices: None,
        cuts: crate::cuts::plan::Cuts::default(),
    }
}

/// A digging crew with that price list.
pub fn priced() -> Crew {
    let mut crew = Crew::digging();
    let prices = Box::new(prices());
    crew.says(&supervisor(), Command::SetPrices(SetPrices { prices }))
        .unwrap();
    crew
}

/// A crew that talks to the day, on a clock that it turns itself.
#[derive(Clone)]
pub struct Crew {
    /// What is current.
    pub state: State,
    /// The hub's clock.
    pub now: Time,
    /// Every entry so far.
    pub log: Vec<Entry>,
    head: String,
    keys: u64,
}

impl Crew {
    /// A day is open and the site is read.
    pub fn opened() -> Self {
        Self::opened_on(site())
    }

    /// A day is open and that site is read.
    pub fn opened_on(site: Site) -> Self {
        let mut crew = Self {
            state: State::default(),
            now: Time(1_900_000_000_000),
            log: vec![],
            head: crate::chain::GENESIS.into(),
            keys: 0,
        };
        let day = OpenDay {
            day: "2030-05-14".into(),
        };
        crew.says(&By::hub(), Command::OpenDay(day)).unwrap();
        crew.says(&By::hub(), Command::ReadSite(ReadSite { site }))
            .unwrap();
        crew
    }

    /// Both cabs have a phone, the laser is proven, both machines stand far from the marks.
    pub fn digging() -> Self {
        Self::digging_on(site())
    }

    /// The same on another site.
    pub fn digging_on(site: Site) -> Self {
        let mut crew = Self::opened_on(site);
        for (device, machine) in [("m1", "EX-1"), ("m2", "EX-2")] {
            crew.says(
                &By::hub(),
                Command::Join(Join {
                    device: device.into(),
                    token_digest: String::new(),
                    person: "OP".into(),
                    roles: vec![Role::Operator],
                    machine: Some(machine.into()),
                    language: Language::English,
                    unit: ScreenUnit::Tenths,
                    same_person: true,
                    handset: None,
                }),
            )
            .unwrap();
            crew.place(machine, "900 ft", "900 ft");
        }
        if crew
            .state
            .site()
            .unwrap()
            .cuts
            .competent
            .contains(&supervisor().person)
        {
            crew.confirms(&supervisor());
        }
        crew.set_up("BM-1", "5.00");
        crew.check("S1", "BM-2", "3.48").unwrap();
        crew
    }

    /// That phone comes in.
    pub fn joins(&mut self, by: &By) -> &mut Self {
        let join = Join {
            device: by.device.clone(),
            token_digest: String::new(),
            person: by.person.clone(),
            roles: by.roles.clone(),
            machine: by.machine.clone(),
            language: Language::English,
            unit: ScreenUnit::Tenths,
            same_person: true,
            handset: None,
        };
        self.says(&By::hub(), Command::Join(join)).unwrap();
        self
    }

    /// That phone comes in, and whoever sits at the laptop confirms whose it is.
    pub fn confirms(&mut self, by: &By) -> &mut Self {
        let confirm = ConfirmPerson {
            device: by.device.clone(),
            person: by.person.clone(),
        };
        let laptop = person("t1", "truck", Role::Supervisor, None);
        self.joins(by);
        self.says(&laptop, Command::ConfirmPerson(confirm)).unwrap();
        self
    }

    /// Lets time go by, with what falls due meanwhile.
    pub fn wait(&mut self, ms: i64) -> &mut Self {
        self.now = self.now.plus_ms(ms);
        while next_deadline(&self.state).is_some_and(|deadline| deadline <= self.now) {
            let bodies = on_deadline(&self.state, self.now);
            assert!(!bodies.is_empty(), "a deadline that ends nothing");
            self.enter(&By::hub(), "", self.now, bodies);
        }
        self
    }

    /// Somebody says something now.
    pub fn says(&mut self, by: &By, command: Command) -> Result<Answer, Refusal> {
        let now = self.now;
        self.said_at(by, command, now)
    }

    /// Somebody says something that was made then.
    pub fn said_at(&mut self, by: &By, command: Command, made_at: Time) -> Result<Answer, Refusal> {
        self.keys += 1;
        let key = format!("key-{}", self.keys);
        let asked = Asked {
            key: key.clone(),
            by: by.clone(),
            made_at,
            command,
        };
        let bodies = decide(&self.state, &asked, self.now, &self.head)?;
        let first = self.log.len();
        self.enter(by, &key, made_at, bodies);
        let fresh = answer::of(&self.log[first..]);
        let kept = crate::answered(&self.state, &by.device, &key);
        assert_eq!(kept.unwrap_or_else(Answer::nothing), fresh);
        Ok(fresh)
    }

    fn enter(&mut self, by: &By, key: &str, made_at: Time, bodies: Vec<Body>) {
        let mut following = Following::new(bodies);
        while let Some(body) = following.next(&self.state) {
            let entry = Entry {
                seq: self.state.seq + 1,
                at: self.now,
                made_at,
                by: by.clone(),
                key: key.to_owned(),
                body,
            };
            apply(&mut self.state, &entry);
            self.head = crate::chain::seal(&entry, &self.head).unwrap().hash;
            self.log.push(entry);
        }
    }

    /// The laser is set up on that benchmark.
    pub fn set_up(&mut self, benchmark: &str, text: &str) {
        self.says(
            &ground(),
            Command::SetUpLaser(SetUpLaser {
                laser: "L1".into(),
                place: Some(at("40 ft", "20 ft")),
                benchmark: benchmark.into(),
                rod: "A".into(),
                text: text.into(),
                slope: None,
            }),
        )
        .unwrap();
    }

    /// A check shot on that benchmark.
    pub fn check(&mut self, set_up: &str, benchmark: &str, text: &str) -> Result<Answer, Refusal> {
        self.says(
            &ground(),
            Command::ShootCheck(ShootCheck {
                set_up: set_up.into(),
                benchmark: benchmark.into(),
                rod: "A".into(),
                text: text.into(),
            }),
        )
    }

    /// Somebody says where a machine stands.
    pub fn place(&mut self, machine: &str, x: &str, y: &str) {
        self.says(
            &ground(),
            Command::PlaceMachine(PlaceMachine {
                machine: machine.into(),
                at: at(x, y),
            }),
        )
        .unwrap();
    }

    /// A reading, two minutes after the last thing that was said, so that no two are one measurement.
    pub fn reads(&mut self, mark: &str, text: &str) -> Result<Answer, Refusal> {
        self.wait(seconds(120));
        self.reads_now(mark, text)
    }

    /// A reading at once.
    pub fn reads_now(&mut self, mark: &str, text: &str) -> Result<Answer, Refusal> {
        self.says(&ground(), Command::TakeReading(reading(mark, text)))
    }
}

/// A plain rod reading.
pub fn reading(mark: &str, text: &str) -> TakeReading {
    TakeReading {
        mark: mark.into(),
        place: None,
        surface: None,
        set_up: "S1".into(),
        rod: "A".into(),
        text: text.into(),
        mode: Mode::Rod,
        care: Care::Coarse,
        machine: None,
        side: None,
        sure: None,
        restates: None,
        rocked: vec![],
        blind: false,
        waited: false,
        paper: None,
    }
}

fn person(device: &str, person: &str, role: Role, machine: Option<&str>) -> By {
    By {
        device: device.into(),
        person: person.into(),
        roles: vec![role],
        machine: machine.map(Into::into),
    }
}

/// RT on the ground.
pub fn ground() -> By {
    person("g1", "RT", Role::Ground, None)
}

/// OP in that cab.
pub fn operator(machine: &str) -> By {
    let device = if machine == "EX-1" { "m1" } else { "m2" };
    person(device, "OP", Role::Operator, Some(machine))
}

/// PN, who supervises.
pub fn supervisor() -> By {
    person("s1", "PN", Role::Supervisor, None)
}
