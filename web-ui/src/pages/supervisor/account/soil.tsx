/** Soil tests, undercuts that wait, patches with their lifts, rock above the dig. */
import { useState } from "preact/hooks";
import { patchName, setUpName } from "../../../given_names";
import { Key } from "../../../parts/keys";
import { said } from "../../../said";
import { feet, signed, timeOfDay } from "../../../show";
import type { AccountView, TestCard, VoidCause } from "../../../wire";
import { WhyPanel } from "../panels";
import { t } from "../words";

function voidWords(why: VoidCause): string {
  const words = t().account;
  if (why.kind === "moved") return words.voidMoved(signed(why.by));
  if (why.kind === "revised") return words.voidRevised(why.target);
  if (why.kind === "rain") return words.voidRain;
  if (why.kind === "water") return words.voidWater;
  if (why.kind === "slough") return words.voidSlough(why.zone);
  return why.kind === "laser" ? words.voidLaser(setUpName(why.set_up)) : why.why;
}

export function Tests({ account }: { account: AccountView }) {
  const words = t().account;
  const [confirms, setConfirms] = useState<number | null>(null);
  const [voids, setVoids] = useState<TestCard | null>(null);
  return (
    <>
      {account.tests.length === 0 && <p>{words.noTests}</p>}
      <ul class="lines">
        {account.tests.map((one) => (
          <li key={one.test}>
            <span>
              <strong>
                {one.mark} {words.standing[one.standing]}
              </strong>{" "}
              {said(one)} · {feet(one.elevation)} ft · {one.tester} · {timeOfDay(one.made_at)}
              {one.void && ` · ${voidWords(one.void)}`}
              {one.replaced && ` · ${words.replaced}`}
            </span>
            {one.standing === "passes" && (
              <Key kind="small" label={`${words.voidTest} ${one.mark}`} onPress={() => setVoids(one)}>
                {words.voidTest}
              </Key>
            )}
          </li>
        ))}
        {account.undercuts.map((one) => (
          <li key={`undercut ${one.undercut}`}>
            <span>{words.undercutOf(one.mark, feet(one.depth), one.cy.toFixed(2), one.material)}</span>
            <Key
              kind="small"
              label={`${words.confirmUndercut} ${one.mark}`}
              onPress={() => setConfirms(one.undercut)}
            >
              {words.confirmUndercut}
            </Key>
          </li>
        ))}
      </ul>
      {voids && (
        <WhyPanel
          title={`${voids.mark} · ${voids.tester}`}
          ask={words.voidWhy}
          act={words.voidTest}
          command={(why) => ({ kind: "void_test", test: voids.test, why })}
          onClose={() => setVoids(null)}
        />
      )}
      {confirms !== null && <UndercutPanel undercut={confirms} onClose={() => setConfirms(null)} />}
    </>
  );
}

/** The engineer's word goes with it. */
export function UndercutPanel({ undercut, onClose }: { undercut: number; onClose: () => void }) {
  const words = t().account;
  return (
    <WhyPanel
      title={words.confirmUndercut}
      ask={words.undercutWhy}
      act={words.confirmUndercut}
      command={(why) => ({ kind: "confirm_undercut", undercut, why })}
      onClose={onClose}
    />
  );
}

export function Patches({ account }: { account: AccountView }) {
  const words = t().account;
  return (
    <>
      {account.patches.length === 0 && <p>{words.noPatches}</p>}
      <ul class="lines">
        {account.patches.map((one) => (
          <li key={one.patch}>
            <span>
              <strong>
                {patchName(one.patch)} {one.mark} {words.step[one.step]}
              </strong>{" "}
              {words.patchLine(
                `${feet(one.length)} × ${feet(one.width)} × ${feet(one.depth)}`,
                one.cy.toFixed(2),
              )}{" "}
              · {words.liftsOf(one.lifts, one.lifts_needed)}
            </span>
          </li>
        ))}
      </ul>
      {account.lifts.length > 0 && (
        <>
          <h3>{words.lifts}</h3>
          <ul class="lines">
            {account.lifts.map((one) => (
              <li key={`${one.at} ${one.on} ${one.lift}`}>
                <span>
                  {timeOfDay(one.at)} {words.liftLine(one.on, one.lift, feet(one.thickness), one.passes)} ·{" "}
                  {words.damp[one.damp]}
                  {one.too_thick && <strong> {words.thick}</strong>}
                </span>
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

export function Rock({ account }: { account: AccountView }) {
  const words = t().account;
  const { rock } = account;
  if (rock.points.length === 0) return <p>{words.noRock}</p>;
  return (
    <>
      {rock.cy == null ? (
        <p>{rock.why && said(rock.why)}</p>
      ) : (
        <p class="told-line">{words.rockIs(rock.cy.toFixed(1), (rock.edge_doubt_cy ?? 0).toFixed(1))}</p>
      )}
      <ul class="lines">
        {rock.points.map((one) => (
          <li key={one.point}>
            <strong>{one.point}</strong> {words.rockPoint(feet(one.top), feet(one.at.x), feet(one.at.y))}{" "}
            {one.what}
          </li>
        ))}
      </ul>
    </>
  );
}
