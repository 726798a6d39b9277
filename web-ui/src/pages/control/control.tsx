/** CONTROL: elevations typed a second time, a line of levels, a laser's own test, two lasers on one point. */
import { useState } from "preact/hooks";
import { Choice } from "../../parts/choice";
import { Panel } from "../../parts/panel";
import { supervisor } from "../../state";
import { t } from "../../words_later";
import { Compare } from "./compare";
import { Levels } from "./levels";
import { TakeBenchmark } from "./take_benchmark";
import { Turned, TwoPeg } from "./tests";
import { TypeAgain } from "./type_again";
import { c } from "./words";

const TASKS = { type_again: TypeAgain, levels: Levels, turned: Turned, two_peg: TwoPeg, compare: Compare };
type Task = keyof typeof TASKS;
const NAMES = Object.keys(TASKS) as Task[];

export function ControlPanel({ onClose }: { onClose: () => void }) {
  const words = c();
  const [task, setTask] = useState<Task | null>(null);
  const Shown = task && TASKS[task];
  return (
    <Panel title={t().control} onClose={onClose}>
      <Choice
        title={words.which}
        options={NAMES.map((id) => ({ id, name: words.tasks[id] }))}
        chosen={task}
        onChoose={setTask}
      />
      {Shown && <Shown key={task} />}
      {supervisor.value && <TakeBenchmark levels={supervisor.value.levels} />}
    </Panel>
  );
}
