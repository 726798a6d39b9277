/** Views come in parts: what this page has of each, and what is newer put into it. */

/** What the hub sends of a view: what is not named stays as it is. */
export interface Newer {
  /** All of it: what was here before counts no more. */
  whole: boolean;
  view: Record<string, unknown>;
  left_out?: string[];
  cards?: Record<string, Record<string, unknown>>;
  order?: Record<string, string[]>;
  items?: Record<string, Record<string, unknown>>;
  changed?: Record<string, Record<string, Record<string, unknown>>>;
}

interface Has {
  fields: Record<string, unknown>;
  order: Record<string, string[]>;
  items: Record<string, Record<string, unknown>>;
}

export class Assembled {
  private readonly has = new Map<string, Has>();

  /** The whole view of a topic once this has come. What is the same in it stays the same object. */
  take(topic: string, newer: Newer): Record<string, unknown> {
    const before = newer.whole ? undefined : this.has.get(topic);
    const has: Has = {
      fields: { ...before?.fields, ...newer.view },
      order: { ...before?.order, ...newer.order },
      items: { ...before?.items },
    };
    for (const field of newer.left_out ?? []) delete has.fields[field];
    for (const [field, tables] of Object.entries(newer.cards ?? {})) {
      has.fields[field] = { ...(has.fields[field] as object), ...tables };
    }
    for (const [field, items] of Object.entries(newer.items ?? {})) {
      has.items[field] = { ...has.items[field], ...items };
    }
    for (const [field, changed] of Object.entries(newer.changed ?? {})) {
      const items = { ...has.items[field] };
      for (const [name, fields] of Object.entries(changed))
        items[name] = { ...(items[name] as object), ...fields };
      has.items[field] = items;
    }
    for (const [field, order] of Object.entries(has.order)) {
      if (!newer.order?.[field] && !newer.items?.[field] && !newer.changed?.[field]) continue;
      const items = has.items[field] ?? {};
      has.fields[field] = order.map((name) => items[name]).filter((item) => item !== undefined);
    }
    this.has.set(topic, has);
    return has.fields;
  }
}
