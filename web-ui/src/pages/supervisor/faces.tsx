/** FACES: cards of faces and trenches, what is buried, locate tickets; inspection, design, and what is let go on. */
import { useState } from "preact/hooks";
import { TicketFacts, UtilityFacts } from "../../parts/buried_facts";
import { Choice } from "../../parts/choice";
import { DaylightFacts, FaceFacts, inspectionWords } from "../../parts/face_facts";
import { feetTyped } from "../../parts/feet_typed";
import { InspectPanel } from "../../parts/inspect";
import { Key } from "../../parts/keys";
import { PhotoKey } from "../../parts/photo_key";
import { Typed } from "../../parts/typed";
import { timeOfDay } from "../../show";
import { me, sheet } from "../../state";
import type { FaceCard, HeldBy, Supervisor } from "../../wire";
import { Figures } from "./figures";
import { WhyPanel } from "./panels";
import { PlanOf } from "./plan/plan_of";
import { TicketPanel } from "./ticket";
import { t } from "./words";

type Open =
  | { what: "inspect" | "retype" | "design"; card: FaceCard }
  | { what: "allow"; held: HeldBy; title: string }
  | { what: "ticket"; id: string }
  | { what: "not_located" }
  | null;

export function FacesPage({ view }: { view: Supervisor }) {
  const words = t().cuts;
  const cuts = view.cuts;
  const [open, setOpen] = useState<Open>(null);
  const close = () => setOpen(null);
  // What is said of a face while its form is open shows on the form.
  const live = (card: FaceCard) => cuts.faces.find((one) => one.id === card.id) ?? card;
  const ticket = open?.what === "ticket" ? cuts.tickets.find((one) => one.id === open.id) : undefined;
  const notLocated = cuts.not_located ?? [];
  return (
    <div class="columns beside-plan">
      {worstFirst(cuts.faces).map((card) => (
        <section key={card.id} aria-label={card.name}>
          <Face card={card} onOpen={setOpen} competent={cuts.competent} />
          <Figures photos={view.record.photos.filter((photo) => photo.face === card.id)} />
          <PhotoKey kind="wide" about={{ face: card.id }} />
        </section>
      ))}
      <section aria-label={words.faces}>
        {cuts.faces.length === 0 && <p>{words.noFaces}</p>}
        <p class="quiet">
          {words.caution} {words.oneCallFirst} {cuts.rules && words.rulesBy(cuts.rules)}
        </p>
        {cuts.competent.length > 0 && <p class="quiet">{words.competent(cuts.competent.join(", "))}</p>}
      </section>
      <section aria-label={words.utilities}>
        <h2>{words.utilities}</h2>
        {cuts.tickets.map((card) => (
          <div class="card" key={card.id}>
            <h3>{words.ticket}</h3>
            <TicketFacts card={card} />
            <Key
              label={`${words.checkTicket} ${card.id}`}
              onPress={() => setOpen({ what: "ticket", id: card.id })}
            >
              {words.checkTicket}
            </Key>
            {(card.days_left ?? -1) < 0 && (
              <Key
                onPress={() =>
                  setOpen({ what: "allow", held: { kind: "ticket_lapsed", ticket: card.id }, title: card.id })
                }
              >
                {words.allow}
              </Key>
            )}
          </div>
        ))}
        {notLocated.length > 0 && (
          <Key onPress={() => setOpen({ what: "not_located" })}>
            {words.allow} <small>{words.notLocated(notLocated.length)}</small>
          </Key>
        )}
        {cuts.utilities.map((card) => (
          <div class="card" key={card.utility.id}>
            <UtilityFacts card={card} crossings={cuts.crossings} />
          </div>
        ))}
        {cuts.struck.flatMap((one) =>
          (one.lines.length > 0 ? one.lines : [null]).map((line) => (
            <Key
              key={`${one.since}${line}`}
              onPress={() =>
                setOpen({
                  what: "allow",
                  held: { kind: "line_struck", line },
                  title: line ?? t().struck.notDrawn,
                })
              }
            >
              {words.allow} <small>{line ?? t().struck.notDrawn}</small>
            </Key>
          )),
        )}
        {cuts.crossings
          .filter((one) => one.clear != null && one.clear < one.need)
          .map((one) => (
            <Key
              key={one.zone}
              onPress={() =>
                setOpen({
                  what: "allow",
                  held: { kind: "too_near", zone: one.zone, utility: one.utility },
                  title: `${one.zone} × ${one.utility}`,
                })
              }
            >
              {words.allow} <small>{`${one.zone} × ${one.utility}`}</small>
            </Key>
          ))}
      </section>
      {sheet.value && (
        <section class="wide" aria-label={words.daylight}>
          <PlanOf view={view} />
        </section>
      )}
      {open?.what === "inspect" && <InspectPanel card={live(open.card)} onClose={close} />}
      {open?.what === "retype" && <InspectPanel card={open.card} retype onClose={close} />}
      {open?.what === "design" && <DesignPanel card={open.card} onClose={close} />}
      {open?.what === "allow" && (
        <WhyPanel
          title={`${words.allow}: ${open.title}`}
          ask={words.allowAsk}
          act={words.allow}
          command={(why) => ({ kind: "allow_dig", held: open.held, why })}
          onClose={close}
        />
      )}
      {open?.what === "not_located" && <NotLocated marks={notLocated} onClose={close} />}
      {ticket && <TicketPanel card={ticket} onClose={close} />}
    </div>
  );
}

/** The leave to dig where no ticket covers it: for one mark, never for the site. */
function NotLocated({ marks, onClose }: { marks: string[]; onClose: () => void }) {
  const words = t().cuts;
  const [mark, setMark] = useState<string | null>(null);
  return (
    <WhyPanel
      title={words.allow}
      ask={words.allowAsk}
      act={words.allow}
      command={(why) => (mark ? { kind: "allow_dig", held: { kind: "not_located", mark }, why } : null)}
      onClose={onClose}
    >
      <Choice
        title={words.allowAt}
        options={marks.map((id) => ({ id, name: id }))}
        chosen={mark}
        onChoose={setMark}
      />
    </WhyPanel>
  );
}

/** Faces that were left, then those that wait for an inspection, then the others, as the site names them. */
function worstFirst(cards: readonly FaceCard[]): FaceCard[] {
  const rank = (card: FaceCard) => (card.alarm ? 0 : inspectionWords(card)?.owed ? 1 : 2);
  return [...cards].sort((a, b) => rank(a) - rank(b));
}

interface FaceProps {
  card: FaceCard;
  competent: string[];
  onOpen: (open: Open) => void;
}

function Face({ card, competent, onOpen }: FaceProps) {
  const words = t().cuts;
  const may = competent.includes(me.value?.person ?? "");
  const over = card.daylight?.lines.some((line) => line.no_cross && line.over.length > 0);
  return (
    <div class="card">
      <h3>
        {card.id} <small>{card.name}</small>
      </h3>
      <FaceFacts card={card} />
      <DaylightFacts card={card} />
      <div class="row">
        {may && (
          <>
            <Key label={`${words.inspect} ${card.id}`} onPress={() => onOpen({ what: "inspect", card })}>
              {words.inspect}
            </Key>
            <Key label={`${words.signRetype} ${card.id}`} onPress={() => onOpen({ what: "retype", card })}>
              {words.signRetype}
            </Key>
          </>
        )}
        <Key label={`${words.design} ${card.id}`} onPress={() => onOpen({ what: "design", card })}>
          {words.design}
        </Key>
        {over && (
          <Key
            onPress={() =>
              onOpen({ what: "allow", held: { kind: "daylight", zone: card.id }, title: card.name })
            }
          >
            {words.allow}
          </Key>
        )}
      </div>
      {card.engineer && (
        <details>
          <summary>{words.engineerTitle}</summary>
          <Critical of={card.engineer} />
          {card.engineer.forecast != null && <p>{words.forecast(timeOfDay(card.engineer.forecast))}</p>}
        </details>
      )}
    </div>
  );
}

/** Textbooks' critical heights, the most cautious first, each with what it takes the soil to bear. */
function Critical({ of: card }: { of: NonNullable<FaceCard["engineer"]> }) {
  const words = t().cuts;
  const heights = [
    [card.no_tension_height_ft, words.noTension],
    [card.cracked_height_ft, words.halfCracked],
    [card.critical_height_ft, words.uncracked],
  ] as const;
  if (card.critical_height_ft == null || card.cohesion_psf == null) return <p>{words.noCritical}</p>;
  return (
    <>
      <p>{words.critical(card.cohesion_psf.toFixed(0), card.weight_pcf.toFixed(0))}</p>
      <ul>
        {heights.map(
          ([feet, takes]) => feet != null && <li key={takes}>{`${feet.toFixed(1)} ft: ${takes}`}</li>,
        )}
      </ul>
    </>
  );
}

/** Two slopes, one over the other; one alone when no elevation is typed. */
function DesignPanel({ card, onClose }: { card: FaceCard; onClose: () => void }) {
  const words = t().cuts;
  const [below, setBelow] = useState("1");
  const [top, setTop] = useState("");
  const [above, setAbove] = useState("1.5");
  const slope = (text: string) =>
    /^\d{1,2}([.,]\d{1,3})?$/.test(text.trim()) ? Number(text.trim().replace(",", ".")) : null;
  const first = slope(below);
  const second = slope(above);
  const at = top.trim() === "" ? undefined : feetTyped(top);
  return (
    <WhyPanel
      title={words.designTitle(card.name)}
      ask={words.designWhy}
      act={words.design}
      command={(why) => {
        if (first === null || at === null) return null;
        if (at === undefined) {
          return { kind: "revise_face", zone: card.id, pieces: [{ run_per_rise: first }], why };
        }
        if (second === null) return null;
        const pieces = [{ top: at, run_per_rise: first }, { run_per_rise: second }];
        return { kind: "revise_face", zone: card.id, pieces, why };
      }}
      onClose={onClose}
    >
      <Typed label={words.designBelow} text={below} bad={first === null} onTyped={setBelow} decimal />
      <Typed label={words.designTop} text={top} bad={at === null} onTyped={setTop} decimal />
      {top.trim() !== "" && (
        <Typed label={words.designAbove} text={above} bad={second === null} onTyped={setAbove} decimal />
      )}
    </WhyPanel>
  );
}
