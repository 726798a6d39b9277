/** Visitors: who is on site, what each is shown, and who was seen off. */
import { useState } from "preact/hooks";
import { say } from "../../../hub";
import { Key } from "../../../parts/keys";
import { Panel } from "../../../parts/panel";
import { timeOfDay } from "../../../show";
import { sheet } from "../../../state";
import type { Supervisor, VisitorCard } from "../../../wire";
import { t } from "../words";
import { Pick } from "./pick";

export function Visitors({ view }: { view: Supervisor }) {
  const words = t().record;
  const [shows, setShows] = useState<VisitorCard | null>(null);
  const { visitors } = view.record;
  return (
    <section aria-label={words.visitors}>
      <h2>{words.visitors}</h2>
      {visitors.length === 0 && <p>{words.noVisitors}</p>}
      <ul class="lines">
        {visitors.map((one) => (
          <li key={one.person}>
            <span>
              <strong>{one.person}</strong> {hereWords(one)} ·{" "}
              {one.shown.length > 0 ? words.shown(one.shown.join(", ")) : words.shownNothing}
              {!one.joined && ` · ${words.noPhone}`}
            </span>
            <Key kind="small" label={`${words.showRuns} ${one.person}`} onPress={() => setShows(one)}>
              {words.showRuns}
            </Key>
            {one.here != null && (
              <Key
                kind="small"
                label={`${words.sawOff} ${one.person}`}
                onPress={() => void say({ kind: "visit", on_site: false, person: one.person })}
              >
                {words.sawOff}
              </Key>
            )}
          </li>
        ))}
      </ul>
      {shows && <ShowPanel visitor={shows} onClose={() => setShows(null)} />}
    </section>
  );
}

function hereWords(one: VisitorCard): string {
  const words = t().record;
  if (one.here != null) return words.onSite(timeOfDay(one.here));
  return one.left != null ? words.offSite(timeOfDay(one.left)) : words.neverOnSite;
}

function ShowPanel({ visitor, onClose }: { visitor: VisitorCard; onClose: () => void }) {
  const words = t().record;
  const [picked, setPicked] = useState<string[]>(visitor.shown);
  const all = (sheet.value?.targets ?? []).map(({ id, name }) => ({ id, name: name || id }));
  return (
    <Panel title={words.showRunsTo(visitor.person)} onClose={onClose} closeWord={t().cancel}>
      <Pick title={words.inspectOn} all={all} picked={picked} onPick={setPicked} />
      <Key
        kind="send"
        onPress={() => {
          void say({ kind: "show_runs", person: visitor.person, targets: picked });
          onClose();
        }}
      >
        {words.showRuns}
      </Key>
    </Panel>
  );
}
