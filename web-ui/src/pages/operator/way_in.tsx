/** STOP in the cab while somebody asks to come in or is in: who, where, and what the operator answers. */
import type { ComponentChildren } from "preact";
import { say } from "../../hub";
import { newKey } from "../../outbox";
import { HoldKey, Key } from "../../parts/keys";
import { asks, toldOutWords } from "../../parts/way_in_words";
import { ago } from "../../show";
import { notice, now } from "../../state";
import type { EntryCard, Operator, WayInCard } from "../../wire";
import { t } from "../../words";

const open = (one: EntryCard) => one.stage === "asked" || one.stage === "waiting";
const mayBeIn = (one: EntryCard) =>
  one.stage === "answered" || one.stage === "in" || one.stage === "unconfirmed";

/** The names of everybody who may be in, for a page that has lost its hub. */
export function namesIn(card: WayInCard | undefined): string {
  const names = (card?.people ?? []).filter(mayBeIn).map(named);
  return [...new Set(names)].join(", ");
}

export function WayInStop({ view }: { view: Operator }) {
  const words = t();
  const card = view.way_in;
  const inside = card.people.some(mayBeIn);
  return (
    <div class="stop-screen" role="alert">
      <div class="stop-plate way-in">
        <p class="stop-word">{words.stop}</p>
        <WhoIsIn card={card} answers />
        {!inside && !card.people.some(open) && <p class="who">{words.wayIn.empty}</p>}
        <HoldsDown card={card} />
        {card.down && <OnFoot view={view} />}
        <p class="quiet">
          {words.bucketDown} {words.caution} {words.lookAlways}
        </p>
      </div>
    </div>
  );
}

/** Out of the cab with the bucket down: whoever sits here asks another machine like anybody else on foot. */
function OnFoot({ view }: { view: Operator }) {
  const words = t().wayIn;
  return (
    <div class="on-foot">
      {(view.on_foot ?? []).map(({ machine, visit, told_out }) => {
        const to = { machine, visit: visit?.visit ?? told_out?.visit ?? "" };
        const inside = visit?.stage === "in" || visit?.stage === "unconfirmed";
        return (
          <div key={machine}>
            {told_out && <p class="who">{toldOutWords(told_out.witness, machine)}</p>}
            {visit && <p class="who">{onFoot(visit, machine)}</p>}
            {!visit && !told_out && (
              <Key onPress={() => void say({ kind: "ask_in", machine, visit: newKey() })}>
                {words.ask(machine)}
              </Key>
            )}
            {(visit?.stage === "answered" || told_out) && (
              <Key onPress={() => void say({ kind: "go_in", ...to })}>
                {told_out ? words.stillIn : words.inKey}
              </Key>
            )}
            {visit && !inside && (
              <Key onPress={() => void say({ kind: "withdraw_ask", ...to })}>{words.notGoing}</Key>
            )}
            {(inside || told_out) && (
              <HoldKey
                kind="out-key"
                onPress={() => void say({ kind: inside ? "come_out" : "see_out", ...to })}
              >
                {words.outKey}
              </HoldKey>
            )}
          </div>
        );
      })}
    </div>
  );
}

/** Where the own visit to another machine stands, as it reads on any phone on foot. */
function onFoot(visit: EntryCard, machine: string): string {
  const words = t().wayIn;
  switch (visit.stage) {
    case "in":
      return words.youAreIn(machine, ago(now.value - visit.since));
    case "unconfirmed":
      return words.unconfirmed;
    case "answered":
      return words.comeIn;
    case "waiting":
      return words.waitSaid;
    case "refused":
      return words.noSaid;
    default:
      return visit.not_answered ? words.notAnswered : words.stayOut;
  }
}

/** Everybody who asks or is in, longest first; told no is told, and out of the list. */
export function WhoIsIn({ card, answers = false }: { card: WayInCard; answers?: boolean }) {
  const words = t();
  return (
    <ul class="who-list">
      {card.people
        .filter((one) => one.stage !== "refused")
        .map((one) => (
          <li key={one.visit} class={mayBeIn(one) ? "is-in" : "asks"}>
            <p class="who">
              {line(one)} <small>{ago(now.value - one.since)}</small>
              {one.lost != null && <strong class="lost"> {words.wayIn.lostLink}</strong>}
            </p>
            {answers && open(one) && (
              <p class="answers-row">
                <Key
                  label={`${words.wayIn.wait} ${one.person}`}
                  pressed={one.stage === "waiting"}
                  onPress={() => void say({ kind: "say_wait", visit: one.visit })}
                >
                  {words.wayIn.wait}
                </Key>
                <Key
                  label={`${words.wayIn.no} ${one.person}`}
                  onPress={() => void say({ kind: "refuse_entry", visit: one.visit })}
                >
                  {words.wayIn.no}
                </Key>
              </p>
            )}
          </li>
        ))}
    </ul>
  );
}

/** Who, and how many come along. */
const named = (one: EntryCard) => (one.others ? `${one.person} + ${one.others}` : one.person);

function line(one: EntryCard): string {
  const words = t().wayIn;
  if (one.stage === "in") return words.isIn(named(one));
  if (one.stage === "unconfirmed") return words.isInUnasked(named(one));
  if (one.stage === "answered") return words.told(named(one));
  return asks(named(one), one.mark);
}

/**
 * BUCKET DOWN answers exactly those that this screen names; RELEASE is an outline while somebody may be in. A row each, in the
 * place of GOT IT.
 */
export function holds(card: WayInCard): ComponentChildren[] {
  const words = t().wayIn;
  const owed = card.people.filter((one) => open(one) || one.stage === "unconfirmed");
  const inside = namesIn(card);
  const down = () => void say({ kind: "bucket_down", answers: owed.map((one) => one.visit) });
  const release = async () => {
    const reply = await say({ kind: "release" });
    if (reply.kind === "answer" && reply.answer.outcome.kind === "still_in") {
      notice.value = words.notReleased(reply.answer.outcome.people.join(", "));
    }
  };
  const held = card.phase === "stopped" || card.phase === "occupied" || card.phase === "unconfirmed";
  const rows: ComponentChildren[] = [];
  if (owed.length > 0 || (!card.down && held)) {
    rows.push(
      <HoldKey key="down" kind="down" onPress={down}>
        {words.bucketDown}
      </HoldKey>,
    );
  }
  if (held && owed.every((one) => !open(one))) {
    rows.push(
      <HoldKey key="release" kind={inside ? "release outline" : "release"} onPress={() => void release()}>
        {words.release}
      </HoldKey>,
    );
  }
  return rows;
}

/** The bucket is down and nobody waits for it: said where the names are. */
function HoldsDown({ card }: { card: WayInCard }) {
  const owed = card.people.some((one) => open(one) || one.stage === "unconfirmed");
  return card.down && !owed ? <p class="held">{t().wayIn.holdsDown}</p> : null;
}
