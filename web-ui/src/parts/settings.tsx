/** Language, units, light and voice of this screen. */
import { useState } from "preact/hooks";
import { say } from "../hub";
import { languageOptions } from "../languages";
import { chosenLanguage, language, me, spoken, theme, unit } from "../state";
import type { Language, ScreenUnit } from "../wire";
import { t } from "../words";
import { Choice } from "./choice";
import { LeftWords } from "./kept";
import { HoldKey, Key } from "./keys";
import { Panel } from "./panel";

/** Changed on the screen at once; the hub hears of it so that the log keeps what was shown. */
export function changeScreen(to: { language?: Language; unit?: ScreenUnit }): void {
  if (to.language) chosenLanguage.value = to.language;
  const who = me.value;
  if (!who) return;
  me.value = { ...who, ...to };
  void say({
    kind: "change_screen",
    language: to.language ?? who.language,
    unit: to.unit ?? who.unit,
  });
}

export function Settings() {
  const [open, setOpen] = useState(false);
  return (
    <>
      <Key kind="small" onPress={() => setOpen(true)}>
        {t().screen}
      </Key>
      {open && <SettingsPanel onClose={() => setOpen(false)} />}
    </>
  );
}

function SettingsPanel({ onClose }: { onClose: () => void }) {
  const units = t().unitNames;
  return (
    <Panel title={t().screen} onClose={onClose}>
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
      {me.value?.machine && <OfTheCab machine={me.value.machine} onDone={onClose} />}
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
      <Key kind="wide" onPress={give}>
        {t().giveCab(machine)}
      </Key>
      <p class="quiet">{t().giveCabNote}</p>
      <HoldKey kind="down" onPress={getOut}>
        {t().wayIn.bucketDown}
      </HoldKey>
      <p class="quiet">{t().getOut}</p>
    </>
  );
}

export function LanguageChoice() {
  return (
    <Choice
      title={t().language}
      options={languageOptions}
      chosen={language.value}
      onChoose={(id: Language) => changeScreen({ language: id })}
    />
  );
}
