/**
 * What must be seen lies over everything, an open panel too: a stop, an ask to come in, an entry that nobody agreed to, a face
 * to leave, a lost link. In the cab the panel goes when such a thing comes; elsewhere it stays under it, with what was typed.
 */

import { signal } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { FOOT } from "../grade";
import { ago } from "../show";
import { bye, ground, linked, me, now, operator, supervisor, unkept, visitor } from "../state";
import type { EntryCard, StopCard } from "../wire";
import { t } from "../words";
import { Struck } from "./struck";
import { asks } from "./way_in_words";

/** Panels that are open now: under one no number is in view. */
export const openPanels = signal(0);

/** What takes a person's whole page until it is settled, set by the page that knows; it takes a panel, too. */
export const takesAll = signal<() => ComponentChildren>(() => null);

const owed = (one: EntryCard) => one.stage === "asked" || one.stage === "unconfirmed";

/** Changes each time that something grave comes to this cab, or speaks again; empty while there is none. */
export function graveInCab(): string {
  const view = operator.value;
  if (!me.value?.roles.includes("operator")) return "";
  if (!linked.value || bye.value) return "link";
  const screen = view?.screen;
  if (screen?.kind === "stop") return `stop ${screen.since} ${screen.press}`;
  if (screen?.kind === "leave_face") return `face ${screen.since}`;
  if (screen?.kind !== "way_in") return "";
  const people = view?.way_in.people.filter(owed) ?? [];
  return `way_in ${people.map((one) => `${one.visit}/${one.stage}/${one.not_answered}`).join(" ")}`;
}

/** Over a panel: who stopped, who asks, who is in without a word, which face is left, that there is no link. */
export function Urgent() {
  const words = t();
  const cab = me.value?.roles.includes("operator");
  const screen = cab ? operator.value?.screen : null;
  const stop = screen?.kind === "stop" ? screen : standing();
  const people = cab ? (operator.value?.way_in.people ?? []) : entries();
  const cuts = (ground.value ?? supervisor.value)?.cuts;
  const faces = (cuts?.faces ?? []).filter((card) => card.alarm);
  const left = [...(cab ? (operator.value?.faces_left ?? []) : []), ...(visitor.value?.faces_left ?? [])];
  return (
    <div class="urgent">
      {!linked.value && (
        <p class="warning">{cab ? `${words.noLink} · ${words.noLinkDo}` : words.linkLostDo}</p>
      )}
      {stop && <StopBand stop={stop} all={stop.all} />}
      <Struck cards={cab ? operator.value?.struck : (cuts?.struck ?? visitor.value?.struck)} />
      {(cab || supervisor.value ? people.filter(owed) : []).map((one) => (
        <p class="warning" role="alert" key={one.visit}>
          {one.stage === "unconfirmed"
            ? cab
              ? words.wayIn.isInUnasked(one.person)
              : `${one.person}: ${words.wayIn.stages.unconfirmed}`
            : asks(one.person, one.mark)}
        </p>
      ))}
      {faces.map((card) => (
        <p class="warning" role="alert" key={card.id}>
          {words.cuts.leave} · {words.cuts.leaveStrip(card.name, Math.ceil(card.strip / FOOT).toString())}
        </p>
      ))}
      {left.map((face) => (
        <p class="warning" role="alert" key={face.zone}>
          {words.cuts.leave} · {words.cuts.leaveStrip(face.name, Math.ceil(face.strip / FOOT).toString())}
        </p>
      ))}
    </div>
  );
}

function entries(): EntryCard[] {
  return (ground.value?.machines ?? []).flatMap((card) => card.way_in.people);
}

/** An ALL STOP that stands, on whatever page. */
export function standing(): StopCard | null {
  const cards = (ground.value ?? supervisor.value)?.machines ?? [];
  const kept = cards.find((card) => card.stop?.all)?.stop ?? visitor.value?.stop ?? null;
  const stop = unkept.value;
  if (!stop || stop.machine) return kept;
  return { by: stop.by, why: stop.why, since: stop.since, all: true, press: stop.since };
}

interface BandProps {
  stop: Pick<StopCard, "by" | "why" | "since">;
  all: boolean;
}

export function StopBand({ stop, all }: BandProps) {
  const words = t();
  return (
    <div class="all-stop" role="alert">
      <p>
        <strong>{words.stop}</strong> {all ? words.allMachines : ""}{" "}
        <small>{ago(now.value - stop.since)}</small>
      </p>
      <p>
        {words.stopBy(stop.by)}
        {stop.why && `: ${stop.why}`}
      </p>
      {unkept.value && <p>{words.notInTheLog}</p>}
      {all && <p>{words.lookAlways}</p>}
    </div>
  );
}
