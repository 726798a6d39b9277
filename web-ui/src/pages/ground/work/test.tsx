/** A soil test as its tester states it, with what has to be dug out where it fails. */
import { useState } from "preact/hooks";
import { numberTyped } from "../../../amounts";
import { say } from "../../../hub";
import { Choice } from "../../../parts/choice";
import { Field } from "../../../parts/field";
import { Key } from "../../../parts/keys";
import { Panel } from "../../../parts/panel";
import type { GroundAccount } from "../../../wire";
import { t } from "../../../words";
import { mark } from "../at";
import { lengthTyped } from "./soil";
import { w } from "./words";

type Kind = "bearing" | "density";

export function TestPanel({ account, onClose }: { account: GroundAccount; onClose: () => void }) {
  const words = w();
  const here = mark.value?.id ?? "";
  const [kind, setKind] = useState<Kind>("bearing");
  const [tester, setTester] = useState("");
  const [figures, setFigures] = useState<Record<string, string>>({
    asked: String(account.bearing_psf ?? ""),
  });
  const typed = (name: string) => figures[name] ?? "";
  const put = (name: string) => (value: string) => setFigures({ ...figures, [name]: value });
  const [stated, asked, wet, water] = ["stated", "asked", "wet", "water"].map((name) =>
    numberTyped(typed(name)),
  );
  const test =
    kind === "bearing"
      ? typeof stated === "number" && typeof asked === "number"
        ? { kind, stated_psf: stated, asked_psf: asked }
        : null
      : typeof wet === "number" && typeof water === "number"
        ? { kind, wet_pcf: wet, water_percent: water }
        : null;
  const [depth, from, to, width] = ["depth", "from", "to", "width"].map((name) => lengthTyped(typed(name)));
  const fails =
    kind === "bearing" && typeof stated === "number" && typeof asked === "number" && stated < asked;
  const digs = fails && depth !== undefined;
  const ready =
    test !== null &&
    tester.trim() !== "" &&
    here !== "" &&
    (!digs || (depth !== null && typeof width === "number"));
  const send = () => {
    if (!ready) return;
    const undercut =
      digs && typeof depth === "number" && typeof width === "number"
        ? { undercut: { depth, from: from ?? null, to: to ?? null, width, material: "gravel", lifts: 2 } }
        : {};
    void say({ kind: "test_soil", mark: here, tester, test, ...undercut });
    onClose();
  };
  return (
    <Panel title={words.testTitle(here)} onClose={onClose} closeWord={t().cancel}>
      {account.density_asked && (
        <Choice
          title={words.testKey}
          options={[
            { id: "bearing", name: words.bearingKind },
            { id: "density", name: words.densityKind },
          ]}
          chosen={kind}
          onChoose={(id: Kind) => setKind(id)}
          kind="chips"
        />
      )}
      <Field name={words.tester} value={tester} onValue={setTester} text />
      {kind === "bearing" ? (
        <>
          <Field name={words.statedPsf} value={typed("stated")} onValue={put("stated")} />
          <Field name={words.askedPsf} value={typed("asked")} onValue={put("asked")} />
        </>
      ) : (
        <>
          <Field name={words.wetPcf} value={typed("wet")} onValue={put("wet")} />
          <Field name={words.water} value={typed("water")} onValue={put("water")} />
        </>
      )}
      {fails && (
        <>
          <Field name={words.undercutDepth} value={typed("depth")} onValue={put("depth")} />
          {depth !== undefined && (
            <>
              <Field name={words.undercutFrom} value={typed("from")} onValue={put("from")} />
              <Field name={words.undercutTo} value={typed("to")} onValue={put("to")} />
              <Field name={words.undercutWide} value={typed("width")} onValue={put("width")} />
            </>
          )}
        </>
      )}
      <Key kind="send" disabled={!ready} why={t().kept.owed.something} onPress={send}>
        {t().send}
      </Key>
    </Panel>
  );
}
