/** One of several, as large tiles or as a row of keys. */
import { Key } from "./keys";

interface ChoiceProps<T extends string> {
  title: string;
  options: readonly { id: T; name: string; note?: string }[];
  chosen?: T | null | undefined;
  onChoose: (id: T) => void;
  kind?: string;
}

export function Choice<T extends string>({ title, options, chosen, onChoose, kind = "" }: ChoiceProps<T>) {
  return (
    <fieldset class={`choice ${kind}`}>
      <legend>{title}</legend>
      <div class="tiles">
        {options.map((option) => (
          <Key
            key={option.id}
            kind="tile"
            pressed={chosen === undefined ? undefined : option.id === chosen}
            onPress={() => onChoose(option.id)}
          >
            {option.name}
            {option.note && <small>{option.note}</small>}
          </Key>
        ))}
      </div>
    </fieldset>
  );
}
