/** Takes the lines that fit along: copied for a letter or a sheet, or as a file. */
import { useState } from "preact/hooks";
import { Key } from "../../../parts/keys";
import { said } from "../../../said";
import type { LogLine } from "../../../wire";
import { copied } from "./copy";
import { csv, inFull, keepFile, tabbed } from "./csv";
import { COLUMNS, kindWord } from "./order";
import { logWords } from "./words";

/** As it stands on the page. */
function cells(line: LogLine): string[] {
  return [
    String(line.seq),
    inFull(line.made_at),
    line.by,
    kindWord(line.kind),
    line.machine ?? "",
    line.mark ?? "",
    line.verdict ? logWords().verdicts[line.verdict] : "",
    said(line),
  ];
}

/** `name` is what the file is called after: the day. */
export function Keep({ lines, name }: { lines: readonly LogLine[]; name: string }) {
  const words = logWords();
  const [told, setTold] = useState("");
  const none = lines.length === 0;
  const copy = async () => {
    const heads = COLUMNS.map((column) => words.columns[column]);
    const took = await copied(tabbed([heads, ...lines.map(cells)]));
    setTold(took ? words.copiedLines(lines.length) : words.notCopied);
  };
  return (
    <>
      <Key kind="small seldom" disabled={none} onPress={() => void copy()}>
        {words.copyLines}
      </Key>
      <Key
        kind="small seldom"
        disabled={none}
        onPress={() => keepFile(`rodcall-log-${name}.csv`, csv(lines))}
      >
        {words.csvLines}
      </Key>
      {told && <small role="status">{told}</small>}
    </>
  );
}
