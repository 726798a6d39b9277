/** Language, units, light and voice of this screen; in a cab, what is said before anybody gets out of it. */
import { say } from "../hub";
import { me, spoken, theme, unit } from "../state";
import type { ScreenUnit } from "../wire";
import { t } from "../words_later";
import { Choice } from "./choice";
import { LeftWords } from "./kept";
import { HoldKey, Key } from "./keys";
import { Panel } from "./panel";
import { changeScreen, LanguageChoice } from "./settings";

export function SettingsPanel({ onClose }: { onClose: () => void }) {
  const units = t().unitNames;
  return (
    <Panel title={t().screen} onClose={onClose}>
      {me.value?.machine && <OfTheCab machine={me.value.machine} onDone={onClose} />}
      {/* In the cab nothing else stands over the number. */}
      <LeftWords />
      <LanguageChoice />
      <Choice
        title={t().units}
        options={[
          { id: "tenths", name: units.tenths },
          { id: "feet_inches", name: units.feet_inches },
          { id: "millimetres", name: units.millimetres },
        ]}
        chosen={unit.value}
        onChoose={(id: ScreenUnit) => changeScreen({ unit: id })}
      />
      <Choice
        title={t().light}
        options={[
          { id: "sun", name: t().sun },
          { id: "dusk", name: t().dusk },
        ]}
        chosen={theme.value}
        onChoose={(id: "sun" | "dusk") => {
          theme.value = id;
        }}
      />
      <Choice
        title={t().voice}
        options={[
          { id: "on", name: t().on },
          { id: "off", name: t().off },
        ]}
        chosen={spoken.value ? "on" : "off"}
        onChoose={(id: "on" | "off") => {
          spoken.value = id === "on";
        }}
      />
    </Panel>
  );
}

/** A code that is scanned elsewhere takes no cab: whoever sits in it gives it away. Whoever gets out leaves the bucket down. */
function OfTheCab({ machine, onDone }: { machine: string; onDone: () => void }) {
  const give = () => {
    void say({ kind: "give_cab", machine });
    onDone();
  };
  const getOut = () => {
    void say({ kind: "bucket_down", answers: [] });
    onDone();
  };
  return (
    <>
      <HoldKey kind="down" onPress={getOut}>
        {t().wayIn.bucketDown}
      </HoldKey>
      <p class="quiet">{t().getOut}</p>
      <Key kind="wide" onPress={give}>
        {t().giveCab(machine)}
      </Key>
      <p class="quiet">{t().giveCabNote}</p>
    </>
  );
}
