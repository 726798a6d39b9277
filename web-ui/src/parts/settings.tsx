/** SCREEN: the key to this screen's settings, and its language. */
import { useState } from "preact/hooks";
import { say } from "../hub";
import { languageOptions } from "../languages";
import { chosenLanguage, language, me } from "../state";
import type { Language, ScreenUnit } from "../wire";
import { t } from "../words";
import { Choice } from "./choice";
import { Key } from "./keys";
import { LatePanel } from "./late_panel";

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
      {open && (
        <LatePanel title={t().screen} onClose={() => setOpen(false)}>
          {(late) => <late.SettingsPanel onClose={() => setOpen(false)} />}
        </LatePanel>
      )}
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
