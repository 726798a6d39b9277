/** The wire as the hub describes it. Generated from hub/server/openapi.json by `npm run types`; never edited. */
export interface components {
  schemas: {
    Length: number;
    Time: number;
    Point: { x: number; y: number };
    Role: "ground" | "operator" | "supervisor" | "visitor" | "hub";
    Language: "english" | "spanish";
    ScreenUnit: "tenths" | "feet_inches" | "millimetres";
    RodUnit: "feet_hundredths" | "feet_inches_eighths" | "metres";
    Rod: { id: string; unit: components["schemas"]["RodUnit"]; length: number; joints: number[]; bracket: number };
    Tolerance: { high: number; low: number };
    Verdict: "high" | "on" | "low" | "too_close_high" | "too_close_low";
    Check: "good" | "again" | "failed";
    QuickWord: "more" | "a_little" | "there" | "too_deep" | "come_to_me" | "look_here";
    Mode: "rod" | "receiver_high" | "receiver_low";
    Care: "fine" | "coarse" | "by_eye" | "muddy";
    CantReason: "hard_ground" | "water" | "pipe" | "line" | "face" | "other";
    Ruling: "leave" | "patch" | "trim";
    Label: "one_benchmark" | "high_by_rule" | "by_ruling" | "confirmed";
    MachineShape: "square" | "triangle" | "circle" | "diamond";
    Nearness:
      | { kind: "outside"; by: number }
      | { kind: "inside"; by: number }
      | { kind: "place_unknown" }
      | { kind: "place_old" };
    CallText: {
      language: components["schemas"]["Language"];
      unit: components["schemas"]["ScreenUnit"];
      word: string;
      amount: string;
      unit_word: string;
      warning: string;
      exact: string;
      spoken: string;
      line: string;
    };
    Amount: { half_tenths: number } | { tenths_of_feet: number };
    Correction:
      | { down: components["schemas"]["Amount"] }
      | { shave: components["schemas"]["Amount"] }
      | { up: components["schemas"]["Amount"] }
      | "grade"
      | "wait";
    Message:
      | {
          kind: "measured";
          correction: components["schemas"]["Correction"];
          dev: number;
          amount: number;
          verdict: components["schemas"]["Verdict"];
        }
      | { kind: "by_eye"; word: components["schemas"]["QuickWord"] };
    Ending:
      | "superseded"
      | "done"
      | "stale_by_age"
      | "grade_ran_out"
      | "stale_by_laser"
      | "stale_by_target"
      | "restated"
      | "withdrawn"
      | "refused"
      | "new_screen"
      | "ruled";
    CallState:
      | { kind: "sent" }
      | { kind: "delivered" }
      | { kind: "shown" }
      | { kind: "got" }
      | { kind: "ended"; how: components["schemas"]["Ending"] };
    Reminder: { who: string; mark: string; nearness: components["schemas"]["Nearness"]; loud: boolean };
    CallView: {
      id: number;
      machine: string;
      mark?: string | null;
      target?: string | null;
      message: components["schemas"]["Message"];
      texts: components["schemas"]["CallText"][];
      labels: components["schemas"]["Label"][];
      by: string;
      made_at: number;
      sent_at: number;
      stale_at: number;
      state: components["schemas"]["CallState"];
      delivered_at?: number | null;
      shown_at?: number | null;
      got_at?: number | null;
      witness?: string | null;
      reminder?: components["schemas"]["Reminder"] | null;
    };
    DoubtReason: { kind: "failed_check"; benchmark: string; residual: number } | { kind: "bumped"; by: string };
    CabScreen:
      | { kind: "stop"; by: string; why: string; since: number; all: boolean }
      | { kind: "pause"; set_up: string; why: components["schemas"]["DoubtReason"]; since: number }
      | { kind: "new_target"; target: string; name: string; revision: number; since: number }
      | { kind: "call"; call: components["schemas"]["CallView"] }
      | { kind: "old"; mark?: string | null; why: components["schemas"]["Ending"]; since: number }
      | { kind: "no_call" };
    OperatorView: {
      site: string;
      day: string;
      machine: string;
      shape: components["schemas"]["MachineShape"];
      works_on: string[];
      direction: string;
      device?: string | null;
      screen: components["schemas"]["CabScreen"];
      look_asked_at?: number | null;
    };
    ScreenCard:
      | { kind: "none" }
      | { kind: "showing"; person: string }
      | { kind: "hidden"; person: string; since: number }
      | { kind: "lost"; person: string; since: number };
    StopCard: { by: string; why: string; since: number; all: boolean };
    CantCard: { why: components["schemas"]["CantReason"]; mark?: string | null; at: number };
    PlaceCard: { at: components["schemas"]["Point"]; since: number; by: string };
    MachineCard: {
      id: string;
      shape: components["schemas"]["MachineShape"];
      works_on: string[];
      call?: components["schemas"]["CallView"] | null;
      screen: components["schemas"]["ScreenCard"];
      stop?: components["schemas"]["StopCard"] | null;
      paused_by?: string | null;
      must_see?: string | null;
      look_asked_at?: number | null;
      cant?: components["schemas"]["CantCard"] | null;
      place?: components["schemas"]["PlaceCard"] | null;
      keep_out: number;
    };
    Proof:
      | { kind: "second_benchmark"; benchmark: string }
      | { kind: "two_benchmarks"; first: string; second: string }
      | { kind: "levelled_again"; disagreement: number }
      | { kind: "one_benchmark" };
    SetUpState:
      | { kind: "unproven" }
      | { kind: "proven"; proof: components["schemas"]["Proof"] }
      | { kind: "in_doubt"; why: components["schemas"]["DoubtReason"]; since: number; agreed: string[] };
    CheckCard: { benchmark: string; residual: number; at: number; check: components["schemas"]["Check"] };
    SetUpCard: {
      id: string;
      laser: string;
      height: number;
      benchmark: string;
      place?: components["schemas"]["Point"] | null;
      state: components["schemas"]["SetUpState"];
      last_check?: components["schemas"]["CheckCard"] | null;
      readings_since_check: number;
    };
    MarkCard: {
      id: string;
      reading: number;
      elevation: number;
      dev?: number | null;
      verdict?: components["schemas"]["Verdict"] | null;
      ruling?: components["schemas"]["Ruling"] | null;
      needs_ruling: boolean;
      at: number;
      by: string;
      set_up: string;
    };
    Shot: {
      mark: string;
      set_up: string;
      grade_rod?: number | null;
      guard: number;
      nearness: components["schemas"]["Nearness"];
    };
    GroundView: {
      site: string;
      day: string;
      machines: components["schemas"]["MachineCard"][];
      set_ups: components["schemas"]["SetUpCard"][];
      marks: components["schemas"]["MarkCard"][];
      shots: components["schemas"]["Shot"][];
    };
    ExceptionKind:
      | { kind: "stopped"; machine: string; by: string; why: string }
      | { kind: "laser_in_doubt"; set_up: string }
      | { kind: "needs_ruling"; mark: string; dev: number }
      | {
          kind: "cant";
          machine: string;
          why: components["schemas"]["CantReason"];
          mark?: string | null;
        }
      | { kind: "screen_not_showing"; machine: string }
      | { kind: "site_changed" }
      | { kind: "target_not_seen"; machine: string; target: string }
      | { kind: "look_asked"; machine: string };
    Exception: { since: number; what: components["schemas"]["ExceptionKind"] };
    PersonCard: {
      device: string;
      person: string;
      roles: components["schemas"]["Role"][];
      machine?: string | null;
      since: number;
    };
    SiteDifference: { what: string; was?: string | null; now?: string | null };
    SiteChangeCard: { digest: string; differences: components["schemas"]["SiteDifference"][]; since: number };
    AimCard: { on: string; aim: number };
    SupervisorView: {
      site: string;
      day: string;
      machines: components["schemas"]["MachineCard"][];
      set_ups: components["schemas"]["SetUpCard"][];
      exceptions: components["schemas"]["Exception"][];
      people: components["schemas"]["PersonCard"][];
      marks: components["schemas"]["MarkCard"][];
      site_change?: components["schemas"]["SiteChangeCard"] | null;
      codes_generation: number;
      aims: components["schemas"]["AimCard"][];
    };
    DigTo: { at: number } | { near_step: { station: number; before: number; after: number } };
    SheetMark: {
      id: string;
      place: components["schemas"]["Point"];
      target?: string | null;
      machine?: string | null;
      dig_to?: components["schemas"]["DigTo"] | null;
      no_grade?: string | null;
      tolerance?: components["schemas"]["Tolerance"] | null;
      aim: number;
      station?: number | null;
      offset?: number | null;
      note: string;
    };
    Layer: { name: string; thickness: number };
    Stack: { surface: string; layers: components["schemas"]["Layer"][] };
    Step: { from: number; elevation: number; window: number };
    Shape:
      | { kind: "flat"; elevation: number }
      | {
          kind: "plane";
          through: components["schemas"]["Point"];
          elevation: number;
          rise_east: number;
          rise_north: number;
        }
      | {
          kind: "run";
          start: components["schemas"]["Point"];
          toward: components["schemas"]["Point"];
          length: number;
          left: number;
          right: number;
          steps: components["schemas"]["Step"][];
        };
    Target: {
      shape: components["schemas"]["Shape"];
      stack: components["schemas"]["Stack"];
      within?: components["schemas"]["Point"][] | null;
    };
    SiteTarget: {
      id: string;
      name: string;
      grade: components["schemas"]["Target"];
      tolerance: components["schemas"]["Tolerance"];
      guard_factor: number;
      revision: number;
    };
    Benchmark: {
      id: string;
      elevation: number;
      place?: components["schemas"]["Point"] | null;
      doubt: number;
      note: string;
    };
    Laser: { id: string; doubt_per_100_ft: number };
    Machine: { id: string; shape: components["schemas"]["MachineShape"]; works_on: string[]; direction: string };
    SheetView: {
      site: string;
      day: string;
      marks: components["schemas"]["SheetMark"][];
      targets: components["schemas"]["SiteTarget"][];
      benchmarks: components["schemas"]["Benchmark"][];
      rods: components["schemas"]["Rod"][];
      lasers: components["schemas"]["Laser"][];
      machines: components["schemas"]["Machine"][];
    };
    Perhaps:
      | { kind: "reading"; value: number }
      | { kind: "feet_inches"; rod?: string | null; feet: number; inches: number }
      | { kind: "mark"; id: string };
    Doubt:
      | { kind: "which_way" }
      | { kind: "ground_rose"; by: number; perhaps: components["schemas"]["Perhaps"][] }
      | { kind: "repeat_off"; by: number }
      | { kind: "other_mark"; perhaps: string }
      | { kind: "far_below"; by: number; perhaps: components["schemas"]["Perhaps"][] };
    Question:
      | { kind: "does_not_fit"; doubt: components["schemas"]["Doubt"] }
      | { kind: "far_from_grade"; dev: number }
      | { kind: "other_machine"; assigned: string }
      | { kind: "which_is_right"; spread: number };
    Slip:
      | { kind: "other_benchmark"; used: string; perhaps: string }
      | { kind: "whole_foot" }
      | { kind: "tenth" }
      | { kind: "digits_swapped"; typed: number; perhaps: number }
      | { kind: "bracket" }
      | { kind: "rod_section" }
      | { kind: "inches_as_tenths"; typed: number; perhaps: number };
    SpotReason: "no_target" | "no_machine" | "set_up_in_doubt" | "set_up_closed";
    LateReason: { kind: "newer_reading"; by: string } | { kind: "too_old"; ms: number };
    StepSide: "before" | "after";
    Outcome:
      | { kind: "done" }
      | {
          kind: "called";
          call: number;
          machine: string;
          english: string;
          spanish: string;
          verdict?: components["schemas"]["Verdict"] | null;
        }
      | {
          kind: "asked";
          reading: number;
          question: components["schemas"]["Question"];
          dev?: number | null;
        }
      | { kind: "needs_ruling"; dev: number }
      | { kind: "spot"; elevation: number; why: components["schemas"]["SpotReason"] }
      | { kind: "late"; why: components["schemas"]["LateReason"] }
      | { kind: "set_up"; set_up: string; height: number }
      | { kind: "proven"; set_up: string }
      | {
          kind: "checked";
          residual: number;
          check: components["schemas"]["Check"];
          slips: components["schemas"]["Slip"][];
          usable: boolean;
        }
      | { kind: "joined"; device: string };
    Answer: { first: number; last: number; outcome: components["schemas"]["Outcome"] };
  };
}
