/** SIGN THE DAY and AMEND: a name, a drawn signature, and for an amendment the entry that it names. */
import { useState } from "preact/hooks";
import { say } from "../../../hub";
import { Field } from "../../../parts/field";
import { SignPanel } from "../../../parts/sign";
import { t } from "../words";

export function SignDayPanel({ onClose }: { onClose: () => void }) {
  const words = t().record;
  return (
    <SignPanel
      title={words.sign}
      act={words.sign}
      words={words.signature}
      onSigned={(signature) => void say({ kind: "sign_day", signature })}
      onClose={onClose}
    >
      <p>{words.signNote}</p>
    </SignPanel>
  );
}

export function AmendPanel({ onClose }: { onClose: () => void }) {
  const words = t().record;
  const [entry, setEntry] = useState("");
  const [said, setSaid] = useState("");
  const number = /^\d{1,9}$/.test(entry.trim()) ? Number(entry.trim()) : null;
  return (
    <SignPanel
      title={words.amend}
      act={words.amend}
      words={words.signature}
      ready={number !== null && said.trim() !== ""}
      onSigned={(signature) => {
        if (number === null) return;
        void say({ kind: "amend_day", entry: number, words: said.trim(), signature });
      }}
      onClose={onClose}
    >
      <Field name={words.amendEntry} value={entry} onValue={setEntry} />
      <Field name={words.amendWords} text value={said} onValue={setSaid} />
    </SignPanel>
  );
}
