/** What is done at marks beside reading them: paint, ties, sums, work; faces and buried lines. */
import { Key } from "../../parts/keys";
import { LatePanel } from "../../parts/late_panel";
import { Panel } from "../../parts/panel";
import { Rain } from "../../parts/rain";
import { ground, sheet } from "../../state";
import { t } from "../../words_later";
import { mark } from "./at";
import { TiesFirst } from "./ties_first";

/** What is open; of the ties, which mark's. */
export type Tool = "menu" | "face" | "pipes" | "sums" | "paint" | { ties: string };

interface MarkToolsProps {
  tool: Tool;
  onTool: (tool: Tool | null) => void;
  onWork: () => void;
}

export function MarkTools({ tool, onTool, onWork }: MarkToolsProps) {
  const words = t();
  const close = () => onTool(null);
  if (tool === "face") {
    return (
      <LatePanel title={words.cuts.face} onClose={close}>
        {(late) => <late.FacePanel onClose={close} />}
      </LatePanel>
    );
  }
  if (tool === "pipes") {
    return (
      <LatePanel title={words.cuts.pipes} onClose={close}>
        {(late) => <late.PipesPanel onClose={close} />}
      </LatePanel>
    );
  }
  if (tool === "sums") {
    return (
      <LatePanel title={words.sums} onClose={close}>
        {(late) => <late.SumsPanel onClose={close} />}
      </LatePanel>
    );
  }
  if (tool === "paint") {
    return (
      <LatePanel title={words.paint} onClose={close}>
        {(late) => <late.PaintPanel onClose={close} />}
      </LatePanel>
    );
  }
  if (tool === "menu") {
    return (
      <Panel title={words.tools} onClose={close}>
        <div class="tiles">
          {mark.value && (
            <Key kind="tile" onPress={() => onTool("paint")}>
              {words.paint}
            </Key>
          )}
          <Key kind="tile" onPress={() => onTool("sums")}>
            {words.sumsKey}
          </Key>
          <Key kind="tile" onPress={onWork}>
            {words.account.work}
          </Key>
        </div>
        {/* Where there are faces, FACE has it. */}
        {ground.value?.cuts.faces.length === 0 && <Rain rain={ground.value.rain} />}
        <TiesFirst onTies={(ties) => onTool({ ties })} />
      </Panel>
    );
  }
  const tied = sheet.value?.marks.find((one) => one.id === tool.ties);
  return (
    tied && (
      <LatePanel title={words.tiesOf(tied.id)} onClose={close}>
        {(late) => <late.TiesPanel of={tied} onClose={close} />}
      </LatePanel>
    )
  );
}
