/** A name and a drawn signature under what is signed. */
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import type { Signature } from "../wire";
import { t } from "../words";
import { Field } from "./field";
import { Key } from "./keys";
import { Panel } from "./panel";
import { SignaturePad } from "./signature_pad";

/** What a page says around a signature. */
export interface SignWords {
  signer: string;
  draw: string;
  wipe: string;
}

interface SignProps {
  title: string;
  act: string;
  words: SignWords;
  name?: string;
  /** False while something else is missing. */
  ready?: boolean;
  onSigned: (signature: Signature) => void;
  onClose: () => void;
  children?: ComponentChildren;
}

export function SignPanel({ title, act, words, name, ready = true, onSigned, onClose, children }: SignProps) {
  const [signer, setSigner] = useState(name ?? "");
  const [strokes, setStrokes] = useState("");
  return (
    <Panel title={title} onClose={onClose} closeWord={t().cancel}>
      {children}
      <Field name={words.signer} text value={signer} onValue={setSigner} />
      <SignaturePad label={words.draw} wipe={words.wipe} strokes={strokes} onStrokes={setStrokes} />
      <Key
        kind="send"
        disabled={!ready || !signer.trim() || !strokes.includes("L")}
        onPress={() => {
          onSigned({ name: signer.trim(), strokes });
          onClose();
        }}
      >
        {act}
      </Key>
    </Panel>
  );
}
