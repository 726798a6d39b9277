/** The layers of the desk's plan: the ground's lines as the field pages draw them, the names, and the things that can be pressed. */
import { lastShort } from "../../../parts/last";
import { Machine, Outline, path, SiteLine } from "../../../parts/plan";
import { CutLines } from "../../../parts/plan_cuts";
import { t } from "../words";
import { type Counted, HIGH, type Labels, leader } from "./labels";
import { MACHINE, type Shown, type Text, whoIsIn } from "./names";
import { inSight, onScreen, type Room, type Sight, type Spot } from "./sight";
import { BenchmarkSign, REACH, Sign } from "./signs";
import { same, standingOf, type Thing } from "./things";

interface LayerProps {
  shown: Shown;
  sight: Sight;
  room: Room;
}

/** What is drawn in feet: east to the right, north up. */
export function Drawing({ shown, sight, room, fresh }: LayerProps & { fresh: string | null }) {
  const { sheet, machines, lines, picked } = shown;
  // A machine's sign has one size on the screen.
  const size = MACHINE.wide / sight.scale;
  return (
    <g transform={onGroundBy(sight, room)}>
      {sheet.targets.map((target) => (
        <Outline
          key={target.id}
          target={target}
          drawn={sheet.drawn.find((one) => one.id === target.id)?.drawn}
          fresh={target.id === fresh}
        />
      ))}
      <CutLines sheet={sheet} size={size} bare />
      {sheet.lines.map((line) => (
        <SiteLine key={line.id} line={line} size={size} bare />
      ))}
      {lines
        .filter((one) => same(one, picked))
        .map((one) => (
          <polyline key={path(one.points)} class="plan-picked" points={path(one.points)} />
        ))}
      {machines.map((machine) => (
        <Machine
          key={machine.id}
          machine={machine}
          reach={sheet.machines.find((one) => one.id === machine.id)?.reach}
          size={size}
        />
      ))}
    </g>
  );
}

const onGroundBy = ({ east, north, scale }: Sight, { wide, high }: Room) =>
  `translate(${wide / 2 - east * scale} ${high / 2 + north * scale}) scale(${scale})`;

interface NamesProps {
  found: Labels;
  texts: Map<string, Text>;
  onPick: (thing: Thing) => void;
}

/** Names where they have room, with a straight where they stand off, and counts of those that have none. */
export function Names({ found, texts, onPick }: NamesProps) {
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in it takes the focus; each thing has its name on itself.
    <g class="plan-names" aria-hidden="true">
      {found.placed.map((one) => {
        const [from, to] = leader(one);
        const text = texts.get(one.id);
        return (
          <g key={one.id} data-name={one.id}>
            {one.led && <path class="plan-leader" d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />}
            {/* biome-ignore lint/a11y/noStaticElementInteractions: the keyboard presses the thing itself. */}
            <text x={one.box.left + 2} y={one.box.top + HIGH - 4} onClick={() => text && onPick(text.of)}>
              {one.short ? text?.brief : text?.text}
            </text>
          </g>
        );
      })}
    </g>
  );
}

interface ThingsProps extends LayerProps {
  counted: readonly Counted[];
  onPick: (thing: Thing) => void;
  /** A count is pressed: its marks are looked at from nearer. */
  onNear: (at: Spot) => void;
}

/** What can be pressed: lines under marks under machines, which no mark may hide; to the keyboard one stop. */
export function Things({ shown, sight, room, counted, onPick, onNear }: ThingsProps) {
  const words = t();
  const { sheet, machines, marks, lines, picked } = shown;
  const seen = sheet.marks.filter((one) => inSight(onScreen(one.place, sight, room), room));
  const first: Thing | null = picked ?? (seen[0] ? { kind: "mark", id: seen[0].id } : null);
  const press = (thing: Thing, name: string) => ({
    class: "plan-thing",
    role: "button" as const,
    tabindex: same(thing, first) ? 0 : -1,
    "aria-label": name,
    "aria-pressed": same(thing, picked),
    onClick: () => onPick(thing),
    onKeyDown: (event: KeyboardEvent) => {
      if (event.key !== "Enter" && event.key !== " ") return;
      event.preventDefault();
      onPick(thing);
    },
  });
  const at = (spot: Spot) => `translate(${spot.x} ${spot.y})`;
  return (
    <g>
      <g transform={onGroundBy(sight, room)}>
        {lines.map((one) => (
          <g
            key={`${one.kind} ${one.id} ${path(one.points.slice(0, 2))}`}
            {...press(one, `${words.desk.kinds[one.kind]} ${one.id}`)}
          >
            <polyline class="plan-hit-line" points={path(one.points)} />
          </g>
        ))}
      </g>
      {sheet.benchmarks.map(
        (one) =>
          one.place && (
            <g
              key={one.id}
              transform={at(onScreen(one.place, sight, room))}
              {...press({ kind: "benchmark", id: one.id }, `${words.desk.kinds.benchmark} ${one.id}`)}
            >
              <circle class="plan-hit" r={REACH + 3} />
              <BenchmarkSign />
            </g>
          ),
      )}
      {seen.map((one) => {
        const card = marks.get(one.id);
        const thing: Thing = { kind: "mark", id: one.id };
        return (
          <g
            key={one.id}
            transform={at(onScreen(one.place, sight, room))}
            {...press(thing, `${one.id} ${lastShort(card)}`.trim())}
          >
            <circle class="plan-hit" r={REACH + 3} />
            <Sign of={standingOf(card)} />
            {same(thing, picked) && <circle class="plan-chosen" r={REACH + 5} />}
          </g>
        );
      })}
      {machines.map(
        (one) =>
          one.place && (
            <g
              key={one.id}
              transform={at(onScreen(one.place.at, sight, room))}
              {...press({ kind: "machine", id: one.id }, `${one.id} ${whoIsIn(one)}`.trim())}
            >
              <rect
                class="plan-machine plan-hit-machine"
                x={-MACHINE.wide}
                y={-MACHINE.high}
                width={MACHINE.wide * 2}
                height={MACHINE.high * 2}
              />
              <text class="plan-on" text-anchor="middle" y={5} font-size={13}>
                {one.id}
              </text>
              {same({ kind: "machine", id: one.id }, picked) && (
                <circle class="plan-chosen" r={MACHINE.wide + 7} />
              )}
            </g>
          ),
      )}
      {counted.map(({ ids, box, anchor }) => {
        const [from, to] = leader({ anchor, box });
        return (
          // biome-ignore lint/a11y/useSemanticElements: a drawing has no button.
          <g
            key={ids.join()}
            class="plan-thing plan-count"
            role="button"
            tabindex={-1}
            aria-label={words.desk.countOf(ids.length, ids.map((one) => one.replace(/^\S+ /, "")).join(", "))}
            onClick={() => onNear(anchor)}
            onKeyDown={(event: KeyboardEvent) => event.key === "Enter" && onNear(anchor)}
          >
            <path class="plan-leader" d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
            <rect x={box.left} y={box.top} width={box.right - box.left} height={box.bottom - box.top} />
            <text x={box.left + 3} y={box.top + HIGH - 4}>
              +{ids.length}
            </text>
          </g>
        );
      })}
    </g>
  );
}
