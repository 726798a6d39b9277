/** The fields of a form, drawn from its description: each with its name, its keys, and its fault beside it. */
import { Choice } from "../../../parts/choice";
import { Key } from "../../../parts/keys";
import { said } from "../../../said";
import type { DraftFault, FormField, Typed, TypedTable } from "../../../wire";
import { t } from "../words";
import { at, put } from "./draft";
import { type FieldProps, Group, listOf, Pick, Point, Row, Several, Text, type Typing } from "./inputs";

interface FieldsProps extends Typing {
  fields: readonly FormField[];
  path?: string;
  /** Keys that can't be changed: a thing keeps its name. */
  fixed?: readonly string[];
}

export function Fields({ fields, path = "", fixed = [], ...typing }: FieldsProps) {
  return (
    <>
      {fields.map((field) => (
        <Field
          {...typing}
          key={field.key}
          field={field}
          path={path ? `${path}.${field.key}` : field.key}
          fixed={fixed.includes(field.key)}
        />
      ))}
    </>
  );
}

function Field(props: FieldProps) {
  const { field, path, typed, faults, names, onTyped } = props;
  const words = t();
  const name = `${said(field.name)}${field.needed ? "" : ` (${words.mayBeLeftOut})`}`;
  const takes = field.takes;
  const value = at(typed, path);
  const set = (to: Typed | undefined) => onTyped(put(typed, path, to) as TypedTable);
  const own = faults.filter((fault) => fault.field === path);
  switch (takes.kind) {
    case "one_of":
      return <OneOf {...props} tables={takes.tables} />;
    case "table":
      return (
        <Group name={name} faults={own}>
          <Fields {...props} fields={takes.fields} path={path} fixed={[]} />
        </Group>
      );
    case "rows":
      return <Rows {...props} name={name} fields={takes.fields} own={own} />;
    case "points":
      return <Points {...props} name={name} own={own} />;
    case "lengths":
      return (
        <Several
          name={name}
          own={own}
          count={listOf(value).length}
          onMore={() => set([...listOf(value), ""])}
        >
          {(i) => (
            <Row onLess={() => set(listOf(value).filter((_, n) => n !== i))} label={`${name} ${i + 1}`}>
              <Text {...props} name={`${name} ${i + 1}`} path={`${path}.${i}`} asLength />
            </Row>
          )}
        </Several>
      );
    case "corners":
      return <Points {...props} name={name} own={own} high />;
    case "texts":
      return (
        <Several
          name={name}
          own={own}
          count={listOf(value).length}
          onMore={() => set([...listOf(value), ""])}
        >
          {(i) => (
            <Row
              key={i}
              onLess={() => set(listOf(value).filter((_, n) => n !== i))}
              label={`${name} ${i + 1}`}
            >
              <Text {...props} name={`${name} ${i + 1}`} path={`${path}.${i}`} />
            </Row>
          )}
        </Several>
      );
    case "some_words":
      return (
        <Ticked
          name={name}
          own={own}
          value={value}
          options={takes.words.map((word) => [word.id, said(word.name)])}
          onTick={set}
        />
      );
    case "point":
      return (
        <Group name={name} faults={own}>
          <Point {...props} path={path} />
        </Group>
      );
    case "flag":
      return (
        <Choice
          kind="chips"
          title={name}
          options={[
            { id: "no", name: words.no },
            { id: "yes", name: words.yes },
          ]}
          chosen={value === true ? "yes" : "no"}
          onChoose={(id) => set(id === "yes" ? true : undefined)}
        />
      );
    case "word":
      return (
        <Pick
          name={name}
          own={own}
          value={value}
          onPick={set}
          options={takes.words.map((word) => [word.id, said(word.name)])}
        />
      );
    case "one":
      return (
        <Pick
          name={name}
          own={own}
          value={value}
          onPick={set}
          options={names(takes.of).map((id) => [id, id])}
        />
      );
    case "several":
      return (
        <Ticked
          name={name}
          own={own}
          value={value}
          options={names(takes.of).map((id) => [id, id])}
          onTick={set}
        />
      );
    default:
      return <Text {...props} name={name} asLength={takes.kind === "length"} />;
  }
}

interface TickedProps {
  name: string;
  own: readonly DraftFault[];
  value: Typed | undefined;
  options: readonly (readonly [string, string])[];
  onTick: (to: Typed) => void;
}

/** Several of a list, each ticked by itself. */
function Ticked({ name, own, value, options, onTick }: TickedProps) {
  const list = listOf(value);
  return (
    <Group name={name} faults={own}>
      <div class="tiles">
        {options.map(([id, title]) => {
          const there = list.includes(id);
          return (
            <Key
              key={id}
              kind="tile"
              pressed={there}
              onPress={() => onTick(there ? list.filter((one) => one !== id) : [...list, id])}
            >
              {title}
            </Key>
          );
        })}
      </div>
    </Group>
  );
}

interface ListProps extends FieldProps {
  name: string;
  own: readonly DraftFault[];
}

function Rows({ name, own, fields, ...props }: ListProps & { fields: readonly FormField[] }) {
  const { typed, path, onTyped } = props;
  const list = listOf(at(typed, path));
  const set = (to: Typed[]) => onTyped(put(typed, path, to) as TypedTable);
  return (
    <Several name={name} own={own} count={list.length} onMore={() => set([...list, {}])}>
      {(i) => (
        <Row key={i} label={`${name} ${i + 1}`} onLess={() => set(list.filter((_, n) => n !== i))}>
          <Group name={String(i + 1)} faults={props.faults.filter((one) => one.field === `${path}.${i}`)}>
            <Fields {...props} fields={fields} path={`${path}.${i}`} fixed={[]} />
          </Group>
        </Row>
      )}
    </Several>
  );
}

/** `high`: each with its elevation. */
function Points({ name, own, high = false, ...props }: ListProps & { high?: boolean }) {
  const { typed, path, onTyped } = props;
  const list = listOf(at(typed, path));
  const set = (to: Typed[]) => onTyped(put(typed, path, to.length > 0 ? to : undefined) as TypedTable);
  return (
    <Several
      name={name}
      own={own}
      count={list.length}
      onMore={() => set([...list, high ? ["", "", ""] : ["", ""]])}
    >
      {(i) => (
        <Row key={i} label={`${name} ${i + 1}`} onLess={() => set(list.filter((_, n) => n !== i))}>
          <Point {...props} path={`${path}.${i}`} high={high} />
        </Row>
      )}
    </Several>
  );
}

/** Exactly one of several tables, each under a key of its own. */
function OneOf({ tables, ...props }: FieldProps & { tables: readonly FormField[] }) {
  const { field, path, typed, faults, onTyped } = props;
  const base = path.includes(".") ? `${path.slice(0, path.lastIndexOf("."))}.` : "";
  const chosen = tables.find((one) => at(typed, `${base}${one.key}`) !== undefined);
  const choose = (key: string) => {
    const without = tables.reduce<Typed>((rest, one) => put(rest, `${base}${one.key}`, undefined), typed);
    onTyped(put(without, `${base}${key}`, {}) as TypedTable);
  };
  const key = chosen ? `${base}${chosen.key}` : "";
  return (
    <>
      <Pick
        name={said(field.name)}
        own={faults.filter((fault) => fault.field === path || fault.field === key)}
        value={chosen?.key}
        options={tables.map((one) => [one.key, said(one.name)])}
        onPick={(id) => typeof id === "string" && choose(id)}
      />
      {chosen && "fields" in chosen.takes && (
        <Group name={said(chosen.name)} faults={[]}>
          <Fields {...props} fields={chosen.takes.fields} path={key} fixed={[]} />
        </Group>
      )}
    </>
  );
}
