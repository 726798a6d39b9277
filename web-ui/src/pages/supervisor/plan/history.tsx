/** What the log says of a mark or a machine, newest first: asked anew when the log has grown, not with every entry of a busy minute. */
import { useEffect, useState } from "preact/hooks";
import { log } from "../../../hub";
import { said } from "../../../said";
import { timeOfDay } from "../../../show";
import { head } from "../../../state";
import type { LogLine, LogQuery } from "../../../wire";
import { t } from "../words";

/** No more of a thing's lines than so many; LOG has the rest. */
const MOST = 80;
/** The log is asked again at most so often, ms. */
const PAUSE = 1_500;

export interface History {
  lines: LogLine[];
  trouble: string;
  /** The log has answered at least once. */
  known: boolean;
}

export function useHistory(of: Pick<LogQuery, "mark" | "machine">): History {
  const key = JSON.stringify(of);
  const [found, setFound] = useState<History & { of: string }>({
    of: "",
    lines: [],
    trouble: "",
    known: false,
  });
  const newest = head.value;
  useEffect(() => {
    let gone = false;
    const ask = async () => {
      const got = await log({ ...of, before: newest + 1, limit: MOST });
      if (gone) return;
      setFound((had) => ({
        of: key,
        known: true,
        lines: got.ok ? got.value.lines : had.of === key ? had.lines : [],
        trouble: got.ok ? "" : got.text,
      }));
    };
    // At once for another thing, else when the log has been quiet for a moment.
    const timer = setTimeout(() => void ask(), found.of === key ? PAUSE : 0);
    return () => {
      gone = true;
      clearTimeout(timer);
    };
  }, [key, newest]);
  return found.of === key ? found : { lines: [], trouble: "", known: false };
}

const READING = /^reading_|^spot_/;
/** That a call came to a phone and was seen there is its history; what was told and how it ended is the call. */
const CALL = /^call_(?!delivered|shown)/;

/** Readings, calls, and all else, each newest first. */
export function parted(lines: readonly LogLine[]) {
  return {
    readings: lines.filter((one) => READING.test(one.kind)),
    calls: lines.filter((one) => CALL.test(one.kind)),
    others: lines.filter((one) => !READING.test(one.kind) && !CALL.test(one.kind)),
  };
}

export function Lines({ title, lines }: { title: string; lines: readonly LogLine[] }) {
  if (lines.length === 0) return null;
  return (
    <details open>
      <summary>
        {title} <small>{lines.length}</small>
      </summary>
      <ol class="lines">
        {lines.map((one) => (
          <li key={one.seq}>
            <span>
              <time>{timeOfDay(one.made_at)}</time> <strong>{one.by}</strong> {said(one)}
            </span>
          </li>
        ))}
      </ol>
    </details>
  );
}

/** The log's lines of a thing under its card. */
export function HistoryOf({ of }: { of: Pick<LogQuery, "mark" | "machine"> }) {
  const words = t().desk;
  const { lines, trouble, known } = useHistory(of);
  const { readings, calls, others } = parted(lines);
  return (
    <>
      {trouble && <p class="warning">{trouble}</p>}
      {!known && !trouble && <p class="quiet">{t().loading}</p>}
      <Lines title={words.readings} lines={readings} />
      <Lines title={words.calls} lines={calls} />
      <Lines title={words.history} lines={others} />
    </>
  );
}
