/** Coming in: ask, wait outside, go in on the operator's word, come out. Every other state says STAY OUT or GET OUT. */
import { useEffect, useState } from "preact/hooks";
import { say } from "../../hub";
import { HoldKey, Key } from "../../parts/keys";
import { Shape } from "../../parts/shape";
import { toldOutWords } from "../../parts/way_in_words";
import { ago } from "../../show";
import { allowSound, play } from "../../sound";
import { ground, me, now } from "../../state";
import type { MachineCard, SheetMark, ToldOutCard } from "../../wire";
import { t } from "../../words";
import { Loud, Unbroken } from "./large";
import { type Mine, mayAsk, mine, newVisit, pressed, staysOutside, toldOut, within } from "./way_in";

/** In the place of the keypad: the mark lies within these machines' keep-outs. */
export function AskToComeIn({ cards, mark }: { cards: MachineCard[]; mark: SheetMark }) {
  const words = t().wayIn;
  const [others, setOthers] = useState(0);
  return (
    <div class="ask-in">
      {cards.map((card) => (
        <div key={card.id} class="ask-one">
          <p>
            <Unbroken
              of={
                card.marks_within.includes(mark.id) && within(card, mark)
                  ? words.within(mark.id, card.id)
                  : words.placeOld(card.id)
              }
            />
          </p>
          <Key kind="send" onPress={() => ask(card, mark, others)}>
            <Shape of={card.shape} />
            <span>
              <Unbroken of={words.ask(card.id)} />
            </span>
          </Key>
          <Key kind="wide" onPress={() => staysOutside(card)}>
            {words.outside}
          </Key>
        </div>
      ))}
      <p class="row with-me">
        <span>{words.withMe(others)}</span>
        <Key label={words.oneLess} disabled={others === 0} onPress={() => setOthers(others - 1)}>
          −
        </Key>
        <Key label={words.oneMore} disabled={others >= MOST} onPress={() => setOthers(others + 1)}>
          +
        </Key>
      </p>
      <p class="keep-out">
        {words.tail} {t().caution}
      </p>
    </div>
  );
}

/** More than this nobody leads through a cut; the hub refuses it. */
const MOST = 50;

/** The hub asks every machine in whose keep-out the mark lies. */
function ask(card: MachineCard, mark: SheetMark, others = 0): void {
  void allowSound();
  const along = others > 0 ? { others } : {};
  void say({ kind: "ask_in", machine: card.id, visit: newVisit(), mark: mark.id, ...along });
}

/** For whoever said NOT ENTERING: to step in after all is one press, never a reload. */
export function AskAfterAll({ mark }: { mark: SheetMark | null }) {
  const words = t().wayIn;
  if (!mark) return null;
  return (
    <>
      {mayAsk(mark).map((card) => (
        <Key key={card.id} kind="chip ask-after" onPress={() => ask(card, mark)}>
          <Shape of={card.shape} />
          <span>
            <Unbroken of={words.ask(card.id)} />
          </span>
        </Key>
      ))}
    </>
  );
}

/** What takes the whole page until it is settled; nothing while the person is in by the rules and the cab shows it. */
export function takesThePage(): preact.ComponentChild {
  const words = t().wayIn;
  const unsent = pressed.value.find((one) => one.failed);
  if (unsent?.kind === "go_in") return <Whole text={words.inNotSent} visit={mine.value[0]} out />;
  if (unsent?.kind === "come_out") return <Whole text={words.outNotSent} />;
  const told = toldOut.value[0];
  if (told) return <ToldOut {...told} key={told.told.visit} />;
  const grave = [...mine.value].sort((a, b) => graveness(b) - graveness(a))[0];
  if (grave && graveness(grave) > 0) return <OneVisit one={grave} key={grave.visit.visit} />;
  if (unsent?.kind === "ask_in") return <Whole text={words.askNotSent} />;
  if (pressed.value.some((one) => one.kind === "ask_in")) return <Whole text={words.sending} />;
  return null;
}

const cabShows = (card: MachineCard) => card.screen.kind === "showing";

/** The gravest first; 0 for somebody who is in and whose operator sees it. */
function graveness({ card, visit }: Mine): number {
  if (visit.stage === "unconfirmed") return 6;
  if (visit.stage === "in") return cabShows(card) ? 0 : 5;
  if (visit.stage === "answered") return waits(visit.visit) ? 0.5 : 4;
  return visit.stage === "refused" ? 1 : 2;
}

/** Within the circles of several machines: one has agreed, another has not. Nobody goes in on half an answer. */
function waits(name: string): boolean {
  return mine.value.some(
    (one) => one.visit.visit === name && one.visit.stage !== "answered" && one.visit.stage !== "in",
  );
}

/** Somebody else's phone took this phone's person off the list: they say whether it is so. */
function ToldOut({ card, told }: { card: MachineCard; told: ToldOutCard }) {
  const words = t().wayIn;
  useEffect(() => {
    play("stop");
    navigator.vibrate?.(500);
  }, []);
  const to = { machine: card.id, visit: told.visit };
  return (
    <div class="whole" role="alert">
      <p class="whole-head">
        <Shape of={card.shape} /> {card.id} · {ago(now.value - told.at)}
      </p>
      <Loud text={toldOutWords(told.witness, card.id)} />
      {told.why && <p>“{told.why}”</p>}
      <Key kind="send" onPress={() => void say({ kind: "go_in", ...to })}>
        {words.stillIn}
      </Key>
      <HoldKey kind="out-key" onPress={() => void say({ kind: "see_out", ...to })}>
        {words.outKey}
      </HoldKey>
      <p class="keep-out">{t().caution}</p>
    </div>
  );
}

function OneVisit({ one }: { one: Mine }) {
  const words = t().wayIn;
  const { card, visit } = one;
  const told = stage(one);
  useEffect(() => {
    const good = visit.stage === "answered";
    play(good ? "grade" : visit.stage === "asked" && !visit.not_answered ? "look" : "stop");
    navigator.vibrate?.(good ? [150, 80, 150] : 500);
  }, [visit.stage, visit.not_answered]);
  const to = { machine: card.id, visit: visit.visit };
  const inside = visit.stage === "in" || visit.stage === "unconfirmed";
  return (
    <div class="whole" role="alert">
      <p class="whole-head">
        <Shape of={card.shape} /> {words.asked(card.id, ago(now.value - visit.since))}
      </p>
      <Loud text={told} />
      {visit.stage === "answered" && (
        <Key kind="send go-in" onPress={() => void say({ kind: "go_in", ...to })}>
          {words.inKey}
        </Key>
      )}
      {inside && <OutKey one={one} />}
      {visit.stage === "asked" && visit.not_answered && (
        <Key kind="wide" onPress={() => void say({ kind: "ask_in", ...to })}>
          {words.askAgain}
        </Key>
      )}
      {!inside && (
        <Key kind="wide" onPress={() => void say({ kind: "withdraw_ask", ...to })}>
          {visit.stage === "refused" ? words.seenNo : words.notGoing}
        </Key>
      )}
      <p class="keep-out">
        {words.tail} {t().caution}
      </p>
    </div>
  );
}

function stage({ card, visit }: Mine): string {
  const words = t().wayIn;
  switch (visit.stage) {
    case "unconfirmed":
      return words.unconfirmed;
    case "in":
      return words.screenLost(card.id);
    case "answered":
      return cabShows(card) ? words.comeIn : words.noScreen(card.id);
    case "waiting":
      return words.waitSaid;
    case "refused":
      return words.noSaid;
    default:
      if (!cabShows(card)) return words.noScreen(card.id);
      return visit.not_answered ? words.notAnswered : words.stayOut;
  }
}

function Whole({ text, visit, out = false }: { text: string; visit?: Mine | undefined; out?: boolean }) {
  return (
    <div class="whole" role="alert">
      <Loud text={text} />
      {out && visit && <OutKey one={visit} />}
      <p class="keep-out">{t().caution}</p>
    </div>
  );
}

/** OUT is held: a slip of a glove must not take anybody off the operator's list. */
export function OutKey({ one }: { one: Mine }) {
  const all = (one.visit.others ?? 0) + 1;
  const group = all > 1 ? { all } : {};
  const to = { machine: one.card.id, visit: one.visit.visit, ...group };
  return (
    <HoldKey kind="out-key" onPress={() => void say({ kind: "come_out", ...to })}>
      {all > 1 ? t().wayIn.allOut(all) : t().wayIn.outKey}
    </HoldKey>
  );
}

/** Where this phone's person is in, each visit once; the machines that one visit covers are named together. */
export function stays(): Mine[] {
  const all = mine.value.filter((one) => one.visit.stage === "in");
  return all.filter((one) => all.find((other) => other.visit.visit === one.visit.visit) === one);
}

export const where = ({ card, visit }: Mine) => [card.id, ...(visit.also ?? [])].join(" + ");

/** Stands over the page while its person is in; READ has it in the place of its own keys. */
export function InBar() {
  const words = t().wayIn;
  return (
    <>
      {stays().map((one) => (
        <div class="in-bar" key={one.visit.visit} role="status">
          <strong>{words.youAreIn(where(one), ago(now.value - one.visit.since))}</strong>
          <OutKey one={one} />
        </div>
      ))}
    </>
  );
}

/** Stands over the page while its person spots for a machine. */
export function SpotBar() {
  const cards = ground.value?.machines ?? [];
  const spotted = cards.filter((card) => card.spotter && card.spotter.device === me.value?.device);
  return (
    <>
      {spotted.map((card) => (
        <p class="in-bar spots" key={card.id} role="status">
          <strong>{t().crew.youSpot(card.id)}</strong>
        </p>
      ))}
    </>
  );
}
