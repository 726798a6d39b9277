/** MARKS: in the order of work or by nearness, with dig-to and last reading; a press goes there. */
import { useState } from "preact/hooks";
import { Key } from "../../parts/keys";
import { lastWords } from "../../parts/last";
import { LatePanel } from "../../parts/late_panel";
import { Plan } from "../../parts/plan";
import { Profile } from "../../parts/profile";
import { feet } from "../../show";
import { ground, sheet } from "../../state";
import type { Sheet, SheetMark } from "../../wire";
import { t } from "../../words";
import { chooseMark, digTo, mark } from "./at";
import { FacePanel } from "./face";
import { nearest } from "./near";
import { leave, leaving } from "./open";
import { Leaving } from "./read";
import { paintWords, TiesFirst } from "./ties_first";

interface MarksProps {
  onChosen: () => void;
  onWork: () => void;
}

export function MarksPage({ onChosen, onWork }: MarksProps) {
  const words = t();
  const [near, setNear] = useState(false);
  const [search, setSearch] = useState("");
  const [paint, setPaint] = useState(false);
  const [plan, setPlan] = useState(false);
  const [sums, setSums] = useState(false);
  const [ties, setTies] = useState<string | null>(null);
  const [open, setOpen] = useState<"face" | "pipes" | null>(null);
  const cuts = ground.value?.cuts;
  const all = sheet.value?.marks ?? [];
  const here = mark.value;
  const tied = all.find((one) => one.id === ties);
  // The mark that is chosen already is no other one: what is open there stays.
  const go = (id: string, then: () => void = () => undefined) => {
    if (id === here?.id) return then();
    leave(() => {
      chooseMark(id);
      then();
    });
  };
  const ordered = near && here ? nearest(all, here.place) : all;
  const found = ordered.filter((one) => one.id.toLowerCase().includes(search.trim().toLowerCase()));
  return (
    <div class="marks">
      <div class="marks-top">
        <label>
          <span>{words.search}</span>
          <input
            type="search"
            autocomplete="off"
            value={search}
            onInput={(event) => setSearch(event.currentTarget.value)}
          />
        </label>
        <Key kind="chip" pressed={!near} onPress={() => setNear(false)}>
          {words.inOrder}
        </Key>
        <Key kind="chip" pressed={near} onPress={() => setNear(true)}>
          {words.near}
        </Key>
        <Key kind="chip" onPress={() => setPlan(!plan)}>
          {plan ? words.list : words.plan}
        </Key>
        <Key kind="chip" onPress={() => setSums(true)}>
          {words.sumsKey}
        </Key>
        <Key kind="chip" onPress={onWork}>
          {words.account.work}
        </Key>
        {cuts && cuts.faces.length > 0 && (
          <Key kind="chip" onPress={() => setOpen("face")}>
            {words.cuts.face}
          </Key>
        )}
        {cuts && cuts.utilities.length > 0 && (
          <Key kind="chip" onPress={() => setOpen("pipes")}>
            {words.cuts.pipes}
          </Key>
        )}
        {here && (
          <Key kind="chip" onPress={() => setPaint(true)}>
            {words.paint}
          </Key>
        )}
      </div>
      <TiesFirst onTies={setTies} />
      {tied && (
        <LatePanel title={words.tiesOf(tied.id)} onClose={() => setTies(null)}>
          {(late) => <late.TiesPanel of={tied} onClose={() => setTies(null)} />}
        </LatePanel>
      )}
      {open === "face" && <FacePanel onClose={() => setOpen(null)} />}
      {open === "pipes" && (
        <LatePanel title={words.cuts.pipes} onClose={() => setOpen(null)}>
          {(late) => <late.PipesPanel onClose={() => setOpen(null)} />}
        </LatePanel>
      )}
      {leaving.value && <Leaving />}
      {sums && (
        <LatePanel title={words.sums} onClose={() => setSums(false)}>
          {(late) => <late.SumsPanel onClose={() => setSums(false)} />}
        </LatePanel>
      )}
      {paint && (
        <LatePanel title={words.paint} onClose={() => setPaint(false)}>
          {(late) => <late.PaintPanel onClose={() => setPaint(false)} />}
        </LatePanel>
      )}
      {plan && sheet.value && (
        <>
          <Plan
            sheet={sheet.value}
            ground={ground.value}
            chosen={here?.id ?? null}
            onChoose={(id) => go(id)}
          />
          {sheet.value.targets.map((target) => (
            <Profile key={target.id} target={target} sheet={sheet.value as Sheet} ground={ground.value} />
          ))}
        </>
      )}
      {!plan && found.length === 0 && <p>{words.noMarkFound}</p>}
      <ul class="mark-list" hidden={plan}>
        {found.map((one) => (
          <li key={one.id}>
            <Key kind="mark" pressed={one.id === here?.id} onPress={() => go(one.id, onChosen)}>
              <MarkRow mark={one} />
            </Key>
          </li>
        ))}
      </ul>
    </div>
  );
}

function MarkRow({ mark: one }: { mark: SheetMark }) {
  const words = t();
  const to = digTo(one, null);
  const last = ground.value?.marks.find((each) => each.id === one.id);
  const target = to === null ? (one.dig_to ? "…" : "") : `${words.digTo} ${feet(to)}`;
  return (
    <>
      <strong>{one.id}</strong>
      <small>
        {[one.machine, target, paintWords(one.paint), one.note].filter(Boolean).join(" · ")}
        <br />
        {lastWords(last)}
      </small>
    </>
  );
}
