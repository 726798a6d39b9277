/** What needs somebody, worst first, each with the one thing that can be done about it from here. */
import { useState } from "preact/hooks";
import { setUpName } from "../../given_names";
import { InspectPanel } from "../../parts/inspect";
import { Key } from "../../parts/keys";
import { said } from "../../said";
import { ago, apart, feet, signed } from "../../show";
import { me, now } from "../../state";
import type { ExceptionKind, Supervisor } from "../../wire";
import { UndercutPanel } from "./account/soil";
import { cutsWords } from "./cuts_exceptions";
import { SawOutPanel } from "./inside";
import { NearMissPanel } from "./near_miss";
import { DifferencePanel, LiftPanel, RulePanel } from "./panels";
import { type Thing, thingOf } from "./plan/things";
import { SlewPanel } from "./slew";
import { TicketPanel } from "./ticket";
import { t } from "./words";

/** More than this at once helps nobody on a phone; the rest come by a key. */
const MOST = 7;

type Exception = Supervisor["exceptions"][number];

interface ExceptionsProps {
  view: Supervisor;
  /** On the desk, where a thing can be shown: all of them, without the stops, which have a place of their own there. */
  onShow?: (thing: Thing) => void;
}

export function Exceptions({ view, onShow }: ExceptionsProps) {
  const desk = onShow !== undefined;
  const words = t();
  const [all, setAll] = useState(desk);
  const each = view.exceptions.filter((one) => !desk || one.what.kind !== "stopped");
  return (
    <>
      <List view={view} shown={all ? each : each.slice(0, MOST)} none={words.noExceptions} onShow={onShow} />
      {!all && each.length > MOST && <Key onPress={() => setAll(true)}>{words.showAll(each.length)}</Key>}
    </>
  );
}

/** The desk's first place: the machines that stand still by STOP, each to be lifted from here. */
export function Stops({ view }: { view: Supervisor }) {
  const stops = view.exceptions.filter((one) => one.what.kind === "stopped");
  return <List view={view} shown={stops} none={t().desk.noStop} />;
}

interface ListProps {
  view: Supervisor;
  shown: readonly Exception[];
  /** Said when there is none; a panel that is open stays with what was typed when its own goes meanwhile. */
  none: string;
  onShow?: ((thing: Thing) => void) | undefined;
}

function List({ view, shown, none, onShow }: ListProps) {
  const [open, setOpen] = useState<ExceptionKind | null>(null);
  const words = t();
  const close = () => setOpen(null);
  return (
    <>
      {shown.length === 0 && <p>{none}</p>}
      <ol class="lines exceptions">
        {shown.map((one) => (
          <li key={`${one.since}${JSON.stringify(one.what)}`}>
            <span>
              {exceptionWords(one.what)} <small>{words.ago(ago(now.value - one.since))}</small>
            </span>
            <Act what={one.what} view={view} onOpen={setOpen} onShow={onShow} />
          </li>
        ))}
      </ol>
      {open?.kind === "stopped" && (
        <LiftPanel machine={open.machine} stopped={stopped(view)} press={newestPress(view)} onClose={close} />
      )}
      {open?.kind === "near_miss" && <NearMissPanel view={view} number={open.number} onClose={close} />}
      {open?.kind === "can_meet" && <SlewPanel {...open} onClose={close} />}
      {open?.kind === "in_without_link" && <SawOutPanel {...open} onClose={close} />}
      {open?.kind === "needs_ruling" && <RulePanel mark={open.mark} onClose={close} />}
      {open?.kind === "undercut_waits" && <UndercutPanel undercut={open.undercut} onClose={close} />}
      {open?.kind === "ticket_waits" && <TicketPanel card={open.ticket} onClose={close} />}
      {(open?.kind === "face_left" || open?.kind === "inspection_due") && (
        <InspectOf view={view} zone={open.zone} onClose={close} />
      )}
      {open?.kind === "site_changed" && view.site_change && (
        <DifferencePanel change={view.site_change} onClose={close} />
      )}
    </>
  );
}

function InspectOf({ view, zone, onClose }: { view: Supervisor; zone: string; onClose: () => void }) {
  const card = view.cuts.faces.find((one) => one.id === zone);
  return card ? <InspectPanel card={card} onClose={onClose} /> : null;
}

/** The machines that stand still by a STOP. */
function stopped(view: Supervisor): string[] {
  return view.machines.filter((card) => card.stop).map((card) => card.id);
}

/** The newest press of the stops that stand. */
function newestPress(view: Supervisor): number {
  return Math.max(0, ...view.machines.map((card) => card.stop?.press ?? 0));
}

/** The action that each kind has from here; most need somebody on the ground. */
function actOf(what: ExceptionKind, view: Supervisor): string | null {
  const words = t();
  switch (what.kind) {
    case "stopped":
      return words.lift;
    case "needs_ruling":
      return words.rule;
    case "site_changed":
      return words.showDifference;
    case "undercut_waits":
      return words.account.confirmUndercut;
    case "in_without_link":
      return words.wayIn.sawOut;
    case "near_miss":
      return words.nearMiss.act;
    case "can_meet":
      return words.slew.act;
    case "ticket_waits":
      return words.cuts.checkTicket;
    case "face_left":
    case "inspection_due":
      return view.cuts.competent.includes(me.value?.person ?? "") ? words.cuts.inspect : null;
    default:
      return null;
  }
}

interface ActProps {
  what: ExceptionKind;
  view: Supervisor;
  onOpen: (what: ExceptionKind) => void;
  onShow: ((thing: Thing) => void) | undefined;
}

/** One key: what can be done about it from here, else on the desk where it is. */
function Act({ what, view, onOpen, onShow }: ActProps) {
  const name = actOf(what, view);
  const thing = thingOf(what);
  if (name) {
    const about = "person" in what ? what.person : (thing?.id ?? "");
    return (
      <Key kind="small" label={`${name} ${about}`.trim()} onPress={() => onOpen(what)}>
        {name}
      </Key>
    );
  }
  if (!onShow || !thing) return null;
  const show = t().showDifference;
  return (
    <Key kind="small" label={`${show} ${thing.id}`} onPress={() => onShow(thing)}>
      {show}
    </Key>
  );
}

/** Each value that two people typed differently, both beside each other. */
function bothTyped(differs: Extract<ExceptionKind, { kind: "target_typed_apart" }>["differs"]): string {
  return differs
    .map(({ what, first, second }) => {
      return `${said(what)} ${apart(first, second)}`;
    })
    .join("; ");
}

function exceptionWords(what: ExceptionKind): string {
  const words = t();
  switch (what.kind) {
    case "stopped":
      return what.why
        ? words.exception.stopped_why(what.machine, what.by, what.why)
        : words.exception.stopped(what.machine, what.by);
    case "laser_in_doubt":
      return words.exception.laser_in_doubt(setUpName(what.set_up));
    case "needs_ruling":
      return words.exception.needs_ruling(what.mark, signed(what.dev));
    case "cant":
      return what.mark
        ? words.exception.cant_at(what.machine, words.cant[what.why], what.mark)
        : words.exception.cant(what.machine, words.cant[what.why]);
    case "screen_not_showing":
      return words.exception.screen_not_showing(what.machine);
    case "site_changed":
      return words.exception.site_changed;
    case "target_not_seen":
      return words.exception.target_not_seen(what.machine, what.target);
    case "ties_first":
      return words.exception.ties_first(what.machine, what.marks.join(", "));
    case "look_asked":
      return words.exception.look_asked(what.machine);
    case "face_left":
    case "inspection_due":
    case "daylight_over":
    case "pile_at_crest":
    case "crossing_too_near":
    case "paint_gone":
    case "line_struck":
    case "ticket_waits":
      return cutsWords(what);
    case "gravel_short":
      return words.account.exceptions.gravel_short(what.tons.toFixed(1));
    case "undercut_waits":
      return words.account.exceptions.undercut_waits(what.mark);
    case "retest_owed":
      return what.void
        ? words.account.exceptions.retest_void(what.mark)
        : words.account.exceptions.retest_owed(what.mark);
    case "unconfirmed_entry":
      return words.wayIn.needsUnconfirmed(what.person, what.machine);
    case "in_without_link":
      return words.wayIn.needsLink(what.person, what.machine);
    case "entry_not_answered":
      return words.wayIn.needsAnswer(what.person, what.machine);
    case "not_ready":
      return words.startDay.needs(what.said, what.of);
    case "can_meet":
      return words.slew.canMeet(what.machine, what.other, feet(what.apart, 1), feet(what.needs, 1));
    case "spotter_needed":
      return words.slew.spotterNeeded(what.machine, what.line);
    case "on_slope":
      return words.slew.onSlope(what.machine, what.zone, feet(what.inside, 1));
    case "near_miss":
      return what.why
        ? words.nearMiss.needsWordsWhy(what.number, what.by, what.why)
        : words.nearMiss.needsWords(what.number, what.by);
    case "log_cut":
      return what.person === "hub"
        ? words.record.logCutByIndex(what.entry)
        : words.record.logCut(what.person, what.entry);
    case "query_waits":
      return words.record.queryWaits(what.query, what.on.join(", "));
    case "target_typed_apart":
      return words.exception.target_typed_apart(what.target, bothTyped(what.differs));
  }
}
