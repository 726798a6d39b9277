//! A signaller as the operator sees them: a few strokes, arms in one pose each, arrows for what moves.

use day::said::start_checks::HandSignal;
use maud::{Markup, html};

/// A pose on a field of 120 by 124; the shoulders are at (49, 42) and (71, 42).
struct Pose {
    /// The arm on the left of the drawing, from the shoulder on.
    left: &'static str,
    /// The other arm.
    right: &'static str,
    /// Hands and fingers, thinner than an arm.
    hands: &'static str,
    /// How something moves, with its arrow heads.
    moves: &'static str,
}

const HANGS_LEFT: &str = "M49 42L43 60L43 77";
const OUT_LEFT: &str = "M49 42H16";
const OUT_RIGHT: &str = "M71 42H104";
/// Back and forth, under an arm that is stretched out.
const WAVES_RIGHT: &str = "M82 54Q96 62 110 54M86 51L81 54L86 59M106 51L111 54L106 59";
const WAVES_LEFT: &str = "M38 54Q24 62 10 54M34 51L39 54L34 59M14 51L9 54L14 59";

fn pose(signal: HandSignal) -> Pose {
    match signal {
        HandSignal::Stop => Pose {
            left: HANGS_LEFT,
            right: OUT_RIGHT,
            hands: "M104 42H112",
            moves: WAVES_RIGHT,
        },
        HandSignal::Lower => Pose {
            left: HANGS_LEFT,
            right: "M71 42L84 56L92 72",
            hands: "M92 72L95 84",
            moves: "M103 91A8 4 0 1 1 97 88M98 85L103 88L98 92",
        },
        HandSignal::Raise => Pose {
            left: HANGS_LEFT,
            right: "M71 42H92V22",
            hands: "M92 22V11",
            moves: "M100 7A8 4 0 1 1 94 4M95 1L100 4L95 8",
        },
        HandSignal::Swing => Pose {
            left: HANGS_LEFT,
            right: "M71 42H98",
            hands: "M98 42H112",
            moves: "M82 56H110M104 51L111 56L104 61",
        },
        HandSignal::Travel => Pose {
            left: HANGS_LEFT,
            right: "M71 42H98",
            hands: "M98 44V28",
            moves: "M84 56H112M106 51L113 56L106 61M90 51L83 56L90 61",
        },
        HandSignal::SoMuch => Pose {
            left: "M49 42L60 60L90 70",
            right: "M71 42L82 50L92 42",
            hands: "M90 42H110M90 70H110",
            moves: "M102 46V66M98 50L102 46L106 50M98 62L102 66L106 62",
        },
        HandSignal::Grade => Pose {
            left: HANGS_LEFT,
            right: "M71 42L86 56L88 34",
            hands: "M88 34V29M85 29h6v5h-6z",
            moves: "",
        },
    }
}

/// The figure that gives a signal.
pub(super) fn of(signal: HandSignal) -> Markup {
    draw(&pose(signal))
}

/// Both arms out: stop at once.
pub(super) fn emergency_stop() -> Markup {
    let (stop, waves) = (pose(HandSignal::Stop), format!("{WAVES_LEFT}{WAVES_RIGHT}"));
    strokes(OUT_LEFT, stop.right, "M104 42H112M16 42H8", &waves)
}

fn draw(pose: &Pose) -> Markup {
    strokes(pose.left, pose.right, pose.hands, pose.moves)
}

fn strokes(left: &str, right: &str, hands: &str, moves: &str) -> Markup {
    html! {
        svg viewBox="0 -2 120 128" aria-hidden="true" fill="none" stroke="#000" stroke-linecap="round" stroke-linejoin="round" {
            // Hard hat and head, vest with its stripes, legs.
            circle cx="60" cy="23" r="9.5" stroke-width="2.5" {}
            path d="M46 19H74M50 19A10 10 0 0 1 70 19Z" fill="#000" stroke-width="2.5" {}
            path d="M48 38H72L69 80H51Z" fill="#fff" stroke-width="2.5" {}
            path d="M55 38V80M65 38V80M50 62H70" stroke-width="1.5" {}
            path d="M55 80L53 120M65 80L67 120M53 120H46M67 120H74" stroke-width="5" {}
            path d=(left) stroke-width="6.5" {}
            path d=(right) stroke-width="6.5" {}
            path d=(hands) stroke-width="3.5" {}
            path d=(moves) stroke-width="2" {}
        }
    }
}
