/** Views in parts, put together as the hub's own tests do. */
import { describe, expect, it } from "vitest";
import { Assembled } from "./assembled";

const whole = {
  whole: true,
  view: { site: "Yard", account: { loads: 2, rock: 0 }, low: 1 },
  order: { marks: ["P-1", "P-2"] },
  items: { marks: { "P-1": { dev: 3 }, "P-2": { dev: 5 } } },
};

describe("a view in parts", () => {
  it("is whole after its first message", () => {
    expect(new Assembled().take("ground", whole)).toEqual({
      site: "Yard",
      account: { loads: 2, rock: 0 },
      low: 1,
      marks: [{ dev: 3 }, { dev: 5 }],
    });
  });

  it("takes what is newer, and what is not named stays the same object", () => {
    const screen = new Assembled();
    const before = screen.take("ground", whole);
    const after = screen.take("ground", {
      whole: false,
      view: {},
      left_out: ["low"],
      cards: { account: { loads: 3 } },
      order: { marks: ["P-2", "P-3"] },
      items: { marks: { "P-3": { dev: 7 } } },
    });
    expect(after).toEqual({
      site: "Yard",
      account: { loads: 3, rock: 0 },
      marks: [{ dev: 5 }, { dev: 7 }],
    });
    const marks = (view: Record<string, unknown>) => view.marks as unknown[];
    const fields = { "P-3": { dev: 8, by: "RT" } };
    const changed = screen.take("ground", { whole: false, view: {}, changed: { marks: fields } });
    expect(marks(changed)).toEqual([{ dev: 5 }, { dev: 8, by: "RT" }]);
    expect(marks(changed)[0]).toBe(marks(after)[0]);
    expect(marks(after)[0]).toBe(marks(before)[1]);
    expect(marks(screen.take("ground", { whole: false, view: { site: "Lot" } }))).toBe(marks(changed));
  });

  it("forgets what it had when all of it comes again, and keeps topics apart", () => {
    const screen = new Assembled();
    screen.take("ground", whole);
    screen.take("sheet", { whole: true, view: { site: "Yard" } });
    const again = screen.take("ground", { whole: true, view: { site: "Lot" }, order: { marks: [] } });
    expect(again).toEqual({ site: "Lot", marks: [] });
  });
});
