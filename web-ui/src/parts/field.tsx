/** One thing to type: a figure with the phone's number keys, or a word. */

interface FieldProps {
  name: string;
  value: string;
  onValue: (value: string) => void;
  text?: boolean;
}

export function Field({ name, value, onValue, text }: FieldProps) {
  return (
    <label class="field">
      <span>{name}</span>
      <input
        inputMode={text ? "text" : "decimal"}
        autocomplete="off"
        value={value}
        onInput={(event) => onValue(event.currentTarget.value)}
      />
    </label>
  );
}
