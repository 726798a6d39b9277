/** What a field is typed into: a text, a choice, a group, a list that grows; each with its fault beside it. */
import { useId } from "preact/hooks";
import { Key } from "../../../parts/keys";
import { said } from "../../../said";
import type { DraftFault, FormField, SiteFormOf, Typed, TypedTable } from "../../../wire";
import { t } from "../words";
import { at, put, withFeet } from "./draft";

export interface Typing {
  typed: TypedTable;
  faults: readonly DraftFault[];
  /** The names of the things of a kind. */
  names: (of: SiteFormOf) => string[];
  onTyped: (typed: TypedTable) => void;
}

export interface FieldProps extends Typing {
  field: FormField;
  path: string;
  fixed: boolean;
}

export function listOf(value: Typed | undefined): Typed[] {
  return Array.isArray(value) ? value : [];
}

function Faults({ of }: { of: readonly DraftFault[] }) {
  return (
    <>
      {of.map((fault) => (
        <p key={fault.english} class={fault.warning ? "quiet" : "trouble"}>
          {said(fault)}
        </p>
      ))}
    </>
  );
}

interface TextProps extends FieldProps {
  name: string;
  asLength?: boolean;
}

export function Text({ field, path, fixed, typed, faults, onTyped, name, asLength = false }: TextProps) {
  const id = useId();
  const value = at(typed, path);
  const own = faults.filter((fault) => fault.field === path);
  const wrong = own.some((fault) => !fault.warning);
  const set = (text: string) => onTyped(put(typed, path, text) as TypedTable);
  return (
    <div class="field">
      <label for={id}>{name}</label>
      <input
        id={id}
        autocomplete="off"
        autocapitalize={field.key === "id" ? "characters" : "off"}
        readOnly={fixed || field.takes.kind === "fixed"}
        value={typeof value === "string" ? value : ""}
        aria-invalid={wrong}
        onInput={(event) => set(event.currentTarget.value)}
        onBlur={(event) => asLength && set(withFeet(event.currentTarget.value))}
      />
      <Faults of={own} />
    </div>
  );
}

interface PickProps {
  name: string;
  own: readonly DraftFault[];
  value: Typed | undefined;
  options: readonly (readonly [string, string])[];
  onPick: (to: Typed | undefined) => void;
}

export function Pick({ name, own, value, options, onPick }: PickProps) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{name}</label>
      <select
        id={id}
        value={typeof value === "string" ? value : ""}
        aria-invalid={own.some((fault) => !fault.warning)}
        onChange={(event) => onPick(event.currentTarget.value || undefined)}
      >
        <option value="">–</option>
        {options.map(([one, title]) => (
          <option key={one} value={one}>
            {title}
          </option>
        ))}
      </select>
      <Faults of={own} />
    </div>
  );
}

interface GroupProps {
  name: string;
  faults: readonly DraftFault[];
  children: preact.ComponentChildren;
}

export function Group({ name, faults, children }: GroupProps) {
  return (
    <fieldset class="group">
      <legend>{name}</legend>
      <Faults of={faults} />
      {children}
    </fieldset>
  );
}

/** `high`: with its elevation. */
export function Point({ high = false, ...props }: FieldProps & { high?: boolean }) {
  const words = t();
  return (
    <div class={`pair ${high ? "high" : ""}`}>
      <Text {...props} name={words.east} path={`${props.path}.0`} asLength />
      <Text {...props} name={words.north} path={`${props.path}.1`} asLength />
      {high && <Text {...props} name={words.desk.elevationOf} path={`${props.path}.2`} asLength />}
    </div>
  );
}

interface RowProps {
  label: string;
  onLess: () => void;
  children: preact.ComponentChildren;
}

export function Row({ label, onLess, children }: RowProps) {
  return (
    <div class="form-row">
      <div>{children}</div>
      <Key kind="small" label={`${t().lessOfIt}: ${label}`} onPress={onLess}>
        {t().lessOfIt}
      </Key>
    </div>
  );
}

interface SeveralProps {
  name: string;
  own: readonly DraftFault[];
  count: number;
  onMore: () => void;
  children: (i: number) => preact.ComponentChildren;
}

export function Several({ name, own, count, onMore, children }: SeveralProps) {
  return (
    <Group name={name} faults={own}>
      {Array.from({ length: count }, (_, i) => children(i))}
      <Key kind="small" label={`${t().moreOfIt}: ${name}`} onPress={onMore}>
        {t().moreOfIt}
      </Key>
    </Group>
  );
}
