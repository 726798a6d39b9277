/** BURIED: paint that is gone, and lines that were bared by hand, with the depth that was found. */
import { useState } from "preact/hooks";
import { say } from "../../hub";
import { TicketFacts, UtilityFacts } from "../../parts/buried_facts";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { PhotoKey } from "../../parts/photo_key";
import { Typed } from "../../parts/typed";
import { ground } from "../../state";
import type { UtilityCard } from "../../wire";
import { t } from "../../words_later";
import { mark } from "./at";

export function PipesPanel({ onClose }: { onClose: () => void }) {
  const words = t().cuts;
  const cuts = ground.value?.cuts;
  const [bares, setBares] = useState<UtilityCard | null>(null);
  const struck = (line: string | null) => {
    void say({ kind: "say_struck", line, mark: mark.value?.id ?? null });
    onClose();
  };
  if (bares) return <BarePanel card={bares} onClose={onClose} />;
  return (
    <Panel title={words.utilities} onClose={onClose}>
      {cuts?.tickets.map((card) => (
        <TicketFacts card={card} key={card.id} />
      ))}
      {cuts?.utilities.map((card) => (
        <div class="card" key={card.utility.id}>
          <UtilityFacts card={card} crossings={cuts.crossings} />
          <div class="tiles">
            <Key
              kind="tile"
              onPress={() => {
                void say({ kind: "say_paint", utility: card.utility.id, gone: card.paint_gone == null });
                onClose();
              }}
            >
              {card.paint_gone == null ? words.paintGone : words.paintAgain}
            </Key>
            <Key kind="tile" onPress={() => struck(card.utility.id)}>
              {t().struck.key}
            </Key>
            {mark.value && (
              <Key kind="tile" onPress={() => setBares(card)}>
                {words.bare} <small>{mark.value.id}</small>
              </Key>
            )}
            <PhotoKey about={mark.value ? { mark: mark.value.id } : {}} />
          </div>
        </div>
      ))}
      <Key onPress={() => struck(null)}>
        {t().struck.key} <small>{t().struck.notDrawn}</small>
      </Key>
      <p class="quiet">
        {words.oneCallFirst} {words.caution}
      </p>
    </Panel>
  );
}

/** Found at the mark that is picked: its top and how far it is across. */
function BarePanel({ card, onClose }: { card: UtilityCard; onClose: () => void }) {
  const words = t();
  const [top, setTop] = useState("");
  const [size, setSize] = useState("");
  const goodTop = /^\d{1,5}([.,]\d{1,3})?$/.test(top.trim());
  const goodSize = /^\d{1,3}([.,]\d{1,2})?$/.test(size.trim()) && Number(size.replace(",", ".")) > 0;
  const ready = goodTop && goodSize && !!mark.value;
  const send = () => {
    if (!ready) return;
    void say({
      kind: "dig_pothole",
      utility: card.utility.id,
      mark: mark.value?.id,
      top: top.trim().replace(",", "."),
      size: `${size.trim().replace(",", ".")} in`,
    });
    onClose();
  };
  return (
    <Panel
      title={`${words.cuts.bareTitle(card.utility.id)} · ${mark.value?.id ?? ""}`}
      onClose={onClose}
      closeWord={words.cancel}
    >
      <Typed label={words.cuts.topFeet} text={top} bad={top !== "" && !goodTop} onTyped={setTop} decimal />
      <Typed
        label={words.cuts.sizeInches}
        text={size}
        bad={size !== "" && !goodSize}
        onTyped={setSize}
        decimal
      />
      <Key kind="send" disabled={!ready} why={t().kept.owed.number} onPress={send}>
        {words.send}
      </Key>
    </Panel>
  );
}
