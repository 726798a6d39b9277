/** PRICES: the site's own rates, put in by the supervisor; what the form does not show stays as it is. */
import { useState } from "preact/hooks";
import { numberTyped } from "../../../amounts";
import { say } from "../../../hub";
import { Key } from "../../../parts/keys";
import { Panel } from "../../../parts/panel";
import type { Prices, Supervisor } from "../../../wire";
import { t } from "../words";

const EMPTY: Prices = { money: "$", machines: [], materials: [] };

/** One figure of the form: how it is read and put back. */
interface Figure {
  name: string;
  get: (prices: Prices) => number | null | undefined;
  set: (prices: Prices, value: number | undefined) => void;
}

/** A part of the list that the site file began; the form changes its figures, it does not invent the rest. */
function partOf<K extends "gravel" | "aim">(
  part: K,
  key: keyof NonNullable<Prices[K]>,
  name: string,
): Figure {
  return {
    name,
    get: (prices) => (prices[part] as Record<string, unknown> | null | undefined)?.[key as string] as number,
    set: (prices, value) => {
      const whole = prices[part] as Record<string, unknown> | null | undefined;
      if (whole && value !== undefined) whole[key as string] = value;
    },
  };
}

function figures(view: Supervisor): Figure[] {
  const words = t().account;
  const prices = view.account.prices ?? EMPTY;
  const rates: Figure[] = view.machines.map(({ id }) => ({
    name: words.machineHour(id),
    get: (list) => list.machines?.find((one) => one.machine === id)?.hour,
    set: (list, value) => {
      const others = (list.machines ?? []).filter((one) => one.machine !== id);
      list.machines = value === undefined ? others : [...others, { machine: id, hour: value }];
    },
  }));
  const plain = (key: "truck_hour" | "ground_hour" | "bearing_psf", name: string): Figure => ({
    name,
    get: (list) => list[key],
    set: (list, value) => {
      if (value === undefined) delete list[key];
      else list[key] = value;
    },
  });
  return [
    ...rates,
    plain("truck_hour", words.truckHour),
    plain("ground_hour", words.groundHour),
    {
      name: words.truckYards,
      get: (list) => list.truck?.cubic_yards,
      set: (list, value) => {
        if (value === undefined) delete list.truck;
        else list.truck = { ...list.truck, cubic_yards: value };
      },
    },
    {
      name: words.truckTons,
      get: (list) => list.truck?.tons,
      set: (list, value) => {
        if (list.truck) list.truck = { ...list.truck, tons: value ?? null };
      },
    },
    ...(prices.materials ?? []).map(({ name }): Figure => {
      const one = (list: Prices) => list.materials?.find((material) => material.name === name);
      return {
        name: words.loosePcf(name),
        get: (list) => one(list)?.loose_pcf,
        set: (list, value) => {
          const material = one(list);
          if (material) material.loose_pcf = value ?? null;
        },
      };
    }),
    ...(prices.gravel
      ? [partOf("gravel", "ton", words.gravelTon), partOf("gravel", "placed_cf", words.gravelPlaced)]
      : []),
    {
      ...partOf("aim", "spot_sf", words.spot),
      set: (list, value) => {
        if (value === undefined) delete list.aim;
        else list.aim = { shallow: 0, shallow_in_rock: 0, too_deep: 0, ...list.aim, spot_sf: value };
      },
    },
    partOf("aim", "shallow", words.shallow),
    partOf("aim", "shallow_in_rock", words.shallowRock),
    partOf("aim", "too_deep", words.tooDeep),
    plain("bearing_psf", words.bearing),
  ];
}

export function PricesPanel({ view, onClose }: { view: Supervisor; onClose: () => void }) {
  const words = t().account;
  const all = figures(view);
  const start = view.account.prices ?? EMPTY;
  const [typed, setTyped] = useState(all.map((one) => String(one.get(start) ?? "")));
  const values = typed.map(numberTyped);
  const ready = values.every((value) => value !== null);
  const send = () => {
    if (!ready) return;
    const prices: Prices = structuredClone(start);
    all.forEach((one, i) => {
      one.set(prices, values[i] ?? undefined);
    });
    void say({ kind: "set_prices", prices });
    onClose();
  };
  return (
    <Panel title={words.pricesTitle} onClose={onClose} closeWord={t().cancel}>
      <p>{words.pricesNote}</p>
      <div class="price-list">
        {all.map((one, i) => (
          <label class="field" key={one.name}>
            <span>{one.name}</span>
            <input
              inputMode="decimal"
              value={typed[i] ?? ""}
              aria-invalid={values[i] === null}
              onInput={(event) =>
                setTyped(typed.map((text, at) => (at === i ? event.currentTarget.value : text)))
              }
            />
          </label>
        ))}
      </div>
      {!ready && <p class="trouble">{words.badPrice}</p>}
      <Key kind="send" disabled={!ready} onPress={send}>
        {words.save}
      </Key>
    </Panel>
  );
}
