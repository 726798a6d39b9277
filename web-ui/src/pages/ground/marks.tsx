/** MARKS: marks in sight, ten at a time by number, near the last one, or by how they stand; the plan; and the way to what is seldom done. */
import { useState } from "preact/hooks";
import { Key } from "../../parts/keys";
import { gone, lastFigure, lastShort } from "../../parts/last";
import { Plan } from "../../parts/plan";
import { Profile } from "../../parts/profile";
import { feet } from "../../show";
import { ground, sheet } from "../../state";
import type { Sheet, SheetMark } from "../../wire";
import { t } from "../../words_later";
import { chooseMark, digTo, mark } from "./at";
import { cardOf, type Group, groupName, groupsOf, type Standing, standingOf } from "./groups";
import { MarkTools, type Tool } from "./mark_tools";
import { nearest } from "./near";
import { leave, leaving } from "./open";
import { Leaving } from "./read";
import { paintWords, tiesOwed } from "./ties_first";

interface MarksProps {
  onChosen: () => void;
  onWork: () => void;
}

/** Marks that are looked through at one glance; more of them are parted into groups. */
const AT_ONCE = 12;

export function MarksPage({ onChosen, onWork }: MarksProps) {
  const words = t();
  const [near, setNear] = useState(false);
  const [search, setSearch] = useState("");
  const [plan, setPlan] = useState(false);
  const [stands, setStands] = useState<Standing | null>(null);
  const [opened, setOpened] = useState<Group | null>(null);
  const [tool, setTool] = useState<Tool | null>(null);
  const all = sheet.value?.marks ?? [];
  const here = mark.value;
  // The mark that is chosen already is no other one: what is open there stays.
  const go = (id: string, then: () => void = () => undefined) => {
    if (id === here?.id) return then();
    leave(() => {
      chooseMark(id);
      then();
    });
  };
  const looked = search.trim().toLowerCase();
  const ordered = near && here ? nearest(all, here.place) : all;
  const found = ordered.filter(
    (one) => one.id.toLowerCase().includes(looked) && (stands === null || standingOf(one) === stands),
  );
  const parted = !near && stands === null && !looked && all.length > AT_ONCE;
  const groups = parted ? groupsOf(all) : [];
  const group =
    groups.find((one) => one.name === opened?.name) ??
    groups.find((one) => one.marks.some((each) => each.id === here?.id)) ??
    groups[0];
  const shown = parted ? (group?.marks ?? []) : near ? found.slice(0, AT_ONCE) : found;
  return (
    <div class="marks">
      <div class="marks-top">
        <label>
          <span class="unseen">{words.search}</span>
          <input
            type="search"
            autocomplete="off"
            placeholder={words.search}
            value={search}
            onInput={(event) => setSearch(event.currentTarget.value)}
          />
        </label>
        <Key kind="chip" pressed={near} onPress={() => setNear(!near)}>
          {words.near}
        </Key>
        <Key kind="chip" onPress={() => setPlan(!plan)}>
          {plan ? words.list : words.plan}
        </Key>
      </div>
      <StandingKeys marks={all} chosen={stands} onChoose={setStands} />
      {!plan && groups.length > 0 && (
        <div class="mark-groups">
          {groups.map((one) => (
            <Key kind="chip" key={one.name} pressed={one === group} onPress={() => setOpened(one)}>
              {groupName(one)}
            </Key>
          ))}
        </div>
      )}
      <ToolRow onTool={setTool} />
      {leaving.value && <Leaving />}
      {tool && <MarkTools tool={tool} onTool={setTool} onWork={onWork} />}
      {plan && sheet.value ? (
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
      ) : (
        <>
          {shown.length === 0 && <p>{words.noMarkFound}</p>}
          <ul class="mark-list">
            {shown.map((one) => (
              <li key={one.id}>
                <Key kind="mark" pressed={one.id === here?.id} onPress={() => go(one.id, onChosen)}>
                  <MarkRow mark={one} />
                </Key>
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}

const STANDINGS: readonly Standing[] = ["high", "low", "again", "on"];

interface StandingKeysProps {
  marks: readonly SheetMark[];
  chosen: Standing | null;
  onChoose: (standing: Standing | null) => void;
}

/** How many stand how; pressed, those alone are listed. What no mark is has no key. */
function StandingKeys({ marks, chosen, onChoose }: StandingKeysProps) {
  const words = t();
  const names: Record<Standing, string> = {
    high: words.verdictShort.high,
    low: words.verdictShort.low,
    on: words.verdictShort.on,
    again: words.shootAgainFilter,
  };
  const many = (standing: Standing) => marks.filter((one) => standingOf(one) === standing).length;
  const there = STANDINGS.filter((one) => one === chosen || many(one) > 0);
  if (there.length === 0) return null;
  return (
    <div class="mark-groups">
      {there.map((one) => (
        <Key
          kind="chip"
          key={one}
          pressed={one === chosen}
          onPress={() => onChoose(one === chosen ? null : one)}
        >
          {names[one]} {many(one)}
        </Key>
      ))}
    </div>
  );
}

/** Faces and buried lines are one press away; what is done seldom shares a key. */
function ToolRow({ onTool }: { onTool: (tool: Tool) => void }) {
  const words = t();
  const cuts = ground.value?.cuts;
  const [owed] = tiesOwed();
  return (
    <div class="mark-groups tools">
      {cuts && cuts.faces.length > 0 && (
        <Key kind="chip" onPress={() => onTool("face")}>
          {words.cuts.face}
        </Key>
      )}
      {cuts && cuts.utilities.length > 0 && (
        <Key kind="chip" onPress={() => onTool("pipes")}>
          {words.cuts.pipes}
        </Key>
      )}
      <Key kind="chip tools-key" onPress={() => onTool("menu")}>
        {words.tools}
        {owed && <small>{words.tiesFirst(owed.machine, owed.mark)}</small>}
      </Key>
    </div>
  );
}

function MarkRow({ mark: one }: { mark: SheetMark }) {
  const words = t();
  const to = digTo(one, null);
  const last = cardOf(one);
  const target = to === null ? (one.dig_to ? "…" : "") : `${words.digTo} ${feet(to)}`;
  return (
    <>
      <strong>{one.id}</strong>{" "}
      {last && (
        <span class="mark-stands">
          {lastShort(last)} {lastFigure(last)}
        </span>
      )}{" "}
      <small>
        {[one.machine, target, paintWords(one.paint), one.note, last && gone(last)]
          .filter(Boolean)
          .join(" · ")}
      </small>
    </>
  );
}
