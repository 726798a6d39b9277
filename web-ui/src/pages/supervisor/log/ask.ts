/** What LOG asks the hub for beside its lines: an entry as it is kept, byte for byte. */
import { ask, type Got, reason } from "../../../hub";
import { t } from "../../../words";

export async function entryText(seq: number): Promise<Got<string>> {
  try {
    const answer = await ask(`/api/log/${seq}`);
    if (answer.ok) return { ok: true, value: await answer.text() };
    return { ok: false, text: await reason(answer) };
  } catch {
    return { ok: false, text: t().noHub };
  }
}
