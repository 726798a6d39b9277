/** A word or a number, typed into a field with its name. */
interface TypedProps {
  label: string;
  text: string;
  onTyped: (text: string) => void;
  bad?: boolean;
  decimal?: boolean;
}

export function Typed({ label, text, onTyped, bad = false, decimal = false }: TypedProps) {
  return (
    <label class="field">
      <span>{label}</span>
      <input
        inputMode={decimal ? "decimal" : "text"}
        autocomplete="off"
        value={text}
        aria-invalid={bad}
        onInput={(event) => onTyped(event.currentTarget.value)}
      />
    </label>
  );
}
