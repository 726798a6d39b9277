/** LASER: the set-ups of the day, whether they may be used, and what is owed when they may not. */
import { useState } from "preact/hooks";
import { setUpName } from "../../given_names";
import { rodText } from "../../grade";
import { say } from "../../hub";
import { HoldKey, Key } from "../../parts/keys";
import { LatePanel } from "../../parts/late_panel";
import { Panel } from "../../parts/panel";
import { SetUpFacts } from "../../parts/set_up";
import { StartChecks, startLine } from "../../parts/start_checks";
import { Suspects } from "../../parts/suspects";
import { ground, sheet } from "../../state";
import type { SetUpCard } from "../../wire";
import { t } from "../../words_later";
import { choose, gradeRod, mark, rod } from "./at";
import { Unbroken } from "./large";

type Open =
  | { what: "start" }
  | { what: "set_up" }
  | { what: "control" }
  | { what: "check"; card: SetUpCard }
  | { what: "restate"; card: SetUpCard }
  | { what: "level"; card: SetUpCard };

export function LaserPage() {
  const [open, setOpen] = useState<Open | null>(null);
  const words = t();
  const close = () => setOpen(null);
  const standing = ground.value?.set_ups ?? [];
  return (
    <div class={`laser ${standing.length > 1 ? "several" : ""}`}>
      {ground.value && (
        <Key kind="wide start-line" onPress={() => setOpen({ what: "start" })}>
          {startLine(ground.value.start)}
        </Key>
      )}
      {standing.length === 0 && <p>{words.noSetUp.replace(words.laser, words.setUpNew)}</p>}
      {standing.map((card) => (
        <section class="card" key={card.id} aria-label={setUpName(card.id)}>
          <SetUpFacts card={card} />
          <SetUpKeys card={card} onOpen={setOpen} />
        </section>
      ))}
      <Suspects cards={ground.value?.suspects ?? []} />
      <div class="laser-foot">
        <GradeRod />
        <div class="pair">
          <Key onPress={() => setOpen({ what: "set_up" })}>{words.setUpNew}</Key>
          <Key onPress={() => setOpen({ what: "control" })}>{words.control}</Key>
        </div>
      </div>
      {open?.what === "control" && (
        <LatePanel title={words.control} onClose={close}>
          {(late) => <late.ControlPanel onClose={close} />}
        </LatePanel>
      )}
      {open?.what === "start" && ground.value && (
        <Panel title={words.crew.start.title} onClose={close}>
          <StartChecks start={ground.value.start} />
        </Panel>
      )}
      {open?.what === "set_up" && (
        <LatePanel title={words.setUpNew} onClose={close}>
          {(late) => (
            <late.SetUpPanel
              onClose={close}
              onDone={(id) => {
                choose({ setUp: id });
                const card = ground.value?.set_ups.find((one) => one.id === id);
                setOpen(card ? { what: "check", card } : null);
              }}
            />
          )}
        </LatePanel>
      )}
      {open?.what === "restate" && (
        <LatePanel title={words.restateSetUp} onClose={close}>
          {(late) => <late.SetUpPanel restates={open.card} onClose={close} onDone={close} />}
        </LatePanel>
      )}
      {open?.what === "check" && (
        <LatePanel title={words.checkShot} onClose={close}>
          {(late) => <late.CheckPanel card={open.card} onClose={close} />}
        </LatePanel>
      )}
      {open?.what === "level" && (
        <LatePanel title={words.levelAgain} onClose={close}>
          {(late) => <late.LevelPanel card={open.card} onClose={close} />}
        </LatePanel>
      )}
    </div>
  );
}

/** Large enough to set a receiver on the rod by. */
function GradeRod() {
  const must = gradeRod();
  if (must === null || !rod.value) return null;
  return (
    <p class="grade-rod">
      {mark.value?.id}: {t().rodMustRead}{" "}
      <strong>
        <Unbroken of={rodText(rod.value, must)} />
      </strong>
    </p>
  );
}

function SetUpKeys({ card, onOpen }: { card: SetUpCard; onOpen: (open: Open) => void }) {
  const words = t();
  const one = (sheet.value?.benchmarks.length ?? 0) < 2;
  const unproven = card.state.kind === "unproven";
  return (
    <div class="tiles close">
      {!(unproven && one) && (
        <Key kind="tile" onPress={() => onOpen({ what: "check", card })}>
          {unproven ? words.secondBenchmark : words.checkShot}
        </Key>
      )}
      {unproven && one && (
        <>
          <Key kind="tile" onPress={() => onOpen({ what: "level", card })}>
            {words.levelAgain}
          </Key>
          <HoldKey kind="tile" onPress={() => void say({ kind: "use_one_benchmark", set_up: card.id })}>
            {words.useOne}
            <small>{words.useOneWhy}</small>
          </HoldKey>
        </>
      )}
      <Key kind="tile" onPress={() => onOpen({ what: "restate", card })}>
        {words.restateSetUp}
      </Key>
      <HoldKey kind="tile" onPress={() => void say({ kind: "say_bumped", set_up: card.id })}>
        {words.bumped}
      </HoldKey>
      <HoldKey kind="tile" onPress={() => void say({ kind: "close_set_up", set_up: card.id, why: "" })}>
        {words.takeDown}
      </HoldKey>
    </div>
  );
}
